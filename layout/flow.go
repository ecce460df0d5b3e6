package layout

// Piece is a block in the flow of a sheet.
type Piece struct {
	Block Block
	// Gap is the room above, left out at the top of a page, repeated blocks or not.
	Gap Mm
	// KeepNext keeps this piece on one page with the next one: headings.
	KeepNext bool
	// MayPart lets a page end after this piece, though it belongs with the next
	// one, where it would else stay empty to more than openShare.
	MayPart bool
	// Closes says that the piece only ends what stands above it, as a line: where the
	// page is full it is left out, the page ends as well.
	Closes bool
	// NewPage starts a page with this piece.
	NewPage bool
	// Group keeps neighbouring pieces of the same number together if a page can
	// hold them all; a larger group is parted between pieces. 0 is no group.
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

// span is what one page holds: the pieces [from, to) below the repeated blocks.
type span struct {
	from, to int
	again    []*Block
}

// breakPages is the one decision where pages end. Pages are filled from the top;
// a chain of pieces that belong together goes to the next page as a whole when a
// page can hold it, and is parted between pieces when none can, never right after
// a heading. A piece that no page can hold gets a page of its own; tall reports it.
func breakPages(ps []Piece, room Mm, tall func(i int, over Mm)) []span {
	var out []span
	for i := 0; i < len(ps); {
		if ps[i].Closes && i > 0 {
			i++
			continue
		}
		again := repeated(ps, i)
		to := fillPage(ps, i, room-heightOf(again))
		if to == i+1 {
			if over := ps[i].Block.H + heightOf(again) - room; over > slack {
				tall(i, over)
			}
		}
		out = append(out, span{from: i, to: to, again: again})
		i = to
	}
	return out
}

// fillPage gives the index of the first piece that does not go on the page which
// starts with piece i and has the given room. It is always beyond i.
func fillPage(ps []Piece, i int, room Mm) int {
	y := Mm(0)
	for j := i; j < len(ps); {
		if ps[j].NewPage && j > i {
			return j
		}
		k := chainEnd(ps, j)
		h := stackHeight(ps, j, k, j == i)
		if (y + h).fits(room) {
			y += h
			j = k
			continue
		}
		if ps[k-1].Closes && k-1 > j && (y + stackHeight(ps, j, k-1, j == i)).fits(room) {
			return k - 1
		}
		// On a page of its own the chain would stand below its own repeated
		// blocks and without its first gap.
		if m := partOpen(ps, j, k, room-y); j > i && m > j && room-y > openShare*room {
			return m
		}
		if j > i && (heightOf(repeated(ps, j)) + stackHeight(ps, j, k, true)).fits(room+heightOf(repeated(ps, i))) {
			return j
		}
		return partChain(ps, i, j, k, room-y)
	}
	return len(ps)
}

// openShare is the share of a page that is too much to be left empty for the sake of
// pieces that may be parted.
const openShare = 0.3

// partOpen gives the last place within the chain [j, k) that fits the room and where
// it may be parted, j if there is none.
func partOpen(ps []Piece, j, k int, room Mm) int {
	for m := k - 1; m > j; m-- {
		if ps[m-1].MayPart && stackHeight(ps, j, m, false).fits(room) {
			return m
		}
	}
	return j
}

// partChain ends a page within the chain [j, k), which no page can hold whole.
// The page starts at i and has the given room left.
func partChain(ps []Piece, i, j, k int, room Mm) int {
	m := j
	for m < k && stackHeight(ps, j, m+1, j == i).fits(room) {
		m++
	}
	cut := m
	for cut > j && cut < k && ps[cut-1].KeepNext {
		cut-- // not right after a heading
	}
	switch {
	case cut > j:
		return cut
	case j > i:
		return j
	case m > j:
		return m // headings alone fill the page
	}
	return j + 1 // one piece that is higher than the page
}

// chainEnd is the index after the pieces that belong together with piece j.
func chainEnd(ps []Piece, j int) int {
	k := j + 1
	for k < len(ps) && !ps[k].NewPage &&
		(ps[k-1].KeepNext || ps[k].Group != 0 && ps[k].Group == ps[k-1].Group) {
		k++
	}
	return k
}

// stackHeight is the height of the pieces [from, to), without the first gap at
// the top of a page.
func stackHeight(ps []Piece, from, to int, top bool) (h Mm) {
	for i := from; i < to; i++ {
		if i > from || !top {
			h += ps[i].Gap
		}
		h += ps[i].Block.H
	}
	return h
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
