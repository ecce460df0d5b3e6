package heating

import (
	"matchmark/packs/heat"
	"matchmark/packs/source"
)

// A refusal is why a heat is not computed, for paper in another language.
type refusal struct {
	mark  string
	no    *heat.Refusal
	units heat.Units
}

// In implements source.Sentence.
func (r refusal) In(t source.Tongue) string {
	u := r.units
	u.Tongue = t
	text := r.no.In(u).Why
	if u.Tongue = english; text == r.no.In(u).Why {
		return ""
	}
	return source.About(t, r.mark, text)
}

// A warning is what the calculation of a heat warns of, for paper in another language.
type warning struct {
	mark  string
	of    heat.Warning
	units heat.Units
}

// In implements source.Sentence.
func (w warning) In(t source.Tongue) string {
	u := w.units
	u.Tongue = t
	text := w.of.In(u).Says
	if u.Tongue = english; text == w.of.In(u).Says {
		return ""
	}
	return source.About(t, w.mark, text)
}

// spoken is a tongue that leaves every sentence as it is: English with the figures as on
// paper.
type spoken struct{}

func (spoken) Said(text string) string { return text }

var english = spoken{}
