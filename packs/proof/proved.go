package proof

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// valveMark finds the mark of a valve or a gauge in words: V-122, PG-3.
var valveMark = phrase.Of(`\b[A-Z]{1,3}-\d+[A-Z]?\b`)

// stateOfValve are words by which something else is seen of a valve than that it proves, unless
// the isolation is proved by just that.
var stateOfValve = phrase.Of(`(?i)\b(?:shut|closed|plug(?:ged|s)?|open|tags?|tagged|locks?|locked)\b`)

// checkProvedLate warns of what proves an isolation, by the mark of a valve or a gauge in its
// proved:, that is seen below the first thing which is opened: what holds back a liquid or a gas
// is proved to hold before anything is. Where words above that name the mark, it is taken as
// proved there.
func (r *report) checkProvedLate() {
	for _, x := range r.job.Isolations {
		seen, what := r.provesAt(x)
		if x.LockedAt == nil || seen == nil {
			continue
		}
		first := slices.IndexFunc(r.walk.Events, func(e *walk.Event) bool {
			return e.Step.Index > x.LockedAt.Index && opensUp(e) && !e.Step.Bench
		})
		if first < 0 || r.walk.Events[first].Index > seen.Index || r.walk.Events[first].Step == seen.Step || r.saidProved(x, r.walk.Events[first]) {
			continue
		}
		r.problems.WarnWith(seen.At, "proved-late", "the isolation "+source.Quote(x.Key)+" is proved by "+source.Quote(what)+" at "+seen.Step.Name()+", and "+r.walk.Events[first].Step.Name()+" opens the machine above that", r.walk.Events[first].At, "opened here",
			"see it at a step above that")
	}
}

// opensUp reports whether an event opens what may hold a liquid or a gas.
func opensUp(e *walk.Event) bool {
	return e.Verb == job.DoOpen || e.Verb == job.DoRemove && e.Move.Part.Holds == "pressure"
}

// provedBy reports whether a text names a mark by which an isolation is proved.
func (r *report) provedBy(x *job.Isolation, text string) bool {
	marks := valveMark.FindAllString(r.job.InEnglish(x.Proved), -1)
	return len(marks) > 0 && slices.ContainsFunc(valveMark.FindAllString(text, -1), func(m string) bool { return slices.Contains(marks, m) })
}

// provesAt is the first event at which what proves an isolation is seen, and what is seen of it.
func (r *report) provesAt(x *job.Isolation) (*walk.Event, string) {
	proof := stateOfValve.FindAllString(strings.ToLower(x.Proved), -1)
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSee {
			continue
		}
		what := lookedAt(e)
		other := slices.ContainsFunc(stateOfValve.FindAllString(strings.ToLower(what), -1), func(w string) bool { return !slices.Contains(proof, w) })
		if !other && r.provedBy(x, what) {
			return e, what
		}
	}
	return nil, ""
}

// saidProved reports whether the words of a step or of a hold, down to the step of an event,
// name what proves an isolation.
func (r *report) saidProved(x *job.Isolation, until *walk.Event) bool {
	for _, st := range r.walk.Steps {
		if st.Index <= until.Step.Index && r.provedBy(x, r.job.InEnglish(st.Do)) {
			return true
		}
	}
	return slices.ContainsFunc(r.walk.Events[:until.Index], func(e *walk.Event) bool { return e.Verb == job.DoHold && r.provedBy(x, r.job.InEnglish(e.Hold.What)) })
}

// provedLate binds what opens the machine to the step that proves an isolation.
func (b *binder) provedLate() {
	r := &report{walk: b.walk, job: b.job}
	for _, x := range b.job.Isolations {
		seen, _ := r.provesAt(x)
		if x.LockedAt == nil || seen == nil {
			continue
		}
		for _, e := range b.walk.Events[seen.Index:] {
			if opensUp(e) {
				b.before(seen.Step, e.Step, job.Bind{Kind: job.BoundLock, Lock: x})
			}
		}
	}
}
