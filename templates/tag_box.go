package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// boxLabel is stuck on a box. The code stands at its right end; the lines go on
// below the mark beside it, and below it over the whole width.
func (c *composer) boxLabel(t *job.Tag) layout.Block {
	const inner = boxW - 2*tagEdge
	code := c.codeWithText(t, tagCode)
	left := layout.Mm(inner) - code.W - 3
	mark := c.Words(layout.MarkTag(layout.Bold, boxMark), t.Base)
	mark = layout.Block{W: mark.W, H: boxMark + 1.5, Items: mark.At(0, boxMark+0.5-mark.Base).Items}
	beside := c.markAndPlace(t, mark, left)
	narrow, wide := c.tagFacts(t, left), c.tagFacts(t, inner)
	n := 0
	for n < len(narrow) && beside.H+0.2+narrow[n].H <= code.H {
		beside = layout.Above(0.2, beside, narrow[n])
		n++
	}
	beside.W = left
	low := c.labelBoxes(t, inner)
	facts := layout.Above(0.2, append([]layout.Block{layout.Beside(3, beside, code)}, wide[n:]...)...)
	body := facts.Fill(inner, boxH-2*tagEdge-low.H-1, 0, 0)
	return c.label(boxW, boxH, layout.Above(1, body, low))
}

// labelBoxes are the boxes at the foot of a box label, and what becomes of the
// parts.
func (c *composer) labelBoxes(t *job.Tag, width layout.Mm) layout.Block {
	w := c.W
	tick := func(word string) layout.Block { return c.Tick(layout.Caption, word, t.At) }
	status := layout.Beside(2, layout.Above(1, tick(w.Tag.Reuse), tick(w.Common.Scrap)), layout.Above(1, tick(w.Tag.Repair), tick(w.Tag.OnHold)))
	each := (width - status.W - 3*layout.GapX) / 3
	return layout.Bottom(layout.GapX,
		c.WideBox(layout.RoleWords, each, 1, w.Common.CountedIn, t.At), c.WideBox(layout.RoleWords, each, 1, w.Common.CountedOut, t.At), c.WideBox(layout.RoleWords, each, 1, w.Common.Shelf, t.At), status)
}

// label is the frame of a stuck label.
func (c *composer) label(w, h layout.Mm, body layout.Block) layout.Block {
	return body.Inset(tagEdge).Fill(w, h, 0, 0).Border(layout.Rect{Weight: layout.Rule, Radius: 3})
}
