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

// logRows and longLog are the most rows of a short and of a long log down to where the slowest
// heat that works frees the hub; logSteps are the times between rows that a reader can call
// out, in seconds, and usualStep the one where nothing is worked out.
const (
	logRows               = 10
	longLog               = 14
	usualStep heat.Second = 120
)

var logSteps = []heat.Second{5, 10, 15, 20, 30, 60, 120, 300, 600, 1200}

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

// logStep is the time between two rows: the shortest that reaches as far as the slowest heat
// that works in a short log, else in a long one, and meets the times at which the skin must have
// passed a temperature. Where none does both, the shortest that reaches: those times get rows
// between the others.
func (s sheet) logStep() heat.Second {
	plan := s.h.Pull.Plan
	if plan == nil {
		return usualStep
	}
	for _, most := range []heat.Second{logRows, longLog} {
		for _, t := range logSteps {
			misses := func(p heat.Pace) bool { return math.Mod(float64(p.By), float64(t)) != 0 }
			if t*most >= plan.Band.LeastFree && !slices.ContainsFunc(plan.Band.Pace, misses) {
				return t
			}
		}
	}
	for _, t := range logSteps {
		if t*logRows >= plan.Band.LeastFree {
			return t
		}
	}
	return logSteps[len(logSteps)-1]
}

// logLength is how many rows the log needs: up to the first past the time in which the slowest
// heat that works frees the hub.
func (s sheet) logLength(step heat.Second) int {
	plan := s.h.Pull.Plan
	if plan == nil || plan.Band.LeastFree <= 0 {
		return logRows
	}
	return int(math.Floor(float64(plan.Band.LeastFree/step))) + 1
}

// logTimes are the times of the rows, from before the strongest heat that works frees the hub to
// past the time in which the slowest does.
func (s sheet) logTimes() []heat.Second {
	step := s.logStep()
	out := s.earlyTimes(step)
	for i := range s.logLength(step) {
		out = append(out, heat.Second(i+1)*step)
	}
	if plan := s.h.Pull.Plan; plan != nil {
		for _, p := range plan.Band.Pace {
			out = append(out, p.By)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// earlyTimes are the rows above the first of the usual ones, where the hub may be free before it:
// in short steps up to the one after it may be free first, so that two at the least see it come,
// then in longer ones to where it is free with the heat that the sheet is worked out for.
func (s sheet) earlyTimes(step heat.Second) []heat.Second {
	plan := s.h.Pull.Plan
	if plan == nil || plan.Free <= 0 {
		return nil
	}
	first := plan.Free
	if plan.Band.MostFree > 0 {
		first = min(first, plan.Band.MostFree)
	}
	if first >= step {
		return nil
	}
	k := 0
	for i, t := range logSteps {
		if 2*t <= first {
			k = i
		}
	}
	var out []heat.Second
	at := logSteps[k]
	for ; at < step && at < first+logSteps[k]; at += logSteps[k] {
		out = append(out, at)
	}
	for at -= logSteps[k]; at < plan.Free; out = append(out, at) {
		k = min(k+1, len(logSteps)-1)
		at = heat.Second(math.Floor(float64(at/logSteps[k]))+1) * logSteps[k]
		if at >= step {
			break
		}
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
