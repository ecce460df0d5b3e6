package packs

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/packs/source"
)

// checkAfter sees that what the author says of the order is all that binds a step:
// a step that "nothing has to come before" is not bound by its parts, and none can
// be done before the first step of the job, where that one only makes ready.
func (b *builder) checkAfter() {
	var first *job.Step
	safe := map[*job.Step]bool{} // bound to come after the first step, at one or more removes
	for _, s := range b.job.Sections {
		for _, st := range s.Steps {
			if first == nil {
				first = st
				safe[st] = true
				continue
			}
			for _, bind := range st.Binds {
				safe[st] = safe[st] || safe[bind.Before]
			}
			ds := b.stepDefs[st]
			if ds == nil || ds.After.At.IsZero() {
				continue
			}
			if hard := st.HardBind(); len(ds.After.Steps) == 0 && hard != nil {
				b.problems = append(b.problems, source.Problem{
					Pos: ds.After.At, Severity: source.Warning, Code: "not-free",
					Message: "after: {} says that nothing has to come before " + st.Name() + ", but " + hard.Before.Name() + " has to: " + hard.Why(),
					Help:    []string{"after: {" + hard.Before.Key + ": the reason}"},
					See:     []source.Also{{Pos: hard.Before.At, What: "the step"}},
				})
			}
			if !safe[st] && first.Readies() {
				b.problems = append(b.problems, source.Problem{
					Pos: ds.After.At, Severity: source.Warning, Code: "before-safe",
					Message: st.Name() + " may be done before " + first.Name() + ", the first step of the job",
					Help:    []string{"after: {" + first.Key + ": the machine must be safe}, or put it first"},
					See:     []source.Also{{Pos: first.At, What: "the first step"}},
				})
			}
		}
	}
}

// checkHeadings sees that no two sections have one name: put-backs go by it.
func (b *builder) checkHeadings() {
	first := map[string]source.Pos{}
	for _, ds := range b.def.Sections {
		name := strings.TrimSpace(ds.Name.One.Value)
		if name == "" {
			continue
		}
		if at, ok := first[name]; ok {
			b.problems.AddWith(ds.Name.One.At, "section-twice", "two sections are called "+source.Quote(name)+"; reverse: goes by the name", at, "the first one", "give this one another name")
			continue
		}
		first[name] = ds.Name.One.At
	}
}
