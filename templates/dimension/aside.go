package dimension

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// aboveSaves is how much height a verdict must save to stand beside the head, above the
// boxes that it is of.
const aboveSaves layout.Mm = 3

// verdictBeside has the verdict at the right end of the head, as the initials of a step stand,
// and the boxes below both over the whole width. What may not be, as it is no lower than a
// height, is not set.
func (k content) verdictBeside(w way, pic sized, width layout.Mm, may func(bound layout.Mm) bool, try func(sized)) {
	if len(k.entries) > 1 {
		return
	}
	e := k.entries[0]
	verdict := k.verdict(e, w)
	for _, aside := range []layout.Mm{block.RowWidth(verdict), widest(verdict)} {
		if k.reason != (reason{}) {
			aside = max(aside, k.leastReason())
		}
		right := k.flow(aside+0.01, verdict)
		room := width - right.w - layout.GapX
		if !pic.empty {
			room -= pic.w + block.CellPad
		}
		if room < leastHead {
			continue
		}
		head := k.head(w, room)
		left := beside(block.CellPad, pic, head.wide(room))
		gap := layout.Mm(1.5)
		if right.h > left.h-gap {
			gap = layout.GapY // no box comes near another
		}
		if both := beside(layout.GapX, left, right); may(both.h) {
			boxes := flowRow(width, k.limit(w, width), k.boxes(e, w, width))
			try(above(layout.GapY, above(gap, both, boxes), k.warm(e, width)))
		}
	}
}
