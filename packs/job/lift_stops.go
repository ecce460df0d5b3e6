package job

import "slices"

// A StopKind is when in a lift it stops and is looked at, in the order in which a load
// meets these.
type StopKind uint8

// The kinds.
const (
	StopTakeUp  StopKind = iota // slack out of the legs, the trial lift
	StopTrial                   // the lift's own at the trial lift, the load still in its place
	StopGoingUp                 // the lift's own on the way out of its place
	StopTravel                  // before it travels
	StopComing                  // the lift's own on the way down into its place
	StopSeat                    // a hand's width above where it is set down
	StopSetDown                 // set down, before it is unhooked
)

// Meets reports whether a load meets a kind of stop in a step that makes the lift: a load
// that hangs already is not taken up, one that stays on the hook is not set down, what goes
// back into its place does not come out of it, and what was stopped above its seat is only
// let down. What is put on hot goes home without a stop: stopped above its seat it would grip
// half on it. What is raised and left on the hook, and taken off by the step that goes on with
// it, comes out of its place at that one. Of a step that tells no movement, the load goes up
// and comes down. A stop of which it is not certain that it is not met is met.
func (l *Lift) Meets(st *Step, k StopKind) bool {
	goesOn, stays := slices.Contains(st.GoesOn, l), slices.Contains(st.LeftHanging, l)
	out, in := l.TakenOffBy(st), l.PutOnBy(st)
	over := goesOn && !out && l.overItsSeat(st)
	switch k {
	case StopTakeUp:
		return !goesOn
	case StopTrial:
		return !goesOn && (out || !in)
	case StopGoingUp:
		return (out || !in) && !over && !(stays && !out && l.comesOutLater(st))
	case StopTravel:
		return out || in || !stays && !over
	case StopComing:
		return in || !out && !goesOn && !stays
	case StopSeat:
		return !stays && !over && !l.putOnHot(st)
	}
	return !stays
}

// comesOutLater reports whether the next step that moves the load takes it off, and goes on with
// it where it has hung all the time from this step on.
func (l *Lift) comesOutLater(st *Step) bool {
	var next *Step
	for _, x := range l.Steps {
		if x.Index > st.Index && l.MovedBy(x) && (next == nil || x.Index < next.Index) {
			next = x
		}
	}
	return next != nil && l.TakenOffBy(next) && !slices.ContainsFunc(l.Steps, func(x *Step) bool {
		return x.Index > st.Index && x.Index <= next.Index && !slices.Contains(x.GoesOn, l)
	})
}

// CarriesAway reports whether a step that goes on with a load that hangs takes it off its
// place, or takes it up toward the step that does.
func (l *Lift) CarriesAway(st *Step) bool {
	return l.TakenOffBy(st) && !l.PutOnBy(st) || !l.MovedBy(st) && slices.Contains(st.LeftHanging, l) && l.comesOutLater(st)
}

// overItsSeat reports whether a load that hangs at a step was put back by the last step above
// it that moved the load: it hangs over its seat and is only let down.
func (l *Lift) overItsSeat(st *Step) bool {
	back := false
	for _, x := range l.Steps {
		if x.Index < st.Index && l.MovedBy(x) {
			back = l.PutOnBy(x)
		}
	}
	return back
}

// An OwnStop is a stop of the lift's own, besides the usual ones.
type OwnStop struct {
	Kind StopKind
	Text string
}

// OwnStops are the stops of the lift's own in the order in which they are met.
func (l *Lift) OwnStops() []OwnStop {
	var out []OwnStop
	for _, x := range []struct {
		kind  StopKind
		texts []string
	}{{StopTrial, l.TrialStops}, {StopGoingUp, l.Stops}, {StopComing, l.StopsIn}} {
		for _, text := range x.texts {
			out = append(out, OwnStop{x.kind, text})
		}
	}
	return out
}

// MeetsOwn reports whether a stop of the lift's own is met in a step: of stops that no
// movement of this job meets, and of those on the way out where none are told for the way
// in, nobody may say that they do not hold.
func (l *Lift) MeetsOwn(st *Step, x OwnStop) bool {
	if l.Meets(st, x.Kind) || x.Kind == StopGoingUp && len(l.StopsIn) == 0 && l.Meets(st, StopComing) {
		return true
	}
	return !slices.ContainsFunc(l.Steps, func(o *Step) bool { return l.Meets(o, x.Kind) })
}

// StopsAt are the texts of the stops of the lift's own that are met in a step.
func (l *Lift) StopsAt(st *Step) []string {
	var out []string
	for _, x := range l.OwnStops() {
		if l.MeetsOwn(st, x) {
			out = append(out, x.Text)
		}
	}
	return out
}
