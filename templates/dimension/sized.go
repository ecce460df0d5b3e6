package dimension

import (
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
	return sized{b.W, b.H, b.Empty(), len(b.Misfits), func() layout.Block { return b }}
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

// flowRow is block.FlowRow.
func flowRow(items []layout.Block, width layout.Mm) sized {
	out := sized{empty: true, make: func() layout.Block { return block.FlowRow(items, width) }}
	for i := 0; i < len(items); {
		var r sized
		r, i = rowFrom(items, i, width)
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

// rowFrom is the row of block.Rows that begins with an item, set by layout.Bottom, and the
// item that begins the next one.
func rowFrom(items []layout.Block, from int, width layout.Mm) (out sized, to int) {
	tall := layout.Mm(0)
	for to = from; to < len(items); to++ {
		if to > from && block.RowWidth(items[from:to])+layout.GapX+items[to].W > width {
			break
		}
		tall = max(tall, items[to].H)
	}
	out = sized{empty: true, h: tall}
	for _, b := range items[from:to] {
		if b.Empty() {
			continue
		}
		if !out.empty {
			out.w += layout.GapX
		}
		out.empty = false
		out.w += b.W
		out.h = max(out.h, tall-b.H+b.H) // as it is rounded there
		out.misfits += len(b.Misfits)
	}
	return out, to
}

func made(bs []sized) []layout.Block {
	out := make([]layout.Block, len(bs))
	for i, b := range bs {
		out[i] = b.make()
	}
	return out
}
