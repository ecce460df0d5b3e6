package layout

// Piece is a block in the flow of a sheet.
type Piece struct {
	Block Block
	// AtTop, if not nil, is set instead of Block where the piece begins a page: what stands
	// in the head of the page takes no room.
	AtTop *Block
	// Gap is the room above, left out at the top of a page, repeated blocks or not.
	Gap Mm
	// KeepNext keeps this piece on one page with the next one: headings.
	KeepNext bool
	// MayPart lets a page end after this piece, though it belongs with the next
	// one, where that saves a page.
	MayPart bool
	// Closes says that the piece only ends what stands above it, as a line: where the
	// page is full it is left out, the page ends as well.
	Closes bool
	// NewPage starts a page with this piece.
	NewPage bool
	// RightHand, with NewPage, starts a page of odd number with this piece, the right
	// hand one of paper that is printed on both sides; the back before it stays empty.
	RightHand bool
	// Group keeps neighbouring pieces of the same number together unless parting
	// them saves a page. 0 is no group.
	Group int
	// Under lists the blocks, outermost first, to be drawn again when a page
	// starts between two pieces that both stand under them. They are compared
	// as pointers.
	Under []*Block
	// Title, when not empty, is a line in the outline at Level below the sheet's
	// own line (1 and up; 0 counts as 1).
	Title string
	Level int
}

// on is the block of a piece on a page that it begins, or that others begin.
func (p Piece) on(top bool) Block {
	if top && p.AtTop != nil {
		return *p.AtTop
	}
	return p.Block
}

// span is what one page holds: the pieces [from, to) below the repeated blocks.
type span struct {
	from, to int
	again    []*Block
}

// What a way of breaking a sheet costs, in hundredths of a page: the least sum over
// all pages wins. So a page is saved at the price of three parted groups, and of two
// ways with as many pages and partings the one that fills the earlier pages is taken.
const (
	costPage  = 100.0
	costGroup = 12.0 // a page that ends within a group
	costMay   = 20.0 // one that ends where it may, though it had better not
	costKeep  = 1e5  // one that ends where it must not; only where no page can hold the chain
	costEmpty = 10.0 // a page left empty, by the square of the share
)

// breakPages is the one decision where pages end. It looks at all ways to break the
// sheet, from its end forward, and takes the cheapest. A piece that no page can hold
// gets a page of its own; tall reports it.
func breakPages(ps []Piece, room Mm, tall func(i int, over Mm)) []span {
	n := len(ps)
	best := make([]float64, n+1) // the cost of all from a piece that starts a page
	ends := make([]int, n)       // where that page ends
	for i := n - 1; i >= 0; i-- {
		y := heightOf(repeated(ps, i))
		for to := i + 1; to <= n; to++ {
			if to > i+1 {
				if ps[to-1].NewPage {
					break
				}
				y += ps[to-1].Gap
			}
			y += ps[to-1].on(to == i+1).H
			if !y.fits(room) && to > i+1 {
				break
			}
			next := nextStart(ps, to)
			cost := costPage + partCost(ps, to, next) + best[next]
			if empty := float64(max(room-y, 0) / room); next < n {
				cost += costEmpty * empty * empty
			}
			if ends[i] == 0 || cost <= best[i] {
				best[i], ends[i] = cost, to
			}
		}
	}
	var out []span
	for i := 0; i < n; i = nextStart(ps, ends[i]) {
		again := repeated(ps, i)
		if ends[i] == i+1 {
			if over := ps[i].on(true).H + heightOf(again) - room; over > slack {
				tall(i, over)
			}
		}
		out = append(out, span{from: i, to: ends[i], again: again})
	}
	return out
}

// nextStart is the piece with which the page after one that ends before piece to begins:
// what only closes the piece above it is left out.
func nextStart(ps []Piece, to int) int {
	for to < len(ps) && ps[to].Closes {
		to++
	}
	return to
}

// partCost is the cost of a page that ends before piece to and goes on with next.
func partCost(ps []Piece, to, next int) float64 {
	switch above := ps[next-1]; {
	case next >= len(ps) || ps[next].NewPage:
		return 0
	case next == to && above.KeepNext && above.MayPart:
		return costMay
	case above.KeepNext:
		return costKeep
	case ps[next].Group != 0 && ps[next].Group == above.Group:
		return costGroup
	}
	return 0
}

// repeated lists the blocks to be drawn again on a page that starts with piece i.
func repeated(ps []Piece, i int) []*Block {
	if i == 0 {
		return nil
	}
	was, now := ps[i-1].Under, ps[i].Under
	n := 0
	for n < len(was) && n < len(now) && was[n] == now[n] {
		n++
	}
	return now[:n]
}

func heightOf(bs []*Block) (h Mm) {
	for _, b := range bs {
		h += b.H
	}
	return h
}
