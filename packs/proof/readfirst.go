package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// The boxes of a step are filled from the top: where its words put something on and measure
// then, and its keys have the reading first, the float is read before the cover is on.
var (
	putsFirst = phrase.Of(`(?i)(?:^|[.;:,]\s*|\b(?:and|then)\s+)(?:then\s+)?(?:put|fit|push|slide|lay|press|lower|screw|bolt)\b[^.;]*?\b(?:on|in|onto|into|home|back)\b`)
	readsThen = phrase.Of(`(?i)(?:^|[.;:,]\s*|\b(?:and|then)\s+)(?:then\s+)?(?:measure|gauge|read)\b`)
)

// checkReadFirst warns of a reading that stands above what the step puts on, where the words
// put that on first and measure then: a straight edge that is laid on, and a shaft that is pushed
// home, are no part of what goes on. Only what is all read before the first piece goes on is told
// of: a size that is read between two pieces has its order in the words of neither.
func (r *report) checkReadFirst() {
	s, told := newSpeaker(r), map[source.Pos]bool{} // once for all places
	for _, st := range r.walk.Steps {
		words := r.job.InEnglish(st.Do)
		put, read := putsFirst.FindStringIndex(words), readsThen.FindStringIndex(words)
		if st.Undoes != nil || told[st.At] || put == nil || read == nil || put[1] > read[0] || !s.putsAbove(st, len(tokens.FindAllString(strings.ToLower(words[:read[0]]), -1))) {
			continue
		}
		verbs := slices.DeleteFunc(st.VerbOrder(), func(v job.Verb) bool { return !readsOrPuts(st, v) })
		if len(verbs) < 2 || !reads(verbs[0]) || slices.ContainsFunc(verbs[1:], reads) {
			continue
		}
		told[st.At] = true
		key := map[job.Verb]string{job.DoMeasure: "measure", job.DoSet: "set", job.DoFit: "fit", job.DoFitForNow: "fit-for-now"}
		r.problems.Warn(st.At, "read-first", "the words of "+st.Name()+" put on first and measure then, and "+key[verbs[0]]+": stands above "+key[verbs[1]]+": on paper it is read before anything is on",
			"write "+key[verbs[0]]+": below "+key[verbs[1]]+":, and below tighten:", "or say in the words what is measured first")
	}
}

// putsAbove reports whether the words of a step put a part on that it fits, above some word of them.
func (s *speaker) putsAbove(st *job.Step, word int) bool {
	return slices.ContainsFunc(slices.Concat(st.Fit, st.ForNow), func(m *job.Move) bool {
		at, _ := s.at(st, m.Part, puts)
		return at >= 0 && at < word
	})
}

// reads reports whether a verb takes readings.
func reads(v job.Verb) bool { return v == job.DoMeasure || v == job.DoSet }

// readsOrPuts reports whether a step does a verb that takes readings or puts something on.
func readsOrPuts(st *job.Step, v job.Verb) bool {
	switch v {
	case job.DoMeasure:
		return len(st.Measure) > 0
	case job.DoSet:
		return len(st.Set) > 0
	case job.DoFit:
		return len(st.Fit) > 0
	case job.DoFitForNow:
		return len(st.ForNow) > 0
	}
	return false
}
