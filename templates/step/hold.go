package step

import (
	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// holdBar is the full-width bar where work stops until a named person releases
// it.
func holdBar(c *block.Composer, st *job.Step) layout.Block {
	h := st.Hold
	word, mark, signs := c.W.Holds.Hold, h.Mark, c.W.Holds.ReleasedBy
	if st == h.Again {
		mark = c.W.Holds.Again.With(mark)
	}
	if h.Witness {
		word, signs = c.W.Holds.Witness, c.W.Holds.SeenBy // a witness stops nothing, so releases nothing
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleName, signs, h.At), c.WideBox(layout.RoleTime, 30, 1, c.W.Holds.DateTime, h.At))
	width := c.Span - boxes.W - 20
	runs := []layout.Run{layout.T(layout.Limit, word+" "+mark+"  "), layout.T(layout.Body, h.What), layout.T(layout.Sub, "  "+h.Releases)}
	runs = append(runs, c.Under(h.What, func(s *block.Second) string { return s.HoldText(h) })...)
	text := c.Para(width, runs, layout.ParaOpts{Ref: h.At})
	text.W = width
	row := layout.Middle(4, holdBars(h), text, boxes)
	row.W = c.Span - 4
	return row.Pad(0.7, 2, 0.7, 2).Border(layout.Rect{Weight: layout.Heavy}).Anchored("hold " + mark)
}

// holdBars is the hatched field that tells a hold from a step in grey too.
func holdBars(h *job.Hold) layout.Block {
	s := draw.NewScene(draw.View{X1: 8, Y1: 10}, 8, 10, h.At)
	for x := -10.0; x < 8; x += 3.2 {
		s.Shape(draw.Pen{}, layout.Black, slantingBar(x)...)
	}
	return s.Block()
}

// slantingBar is one slanting bar of the field, cut off at its sides.
func slantingBar(x float64) []draw.XY {
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
