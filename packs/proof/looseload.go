package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkLooseLoad sees that no load is raised while fasteners within it are loose that are
// tightened later: what they hold can drop off the hook. Only joints count whose fasteners
// all belong to what hangs; one that holds the load to the machine is loose because it is
// lifted.
func (r *report) checkLooseLoad() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoLift {
			continue
		}
		for _, j := range r.job.Joints {
			if told[j.At] || !hangs(e.Lift, j) {
				continue
			}
			loose := r.looseBefore(j, e)
			if loose == nil {
				continue
			}
			tight := r.tightenedLater(j, e)
			if tight == nil || r.tightensIn(e.Step, j) {
				continue
			}
			told[j.At] = true
			r.problems.AddWith(tight.At, "loose-load", j.Mark+" is tightened at "+tight.Step.Name()+", below "+e.Step.Name()+", which lifts "+e.Lift.Mark+": its fasteners hang on the hook loose since "+loose.Step.Name(), e.Step.At, "lifted here",
				"tighten: ["+j.Base+"] at a step above the lift")
		}
	}
}

// hangs reports whether all fasteners of a joint belong to the load of a lift.
func hangs(l *job.Lift, j *job.Joint) bool {
	return len(j.Parts) > 0 && !slices.ContainsFunc(j.Parts, func(p *job.Part) bool {
		return !slices.ContainsFunc(l.Parts, func(q *job.Part) bool { return p != q && p.Within(q) })
	})
}

// tightensIn reports whether a step tightens a joint itself.
func (r *report) tightensIn(st *job.Step, j *job.Joint) bool {
	return r.walk.Find(st, func(e *walk.Event) bool { return e.Verb == job.DoTighten && e.Grip.Joint == j }) != nil
}
