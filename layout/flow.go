package layout

// Piece is a block in the flow of a sheet.
type Piece struct {
	Block Block
	// AtTop, if not nil, is set instead of Block where the piece begins a page: what stands
	// in the head of the page takes no room.
	AtTop *Block
	// Gap is the room above, left out at the top of a page, repeated blocks or not.
	Gap Mm
	// Clear is the height at the foot of the block in which no box to write in stands. Where the
	// piece ends a page, so much of it may lie in the room above the foot, up to mostClear.
	Clear Mm
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
	// Dear says that its group had better not be parted, if any other may be in its stead.
	Dear bool
	// Under lists the blocks, outermost first, to be drawn again when a page
	// starts between two pieces that both stand under them. They are compared
	// as pointers.
	Under []*Block
	// Title, when not empty, is a line in the outline at Level below the sheet's
	// own line (1 and up; 0 counts as 1).
	Title string
	Level int
}

// mostClear is how far a page without boxes at its end runs into the room above the foot.
const mostClear Mm = 1.5

// needs is the height that a page takes which ends with the piece at a height.
func (p Piece) needs(y Mm) Mm { return y - min(p.Clear, mostClear) }

// on is the block of a piece on a page that it begins, or that others begin.
func (p Piece) on(top bool) Block {
	if top && p.AtTop != nil {
		return *p.AtTop
	}
	return p.Block
}

// span is what one page holds: the pieces [from, to) below the repeated blocks. Where head
// is not 0 it begins with the lower block of that parting of piece from, counted from 1, and
// where tail is not 0 it ends with the upper block of that parting of piece to.
type span struct {
	from, to   int
	head, tail int
	again      []*Block
}

// block is what stands on the page of a piece of it.
func (s span) block(ps []Piece, i int) Block {
	switch {
	case s.tail > 0 && i == s.to:
		return ps[i].Block.Partings[s.tail-1].Upper
	case i == s.from && s.head > 0:
		return ps[i].Block.Partings[s.head-1].Lower
	}
	return ps[i].on(i == s.from)
}

// last is the index after the last piece of which something stands on the page.
func (s span) last() int {
	if s.tail > 0 {
		return s.to + 1
	}
	return s.to
}

// What a way of breaking a sheet costs, in hundredths of a page: the least sum over
// all pages wins. So a page is saved at the price of two parted groups, and of two
// ways with as many pages and partings the one that fills the earlier pages is taken.
const (
	costPage  = 100.0
	costGroup = 40.0 // a page that ends within a group
	costDear  = 5.0  // so much more where that group is a dear one: no page is taken for it
	costBlock = 42.0 // one that ends within a block
	costMay   = 46.0 // one that ends where it may, though it had better not
	costKeep  = 1e5  // one that ends where it must not; only where no page can hold the chain
	costEmpty = 1.0  // a page left empty, by the square of the share
)

// A pageEnd is where a page ends, the cost of all from its start, and the start of the next.
type pageEnd struct {
	cost     float64
	to, tail int
}

// breakPages is the one decision where pages end. It looks at all ways to break the
// sheet, from its end forward, and takes the cheapest. A page that begins with piece i has
// room(i). A piece that no page can hold gets a page of its own; tall reports it.
func breakPages(ps []Piece, room func(i int) Mm, tall func(i int, over Mm)) []span {
	n := len(ps)
	best := make([][]pageEnd, n+1) // for each piece that starts a page, whole or with a lower block
	best[n] = []pageEnd{{}}
	for i := n - 1; i >= 0; i-- {
		best[i] = make([]pageEnd, 1+len(ps[i].Block.Partings))
		for head := len(best[i]) - 1; head >= 0; head-- { // the whole piece may end its own page within it
			best[i][head] = cheapest(ps, span{from: i, head: head}, room(i), best)
		}
	}
	var out []span
	for i, head := 0, 0; i < n; {
		end := best[i][head]
		s := span{from: i, to: end.to, head: head, tail: end.tail, again: repeated(ps, i, head)}
		if s.last() == i+1 {
			if over := ps[i].needs(s.block(ps, i).H+heightOf(s.again)) - room(i); over > slack {
				tall(i, over)
			}
		}
		out = append(out, s)
		if i, head = end.to, end.tail; head == 0 {
			i = nextStart(ps, i)
		}
	}
	return out
}

// cheapest is where the page that starts as a span does ends best, when it is known for all
// starts after it.
func cheapest(ps []Piece, s span, room Mm, best [][]pageEnd) pageEnd {
	n := len(ps)
	y := heightOf(repeated(ps, s.from, s.head))
	end := pageEnd{to: -1}
	take := func(to, tail int, cost float64) {
		if end.to < 0 || cost <= end.cost {
			end = pageEnd{cost: cost, to: to, tail: tail}
		}
	}
	empty := func(used Mm) float64 {
		share := float64(max(room-used, 0) / room)
		return costEmpty * share * share
	}
	for to := s.from + 1; to <= n; to++ {
		p, first := ps[to-1], to == s.from+1
		if !first {
			if p.NewPage {
				break
			}
			y += p.Gap
		}
		if !first || s.head == 0 {
			for k, x := range p.Block.Partings {
				if (y + x.Upper.H).fits(room) {
					take(to-1, k+1, costPage+x.cost()+dear(p)+empty(y+x.Upper.H)+best[to-1][k+1].cost)
				}
			}
		}
		y += s.block(ps, to-1).H
		if !p.needs(y).fits(room) && !first {
			if y-mostClear > room {
				break
			}
			continue
		}
		next := nextStart(ps, to)
		cost := costPage + partCost(ps, to, next) + best[next][0].cost
		if next < n {
			cost += empty(y)
		}
		take(to, 0, cost)
	}
	return end
}

// cost is that of a page that ends at a parting.
func (x Parting) cost() float64 {
	if x.Apart {
		return 0
	}
	return costBlock
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
		return costGroup + dear(above)
	}
	return 0
}

// dear is what it costs besides to part the group of a piece.
func dear(p Piece) float64 {
	if p.Dear && p.Group != 0 {
		return costDear
	}
	return 0
}

// repeated lists the blocks to be drawn again on a page that starts with piece i, or with
// the lower block of one of its partings.
func repeated(ps []Piece, i, head int) []*Block {
	if head > 0 {
		return ps[i].Under
	}
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
