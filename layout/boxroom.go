package layout

import "strings"

// BoxRoom is the room that a block has above its first box to write in, and below its last,
// in whatever way it is set on two pages; boxes to tick may stand closer, and a block without
// boxes has its whole height.
func (b Block) BoxRoom() (above, below Mm) {
	above, below = b.H, b.H
	b.Each(func(it Item) {
		if strings.HasPrefix(it.Role, "box:") && it.Role != RoleTick {
			_, top, _, bottom := it.Bounds()
			above, below = min(above, top), min(below, b.H-bottom)
		}
	})
	for _, p := range b.Partings {
		_, last := p.Lower.BoxRoom()
		below = min(below, last)
	}
	return above, below
}
