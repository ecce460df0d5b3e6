package layout

import "slices"

// turned gives the items of a page that is w wide as they lie when the page is
// turned a quarter counter-clockwise, so that its top comes to the left.
func turned(items []Item, w Mm) []Item {
	out := make([]Item, len(items))
	for i, it := range items {
		it.X, it.Y = it.Y, w-it.X
		it.Turn += 90
		out[i] = it
	}
	return out
}

// Turned gives the block turned a quarter counter-clockwise: what was its top is
// now its left side.
func (b Block) Turned() Block {
	out := Drawn(b.H, b.W, turned(b.Items(), b.W)...)
	if b.besides != nil {
		at := slices.Clone(b.Anchors())
		for i := range at {
			at[i].Y = 0
		}
		out.besides = &besides{anchors: at, misfits: b.Misfits()}
	}
	return out
}
