package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkTooLateToSee sees that marks and orders are taken from what is as it ran: a part
// that came off and is back stands where it was put, and a stack of which nothing comes off
// any more shows the order in which it was put together. Marks of a part that is renewed
// are for the next time.
func (r *report) checkTooLateToSee() {
	told := map[source.Pos]bool{} // once for all places
	for _, e := range r.walk.Events {
		if told[e.Step.At] {
			continue
		}
		switch {
		case e.Verb == job.DoMark && r.walk.On(e.Part, e) == e.Part.Count && !e.Part.ComesNew() && !r.markedBefore(e):
			if off := r.cameOff(e.Part, e.Index); off != nil {
				told[e.Step.At] = true
				r.problems.AddWith(e.At, "seen-too-late", e.Part.Called()+" is marked at "+e.Step.Name()+", when it has been off since "+off.Step.Name()+" and is back: the marks show where it was put, not where it ran", off.At, "comes off here",
					"match-marks: ["+e.Part.Key+"] at a step above "+off.Step.No)
			}
		case e.Verb == job.DoStack:
			if off := r.stackOff(e); off != nil {
				told[e.Step.At] = true
				r.problems.AddWith(e.At, "seen-too-late", "the order "+e.Stack.Mark+" is written down at "+e.Step.Name()+", when "+off.Move.Part.Called()+" has come off: nobody sees it any more", off.At, "comes off here",
					"stacks: ["+e.Stack.Base+"] at "+off.Step.No)
			}
		}
	}
}

// markedBefore reports whether a step above has marked a part already.
func (r *report) markedBefore(e *walk.Event) bool {
	return slices.ContainsFunc(r.walk.Events[:e.Index], func(x *walk.Event) bool { return x.Verb == job.DoMark && x.Part == e.Part })
}

// stackOff is the last removal, above the step that writes down the order of a stack, by a
// step that takes all pieces of it off by their names; nil where there is no such step, or
// where it is the step itself.
func (r *report) stackOff(e *walk.Event) *walk.Event {
	var last *walk.Event
	for _, st := range r.walk.Steps[:e.Step.Index] {
		for _, piece := range e.Stack.Pieces {
			off := r.walk.Find(st, func(x *walk.Event) bool {
				return x.Verb == job.DoRemove && x.Move.Part.Place.Agrees(e.Stack.Place) && x.Move.Part.IsCalled(piece)
			})
			if off == nil {
				last = nil
				break
			}
			last = off
		}
		if last != nil {
			return last
		}
	}
	return nil
}

// checkPackSeen sees that a pack of shims is measured as found by the step that takes it
// out, or below it: in its place nobody counts its leaves.
func (r *report) checkPackSeen() {
	told := map[string]bool{} // once for all places
	for _, e := range r.walk.Events {
		if e.Verb != job.DoMeasure || e.Dim.Shims == nil || e.Dim.Shims.Part == nil || told[e.Dim.Base] {
			continue
		}
		p := e.Dim.Shims.Part
		if r.walk.On(p, e) < p.Count || len(p.Off) == 0 || p.Off[0].Step == e.Step {
			continue // comes off at the step itself, in whatever order that is written
		}
		told[e.Dim.Base] = true
		r.problems.WarnWith(e.At, "pack-shut-in", e.Dim.Mark+" is measured at "+e.Step.Name()+", when "+p.Called()+" is in its place: nobody counts its leaves there", p.Off[0].At, "comes off here",
			"measure: ["+e.Dim.Base+"] at "+p.Off[0].Step.No)
	}
}

// seen binds the step that writes down the order of a stack to those that take its pieces
// off.
func (b *binder) seen() {
	for _, st := range b.walk.Steps {
		for _, k := range st.Stacks {
			for _, t := range b.walk.Steps {
				for _, m := range t.Remove {
					if m.Part.Place.Agrees(k.Place) && slices.ContainsFunc(k.Pieces, func(piece string) bool { return m.Part.IsCalled(piece) }) {
						b.before(st, t, job.Bind{Kind: job.BoundPart, Part: m.Part})
					}
				}
			}
		}
	}
}
