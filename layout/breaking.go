package layout

import "math"

// A pageEnd is where a page ends, the cost of all from its start, and the start of the next,
// which is within a group or block of a steady sheet or not.
type pageEnd struct {
	cost     float64
	to, tail int
	within   bool
}

// none is the cost of what cannot be.
var none = math.Inf(1)

// A breaking is the cheapest end of each page that may be, by the piece that starts it, by
// whether that is whole or a lower block, and, where they are counted, by how many of the steady
// pages after it begin within a group or block.
type breaking struct {
	flow
	best    []pageEnd
	first   []int // where the ends of each piece begin in best, in lots of slots
	counted bool
	slots   int
}

// A flow is what is broken into pages: its pieces, the room of a page that begins with one,
// and whether few pages of its sheet may begin within a group or block.
type flow struct {
	ps     []Piece
	room   func(i int) Mm
	steady func(i int) bool
}

// breakPages is the one decision where pages end. It looks at all ways to break the
// sheet, from its end forward, and takes the cheapest; where too many pages of steady sheets
// would begin within a group or block, the cheapest of those ways in which few do, if there is
// one. A piece that no page can hold gets a page of its own; tall reports it.
func breakPages(f flow, tall func(i int, over Mm)) []span {
	ps := f.ps
	out, n := newBreaking(f, 0).spans(0)
	if n > f.mostWithin(out) && n <= mostCounted {
		b, least := newBreaking(f, n), none
		for k := range n {
			if cost := b.after(0, 0)[k].cost; cost < least {
				if few, _ := b.spans(k); k <= f.mostWithin(few) {
					out, least = few, cost
				}
			}
		}
	}
	for _, s := range out {
		if s.last() == s.from+1 {
			if over := ps[s.from].needs(s.block(ps, s.from).H+heightOf(s.again)) - f.room(s.from); over > slack {
				tall(s.from, over)
			}
		}
	}
	return out
}

// Of oneIn pages of steady sheets one may begin within a group or block. Ways with fewer of them
// are looked for where they are no more than mostCounted, for the work grows with their number.
const oneIn, mostCounted = 5, 40

// mostWithin is how many pages of steady sheets may begin within a group or block; one always
// may.
func (f flow) mostWithin(spans []span) int {
	pages := 0
	for _, s := range spans {
		if f.steady(s.from) {
			pages++
		}
	}
	return max(pages/oneIn, 1)
}

// newBreaking works out where pages end best, with fewer than a number of steady ones that begin
// within a group or block, or, for 0, with any number.
func newBreaking(f flow, fewer int) breaking {
	ps, n := f.ps, len(f.ps)
	b := breaking{flow: f, counted: fewer > 0, slots: max(fewer, 1), first: make([]int, n+2)}
	for i := range ps {
		b.first[i+1] = b.first[i] + 1 + len(ps[i].Block.Partings())
	}
	b.first[n+1] = b.first[n] + 1
	b.best = make([]pageEnd, b.first[n+1]*b.slots)
	for i := range b.best {
		b.best[i].cost = none
	}
	b.after(n, 0)[0].cost = 0
	for i := n - 1; i >= 0; i-- {
		for head := len(ps[i].Block.Partings()); head >= 0; head-- { // the whole piece may end its own page within it
			b.cheapest(span{from: i, head: head})
		}
	}
	return b
}

// after are the ends of a page that starts with a piece, or with the lower block of one of its
// partings.
func (b breaking) after(piece, head int) []pageEnd {
	at := (b.first[piece] + head) * b.slots
	return b.best[at : at+b.slots]
}

// spans are the pages of a breaking, with so many steady ones that begin within a group or block
// where they are counted, and how many do.
func (b breaking) spans(k int) (out []span, within int) {
	for i, head := 0, 0; i < len(b.ps); {
		end := b.after(i, head)[k]
		out = append(out, span{from: i, to: end.to, head: head, tail: end.tail, again: repeated(b.ps, i, head)})
		if end.within {
			within++
			if b.counted {
				k--
			}
		}
		if i, head = end.to, end.tail; head == 0 {
			i = nextStart(b.ps, i)
		}
	}
	return out, within
}

// cheapest works out where the page that starts as a span does ends best, when it is known for all
// starts after it.
func (b breaking) cheapest(s span) {
	ps, room, n, page := b.ps, b.room(s.from), len(b.ps), costPage
	if b.steady(s.from) {
		page += costWork
	}
	y := heightOf(repeated(ps, s.from, s.head))
	ends := b.after(s.from, s.head)
	take := func(to, tail int, cost float64, within bool, next []pageEnd) {
		more := 0
		if within && b.counted {
			more = 1
		}
		for k := more; k < b.slots; k++ {
			if all := cost + next[k-more].cost; all <= ends[k].cost && all < none {
				ends[k] = pageEnd{cost: all, to: to, tail: tail, within: within}
			}
		}
	}
	empty := func(used Mm) float64 {
		share := float64(max(room-used, 0) / room)
		return costEmpty * share * share
	}
	for to := s.from + 1; to <= n; to++ {
		p, first := &ps[to-1], to == s.from+1
		if !first {
			if p.NewPage {
				break
			}
			y += p.Gap
		}
		if !first || s.head == 0 {
			for k := range p.Block.Partings() {
				x := &p.Block.Partings()[k]
				if (y + x.Upper.H).Fits(room) {
					take(to-1, k+1, page+x.cost()+dear(p)+empty(y+x.Upper.H), !x.Apart && b.steady(to-1), b.after(to-1, k+1))
				}
			}
		}
		y += s.block(ps, to-1).H
		if !p.needs(y).Fits(room) && !first {
			if y-mostClear > room {
				break
			}
			continue
		}
		next := nextStart(ps, to)
		cost, within := partCost(ps, to, next)
		if next < n {
			cost += empty(y)
		}
		take(to, 0, page+cost, within && b.steady(next), b.after(next, 0))
	}
}
