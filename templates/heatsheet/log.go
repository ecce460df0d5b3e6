package heatsheet

import (
	"math"
	"slices"

	"matchmark/layout"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// logRows is the most rows that the log has, and logSteps the times between them that a
// reader can call out, in seconds.
const logRows = 10

var logSteps = []heat.Second{5, 10, 15, 20, 30, 60, 120, 300}

// logTable is the table of temperatures over the time in which the slowest heat that
// works frees the hub.
func (s sheet) logTable() []layout.Piece {
	w := s.W
	if d := s.loggedAt(); d != nil {
		text := w.HeatPull.LogElsewhere.With(d.Mark, s.Page("found "+d.Mark))
		return []layout.Piece{{Block: s.paras(layout.Body, []string{text})}}
	}
	cols := []block.Column{block.Col(w.HeatPull.LogTime, 18), block.Col(w.HeatPull.LogSkin, 0), block.Col(w.HeatPull.LogShaft, 30)}
	for _, n := range s.h.Neighbours[:min(len(s.h.Neighbours), 2)] {
		cols = append(cols, block.Col(n.Name, 36))
	}
	cols = append(cols, block.Col(w.HeatPull.LogBy, 24))
	g := s.Grid(cols...)
	g.Table.MinH = 9
	step := s.logStep()
	var rows []layout.Row
	for i := range s.logLength(step) {
		at := heat.Second(i+1) * step
		rows = append(rows, g.Row(s.h.At, g.Text(0, layout.Strong, figure.Clock(at), s.h.At), s.mustHave(g, at)))
	}
	return g.Table.Pieces(block.LastTogether(append(rows, g.Blank(1)...)))
}

// loggedAt is the dimension that logs temperatures at the step of the pull, nil if
// none does: then the sheet has a log of its own.
func (s sheet) loggedAt() *job.Dim {
	if s.h.PulledAt == nil {
		return nil
	}
	for _, d := range s.h.PulledAt.Measure {
		if d.Kind == "temperature" && d.Positions.Kind == job.Log {
			return d
		}
	}
	return nil
}

// logStep is the time between two rows: the shortest that reaches as far as the
// slowest heat that works, and meets the times at which the skin must have passed
// a temperature; the longest of those that meet them where none reaches so far.
func (s sheet) logStep() heat.Second {
	plan := s.h.Pull.Plan
	if plan == nil {
		return logSteps[len(logSteps)-2]
	}
	best := logSteps[0]
	for _, t := range logSteps {
		misses := func(p heat.Pace) bool { return math.Mod(float64(p.By), float64(t)) != 0 }
		if slices.ContainsFunc(plan.Band.Pace, misses) {
			continue
		}
		best = t
		if t*logRows >= plan.Band.LeastFree {
			break
		}
	}
	return best
}

// logLength is how many rows the log needs: up to the time in which the slowest heat
// that works frees the hub, and one more.
func (s sheet) logLength(step heat.Second) int {
	plan := s.h.Pull.Plan
	if plan == nil || plan.Band.LeastFree <= 0 {
		return logRows
	}
	return min(int(math.Ceil(float64(plan.Band.LeastFree/step)))+1, logRows)
}

// mustHave is the temperature that the skin must have passed, in its row.
func (s sheet) mustHave(g block.Grid, at heat.Second) layout.Block {
	if plan := s.h.Pull.Plan; plan != nil {
		for _, p := range plan.Band.Pace {
			if p.By == at {
				return g.Text(1, layout.Sub, s.W.HeatPull.MustPass.With(s.u.AtLeast(p.Skin)), s.h.At)
			}
		}
	}
	return layout.Block{}
}
