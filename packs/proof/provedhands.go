package proof

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// What a hold or a proof tells of a machine that is made dead, by words; what comes off so that it can
// be proved or earthed at all: the cover of a terminal box; and a hold that tells of the end of it.
var (
	isolatedHold = phrase.Of(`(?i)(?:^(?:all |the )?|\b(?:machine|pump|motor|breaker|supply|supplies) (?:is |are )?|^[^,;.]*\b(?:machine|pump|motor|breaker|supply) [^,;.]*\band )(?:isolated|earthed|locked (?:off|out)|proved dead|(?:isolations?|loto|zero (?:energy|voltage)|dead test) (?:is |are )?(?:on|seen|proved|tested|checked|verified|confirmed|complete|done|in place))\b`)
	notToBe      = phrase.Of(`(?i)\bnot to be\b`)
	isolatedEnd  = phrase.Of(`(?i)\b(?:off|lifted|removed|ended|still|back|again|until|not|un-?locked)\b`)
	provedDead   = phrase.Of(`(?i)\b(?:tester|voltmeter|dead|(?:no|zero) volt(?:age|s)|absence of voltage|start tried|push[ -]?button tried|no answer|(?:does|must|will) not (?:start|turn))\b`)
	barsProof    = phrase.Of(`(?i)\b(?:covers?|lids?|doors?|panels?|hatch(?:es)?|box(?:es)?|cables?|canop(?:y|ies)|hoods?|enclosures?|(?:access|inspection) plates?|fuses?|earthing links?)\b`)
)

// checkProvedHands warns of parts that are worked on between the lock and what shows that it holds:
// the hold on the isolation, or the proof of its proved: by a tester or a start that is tried. A
// cover and its screws may come off between, for the terminals lie under one.
func (r *report) checkProvedHands() {
	for _, h := range r.job.Holds {
		if e := r.isolationHold(h); e != nil {
			lock := r.lastLock(e)
			r.handsBetween(lock, e, h.Mark+", "+source.Quote(h.What)+", is released at "+e.Step.Name(), "hold: "+h.Mark+" at "+nameOf(lock)+", or at a step above the work")
		}
	}
	for _, x := range r.job.Isolations {
		if lock, e := r.deadAt(x); e != nil {
			r.handsBetween(lock, e, "the isolation "+source.Quote(x.Key)+" is proved by "+source.Quote(lookedAt(e))+" at "+e.Step.Name(), "see it at "+nameOf(lock)+", or at a step above the work")
		}
	}
}

// nameOf names the step of an event, as in a help.
func nameOf(e *walk.Event) string {
	if e == nil {
		return "the step that locks"
	}
	return e.Step.Name()
}

// isolationHold is the event that releases a hold whose words say that the machine is made dead.
func (r *report) isolationHold(h *job.Hold) *walk.Event {
	words := r.job.InEnglish(h.What)
	if h.Again != nil || !isolatedHold.MatchString(words) || isolatedEnd.MatchString(notToBe.ReplaceAllString(isolatedHold.ReplaceAllString(words, ""), "")) {
		return nil
	}
	return r.released(h)
}

// lastLock is the lock put on last before an event, nil for none.
func (r *report) lastLock(until *walk.Event) *walk.Event {
	var last *walk.Event
	for _, e := range r.walk.Events[:until.Index] {
		switch e.Verb {
		case job.DoLock:
			last = e
		case job.DoUnlock, job.DoUnlockForNow:
			return last
		}
	}
	return last
}

// deadAt is where an isolation is locked, and where it is seen first that it is dead by what its
// proved: says, nil for an isolation of which that is not seen.
func (r *report) deadAt(x *job.Isolation) (lock, seen *walk.Event) {
	proved := strings.ToLower(r.job.InEnglish(x.Proved))
	if !provedDead.MatchString(proved) {
		return nil, nil
	}
	for _, e := range r.walk.Events {
		switch {
		case e.Verb == job.DoLock && e.Lock == x && lock == nil:
			lock = e
		case e.Verb == job.DoSee && lock != nil:
			if what := strings.ToLower(r.job.InEnglish(lookedAt(e))); strings.Contains(what, proved) {
				return lock, e
			}
		}
	}
	return nil, nil
}

// handsBetween tells of the first part that is worked on between a lock and what shows that it holds.
func (r *report) handsBetween(lock, shown *walk.Event, what, help string) {
	if e := r.firstHands(lock, shown); e != nil {
		r.problems.WarnWith(shown.Step.At, "proved-late", what+", and "+e.Step.Name()+" works on "+workedOn(e)[0].Called()+" above that", e.At, "worked on here", help)
	}
}

// firstHands is the first event between two that works on more than the cover over the terminals.
func (r *report) firstHands(lock, shown *walk.Event) *walk.Event {
	if lock == nil {
		return nil
	}
	between := r.walk.Events[lock.Index:max(lock.Index, shown.Index)]
	i := slices.IndexFunc(between, func(e *walk.Event) bool {
		return e.Step != shown.Step && !e.Step.Bench && slices.ContainsFunc(workedOn(e), func(p *job.Part) bool {
			name := cmp.Or(p.English, r.job.InEnglish(p.Name))
			return name != "" && !p.Fastens() && !barsProof.MatchString(name)
		})
	})
	if i < 0 {
		return nil
	}
	return between[i]
}

// provedHands binds the work to the hold on the isolation, and to what proves that it is dead.
func (b *binder) provedHands() {
	r := &report{walk: b.walk, job: b.job}
	type proof struct{ lock, shown *walk.Event }
	var proofs []proof
	for _, h := range b.job.Holds {
		if e := r.isolationHold(h); e != nil {
			proofs = append(proofs, proof{r.lastLock(e), e})
		}
	}
	for _, x := range b.job.Isolations {
		lock, e := r.deadAt(x)
		proofs = append(proofs, proof{lock, e})
	}
	for _, p := range proofs {
		if p.lock == nil || p.shown == nil {
			continue
		}
		for _, e := range b.walk.Events[p.shown.Index:] {
			if len(workedOn(e)) > 0 {
				b.before(p.shown.Step, e.Step, job.Bind{Kind: job.BoundLock, Lock: p.lock.Lock})
			}
		}
	}
}
