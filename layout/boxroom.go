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
	for i := range b.Partings() {
		_, last := b.Partings()[i].Lower.BoxRoom()
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
	for o := k.own; o != nil; o = o.of {
		for i := range o.items {
			if it := &o.items[i]; strings.HasPrefix(it.Role, boxRoles) && it.Role != RoleTick {
				_, t, _, b := it.Bounds()
				see(t, b)
			}
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

// GapBelow is the room to leave between two blocks below each other so that no box to write in of
// the lower one comes nearer than GapY to one of the upper one that it is not GapX beside; no less
// than gap. Blocks of which boxes share a line, as the rows of a table do, keep theirs. An upper
// block that may end in another way, on a page of its own, is looked at in all of them.
func GapBelow(upper, lower Block, gap Mm) Mm {
	_, foot := upper.BoxRoom()
	top, _ := lower.BoxRoom()
	if foot+gap+top <= sharedLine {
		return gap
	}
	need := gap
	ends := []Block{upper}
	for i := range upper.Partings() {
		ends = append(ends, upper.Partings()[i].Lower)
	}
	for _, end := range ends {
		end.ink.eachBox(0, 0, func(a [4]Mm) {
			if end.H-a[3]+gap >= GapY {
				return
			}
			lower.ink.eachBox(0, 0, func(b [4]Mm) {
				if max(a[0]-b[2], b[0]-a[2]) < GapX-Outline-slack { // between their outlines
					need = max(need, GapY-(end.H-a[3])-b[1])
				}
			})
		})
	}
	return need
}

// sharedLine is how near two boxes are that have a line in common.
const sharedLine Mm = 0.1

// eachBox calls see with the left, top, right and lower edge of each box to write in, moved by x
// and y; boxes to tick are left out, as BoxRoom does.
func (k *ink) eachBox(x, y Mm, see func([4]Mm)) {
	k.eachItem(x, y, func(it *Item, x, y Mm) {
		if strings.HasPrefix(it.Role, boxRoles) && it.Role != RoleTick {
			l, t, r, b := it.Bounds()
			see([4]Mm{l + x, t + y, r + x, b + y})
		}
	})
}
