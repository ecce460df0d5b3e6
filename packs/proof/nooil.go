package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// How words tell that oil is drained, and that it is looked for where it shows how much there is.
var (
	oilSeen = phrase.Of(`(?i)\boil (?:(?:is|stands|level|at|to|in|up|on|the|both|its|middle|mark|notch|of) )+(?:middle|mark|notch|glass|glasses|bearings?|level|stick|centre|center)\b`)
	oilAway = phrase.Of(`(?i)\b(?:drain|let)(?:s|ed|ing)? (?:off |out )?(?:the |all |its |both )?(?:[\w-]+ ){0,2}?oil\b|\boil (?:is )?(?:drained|let (?:off|out))\b|\blet the oil (?:off|out)\b`)
	noOil   = phrase.Of(`(?i)\b(?:no|not|without|never) (?:more |any )?oil\b|\boil (?:is )?(?:not|out|gone|below|under)\b`)
)

// seesOil reports whether words look for oil where it shows how much there is.
func seesOil(words string) bool { return oilSeen.MatchString(words) && !noOil.MatchString(words) }

// checkNoOil warns of oil that is looked for at its glass after the oil was drained and before
// the step that fills it.
func (r *report) checkNoOil() {
	for i, st := range r.walk.Steps {
		seen := slices.IndexFunc(st.Seen, func(x job.Seen) bool { return seesOil(r.job.InEnglish(x.What)) })
		if seen < 0 || r.fillsAt(st) != "" {
			continue
		}
		away := -1
		for k, x := range r.walk.Steps[:i] {
			switch words := r.job.InEnglish(x.Do); {
			case r.fillsAt(x) != "":
				away = -1
			case oilAway.MatchString(words):
				away = k
			}
		}
		next := slices.IndexFunc(r.walk.Steps[i:], func(x *job.Step) bool { return r.fillsAt(x) != "" && x.Place.Agrees(st.Place) })
		if away < 0 || next < 0 {
			continue
		}
		r.problems.WarnWith(st.Seen[seen].At, "no-oil-yet", st.Name()+" looks for "+source.Quote(st.Seen[seen].What)+", and the oil that was drained at "+r.walk.Steps[away].Name()+" is filled only at "+r.walk.Steps[i+next].Name(), r.walk.Steps[i+next].At, "filled only here",
			"do it below the step that fills")
	}
}

// noOilYet binds a step that looks for the oil to the one that fills it.
func (b *binder) noOilYet() {
	r := &report{walk: b.walk, job: b.job}
	var filled *job.Step
	for _, st := range b.walk.Steps {
		if r.fillsAt(st) != "" {
			filled = st
		} else if filled != nil && slices.ContainsFunc(st.Seen, func(x job.Seen) bool { return seesOil(b.job.InEnglish(x.What)) }) {
			b.before(filled, st, job.Bind{Kind: job.BoundBelow})
		}
	}
}
