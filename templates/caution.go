package templates

import (
	"cmp"
	"matchmark/packs/job"
	"strings"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/layout/sign"
)

// caution is the hazard note before a step, short: signal word, signs in one row,
// the hazard, how to keep clear of it, and where it stands in full with the rule
// it leans on.
func (c *composer) caution(n *job.Caution) layout.Block {
	runs := []layout.Run{
		layout.T(layout.Strong, n.Hazard+" "), layout.T(layout.Body, cmp.Or(n.Short, n.Avoid)),
		layout.T(layout.Sub, "  "+fill(c.w.inFull, c.page("caution "+n.Key))),
	}
	signs := c.signs(n, shortNote)
	signs = signs[:min(len(signs), shortSigns)]
	row := layout.Middle(1.2, signs...)
	return c.note(n, shortNote, row, c.Para(c.noteWidth(n, shortNote, row), runs, layout.ParaOpts{Ref: noteRef(n)}))
}

// Heights of the panel and the signs of a note, before a step and in full, and how
// many signs stand before a step: those of the hazard come first.
const (
	shortNote  layout.Mm = 9
	fullNote   layout.Mm = 11
	shortSigns int       = 3
)

// noteInFull is the hazard note on the sheet of cautions, with what happens, the
// rule, who has the last word, and the steps before which it stands.
func (c *composer) noteInFull(n *job.Caution, runs []layout.Run, before string) layout.Block {
	signs := inRows(c.signs(n, fullNote), 2)
	width := c.noteWidth(n, fullNote, signs)
	var small []string
	if len(n.Signs) > 0 {
		small = append(small, "ISO 7010 "+strings.Join(n.Signs, ", "))
	}
	if n.Rule != "" {
		small = append(small, n.Rule)
	}
	small = append(small, c.w.siteRules)
	if before != "" {
		small = append(small, before)
	}
	return c.note(n, fullNote, signs, layout.Above(0.5, c.Para(width, runs, layout.ParaOpts{Ref: noteRef(n)}),
		c.Para(width, []layout.Run{layout.T(layout.Sub, strings.Join(small, " · "))}, layout.ParaOpts{Ref: noteRef(n)})))
}

// note frames the panel of the signal word, the signs and the text.
func (c *composer) note(n *job.Caution, high layout.Mm, signs, text layout.Block) layout.Block {
	row := layout.Middle(3, c.signalPlate(n, high), signs, text)
	row.W = c.width - 3
	return row.Pad(0.6, 1.5, 0.6, 1.5).Border(layout.Rect{Weight: layout.Outline})
}

// noteWidth is the width that panel and signs leave for the text.
func (c *composer) noteWidth(n *job.Caution, high layout.Mm, signs layout.Block) layout.Mm {
	width := c.width - c.signalPlate(n, high).W - signs.W - 9
	if signs.Empty() {
		width += 3
	}
	return width
}

// signalPlate is the signal word, white on black; all but NOTICE carry the alert
// triangle, as ANSI Z535.6 has it.
func (c *composer) signalPlate(n *job.Caution, high layout.Mm) layout.Block {
	return sign.Panel(c.Setter, c.w.signals[n.Signal], n.Signal != "notice", high, noteRef(n))
}

// signs are the drawn ISO 7010 signs. One that has no drawing is printed by its
// number alone, on the sheet of cautions.
func (c *composer) signs(n *job.Caution, high layout.Mm) []layout.Block {
	var out []layout.Block
	for _, code := range n.Signs {
		if b, ok := sign.Sign(code, high, noteRef(n)); ok {
			out = append(out, b)
		}
	}
	return out
}

// inRows sets signs in rows of so many.
func inRows(signs []layout.Block, across int) layout.Block {
	var rows []layout.Block
	for len(signs) > across {
		rows = append(rows, layout.Middle(1.5, signs[:across]...))
		signs = signs[across:]
	}
	return layout.Above(1, append(rows, layout.Middle(1.5, signs...))...)
}

// holdBar is the full-width bar where work stops until a named person releases
// it.
func (c *composer) holdBar(st *job.Step) layout.Block {
	h := st.Hold
	word, mark := c.w.hold, h.Mark
	if st == h.Again {
		mark = fill(c.w.holdAgain, mark)
	}
	if h.Witness {
		word = c.w.witness
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleName, c.w.releasedBy, h.At), c.WideBox(layout.RoleTime, 30, 1, c.w.dateTime, h.At))
	width := c.width - boxes.W - 20
	text := layout.Above(0.5,
		c.Para(width, []layout.Run{layout.T(layout.Limit, word+" "+mark+"  "), layout.T(layout.Body, h.What)}, layout.ParaOpts{Ref: h.At}),
		c.Para(width, []layout.Run{layout.T(layout.Sub, h.Releases)}, layout.ParaOpts{Ref: h.At}))
	text.W = width
	row := layout.Middle(4, holdBars(h), text, boxes)
	row.W = c.width - 4
	return row.Pad(2, 2, 2, 2).Border(layout.Rect{Weight: layout.Heavy}).Anchored("hold " + mark)
}

// holdBars is the hatched field that tells a hold from a step in grey too.
func holdBars(h *job.Hold) layout.Block {
	s := draw.NewScene(draw.View{X1: 8, Y1: 10}, 8, 10, h.At)
	for x := -10.0; x < 8; x += 3.2 {
		s.Shape(draw.Pen{}, layout.Black, bar(x)...)
	}
	return s.Block()
}

// bar is one slanting bar of the field, cut off at its sides.
func bar(x float64) []draw.XY {
	const wide, high, right = 1.6, 10.0, 8.0
	clip := func(x, y float64) draw.XY {
		// Along a bar x - y is constant: what reaches past a side is moved up or
		// down it.
		switch {
		case x < 0:
			return draw.XY{X: 0, Y: y - x}
		case x > right:
			return draw.XY{X: right, Y: y - (x - right)}
		}
		return draw.XY{X: x, Y: y}
	}
	return []draw.XY{clip(x, 0), clip(x+wide, 0), clip(x+wide+high, high), clip(x+high, high)}
}

// noteRef is where a note stands in the file; a built-in one stands nowhere, and
// takes the place of the step that it is printed before.
func noteRef(n *job.Caution) layout.Ref {
	if n.At.IsZero() {
		return nil
	}
	return n.At
}
