package templates

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// holds sets the list of hold and witness points, for the people who have to be
// there.
func holds(c *composer) []layout.Piece {
	if len(c.Job.Holds) == 0 {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Common.Mark, 18), block.Col(w.Holds.Seen, 0), block.Col(w.Holds.SeenAndReleased, 58), block.Col(w.Holds.DateTime, 28))
	var rows []layout.Row
	for _, h := range c.Job.Holds {
		word, rule := w.Holds.Hold, w.Holds.StopsHere
		if h.Witness {
			word, rule = w.Holds.Witness, w.Holds.MayGoOn
		}
		mark := layout.Above(0.3, g.Text(0, layout.Limit, h.Mark, h.At), g.Text(0, layout.SubBold, word, h.At))
		facts := h.Releases + " · " + rule
		if h.Step != nil {
			facts = c.StepRef(h.Step) + " · " + facts
		}
		what := layout.Above(0.5, g.Text(1, layout.Body, h.What, h.At), g.Text(1, layout.Sub, facts, h.At))
		rows = append(rows, g.Row(h.At, mark, what))
	}
	return c.ListSheet(w.Holds.Rule, g, append(rows, g.Blank(2)...))
}
