package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/stock"
)

// boxLabel is stuck on a box. The code stands in the upper right corner, where its white
// edge is that of the label; the lines go round it.
func (c *composer) boxLabel(t *job.Tag, s stock.Stock) layout.Block {
	const corner, boxEdge layout.Mm = 1, 3
	w, h := layout.Mm(s.W), layout.Mm(s.H-s.Stub)
	inner := w - 2*boxEdge
	code := c.codeWithText(t, s)
	left := w - boxEdge - corner - code.W - 2
	head, low := c.markAndPlace(t, c.markBlock(t, boxMark), left, true), c.labelBoxes(t, inner)
	room := h - 2*boxEdge - low.H - 0.5
	body := fitted(t, func(ty tagType, kinds int) (layout.Block, bool) {
		b := layout.Above(0.2, head, c.setFacts(t, c.tagFacts(t, ty, kinds, left), inner, inner-left, code.H+corner-boxEdge-head.H-0.2))
		return b, hasRoom(b, room)
	})
	face := layout.Above(0.5, body.Fill(inner, room, 0, 0), low).Inset(boxEdge)
	return c.withStub(t, s, layout.Overlay(face, code.At(w-code.W-corner, corner)))
}

// labelBoxes are the boxes at the foot of a box label, edge to edge, and what becomes of
// the parts.
func (c *composer) labelBoxes(t *job.Tag, width layout.Mm) layout.Block {
	w := c.W
	tick := func(word string) layout.Block { return c.Tick(layout.Caption, word, t.At) }
	status := layout.Beside(2, layout.Above(1, tick(w.Tag.Reuse), tick(w.Common.Scrap)), layout.Above(1, tick(w.Tag.Repair), tick(w.Tag.OnHold)))
	rest := width - status.W - 3
	const count, least = 14.2, 15 // the least of a box for words
	sign := max(min(18, rest-2*count-least), (rest-2*count)/2)
	boxes := layout.Beside(0,
		c.WideBox(layout.RoleTally, count, 1, w.Common.CountedIn, t.At), c.WideBox(layout.RoleTally, count, 1, w.Common.CountedOut, t.At),
		c.WideBox(layout.RoleWords, rest-2*count-sign, 1, w.Common.Shelf, t.At), c.WideBox(layout.RoleWords, sign, 1, w.Common.InitialsDate, t.At))
	return layout.Bottom(3, layout.Above(0.8, c.comparedLine(t, rest), boxes), status)
}
