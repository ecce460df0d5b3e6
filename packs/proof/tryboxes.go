package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

var (
	namesReading = phrase.Of(`\bD[1-9]\d*(?:/[\w-]+)?\b`)
	triesMeasure = phrase.Of(`(?i)\bmeasured?\b|\bwritten\b`)
)

// checkTryBoxes sees that what a further try reads has its box each time: "the new pack
// measured and written beside D20" is a tick, and the reading stands nowhere.
func (r *report) checkTryBoxes() {
	told := map[source.Pos]bool{}
	for _, st := range r.walk.Steps {
		for _, a := range st.EachTry {
			words := r.job.InEnglish(a.Words)
			if words == "" || told[a.At] {
				continue
			}
			mark := namesReading.FindString(words)
			boxed := slices.ContainsFunc(st.EachTry, func(b job.TryAct) bool {
				return b.Dim != nil && (mark == "" || b.Dim.Base == mark || b.Dim.Mark == mark)
			})
			named := slices.ContainsFunc(r.job.Dims, func(d *job.Dim) bool { return d.Base == mark || d.Mark == mark })
			if boxed || !named && !triesMeasure.MatchString(words) {
				continue
			}
			told[a.At] = true
			if !named {
				mark = "D…"
			}
			r.problems.Warn(a.At, "no-box", "a further try of "+st.Name()+" is to read something, "+source.Quote(a.Words)+", and has no box to write it in",
				mark+" by itself in each-try: has its box each time", "or say in other words what is looked at")
		}
	}
}
