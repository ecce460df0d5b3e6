package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkPermitLocks sees that a permit which ends where locks come off is asked for when
// they are on, for it is the paper that says so; and that no lock comes off while such a
// permit is out, unless the step that takes it off asks for it once more.
func (r *report) checkPermitLocks() {
	for _, p := range r.job.Permits {
		back := r.handBack(p)
		if back == nil || len(p.Steps) == 0 {
			continue
		}
		if r.askedInVain(p, back.Step) {
			continue
		}
		locks := slices.Concat(back.Step.Unlock, back.Step.UnlockForNow)
		if len(locks) == 0 {
			continue
		}
		first := p.Steps[0]
		for _, st := range p.Steps {
			if st.Index < first.Index {
				first = st
			}
		}
		r.askedEarly(p, first, locks)
		r.askedLate(p, first, locks)
		r.outAtUnlock(p, first, back)
	}
}

// handBack is the event that ends a permit, nil if none does.
func (r *report) handBack(p *job.Permit) *walk.Event {
	for _, e := range r.walk.Events {
		if e.Verb == job.DoHandBack && e.Permit == p {
			return e
		}
	}
	return nil
}

// askedEarly tells of a permit that is asked for before its locks are on.
func (r *report) askedEarly(p *job.Permit, first *job.Step, locks []*job.Isolation) {
	for _, x := range locks {
		if r.lockedAfter(x, first) || slices.Contains(first.LockAgain, x) {
			continue
		}
		i := slices.IndexFunc(x.Periods, func(q job.LockPeriod) bool { return q.Locked != nil && q.Locked.Index > first.Index })
		if i < 0 {
			continue
		}
		on := x.Periods[i].Locked
		r.problems.AddWith(first.At, "permit-early", "step "+first.Name()+" asks for the permit "+p.Key+", which ends where the lock "+x.Key+" comes off, and the lock goes on only at "+on.Name(), on.At, "locked here",
			"permit: ["+p.Key+"] at "+on.No)
		return
	}
}

// askedLate tells of work at the machine, between the locks and the first step that asks
// for the permit, that is done on no permit at all.
func (r *report) askedLate(p *job.Permit, first *job.Step, locks []*job.Isolation) {
	locked, out := false, 0
	for _, e := range r.walk.Events[:r.walk.Start(first)] {
		switch {
		case e.Verb == job.DoLock || e.Verb == job.DoLockAgain:
			locked = locked || slices.Contains(locks, e.Lock)
		case e.Verb == job.DoUnlock || e.Verb == job.DoUnlockForNow:
			locked = locked && !slices.Contains(locks, e.Lock)
		case e.Verb == job.DoPermit:
			out++
		case locked && out == 0 && !e.Step.Bench && len(workedOn(e)) > 0:
			r.problems.AddWith(e.Step.At, "permit-late", "step "+e.Step.Name()+" works at the machine, and the permit "+p.Key+", which ends where the locks come off, is asked for only at "+first.Name(), first.At, "asked for here",
				"permit: ["+p.Key+"] at the step that locks")
			return
		}
	}
}

// lockedAfter reports whether an isolation is locked when a step is done, or is locked by
// that step and off again at its end.
func (r *report) lockedAfter(x *job.Isolation, st *job.Step) bool {
	if slices.Contains(st.Lock, x) {
		return true
	}
	return slices.ContainsFunc(x.Periods, func(q job.LockPeriod) bool {
		return q.Locked != nil && q.Locked.Index <= st.Index && (q.Unlocked == nil || q.Unlocked.Index >= st.Index)
	})
}

// outAtUnlock tells of a lock that comes off while a permit is out.
func (r *report) outAtUnlock(p *job.Permit, first *job.Step, back *walk.Event) {
	for _, e := range r.walk.Events {
		if e.Verb != job.DoUnlock && e.Verb != job.DoUnlockForNow || e.Step.Index <= first.Index || e.Step.Index >= back.Step.Index || slices.Contains(e.Step.Permits, p) {
			continue
		}
		add := r.problems.AddWith
		if e.Verb == job.DoUnlockForNow {
			add = r.problems.WarnWith
		}
		add(e.Step.At, "permit-out", "step "+e.Step.Name()+" takes the lock "+e.Lock.Key+" off while the permit "+p.Key+" is out: whoever holds it relies on the lock", first.At, "asked for here",
			"permit: ["+p.Key+"] at this step, so that its holder is there", "or hand-back: ["+p.Key+"] above it, and a permit of its own for the later work")
		return
	}
}
