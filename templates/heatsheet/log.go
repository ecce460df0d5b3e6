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
	if len(s.h.Neighbours) <= 1 {
		return s.logHalves()
	}
	cols := []block.Column{block.Col(w.HeatPull.LogTime, 18), block.Col(w.HeatPull.LogSkin, 0), block.Col(w.HeatPull.LogShaft, 30)}
	for _, n := range s.h.Neighbours[:2] {
		cols = append(cols, block.Col(n.Name, 36))
	}
	g := s.Grid(append(cols, block.Col(w.HeatPull.LogBy, 24))...)
	g.Table.MinH = 9
	var rows []layout.Row
	for _, at := range s.logTimes() {
		rows = append(rows, g.Row(s.h.At, g.Text(0, layout.Strong, figure.Clock(at), s.h.At), s.mustHave(g, 1, layout.Sub, at)))
	}
	return g.Table.Pieces(block.LastTogether(append(rows, g.Blank(1)...)))
}

// logHalves is the log in two halves beside each other, of few columns: what the skin must
// have passed stands below the time.
func (s sheet) logHalves() []layout.Piece {
	const reading, by layout.Mm = 18, 18
	w := s.W.HeatPull
	cols := []block.Column{block.Col(w.LogTime, 0), block.Col(w.LogSkin, reading), block.Col(w.LogShaft, reading)}
	for _, n := range s.h.Neighbours {
		cols = append(cols, block.Col(n.Name, reading))
	}
	g := s.TwoUp(append(cols, block.Col(w.LogBy, by))...)
	g.Table.MinH = 9
	var rows []layout.Row
	for _, at := range s.logTimes() {
		rows = append(rows, g.Row(s.h.At, layout.Above(0, g.Text(0, layout.Strong, figure.Clock(at), s.h.At), s.mustHave(g, 0, layout.Caption, at))))
	}
	both, rows := g.Pairs(append(rows, g.Blank(len(rows)%2)...))
	for i := range len(rows) - 1 {
		rows[i].KeepNext = true // the times run down one half, then down the other
	}
	return both.Table.Pieces(rows)
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

// logTimes are the times of the rows. Where the hub is free before the first of them, rows in
// shorter steps stand above it, up to the one after the hub is free: two at the least see it come.
func (s sheet) logTimes() []heat.Second {
	step := s.logStep()
	var out []heat.Second
	if plan := s.h.Pull.Plan; plan != nil && plan.Free > 0 && plan.Free < step {
		short := logSteps[0]
		for _, t := range logSteps {
			if 2*t <= plan.Free {
				short = t
			}
		}
		for at := short; at < step && at < plan.Free+short; at += short {
			out = append(out, at)
		}
	}
	for i := range s.logLength(step) {
		out = append(out, heat.Second(i+1)*step)
	}
	return out
}

// mustHave is the temperature that the skin must have passed at a time, in a column.
func (s sheet) mustHave(g block.Grid, column int, st layout.Style, at heat.Second) layout.Block {
	if plan := s.h.Pull.Plan; plan != nil {
		for _, p := range plan.Band.Pace {
			if p.By == at {
				return g.Text(column, st, s.W.HeatPull.MustPass.With(s.u.AtLeast(p.Skin)), s.h.At)
			}
		}
	}
	return layout.Block{}
}
