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
		if !slices.ContainsFunc(e.Lift.Parts, func(p *job.Part) bool { return !p.Aid }) {
			continue // the aid is the load: a puller on its way to the shaft
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

// aidLoose tells of bolts that hold such an aid and are not tight.
func (r *report) aidLoose(e *walk.Event, p *job.Part) bool {
	_, on := r.walk.Now(p, e)
	if on == nil {
		return false
	}
	for _, q := range r.job.Parts {
		now, in := r.walk.Now(q, e)
		if !q.Aid || q == p || now == 0 || !q.Place.Agrees(p.Place) || in.Step != on.Step && !slices.Contains(e.Lift.Parts, q) {
			continue
		}
		for _, j := range q.Joints {
			if !r.tightFor(j, in, e) && !r.tightensIn(e.Step, j) {
				r.problems.AddWith(e.At, "lift-aid-loose", e.Lift.Mark+" is made at "+e.Step.Name()+", and "+j.Mark+", the bolts of "+p.Called()+", is not tightened by then", in.At, "put on here",
					"tighten: ["+j.Base+"] at a step above the lift, below fit-for-now:")
				return true
			}
		}
	}
	return false
}

// tightFor reports whether a joint is tight just before an event: tightened since its bolts went
// in, and not loosened again.
func (r *report) tightFor(j *job.Joint, in, e *walk.Event) bool {
	tightened := slices.ContainsFunc(r.walk.Events[in.Index:e.Index], func(x *walk.Event) bool { return x.Verb == job.DoTighten && x.Grip.Joint == j })
	return tightened && r.walk.Grip(job.Fastening{Joint: j}, e).Loosened == nil
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
