package packs

import (
	"matchmark/packs/job"
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// workOut finds for every ladder where its inputs were written last before it is
// done, and sees that they were.
func (b *builder) workOut() {
	for _, d := range b.job.Dims {
		dd := b.dimDef(d)
		if d.FoundAt != nil {
			d.FoundWork = b.working(d, dd, d.FoundAt, false)
		}
		if d.LeftAt != nil {
			d.LeftWork = b.working(d, dd, d.LeftAt, true)
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
func (b *builder) working(d *job.Dim, dd *def.Dimension, st *job.Step, back bool) job.Working {
	var w job.Working
	if t := textAt(d.Place, dd.Formula); d.Formula != nil && d.Box.Unit != units.None {
		if w.Formula = b.ladder(d, d.Formula, units.None, t); w.Formula != nil {
			w.Formula.RoundTo(d.Box)
			w.Formula.Blank().Box = d.Box
			if late := b.taken(w.Formula.Uses, d, st, back); late != nil {
				b.takenLate(t, d, st, late)
				w.Formula = nil
			}
		}
	}
	if d.Box.Unit == units.None {
		return w
	}
	lines := []written{{d.Left, textAt(d.Place, dd.Left)}, {d.Reuse, textAt(d.Place, dd.Reuse)}, {d.Repair, textAt(d.Place, dd.Repair)}}
	if d.WatchedOnly() && !back {
		lines = []written{{d.Found, textAt(d.Place, dd.Found)}}
	}
	for _, x := range lines {
		if x.limit == nil || len(x.limit.Marks()) == 0 && !x.limit.NeedsFound() {
			continue
		}
		if !x.text.Written() {
			b.problems.Add(limitPos(dd, d.Place), "by-hand", d.Mark+": a limit that differs by position is not worked out by hand", "make a dimension of each position")
			continue
		}
		for i := range x.limit.Tests {
			if l, ok := b.limitLadder(d, x, i, st, back, &w); ok {
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
func (b *builder) limitLadder(d *job.Dim, x written, i int, st *job.Step, back bool, w *job.Working) (job.LimitLadder, bool) {
	l := job.LimitLadder{Limit: x.limit, Test: &x.limit.Tests[i]}
	for _, end := range []struct {
		v  *reading.Value
		to **job.Ladder
	}{{l.Test.At, &l.At}, {l.Test.Low, &l.Low}, {l.Test.High, &l.High}} {
		if end.v == nil || len(end.v.Marks()) == 0 && (!end.v.NeedsFound() || end.v.JustFound()) || end.v.NeedsFound() && !back {
			continue // nothing to work out, or not yet
		}
		ladder := b.ladder(d, end.v, x.limit.Unit(), x.text)
		if ladder == nil {
			continue
		}
		if u := ladder.Blank().Box.Unit; u.RiseUnit() != d.Box.Unit.RiseUnit() {
			b.problems.Add(x.text.At, "two-units", d.Mark+" is in "+d.Box.Unit.Text()+", and its limit works out in "+u.Text(), "let the limit work out in "+d.Box.Unit.Text())
			continue
		}
		if late := b.taken(ladder.Uses, d, st, back); late != nil {
			if back || x.limit == d.Found { // there is no later sheet to do it on
				b.takenLate(x.text, d, st, late)
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
func (b *builder) taken(uses []job.Use, d *job.Dim, st *job.Step, back bool) *job.Use {
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
func (b *builder) takenLate(t source.Text, d *job.Dim, st *job.Step, u *job.Use) {
	p := source.Problem{Pos: markPos(t, string(u.Mark)), Severity: source.Error, Code: "taken-later"}
	for _, in := range u.Dims {
		first := in.FoundAt
		if first == nil || in.LeftAt != nil && in.LeftAt.Index < first.Index {
			first = in.LeftAt
		}
		switch {
		case first == nil:
			p.Message = d.Mark + " needs " + in.Mark + " at " + st.Name() + ", and no step reads it"
			p.Help = []string{"measure: [" + in.Base + "] at a step above " + st.No}
		case first == st:
			p.Message = d.Mark + " needs " + in.Mark + ", which stands below it at " + st.Name()
			p.Help = []string{"write " + in.Base + " before " + d.Base + " in the list"}
			p.See = []source.Also{{Pos: first.At, What: "the step that reads both"}}
		default:
			p.Message = d.Mark + " needs " + in.Mark + " at " + st.Name() + ", and it is read only at " + first.Name()
			p.Help = []string{"move the reading of " + in.Base + " above it"}
			p.See = []source.Also{{Pos: first.At, What: in.Mark + " is read here"}}
		}
	}
	b.problems = append(b.problems, p)
}
