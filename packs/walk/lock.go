package walk

import "matchmark/packs/job"

// noteLocks writes into the job each time that an isolation is locked, with the
// steps that put the lock on and take it off: each has a row on paper.
func (w *Walk) noteLocks() {
	for _, e := range w.Events {
		x := e.Lock
		if x == nil {
			continue
		}
		last := len(x.Periods) - 1
		open := last >= 0 && x.Periods[last].Unlocked == nil
		switch e.Verb {
		case job.DoLock, job.DoLockAgain:
			x.Periods = append(x.Periods, job.LockPeriod{Locked: e.Step, Again: e.Verb == job.DoLockAgain})
		case job.DoUnlock, job.DoUnlockForNow:
			if !open {
				x.Periods = append(x.Periods, job.LockPeriod{})
				last++
			}
			x.Periods[last].Unlocked, x.Periods[last].ForNow = e.Step, e.Verb == job.DoUnlockForNow
			if e.Verb == job.DoUnlockForNow && len(e.Step.OpenMeanwhile)+len(e.Step.OffMeanwhile) == 0 {
				w.noteMeanwhile(e)
			}
		}
	}
}

// noteMeanwhile writes into a step what stands open and which guards are off when it
// takes a lock off for a test.
func (w *Walk) noteMeanwhile(e *Event) {
	for _, o := range w.Job.Openings {
		if w.Open(o, e) != nil {
			e.Step.OpenMeanwhile = append(e.Step.OpenMeanwhile, o)
		}
	}
	for _, p := range w.Job.Parts {
		if p.Guard && w.On(p, e) < p.Count {
			e.Step.OffMeanwhile = append(e.Step.OffMeanwhile, p)
		}
	}
}

// UncountedTools is the last step before an event after which the tools have not
// been counted, with the opening at which they may have been left: it opened that, or
// moved parts at the machine while it stayed open. Nil if the tools are counted, or
// nothing was open. A step that closes all that is open is the closing itself: what is
// moved there is the cover.
func (w *Walk) UncountedTools(at *Event) (worked *job.Step, open *job.Opening) {
	for _, e := range w.Events[:at.Index] {
		switch e.Verb {
		case job.DoOpen:
			worked, open = e.Step, e.Opening
		case job.DoCountTools:
			worked, open = nil, nil
		case job.DoRemove, job.DoFit, job.DoFitForNow, job.DoTakeOut:
			if o := w.openAfter(e.Step); o != nil && !e.Step.Bench {
				worked, open = e.Step, o
			}
		}
	}
	return worked, open
}

// openAfter is an opening that is open when a step is done, nil if none is. One that
// is never closed is told by itself.
func (w *Walk) openAfter(st *job.Step) *job.Opening {
	for _, o := range w.Job.Openings {
		if o.ClosedAt != nil && w.openings[o].before(w.End(st)) != nil {
			return o
		}
	}
	return nil
}
