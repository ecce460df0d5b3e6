package templates

import (
	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
)

// fireWatch is the list of watches after hot work: one line a step that works with
// a flame, with the times between which somebody stays. A hot pull has these boxes
// on its own sheet.
func (c *composer) fireWatch(notes []*job.Caution) []layout.Piece {
	w := c.w
	for _, n := range notes {
		if n.Key != job.HotWork {
			continue
		}
		until := w.Cautions.WatchUntil.With(c.job.Site.FireWatch.Print())
		g := c.grid(col(w.Cautions.FireWatch, 0), col(w.Cautions.FlameOut, 34), col(until, 44), col(w.Cautions.WatchedBy, 50))
		var rows []layout.Row
		for _, st := range n.Steps {
			if watchedOnHeatSheet(st) {
				continue
			}
			rows = append(rows, g.row(n.At, g.text(0, layout.Body, c.stepRef(st), st.At)))
		}
		if len(rows) == 0 {
			return nil
		}
		g.table.MinH = max(g.table.MinH-1, 9) // times need no more than a line
		return g.under(rows)
	}
	return nil
}

// watchedOnHeatSheet reports whether a step is a hot pull by flame.
func watchedOnHeatSheet(st *job.Step) bool {
	for _, h := range st.Heats {
		if h.PulledAt == st && h.Pull != nil && h.Pull.By == heat.Torch {
			return true
		}
	}
	return false
}
