package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
)

// apartRun are words of a run in which what has no oil stands still.
var apartRun = phrase.Of(`(?i)\b(?:uncoupled|solo|still out|spacer out|by itself|alone|motor only|direction|rotation)\b`)

// checkRunsDry warns of a machine that is started, run, or given back to its drive after its oil
// was drained and before the step that fills it. A lock that is off for a test only is left to the
// step that takes it off.
func (r *report) checkRunsDry() {
	for _, st := range r.walk.Steps {
		i := slices.IndexFunc(st.Unlock, drives)
		does := r.runs(st)
		if i >= 0 {
			does = "takes the lock " + st.Unlock[i].Key + " off"
		}
		if does == "" || st.Bench || r.fillsOil(st) || apartRun.MatchString(r.job.InEnglish(st.Do)) {
			continue
		}
		if away, filled := r.withoutOil(st); filled != nil {
			r.problems.WarnWith(st.At, "runs-dry", st.Name()+" "+does+", and the oil that was drained at "+away.Name()+" is filled only at "+filled.Name(), filled.At, "filled only here",
				"fill it at a step above that")
			return
		}
	}
}

// runsDry binds the steps that take a drive's lock off to the one that fills the oil.
func (b *binder) runsDry() {
	r := &report{walk: b.walk, job: b.job}
	var filled *job.Step
	for _, st := range b.walk.Steps {
		if r.fillsFirst(st) {
			filled = st
		} else if slices.ContainsFunc(st.Unlock, drives) || r.runs(st) != "" {
			b.before(filled, st, job.Bind{Kind: job.BoundBelow})
		}
	}
}
