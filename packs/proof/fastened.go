package proof

import (
	"matchmark/packs/job"
	"matchmark/packs/walk"
	"slices"
)

// fastened sees that what is loosened was tight, what is tightened was loose, and
// that all is tight at the end.
func (r *report) fastened() {
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoLoosen:
			if g := r.walk.Grip(e.Grip, e); g.Loosened != nil {
				r.problems.AddWith(e.At, "loosened-twice", e.Grip.Mark()+" is loosened by two steps and not tightened between them", g.Loosened.At, "loosened here first", "take it out of one of them")
			}
		case job.DoTighten:
			if g := r.walk.Grip(e.Grip, e); g.Loosened == nil && g.Fitted == nil && !r.putOn(e) {
				r.problems.Add(e.At, "never-loosened", e.Grip.Mark()+" is tightened at "+e.Step.Name()+", but it is tight then", "loosen: ["+e.Grip.Mark()+"] at an earlier step, or take it out")
			}
		}
	}
	for _, g := range r.walk.GripsAtEnd() {
		switch mark := g.Of.Mark(); {
		case g.Loosened != nil && !g.Loosened.Step.Section.Unreversed:
			r.problems.Add(g.Loosened.At, "never-tightened", mark+" is loosened at "+g.Loosened.Step.Name()+" and never tightened", "tighten: ["+mark+"] at a later step", "or reverse: its section")
		case g.Fitted != nil && g.Of.Joint != nil && (g.Trial == nil || r.walk.LastTorque(g.Of.Joint, g.Trial.Step) == nil):
			r.problems.AddWith(g.Of.At, "never-tightened", "a fastener of "+mark+" goes back at "+g.Fitted.Step.Name()+", and "+mark+" is not tightened after it", g.Fitted.At, "goes back here",
				"tighten: ["+g.Of.Joint.Base+"] at that step or later")
		}
	}
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
				b.looksAt(p.Of, st)
			}
		}
	}
}
