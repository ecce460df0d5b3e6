package proofread

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// Shims by name, and what may stand before them: "the shims" are the whole pack, which
// comes out to be measured as well as to become thinner, and tell nothing.
const (
	shimWord = `(?:leaf|leaves|shims?)\b`
	someOf   = `(?:(?:a|an|one|two|three|some|as many|more|another|further|extra|single|steel|brass|thin|thick|shim|of the|[\d.]+|mm) )*`
)

// Words of more shims and of fewer, by what is done with leaves or by how they compare. in and
// out alone tell nothing: a finding is put in the log, a shaft is drawn out.
var (
	laysIn   = phrase.Of(`(?i)\b(?:(?:lay|put|slip|insert|place|push)(?: in)? ` + someOf + shimWord + `|add (?:thinner |smaller |thicker )?` + someOf + shimWord + `)`)
	takesOut = phrase.Of(`(?i)\b(?:(?:take|pull|draw|lift) (?:out|away|off) ` + someOf + shimWord + `|(?:take|pull|draw|lift) ` + someOf + shimWord + ` (?:out|away|off|from)\b|remove ` + someOf + shimWord + `)`)
	thicker  = phrase.Of(`(?i)\b(?:thicker|more|another|further|extra|additional) (?:(?:steel|brass|shim|pack of) )*` + shimWord)
	thinner  = phrase.Of(`(?i)\b(?:thinner|fewer) (?:(?:steel|brass|shim|pack of) )*` + shimWord)
	noShims  = phrase.Of(`(?i)\b(?:no|not|never|nothing|without|instead|don't)\b`)
)

// shimsSaid tells which way words change a pack of shims: 1 for more, -1 for fewer, 0 where
// they do not say, or say both.
func shimsSaid(words string) int {
	if noShims.MatchString(words) {
		return 0
	}
	rest := takesOut.ReplaceAllString(words, "")
	more := laysIn.MatchString(rest) || thicker.MatchString(rest)
	fewer := rest != words || thinner.MatchString(rest)
	switch {
	case more == fewer:
		return 0
	case more:
		return 1
	}
	return -1
}

// checkOtherWay warns where the words for a reading that is out of its limit and the sum that
// its shims are worked out by go two ways: the sum is done with moves:, which says whether
// more shims make the reading larger or smaller.
func (b *proofreader) checkOtherWay(d *job.Dim, dd *def.Dimension) {
	if d.Adjuster == nil || d.Adjuster.Movement == nil || d.Adjuster.Movement.Thick == nil {
		return
	}
	m := d.Adjuster.Movement
	if m.Gives.Unit.Dimension() != d.Box.Unit.Dimension() {
		return // a torque that more of them make smaller: no sum is done with moves:
	}
	for _, x := range []struct {
		words      source.Text
		key, makes string
		need       int // which way its shims change the reading, for the reading to come back
	}{
		{names.TextAt(d.Place, dd.Over), "over", "above its limit", -1},
		{names.TextAt(d.Place, dd.Under), "under", "below its limit", 1},
	} {
		if said := shimsSaid(b.Job.InEnglish(x.words.Value)); said == 0 || said*m.Gives.Number.Sign() == x.need {
			continue
		}
		sign := ""
		if m.Gives.Number.Sign() > 0 {
			sign = "-"
		}
		gives := *m.Gives
		gives.Number = gives.Number.Abs()
		b.Problems.WarnWith(x.words.At, "moves-other-way", d.Mark+" is "+source.Quote(x.words.Value)+" where it is "+x.makes+", and moves: at "+source.Quote(d.Adjuster.Key)+" says the other way: the sum on paper would take it further out", d.Adjuster.At, "the shims",
			"moves: "+m.Thick.Text()+" gives "+sign+gives.Text(), "or put "+x.key+": right")
		return
	}
}
