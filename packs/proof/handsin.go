package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkHandsIn sees that nobody opens, marks or gauges a machine that is not locked:
// for each of these a hand goes to parts that may still turn. What is read off a running
// machine, as temperatures, levels and leak rates, lies between no two parts, and a valve is
// seen open from outside. A lock that is off for a test only is left to the step that takes
// it off.
func (r *report) checkHandsIn() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		does, goesIn := r.handIn(e)
		if does == "" || e.Step.Bench || told[e.Step.At] || !e.Step.Idle() { // one that moves parts is told by the law of the locks
			continue
		}
		for _, x := range r.job.Isolations {
			if x.LockedAt == nil || x.UnlockedAt == nil || r.walk.Locked(x, e) != nil || offForNow(x, e.Step) || !goesIn && !drives(x) {
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
			at, help := e.Step.At, "do it between the step that locks and the one that unlocks"
			if e.Verb == job.DoSee {
				at, help = e.At, "write seen: above unlock:, or do it at a step above that"
			}
			r.problems.AddWith(at, "hands-in", e.Step.Name()+" "+does+", but the isolation "+source.Quote(x.Key)+how+lock.Name(), lock.At, "the lock", help)
			break
		}
	}
}

// handIn says what an event does with a hand or a head at the machine, empty for nothing of
// this kind; in is false of what only the drive can hurt, as a shaft that is turned by hand.
// What moves parts is told by the law of the locks.
func (r *report) handIn(e *walk.Event) (does string, in bool) {
	switch e.Verb {
	case job.DoOpen:
		return "opens " + e.Opening.Mark(), true
	case job.DoMark:
		return "marks " + e.Part.Called(), true
	case job.DoStack:
		return "writes down the order " + e.Stack.Mark, true
	case job.DoSee:
		i := slices.IndexFunc(e.Step.Seen, func(x job.Seen) bool { return x.At == e.At })
		if i < 0 {
			break
		}
		what := e.Step.Seen[i].What
		switch words := r.job.InEnglish(what); {
		case seesCloseTo(words):
			return "looks for " + source.Quote(what), true
		case turnedByHand.MatchString(words):
			return "looks for " + source.Quote(what), false
		}
	case job.DoMeasure, job.DoSet:
		if d := e.Dim; d.From.Part != nil && d.To.Part != nil && d.Formula == nil {
			return "gauges " + d.Mark + " between " + d.From.Part.Called() + " and " + d.To.Part.Called(), true
		}
	}
	return "", false
}

// What is turned by hand in the machine, by its words, and what an isolation drives it by.
var (
	turnedByHand = phrase.Of(`(?i)\b(?:turns?|turned|barred|rotates?) (?:freely |easily |over |once |round )*by hand\b|\btouch(?:es)? nowhere\b`)
	driven       = phrase.Of(`(?i)electric|motor|drive|steam|turbine|engine|compressed air|hydraulic|\d ?k?V\b`)
)

// drives reports whether what an isolation cuts off can turn or move a machine.
func drives(x *job.Isolation) bool { return driven.MatchString(x.Energy + " " + x.Point) }

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
