package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// What was taken off to reach something stays off until that is done: when the nut
// comes off after the cover, the nut goes back before the cover. That one step comes
// after another is said by its after: line, or by standing below it in one section
// without one, and holds through the steps between. A step that locks is waited for
// because it makes safe: what it takes off besides is in nobody's way.

// A reached is what a step does behind what another took off, undone: what it took
// off goes back, what it read is set, what it loosened is tightened.
type reached struct {
	step *job.Step
	acts []*walk.Event
	last *walk.Event // the last of acts
	fits []*walk.Event
	// first is the first of fits: of what it took off, the first that goes back.
	first *walk.Event
}

// A wait is one step that another comes after.
type wait struct {
	on     *job.Step
	see    source.Also
	reason string
}

// A reach is a step that comes after one which took something off.
type reach struct {
	then, first *reached
	by          wait // which the later step says itself
	through     bool // it is bound by a step between
}

// A reachers finds what was done behind what.
type reachers struct {
	walk   *walk.Walk
	undone []*reached // by step; nil where nothing is undone
	waits  [][]wait
}

// checkBackOrder sees that the put-back is in the order of the strip-down turned
// round, wherever an author has said what comes after what. A put-back step that is
// itself said to come after the other is the author's word against it, and stands.
//
// One fault of order shows at many pairs of steps. What follows from others is told
// only where no two steps that name each other are out of order, and no step is spoken
// of twice.
func (r *report) checkBackOrder() {
	all := newReachers(r.walk)
	if !r.backOrder(all, false) {
		r.backOrder(all, true)
	}
}

// backOrder tells of the pairs that name each other, or of those that are bound by
// steps between, and reports whether there was one.
func (r *report) backOrder(all *reachers, through bool) bool {
	told := map[*job.Step]bool{}
	all.each(func(x reach) {
		if x.through != through || x.first.first.Index > x.then.last.Index {
			return
		}
		for _, act := range x.then.acts {
			for _, fit := range x.first.fits {
				if fit.Index > act.Index || fit.Step == act.Step || act.Move != nil && act.Move.Part == fit.Move.Part || saidSo(act.Step, fit.Step) {
					continue
				}
				if !told[act.Step] && !told[fit.Step] {
					r.tooFarBack(x, act, fit)
				}
				told[act.Step], told[fit.Step] = true, true
			}
		}
	})
	return len(told) > 0
}

// saidSo reports whether the author writes that a put-back step comes after another.
func saidSo(st, after *job.Step) bool {
	return slices.ContainsFunc(st.After, func(d job.Dep) bool { return d.Step == after })
}

// tooFarBack tells of an act that comes when what had been taken off to reach it is
// back: an error where the author says of the two steps themselves that one comes
// after the other, else a warning.
func (r *report) tooFarBack(x reach, act, fit *walk.Event) {
	what := ""
	switch act.Verb {
	case job.DoFit:
		what = act.Move.Part.Called() + " goes back"
	case job.DoSet:
		what = act.Dim.Mark + " is set"
	default:
		what = act.Grip.Mark() + " is tightened"
	}
	severity, why := source.Error, ""
	if x.by.reason != "" {
		why = ": " + x.by.reason
	}
	if x.through {
		severity, why = source.Warning, " by way of "+x.by.on.No
	}
	help := []string{"move it above " + fit.Step.No, "or, if it can be done then: after: {" + fit.Step.Key + ": the reason}"}
	if act.Step.Undoes != nil {
		help = []string{"put the sections of reverse: in the other order, or write this step yourself above " + fit.Step.No}
	} else if fit.Step.Undoes != nil {
		help = []string{"move it above the reverse: line that makes " + fit.Step.No}
	}
	r.problems = append(r.problems, source.Problem{
		Pos: act.At, Severity: severity, Code: "back-order",
		Message: what + " at " + act.Step.Name() + ", when " + fit.Move.Part.Called() + " is back (" + fit.Step.No + "); it came off at " + x.first.step.No + ", and " + x.then.step.No + " comes after that" + why,
		Help:    help,
		See:     []source.Also{x.by.see, {Pos: fit.At, What: "goes back here"}},
	})
}

// newReachers gathers what each step undoes and what it comes after.
func newReachers(w *walk.Walk) *reachers {
	r := &reachers{walk: w, undone: make([]*reached, len(w.Steps)), waits: make([][]wait, len(w.Steps))}
	tightens := map[job.Fastening][]*walk.Event{}
	for _, e := range w.Events {
		if e.Verb == job.DoTighten {
			f := job.Fastening{Joint: e.Grip.Joint, Part: e.Grip.Part}
			tightens[f] = append(tightens[f], e)
		}
	}
	for i, st := range w.Steps {
		if st.Undoes != nil {
			continue
		}
		if u := undone(w, st, tightens); u.last != nil {
			r.undone[i] = u
		}
		for _, d := range st.After {
			r.waits[i] = append(r.waits[i], wait{d.Step, source.Also{Pos: d.At, What: "comes after it here"}, d.Reason})
		}
	}
	for _, s := range w.Job.Sections {
		for i, st := range s.Steps {
			for _, up := range above(s, i) {
				r.waits[st.Index] = append(r.waits[st.Index], wait{up, source.Also{Pos: st.At, What: "comes below it here, without after:"}, ""})
			}
		}
	}
	return r
}

