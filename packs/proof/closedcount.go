package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkClosedCount sees that an opening which a person can be in is not closed without
// the tools having been counted while it was open, and after the last step that went in on
// an entry permit under which it was opened. What is done from outside after the count, as a
// gasket that is laid or a cover that hangs on the crane, is left to the count before the
// locks come off.
func (r *report) checkClosedCount() {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoClose || !e.Opening.Enclosed {
			continue
		}
		opened := r.walk.Open(e.Opening, e)
		if opened == nil {
			continue
		}
		var counted *walk.Event
		for _, x := range r.walk.Events[opened.Index:e.Index] {
			if x.Verb == job.DoCountTools {
				counted = x
			}
		}
		see, here, since := opened.Step.At, "opened here", "since it was opened at "+opened.Step.Name()
		if counted != nil {
			in := r.enteredAfter(opened, counted, e)
			if in == nil {
				continue
			}
			see, here, since = in.At, "entered here", "since "+in.Name()+" went in on the permit of "+opened.Step.Name()
		}
		help := []string{"tool-count: yes above close:, at this step or above it"}
		switch {
		case e.Step.Undoes != nil && see == e.Step.At && counted != nil: // the row asks for the permit itself
			help = []string{"back-permit: none, because it is closed from outside", "or write the step that closes it, with tool-count: above close:, above the reverse: line that makes this row"}
		case e.Step.Undoes != nil: // a generated row takes no keys
			help = []string{"tool-count: yes at a step of its own, written above the reverse: line that makes this row", "or write the step that closes it, with tool-count: above close:, above that line"}
		}
		r.problems.AddWith(e.Step.At, "closed-uncounted", "step "+e.Step.Name()+" closes "+e.Opening.Mark()+", which a person can be in, and the tools have not been counted "+since, see, here, help...)
	}
}

// enteredAfter is the last step between a count and the closing of an opening that goes in on
// an entry permit under which it was opened, nil if none does. The step that closes it is one
// of them: a permit is asked for before anything is done.
func (r *report) enteredAfter(opened, counted, closed *walk.Event) *job.Step {
	var last *job.Step
	for _, st := range r.walk.Steps[counted.Step.Index+1 : max(closed.Step.Index, counted.Step.Index)+1] {
		if !st.Bench && slices.ContainsFunc(st.Permits, func(p *job.Permit) bool {
			return r.goesIn(st, p) && !underLock(p) && slices.Contains(opened.Step.Permits, p)
		}) {
			last = st
		}
	}
	return last
}

// goesIn reports whether a step goes in on a permit: not where it hoists on one that is for
// lifts as well as for entry.
func (r *report) goesIn(st *job.Step, p *job.Permit) bool {
	return r.job.IsEntry(p) && (r.hoists(st) == nil && st.OnHook == "" || !r.isForLifting(p))
}
