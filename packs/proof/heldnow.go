package proof

import (
	"slices"

	"matchmark/packs/job"
)

// checkHeldNow warns of a torque that fasteners are held with for now, where they are fitted for
// now and no step tightens them then: what is read on the trial is read with the joint slack.
// A joint of its own for the trial may tighten them.
func (r *report) checkHeldNow() {
	for _, j := range r.job.Joints {
		if j.Spec.ForNow == nil {
			continue
		}
		fitted, held := (*job.Move)(nil), false
		for _, e := range r.walk.Events {
			switch {
			case e.Verb == job.DoFitForNow && slices.Contains(j.Parts, e.Move.Part):
				fitted = e.Move
			case e.Verb == job.DoTighten && e.Grip.Joint != nil && slices.Equal(e.Grip.Joint.Parts, j.Parts):
				held = held || r.walk.ForNow(e.Grip, e) > 0
			}
		}
		if fitted != nil && !held {
			r.problems.WarnWith(fitted.At, "for-now-idle", j.Mark+" says how tight it is held for now, and no step tightens it while its fasteners are in for now", j.At, "the joint",
				"tighten: ["+j.Mark+"] below fit-for-now:, at "+fitted.Step.No, "or take for-now: out")
		}
	}
}
