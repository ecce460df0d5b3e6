package walk

import (
	"matchmark/packs/job"
	"slices"
)

// bind works out for each step what binds it to the steps before, and which steps
// may be moved: a step is free only if its author wrote after: and neither the
// parts and dimensions that it touches nor a hold bind it to both neighbours.
func (w *Walk) bind() {
	all := w.Steps
	touched := make([]touch, len(all))
	for i, st := range all {
		touched[i] = w.touches(st)
	}
	before := make([]*job.Step, len(all)) // the first step that must come after
	for i, st := range all {
		for k := i - 1; k >= 0; k-- {
			bind, ok := w.bound(all[k], st, touched[k], touched[i])
			if !ok {
				continue
			}
			st.Binds = append(st.Binds, bind)
			if before[k] == nil {
				before[k] = st
			}
		}
	}
	for i, st := range all {
		if st.AfterAt.IsZero() || st.Hold != nil {
			continue
		}
		free := &job.Free{Before: before[i]}
		if len(st.Binds) > 0 {
			free.After = st.Binds[0].Before
		}
		up := i > 0 && (free.After == nil || free.After.Index < i-1)
		down := i < len(all)-1 && (free.Before == nil || free.Before.Index > i+1)
		if up || down {
			st.Free = free
		}
	}
}

// A touch is what a step has to do with parts: those it moves, those it loosens or
// tightens, and those it only measures against.
type touch struct{ moves, grips, uses map[*job.Part]bool }

// touches collects the parts of a step. Moving an assembly moves its members, and
// moving a member touches its assembly.
func (w *Walk) touches(st *job.Step) touch {
	t := touch{moves: map[*job.Part]bool{}, grips: map[*job.Part]bool{}, uses: map[*job.Part]bool{}}
	add := func(set map[*job.Part]bool, p *job.Part) {
		for q := p; q != nil; q = q.Of {
			set[q] = true
		}
		for _, q := range w.Job.Parts {
			for up := q.Of; up != nil; up = up.Of {
				if up == p {
					set[q] = true
				}
			}
		}
	}
	for _, ms := range [][]*job.Move{st.Remove, st.Fit, st.ForNow, st.TakeOut} {
		for _, m := range ms {
			add(t.moves, m.Part)
		}
	}
	for _, l := range st.LeftOut {
		add(t.moves, l.Part)
	}
	for _, f := range append(append([]job.Fastening{}, st.Loosen...), st.Tighten...) {
		for _, p := range f.Parts() {
			t.grips[p] = true
		}
	}
	for _, h := range st.Heats {
		if h.Hub != nil {
			add(t.moves, h.Hub)
		}
		if h.Shaft != nil {
			add(t.uses, h.Shaft)
		}
	}
	for _, l := range st.Lifts {
		for _, p := range l.Parts {
			add(t.moves, p)
		}
	}
	for _, ds := range [][]*job.Dim{st.Measure, st.Set} {
		for _, d := range ds {
			for _, f := range []job.Face{d.From, d.To, d.Of} {
				if f.Part != nil {
					add(t.uses, f.Part)
				}
			}
			for _, p := range w.hangsOn[d] {
				add(t.uses, p)
			}
			if d.Adjuster != nil {
				add(t.moves, d.Adjuster)
			}
		}
	}
	return t
}

// bound finds the reason why step k must come before step i, written below it.
func (w *Walk) bound(k, i *job.Step, tk, ti touch) (job.Bind, bool) {
	for _, d := range i.After {
		if d.Step == k {
			return job.Bind{Kind: job.BoundAfter, Before: k, Reason: d.Reason}, true
		}
	}
	if k.Hold != nil || i.Hold != nil {
		return job.Bind{Kind: job.BoundHold, Before: k}, true
	}
	if p := clash(tk, ti); p != nil {
		return job.Bind{Kind: job.BoundPart, Before: k, Part: p}, true
	}
	if p := gripped(tk, ti); p != nil {
		return job.Bind{Kind: job.BoundJoint, Before: k, Part: p}, true
	}
	if k.Locks() || i.Locks() {
		return job.Bind{Kind: job.BoundLock, Before: k}, true
	}
	if w.movesHook(k) || w.movesHook(i) {
		return job.Bind{Kind: job.BoundHanging, Before: k}, true
	}
	if k.ToolCount && worksOpen(i) || i.ToolCount && worksOpen(k) {
		return job.Bind{Kind: job.BoundTools, Before: k}, true
	}
	for _, o := range k.Open {
		if slices.Contains(i.Close, o) {
			return job.Bind{Kind: job.BoundOpening, Before: k, Opening: o}, true
		}
	}
	for _, d := range k.Measure {
		if slices.Contains(w.lostAt[d], i) {
			return job.Bind{Kind: job.BoundLost, Before: k, Dim: d}, true
		}
	}
	if d := w.needs(k, i); d != nil {
		return job.Bind{Kind: job.BoundReading, Before: k, Dim: d}, true
	}
	if c := emptied(k, i); c != nil {
		return job.Bind{Kind: job.BoundEmpty, Before: k, In: c}, true
	}
	if k.Index == i.Index-1 && i.AfterAt.IsZero() {
		return job.Bind{Kind: job.BoundBelow, Before: k}, true
	}
	return job.Bind{}, false
}

// needs finds a reading taken by step k that a limit of step i is worked out from,
// or that step i sets again.
func (w *Walk) needs(k, i *job.Step) *job.Dim {
	if a := i.If; a != nil && a.Dim != nil && (slices.Contains(k.Measure, a.Dim) || slices.Contains(k.Set, a.Dim)) {
		return a.Dim
	}
	for _, s := range i.Judge {
		for _, d := range s.JudgedBy {
			if slices.Contains(k.Measure, d) {
				return d
			}
		}
	}
	for _, d := range append(append([]*job.Dim{}, i.Measure...), i.Set...) {
		for _, e := range append(append([]*job.Dim{}, k.Measure...), k.Set...) {
			if e == d {
				return e
			}
			for _, m := range d.Marks() {
				if string(m) == e.Mark || string(m) == e.Base && e.Place.Agrees(d.Place) {
					return e
				}
			}
		}
	}
	return nil
}

// emptied finds a container that must be empty at step i and that step k moves
// parts into or out of.
func emptied(k, i *job.Step) *job.Container {
	for _, x := range i.Empty {
		for _, m := range append(append([]*job.Move{}, x.In.In...), x.In.Out...) {
			if m.Step == k {
				return x.In
			}
		}
	}
	return nil
}

// clash finds a part that both touch and one of them moves, the first by key.
func clash(a, b touch) *job.Part {
	return firstOf(func(see func(*job.Part)) {
		for p := range a.moves {
			if b.moves[p] || b.uses[p] || b.grips[p] {
				see(p)
			}
		}
		for p := range b.moves {
			if a.uses[p] || a.grips[p] {
				see(p)
			}
		}
	})
}

// gripped finds a part that both loosen or tighten, or one of them and the other
// measures against.
func gripped(a, b touch) *job.Part {
	return firstOf(func(see func(*job.Part)) {
		for p := range a.grips {
			if b.grips[p] || b.uses[p] {
				see(p)
			}
		}
		for p := range b.grips {
			if a.uses[p] {
				see(p)
			}
		}
	})
}

// firstOf keeps the first by key of the parts that are shown to it.
func firstOf(show func(see func(*job.Part))) *job.Part {
	var found *job.Part
	show(func(p *job.Part) {
		if found == nil || p.Place.Mark(p.Key) < found.Place.Mark(found.Key) {
			found = p
		}
	})
	return found
}