// each calls a function with every pair of steps of which the later undoes something
// and the earlier took something off, the nearest first.
func (r *reachers) each(see func(reach)) {
	seen := make([]int, len(r.walk.Steps)) // the step, counted from 1, for which a step was last visited
	type visit struct{ at, by int }        // by: which of the waits of the step looked at leads there
	var queue []visit
	for i, then := range r.undone {
		if then == nil {
			continue
		}
		queue = queue[:0]
		add := func(on *job.Step, by int) {
			if k := on.Index; seen[k] != i+1 {
				seen[k] = i + 1
				queue = append(queue, visit{k, by})
			}
		}
		for by, w := range r.waits[i] {
			add(w.on, by)
		}
		for n := 0; n < len(queue); n++ {
			v := queue[n]
			by := r.waits[i][v.by]
			if first := r.undone[v.at]; first != nil && first != then && first.first != nil && !first.step.Locks() {
				see(reach{then, first, by, by.on.Index != v.at})
			}
			for _, w := range r.waits[v.at] {
				add(w.on, v.by)
			}
		}
	}
}

// above lists the steps that a step without after: follows: the one written above it
// in its section, at all places that can be its own.
func above(s *job.Section, i int) []*job.Step {
	st := s.Steps[i]
	if !st.AfterAt.IsZero() || st.Undoes != nil {
		return nil
	}
	var out []*job.Step
	for k := i - 1; k >= 0; k-- {
		switch up := s.Steps[k]; {
		case up.At == st.At: // itself at another place
		case len(out) > 0 && up.At != out[0].At:
			return out
		case up.Place.Agrees(st.Place):
			out = append(out, up)
		}
	}
	return out
}

// undone lists the events below a step that undo what it does.
func undone(w *walk.Walk, st *job.Step, tightens map[job.Fastening][]*walk.Event) *reached {
	u := &reached{step: st}
	add := func(e *walk.Event) {
		if e == nil || e.Step.Index <= st.Index {
			return
		}
		u.acts = append(u.acts, e)
		if u.last == nil || e.Index > u.last.Index {
			u.last = e
		}
	}
	for _, off := range st.Remove {
		for _, m := range off.Part.Back {
			if m.Undo != off {
				continue
			}
			if e := w.Moved(m); e != nil && e.Step.Index > st.Index {
				add(e)
				u.fits = append(u.fits, e)
				if u.first == nil || e.Index < u.first.Index {
					u.first = e
				}
			}
		}
	}
	for _, d := range st.Measure {
		add(w.Set(d))
	}
	for _, d := range w.Job.Dims { // what is set by a nut that the step takes off, and is not read as found
		if d.FoundAt == nil && d.LeftAt != nil && byThread(d) && slices.ContainsFunc(st.Remove, func(m *job.Move) bool { return m.Part == d.Adjuster }) {
			add(w.Set(d))
		}
	}
	for _, f := range st.Loosen {
		for _, e := range tightens[job.Fastening{Joint: f.Joint, Part: f.Part}] {
			if e.Step.Index > st.Index {
				add(e)
				break
			}
		}
	}
	return u
}

// backOrder binds the steps that put back, set or tighten what was reached behind
// something to the first step that puts that back, and such a step to the last of
// the others.
func (b *binder) backOrder() {
	first := make([]reach, len(b.walk.Events)) // by the act
	last := make([]reach, len(b.walk.Events))  // by the event that puts back
	newReachers(b.walk).each(func(x reach) {
		for _, act := range x.then.acts {
			if was := &first[act.Index]; was.first == nil || x.first.first.Index < was.first.first.Index {
				*was = x
			}
		}
		for _, fit := range x.first.fits {
			if was := &last[fit.Index]; was.then == nil || x.then.last.Index > was.then.last.Index {
				*was = x
			}
		}
	})
	for i, e := range b.walk.Events {
		if x := first[i]; x.first != nil {
			b.before(e.Step, x.first.first.Step, job.Bind{Kind: job.BoundBack, Reason: x.by.reason, Part: x.first.first.Move.Part})
		}
		if x := last[i]; x.then != nil {
			b.before(x.then.last.Step, e.Step, job.Bind{Kind: job.BoundBack, Reason: x.by.reason, Part: e.Move.Part})
		}
	}
}
