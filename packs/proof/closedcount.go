package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkClosedCount sees that an opening which a person can be in is not closed without
// the tools having been counted while it was open. What is done in it after the count, as
// a gasket that is laid, is left to the count before the locks come off.
func (r *report) checkClosedCount() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoClose || !e.Opening.Enclosed {
			continue
		}
		opened := r.walk.Open(e.Opening, e)
		if opened == nil || slices.ContainsFunc(r.walk.Events[opened.Index:e.Index], func(x *walk.Event) bool { return x.Verb == job.DoCountTools }) {
			continue
		}
		r.problems.AddWith(e.Step.At, "closed-uncounted", "step "+e.Step.Name()+" closes "+e.Opening.Mark()+", which a person can be in, and the tools have not been counted since it was opened at "+opened.Step.Name(), opened.Step.At, "opened here",
			"tool-count: yes above close:, at this step or above it")
	}
}
