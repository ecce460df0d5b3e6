package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
)

// forLifting finds the words by which a permit is known as one for lifts.
var forLifting = regexp.MustCompile(`(?i)lift|hoist|crane|rigging`)

// checkLiftPermit sees that where some lifts of a job are made on a permit, all are: a
// permit that says it is for lifting, and that most of its steps ask for because they lift.
// That of an entry or of hot work beside a lift is none. What people lift by hand needs
// none, and a step may say that it goes without.
func (r *report) checkLiftPermit() {
	for _, p := range r.job.Permits {
		lifting := 0
		for _, st := range p.Steps {
			if hoists(st) != nil {
				lifting++
			}
		}
		if !forLifting.MatchString(p.Key+" "+r.job.InEnglish(p.What)) || lifting < 2 || 2*lifting <= len(p.Steps) {
			continue
		}
		for _, st := range r.walk.Steps {
			l := hoists(st)
			if l == nil || len(st.Permits) > 0 || slices.ContainsFunc(st.Without, func(w job.Without) bool { return w.Guard == job.GuardPermit }) {
				continue
			}
			first := p.Steps[slices.IndexFunc(p.Steps, func(s *job.Step) bool { return hoists(s) != nil })]
			r.problems.AddWith(st.At, "no-lift-permit", "step "+st.Name()+" makes the lift "+l.Mark+" without a permit; other lifts are made on the permit "+p.Key, first.At, "asked for here", "permit: ["+p.Key+"] at this step")
		}
	}
}

// hoists is the first lift that a step makes with a hook, nil if it makes none.
func hoists(st *job.Step) *job.Lift {
	if i := slices.IndexFunc(st.Lifts, func(l *job.Lift) bool { return !l.ByHand }); i >= 0 {
		return st.Lifts[i]
	}
	return nil
}
