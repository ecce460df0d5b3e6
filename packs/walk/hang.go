package walk

import (
	"slices"

	"matchmark/packs/job"
)

// hang notes which loads hang when a step is done. Between two steps that make one
// lift the load hangs, unless one of them lays it down or puts it on its seat, or
// the author says that it is set down. The walk cannot see whether a load that is
// moved by no step was lowered again: it hangs until somebody says otherwise.
func (w *Walk) hang(st *job.Step) {
	for _, l := range w.Job.Lifts {
		t := w.hung[l]
		if t == nil {
			t = &timeline[*job.Step]{}
			w.hung[l] = t
		}
		made, hung := slices.Contains(st.Lifts, l), t.last()
		to := hung
		switch {
		case slices.Contains(st.SetDown, l), !made && slices.ContainsFunc(w.Events[w.first[st]:], func(e *Event) bool { return e.Lands(l) }):
			to = nil
		case made && !w.staysUp(l, st):
			to = nil
		case made && hung == nil:
			to = st
		}
		if to != hung {
			t.change(len(w.Events)-1, to)
		}
	}
}

// staysUp reports whether a step that makes a lift leaves its load hanging. A
// generated row does so where the load hung before the step that it undoes, and a
// later row lets it down; a written step where another one goes on with the lift, or
// sets its load down.
func (w *Walk) staysUp(l *job.Lift, st *job.Step) bool {
	if st.Undoes != nil {
		later := slices.ContainsFunc(l.Steps, func(x *job.Step) bool { return x.Index > st.Index })
		return later && w.Hung(l, st.Undoes) != nil
	}
	var next *job.Step
	for _, x := range l.Steps {
		if x.Undoes == nil && x.Index > st.Index && (next == nil || x.Index < next.Index) {
			next = x
		}
	}
	switch {
	case l.TakenOffBy(st):
		return false
	case w.setDownBetween(l, st, next):
		return true
	case next == nil:
		return false
	case l.PutOnBy(st):
		return !l.MovedBy(next)
	}
	return true
}

// setDownBetween reports whether a written step below one that makes a lift sets its load
// down, before the next that makes it, nil for none: until then the load hangs.
func (w *Walk) setDownBetween(l *job.Lift, st, next *job.Step) bool {
	if slices.Contains(st.SetDown, l) {
		return false
	}
	for _, s := range w.Job.Sections {
		for _, x := range s.Steps {
			if x.Index > st.Index && (next == nil || x.Index < next.Index) && x.Undoes == nil && slices.Contains(x.SetDown, l) {
				return true
			}
		}
	}
	return false
}

// Hung is the step that raised the load of a lift, nil if it does not hang when
// another step is begun.
func (w *Walk) Hung(l *job.Lift, st *job.Step) *job.Step { return w.hung[l].before(w.Start(st)) }

// noteHanging writes into the job which loads hang at a step, whether it goes on with
// their lifts or not, and which a step leaves hanging. What people hold by hand does not
// hang.
func (w *Walk) noteHanging() {
	for _, l := range w.Job.Lifts {
		if l.ByHand || w.hung[l] == nil {
			continue
		}
		var up []*job.Step // that have left it hanging
		for _, st := range w.Steps {
			made := slices.Contains(st.Lifts, l)
			switch hung := w.Hung(l, st) != nil; {
			case hung && made:
				st.GoesOn = append(st.GoesOn, l)
			case hung:
				st.Hangs = append(st.Hangs, l)
			}
			if l.TakenOffBy(st) {
				up = nil // what was let down for a trial is away again, and nothing stands
			}
			switch hangs := w.hung[l].before(w.End(st)) != nil; {
			case hangs && made:
				st.LeftHanging = append(st.LeftHanging, l)
				up = append(up, st)
			case !hangs:
				w.stands(l, up, st)
				up = nil
			}
		}
		w.noteUnder(l)
	}
	w.noteUnderHook()
}

// noteUnderHook writes into the job where what was put under a load of no lift comes out again:
// it hangs in one step alone, and stands when that is done.
func (w *Walk) noteUnderHook() {
	for _, st := range w.Steps {
		if u := st.UnderLoad.Value; u != "" && st.OnHook != "" && len(st.Hangs)+len(st.GoesOn) == 0 {
			st.LeftBehind = withNew(st.LeftBehind, []string{u})
		}
	}
}

// noteUnder writes into the job where what was put under a load that hangs comes out again.
// A load that is let down, by its lift or by a step that sets it down, needs it out first; one that is carried away leaves it
// behind, and hands go to it only when the load stands elsewhere: it stays through every stage
// by which the load goes on up to there.
func (w *Walk) noteUnder(l *job.Lift) {
	var under []string // what stands under it
	for _, st := range w.Steps {
		switch u := st.UnderLoad.Value; {
		case slices.Contains(st.Hangs, l) && slices.Contains(st.SetDown, l):
			st.FromUnder, under = withNew(st.FromUnder, under), nil
		case slices.Contains(st.Hangs, l):
			if u != "" && !slices.Contains(under, u) {
				under = append(under, u)
			}
		case !slices.Contains(st.GoesOn, l):
			under = nil
		case !l.CarriesAway(st):
			st.FromUnder, under = withNew(st.FromUnder, under), nil
		case !slices.Contains(st.LeftHanging, l):
			st.LeftBehind, under = withNew(st.LeftBehind, under), nil
		}
	}
}

// withNew is a list with those of another that it has not: two loads may hang over the same
// blocks.
func withNew(list, more []string) []string {
	for _, x := range more {
		if !slices.Contains(list, x) {
			list = append(list, x)
		}
	}
	return list
}

// stands notes what is true only when a load that some steps have left hanging stands: what it
// covers is shut, and what hung in it is on its seat.
func (w *Walk) stands(l *job.Lift, up []*job.Step, st *job.Step) {
	for _, x := range up {
		for _, o := range x.Close {
			if o.ShutAt == nil && o.CoveredBy(x) && l.TakenOffBy(o.OpenedAt) {
				o.ShutAt, st.Shut = st, append(st.Shut, o)
			}
		}
		for _, m := range x.Fit {
			if w.seats[m] == nil && l.Carries(m.Part) {
				w.seats[m] = st
			}
		}
	}
}

// MovesHook reports whether a load that hangs is raised, or comes to stand, at a step.
func (w *Walk) MovesHook(st *job.Step) bool {
	for _, t := range w.hung {
		if t.before(w.Start(st)) != t.before(w.End(st)) {
			return true
		}
	}
	return false
}

// WorksOpen reports whether tools have to be counted after a step: it opens
// something or moves parts at the machine.
func WorksOpen(st *job.Step) bool {
	return len(st.Open) > 0 || !st.Bench && len(st.Remove)+len(st.Fit)+len(st.ForNow)+len(st.TakeOut) > 0
}
