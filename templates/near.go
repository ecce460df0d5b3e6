package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// A near guesses in the first pass on which pages a sheet of work stands, as far as it is set:
// what a step tells of those before it is set with as many figures as it will have, and need not
// be set again in the next pass.
type near struct {
	pages      map[string]int // of anchors
	page       int            // that is being filled
	used, room layout.Mm      // of it
	seen       int            // pieces
}

// nearPages begins the guess on the page after those known so far; nil where pages are known from
// a pass before.
func (c *composer) nearPages() *near {
	if c.sheet != nil || c.Pages == nil {
		return nil
	}
	last := 0
	for _, page := range c.Pages {
		last = max(last, page)
	}
	own := c.own
	own.Pieces = []layout.Piece{{}}
	_, room := layout.RoomLeft(c.paper, []layout.Sheet{own})
	return &near{pages: c.Pages, page: last + 1, room: room}
}

// see counts the pieces that have come since the last time, and guesses that the steps that come
// next begin on the page that is being filled.
func (n *near) see(pieces []layout.Piece, next ...*job.Step) {
	if n == nil {
		return
	}
	more := height(pieces[n.seen:]) // of one step, which is seldom parted
	if n.used += more; n.used > n.room {
		n.page, n.used = n.page+1, more
	}
	for _, p := range pieces[n.seen:] {
		for _, a := range p.Block.Anchors() {
			n.guess(a.Name)
		}
	}
	n.seen = len(pieces)
	for _, st := range next {
		for _, d := range st.Measure {
			n.guess("found " + d.Mark)
		}
	}
}

// guess puts an anchor on the page that is being filled, if nothing else is known of it.
func (n *near) guess(anchor string) {
	if _, known := n.pages[anchor]; !known {
		n.pages[anchor] = n.page
	}
}
