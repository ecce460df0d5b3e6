package block

import "matchmark/layout"

// Kept holds the pieces that were set in one pass over the pages, with the page numbers
// that they asked for. Setting is most of the work of a pack, it is done two or three
// times until the page numbers come to rest, and few pieces print one that still moves.
type Kept struct {
	pieces map[any]kept
	asked  []asked // by what is being set
}

type kept struct {
	pieces []layout.Piece
	asked  []asked
}

// An asked is a page number that was asked for, as it was printed.
type asked struct{ anchor, page string }

// NewKept holds nothing yet.
func NewKept() *Kept { return &Kept{pieces: map[any]kept{}} }

// Once gives the pieces of a thing as they were set in the pass before, if every page
// number in them is still the same; else it sets them. set must depend on nothing else
// that changes from pass to pass, and key must tell what is set, of what, and in which
// width. The caller must not write to the pieces.
func (c *Composer) Once(key any, set func() []layout.Piece) []layout.Piece {
	if c.Kept == nil {
		return set()
	}
	outer := c.Kept.asked
	c.Kept.asked = nil
	k, known := c.Kept.pieces[key]
	if !known || !c.still(k.asked) {
		c.Kept.asked = nil
		pieces := set()
		k = kept{pieces, c.Kept.asked}
		c.Kept.pieces[key] = k
	}
	c.Kept.asked = append(outer, k.asked...)
	return k.pieces
}

// still reports whether page numbers are what they were.
func (c *Composer) still(was []asked) bool {
	for _, a := range was {
		if c.Page(a.anchor) != a.page {
			return false
		}
	}
	return true
}
