package proof

import (
	"slices"

	"matchmark/packs/job"
)

// checkIdleLift sees that a load that is raised goes somewhere: of a lift that two steps
// or more make, and that names its parts, one step takes a part of it off, puts it back or
// sets it down.
func (r *report) checkIdleLift() {
	for _, l := range r.job.Lifts {
		if len(l.Parts) == 0 || len(l.Steps) < 2 {
			continue
		}
		lands := func(st *job.Step) bool {
			return slices.Contains(st.SetDown, l) || l.MovedBy(st)
		}
		if slices.ContainsFunc(l.Steps, lands) || slices.ContainsFunc(r.walk.Steps, func(st *job.Step) bool { return slices.Contains(st.SetDown, l) || landsLoad(l, st) }) {
			continue
		}
		last := l.Steps[len(l.Steps)-1]
		r.problems.WarnWith(last.At, "idle-lift", l.Mark+" is made at "+l.Steps[0].Name()+" and "+last.Name()+", and no step takes "+l.Parts[0].Called()+" off, puts it back or sets it down", l.At, "the lift",
			"remove: ["+l.Parts[0].Key+"] at the step that carries it away", "or set-down: ["+l.Mark+"]")
	}
}

// landsLoad reports whether a step moves a part of a load, whether by its lift or not.
func landsLoad(l *job.Lift, st *job.Step) bool {
	return slices.ContainsFunc(slices.Concat(st.Remove, st.Fit), func(m *job.Move) bool {
		return slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || p.Within(m.Part) })
	})
}
