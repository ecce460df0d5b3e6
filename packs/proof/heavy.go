package proof

import (
	"slices"
	"strconv"

	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkHeavy sees that whatever is heavier than one person may carry on this site
// comes off and goes back by a lift, on a named hook, or by so many people that
// each has no more than that. The mass is that of one piece.
func (r *report) checkHeavy() {
	for _, s := range r.job.Sections {
		for _, st := range s.Steps {
			if st.OnHook != "" || st.Undoes != nil {
				continue // a generated row takes it from the step that it undoes
			}
			for _, m := range append(slices.Clone(st.Remove), st.Fit...) {
				if r.tooHeavy(st, m) {
					break // one problem tells the step
				}
			}
		}
	}
}

// tooHeavy tells of one part that a step moves by hand and must not.
func (r *report) tooHeavy(st *job.Step, m *job.Move) bool {
	mass, most := m.Part.Weighs(r.job.Parts), r.job.Site.Heavy
	if mass == nil || slices.ContainsFunc(st.Lifts, func(l *job.Lift) bool {
		return len(l.Parts) == 0 || slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || m.Part.Within(p) || p.Within(m.Part) })
	}) {
		return false
	}
	most.Number = most.Number.Mul(units.Whole(int64(max(st.People, 1))))
	if over, err := mass.Cmp(most); err != nil || over <= 0 {
		return false
	}
	says := "one person"
	if st.People > 1 {
		says = strconv.Itoa(st.People) + " people"
	}
	help := []string{"lift: [L1] with a lift sheet", "for example on-hook: workshop crane, for a routine lift by the site's rules"}
	// As many as may lift it together by the guide that the sheet of a lift by hand goes by.
	each := lift.Kg(job.Kilograms(r.job.Site.Heavy))
	for n := max(st.People, 1) + 1; n <= lift.MostHands; n++ {
		if lift.Kg(job.Kilograms(*mass)) <= lift.TeamMay(n, each) {
			help = append(help, "people: "+strconv.Itoa(n)+", if each then has no more than "+units.Pointed(r.job.Site.Heavy.Print()))
			break
		}
	}
	r.problems = append(r.problems, source.Problem{
		Pos: m.At, Severity: source.Error, Code: "too-heavy",
		Message: m.Part.Name + " weighs " + units.Pointed(mass.Print()) + ", more than " + says + " may lift here (" + units.Pointed(most.Print()) + "), and " + st.Name() + " does not say what it hangs on",
		Help:    help,
	})
	return true
}
