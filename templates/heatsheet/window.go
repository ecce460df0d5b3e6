package heatsheet

import (
	"matchmark/packs/heat"
	"matchmark/templates/figure"
)

// leastGain is how many seconds the heat left on must gain for its run to be told;
// common practice, no source.
const leastGain heat.Second = 5

// windowLines tell the two runs apart: the heat off the moment the hub is free, by which
// the plan is judged and as the order of work says it, and the heat left on until the
// crayon melts.
func (s sheet) windowLines(p *heat.Plan) []string {
	w := s.W
	off := w.HeatPull.StaysLine.With(figure.TimeDown(p.Stays))
	if p.Endless {
		off = w.HeatPull.StaysEndless.With(figure.TimeDown(p.Stays))
	}
	out := []string{off + " " + w.HeatPull.WorkableLine.With(figure.TimeUpShort(p.Workable.Time))}
	if p.HeatOn < leastGain {
		return out
	}
	// The rest is told less than the whole: both are rounded down.
	rest := figure.TimeDown(p.Loose - p.HeatOn)
	if p.LooseEndless {
		return append(out, w.HeatPull.KeepOnEndless.With(figure.TimeDown(p.HeatOn), rest))
	}
	return append(out, w.HeatPull.KeepOnLine.With(figure.TimeDown(p.HeatOn), rest))
}

// pullerAct puts the puller on, or says that there is none.
func (s sheet) pullerAct() string {
	p, w := s.h.Pull, s.W
	switch {
	case p.NoPuller:
		return w.HeatPull.OrderNoPuller
	case p.Puller == "":
		return w.HeatPull.OrderPullerNotSaid
	}
	return w.HeatPull.OrderPuller.With(p.Puller)
}

// movesAct is what is done the moment the hub is free: as the window is counted.
func (s sheet) movesAct() string {
	if s.h.Pull.NoPuller {
		return s.W.HeatPull.OrderLoose
	}
	return s.W.HeatPull.OrderMoves
}

// longest is how long it is heated before giving up: no longer than the slowest heat that
// works takes to free it, with which its log ends.
func (s sheet) longest() string {
	t := s.h.Pull.Longest
	if plan := s.h.Pull.Plan; plan != nil && plan.Band.LeastFree > 0 && (t <= 0 || plan.Band.LeastFree < t) {
		clock := figure.Clock(plan.Band.LeastFree)
		if len(plan.Band.Pace) == 2 {
			return clock // its unit stands in the frame of the pull
		}
		return s.W.HeatPull.ClockUnit.With(clock)
	}
	if t > 0 {
		return figure.TimeDown(t)
	}
	return s.W.HeatPull.LongestNotSaid
}
