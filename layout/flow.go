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
	// Led says that what is told of the piece stands above it once: of as many pages, those are
	// taken of which none begins with it.
	Led bool
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
func (p *Piece) needs(y Mm) Mm { return y - min(p.Clear, mostClear) }

// on is the block of a piece on a page that it begins, or that others begin.
func (p *Piece) on(top bool) *Block {
	if top && p.AtTop != nil {
		return p.AtTop
	}
	return &p.Block
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
func (s span) block(ps []Piece, i int) *Block {
	switch {
	case s.tail > 0 && i == s.to:
		return &ps[i].Block.Partings()[s.tail-1].Upper
	case i == s.from && s.head > 0:
		return &ps[i].Block.Partings()[s.head-1].Lower
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
	costLed   = 3.0  // one that begins with what is led
	costWork  = 2.0  // so much more for one that a steady sheet begins: a list begins one as well
	costGroup = 40.0 // a page that ends within a group
	costDear  = 5.0  // so much more where that group is a dear one: no page is taken for it
	costBlock = 42.0 // one that ends within a block
	costMay   = 46.0 // one that ends where it may, though it had better not
	costKeep  = 1e5  // one that ends where it must not; only where no page can hold the chain
	costEmpty = 1.0  // a page left empty, by the square of the share
)

// cost is that of a page that ends at a parting.
func (x *Parting) cost() float64 {
	switch {
	case !x.Apart:
		return costBlock
	case x.Led:
		return costLed
	}
	return 0
}

// nextStart is the piece with which the page after one that ends before piece to begins:
// what only closes the piece above it is left out.
func nextStart(ps []Piece, to int) int {
	for to < len(ps) && ps[to].Closes {
		to++
	}
	return to
}

// partCost is the cost of a page that ends before piece to and goes on with next, and whether
// that is within a group.
func partCost(ps []Piece, to, next int) (cost float64, within bool) {
	if next >= len(ps) {
		return 0, false
	}
	above := &ps[next-1]
	within = ps[next].Group != 0 && ps[next].Group == above.Group
	switch {
	case ps[next].NewPage:
		return 0, within
	case next == to && above.KeepNext && above.MayPart:
		return costMay, within
	case above.KeepNext:
		return costKeep, within
	case within:
		return costGroup + dear(above), within
	case ps[next].Led:
		return costLed, false
	}
	return 0, false
}

// dear is what it costs besides to part the group of a piece.
func dear(p *Piece) float64 {
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
