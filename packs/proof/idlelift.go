package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkIdleLift sees that a load that is raised goes somewhere: of a lift that two steps
// or more make, and that names its parts, one step takes a part of it off, puts it back or
// sets it down.
func (r *report) checkIdleLift() {
	for _, l := range r.job.Lifts {
		made := r.walk.Lifted(l)
		if len(l.Parts) == 0 || len(made) < 2 || slices.ContainsFunc(r.walk.Events, func(e *walk.Event) bool { return r.goesSomewhere(l, e) }) {
			continue
		}
		first, last := made[0].Step, made[len(made)-1].Step
		r.problems.WarnWith(last.At, "idle-lift", l.Mark+" is made at "+first.Name()+" and "+last.Name()+", and no step takes "+l.Parts[0].Called()+" off, puts it back or sets it down", l.At, "the lift",
			"remove: ["+l.Parts[0].Key+"] at the step that carries it away", "or set-down: ["+l.Mark+"]")
	}
}

// goesSomewhere reports whether an event sets the load of a lift down or moves it, or moves
// something that hangs on it at a step that makes the lift.
func (r *report) goesSomewhere(l *job.Lift, e *walk.Event) bool {
	switch e.Verb {
	case job.DoSetDown:
		return e.Lift == l
	case job.DoRemove, job.DoTakeOut, job.DoFit, job.DoFitForNow:
		return e.Lands(l) || l.Carries(e.Move.Part) && r.walk.Find(e.Step, func(x *walk.Event) bool { return x.Verb == job.DoLift && x.Lift == l }) != nil
	}
	return false
}
