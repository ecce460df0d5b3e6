package proof

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/source"
	"matchmark/packs/walk"
)

// checkBehind sees that no part comes off, goes back, is loosened or tightened while one
// that it is behind is in the machine. What one step takes off or puts back together
// counts as one act here: in which order its list names it is seen by checkListOrder.
func (r *report) checkBehind() {
	told := map[source.Pos]bool{} // once for a part, however many stand in front of it
	for _, e := range r.walk.Events {
		switch e.Verb {
		case job.DoRemove:
			if front := r.walk.InFront(e.Move.Part, r.walk.End(e.Step)); len(front) > 0 && !told[e.At] {
				told[e.At] = true
				r.inTheWay(e, front[0])
			}
		case job.DoFit:
			if front := r.walk.InFront(e.Move.Part, r.walk.Start(e.Step)); len(front) > 0 && !told[e.At] {
				told[e.At] = true
				r.shutOut(e, front[0])
			}
		case job.DoLoosen, job.DoTighten:
			at, what := r.walk.End(e.Step), "is loosened"
			if e.Verb == job.DoTighten {
				at, what = r.walk.Start(e.Step), "is tightened"
				if !r.fitsAny(e.Step, e.Grip.Parts()) {
					at = e.Index // what was put back by a step above is tightened past what this one has put on
				}
			}
			for _, p := range e.Grip.Parts() {
				if front := r.walk.InFront(p, at); len(front) > 0 && r.walk.On(p, e) > 0 && !told[e.At] {
					told[e.At] = true
					r.problems.AddWith(e.At, "in-the-way", e.Grip.Mark()+" "+what+" at "+e.Step.Name()+", but "+front[0].Called()+" is in front of "+p.Called()+" then", front[0].At, "in front of it",
						"do it while "+front[0].Key+" is off", "or take "+front[0].Key+" out of behind: at "+p.Key)
				}
			}
		}
	}
}

// fitsAny reports whether a step puts any of some parts back.
func (r *report) fitsAny(st *job.Step, parts []*job.Part) bool {
	return r.walk.Find(st, func(e *walk.Event) bool {
		return (e.Verb == job.DoFit || e.Verb == job.DoFitForNow) && slices.Contains(parts, e.Move.Part)
	}) != nil
}

// inTheWay tells of a part that comes off while another is in front of it.
func (r *report) inTheWay(e *walk.Event, front *job.Part) {
	p := source.Problem{
		Pos: e.At, Severity: source.Error, Code: "in-the-way",
		Message: e.Move.Part.Called() + " comes off at " + e.Step.Name() + ", but " + front.Called() + " is in front of it then",
		Help:    []string{"remove: [" + front.Key + "] at this step or one above it", "or take " + front.Key + " out of behind: at " + e.Move.Part.Key},
		See:     []source.Also{{Pos: front.At, What: "in front of it"}},
	}
	for _, m := range front.Off {
		if m.Step.Index > e.Step.Index {
			p.Help[0] = "move this step below the one that takes it off"
			p.See = []source.Also{{Pos: m.At, What: "comes off only here"}}
			break
		}
	}
	r.problems = append(r.problems, p)
}

// shutOut tells of a part that goes back when another is in front of its place.
func (r *report) shutOut(e *walk.Event, front *job.Part) {
	p := source.Problem{
		Pos: e.At, Severity: source.Error, Code: "in-the-way",
		Message: e.Move.Part.Called() + " goes back at " + e.Step.Name() + ", but " + front.Called() + ", which it is behind, is in the machine by then",
		Help:    []string{"put it back above the step that puts back " + front.Key, "or take " + front.Key + " out of behind: at " + e.Move.Part.Key},
		See:     []source.Also{{Pos: front.At, What: "in front of it"}},
	}
	for _, m := range front.Back {
		if m.Step.Index < e.Step.Index {
			p.See = []source.Also{{Pos: m.At, What: "goes back here"}}
		}
	}
	r.problems = append(r.problems, p)
}

// behind binds the steps that move, loosen or tighten a part to those that move what is
// in front of it.
func (b *binder) behind() {
	gripped := map[*job.Part][]*job.Step{}
	for _, st := range b.walk.Steps {
		for _, f := range slices.Concat(st.Loosen, st.Tighten) {
			for _, p := range f.Parts() {
				gripped[p] = append(gripped[p], st)
			}
		}
	}
	for _, p := range b.job.Parts {
		for _, q := range p.Behind {
			why := job.Bind{Kind: job.BoundBehind, Part: p, Front: q}
			for _, m := range slices.Concat(moves(p), gripped[p]) {
				for _, n := range moves(q) {
					b.before(m, n, why)
					b.before(n, m, why)
				}
			}
		}
	}
}

// moves lists the steps that move a part for good.
func moves(p *job.Part) []*job.Step {
	var out []*job.Step
	for _, m := range slices.Concat(p.Off, p.Back) {
		out = append(out, m.Step)
	}
	return out
}
