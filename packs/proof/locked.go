package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkLocked tells of parts that are moved while a lock is not on yet, or off
// again: each step at which something that holds back a spring, pressure or a weight
// is let go or drawn up, and the first step of other work.
func (r *report) checkLocked() {
	warned := false
	told := map[*job.Step]bool{}
	for _, e := range r.walk.Events {
		parts := workedOn(e)
		if len(parts) == 0 || e.Step.Bench || told[e.Step] {
			continue
		}
		holds := slices.IndexFunc(parts, func(p *job.Part) bool { return p.Holds != "" })
		if holds < 0 && warned {
			continue
		}
		for _, x := range r.job.Isolations {
			if x.LockedAt == nil || x.UnlockedAt == nil || r.walk.Locked(x, e) != nil {
				continue
			}
			told[e.Step] = true
			if holds < 0 {
				warned = true
				r.notLocked(e, x, source.Warning, "works on parts")
			} else {
				r.notLocked(e, x, source.Error, "works on "+parts[holds].Called()+", which holds back "+heldBack[parts[holds].Holds])
			}
			break
		}
	}
}

// heldBack words what a part holds back.
var heldBack = map[string]string{"spring": "a spring", "pressure": "pressure", "weight": "a weight"}

// notLocked tells of one step that works while an isolation is not locked.
func (r *report) notLocked(e *walk.Event, x *job.Isolation, severity source.Severity, does string) {
	lock, how := x.LockedAt, "is not locked before "
	help := []string{"move one of the two steps, or the reverse: line"}
	if lock.Index <= e.Step.Index {
		if off := unlockedBy(x, e.Step); off != nil {
			lock, how = off, "is unlocked at "
		}
		if e.Step.Later != "" { // the machine has run meanwhile
			help = []string{"lock-again: [" + x.Key + "] above the work of this step and unlock: [" + x.Key + "] below it, and unlock-for-now: at " + lock.No}
		}
	}
	r.problems = append(r.problems, source.Problem{
		Pos: e.Step.At, Severity: severity, Code: "not-locked",
		Message: e.Step.Name() + " " + does + ", but the isolation " + source.Quote(x.Key) + " " + how + lock.Name(),
		Help:    help, See: []source.Also{{Pos: lock.At, What: "the lock"}},
	})
}

// unlockedBy is the step that took a lock off last, at or above a step.
func unlockedBy(x *job.Isolation, st *job.Step) *job.Step {
	var off *job.Step
	for _, p := range x.Periods {
		if p.Unlocked != nil && p.Unlocked.Index <= st.Index {
			off = p.Unlocked
		}
	}
	return off
}

// workedOn lists the parts that an event moves, loosens or tightens.
func workedOn(e *walk.Event) []*job.Part {
	switch e.Verb {
	case job.DoRemove, job.DoFit, job.DoFitForNow, job.DoTakeOut:
		return []*job.Part{e.Move.Part}
	case job.DoLoosen, job.DoTighten:
		return e.Grip.Parts()
	}
	return nil
}

// locks is what all steps share: none may pass the locking of an isolation.
type locks struct{}

// locked binds all steps to the locks between which they stand.
func (b *binder) locked() {
	for _, st := range b.walk.Steps {
		if all := slices.Concat(st.Lock, st.Unlock, st.UnlockForNow, st.LockAgain); len(all) > 0 {
			b.changes(locks{}, st, job.Bind{Kind: job.BoundLock, Lock: all[0]})
		} else {
			b.looks(locks{}, st)
		}
	}
}
