package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkHandsIn sees that nobody opens, marks or gauges a machine that is not locked:
// for each of these a hand goes to parts that may still turn. What is read off a running
// machine, as temperatures, levels and leak rates, lies between no two parts. A lock that
// is off for a test only is left to the step that takes it off.
func (r *report) checkHandsIn() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		does := handIn(e)
		if does == "" || e.Step.Bench || told[e.Step.At] || !e.Step.Idle() { // one that moves parts is told by the law of the locks
			continue
		}
		for _, x := range r.job.Isolations {
			if x.LockedAt == nil || x.UnlockedAt == nil || r.walk.Locked(x, e) != nil || offForNow(x, e.Step) {
				continue
			}
			told[e.Step.At] = true
			lock, how := x.LockedAt, " is not locked before "
			switch {
			case lock == e.Step && !r.unlockedIn(x, e):
				how = " is locked only after that, at "
			case lock.Index <= e.Step.Index:
				if lock = unlockedBy(x, e.Step); lock == nil {
					continue
				}
				how = " is unlocked at "
			}
			r.problems.AddWith(e.Step.At, "hands-in", e.Step.Name()+" "+does+", but the isolation "+source.Quote(x.Key)+how+lock.Name(), lock.At, "the lock",
				"do it between the step that locks and the one that unlocks")
			break
		}
	}
}

// handIn says what an event does with a hand at the machine, empty for nothing of
// this kind. What moves parts is told by the law of the locks.
func handIn(e *walk.Event) string {
	switch e.Verb {
	case job.DoOpen:
		return "opens " + e.Opening.Mark()
	case job.DoMark:
		return "marks " + e.Part.Called()
	case job.DoStack:
		return "writes down the order " + e.Stack.Mark
	case job.DoMeasure, job.DoSet:
		if d := e.Dim; d.From.Part != nil && d.To.Part != nil && d.Formula == nil {
			return "gauges " + d.Mark + " between " + d.From.Part.Called() + " and " + d.To.Part.Called()
		}
	}
	return ""
}

// offForNow reports whether a lock is off at a step for a test, and goes on again below
// it.
func offForNow(x *job.Isolation, st *job.Step) bool {
	i := slices.IndexFunc(x.Periods, func(p job.LockPeriod) bool { return p.Locked != nil && p.Locked.Index > st.Index })
	return i > 0 && x.Periods[i-1].ForNow
}

// unlockedIn reports whether the step of an event takes a lock off before it.
func (r *report) unlockedIn(x *job.Isolation, e *walk.Event) bool {
	return r.walk.Find(e.Step, func(u *walk.Event) bool { return u.Lock == x && u.Verb == job.DoUnlock && u.Index < e.Index }) != nil
}
