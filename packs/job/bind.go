package job

// A Bind is one reason why a step comes after another.
type Bind struct {
	Kind    BindKind
	Before  *Step
	Reason  string     // as written in the after: line; for BoundBack that of the step taken apart
	Part    *Part      // for BoundPart, BoundJoint, BoundBehind and BoundBack
	Front   *Part      // for BoundBehind: what the part is behind
	Dim     *Dim       // for BoundLost and BoundReading
	In      *Container // for BoundEmpty
	Opening *Opening   // for BoundOpening
	Hold    *Hold      // for BoundHold
	Lock    *Isolation // for BoundLock
	Set     *Set       // for BoundJudged
	Permit  *Permit    // for BoundPermit
}

// A BindKind is why one step must come before another.
type BindKind int

const (
	// BoundAfter: the author wrote it in an after: line.
	BoundAfter BindKind = iota
	// BoundBelow: the author wrote no after: line, so the step follows the one above.
	BoundBelow
	// BoundHold: a hold or witness point stands at one of the two.
	BoundHold
	// BoundBehind: a part that one of the two moves is behind one that the other moves.
	BoundBehind
	// BoundPart: both touch the same part, and one of them moves it.
	BoundPart
	// BoundJoint: both loosen or tighten the same joint, or its fasteners.
	BoundJoint
	// BoundBack: what the later step puts back was taken off to reach what the
	// earlier one puts back, reads or tightens.
	BoundBack
	// BoundLock: an isolation is locked or unlocked at one of the two.
	BoundLock
	// BoundHanging: a load is left hanging, or let down again, at one of the two.
	BoundHanging
	// BoundTools: tools are counted at one of the two, and the other opens something
	// or moves parts.
	BoundTools
	// BoundPermit: a permit ends at one of the two.
	BoundPermit
	// BoundOpening: the earlier step opens what the later one closes.
	BoundOpening
	// BoundLost: the later step destroys a dimension that the earlier one measures.
	BoundLost
	// BoundReading: the later step needs a reading that the earlier one takes.
	BoundReading
	// BoundJudged: the earlier step decides whether the pieces that the later one
	// puts back are used again.
	BoundJudged
	// BoundEmpty: a container must be empty at one of the two, and the other moves
	// parts into or out of it.
	BoundEmpty
	// BoundLater: the later step waits until the machine has run.
	BoundLater
)

// Why words a bind for a message.
func (b *Bind) Why() string {
	switch b.Kind {
	case BoundHold:
		if b.Hold.Witness {
			return "witness " + b.Hold.Mark + " is called there"
		}
		return "hold " + b.Hold.Mark + " stands between them"
	case BoundBehind:
		return b.Part.Called() + " is behind " + b.Front.Called()
	case BoundPart:
		return "both move or measure " + b.Part.Called()
	case BoundJoint:
		return "both loosen or tighten " + b.Part.Called()
	case BoundBack:
		return b.Part.Called() + " came off before it"
	case BoundLost:
		return "it measures " + b.Dim.Mark + ", which this step destroys"
	case BoundReading:
		return "it takes the reading " + b.Dim.Mark
	case BoundLock:
		return "the isolation " + b.Lock.Key + " is locked or unlocked there"
	case BoundHanging:
		return "a load is left hanging there"
	case BoundTools:
		return "the tools are counted there"
	case BoundPermit:
		return "the permit " + b.Permit.Key + " ends there"
	case BoundOpening:
		return "it opens " + b.Opening.Mark()
	case BoundJudged:
		return "it decides about " + b.Set.Mark
	case BoundEmpty:
		return "it moves parts of " + b.In.Mark
	case BoundLater:
		return "this one waits until the machine has run"
	}
	return b.Reason
}

// A Free says between which steps a step may be done, and what binds it to each of
// the two; a nil step means the start or the end of the job, and then nothing binds.
type Free struct {
	After, Before         *Step
	AfterBind, BeforeBind *Bind // AfterBind.Before is After; BeforeBind.Before is the free step itself
}

// HardBind is the nearest reason besides the author's words why a step comes after
// another, nil if there is none.
func (s *Step) HardBind() *Bind {
	for i := range s.Binds {
		if k := s.Binds[i].Kind; k != BoundAfter && k != BoundBelow {
			return &s.Binds[i]
		}
	}
	return nil
}

// A Run is one reason that binds a step to several that stand one below the other:
// "after 3.1 to 3.20". Before is the last of them and From the first; both are one
// step where the reason binds to one step only.
type Run struct {
	Bind
	From  *Step
	Steps int // how many there are, 1 or more
	// Loop tells that all of them are the step itself at other places: one after
	// the other.
	Loop bool
}

// Runs folds the reasons that bind a step, the nearest first as in Binds: those of
// one kind about one thing, to steps that stand one below the other, are one run.
// The author's own reasons are folded only where their words are the same.
func (s *Step) Runs(binds []Bind) []Run {
	var out []Run
	for _, b := range binds {
		loop := s.Key != "" && b.Before.Key == s.Key && b.Before.Undoes == nil == (s.Undoes == nil)
		if n := len(out) - 1; n >= 0 && out[n].From.Index == b.Before.Index+1 && out[n].Loop == loop && out[n].about(b) {
			out[n].From = b.Before
			out[n].Steps++
			continue
		}
		out = append(out, Run{Bind: b, From: b.Before, Steps: 1, Loop: loop})
	}
	return out
}

// about reports whether a run gives the same reason as a bind. Parts and readings
// of one name at several places are one thing here.
func (r *Run) about(b Bind) bool {
	part := func(p *Part) string {
		if p == nil {
			return ""
		}
		return p.Key
	}
	dim := func(d *Dim) string {
		if d == nil {
			return ""
		}
		return d.Base
	}
	return r.Kind == b.Kind && r.Reason == b.Reason && part(r.Part) == part(b.Part) && part(r.Front) == part(b.Front) && dim(r.Dim) == dim(b.Dim) &&
		r.In == b.In && r.Opening == b.Opening && r.Hold == b.Hold && r.Lock == b.Lock && r.Set == b.Set && r.Permit == b.Permit
}

// Reasons lists what binds each step to the steps above it, without what follows
// from the rest: when a step comes after the nut and the nut after the cover, it
// need not be told to come after the cover. The author's own reasons always stay.
func (j *Job) Reasons() map[*Step][]Bind {
	out := map[*Step][]Bind{}
	var before []bits // of each step, all that must come before it
	for _, s := range j.Sections {
		for _, st := range s.Steps {
			all := make(bits, len(before)/64+1)
			// The nearest come first, so that what they imply is known when the
			// others are looked at.
			for _, b := range st.Binds {
				at := b.Before.Index
				if b.Kind == BoundAfter || !all.has(at) {
					out[st] = append(out[st], b)
				}
				all.add(at)
				for i, word := range before[at] {
					all[i] |= word
				}
			}
			before = append(before, all)
		}
	}
	return out
}

// bits is a set of steps by their place in the order of work.
type bits []uint64

func (b bits) has(i int) bool { return b[i/64]>>(i%64)&1 == 1 }
func (b bits) add(i int)      { b[i/64] |= 1 << (i % 64) }
