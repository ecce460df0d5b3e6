package proof

import (
	"strconv"

	"matchmark/packs/job"
	"matchmark/packs/walk"
)

// forNow sees that what is fitted for a while was off, and comes out again; and
// that what is left out was off, and goes back later.
func (r *report) forNow() {
	for _, e := range r.walk.Events {
		switch m := e.Move; e.Verb {
		case job.DoFitForNow:
			if e.Had < m.N {
				r.problems.Add(m.At, "for-now", strconv.Itoa(m.N)+" of "+m.Part.Called()+" are fitted for now, but "+strconv.Itoa(e.Had)+" are off", "aid: yes at the part if it is no part of the machine", "else remove: ["+m.Part.Key+"] at an earlier step")
			}
		case job.DoTakeOut:
			if in, fitted := r.walk.Now(m.Part, e); m.Part.Aid && in > 0 && onlyIf(e.Step) != "" && onlyIf(fitted.Step) != onlyIf(e.Step) {
				r.problems.AddWith(m.At, "still-in", m.Part.Called()+" is taken out again only if "+onlyIf(e.Step)+", and stays in otherwise", fitted.At, "fitted for now here", "take it out at a step that is always done")
			}
			if e.Had < m.N {
				r.problems.Add(m.At, "not-in", strconv.Itoa(m.N)+" of "+m.Part.Called()+" are taken out again, but "+strconv.Itoa(e.Had)+" are in for now", "fit-for-now: [{"+m.Part.Key+": "+strconv.Itoa(m.N)+"}] at an earlier step")
			}
		case job.DoLeaveOut:
			r.leftOut(e)
		}
	}
	for _, p := range r.job.Parts {
		if n, out := r.walk.NowAtEnd(p); n > 0 {
			r.problems.Add(out.At, "still-in", strconv.Itoa(n)+" of "+p.Called()+" are fitted for now at "+out.Step.Name()+" and never taken out again", "take-out-again: [{"+p.Key+": "+strconv.Itoa(n)+"}] at a later step")
		}
	}
}

// onlyIf is on what condition a step is done, empty for one that is always done.
func onlyIf(st *job.Step) string {
	if st.If == nil || st.If.Cond == nil {
		return ""
	}
	return st.If.Cond.Text()
}

// leftOut sees that a part that is left out is off, and goes back later.
func (r *report) leftOut(e *walk.Event) {
	p := e.Part
	later := false
	for _, m := range p.Back {
		later = later || m.Step.Index > e.Step.Index
	}
	switch {
	case r.walk.On(p, e) == p.Count:
		r.problems.Add(e.At, "not-off", p.Called()+" is left out, but it is in the machine then", "take it out of leave-out:, or remove it at an earlier step")
	case !later:
		r.problems.Add(e.At, "left-out", p.Called()+" is left out for now, and no later step puts it back", "fit: ["+p.Key+"] at a later step")
	}
}
