package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
)

// checkHanging sees that no hand goes in under a load that hangs before something is
// put under it, that nobody holds a load by hand through another step, and that what
// is set down was up.
func (r *report) checkHanging() {
	for _, st := range r.walk.Steps {
		r.handsUnder(st)
		for _, l := range st.SetDown {
			if !slices.Contains(st.Lifts, l) && r.walk.Hung(l, st) == nil {
				r.standsAlready(st, l)
			}
		}
		if st.Undoes == nil && st.UnderLoad.Value != "" && !st.LoadAbove() {
			r.problems.Warn(st.UnderLoad.At, "nothing-hangs", "under-load: stands at "+st.Name()+", and no load hangs then", "take it out, or write lift: at the steps that raise the load before it and go on with it after it", "or on-hook: what the load of this step hangs on")
		}
	}
	for _, l := range r.job.Lifts {
		if l.ByHand {
			r.heldByHand(l)
		}
	}
}

// standsAlready tells of a load that is set down where it does not hang, and which step has
// brought it to stand.
func (r *report) standsAlready(st *job.Step, l *job.Lift) {
	message := l.Mark + " is set down at " + st.Name() + ", but its load does not hang then"
	for i := r.walk.Start(st) - 1; i >= 0; i-- {
		e := r.walk.Events[i]
		by, made := "", slices.Contains(e.Step.Lifts, l)
		switch {
		case e.Verb == job.DoSetDown && e.Lift == l:
			by = "sets it down already"
		case made && l.TakenOffBy(e.Step):
			by = "lays it down already, where its into: says"
		case made || e.Lands(l):
			by = "brings it to stand already"
		default:
			continue
		}
		r.problems.AddWith(st.At, "nothing-hangs", message, e.Step.At, e.Step.Name()+" "+by, "take set-down: out", "or write lift: ["+l.Mark+"] at a step between the two, if it is raised again")
		return
	}
	r.problems.Add(st.At, "nothing-hangs", message, "take set-down: out, or write lift: ["+l.Mark+"] at the step above that raises it")
}

// handsUnder tells of a step that puts hands at a load that hangs and does not say
// what keeps it up. A generated row speaks for itself only where its step does not.
func (r *report) handsUnder(st *job.Step) {
	what := handsAt(st)
	if len(st.Hangs) == 0 || what == "" || st.UnderLoad.Value != "" || st.Undoes != nil && len(st.Undoes.Hangs) > 0 {
		return
	}
	l := st.Hangs[0]
	raised := r.walk.Hung(l, st)
	r.problems.AddWith(st.At, "hands-under-load", "step "+st.Name()+" "+what+" while "+l.Mark+" hangs on the hook, and does not say what is put under it", raised.At, "left hanging by "+raised.Name(),
		"for example under-load: two blocks under each journal before a hand goes in", "or set-down: ["+l.Mark+"] at the step after which it stands on its supports")
}

// handsAt says what a step does at the machine with the hands, empty for nothing.
func handsAt(st *job.Step) string {
	switch {
	case st.Bench:
		return ""
	case len(st.Remove) > 0:
		return "takes off " + st.Remove[0].Part.Called()
	case len(st.Fit) > 0:
		return "puts back " + st.Fit[0].Part.Called()
	case len(st.ForNow) > 0:
		return "fits " + st.ForNow[0].Part.Called()
	case len(st.TakeOut) > 0:
		return "takes out " + st.TakeOut[0].Part.Called()
	case len(st.Loosen) > 0:
		return "loosens " + st.Loosen[0].Mark()
	case len(st.Tighten) > 0:
		return "tightens " + st.Tighten[0].Mark()
	case len(st.Measure) > 0:
		return "measures " + st.Measure[0].Mark
	case len(st.Set) > 0:
		return "sets " + st.Set[0].Mark
	case len(st.Heats) > 0:
		return "heats a part"
	case len(st.Marks) > 0:
		return "marks " + st.Marks[0].Called()
	}
	return ""
}

// heldByHand tells of a load that people hold by hand while another step is done than the one
// that sets it down.
func (r *report) heldByHand(l *job.Lift) {
	for _, st := range r.walk.Steps {
		raised := r.walk.Hung(l, st)
		if raised == nil || slices.Contains(st.Lifts, l) || slices.Contains(st.SetDown, l) && handsAt(st) == "" {
			continue
		}
		r.problems = append(r.problems, source.Problem{
			Pos: st.At, Severity: source.Error, Code: "held-by-hand",
			Message: l.Mark + " is lifted by hand at " + raised.Name() + ", and " + st.Name() + " is done before it goes on: nobody holds a load so long",
			Help:    []string{"set-down: [" + l.Mark + "] at " + raised.No + ", and in its words what the load is set down on"},
			See:     []source.Also{{Pos: raised.At, What: "lifted here"}},
		})
		return
	}
}

// hook is what all steps share while loads hang: none may pass the raising or the
// landing of one.
type hook struct{}

// hanging binds all steps to the steps between which a load hangs.
func (b *binder) hanging() {
	for _, st := range b.walk.Steps {
		if b.walk.MovesHook(st) {
			b.changes(hook{}, st, job.Bind{Kind: job.BoundHanging})
		} else {
			b.looks(hook{}, st)
		}
	}
}
