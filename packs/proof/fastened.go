package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// fastened sees that what is loosened was tight, what is tightened was loose, and
// that all is tight at the end.
func (r *report) fastened() {
	early := map[*job.Joint]bool{} // of which it is told that they are tightened too early
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoLoosen:
			if off := r.allOff(e); off != nil {
				r.offAlready(e, off)
			} else if g := r.walk.Grip(e.Grip, e); g.Fitted != nil && g.Loosened == nil {
				r.problems.AddWith(e.At, "off-already", e.Grip.Mark()+" is loosened at "+e.Step.Name()+", and has not been tightened since "+g.Fitted.Move.Part.Called()+" went back at "+g.Fitted.Step.Name(), g.Fitted.At, "goes back here",
					"loosen: ["+e.Grip.Mark()+"] before it comes off, or tighten it in between")
			} else if g.Loosened != nil {
				r.problems.AddWith(e.At, "loosened-twice", e.Grip.Mark()+" is loosened by two steps and not tightened between them", g.Loosened.At, "loosened here first", "take it out of one of them")
			}
		case job.DoTighten:
			if back := r.backLater(e); back != nil {
				early[e.Grip.Joint] = true
				r.offStill(e, back)
			} else if g := r.walk.Grip(e.Grip, e); g.Loosened == nil && g.Fitted == nil && !r.putOn(e) {
				r.problems.Add(e.At, "never-loosened", e.Grip.Mark()+" is tightened at "+e.Step.Name()+", but it is tight then", "loosen: ["+e.Grip.Mark()+"] at an earlier step, or take it out")
			}
		}
	}
	for _, g := range r.walk.GripsAtEnd() {
		if g.Loosened != nil && r.outAgain(g.Of) {
			continue
		}
		switch mark := g.Of.Mark(); {
		case g.Loosened != nil && !g.Loosened.Step.Section.Unreversed:
			r.problems.Add(g.Loosened.At, "never-tightened", mark+" is loosened at "+g.Loosened.Step.Name()+" and never tightened", "tighten: ["+mark+"] at a later step", "or reverse: its section")
		case g.Fitted != nil && g.Of.Joint != nil && !early[g.Of.Joint] && (g.Trial == nil || r.walk.LastTorque(g.Of.Joint, g.Trial.Step) == nil):
			r.problems.AddWith(g.Of.At, "never-tightened", "a fastener of "+mark+" goes back at "+g.Fitted.Step.Name()+", and "+mark+" is not tightened after it", g.Fitted.At, "goes back here",
				"tighten: ["+g.Of.Joint.Base+"] at that step or later")
		}
	}
}

// outAgain reports whether all fasteners are aids that are out again at the end, as the bolts of
// a lifting plate: they are loosened to come out, and nothing is left to tighten.
func (r *report) outAgain(f job.Fastening) bool {
	for _, p := range f.Parts() {
		if now, _ := r.walk.NowAtEnd(p); !p.Aid || now > 0 || r.walk.OnAtEnd(p) > 0 {
			return false
		}
	}
	return len(f.Parts()) > 0
}

// allOff is the last removal of the fasteners of what is loosened, where all of them
// are off by then; nil where one is in the machine.
func (r *report) allOff(e *walk.Event) *walk.Event {
	var last *walk.Event
	for _, p := range e.Grip.Parts() {
		if now, _ := r.walk.Now(p, e); r.walk.On(p, e)+now > 0 {
			return nil
		}
		if off := r.wentOut(p, e.Index); off != nil && (last == nil || off.Index > last.Index) {
			last = off
		}
	}
	return last
}

// wentOut is the last event above another that took a part off, or out again where it was in for
// now; nil if there is none.
func (r *report) wentOut(p *job.Part, before int) *walk.Event {
	last := r.cameOff(p, before)
	for _, e := range r.walk.Events[:before] {
		if e.Verb == job.DoTakeOut && e.Move.Part == p && (last == nil || e.Index > last.Index) {
			last = e
		}
	}
	return last
}

// offAlready tells of fasteners that are loosened when they are off.
func (r *report) offAlready(e, off *walk.Event) {
	message, help := e.Grip.Mark()+" is loosened at "+e.Step.Name()+", when "+off.Move.Part.Called()+" is off already", "loosen: ["+e.Grip.Mark()+"] at a step above "+off.Step.No
	if off.Step == e.Step {
		message, help = "step "+e.Step.Name()+" loosens "+e.Grip.Mark()+" after it has taken off "+off.Move.Part.Called(), "write loosen: above remove: a step is done in the order in which it is written"
	}
	r.problems.AddWith(e.At, "off-already", message, off.At, "comes off here", help)
}

// backLater is the first event that puts a fastener back of what is tightened, where
// all of them are off until then; nil where one is in the machine.
func (r *report) backLater(e *walk.Event) *walk.Event {
	var first *walk.Event
	for _, p := range e.Grip.Parts() {
		if now, _ := r.walk.Now(p, e); r.walk.On(p, e)+now > 0 {
			return nil
		}
		for _, m := range p.Back {
			if x := r.walk.Moved(m); x != nil && x.Index > e.Index && (first == nil || x.Index < first.Index) {
				first = x
			}
		}
		for _, x := range r.walk.Events[e.Index:] {
			if x.Verb == job.DoFitForNow && x.Move.Part == p && (first == nil || x.Index < first.Index) {
				first = x
			}
		}
	}
	return first
}

// offStill tells of fasteners that are tightened before they are back.
func (r *report) offStill(e, back *walk.Event) {
	message, help := e.Grip.Mark()+" is tightened at "+e.Step.Name()+", and "+back.Move.Part.Called()+" goes back only at "+back.Step.Name(), "tighten: ["+e.Grip.Mark()+"] at "+back.Step.No+" or below it"
	if back.Step == e.Step {
		message, help = "step "+e.Step.Name()+" tightens "+e.Grip.Mark()+" before it puts back "+back.Move.Part.Called(), "write tighten: below fit: a step is done in the order in which it is written"
	}
	r.problems.AddWith(e.At, "off-still", message, back.At, "goes back here", help)
}

// putOn reports whether a fastener of what is tightened was put back, or fitted
// for now, by this step or one before.
func (r *report) putOn(e *walk.Event) bool {
	for _, p := range e.Grip.Parts() {
		if n, _ := r.walk.Now(p, e); n > 0 {
			return true
		}
		for _, m := range p.Back {
			if m.Step.Index <= e.Step.Index {
				return true
			}
		}
	}
	return false
}

// fastened binds the steps that loosen or tighten the same fasteners.
func (b *binder) fastened() {
	for _, st := range b.walk.Steps {
		for _, f := range slices.Concat(st.Loosen, st.Tighten) {
			for _, p := range f.Parts() {
				b.changes(p, st, job.Bind{Kind: job.BoundJoint, Part: p})
				b.stands(p.Of, st)
			}
		}
	}
}
