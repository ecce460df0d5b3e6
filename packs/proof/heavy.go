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
// comes off and goes back by a lift, on a named hook, or by a team that may lift it
// together: a team may less than the sum of what each may, by the guide that the sheet of
// a lift by hand goes by (lift.TeamMay). The mass is that of one piece.
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
	mass := m.Part.Weighs(r.job.Parts)
	if mass == nil || slices.ContainsFunc(st.Lifts, func(l *job.Lift) bool {
		return len(l.Parts) == 0 || slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || m.Part.Within(p) || p.Within(m.Part) })
	}) {
		return false
	}
	people := max(st.People, 1)
	most := r.team(people)
	if over, err := mass.Cmp(most); err != nil || over <= 0 {
		return false
	}
	says := "one person may lift here ("
	if people > 1 {
		says = strconv.Itoa(people) + " people may lift here together ("
	}
	help := []string{"lift: [L1] with a lift sheet", "for example on-hook: workshop crane, for a routine lift by the site's rules"}
	for n := people + 1; n <= lift.MostHands; n++ {
		if over, err := mass.Cmp(r.team(n)); err == nil && over <= 0 {
			help = append(help, "people: "+strconv.Itoa(n)+", if each then has no more than "+units.Pointed(r.job.Site.Heavy.Print()))
			break
		}
	}
	r.problems = append(r.problems, source.Problem{
		Pos: m.At, Severity: source.Error, Code: "too-heavy",
		Message: m.Part.Name + " weighs " + units.Pointed(mass.Print()) + ", more than " + says + units.Pointed(most.Print()) + "), and " + st.Name() + " does not say what it hangs on",
		Help:    help,
	})
	return true
}

// team is what so many people may lift here, down to a tenth of a kilogram or a pound where
// it is worked out: a tenth of a tonne is more than all of them may. More than a lift by hand
// has may no more than those: no guide says so.
func (r *report) team(people int) units.Quantity {
	each := r.job.Site.Heavy
	if people == 1 {
		return each
	}
	unit := units.Kilogram
	if each.Unit == units.Pound {
		unit = units.Pound
	}
	kg := lift.TeamMay(min(people, lift.MostHands), lift.Kg(job.Kilograms(each)))
	may, ok := units.ComputedAs(float64(kg), units.Kilogram, unit)
	down, err := may.RoundDown(unit, 1)
	if !ok || err != nil {
		return each // no ordinary number: what one person may
	}
	return down
}
