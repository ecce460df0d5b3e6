package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
)

// runs finds words by which a machine is run for some time: run one hour empty, run the pump
// an hour at 60 bar. What is run up by hand, as a nut, is none.
var runs = regexp.MustCompile(`(?i)\brun (?:(?:it|the (?:pump|fan|motor|gearbox|machine|compressor|turbine|blower|mill|belt)) )?(?:for )?(?:an?|one|two|three|four|half an|\d+) (?:hours?|minutes?)\b`)

// checkRunLocked warns of a step whose words run the machine while every lock is on and it
// takes none off.
func (r *report) checkRunLocked() {
	for _, st := range r.walk.Steps {
		start := r.walk.Start(st)
		if len(r.job.Isolations) == 0 || st.Bench || st.Locks() || !runs.MatchString(r.job.InEnglish(st.Do)) || start >= len(r.walk.Events) {
			continue
		}
		on := func(x *job.Isolation) bool { return r.walk.Locked(x, r.walk.Events[start]) != nil }
		if slices.ContainsFunc(r.job.Isolations, func(x *job.Isolation) bool { return !on(x) }) {
			continue
		}
		x := r.job.Isolations[0]
		r.problems.WarnWith(st.At, "run-locked", "the words of step "+st.Name()+" run the machine, and every lock is on", x.At, "the first of them", "unlock: or unlock-for-now: at a step above, or at this one")
	}
}
