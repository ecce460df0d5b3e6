package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/walk"
)

var (
	clauseEnd = phrase.Of(`(?i)[.;:,]|\b(and|then)\b`)
	// ofPaper finds a clause that speaks of a permit and of nothing else: Sign the permit off.
	ofPaper = phrase.Of(`(?i)^(fetch|get|bring|sign|return|hand|give|close|cancel)(s|ed|ing)? ((the|a|our|its) )?((\pL+[- ]){0,3}(permits?|PTW)|it|them)( (off|back|out|in|away|over|up|to .*))*$|^(the )?(\pL+[- ]){0,3}(permits?|PTW) (is|are) (signed|returned|handed|given|closed|cancelled)\b`)
)

// askedInVain tells of a permit that is asked for at the steps alone that sign it and hand it
// back, below the work: nobody has worked on it. Only words that speak of the paper alone tell
// that, for a step may test, paint or weld without a verb.
func (r *report) askedInVain(p *job.Permit, back *job.Step) bool {
	first := back
	for _, st := range p.Steps {
		if st.Index < first.Index {
			first = st
		}
	}
	for _, st := range r.walk.Steps {
		if st.Index >= first.Index && st.Index <= back.Index && !r.onlyPaper(st) {
			return false
		}
	}
	var worked *walk.Event
	for _, e := range r.walk.Events[:r.walk.Start(first)] {
		if len(workedOn(e)) > 0 && !e.Step.Bench {
			worked = e
		}
	}
	if worked == nil {
		return false
	}
	ends := " and hands it back"
	if first != back {
		ends = ", which " + back.Name() + " hands back"
	}
	r.problems.WarnWith(first.At, "permit-vain", "step "+first.Name()+" asks for the permit "+p.Key+ends+", and no work is done on it", worked.At, "worked on last here",
		"permit: ["+p.Key+"] at the step whose work it is for")
	return true
}

// onlyPaper reports whether a step does nothing but sign, fetch or return a permit, by its verbs
// and by its words.
func (r *report) onlyPaper(st *job.Step) bool {
	if st.Hours != nil || st.People > 0 || st.Check != "" || st.Photo || len(st.Cautions) > 0 || st.Until != nil || st.OnHook != "" {
		return false
	}
	if slices.ContainsFunc(r.walk.At(st), func(e *walk.Event) bool {
		return !slices.Contains([]job.Verb{job.DoPermit, job.DoHandBack, job.DoHold}, e.Verb)
	}) {
		return false
	}
	said := false
	for clause := range strings.SplitSeq(clauseEnd.ReplaceAllString(r.job.InEnglish(st.Do), "\n"), "\n") {
		if clause = strings.TrimSpace(clause); clause == "" {
			continue
		}
		if !ofPaper.MatchString(clause) {
			return false
		}
		said = true
	}
	return said
}
