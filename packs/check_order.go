package packs

import (
	"strings"

	"matchmark/packs/source"
)

// checkAfter sees that what the author says of the order is all that binds a step:
// a step that "nothing has to come before" is not bound by its parts, and none can
// be done before the first step of the job, where that one only makes ready.
func (b *builder) checkAfter() {
	var first *Step
	safe := map[*Step]bool{} // bound to come after the first step, at one or more removes
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
			if hard := st.hardBind(); len(ds.After.Steps) == 0 && hard != nil {
				b.problems = append(b.problems, source.Problem{
					Pos: ds.After.At, Severity: source.Warning, Code: "not-free",
					Message: "after: {} says that nothing has to come before " + st.name() + ", but " + hard.Before.name() + " has to: " + hard.why(),
					Help:    []string{"after: {" + hard.Before.Key + ": the reason}"},
					See:     []source.Also{{Pos: hard.Before.At, What: "the step"}},
				})
			}
			if !safe[st] && first.readies() {
				b.problems = append(b.problems, source.Problem{
					Pos: ds.After.At, Severity: source.Warning, Code: "before-safe",
					Message: st.name() + " may be done before " + first.name() + ", the first step of the job",
					Help:    []string{"after: {" + first.Key + ": the machine must be safe}, or put it first"},
					See:     []source.Also{{Pos: first.At, What: "the first step"}},
				})
			}
		}
	}
}

// readies reports whether a step moves, loosens and measures nothing: as the first
// of a job it makes the machine safe.
func (s *Step) readies() bool {
	return len(s.Remove)+len(s.Fit)+len(s.Loosen)+len(s.Measure)+len(s.Set)+len(s.ForNow) == 0
}

// hardBind is the nearest reason besides the author's words why a step comes after
// another, nil if there is none.
func (s *Step) hardBind() *Bind {
	for i := range s.Binds {
		if k := s.Binds[i].Kind; k != BoundAfter && k != BoundBelow {
			return &s.Binds[i]
		}
	}
	return nil
}

// why words a bind for a message.
func (b *Bind) why() string {
	switch b.Kind {
	case BoundHold:
		return "a hold stands between them"
	case BoundPart:
		return "both move or measure " + b.Part.called()
	case BoundJoint:
		return "both loosen or tighten " + b.Part.called()
	case BoundLost:
		return "it measures " + b.Dim.Mark + ", which this step destroys"
	case BoundReading:
		return "it takes the reading " + b.Dim.Mark
	case BoundLock:
		return "an isolation is locked or unlocked there"
	case BoundOpening:
		return "it opens " + b.Opening.Mark()
	case BoundEmpty:
		return "it moves parts of " + b.In.Mark
	}
	return b.Reason
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
			b.say2(ds.Name.One.At, "section-twice", "two sections are called "+quote(name)+"; reverse: goes by the name", at, "the first one", "give this one another name")
			continue
		}
		first[name] = ds.Name.One.At
	}
}
