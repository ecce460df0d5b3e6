package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// valveMark finds the mark of a valve or a gauge in words: V-122, PG-3.
var valveMark = phrase.Of(`\b[A-Z]{1,3}-\d+[A-Z]?\b`)

// checkProvedLate warns of what proves an isolation, by the mark of a valve or a gauge in its
// proved:, that is seen below the first thing which is opened: what holds back a liquid or a gas
// is proved to hold before anything is.
func (r *report) checkProvedLate() {
	for _, x := range r.job.Isolations {
		marks := valveMark.FindAllString(r.job.InEnglish(x.Proved), -1)
		seen, what := r.provesAt(marks)
		if x.LockedAt == nil || seen == nil {
			continue
		}
		first := slices.IndexFunc(r.walk.Events, func(e *walk.Event) bool {
			return e.Step.Index > x.LockedAt.Index && (e.Verb == job.DoOpen || e.Verb == job.DoRemove && e.Move.Part.Holds == "pressure") && !e.Step.Bench
		})
		if first < 0 || r.walk.Events[first].Index > seen.Index || r.walk.Events[first].Step == seen.Step {
			continue
		}
		r.problems.WarnWith(seen.At, "proved-late", "the isolation "+source.Quote(x.Key)+" is proved by "+source.Quote(what)+" at "+seen.Step.Name()+", and "+r.walk.Events[first].Step.Name()+" opens the machine above that", r.walk.Events[first].At, "opened here",
			"see it at a step above that")
	}
}

// provesAt is the first event at which one of some marks is seen, and what is seen of it.
func (r *report) provesAt(marks []string) (*walk.Event, string) {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoSee {
			continue
		}
		what := lookedAt(e)
		if slices.ContainsFunc(valveMark.FindAllString(what, -1), func(m string) bool { return slices.Contains(marks, m) }) {
			return e, what
		}
	}
	return nil, ""
}

// provedLate binds what opens the machine to the step that proves an isolation.
func (b *binder) provedLate() {
	r := &report{walk: b.walk, job: b.job}
	for _, x := range b.job.Isolations {
		seen, _ := r.provesAt(valveMark.FindAllString(b.job.InEnglish(x.Proved), -1))
		if x.LockedAt == nil || seen == nil {
			continue
		}
		for _, e := range b.walk.Events[seen.Index:] {
			if e.Verb == job.DoOpen || e.Verb == job.DoRemove && e.Move.Part.Holds == "pressure" {
				b.before(seen.Step, e.Step, job.Bind{Kind: job.BoundLock, Lock: x})
			}
		}
	}
}
