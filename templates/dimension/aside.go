package dimension

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// aboveSaves is how much height a verdict must save to stand beside the head, above the
// boxes that it is of.
const aboveSaves layout.Mm = 3

// verdictBeside has the verdict at the right end of the head, as the initials of a step stand,
// and the boxes below both over the whole width.
func (k content) verdictBeside(s *search, w way, pic sized, width layout.Mm) {
	if len(k.entries) > 1 {
		return
	}
	const gap = 1.5
	e := k.entries[0]
	least := k.tallestBox(w, width)
	if !s.may(gap + least + aboveSaves) {
		return
	}
	verdict := k.verdict(e, w)
	for i, aside := range [...]layout.Mm{block.RowWidth(verdict), widest(verdict)} {
		if !s.only(i) {
			continue
		}
		if k.reason != (reason{}) {
			aside = max(aside, k.leastReason())
		}
		right := k.verdictIn(e, w, aside+0.01)
		room := width - right.w - layout.GapX
		if !pic.empty {
			room -= pic.w + block.CellPad
		}
		if room < leastHead {
			continue
		}
		head := k.head(w, room)
		left := max(pic.h, head.h)
		below := layout.Mm(gap)
		if right.h > left-gap {
			below = layout.GapY // no box comes near another
		}
		if s.may(max(left, right.h) + below + least + aboveSaves) {
			both := beside(layout.GapX, beside(block.CellPad, pic, head.wide(room)), right)
			boxes := flowRow(width, k.limit(w, width), k.boxes(e, w, width))
			b := above(layout.GapY, above(below, both, boxes), k.warm(e, width))
			b.h += aboveSaves
			s.try(b)
		}
	}
}
