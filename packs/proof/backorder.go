package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// What was taken off to reach something stays off until that is done: when the nut
// comes off after the cover, the nut goes back before the cover. That one step comes
// after another is said by its after: line, or by standing below it in one section
// without one, and holds through the steps between. A step that locks is waited for
// because it makes safe: what it takes off besides is in nobody's way.

// checkBackOrder sees that the put-back is in the order of the strip-down turned
// round, wherever an author has said what comes after what. A put-back step that is
// itself said to come after the other is the author's word against it, and stands.
//
// One fault of order shows at many pairs of steps. What follows from others is told
// only where no two steps that name each other are out of order, and no step is spoken
// of twice.
func (r *report) checkBackOrder() {
	all := newReachers(r.walk)
	if !r.backOrder(all, false) {
		r.backOrder(all, true)
	}
}

// backOrder tells of the pairs that name each other, or of those that are bound by
// steps between, and reports whether there was one.
func (r *report) backOrder(all *reachers, through bool) bool {
	told := map[*job.Step]bool{}
	all.each(func(x reach) {
		if x.through != through || x.first.first.Index > x.then.last.Index {
			return
		}
		for _, act := range x.then.acts {
			for _, fit := range x.first.fits {
				if fit.Index > act.Index || fit.Step == act.Step || act.Move != nil && act.Move.Part == fit.Move.Part || !x.bars(act, fit) || saidSo(act.Step, fit.Step) {
					continue
				}
				if !told[act.Step] && !told[fit.Step] {
					r.tooFarBack(x, act, fit)
				}
				told[act.Step], told[fit.Step] = true, true
			}
		}
	})
	return len(told) > 0
}

// saidSo reports whether the author writes that a put-back step comes after another.
func saidSo(st, after *job.Step) bool {
	return slices.ContainsFunc(st.After, func(d job.Dep) bool { return d.Step == after })
}

// tooFarBack tells of an act that comes when what had been taken off to reach it is
// back: an error where the author says of the two steps themselves by an after: line that
// one comes after the other, else a warning. That one stands below the other is as often the
// way somebody walks round a machine, of which the parts are not in each other's way.
func (r *report) tooFarBack(x reach, act, fit *walk.Event) {
	what := ""
	switch act.Verb {
	case job.DoFit:
		what = act.Move.Part.Called() + " goes back"
	case job.DoSet:
		what = act.Dim.Mark + " is set"
	default:
		what = act.Grip.Mark() + " is tightened"
	}
	severity, why := source.Error, ""
	if x.by.reason != "" {
		why = ": " + x.by.reason
	}
	if !x.by.said {
		severity = source.Warning
	}
	if x.through {
		severity, why = source.Warning, " by way of "+x.by.on.No
	}
	help := []string{"move it above " + fit.Step.No, "or, if it can be done then: after: {" + fit.Step.Key + ": the reason}"}
	if act.Step.Undoes != nil {
		help = []string{"put the sections of reverse: in the other order, or write this step yourself above " + fit.Step.No}
	} else if fit.Step.Undoes != nil {
		help = []string{"move it above the reverse: line that makes " + fit.Step.No}
	}
	r.problems = append(r.problems, source.Problem{
		Pos: act.At, Severity: severity, Code: "back-order",
		Message: what + " at " + act.Step.Name() + ", when " + fit.Move.Part.Called() + " is back (" + fit.Step.No + "); it came off at " + x.first.step.No + ", and " + x.then.step.No + " comes after that" + why,
		Help:    help,
		See:     []source.Also{x.by.see, {Pos: fit.At, What: "goes back here"}},
	})
}

// backOrder binds the steps that put back, set or tighten what was reached behind
// something to the first step that puts that back, and such a step to the last of
// the others.
func (b *binder) backOrder() {
	type bound struct {
		by     reach
		act    *walk.Event
		before *walk.Event
	}
	first := make([]bound, len(b.walk.Events)) // by the act
	last := make([]bound, len(b.walk.Events))  // by the event that puts back
	newReachers(b.walk).each(func(x reach) {
		for _, act := range x.then.acts {
			fit, was := x.firstBarred(act), &first[act.Index]
			if fit != nil && (was.before == nil || fit.Index < was.before.Index) {
				*was = bound{x, act, fit}
			}
		}
		for _, fit := range x.first.fits {
			act, was := x.lastBarring(fit), &last[fit.Index]
			if act != nil && (was.act == nil || act.Index > was.act.Index) {
				*was = bound{x, act, fit}
			}
		}
	})
	for i := range b.walk.Events {
		for _, x := range []bound{first[i], last[i]} {
			if x.act != nil {
				b.before(x.act.Step, x.before.Step, job.Bind{Kind: job.BoundBack, Reason: x.by.by.reason, Part: x.by.goesOn(x.act, x.before)})
			}
		}
	}
}
