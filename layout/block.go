package layout

import "slices"

// Block is a rectangle with items placed from its own top left corner. It is a
// plain value: copy it, place it twice, keep it. Items may reach outside W and H
// only where a Misfit says so.
type Block struct {
	W, H Mm
	// Base is the first baseline, from the top; 0 when there is none.
	Base Mm

	besides *besides
	ink     ink
}

// Parting is one way to set a block on two pages: what ends the one and what begins the next.
type Parting struct {
	Upper, Lower Block
	// Apart says that the two are things of their own, which stand beside each other where
	// they are on one page: to part them costs nothing.
	Apart bool
	// Led says of things apart that what is told of both stands above them once, as Piece.Led.
	Led bool
}

// Anchor is a named height in a block; Paginate tells the page it comes to.
type Anchor struct {
	Name string
	Y    Mm
}

// Empty tells a block with nothing in it and no size; joining skips it together
// with its gap.
func (b Block) Empty() bool {
	return b.W == 0 && b.H == 0 && b.ink.none() && len(b.Anchors()) == 0 && len(b.Misfits()) == 0
}

// Space is a block of the given size with nothing drawn.
func Space(w, h Mm) Block { return Block{W: w, H: h} }

// Drawn is a block of the given size with the given items.
func Drawn(w, h Mm, items ...Item) Block { return Block{W: w, H: h, ink: drawnInk(items)} }

// place adds all of c to b, its corner at x, y. b must own its slices.
func (b *Block) place(c Block, x, y Mm) {
	b.ink.add(c.ink, x, y)
	b.besides = b.besides.placed(c.besides, y)
}

// grown makes an empty block with room for what is drawn in all bs. Where only one has
// anything there is nothing to make room for: place takes it over as it is when it stays
// where it was.
func grown(bs ...Block) Block {
	filled := 0
	for i := range bs {
		if !bs[i].ink.none() {
			filled++
		}
	}
	if filled < 2 {
		return Block{}
	}
	return Block{ink: ink{parts: make([]part, 0, filled)}}
}

// Above stacks the blocks, the first on top, with a gap between each two. Empty
// blocks take no gap.
func Above(gap Mm, bs ...Block) Block {
	out := grown(bs...)
	y, first := Mm(0), true
	for _, b := range bs {
		if b.Empty() {
			continue
		}
		if !first {
			y += gap
		}
		if first || out.Base == 0 && b.Base != 0 {
			out.Base = 0
			if b.Base != 0 {
				out.Base = y + b.Base
			}
		}
		first = false
		out.place(b, 0, y)
		y += b.H
		out.W = max(out.W, b.W)
	}
	out.H = y
	return out
}

// Beside sets the blocks next to each other from left to right, tops on a level,
// with a gap between each two. Empty blocks take no gap.
func Beside(gap Mm, bs ...Block) Block {
	return row(gap, bs, func(b Block, h Mm) Mm { return 0 })
}

// Middle sets the blocks next to each other, their middles on a level.
func Middle(gap Mm, bs ...Block) Block {
	return row(gap, bs, func(b Block, h Mm) Mm { return (h - b.H) / 2 })
}

// Bottom sets the blocks next to each other, their lower edges on a level.
func Bottom(gap Mm, bs ...Block) Block {
	return row(gap, bs, func(b Block, h Mm) Mm { return h - b.H })
}

// Level sets the blocks next to each other, their first baselines on a level. A
// block without a baseline stands with its lower edge on that level.
func Level(gap Mm, bs ...Block) Block {
	var base Mm
	for _, b := range bs {
		base = max(base, b.baseOrFoot())
	}
	return row(gap, bs, func(b Block, h Mm) Mm { return base - b.baseOrFoot() })
}

func (b Block) baseOrFoot() Mm {
	if b.Base == 0 {
		return b.H
	}
	return b.Base
}

// row sets blocks from left to right, each as far down as drop says.
func row(gap Mm, bs []Block, drop func(b Block, h Mm) Mm) Block {
	out := grown(bs...)
	for _, b := range bs {
		out.H = max(out.H, b.H)
	}
	tall := out.H
	x, first := Mm(0), true
	for _, b := range bs {
		if b.Empty() {
			continue
		}
		if !first {
			x += gap
		}
		first = false
		y := drop(b, tall)
		out.place(b, x, y)
		if out.Base == 0 && b.Base != 0 {
			out.Base = y + b.Base
		}
		x += b.W
		out.H = max(out.H, y+b.H)
	}
	out.W = x
	return out
}

