package layout

import "strings"

// BoxRoom is the room that a block has above its first box to write in, and below its last,
// in whatever way it is set on two pages; boxes to tick may stand closer, and a block without
// boxes has its whole height.
func (b Block) BoxRoom() (above, below Mm) {
	above, below = b.H, b.H
	if top, bottom, some := b.ink.boxes(); some {
		above, below = min(above, top), min(below, b.H-bottom)
	}
	for i := range b.Partings {
		_, last := b.Partings[i].Lower.BoxRoom()
		below = min(below, last)
	}
	return above, below
}

// boxes are the top of the highest box to write in and the foot of the lowest. Text is none, and
// is not set for it.
func (k *ink) boxes() (top, bottom Mm, some bool) {
	see := func(t, b Mm) {
		if !some {
			top, bottom, some = t, b, true
			return
		}
		top, bottom = min(top, t), max(bottom, b)
	}
	for i := range k.items {
		if it := &k.items[i]; strings.HasPrefix(it.Role, boxRoles) && it.Role != RoleTick {
			_, t, _, b := it.Bounds()
			see(t, b)
		}
	}
	for i := range k.parts {
		p := &k.parts[i]
		if t, b, inner := p.boxes(); inner {
			see(t+p.y, b+p.y)
		}
	}
	return top, bottom, some
}
