package proof

import (
	"regexp"
	"slices"

	"matchmark/packs/job"
)

// What is done to a machine that runs, by words: it is started, as a sentence begins, or read
// while it runs. What is read after it has run may be read behind locks.
var (
	saysStart   = regexp.MustCompile(`(?:^|[.;:!?] )Start\b`)
	saysRunning = regexp.MustCompile(`(?i)\bwhile (?:it is |it's )?running\b|\bwhile it runs\b`)
)

// checkRunsLocked sees that no machine is started, or read while it runs, with all its locks
// on: the step that takes them off was forgotten, or stands below.
func (r *report) checkRunsLocked() {
	for _, st := range r.walk.Steps {
		does := r.runs(st)
		if does == "" || len(r.job.Isolations) == 0 {
			continue
		}
		end := r.walk.End(st) // one that takes its locks off and starts has none when it is done
		all := !slices.ContainsFunc(r.job.Isolations, func(x *job.Isolation) bool { return !r.walk.LockedAt(x, end) })
		if !all {
			continue
		}
		x := r.job.Isolations[0]
		at, what, help := x.At, "locked then", "do it below the step that takes the locks off"
		if x.UnlockedAt != nil && x.UnlockedAt.Index > st.Index {
			at, what = x.UnlockedAt.At, "taken off only here"
		}
		r.problems.AddWith(st.At, "runs-locked", st.Name()+" "+does+", and every isolation is locked then", at, what, help, "or say it in other words, if nothing runs")
	}
}

// runs says what a step does to a machine that runs, empty for nothing.
func (r *report) runs(st *job.Step) string {
	if saysStart.MatchString(r.job.InEnglish(st.Do)) {
		return "starts the machine by its words"
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
