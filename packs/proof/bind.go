package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// What binds two steps is said by the laws: a law that would be broken by two steps
// changing places has a function here, which stands beside its check. Each tells
// which steps must keep their order, one pair at a time or by what they share.
var binding = map[string]func(*binder){
	"order":         (*binder).order,
	"behind":        (*binder).behind,
	"back-order":    (*binder).backOrder,
	"pieces":        (*binder).pieces,
	"fastened":      (*binder).fastened,
	"read-in-time":  (*binder).readings,
	"turned-again":  (*binder).turnedAgain,
	"bench-read":    (*binder).benchRead,
	"held-reading":  (*binder).heldReading,
	"held-as-found": (*binder).heldAsFound,
	"filled":        (*binder).filled,
	"covered":       (*binder).covered,
	"turnable":      (*binder).turnable,
	"aligned":       (*binder).aligned,
	"state":         (*binder).state,
	"lift-aid":      (*binder).liftAid,
	"aid-state":     (*binder).aidState,
	"hold-early":    (*binder).holdEarly,
	"hold-past":     (*binder).holdPast,
	"hold-late":     (*binder).holdLate,
	"gas-late":      (*binder).gasLate,
	"out-of-line":   (*binder).outOfLine,
	"unopened":      (*binder).unopened,
	"proved-late":   (*binder).provedLate,
	"proved-hands":  (*binder).provedHands,
	"guard-on":      (*binder).guardOn,
	"fill-open":     (*binder).fillOpen,
	"no-oil-yet":    (*binder).noOilYet,
	"runs-dry":      (*binder).runsDry,
	"apart":         (*binder).apart,
	"other-tight":   (*binder).otherTight,
	"jacked":        (*binder).jacked,
	"pressed-after": (*binder).pressedAfter,
	"read-shut":     (*binder).readShut,
	"seen-clean":    (*binder).seenClean,
	"entry-shut":    (*binder).entryShut,
	"behind-guard":  (*binder).behindGuard,
	"said-out":      (*binder).saidOut,
	"marked":        (*binder).marked,
	"unmarked":      (*binder).unmarked,
	"inputs":        (*binder).branches,
	"judged":        (*binder).judged,
	"emptied":       (*binder).containers,
	"locked":        (*binder).locked,
	"closed-up":     (*binder).closedUp,
	"hanging":       (*binder).hanging,
	"seen":          (*binder).seen,
	"covers":        (*binder).covers,
	"counted":       (*binder).counted,
	"decided":       (*binder).decided,
	"pairs":         (*binder).guards,
	"heats":         (*binder).heats,
	"lifts":         (*binder).lifts,
	"stamped":       (*binder).stamped,
	"tries":         (*binder).tries,
}

// A binder gathers what binds the steps of a walk.
type binder struct {
	walk   *walk.Walk
	job    *job.Job
	binds  [][]job.Bind // of each step, by its place in the order of work
	shared map[any]*use
	things []*use // in the order in which they were met
}

// A use is something that several steps have to do with: those that change it keep
// their order against all others, those that only look at it do not.
type use struct{ by []user }

type user struct {
	step    *job.Step
	changes bool
	bind    job.Bind // what it is to the steps that it binds
}

// Bind notes in every step of the job what binds it to the steps above it, and where
// it may be moved: a step is free only if its author wrote after: and there is room
// between the nearest steps that bind it. A hold itself stays where it stands.
func Bind(w *walk.Walk) {
	b := &binder{walk: w, job: w.Job, binds: make([][]job.Bind, len(w.Steps)), shared: map[any]*use{}}
	for _, l := range Laws {
		if tell := binding[l.Name]; tell != nil {
			tell(b)
		}
	}
	for _, t := range b.things {
		b.bindUse(t)
	}
	for i, st := range w.Steps {
		st.Binds = nearest(b.binds[i])
	}
	b.free()
}

// before notes that a step must come before another. Where they stand the other way
// round some law tells so, and nothing is bound.
func (b *binder) before(first, then *job.Step, why job.Bind) {
	if first == nil || then == nil || first.Index >= then.Index {
		return
	}
	why.Before = first
	b.binds[then.Index] = append(b.binds[then.Index], why)
}

// changes notes that a step does something to a thing, so that every other step that
// has to do with it stays on its side.
func (b *binder) changes(thing any, st *job.Step, why job.Bind) { b.uses(thing, user{st, true, why}) }

// looks notes that a step only needs a thing to be as it is.
func (b *binder) looks(thing any, st *job.Step) { b.uses(thing, user{step: st}) }

func (b *binder) uses(thing any, u user) {
	t := b.shared[thing]
	if t == nil {
		t = &use{}
		b.shared[thing] = t
		b.things = append(b.things, t)
	}
	t.by = append(t.by, u)
}

// bindUse binds the steps that share one thing: a step that changes it to all that
// looked at it since it was changed last, one that looks to the last change. What is
// further away is bound through these.
func (b *binder) bindUse(t *use) {
	slices.SortStableFunc(t.by, func(x, y user) int { return x.step.Index - y.step.Index })
	var by []user // one a step: the change if it both looks and changes
	for _, u := range t.by {
		n := len(by) - 1
		switch {
		case n < 0 || by[n].step != u.step:
			by = append(by, u)
		case u.changes && (!by[n].changes || u.bind.Kind < by[n].bind.Kind):
			by[n] = u
		}
	}
	var last *user
	var looked []user
	for i, u := range by {
		if !u.changes {
			if last != nil {
				b.before(last.step, u.step, last.bind)
			}
			looked = append(looked, u)
			continue
		}
		for _, l := range looked {
			b.before(l.step, u.step, u.bind)
		}
		if last != nil {
			why := u.bind
			if last.bind.Kind < why.Kind {
				why = last.bind
			}
			b.before(last.step, u.step, why)
		}
		last, looked = &by[i], nil
	}
}

// nearest sorts reasons, the nearest step first, and keeps one for each step: the
// author's own, else the plainest.
func nearest(all []job.Bind) []job.Bind {
	slices.SortStableFunc(all, func(x, y job.Bind) int {
		if d := y.Before.Index - x.Before.Index; d != 0 {
			return d
		}
		return weight(x.Kind) - weight(y.Kind)
	})
	return slices.CompactFunc(all, func(x, y job.Bind) bool { return x.Before == y.Before })
}

// weight sorts kinds of reasons. That a step only follows the one above says less than
// any other, but for the order of a put-back that is only the strip-down turned round.
func weight(k job.BindKind) int {
	switch k {
	case job.BoundBelow:
		return int(job.BoundLater) + 1
	case job.BoundBack:
		return int(job.BoundLater) + 2
	}
	return int(k)
}

// free notes where each step may be moved.
func (b *binder) free() {
	all := b.walk.Steps
	next := make([]*job.Bind, len(all)) // what binds the nearest step below to each
	then := make([]*job.Step, len(all))
	for _, st := range all {
		for i := range st.Binds {
			if k := st.Binds[i].Before.Index; next[k] == nil {
				next[k], then[k] = &st.Binds[i], st
			}
		}
	}
	for i, st := range all {
		st.Free = nil
		if st.AfterAt.IsZero() || st.Hold != nil {
			continue
		}
		f := &job.Free{Before: then[i], BeforeBind: next[i]}
		if len(st.Binds) > 0 {
			f.After, f.AfterBind = st.Binds[0].Before, &st.Binds[0]
		}
		up := i > 0 && (f.After == nil || f.After.Index < i-1)
		down := i < len(all)-1 && (f.Before == nil || f.Before.Index > i+1)
		if up || down {
			st.Free = f
		}
	}
}
