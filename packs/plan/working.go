package plan

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// workOut finds for every ladder where its inputs were written last before it is
// done, and sees that they were.
func (p *planner) workOut() {
	for _, d := range p.job.Dims {
		if d.FoundAt != nil {
			d.FoundWork = p.working(d, d.FoundAt, false)
		}
		if d.LeftAt != nil {
			d.LeftWork = p.working(d, d.LeftAt, true)
		}
		for _, w := range []job.Working{d.FoundWork, d.LeftWork} {
			w.Formula.AskSums()
			for _, l := range w.Limits {
				l.At.AskSums()
				l.Low.AskSums()
				l.High.AskSums()
			}
		}
	}
}

// working writes the ladders of a dimension at one step.
func (p *planner) working(d *job.Dim, st *job.Step, back bool) job.Working {
	var w job.Working
	if t := d.Wrote.Formula; d.Formula != nil && d.Box.Unit != units.None {
		if w.Formula = p.ladder(d, d.Formula, units.None, t); w.Formula != nil {
			w.Formula.RoundTo(d.Box)
			w.Formula.Blank().Box = d.Box
			if late := p.taken(w.Formula.Uses, d, st, back); late != nil {
				p.takenLate(t, d, st, late)
				w.Formula = nil
			}
		}
	}
	if d.Box.Unit == units.None {
		return w
	}
	lines := []line{{d.Left, d.Wrote.Left}, {d.Reuse, d.Wrote.Reuse}, {d.Repair, d.Wrote.Repair}}
	if d.FoundIsRecorded() && !d.Left.NeedsFound() && !back {
		lines = lines[1:] // the limit for closing is not looked at yet
	}
	if d.WatchedOnly() && !back {
		lines = []line{{d.Found, d.Wrote.Found}}
	}
	for _, x := range lines {
		if x.limit == nil || len(x.limit.Marks()) == 0 && !x.limit.NeedsFound() {
			continue
		}
		if !x.text.Written() {
			p.problems.Add(d.LimitPos(), "by-hand", d.Mark+": a limit that differs by position is not worked out by hand", "make a dimension of each position")
			continue
		}
		for i := range x.limit.Tests {
			if l, ok := p.limitLadder(d, x, i, st, back, &w); ok {
				w.Limits = append(w.Limits, l)
			}
		}
	}
	if w.Late != nil {
		w.Limits = nil
	}
	return w
}

// limitLadder writes the ladders of one test of a limit.
func (p *planner) limitLadder(d *job.Dim, x line, i int, st *job.Step, back bool, w *job.Working) (job.LimitLadder, bool) {
	l := job.LimitLadder{Limit: x.limit, Test: &x.limit.Tests[i]}
	for _, end := range []struct {
		v  *reading.Value
		to **job.Ladder
	}{{l.Test.At, &l.At}, {l.Test.Low, &l.Low}, {l.Test.High, &l.High}} {
		if end.v == nil || len(end.v.Marks()) == 0 && (!end.v.NeedsFound() || end.v.JustFound()) || end.v.NeedsFound() && !back {
			continue // nothing to work out, or not yet
		}
		ladder := p.ladder(d, end.v, x.limit.Unit(), x.text)
		if ladder == nil {
			continue
		}
		if u := ladder.Blank().Box.Unit; u.RiseUnit() != d.Box.Unit.RiseUnit() {
			p.problems.Add(x.text.At, "two-units", d.Mark+" is in "+d.Box.Unit.Text()+", and its limit works out in "+u.Text(), "let the limit work out in "+d.Box.Unit.Text())
			continue
		}
		if late := p.taken(ladder.Uses, d, st, back); late != nil {
			if back || x.limit == d.Found { // there is no later sheet to do it on
				p.takenLate(x.text, d, st, late)
			} else {
				w.Late = late
			}
			continue
		}
		*end.to = ladder
	}
	return l, l.At != nil || l.Low != nil || l.High != nil
}

// taken finds for each use the reading written last before a dimension is read at
// a step; the first use that has none is returned.
func (p *planner) taken(uses []job.Use, d *job.Dim, st *job.Step, back bool) *job.Use {
	for i := range uses {
		u := &uses[i]
		found, left := true, true
		for _, in := range u.Dims {
			found = found && before(in, in.FoundAt, false, d, st, back)
			left = left && before(in, in.LeftAt, true, d, st, back)
		}
		if !found && !left {
			return u
		}
		u.Left = left && (!found || u.Dims[0].LeftAt.Index >= u.Dims[0].FoundAt.Index)
	}
	return nil
}

// before reports whether a reading of in is written before d is read at a step:
// at an earlier one, or above it at the same.
func before(in *job.Dim, at *job.Step, inLeft bool, d *job.Dim, st *job.Step, back bool) bool {
	switch {
	case at == nil:
		return false
	case at != st:
		return at.Index < st.Index
	case inLeft != back:
		return back // found stands above left
	case back:
		return slices.Index(st.Set, in) < slices.Index(st.Set, d)
	}
	return slices.Index(st.Measure, in) < slices.Index(st.Measure, d)
}

// takenLate tells that an input is not there when it is needed.
func (p *planner) takenLate(t source.Text, d *job.Dim, st *job.Step, u *job.Use) {
	pr := source.Problem{Pos: t.PlaceOf(string(u.Mark)), Severity: source.Error, Code: "taken-later"}
	for _, in := range u.Dims {
		first := in.FoundAt
		if first == nil || in.LeftAt != nil && in.LeftAt.Index < first.Index {
			first = in.LeftAt
		}
		switch {
		case first == nil:
			pr.Message = d.Mark + " needs " + in.Mark + " at " + st.Name() + ", and no step reads it"
			pr.Help = []string{"measure: [" + in.Base + "] at a step above " + st.No}
		case first == st:
			pr.Message = d.Mark + " needs " + in.Mark + ", which stands below it at " + st.Name()
			pr.Help = []string{"write " + in.Base + " before " + d.Base + " in the list"}
			pr.See = []source.Also{{Pos: first.At, What: "the step that reads both"}}
		default:
			pr.Message = d.Mark + " needs " + in.Mark + " at " + st.Name() + ", and it is read only at " + first.Name()
			pr.Help = []string{"move the reading of " + in.Base + " above it"}
			pr.See = []source.Also{{Pos: first.At, What: in.Mark + " is read here"}}
		}
	}
	p.problems = append(p.problems, pr)
}

// A line is a limit with the line it was read from.
type line struct {
	limit *reading.Limit
	text  source.Text
}
