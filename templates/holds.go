package templates

import "matchmark/layout"

// holds sets the list of hold and witness points, for the people who have to be
// there.
func holds(c *composer) []layout.Piece {
	if len(c.job.Holds) == 0 {
		return nil
	}
	w := c.w
	g := c.grid(col(w.Common.Mark, 18), col(w.Holds.Seen, 0), col(w.Holds.SeenAndReleased, 58), col(w.Holds.DateTime, 28))
	var rows []layout.Row
	for _, h := range c.job.Holds {
		word, rule := w.Holds.Hold, w.Holds.StopsHere
		if h.Witness {
			word, rule = w.Holds.Witness, w.Holds.MayGoOn
		}
		mark := layout.Above(0.3, g.text(0, layout.Limit, h.Mark, h.At), g.text(0, layout.SubBold, word, h.At))
		facts := h.Releases + " · " + rule
		if h.Step != nil {
			facts = c.stepRef(h.Step) + " · " + facts
		}
		what := layout.Above(0.5, g.text(1, layout.Body, h.What, h.At), g.text(1, layout.Sub, facts, h.At))
		rows = append(rows, g.row(h.At, mark, what))
	}
	return c.listSheet(w.Holds.Rule, g, append(rows, g.blank(2)...))
}
