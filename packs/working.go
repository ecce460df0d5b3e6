package packs

import (
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
		b.oldNumber(d)
		if d.FoundAt != nil {
			d.FoundWork = b.working(d, dd, d.FoundAt, false)
		}
		if d.LeftAt != nil {
			d.LeftWork = b.working(d, dd, d.LeftAt, true)
		}
		for _, w := range []Working{d.FoundWork, d.LeftWork} {
			w.Formula.askSums()
			for _, l := range w.Limits {
				l.At.askSums()
				l.Low.askSums()
				l.High.askSums()
			}
		}
	}
}

// askSums sees that a sum which the ladder copies is worked out where its readings
// stand.
func (l *Ladder) askSums() {
	if l == nil {
		return
	}
	for _, r := range l.Rungs {
		for _, p := range r.Parts {
			if p.Blank != reading.BlankReading || p.Index != reading.WholeOf(reading.WordSumOf) {
				continue
			}
			for _, u := range l.Uses {
				if u.Mark == p.Mark && len(u.Dims) == 1 {
					u.Dims[0].SumFound = u.Dims[0].SumFound || !u.Left
					u.Dims[0].SumLeft = u.Dims[0].SumLeft || u.Left
				}
			}
		}
	}
}

// working writes the ladders of a dimension at one step.
func (b *builder) working(d *Dim, dd *def.Dimension, st *Step, back bool) Working {
	var w Working
	if t := d.Place.at(dd.Formula); d.Formula != nil && d.Box.Unit != units.None {
		if w.Formula = b.ladder(d, d.Formula, units.None, t); w.Formula != nil {
			w.Formula.roundTo(d.Box)
			w.Formula.result().Box = d.Box
			if late := b.taken(w.Formula.Uses, d, st, back); late != nil {
				b.takenLate(t, d, st, late)
				w.Formula = nil
			}
		}
	}
	if d.Box.Unit == units.None {
		return w
	}
	lines := []written{{d.Left, d.Place.at(dd.Left)}, {d.Reuse, d.Place.at(dd.Reuse)}, {d.Repair, d.Place.at(dd.Repair)}}
	if d.WatchedOnly() && !back {
		lines = []written{{d.Found, d.Place.at(dd.Found)}}
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
func (b *builder) limitLadder(d *Dim, x written, i int, st *Step, back bool, w *Working) (LimitLadder, bool) {
	l := LimitLadder{Limit: x.limit, Test: &x.limit.Tests[i]}
	for _, end := range []struct {
		v  *reading.Value
		to **Ladder
	}{{l.Test.At, &l.At}, {l.Test.Low, &l.Low}, {l.Test.High, &l.High}} {
		if end.v == nil || len(end.v.Marks()) == 0 && (!end.v.NeedsFound() || end.v.JustFound()) || end.v.NeedsFound() && !back {
			continue // nothing to work out, or not yet
		}
		ladder := b.ladder(d, end.v, x.limit.Unit(), x.text)
		if ladder == nil {
			continue
		}
		if u := ladder.result().Box.Unit; u.RiseUnit() != d.Box.Unit.RiseUnit() {
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
func (b *builder) taken(uses []Use, d *Dim, st *Step, back bool) *Use {
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
func before(in *Dim, at *Step, inLeft bool, d *Dim, st *Step, back bool) bool {
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
func (b *builder) takenLate(t def.Text, d *Dim, st *Step, u *Use) {
	p := source.Problem{Pos: markPos(t, string(u.Mark)), Severity: source.Error, Code: "taken-later"}
	for _, in := range u.Dims {
		first := in.FoundAt
		if first == nil || in.LeftAt != nil && in.LeftAt.Index < first.Index {
			first = in.LeftAt
		}
		switch {
		case first == nil:
			p.Message = d.Mark + " needs " + in.Mark + " at " + st.name() + ", and no step reads it"
			p.Help = []string{"measure: [" + in.Base + "] at a step above " + st.No}
		case first == st:
			p.Message = d.Mark + " needs " + in.Mark + ", which stands below it at " + st.name()
			p.Help = []string{"write " + in.Base + " before " + d.Base + " in the list"}
			p.See = []source.Also{{Pos: first.At, What: "the step that reads both"}}
		default:
			p.Message = d.Mark + " needs " + in.Mark + " at " + st.name() + ", and it is read only at " + first.name()
			p.Help = []string{"move the reading of " + in.Base + " above it"}
			p.See = []source.Also{{Pos: first.At, What: in.Mark + " is read here"}}
		}
	}
	b.problems = append(b.problems, p)
}
