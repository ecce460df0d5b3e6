package dimension

import (
	"slices"

	"matchmark/layout"
	"matchmark/templates/block"
)

// leastHead is the least width in which the head of a dimension is read well beside its
// boxes.
const leastHead layout.Mm = 55

// headShares are the shares of the width that a head takes beside its boxes.
var headShares = []layout.Mm{0.36, 0.45, 0.56}

// bands have the head on the left and the boxes in the rest of the width: in one row
// where that goes, else in as many as it takes.
func (k content) bands(s *search, w way, pic sized, width layout.Mm) {
	heads := make([]layout.Mm, 0, 1+len(headShares))
	if len(k.entries) == 1 && k.reason == (reason{}) {
		e := k.entries[0]
		row := slices.Concat(k.limit(w, width), k.boxes(e, w, width), k.verdict(e, w))
		heads = append(heads, width-block.RowWidth(row)-layout.GapX-0.02)
	}
	for _, share := range headShares {
		heads = append(heads, width*share)
	}
	for i, left := range heads {
		if left < leastHead || left > width-leastHead || !s.only(i) {
			continue
		}
		aside := width - left - layout.GapX
		least := k.leastRows(w, aside)
		if !s.may(least) {
			continue
		}
		head := k.head(w, left)
		if !s.may(max(head.h, least)) {
			continue
		}
		if rows := k.rows(w, aside); rows.w.Fits(aside) && s.may(max(head.h, rows.h)) {
			s.try(beside(block.CellPad, pic, beside(layout.GapX, head.wide(left), rows)))
		}
	}
}

// A frameOf is a dimension, or one at like places, as it stands in a step: the frames
// over the whole width, and how to set it in less.
type frameOf struct {
	whole  []layout.Block
	height layout.Mm
	in     func(span layout.Mm) layout.Block
	part   func() []layout.Parting // ways to set it on two pages, where there are any
}

// pairGap is the room between two frames beside each other, pairSaves how much height
// they must save to stand so: below each other they are found faster.
const (
	pairGap   layout.Mm = 2
	pairSaves layout.Mm = 3
)

// smallShare is the share of the width that the smaller of two frames takes, where they do
// not share it evenly.
const smallShare layout.Mm = 0.42

// paired sets frames: they stand below each other, two neighbours beside each other where
// that saves height, so that the sum is the least. Of a pair only those shares of the width
// are tried that shares names by its first frame; a nil one names all. It tells the shares
// taken. The function part gives those that stay alone the ways to set them on two pages:
// these cost much and are for blocks that are printed.
func paired(frames []frameOf, span layout.Mm, shares map[int]int) (out []layout.Block, taken map[int]int, part func()) {
	n := len(frames)
	least := make([]layout.Mm, n+1) // of all from a frame
	pairs := make([]layout.Block, n)
	taken = map[int]int{}
	for i := n - 1; i >= 0; i-- {
		least[i] = frames[i].height + least[i+1]
		only, asked := shares[i]
		if i+1 == n || shares != nil && !asked {
			continue
		}
		if shares == nil {
			only = allShares
		}
		two, share := sideBySide(frames[i], frames[i+1], span, least[i]-1-pairSaves-least[i+2], only)
		if h := two.H + 1 + pairSaves + least[i+2]; !two.Empty() && h < least[i] {
			least[i], pairs[i], taken[i] = h, two, share
		}
	}
	alone := map[int]func() []layout.Parting{}
	for i := 0; i < n; i++ {
		if pairs[i].Empty() {
			if frames[i].part != nil {
				alone[len(out)] = frames[i].part
			}
			out = append(out, frames[i].whole...)
			continue
		}
		two := pairs[i]
		if a, b := frames[i].whole, frames[i+1].whole; len(a) == 1 && len(b) == 1 {
			two.SetPartings([]layout.Parting{{Upper: a[0], Lower: b[0]}})
		}
		out = append(out, two)
		i++
	}
	return out, taken, func() {
		for i := range out {
			if set := alone[i]; set != nil {
				out[i].SetPartings(set())
			}
		}
	}
}

// allShares is for all shares of the width.
const allShares = -1

// sideBySide sets two frames beside each other, as high as the higher one, in one share of the
// width or in the best of all, which it tells; nothing where they do not go into the width. The
// higher one is set first: where it alone is well above the most height, the other is not set.
func sideBySide(a, b frameOf, span, most layout.Mm, only int) (least layout.Block, share int) {
	if a.in == nil || b.in == nil {
		return least, 0
	}
	room := span - pairGap
	for i, left := range [...]layout.Mm{0.5, smallShare, 1 - smallShare} {
		if only != allShares && only != i {
			continue
		}
		var x, y layout.Block
		first := func() bool { x = a.in(room * left); return !x.Empty() && x.H < most+1 }
		second := func() bool { y = b.in(room * (1 - left)); return !y.Empty() && y.H < most+1 }
		if b.height > a.height {
			first, second = second, first
		}
		if !first() || !second() || len(x.Misfits())+len(y.Misfits()) > 0 {
			continue
		}
		if h := max(x.H, y.H); least.Empty() || h < least.H-0.5 {
			least, share = layout.Beside(pairGap, bordered(x, h), bordered(y, h)), i
		}
	}
	return least, share
}

// bordered is the content of a frame in its border, filled up to a height.
func bordered(b layout.Block, h layout.Mm) layout.Block {
	return b.Fill(b.W, h, 0, 0).Border(layout.Rect{Weight: layout.Rule})
}
