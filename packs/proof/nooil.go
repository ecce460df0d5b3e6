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

// fillsOil reports whether a step fills oil by its words.
func (r *report) fillsOil(st *job.Step) bool { return withOil.MatchString(r.fillsAt(st)) }

var withOil = phrase.Words(`oil|glass(?:es)?|bearings?|sump|gear ?case|gearbox`)

// checkNoOil warns of oil that is looked for at its glass after the oil was drained and before
// the step that fills it.
func (r *report) checkNoOil() {
	for _, st := range r.walk.Steps {
		seen := slices.IndexFunc(st.Seen, func(x job.Seen) bool { return seesOil(r.job.InEnglish(x.What)) })
		if seen < 0 || r.fillsOil(st) {
			continue
		}
		if away, filled := r.withoutOil(st); filled != nil {
			r.problems.WarnWith(st.Seen[seen].At, "no-oil-yet", st.Name()+" looks for "+source.Quote(st.Seen[seen].What)+", and the oil that was drained at "+away.Name()+" is filled only at "+filled.Name(), filled.At, "filled only here",
				"do it below the step that fills")
		}
	}
}

// withoutOil gives the step above another at which the oil was drained, and the one below at which
// it is filled; nil where there is oil, or nobody says so.
func (r *report) withoutOil(st *job.Step) (away, filled *job.Step) {
	for _, x := range r.walk.Steps[:st.Index] {
		switch {
		case r.fillsOil(x):
			away = nil
		case oilAway.MatchString(r.job.InEnglish(x.Do)) && x.Place.Agrees(st.Place):
			away = x
		}
	}
	i := slices.IndexFunc(r.walk.Steps[st.Index:], func(x *job.Step) bool { return r.fillsOil(x) && x.Place.Agrees(st.Place) })
	if away == nil || i < 0 {
		return nil, nil
	}
	return away, r.walk.Steps[st.Index+i]
}

// noOilYet binds a step that looks for the oil to the one that fills it.
func (b *binder) noOilYet() {
	r := &report{walk: b.walk, job: b.job}
	var filled *job.Step
	for _, st := range b.walk.Steps {
		if r.fillsOil(st) {
			filled = st
		} else if filled != nil && slices.ContainsFunc(st.Seen, func(x job.Seen) bool { return seesOil(b.job.InEnglish(x.What)) }) {
			b.before(filled, st, job.Bind{Kind: job.BoundBelow})
		}
	}
}
