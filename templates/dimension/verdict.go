package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// verdictList are the boxes for what follows from a reading: in or out, and for a
// part found within a limit for old ones whether it goes back.
func verdictList(c *block.Composer, d *job.Dim, sides []Side, back bool) []layout.Block {
	w := c.W
	late := len(sides) > 0 && sides[0].work != nil && sides[0].work.Late != nil
	var words []string
	switch {
	case !back && d.Repair != nil:
		words = []string{w.Dimension.GoesBack, w.Common.Mended, w.Dimension.Renewed}
	case !back && d.Reuse != nil:
		words = []string{w.Dimension.GoesBack, w.Dimension.Renewed}
	case back && !late && d.Reuse != nil && d.Repair == nil:
		words = []string{c.W.Common.InLimits, w.Dimension.OldPartInLimits, c.W.Common.OutOfLimits}
	case late:
	case d.WatchedOnly() && !back, d.Judged() && (!d.FoundIsRecorded() || back && (!d.Left.NeedsFound() || len(sides) > 1)):
		words = []string{c.W.Common.InLimits, c.W.Common.OutOfLimits}
	}
	var ticks []layout.Block
	for _, s := range words {
		ticks = append(ticks, c.Tick(layout.Body, s, d.At))
	}
	return ticks
}

// verdictItems are the boxes of the verdict, beside or below each other, and the box
// for initials.
func verdictItems(c *block.Composer, d *job.Dim, sides []Side, back, stacked bool) []layout.Block {
	ticks := verdictList(c, d, sides, back)
	initials := c.Box(layout.RoleInitials, c.W.Common.Initials, d.At)
	if len(ticks) == 0 {
		return []layout.Block{initials}
	}
	row := layout.Middle(layout.GapX, ticks...)
	if stacked {
		row = layout.Above(layout.GapY, ticks...)
	}
	var out []layout.Block
	for _, where := range verdictPlaces(d) {
		b := placed(c, d, where, row, placesWide)
		if !stacked {
			b = b.Pad(0, 0, 1.5, 0)
		}
		out = append(out, b)
	}
	return append(out, initials)
}

// verdictPlaces names the positions that are judged together: those of each limit, for
// one box to tick does not speak for several limits; one empty name where there is one.
func verdictPlaces(d *job.Dim) []string {
	by := d.LeftBy
	if d.Left == nil {
		by = d.FoundBy
	}
	if len(by) == 0 || d.Reuse != nil {
		return []string{""}
	}
	var out []string
	for _, at := range d.ByLimit(by) {
		if at.Limit.Kind != reading.Record {
			out = append(out, strings.Join(at.Names, ", "))
		}
	}
	return out
}

// placesWide is how wide the names of positions that are judged together run.
const placesWide layout.Mm = 60

// placed puts the names of the positions that boxes to tick are for above them.
func placed(c *block.Composer, d *job.Dim, where string, ticks layout.Block, width layout.Mm) layout.Block {
	if where == "" || ticks.Empty() {
		return ticks
	}
	return layout.Above(0.5, fitToItems(c.Para(width, []layout.Run{layout.T(layout.SubBold, where)}, layout.ParaOpts{Ref: d.At})), ticks)
}
