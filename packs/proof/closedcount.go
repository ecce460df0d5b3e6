package proof

import "matchmark/packs/job"

// checkClosedCount sees that an opening which a person can be in is not closed while the
// tools have not been counted since work in it.
func (r *report) checkClosedCount() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoClose || !e.Opening.Enclosed || r.walk.Open(e.Opening, e) == nil {
			continue
		}
		if worked, open := r.walk.UncountedTools(e); worked != nil && open == e.Opening {
			r.problems.AddWith(e.Step.At, "closed-uncounted", "step "+e.Step.Name()+" closes "+e.Opening.Mark()+", which a person can be in, and the tools have not been counted since "+worked.Name(), worked.At, "work in it",
				"tool-count: yes above close:, at this step or above it")
		}
	}
}
