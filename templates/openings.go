package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/step"
)

// openings sets the list of holes that dirt and tools can fall into, and the log
// of what was taken to them.
func openings(c *composer) []layout.Piece {
	if len(c.Job.Openings) == 0 {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Openings.Opening, 0), block.Col(w.Openings.CoveredWith, 36), block.Col(w.Openings.OpenedBy, 29), block.Col(w.Openings.ClosedBy, 29), block.Col(w.Openings.SeenClean, 28))
	var rows []layout.Row
	for _, o := range c.Job.Openings {
		name := o.What
		if o.Place.Label != "" {
			name += ", " + o.Place.Name
		}
		runs := []layout.Run{layout.T(layout.Strong, name)}
		if o.Enclosed {
			runs = append(runs, layout.T(layout.SubBold, "  "+w.Openings.Enclosed))
		}
		what := c.Para(g.Table.Room(0), runs, layout.ParaOpts{Ref: o.At})
		row := g.Row(o.At, what, g.Text(1, layout.Body, o.Cover, o.At), c.stepCell(g, 2, o.OpenedAt), c.closedCell(g, 3, o))
		row.Anchor = "opening " + o.Mark()
		rows = append(rows, row)
	}
	out := c.ListSheet(w.Openings.Rule, g, append(rows, g.Blank(blanks(len(rows), 4, 1, 2))...))
	log := c.Grid(block.Col(w.Openings.Tools, 0), block.Col(w.Openings.TakenTo, 40), block.Col(w.Common.CountedIn, 22), block.Col(w.Common.CountedOut, 22), block.Col(w.Common.InitialsDate, 34))
	return append(out, log.Under(log.Blank(blanks(len(rows), 2, 3, 6)))...)
}

// closedCell names the step that closes an opening, with the page of its tick.
func (c *composer) closedCell(g block.Grid, i int, o *job.Opening) layout.Block {
	st := o.ClosedAt
	if st == nil {
		return layout.Block{}
	}
	if o.ShutAt != nil {
		st = o.ShutAt
	}
	return g.Text(i, layout.Caption, c.W.Common.StepPage.With(st.No, c.PageOr(step.ClosedAnchor(o), "step "+st.No)), st.At)
}

// stepCell names the step that does something, small, in a cell to write in.
func (c *composer) stepCell(g block.Grid, i int, st *job.Step) layout.Block {
	if st == nil {
		return layout.Block{}
	}
	return g.Text(i, layout.Caption, c.StepRef(st), st.At)
}
