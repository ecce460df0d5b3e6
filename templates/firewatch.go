package templates

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// fireWatch is the list of watches after hot work: one line a step that works with
// a flame, with the times between which somebody stays. A hot pull has these boxes
// on its own sheet.
func (c *composer) fireWatch(notes []*job.Caution) []layout.Piece {
	w := c.W
	for _, n := range notes {
		if n.Key != job.HotWork {
			continue
		}
		until := w.Cautions.WatchUntil.With(c.Job.Site.FireWatch.Print())
		g := c.Grid(block.Col(w.Cautions.FireWatch, 0), block.Col(w.Cautions.FlameOut, 34), block.Col(until, 44), block.Col(w.Cautions.WatchedBy, 50))
		var rows []layout.Row
		for _, st := range n.Steps {
			if watchedOnHeatSheet(st) || watchedLater(st, n) {
				continue
			}
			rows = append(rows, g.Row(n.At, g.Text(0, layout.Body, c.StepRef(st), st.At)))
		}
		if len(rows) == 0 {
			return nil
		}
		g.Table.MinH = max(g.Table.MinH-1, 9) // times need no more than a line
		return g.Under(rows)
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

// watchedLater reports whether a step only makes ready for a hot pull by flame: it names the
// heat, both ask for the same permit, and the watch is kept after the pull. One that says by
// itself that it works with a flame has a watch of its own, for that may be out hours before.
func watchedLater(st *job.Step, note *job.Caution) bool {
	if st.HeatsWith(heat.Torch) || slices.Contains(st.Said, note) {
		return false
	}
	return slices.ContainsFunc(note.Steps, func(later *job.Step) bool {
		return later.Index > st.Index && watchedOnHeatSheet(later) && namesHeatOf(st, later) &&
			slices.ContainsFunc(later.Permits, func(p *job.Permit) bool { return slices.Contains(st.Permits, p) })
	})
}

// namesHeatOf reports whether a step says the mark of a heat that is drawn off by a later one.
func namesHeatOf(st, later *job.Step) bool {
	words := strings.FieldsFunc(st.Do, func(r rune) bool { return r != '/' && !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return slices.ContainsFunc(later.Heats, func(h *job.Heat) bool {
		return h.PulledAt == later && (slices.Contains(words, h.Mark) || slices.Contains(words, h.Base) && h.Place.Agrees(st.Place))
	})
}
