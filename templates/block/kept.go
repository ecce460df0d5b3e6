package block

import "matchmark/layout"

// Kept holds the pieces that were set in one pass over the pages, with the page numbers
// that they asked for. Setting is most of the work of a pack, it is done two or three
// times until the page numbers come to rest, and few pieces print one that still moves.
type Kept struct {
	pieces map[keptKey]kept
	asked  []asked // by what is being set
	within int     // so many things within each other are being set
	// inner are the keys of what is kept within a thing that is being set: what that has
	// taken of it is in its own pieces, and in a large job the rest is forgotten when it is set.
	inner  []keptKey
	shared map[keptKey]*shared
	chosen map[any]any
}

// keptKey tells what is set, and whether page numbers are put in at once.
type keptKey struct {
	what any
	now  bool
}

type kept struct {
	pieces []layout.Piece
	asked  []asked
}

// An asked is a page number that was asked for: the number as it was printed, or where it
// is put in later with how many figures; or with another anchor, whether both are on one
// page.
type asked struct {
	anchor, page string
	figures      int
	other        string
	same         bool
}

// NewKept holds nothing yet.
func NewKept() *Kept { return &Kept{pieces: map[keptKey]kept{}} }

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
	at := keptKey{key, c.Later == nil}
	k, known := c.Kept.pieces[at]
	if !known || !c.still(k.asked) {
		c.Kept.asked = nil
		c.Kept.within++
		pieces := set()
		c.Kept.within--
		k = kept{pieces, c.Kept.asked}
		c.Kept.keep(at, k)
	}
	c.Kept.asked = nil
	if c.Kept.within > 0 {
		c.Kept.asked = appendNew(outer, k.asked) // what this stands in is set again as well
	}
	return k.pieces
}

// Chosen is what was chosen before under a key.
func (c *Composer) Chosen(key any) (choice any, known bool) {
	if c.Kept == nil {
		return nil, false
	}
	choice, known = c.Kept.chosen[key]
	return choice, known
}

// Choose keeps what was chosen under a key, for all passes.
func (c *Composer) Choose(key, choice any) {
	if c.Kept == nil {
		return
	}
	if c.Kept.chosen == nil {
		c.Kept.chosen = map[any]any{}
	}
	c.Kept.chosen[key] = choice
}

// Fixed is a block that is the same in all passes, set once under a key. No page number stands in
// it.
func (c *Composer) Fixed(key any, set func() layout.Block) layout.Block {
	if b, known := c.Chosen(key); known {
		return b.(layout.Block)
	}
	b := set()
	c.Choose(key, b)
	return b
}

// mostPieces is of how many things what was set within them is kept for the next pass as well,
// in which a few are set again: in a larger job memory is dearer.
const mostPieces = 512

// keep keeps what was set under a key.
func (k *Kept) keep(at keptKey, set kept) {
	k.pieces[at] = set
	if k.within > 0 {
		k.inner = append(k.inner, at)
		return
	}
	if len(k.pieces) > mostPieces {
		for i := range set.pieces {
			set.pieces[i].Block = set.pieces[i].Block.Settled()
		}
		for _, key := range k.inner {
			delete(k.pieces, key)
		}
	}
	k.inner = k.inner[:0]
}

// still reports whether page numbers are what they were, or have as many figures.
func (c *Composer) still(was []asked) bool {
	for _, a := range was {
		switch page := c.page(a.anchor); {
		case a.other != "":
			if (page == c.page(a.other)) != a.same {
				return false
			}
		case a.figures > 0:
			if len(page) != a.figures {
				return false
			}
		case page != a.page:
			return false
		}
	}
	return true
}
