package proofread

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/names"
	"matchmark/packs/reading"
	"matchmark/packs/source"
)

// checkLimits sees that the lines of one dimension go together: the limit for old
// parts lies outside that for new ones, a size is not left "as found" without
// saying how near, and mean, spread and sum have more than one box.
func (b *proofreader) checkLimits(d *job.Dim, dd *def.Dimension) {
	left, reuse, repair := names.TextAt(d.Place, dd.Left), names.TextAt(d.Place, dd.Reuse), names.TextAt(d.Place, dd.Repair)
	tell := func(t source.Text, f *reading.Fault) {
		if f != nil {
			b.Fault(t, f)
		}
	}
	b.checkNeverOld(d, reuse)
	b.checkFoundBeside(d, names.TextAt(d.Place, dd.Found), reuse.Written())
	if d.Left != nil && left.Written() {
		tell(left, reading.CheckSame(d.Left, d.Found))
	}
	// Where left: differs along the boxes, one limit for old parts stands beside
	// several and is compared with none of them.
	if d.Left != nil && d.Worn != nil && len(d.LeftBy) == 0 {
		tell(reuse, reading.CheckReuse(d.Left, d.Worn))
	}
	if d.Mended != nil && len(d.LeftBy) == 0 {
		tell(repair, reading.CheckRepair(d.Left, d.Worn, d.Mended))
	}
	b.checkWidened(d, linesOf(d, dd))
	for _, x := range linesOf(d, dd) {
		tell(x.text, reading.CheckBoxes(x.limit, d.Positions.Boxes()))
	}
}

// checkFoundBeside sees that a limit as found beside one for closing is that limit again: both
// boxes are judged by the one for closing, and another would be printed nowhere.
func (b *proofreader) checkFoundBeside(d *job.Dim, found source.Text, reused bool) {
	other := func(left *reading.Limit) bool { return !reading.Same(left, d.Found) }
	if !d.JudgedTwice() || !slices.ContainsFunc(d.LeftLimits(), other) {
		return
	}
	help := []string{"reuse: " + found.Value + ", if an old part may go back so far out", "or a dimension of its own, with found: and no left:", "or take found: out"}
	if reused {
		help = []string{"take found: out: reuse: says how far out an old part may go back", "or a dimension of its own, with found: and no left:"}
	}
	b.Problems.Add(found.At, "found-beside-left", d.Base+" has a limit as found, "+source.Quote(found.Value)+", beside left:, by which both boxes are judged: it would be printed nowhere", help...)
}
