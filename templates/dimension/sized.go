package dimension

import (
	"iter"
	"slices"

	"matchmark/layout"
	"matchmark/templates/block"
)

// sized is a block to be: its size, worked out as layout does, and what makes it. Of the
// many ways to set a dimension all but one are only measured.
type sized struct {
	w, h    layout.Mm
	empty   bool
	misfits int
	make    func() layout.Block
}

// done is a block that is set already.
func done(b layout.Block) sized {
	if b.Empty() {
		return sized{empty: true, make: nothing}
	}
	kept := b // an empty one takes no memory
	return ready(&kept)
}

// ready is done for a block that is kept where it is.
func ready(b *layout.Block) sized {
	return sized{b.W, b.H, b.Empty(), len(b.Misfits()), func() layout.Block { return *b }}
}

// paragraph is a paragraph in a width.
func paragraph(p *layout.Paragraph, width layout.Mm) sized {
	h, misfits := p.Size(width)
	return sized{width, h, width == 0 && h == 0 && misfits == 0, misfits, func() layout.Block { return p.Set(width) }}
}

func nothing() layout.Block { return layout.Block{} }

// wide is the block at the left end of a width.
func (s sized) wide(width layout.Mm) sized {
	if s.empty || s.w > width { // which may be a misfit
		return done(s.make().Fill(width, s.h, 0, 0))
	}
	make, h := s.make, s.h
	s.w, s.make = width, func() layout.Block { return make().Fill(width, h, 0, 0) }
	return s
}

// above is layout.Above.
func above(gap layout.Mm, bs ...sized) sized {
	out := sized{empty: true, make: func() layout.Block { return layout.Above(gap, made(bs)...) }}
	for _, b := range bs {
		if b.empty {
			continue
		}
		if !out.empty {
			out.h += gap
		}
		out.empty = false
		out.h += b.h
		out.w = max(out.w, b.w)
		out.misfits += b.misfits
	}
	return out
}

// high is the height of above, for what need not be made if it is too high.
func high(gap layout.Mm, a, b sized) layout.Mm {
	if a.empty || b.empty {
		return a.h + b.h
	}
	return a.h + gap + b.h
}

// beside is layout.Beside, its lower edges on a level layout.Bottom.
func beside(gap layout.Mm, bs ...sized) sized {
	out := row(gap, bs, false)
	out.make = func() layout.Block { return layout.Beside(gap, made(bs)...) }
	return out
}

func bottom(gap layout.Mm, bs ...sized) sized {
	out := row(gap, bs, true)
	out.make = func() layout.Block { return layout.Bottom(gap, made(bs)...) }
	return out
}

func row(gap layout.Mm, bs []sized, down bool) sized {
	out := sized{empty: true}
	for _, b := range bs {
		out.h = max(out.h, b.h)
	}
	tall := out.h
	for _, b := range bs {
		if b.empty {
			continue
		}
		if !out.empty {
			out.w += gap
		}
		out.empty = false
		out.w += b.w
		if down {
			out.h = max(out.h, tall-b.h+b.h) // as it is rounded there
		}
		out.misfits += b.misfits
	}
	return out
}

// flowRow is block.FlowRow of the pieces of all lists. Ways share their lists of pieces, which
// are joined only where a way is taken.
func flowRow(width layout.Mm, lists ...[]layout.Block) sized {
	out := flowSize(width, lists...)
	out.make = func() layout.Block { return block.FlowRow(slices.Concat(lists...), width) }
	return out
}

// flowSize is the size alone of flowRow.
func flowSize(width layout.Mm, lists ...[]layout.Block) sized {
	out := sized{empty: true}
	for row := range rowsIn(width, lists) {
		r := bottomOf(row)
		if r.empty {
			continue
		}
		if !out.empty {
			out.h += layout.GapY
		}
		out.empty = false
		out.h += r.h
		out.w = max(out.w, r.w)
		out.misfits += r.misfits
	}
	return out
}

// rowsIn are the rows of block.Rows of the pieces of all lists. A row may not be kept: the
// next one takes its place.
func rowsIn(width layout.Mm, lists [][]layout.Block) iter.Seq[[]*layout.Block] {
	return func(yield func([]*layout.Block) bool) {
		var room [16]*layout.Block // for all but a few rows
		row := room[:0]
		for _, list := range lists {
			for i := range list {
				b := &list[i]
				if len(row) > 0 && !(rowWidth(row) + layout.GapX + b.W).Fits(width) {
					if !yield(row) {
						return
					}
					row = row[:0]
				}
				row = append(row, b)
			}
		}
		if len(row) > 0 {
			yield(row)
		}
	}
}

// rowWidth is block.RowWidth.
func rowWidth(row []*layout.Block) layout.Mm {
	w := layout.Mm(max(len(row)-1, 0)) * layout.GapX
	for _, b := range row {
		w += b.W
	}
	return w
}

// bottomOf is layout.Bottom of a row.
func bottomOf(row []*layout.Block) sized {
	tall := layout.Mm(0)
	for _, b := range row {
		tall = max(tall, b.H)
	}
	out := sized{empty: true, h: tall}
	for _, b := range row {
		if b.Empty() {
			continue
		}
		if !out.empty {
			out.w += layout.GapX
		}
		out.empty = false
		out.w += b.W
		out.h = max(out.h, tall-b.H+b.H) // as it is rounded there
		out.misfits += len(b.Misfits())
	}
	return out
}

func made(bs []sized) []layout.Block {
	out := make([]layout.Block, len(bs))
	for i, b := range bs {
		out[i] = b.make()
	}
	return out
}
