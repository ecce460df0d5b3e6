package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkAfter sees that what the author says of the order is all that binds a step:
// a step that "nothing has to come before" is not bound by its parts, and none can
// be done before the first step of the job, where that one only makes ready.
func (r *report) checkAfter() {
	var first *job.Step
	safe := map[*job.Step]bool{} // bound to come after the first step, at one or more removes
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			if first == nil {
				first = st
				safe[st] = true
				continue
			}
			for _, bind := range st.Binds {
				safe[st] = safe[st] || safe[bind.Before]
			}
			if st.AfterAt.IsZero() {
				continue
			}
			if hard := st.HardBind(); st.AfterNothing && hard != nil {
				r.problems = append(r.problems, source.Problem{
					Pos: st.AfterAt, Severity: source.Warning, Code: "not-free",
					Message: "after: {} says that nothing has to come before " + st.Name() + ", but " + hard.Before.Name() + " has to: " + hard.Why(),
					Help:    []string{"after: {" + hard.Before.Key + ": the reason}"},
					See:     []source.Also{{Pos: hard.Before.At, What: "the step"}},
				})
			}
			if !safe[st] && first.Readies() {
				r.problems = append(r.problems, source.Problem{
					Pos: st.AfterAt, Severity: source.Warning, Code: "before-safe",
					Message: st.Name() + " may be done before " + first.Name() + ", the first step of the job",
					Help:    []string{"after: {" + first.Key + ": the machine must be safe}, or put it first"},
					See:     []source.Also{{Pos: first.At, What: "the first step"}},
				})
			}
		}
	}
}
