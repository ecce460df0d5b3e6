package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// checkMarked sees that a mark across a joint is made while the part is in its place,
// and that the order of a stack is written down before the step takes anything off.
func (r *report) checkMarked() {
	for _, e := range r.walk.Events {
		switch {
		case e.Verb == job.DoMark && r.walk.On(e.Part, e) < e.Part.Count && r.cameOff(e.Part, e.Index) != nil:
			off := r.cameOff(e.Part, e.Index)
			help := "match-marks: [" + e.Part.Key + "] at a step above " + off.Step.No
			if off.Step == e.Step {
				help = "write match-marks: above remove: a step is done in the order in which it is written"
			}
			r.problems.AddWith(e.At, "marked-late", e.Part.Called()+" is marked at "+e.Step.Name()+", and has come off by then", off.At, "comes off here", help)
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

// cameOff is the last removal of a part above an event, nil if there is none.
func (r *report) cameOff(p *job.Part, before int) *walk.Event {
	for _, m := range slices.Backward(p.Off) {
		if e := r.walk.Moved(m); e != nil && e.Index < before {
			return e
		}
	}
	return nil
}

// marked binds a step that marks a part to those that move it.
func (b *binder) marked() {
	for _, st := range b.walk.Steps {
		for _, p := range st.Marks {
			b.stands(p, st)
		}
	}
}
