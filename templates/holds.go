package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A holdRow is one release of a hold: at its step, or once more at the put-back row.
type holdRow struct {
	hold *job.Hold
	at   *job.Step
}

// holdRows are all releases, those of one hold below each other.
func holdRows(j *job.Job) []holdRow {
	var out []holdRow
	for _, h := range j.Holds {
		out = append(out, holdRow{h, h.Step})
		if h.Again != nil {
			out = append(out, holdRow{h, h.Again})
		}
	}
	return out
}

// holds sets the list of hold and witness points, for the people who have to be
// there.
func holds(c *composer) []layout.Piece {
	if len(c.Job.Holds) == 0 {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Common.Mark, 18), block.Col(w.Holds.Seen, 0), block.Col(w.Holds.SeenAndReleased, 57.4), block.Col(w.Holds.DateTime, 26.4))
	var rows []layout.Row
	for _, r := range holdRows(c.Job) {
		h, text := r.hold, r.hold.Mark
		if r.at != nil && r.at == h.Again {
			text = w.Holds.Again.With(text)
		}
		word := w.Holds.Hold
		if h.Witness {
			word = w.Holds.Witness
		}
		mark := layout.Above(0.3, g.Text(0, layout.Limit, text, h.At), g.Text(0, layout.SubBold, word, h.At))
		facts := h.Releases
		if r.at != nil {
			facts = c.StepRef(r.at) + " · " + facts
		}
		what := c.Para(g.Table.Room(1), []layout.Run{layout.T(layout.Body, h.What), layout.T(layout.Sub, "  "+facts)}, layout.ParaOpts{Ref: h.At})
		rows = append(rows, g.Row(h.At, mark, what))
	}
	return c.ListSheet(w.Holds.Rule, g, append(rows, g.Blank(blanks(len(rows), 4, 1, 2))...))
}
