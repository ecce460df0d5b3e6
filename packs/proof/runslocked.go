package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
)

// What is done to a machine that runs, by words: it is started, as a sentence begins; it is run
// for some time (run one hour empty, run the pump an hour at 60 bar); it is read while it runs.
// A nut is started and run up by hand, and what is read after a run may be read behind locks.
var (
	saysStart   = regexp.MustCompile(`(?:^|[.;:!?] )Start (?:it|the (?:` + machineWords + `))\b`)
	saysRun     = regexp.MustCompile(`(?i)\brun (?:(?:it|the (?:` + machineWords + `)) )?(?:for )?(?:an?|one|two|three|four|half an|\d+) (?:hours?|minutes?)\b`)
	saysRunning = regexp.MustCompile(`(?i)\bwhile (?:it is |it's )?running\b|\bwhile it runs\b`)
)

const machineWords = "pump|fan|motor|gearbox|machine|compressor|turbine|blower|mill|belt|mixer|agitator|drive|engine"

// checkRunsLocked warns of a step whose words start a machine, run it, or read it while it
// runs, with all its locks on from the beginning to the end of the step: the one that takes
// them off was forgotten, or stands below.
func (r *report) checkRunsLocked() {
	for _, st := range r.walk.Steps {
		does := r.runs(st)
		if does == "" || len(r.job.Isolations) == 0 || st.Bench || st.Locks() || !r.allLocked(r.walk.End(st)) {
			continue
		}
		x := r.job.Isolations[0]
		at, what, help := x.At, "locked then", "unlock: or unlock-for-now: at a step above, or at this one"
		if x.UnlockedAt != nil && x.UnlockedAt.Index > st.Index {
			at, what, help = x.UnlockedAt.At, "taken off only here", "do it below the step that takes the locks off"
		}
		r.problems.WarnWith(st.At, "runs-locked", st.Name()+" "+does+", and every isolation is locked then", at, what, help, "or say it in other words, if nothing runs")
	}
}

// allLocked reports whether every isolation is locked before an event.
func (r *report) allLocked(at int) bool {
	for _, x := range r.job.Isolations {
		if !r.walk.LockedAt(x, at) {
			return false
		}
	}
	return true
}

// runs says what a step does to a machine that runs, empty for nothing.
func (r *report) runs(st *job.Step) string {
	words := r.job.InEnglish(st.Do)
	switch {
	case saysStart.MatchString(words):
		return "starts the machine by its words"
	case saysRun.MatchString(words):
		return "runs the machine by its words"
	}
	for _, d := range slices.Concat(st.Measure, st.Set) {
		for _, words := range []string{d.State.With, d.Of.Name, d.From.Name, d.To.Name} {
			if saysRunning.MatchString(r.job.InEnglish(words)) {
				return "reads " + d.Mark + " while it runs"
			}
		}
	}
	return ""
}
