package heating

import (
	"matchmark/packs/heat"
	"matchmark/packs/source"
)

// A sentence is why a heat is not computed, or what its calculation warns of, for paper in
// another language.
type sentence struct {
	mark  string
	units heat.Units
	says  func(heat.Units) string
}

// In implements source.Sentence.
func (s sentence) In(t source.Tongue) string {
	u := s.units
	u.Tongue = t
	text := s.says(u)
	if u.Tongue = english; text == s.says(u) {
		return ""
	}
	return source.About(t, s.mark, text)
}

// refusal is why a heat is not computed.
func refusal(mark string, no *heat.Refusal, u heat.Units) sentence {
	return sentence{mark, u, func(u heat.Units) string { return no.In(u).Why }}
}

// warning is what the calculation of a heat warns of.
func warning(mark string, of heat.Warning, u heat.Units) sentence {
	return sentence{mark, u, func(u heat.Units) string { return of.In(u).Says }}
}

// spoken is a tongue that leaves every sentence as it is: English with the figures as on
// paper.
type spoken struct{}

func (spoken) Said(text string) string { return text }

var english = spoken{}
