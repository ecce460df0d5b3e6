package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// Which steps do something behind what others took off: backorder.go and what it binds ask for it.

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
	on      *job.Step
	see     source.Also
	reason  string
	several bool // it comes after others at other places by the same words
	said    bool // by an after: line, and not by standing below it alone
}

// A reach is a step that comes after one which took something off.
type reach struct {
	then, first *reached
	by          wait // which the later step says itself
	through     bool // it is bound by a step between
	several     bool // somewhere on the way the later one waits for several places
}

// bars reports whether an act has to come before what was taken off goes back. A step that
// waits for several places at once reaches at each of them what is there: the bearing of one
// end goes back when the cover of the other is on.
func (x reach) bars(act, fit *walk.Event) bool {
	return !x.several || placeOf(act).Agrees(fit.Move.Part.Place)
}

// firstBarred is the first of what goes back that an act has to come before, nil if it bars none.
func (x reach) firstBarred(act *walk.Event) *walk.Event {
	var first *walk.Event
	for _, fit := range x.first.fits {
		if x.bars(act, fit) && (first == nil || fit.Index < first.Index) {
			first = fit
		}
	}
	return first
}

// lastBarring is the last act that has to come before something goes back, nil if there is none.
func (x reach) lastBarring(fit *walk.Event) *walk.Event {
	var last *walk.Event
	for _, act := range x.then.acts {
		if x.bars(act, fit) && (last == nil || act.Index > last.Index) {
			last = act
		}
	}
	return last
}

// goesOn is what a step puts on behind an act, told by the heaviest of its parts that say what
// they weigh: a damper rather than its gasket.
func (x reach) goesOn(act, fit *walk.Event) *job.Part {
	part := fit.Move.Part
	for _, also := range x.first.fits {
		if p := also.Move.Part; also.Step == fit.Step && x.bars(act, also) && p.Mass != nil && (part.Mass == nil || job.Kilograms(*p.Mass) > job.Kilograms(*part.Mass)) {
			part = p
		}
	}
	return part
}

// placeOf is the place of what an act moves, sets or tightens.
func placeOf(e *walk.Event) job.Place {
	switch {
	case e.Move != nil:
		return e.Move.Part.Place
	case e.Dim != nil:
		return e.Dim.Place
	case e.Grip.Joint != nil:
		return e.Grip.Joint.Place
	}
	return e.Grip.Part.Place
}

// A reachers finds what was done behind what.
type reachers struct {
	walk   *walk.Walk
	undone []*reached // by step; nil where nothing is undone
	waits  [][]wait
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
			if d.Step.At == st.At { // itself at another place: whose turn it is, nothing is in its way
				continue
			}
			several := slices.ContainsFunc(st.After, func(o job.Dep) bool { return o.At == d.At && o.Step != d.Step })
			r.waits[i] = append(r.waits[i], wait{d.Step, source.Also{Pos: d.At, What: "comes after it here"}, d.Reason, several, true})
		}
	}
	for _, s := range w.Job.Sections {
		for i, st := range s.Steps {
			ups := above(s, i)
			for _, up := range ups {
				r.waits[st.Index] = append(r.waits[st.Index], wait{up, source.Also{Pos: st.At, What: "comes below it here, without after:"}, "", len(ups) > 1, false})
			}
		}
	}
	return r
}

// each calls a function with every pair of steps of which the later undoes something
// and the earlier took something off, the nearest first.
func (r *reachers) each(see func(reach)) {
	seen := make([]int, len(r.walk.Steps)) // the step, counted from 1, for which a step was last visited
	type visit struct {
		at, by  int // by: which of the waits of the step looked at leads there
		several bool
	}
	var queue []visit
	for i, then := range r.undone {
		if then == nil {
			continue
		}
		queue = queue[:0]
		add := func(on *job.Step, by int, several bool) {
			if k := on.Index; seen[k] != i+1 {
				seen[k] = i + 1
				queue = append(queue, visit{k, by, several})
			}
		}
		for by, w := range r.waits[i] {
			add(w.on, by, w.several)
		}
		for n := 0; n < len(queue); n++ {
			v := queue[n]
			by := r.waits[i][v.by]
			if first := r.undone[v.at]; first != nil && first != then && first.first != nil && !first.step.Locks() {
				see(reach{then, first, by, by.on.Index != v.at, v.several})
			}
			for _, w := range r.waits[v.at] {
				add(w.on, v.by, v.several || w.several)
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
		if d.Formula == nil { // nothing is reached to work one out
			add(w.Set(d))
		}
	}
	for _, d := range w.Job.Dims { // what is set by a nut that the step takes off, and is not read as found
		if d.FoundAt == nil && d.LeftAt != nil && byThread(d) && job.AnyOf(st.Remove, d.Adjuster) {
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
