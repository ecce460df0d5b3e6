package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// How words tell that oil is drained, and that it is looked for where it shows how much there is:
// on its glass or stick, at a mark, by its level. A film of it on a bearing shows no level, and what
// is drained of a seal pot or a cooler is not the machine's.
var (
	oilSeen  = phrase.Of(`(?i)\boil (?:(?:is|stands|level|at|to|in|up|on|the|both|its|middle|mark|notch|of) )+(?:middle|mark|notch|glass|glasses|level|stick|centre|center)\b|\boil level (?:(?:at|of|in|is|right|good|the|both|all) )*(?:bearings?|housings?)\b`)
	oilAway  = phrase.Of(`(?i)\bdrain(?:s|ed|ing)? (?:off |out )?(?:the |all |its |both )?(?:[\w-]+ ){0,2}?oil\b|\blet(?:s|ting)? (?:off|out) (?:the |all |its )?(?:[\w-]+ ){0,2}?oil\b|\boil (?:is )?(?:drained|let (?:off|out))\b|\blet(?:s|ting)? (?:the|all|its) (?:[\w-]+ ){0,2}?oil (?:run |drain )?(?:off|out)\b`)
	oilOther = phrase.Of(`(?i)^ (?:pots?|coolers?|tanks?|filters?|pans?|trays?|lines?|pipes?|traps?|mist|separators?|heater)\b|^ (?:of|off|from|in) (?:the |a |its |both )?(?:[\w-]+ )?(?:pots?|coolers?|tanks?|filters?|pans?|trays?|lines?|pipes?|cranes?|jacks?|tensioner|hoist)\b`)
	noOil    = phrase.Of(`(?i)\b(?:no|not|without|never|film of|drops? of) (?:more |any )?oil\b|\boil (?:is )?(?:not|out|gone|below|under)\b|\bwiped\b`)
)

// seesOil reports whether words look for oil where it shows how much there is.
func seesOil(words string) bool { return oilSeen.MatchString(words) && !noOil.MatchString(words) }

// drainsOil reports whether words drain the oil of the machine, now.
func drainsOil(words string) bool {
	return slices.ContainsFunc(oilAway.FindAllStringIndex(words, -1), func(at []int) bool {
		return !oilOther.MatchString(words[at[1]:]) && !notIn.MatchString(clause.FindString(words[:at[0]])) && !saysLater.MatchString(words[at[1]:])
	})
}

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
		case drainsOil(r.job.InEnglish(x.Do)) && x.Place.Agrees(st.Place):
			away = x
		}
	}
	i := slices.IndexFunc(r.walk.Steps[st.Index:], func(x *job.Step) bool { return r.fillsFirst(x) && x.Place.Agrees(st.Place) })
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
		if r.fillsFirst(st) {
			filled = st
		} else if filled != nil && slices.ContainsFunc(st.Seen, func(x job.Seen) bool { return seesOil(b.job.InEnglish(x.What)) }) {
			b.before(filled, st, job.Bind{Kind: job.BoundBelow})
		}
	}
}
