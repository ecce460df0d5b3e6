package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkChosen sees that a limit or a torque that is chosen at a hold is not used above
// it: until somebody has signed there nobody knows which of the sources holds.
func (r *report) checkChosen() {
	for _, d := range r.job.Dims {
		h := chosenAt(d.Says)
		if h == nil {
			continue
		}
		judged, at := r.walk.Set(d), d.LeftPos()
		if judged == nil && d.Left == nil {
			judged, at = r.walk.Measured(d), d.FoundPos()
		}
		if e := r.released(h); judged != nil && e != nil && judged.Index < e.Index {
			r.problems.AddWith(at, "not-chosen-yet", d.Mark+" is judged at "+judged.Step.Name()+", and by which source is only signed at "+h.Mark+", "+h.Step.Name(), h.Step.At, "the hold",
				"put "+h.Mark+" at a step above "+judged.Step.No)
		}
	}
	for _, e := range r.walk.Events {
		if j := e.Grip.Joint; e.Verb == job.DoTighten && j != nil {
			h := chosenAt(j.Says)
			if at := r.released(h); at != nil && e.Index < at.Index {
				r.problems.AddWith(e.At, "not-chosen-yet", j.Mark+" is tightened at "+e.Step.Name()+", and to which torque is only signed at "+h.Mark+", "+h.Step.Name(), h.Step.At, "the hold",
					"put "+h.Mark+" at a step above "+e.Step.No)
			}
		}
	}
}

// chosenAt is the hold at which one of several sources is chosen, nil if none is.
func chosenAt(says []job.Saying) *job.Hold {
	for _, s := range says {
		if s.Used && s.Hold != nil {
			return s.Hold
		}
	}
	return nil
}

// released is the event that releases a hold, nil where it stands at no step.
func (r *report) released(h *job.Hold) *walk.Event {
	if h == nil {
		return nil
	}
	return r.walk.Find(h.Step, func(e *walk.Event) bool { return e.Verb == job.DoHold && e.Hold == h })
}
