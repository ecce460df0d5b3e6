package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkLiftAid sees that an aid that a lift names among what hangs, as a lifting plate, is on
// when the load is raised, and that the bolts that went on with it are tight by then: the load
// hangs on them alone. What the step of the lift itself puts on, or tightens, is done by then.
func (r *report) checkLiftAid() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoLift || told[e.At] {
			continue
		}
		for _, p := range e.Lift.Parts {
			if !p.Aid || told[e.At] {
				continue
			}
			told[e.At] = r.aidOff(e, p) || r.aidLoose(e, p)
		}
	}
}

// aidOff tells of an aid that hangs and is not on.
func (r *report) aidOff(e *walk.Event, p *job.Part) bool {
	if now, _ := r.walk.Now(p, e); now > 0 || job.AnyOf(e.Step.ForNow, p) {
		return false
	}
	r.problems.AddWith(e.At, "lift-aid-off", e.Lift.Mark+" is made at "+e.Step.Name()+", and "+p.Called()+", which hangs with it, is not on then", e.Lift.At, "hangs with it",
		"fit-for-now: ["+p.Key+"] at a step above the lift, take-out-again: below it")
	return true
}

// aidLoose tells of bolts that were put on with such an aid, or after it, and are not tight.
func (r *report) aidLoose(e *walk.Event, p *job.Part) bool {
	_, on := r.walk.Now(p, e)
	if on == nil {
		return false
	}
	for _, q := range r.job.Parts {
		now, in := r.walk.Now(q, e)
		if !q.Aid || q == p || now == 0 || in.Step.Index < on.Step.Index {
			continue
		}
		for _, j := range q.Joints {
			if !r.tightenedSince(j, in, e) && !r.tightensIn(e.Step, j) {
				r.problems.AddWith(e.At, "lift-aid-loose", e.Lift.Mark+" is made at "+e.Step.Name()+", and "+j.Mark+", the bolts of "+p.Called()+", is not tightened by then", in.At, "put on here",
					"tighten: ["+j.Base+"] at a step above the lift, below fit-for-now:")
				return true
			}
		}
	}
	return false
}

// tightenedSince reports whether a joint is tightened between two events.
func (r *report) tightenedSince(j *job.Joint, from, to *walk.Event) bool {
	return slices.ContainsFunc(r.walk.Events[from.Index:to.Index], func(x *walk.Event) bool { return x.Verb == job.DoTighten && x.Grip.Joint == j })
}

// liftAid binds the steps that put an aid of a lift on or take it off, and that tighten its
// bolts, to those that make the lift.
func (b *binder) liftAid() {
	for _, st := range b.walk.Steps {
		for _, l := range st.Lifts {
			for _, p := range l.Parts {
				if p.Aid {
					b.stands(p, st)
				}
			}
		}
	}
}
