package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkOverhung sees that an opening is seen clean before the load that closes it hangs over it,
// and that a load is booked out of its spot by the step that takes it up there: what stands
// on paper behind that is signed for what nobody can see any more.
func (r *report) checkOverhung() {
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoClose:
			for _, l := range r.job.Lifts {
				if raised := r.walk.Hung(l, e.Step); raised != nil && opensUnder(l, e.Opening) {
					r.problems.AddWith(e.Step.At, "closed-unseen", "step "+e.Step.Name()+" sees the opening "+e.Opening.Mark()+" clean, and "+l.Mark+" hangs over it since "+raised.Name(), raised.At, "taken up here",
						"close: ["+e.Opening.Key+"] at "+raised.No+" or above it")
					break
				}
			}
		case job.DoFit:
			for _, l := range r.job.Lifts {
				raised := r.walk.Hung(l, e.Step)
				if raised == nil || e.Step.Undoes != nil || !slices.Contains(e.Step.Lifts, l) || !slices.Contains(l.Parts, e.Move.Part) {
					continue
				}
				from := "the bench"
				if m := e.Move.From.Mark(); m != "" {
					from = m
				}
				r.problems = append(r.problems, source.Problem{
					Pos: e.At, Severity: source.Warning, Code: "booked-late",
					Message: e.Move.Part.Called() + " is counted out of " + from + " at " + e.Step.Name() + ", and hangs since " + raised.Name(),
					Help:    []string{"fit: [" + e.Move.Part.Key + "] at " + raised.No + ", which takes it up; the later steps go on with " + l.Mark},
					See:     []source.Also{{Pos: raised.At, What: "taken up here"}},
				})
			}
		}
	}
}

// opensUnder reports whether an opening was made by the step that took the load of a lift off.
func opensUnder(l *job.Lift, o *job.Opening) bool {
	return o.OpenedAt != nil && slices.ContainsFunc(o.OpenedAt.Remove, func(m *job.Move) bool { return l.Carries(m.Part) })
}
