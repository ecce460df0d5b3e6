package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// openings sets the list of holes that dirt and tools can fall into, and the log
// of what was taken to them.
func openings(c *composer) []layout.Piece {
	if len(c.job.Openings) == 0 {
		return nil
	}
	w := c.w
	g := c.grid(col(w.Openings.Opening, 0), col(w.Openings.CoveredWith, 34), col(w.Openings.OpenedBy, 30), col(w.Openings.ClosedBy, 30), col(w.Openings.SeenClean, 34))
	var rows []layout.Row
	for _, o := range c.job.Openings {
		name := o.What
		if o.Place.Label != "" {
			name += ", " + o.Place.Name
		}
		kind := ""
		if o.Enclosed {
			kind = w.Openings.Enclosed
		}
		what := layout.Above(0.3, g.text(0, layout.Strong, name, o.At), g.text(0, layout.SubBold, kind, o.At))
		row := g.row(o.At, what, g.text(1, layout.Body, o.Cover, o.At), c.stepCell(g, 2, o.OpenedAt), c.stepCell(g, 3, o.ClosedAt))
		row.Anchor = "opening " + o.Mark()
		rows = append(rows, row)
	}
	out := c.listSheet(w.Openings.Rule, g, append(rows, g.blank(2)...))
	log := c.grid(col(w.Openings.Tools, 0), col(w.Openings.ToolPlace, 40), col(w.Common.InLimits, 18), col(w.Common.OutOfLimits, 18), col(w.Common.InitialsDate, 34))
	return append(out, log.under(log.blank(8))...)
}

// stepCell names the step that does something, small, in a cell to write in.
func (c *composer) stepCell(g grid, i int, st *job.Step) layout.Block {
	if st == nil {
		return layout.Block{}
	}
	return g.text(i, layout.Caption, c.stepRef(st), st.At)
}
