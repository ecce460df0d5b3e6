package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkMarked sees that a mark across a joint is made while the part is in its place and what
// holds it is tight, for loose it stands otherwise already, and that the order of a stack is
// written down before the step takes anything off.
func (r *report) checkMarked() {
	for _, e := range r.walk.Events {
		switch {
		case e.Verb == job.DoMark && r.walk.On(e.Part, e) < e.Part.Count && r.cameOff(e.Part, e.Index) != nil && !newForNow(e):
			off := r.cameOff(e.Part, e.Index)
			help := "match-marks: [" + e.Part.Key + "] at a step above " + off.Step.No
			if off.Step == e.Step {
				help = "write match-marks: above remove: a step is done in the order in which it is written"
			}
			if e.Step.Renews(e.Part) {
				help = "write match-marks: below fit: the new one is marked in its place"
			}
			r.problems.AddWith(e.At, "marked-late", e.Part.Called()+" is marked at "+e.Step.Name()+", and has come off by then", off.At, "comes off here", help)
		case e.Verb == job.DoMark && r.acrossOff(e) != nil:
			off := r.acrossOff(e)
			add := r.problems.WarnWith // a guess stops no paper
			if e.Part.AcrossSaid {
				add = r.problems.AddWith
			}
			add(e.At, "marked-late", e.Part.Called()+" is marked across its joint with "+e.Part.Across.Called()+" at "+e.Step.Name()+", and that has come off by then", off.At, "comes off here",
				"match-marks: [{"+e.Part.Key+": "+e.Part.Across.Key+"}] at a step above "+off.Step.No+", or at that above remove:")
		case e.Verb == job.DoMark:
			if x := r.loosened(e); x != nil && x.Step.At == e.Step.At {
				r.problems.WarnWith(e.At, "marked-late", e.Part.Called()+" is marked at "+e.Step.Name()+", when "+x.Grip.Mark()+" is loose: it may have moved by then", x.At, "loosened here",
					"write match-marks: above loosen:")
			} else if x != nil {
				r.problems.WarnWith(e.At, "marked-late", e.Part.Called()+" is marked at "+e.Step.Name()+", when "+x.Grip.Mark()+" is loose since "+x.Step.Name()+": it may have moved by then", x.At, "loosened here",
					"match-marks: ["+e.Part.Key+"] at "+x.Step.No+" above loosen:, or at a step above that")
			}
		case e.Verb == job.DoStack:
			for _, x := range r.walk.Events[r.walk.Start(e.Step):e.Index] {
				if x.Verb == job.DoRemove {
					r.problems.AddWith(e.At, "marked-late", "the order "+e.Stack.Mark+" is written down at "+e.Step.Name()+" after the step has taken it apart", x.At, "taken off here",
						"write stacks: above remove: a step is done in the order in which it is written")
					break
				}
			}
		}
	}
}

// acrossOff is the removal of the part on the other side of the joint that a mark stands on,
// where that is off as the mark is made; nil where it is in its place.
func (r *report) acrossOff(e *walk.Event) *walk.Event {
	q := e.Part.Across
	if q == nil || r.walk.On(q, e) == q.Count {
		return nil
	}
	return r.cameOff(q, e.Index)
}

// newForNow reports whether a part is marked where a new one goes on for now.
func newForNow(e *walk.Event) bool {
	return e.Step.Renews(e.Part) && job.AnyOf(e.Step.ForNow, e.Part)
}

// loosened is the event that loosened what holds a part, where it is loose when the part is
// marked; nil where that is tight, or a joint of more fasteners still is: a casing does not
// move on its studs because the nuts of a seal are off. One that was marked before is marked anew for another
// reason; one that has come off is marked where it was put, as a new one for the next time.
func (r *report) loosened(e *walk.Event) *walk.Event {
	if r.markedBefore(e) || r.cameOff(e.Part, e.Index) != nil {
		return nil
	}
	var by *walk.Event
	loose, tight := 0, 0
	for _, q := range e.Part.Behind {
		for _, j := range q.Joints {
			n := 0
			for _, p := range j.Parts {
				n += p.Count
			}
			switch x := r.walk.Grip(job.Fastening{Joint: j}, e).Loosened; {
			case x == nil:
				tight = max(tight, n)
			case n > loose:
				loose, by = n, x
			}
		}
	}
	if tight > loose {
		return nil
	}
	return by
}

// cameOff is the last removal of a part above an event, nil if there is none.
func (r *report) cameOff(p *job.Part, before int) *walk.Event {
	for _, m := range slices.Backward(p.Off) {
		if e := r.walk.Moved(m); e != nil && e.Index < before {
			return e
		}
	}
	return nil
}

// marked binds a step that marks a part to those that move it, and that loosen what holds it.
func (b *binder) marked() {
	for _, st := range b.walk.Steps {
		for _, p := range st.Marks {
			b.stands(p, st)
			if p.Across != nil {
				b.stands(p.Across, st)
			}
			for _, x := range b.walk.Steps[st.Index+1:] {
				if slices.ContainsFunc(x.Loosen, func(f job.Fastening) bool {
					return f.Joint != nil && slices.ContainsFunc(p.Behind, func(q *job.Part) bool { return slices.Contains(q.Joints, f.Joint) })
				}) {
					b.before(st, x, job.Bind{Kind: job.BoundPart, Part: p})
				}
			}
		}
	}
}
