package proof

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkThings sees that the places of a job are kept apart, that old pieces are counted
// as scrap, that what is told twice is told the same, and that what hangs on a hook has
// a mass.
func (r *report) checkThings() {
	told := map[source.Pos]bool{} // once for all places
	for _, p := range r.job.Parts {
		for _, m := range p.Off {
			r.otherPlace(m, told)
			r.noScrap(m, told)
		}
		r.neverRenewed(p, told)
		r.heavierThanWhole(p)
	}
	for _, l := range r.job.Lifts {
		r.massTwice(l)
	}
	for _, k := range r.job.Stacks {
		r.checkStack(k)
	}
	for _, st := range r.walk.Steps {
		r.onHook(st, told)
	}
}

// neverRenewed warns of a part that is renewed with a judged set, or always, and that joints, sets or
// dimensions name but no step takes off. One that nothing names is told as such.
func (r *report) neverRenewed(p *job.Part, told map[source.Pos]bool) {
	named := len(p.Joints) > 0 || p.Set != nil
	for _, d := range r.job.Dims {
		named = named || d.From.Part == p || d.To.Part == p || d.Of.Part == p
	}
	if p.Renew == "as set" && p.Set != nil && len(p.Set.JudgedBy) > 0 && len(p.Off) == 0 && len(p.Back) == 0 && !told[p.At] {
		told[p.At] = true
		r.problems.WarnWith(p.At, "never-renewed", p.Called()+" is renewed with "+p.Set.Mark+" where that is out, and no step takes the old one off", p.Set.At, "the set",
			"remove: ["+p.Key+"] at the step that takes it off", "or take it out of the set")
	}
	if p.Renew == "always" && len(p.Off) == 0 && len(p.Back) == 0 && named && !told[p.At] {
		told[p.At] = true
		r.problems.Warn(p.At, "never-renewed", p.Called()+" is always renewed, and no step takes the old one off", "remove: ["+p.Key+"] at the step that takes it off", "or take renew: out")
	}
}

// otherPlace tells of a part that goes into the container, or the pocket, of another
// place than its own: its tag would name the wrong end.
func (r *report) otherPlace(m *job.Move, told map[source.Pos]bool) {
	p, c := m.Part, m.To.Container
	if c == nil || told[m.At] {
		return
	}
	wrong := !c.Place.Agrees(p.Place)
	for _, pl := range r.job.Places {
		// A pocket that is called as a place is for what comes from there: DE, DE-DIS, crown-L.
		wrong = wrong || slices.Contains(strings.Split(m.To.Pocket, "-"), pl.Label) && !pl.Agrees(p.Place.Or(m.Step.Place))
	}
	if wrong {
		told[m.At] = true
		in := c.Base
		if m.To.Pocket != "" {
			in += "/" + p.Place.Or(m.Step.Place).Label
		}
		r.problems.AddWith(m.At, "other-place", p.Called()+" goes into "+m.To.Mark()+", which is for another place", c.At, "the container", "into: "+in+", where it belongs")
	}
}

// noScrap warns of an old piece that no line of scrap names: it lies on the bench, while
// what goes to scrap or into a container is counted.
func (r *report) noScrap(m *job.Move, told map[source.Pos]bool) {
	if m.Part.Renew != "always" || !m.To.Bench || told[m.At] {
		return
	}
	told[m.At] = true
	r.problems.WarnWith(m.At, "no-scrap", m.Part.Called()+" is always renewed and its old piece is left on the bench: no line counts it as scrap", m.Part.At, "the part",
		"into: {"+m.Part.Key+": scrap}", "or a container, if it is held against the new one")
}

// heavierThanWhole tells of an assembly that is said to weigh less than its parts.
func (r *report) heavierThanWhole(p *job.Part) {
	if p.Mass == nil {
		return
	}
	sum := lift.Kg(0)
	for _, q := range r.job.Parts {
		if m := q.Weighs(r.job.Parts); q.Of == p && m != nil {
			sum += lift.Kg(job.Kilograms(*m)) * lift.Kg(q.Count)
		}
	}
	// Masses are told to the kilogram, or to three figures.
	if mass := lift.Kg(job.Kilograms(*p.Mass)); sum > mass+max(1, mass/200) {
		r.problems.Add(p.At, "mass-differs", p.Called()+" is said to weigh "+units.Pointed(p.Mass.Print())+", and its parts come to "+strconv.FormatFloat(float64(sum), 'f', 0, 64)+" kg", "put one of them right, or take of: out at what does not belong to it")
	}
}

// massTwice tells of a lift that is said to weigh something else than its parts, all of
// which say what they weigh. One that is lighter is told by the law of the lifts.
func (r *report) massTwice(l *job.Lift) {
	load := l.Plan.Load
	if load.Mass <= 0 || len(l.Parts) == 0 || slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p.Mass == nil }) {
		return
	}
	sum := r.heaviest(l)
	// Masses are told to the kilogram, or to three figures.
	if slack := max(load.MassTolerance, 1, load.Mass/200); load.Mass > sum+slack {
		r.problems.WarnWith(l.At, "mass-differs", l.Mark+" is "+load.Mass.Given().In(l.Units())+", and its parts come to "+sum.Given().In(l.Units()), l.Parts[0].At, "the part", "put one of them right, or name the other parts that hang on it")
	}
}

// onHook warns of a step that hangs something on a hook and says of nothing that it
// moves what it weighs: nobody can choose the sling.
func (r *report) onHook(st *job.Step, told map[source.Pos]bool) {
	moved := slices.Concat(st.Remove, st.Fit)
	if st.OnHook == "" || len(moved) == 0 || told[st.At] || slices.ContainsFunc(moved, func(m *job.Move) bool { return m.Part.Weighs(r.job.Parts) != nil }) {
		return
	}
	told[st.At] = true
	hung := moved[0].Part
	for _, m := range moved {
		if !m.Part.Fastens() {
			hung = m.Part
			break
		}
	}
	r.problems.WarnWith(st.At, "no-mass", hung.Called()+" hangs on the "+st.OnHook+" at "+st.Name()+" and does not say what it weighs", hung.At, "the part", "for example mass: … kg")
}

// checkStack warns of a stack that names more or fewer pieces than its parts have, where
// each of its pieces is called as a part that comes off with it.
func (r *report) checkStack(k *job.Stack) {
	if k.Step == nil || len(k.Pieces) == 0 {
		return
	}
	meant := map[*job.Part]bool{}
	for _, piece := range k.Pieces {
		any := false
		for _, m := range k.Step.Remove {
			if m.Part.Place.Agrees(k.Place) && (strings.TrimSpace(piece) == "" || m.Part.IsCalled(piece)) {
				meant[m.Part], any = true, true
			}
		}
		if !any {
			return
		}
	}
	n := 0
	var names []string
	for _, m := range k.Step.Remove {
		if meant[m.Part] {
			n += m.N
			names = append(names, strconv.Itoa(m.N)+" "+m.Part.Name)
		}
	}
	if n != len(k.Pieces) {
		r.problems.WarnWith(k.Step.At, "stack-count", k.Mark+" has "+strconv.Itoa(len(k.Pieces))+" pieces, and "+strconv.Itoa(n)+" come off: "+strings.Join(names, ", "), k.Step.Remove[0].At, "what comes off", "put the order: of "+k.Base+" right, or the count of the part")
	}
}
