package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkCounted sees that what is counted can still be found: containers and tools are
// counted after something has come off, and before the locks come off for good; and where
// all containers are counted at all, they are once more when the last part is back.
func (r *report) checkCounted() {
	worked := false              // since the machine was locked, or could turn, last
	var turns *walk.Event        // the unlocking since which nothing has been moved or opened
	var before, last *walk.Event // the first thing that comes off, the last count of all
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoRemove, job.DoFit, job.DoOpen, job.DoClose:
			worked, turns = true, nil
			if before == nil {
				before = e
			}
		case job.DoUnlock, job.DoUnlockForNow:
			if worked && turns == nil {
				turns = e
			}
		case job.DoCountTools, job.DoCountAll, job.DoEmpty:
			if e.Verb == job.DoCountAll {
				last = e
			}
			if e.Verb == job.DoEmpty && e.At.IsZero() {
				continue // asked for by no author
			}
			r.countedWhen(e, turns, before)
		}
	}
	r.countedLast(last)
}

// countedWhen tells of a count that comes when the machine can turn already, or of all
// containers before anything is in them.
func (r *report) countedWhen(e, turns, before *walk.Event) {
	what := map[job.Verb]string{job.DoCountTools: "counts the tools", job.DoCountAll: "counts every container", job.DoEmpty: "looks that a container is empty"}[e.Verb]
	switch {
	case turns != nil:
		r.problems.AddWith(e.Step.At, "counted-in-vain", "step "+e.Step.Name()+" "+what+", when the lock "+turns.Lock.Key+" came off at "+turns.Step.Name()+": what is missing then lies in a machine that could turn", turns.Step.At, "unlocked here",
			"count at a step above "+turns.Step.No)
	case e.Verb == job.DoCountAll && before == nil:
		r.problems.Add(e.Step.At, "counted-in-vain", "step "+e.Step.Name()+" "+what+", and nothing has come off yet", "count-all: true at a step below the last that takes something off")
	}
}

// countedLast tells of a job whose last count of all containers finds parts in them.
func (r *report) countedLast(last *walk.Event) {
	if last == nil {
		return
	}
	for _, c := range r.job.Containers {
		for _, m := range c.Out {
			if e := r.walk.Moved(m); e == nil || e.Index < last.Index || r.walk.Pieces(c, last) == 0 {
				continue
			}
			r.problems.WarnWith(last.Step.At, "no-last-count", "the containers are counted last at "+last.Step.Name()+", where parts lie in "+c.Mark+": nobody counts when all is back", m.At, "they come out here",
				"count-all: true at the step before the locks come off as well")
			return
		}
	}
	for _, b := range r.job.Bigs {
		for _, m := range b.Part.Back {
			off, e := r.walk.Moved(m.Undo), r.walk.Moved(m)
			if off == nil || e == nil || off.Index > last.Index || e.Index < last.Index {
				continue
			}
			r.problems.WarnWith(last.Step.At, "no-last-count", "the containers are counted last at "+last.Step.Name()+", where "+b.Mark+" still lies apart: nobody counts when all is back", m.At, "it goes back here",
				"count-all: true at the step before the locks come off as well")
			return
		}
	}
}

// counted binds the last count of all containers to the steps that move parts into them
// and out of them: all are empty there.
func (b *binder) counted() {
	for _, st := range slices.Backward(b.walk.Steps) {
		if !st.CountAll {
			continue
		}
		for _, c := range b.job.Containers {
			b.changes(c, st, job.Bind{Kind: job.BoundEmpty, In: c})
			for _, m := range slices.Concat(c.In, c.Out) {
				b.looks(c, m.Step)
			}
		}
		return
	}
}
