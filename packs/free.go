package packs

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
	// BoundLost: the later step destroys a dimension that the earlier one measures.
	BoundLost
)

// A Bind is one reason why a step comes after another.
type Bind struct {
	Kind   BindKind
	Before *Step
	Reason string // as written in the after: line
	Part   *Part  // for BoundPart
	Dim    *Dim   // for BoundLost
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

// A touch is what a step has to do with parts: those it moves, and those it only
// measures against.
type touch struct{ moves, uses map[*Part]bool }

// touches collects the parts of a step. Moving an assembly moves its members, and
// moving a member touches its assembly.
func (b *builder) touches(st *Step) touch {
	t := touch{moves: map[*Part]bool{}, uses: map[*Part]bool{}}
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
	for _, ms := range [][]*Move{st.Remove, st.Fit} {
		for _, m := range ms {
			add(t.moves, m.Part)
		}
	}
	for _, ds := range [][]*Dim{st.Measure, st.Set} {
		for _, d := range ds {
			for _, f := range []Face{d.From, d.To, d.Of} {
				if f.Part != nil {
					add(t.uses, f.Part)
				}
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
	for _, d := range k.Measure {
		if d.LastChance == i {
			return Bind{Kind: BoundLost, Before: k, Dim: d}, true
		}
	}
	ds := b.stepDefs[i]
	if k.Index == i.Index-1 && (ds == nil || ds.After.At.IsZero()) {
		return Bind{Kind: BoundBelow, Before: k}, true
	}
	return Bind{}, false
}

// clash finds a part that both touch and one of them moves, the first by key.
func clash(a, b touch) *Part {
	var found *Part
	see := func(p *Part) {
		if found == nil || p.Place.mark(p.Key) < found.Place.mark(found.Key) {
			found = p
		}
	}
	for p := range a.moves {
		if b.moves[p] || b.uses[p] {
			see(p)
		}
	}
	for p := range b.moves {
		if a.uses[p] {
			see(p)
		}
	}
	return found
}