// Pad gives the block with room about it.
func (b Block) Pad(top, right, bottom, left Mm) Block {
	out := grown(b)
	out.place(b, left, top)
	out.W, out.H = b.W+left+right, b.H+top+bottom
	if b.Base != 0 {
		out.Base = b.Base + top
	}
	return out
}

// Inset gives the block with the same room on all sides.
func (b Block) Inset(by Mm) Block { return b.Pad(by, by, by, by) }

// Border draws a rectangle about the block, under its items. The outline is
// centred on the block's edge; the size stays.
func (b Block) Border(r Rect) Block {
	r.W, r.H = b.W, b.H
	return b.Under(Drawn(b.W, b.H, Item{Shape: r}))
}

// Under draws the other block beneath this one, their corners together.
func (b Block) Under(lower Block) Block {
	out := Overlay(lower, b)
	out.Base = b.Base
	return out
}

// Overlay draws the blocks over each other, their top left corners together, the
// first lowest.
func Overlay(bs ...Block) Block {
	out := grown(bs...)
	for _, b := range bs {
		out.place(b, 0, 0)
		out.W, out.H = max(out.W, b.W), max(out.H, b.H)
		if out.Base == 0 {
			out.Base = b.Base
		}
	}
	return out
}

// At gives the block moved right and down; the size grows with it.
func (b Block) At(x, y Mm) Block { return b.Pad(y, 0, 0, x) }

// Center sets the block in the middle of the width. A block wider than the width
// becomes a misfit.
func (b Block) Center(width Mm) Block { return b.Fill(width, b.H, 0.5, 0) }

// Right sets the block at the right end of the width.
func (b Block) Right(width Mm) Block { return b.Fill(width, b.H, 1, 0) }

// Fill gives the block exactly the size w by h, the content lying at the share
// across and down of the free room: 0, 0 top left, 0.5, 0.5 in the middle. A
// content that is larger keeps its size, lies at the corner, and becomes a
// misfit.
func (b Block) Fill(w, h Mm, across, down float64) Block {
	out := grown(b)
	x, y := (w-b.W)*Mm(across), (h-b.H)*Mm(down)
	out.place(b, max(x, 0), max(y, 0))
	out.W, out.H = w, h
	if b.Base != 0 {
		out.Base = b.Base + max(y, 0)
	}
	if !b.W.Fits(w) {
		out.AddMisfits(Misfit{Ref: b.someRef(), Kind: TooWide, Text: b.someText(), Over: b.W - w})
	}
	if !b.H.Fits(h) {
		out.AddMisfits(Misfit{Ref: b.someRef(), Kind: TooHigh, Text: b.someText(), Over: b.H - h})
	}
	return out
}

// Tagged puts the ref on every item and misfit of the block that has none yet.
func (b Block) Tagged(ref Ref) Block {
	b.SetPartings(nil)
	if ref == nil {
		return b
	}
	b.ink = b.ink.changed(func(items []Item) {
		for i := range items {
			if items[i].Ref == nil {
				items[i].Ref = ref
			}
		}
	})
	if len(b.Misfits()) > 0 {
		said := slices.Clone(b.Misfits())
		for i := range said {
			said[i].Ref = refOr(said[i].Ref, ref)
		}
		b.besides = &besides{anchors: b.Anchors(), misfits: said}
	}
	return b
}

// Anchored puts a named anchor at the top of the block.
func (b Block) Anchored(name string) Block {
	b.besides = b.besides.with([]Anchor{{Name: name}}, nil)
	return b
}

// someRef is the first ref found in the block, for a misfit about all of it.
func (b Block) someRef() Ref {
	for _, it := range b.Items() {
		if it.Ref != nil {
			return it.Ref
		}
	}
	return nil
}

// someText is the first text found in the block, for a misfit about all of it.
func (b Block) someText() string {
	for _, it := range b.Items() {
		if t, ok := it.Shape.(Text); ok {
			return t.S
		}
	}
	return ""
}
