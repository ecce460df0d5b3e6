package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkLocks sees that a lock that comes off is on, that one that goes on is off,
// and that one that comes off for a test goes on again.
func (r *report) checkLocks() {
	begun := map[*job.Isolation]bool{}
	for _, e := range r.walk.Events {
		x := e.Lock
		if x == nil {
			continue
		}
		on := r.walk.Locked(x, e)
		switch {
		case e.Verb == job.DoLock:
			begun[x] = true
		case !begun[x]:
			// Comes off, or on again, before it is locked at all.
			if e.Step != x.UnlockedAt {
				r.problems.Add(e.Step.At, "unlocked-already", lockAct(e)+", and no step above it locks it", "lock: ["+x.Key+"] at an earlier step")
			}
		case e.Verb == job.DoLockAgain && on != nil:
			r.problems.AddWith(e.Step.At, "locked-already", lockAct(e)+", and it is on then", on.Step.At, "locked here", "unlock-for-now: ["+x.Key+"] at the step that takes it off for a test")
		case e.Verb != job.DoLockAgain && on == nil:
			before := unlockedBefore(x, e)
			r.problems.AddWith(e.Step.At, "unlocked-already", lockAct(e)+", and it is off then", before.At, "unlocked here", "lock-again: ["+x.Key+"] above it, or take it out here")
		}
	}
	for _, x := range r.job.Isolations {
		if len(x.Periods) == 0 || x.LockedAt == nil {
			continue
		}
		switch last := x.Periods[len(x.Periods)-1]; {
		case last.ForNow:
			r.problems.Add(last.Unlocked.At, "not-relocked", "the isolation "+x.Key+" is unlocked for now at "+last.Unlocked.Name()+" and never locked again", "lock-again: ["+x.Key+"] when the test is done")
		case last.Unlocked == nil && x.UnlockedAt != nil && x.UnlockedAt.Index < last.Locked.Index:
			r.problems.Add(last.Locked.At, "never-unlocked", "the isolation "+x.Key+" is locked again at "+last.Locked.Name()+" and unlocked by no step after it", "unlock: ["+x.Key+"] at the step that does it")
		}
	}
}

// lockAct says what an event does to a lock.
func lockAct(e *walk.Event) string {
	if e.Verb == job.DoLockAgain {
		return "step " + e.Step.Name() + " puts the lock " + e.Lock.Key + " on again"
	}
	return "step " + e.Step.Name() + " takes the lock " + e.Lock.Key + " off"
}

// unlockedBefore is the step that took a lock off last before an event.
func unlockedBefore(x *job.Isolation, e *walk.Event) *job.Step {
	before := e.Step
	for _, p := range x.Periods {
		if p.Unlocked != nil && p.Unlocked.Index <= e.Step.Index && p.Unlocked != e.Step {
			before = p.Unlocked
		}
	}
	return before
}
