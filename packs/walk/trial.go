package walk

import (
	"slices"

	"matchmark/packs/job"
)

// LastTorque is the joint of the same fasteners that a later step tightens for good,
// nil if none does. Parts that are put together to be measured often have a torque
// of their own, on fewer screws: whoever comes back to them must not take it for
// the last one.
func (w *Walk) LastTorque(j *job.Joint, trial *job.Step) *job.Joint {
	for _, st := range w.Steps[min(trial.Index+1, len(w.Steps)):] {
		for _, f := range st.Tighten {
			if f.Joint != nil && f.Joint != j && slices.Equal(f.Joint.Parts, j.Parts) {
				return f.Joint
			}
		}
	}
	return nil
}
