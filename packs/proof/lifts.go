package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/source"
)

// checkLifts sees that every lift is made, that it is as heavy as its parts, and
// that the steps that make it move what is on it.
func (r *report) checkLifts() {
	for _, l := range r.job.Lifts {
		if len(l.Steps) == 0 {
			r.problems.Add(l.At, "never-lifted", l.Mark+" is made at no step", "lift: ["+l.Mark+"] at the step that makes it")
		}
		r.checkParts(l)
		r.checkSpot(l)
		for _, st := range l.Steps {
			r.checkLifted(l, st)
		}
	}
}

// checkParts sees that a lift is no lighter than the parts that hang on it.
func (r *report) checkParts(l *job.Lift) {
	load := l.Plan.Load
	sum := r.heaviest(l)
	if load.Mass > 0 && sum > load.Mass+load.MassTolerance {
		r.problems.Add(l.At, "lighter-than-its-parts", l.Mark+" is "+load.Mass.Given().In(l.Units())+", and its parts come to "+sum.Given().In(l.Units()), "put the mass right, or take the part out that does not hang on it")
	}
}

// heaviest is what hangs on a lift at once: all its parts, or of parts that are lifted one
// after the other, as the bearing caps of both ends, those of the heaviest place.
func (r *report) heaviest(l *job.Lift) lift.Kg {
	all, at := lift.Kg(0), map[string]lift.Kg{}
	for _, p := range l.Parts {
		if p.Mass != nil {
			m := lift.Kg(job.Kilograms(*p.Mass)) * lift.Kg(p.Count)
			all += m
			at[p.Place.Label] += m
		}
	}
	if !placeByPlace(l) {
		return all
	}
	most := lift.Kg(0)
	for _, m := range at {
		most = max(most, m)
	}
	return most
}

// placeByPlace reports whether each step that makes a lift moves its parts of one place alone,
// and all its parts are moved so.
func placeByPlace(l *job.Lift) bool {
	moved := map[*job.Part]bool{}
	for _, st := range l.Steps {
		var of []string
		for _, m := range slices.Concat(st.Remove, st.TakeOut, st.Fit, st.ForNow) {
			if slices.Contains(l.Parts, m.Part) {
				moved[m.Part] = true
				of = append(of, m.Part.Place.Label)
			}
		}
		if len(of) == 0 || len(slices.Compact(of)) > 1 {
			return false
		}
	}
	return !slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p.Place.Label == "" || !moved[p] })
}

// checkSpot sees that a lift names the spot on which its parts are laid.
func (r *report) checkSpot(l *job.Lift) {
	for _, p := range l.Parts {
		for _, m := range p.Off {
			spot := m.To.Spot
			switch {
			case spot == nil || spot == l.LayDown || m.Step == nil || !slices.Contains(m.Step.Lifts, l):
			case l.LayDown == nil:
				r.problems.Warn(l.At, "look-at-lift", l.Mark+" does not say where it is laid down, and "+m.Step.Name()+" lays "+p.Name+" on "+spot.Mark, "lay-down: "+spot.Mark)
				return
			default:
				r.problems = append(r.problems, source.Problem{
					Pos: l.At, Severity: source.Error, Code: "other-spot",
					Message: l.Mark + " is laid down on " + l.LayDown.Mark + ", and " + m.Step.Name() + " lays " + p.Name + " on " + spot.Mark,
					Help:    []string{"put one of the two right"},
					See:     []source.Also{{Pos: m.At, What: "laid on " + spot.Mark + " here"}},
				})
				return
			}
		}
	}
}

// checkLifted sees that a step that makes a lift moves what is on it.
func (r *report) checkLifted(l *job.Lift, st *job.Step) {
	if st.Undoes != nil {
		return // moves what the step that it undoes has moved, which is told there
	}
	moved := slices.Concat(st.Remove, st.TakeOut, st.Fit, st.ForNow)
	if len(l.Parts) == 0 {
		if len(moved) > 0 {
			r.problems.Warn(l.At, "look-at-lift", l.Mark+" names no parts, and "+st.Name()+" makes it and moves some", "parts: ["+moved[0].Part.Key+"]")
		}
		return
	}
	for _, m := range moved {
		if slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || m.Part.Within(p) }) {
			return
		}
	}
	if r.walk.Hung(l, st) != nil && slices.ContainsFunc(l.Steps, l.MovedBy) {
		return // lets down what an earlier step has raised and booked out of its spot
	}
	if len(moved) > 0 {
		r.problems.Add(st.At, "other-part", "step "+st.Name()+" makes lift "+l.Mark+" and moves none of its parts", "parts: at "+l.Mark+", or lift: at the step that moves them")
	}
}

// lifts binds the steps that lift the same part.
func (b *binder) lifts() {
	for _, st := range b.walk.Steps {
		for _, l := range st.Lifts {
			for _, p := range l.Parts {
				b.moves(p, st)
			}
		}
	}
}
