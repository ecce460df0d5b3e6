package templates

import (
	"cmp"
	"strings"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/layout/sign"
	"matchmark/packs"
)

// caution is the hazard note before a step, short: signal word, signs, the hazard,
// how to keep clear of it, the rule it leans on, and where it stands in full.
func (c *composer) caution(n *packs.Caution) layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, n.Hazard+" "), layout.T(layout.Body, cmp.Or(n.Short, n.Avoid))}
	return c.note(n, runs, fill(c.w.inFull, c.page("caution "+n.Key)))
}

// note sets a hazard note: the panel of its signal word, its signs, the text, and
// a small line of the signs' numbers, the rule and who has the last word.
func (c *composer) note(n *packs.Caution, runs []layout.Run, more string) layout.Block {
	plate := c.signalPlate(n)
	signs := c.signs(n)
	width := c.width - plate.W - signs.W - 9
	if signs.Empty() {
		width += 3
	}
	var small []string
	if len(n.Signs) > 0 {
		small = append(small, "ISO 7010 "+strings.Join(n.Signs, ", "))
	}
	if n.Rule != "" {
		small = append(small, n.Rule)
	}
	small = append(small, c.w.siteRules)
	if more != "" {
		small = append(small, more)
	}
	text := layout.Above(0.5, c.Para(width, runs, layout.ParaOpts{Ref: n.At}),
		c.Para(width, []layout.Run{layout.T(layout.Sub, strings.Join(small, " · "))}, layout.ParaOpts{Ref: n.At}))
	row := layout.Middle(3, plate, signs, text)
	row.W = c.width - 3
	return row.Pad(1.5, 1.5, 1.5, 1.5).Border(layout.Rect{Weight: layout.Outline})
}

// signalPlate is the signal word, white on black; all but NOTICE carry the alert
// triangle, as ANSI Z535.6 has it.
func (c *composer) signalPlate(n *packs.Caution) layout.Block {
	return sign.Panel(c.Setter, c.w.signals[n.Signal], n.Signal != "notice", 11, n.At)
}

// signs are the drawn ISO 7010 signs beside each other. One that has no drawing
// is printed by its number alone, in the line of the rules.
func (c *composer) signs(n *packs.Caution) layout.Block {
	var out []layout.Block
	for _, code := range n.Signs {
		if b, ok := sign.Sign(code, 11, n.At); ok {
			out = append(out, b)
		}
	}
	if len(out) > signsAcross {
		return layout.Above(1, layout.Middle(1.5, out[:signsAcross]...), layout.Middle(1.5, out[signsAcross:]...))
	}
	return layout.Middle(1.5, out...)
}

// signsAcross is how many signs stand beside each other before a second row.
const signsAcross = 2

// holdBar is the full-width bar where work stops until a named person releases
// it.
func (c *composer) holdBar(h *packs.Hold) layout.Block {
	word := c.w.hold
	if h.Witness {
		word = c.w.witness
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleName, c.w.releasedBy, h.At), c.WideBox(layout.RoleTime, 30, 1, c.w.dateTime, h.At))
	width := c.width - boxes.W - 20
	text := layout.Above(0.5,
		c.Para(width, []layout.Run{layout.T(layout.Limit, word+" "+h.Mark+"  "), layout.T(layout.Body, h.What)}, layout.ParaOpts{Ref: h.At}),
		c.Para(width, []layout.Run{layout.T(layout.Sub, h.Releases)}, layout.ParaOpts{Ref: h.At}))
	text.W = width
	row := layout.Middle(4, holdBars(h), text, boxes)
	row.W = c.width - 4
	return row.Pad(2, 2, 2, 2).Border(layout.Rect{Weight: layout.Heavy}).Anchored("hold " + h.Mark)
}

// holdBars is the hatched field that tells a hold from a step in grey too.
func holdBars(h *packs.Hold) layout.Block {
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
