package proofread

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// Words of laying shims in and of taking them out.
var (
	laysIn   = phrase.Of(`(?i)\b(?:lay|put|add|slip)\b[^,;.]*\b(?:leaf|leaves|shims?|in|into)\b`)
	takesOut = phrase.Of(`(?i)\b(?:take|pull|draw|remove)\b[^,;.]*\b(?:leaf|leaves|shims?|out)\b`)
)

// checkOtherWay sees that the words for a reading that is out of its limit and the sum that
// its shims are worked out by go the same way: the sum is done with moves:, which says whether
// more shims make the reading larger or smaller.
func (b *proofreader) checkOtherWay(d *job.Dim, dd *def.Dimension) {
	if d.Adjuster == nil || d.Adjuster.Movement == nil || d.Adjuster.Movement.Thick == nil {
		return
	}
	m := d.Adjuster.Movement
	for _, x := range []struct {
		words       source.Text
		key, makes  string
		more, fewer *phrase.Pattern // words that go with more shims making it larger, and against it
	}{
		{names.TextAt(d.Place, dd.Over), "over", "above its limit", takesOut, laysIn},
		{names.TextAt(d.Place, dd.Under), "under", "below its limit", laysIn, takesOut},
	} {
		words, with, against := b.Job.InEnglish(x.words.Value), x.more, x.fewer
		sign := ""
		if m.Gives.Number.Sign() < 0 {
			with, against = against, with
		} else {
			sign = "-"
		}
		if !against.MatchString(words) || with.MatchString(words) {
			continue
		}
		gives := *m.Gives
		gives.Number = gives.Number.Abs()
		b.Problems.AddWith(x.words.At, "moves-other-way", d.Mark+" is "+source.Quote(x.words.Value)+" where it is "+x.makes+", and moves: at "+source.Quote(d.Adjuster.Key)+" says the other way: the sum on paper would take it further out", d.Adjuster.At, "the shims",
			"moves: "+m.Thick.Text()+" gives "+sign+gives.Text(), "or put "+x.key+": right")
		return
	}
}
