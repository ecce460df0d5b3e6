package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/layout/sign"
	"matchmark/packs"
)

// caution is the hazard note before a step: signal word, signs, the hazard, what
// happens, how to avoid it, and the rule it leans on.
func (c *composer) caution(n *packs.Caution) layout.Block {
	plate := c.signalPlate(n)
	signs := c.signs(n)
	width := c.width - plate.W - signs.W - 9
	runs := []layout.Run{layout.T(layout.Strong, n.Hazard)}
	for _, s := range []string{n.Result, n.Avoid} {
		if s != "" {
			runs = append(runs, layout.T(layout.Body, " "+s))
		}
	}
	text := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: n.At})}
	var rules []string
	if len(n.Signs) > 0 {
		rules = append(rules, "ISO 7010 "+strings.Join(n.Signs, ", "))
	}
	if n.Rule != "" {
		rules = append(rules, n.Rule)
	}
	rules = append(rules, c.w.siteRules)
	text = append(text, c.Para(width, []layout.Run{layout.T(layout.Sub, strings.Join(rules, " · "))}, layout.ParaOpts{Ref: n.At}))
	row := layout.Middle(3, plate, signs, layout.Above(0.5, text...))
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
	return layout.Middle(1.5, out...)
}

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
