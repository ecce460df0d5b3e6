package packs

import "slices"

// A BindKind is why one step must come before another.
type BindKind int

const (
	// BoundAfter: the author wrote it in an after: line.
	BoundAfter BindKind = iota
	// BoundBelow: the author wrote no after: line, so the step follows the one above.
	BoundBelow
	// BoundHold: a hold or witness point stands at one of the two.
	BoundHold
	// BoundPart: both touch the same part, and one of them moves it.
	BoundPart
	// BoundJoint: both loosen or tighten the same joint, or its fasteners.
	BoundJoint
	// BoundLost: the later step destroys a dimension that the earlier one measures.
	BoundLost
	// BoundReading: the later step needs a reading that the earlier one takes.
	BoundReading
	// BoundLock: an isolation is locked or unlocked at one of the two.
	BoundLock
	// BoundOpening: the earlier step opens what the later one closes.
	BoundOpening
	// BoundEmpty: a container must be empty at the later step, and the earlier one
	// moves parts into or out of it.
	BoundEmpty
)

// A Bind is one reason why a step comes after another.
type Bind struct {
	Kind    BindKind
	Before  *Step
	Reason  string     // as written in the after: line
	Part    *Part      // for BoundPart and BoundJoint
	Dim     *Dim       // for BoundLost and BoundReading
	In      *Container // for BoundEmpty
	Opening *Opening   // for BoundOpening
}

// A Free says between which steps a step may be done; nil means the start or the
// end of the job.
type Free struct{ After, Before *Step }

// findFree works out for each step what binds it to the steps before, and which
// steps may be moved: a step is free only if its author wrote after: and neither
// the parts and dimensions that it touches nor a hold bind it to both neighbours.
func (b *builder) findFree() {
	var all []*Step
	for _, s := range b.job.Sections {
		all = append(all, s.Steps...)
	}
	touched := make([]touch, len(all))
	for i, st := range all {
		touched[i] = b.touches(st)
	}
	before := make([]*Step, len(all)) // the first step that must come after
	for i, st := range all {
		for k := i - 1; k >= 0; k-- {
			bind, ok := b.bound(all[k], st, touched[k], touched[i])
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
		if ds := b.stepDefs[st]; ds == nil || ds.After.At.IsZero() || st.Hold != nil {
			continue
		}
		free := &Free{Before: before[i]}
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
type touch struct{ moves, grips, uses map[*Part]bool }

// touches collects the parts of a step. Moving an assembly moves its members, and
// moving a member touches its assembly.
func (b *builder) touches(st *Step) touch {
	t := touch{moves: map[*Part]bool{}, grips: map[*Part]bool{}, uses: map[*Part]bool{}}
	add := func(set map[*Part]bool, p *Part) {
		for q := p; q != nil; q = q.Of {
			set[q] = true
		}
		for _, q := range b.job.Parts {
			for up := q.Of; up != nil; up = up.Of {
				if up == p {
					set[q] = true
				}
			}
		}
	}
	for _, ms := range [][]*Move{st.Remove, st.Fit, st.ForNow, st.TakeOut} {
		for _, m := range ms {
			add(t.moves, m.Part)
		}
	}
	for _, p := range st.LeftOut {
		add(t.moves, p)
	}
	for _, f := range append(append([]Fastening{}, st.Loosen...), st.Tighten...) {
		for _, p := range f.parts() {
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
	for _, ds := range [][]*Dim{st.Measure, st.Set} {
		for _, d := range ds {
			for _, f := range []Face{d.From, d.To, d.Of} {
				if f.Part != nil {
					add(t.uses, f.Part)
				}
			}
			for _, p := range d.hangsOn {
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
func (b *builder) bound(k, i *Step, tk, ti touch) (Bind, bool) {
	for _, d := range i.After {
		if d.Step == k {
			return Bind{Kind: BoundAfter, Before: k, Reason: d.Reason}, true
		}
	}
	if k.Hold != nil || i.Hold != nil {
		return Bind{Kind: BoundHold, Before: k}, true
	}
	if p := clash(tk, ti); p != nil {
		return Bind{Kind: BoundPart, Before: k, Part: p}, true
	}
	if p := gripped(tk, ti); p != nil {
		return Bind{Kind: BoundJoint, Before: k, Part: p}, true
	}
	if k.locks() || i.locks() {
		return Bind{Kind: BoundLock, Before: k}, true
	}
	for _, o := range k.Open {
		if slices.Contains(i.Close, o) {
			return Bind{Kind: BoundOpening, Before: k, Opening: o}, true
		}
	}
	for _, d := range k.Measure {
		if slices.Contains(d.lostAt, i) {
			return Bind{Kind: BoundLost, Before: k, Dim: d}, true
		}
	}
	if d := b.needs(k, i); d != nil {
		return Bind{Kind: BoundReading, Before: k, Dim: d}, true
	}
	if c := emptied(k, i); c != nil {
		return Bind{Kind: BoundEmpty, Before: k, In: c}, true
	}
	ds := b.stepDefs[i]
	if k.Index == i.Index-1 && (ds == nil || ds.After.At.IsZero()) {
		return Bind{Kind: BoundBelow, Before: k}, true
	}
	return Bind{}, false
}

// locks reports whether a step locks or unlocks an isolation: no other step may
// pass it.
func (s *Step) locks() bool { return len(s.Lock)+len(s.Unlock) > 0 }

// needs finds a reading taken by step k that a limit of step i is worked out from,
// or that step i sets again.
func (b *builder) needs(k, i *Step) *Dim {
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
	for _, d := range append(append([]*Dim{}, i.Measure...), i.Set...) {
		for _, e := range append(append([]*Dim{}, k.Measure...), k.Set...) {
			if e == d {
				return e
			}
			for _, m := range d.marks() {
				if string(m) == e.Mark || string(m) == e.Base && e.Place.agrees(d.Place) {
					return e
				}
			}
		}
	}
	return nil
}

// emptied finds a container that must be empty at step i and that step k moves
// parts into or out of.
func emptied(k, i *Step) *Container {
	for _, c := range i.Empty {
		for _, m := range append(append([]*Move{}, c.In...), c.Out...) {
			if m.Step == k {
				return c
			}
		}
	}
	return nil
}

// clash finds a part that both touch and one of them moves, the first by key.
func clash(a, b touch) *Part {
	return firstOf(func(see func(*Part)) {
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
func gripped(a, b touch) *Part {
	return firstOf(func(see func(*Part)) {
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
func firstOf(show func(see func(*Part))) *Part {
	var found *Part
	show(func(p *Part) {
		if found == nil || p.Place.mark(p.Key) < found.Place.mark(found.Key) {
			found = p
		}
	})
	return found
}
