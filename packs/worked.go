package packs

import (
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Worked is what a dimension has besides boxes when it is worked out from other
// readings, or read off a part as a number.
type Worked struct {
	Formula *reading.Value  // nil for a reading off a scale
	Stamped Face            // where the number stands, if it is stamped on a part
	OneIs   *units.Quantity // what one of that number stands for, nil for a full size
	Number  reading.Box     // the box of that number

	FoundWork, LeftWork Working // as done on the traveler and in putting back
}

// A Working is what is worked out by hand where a dimension is read.
type Working struct {
	Formula *Ladder
	Limits  []LimitLadder // of the limit for closing and of that for old parts
	Late    *Use          // a reading of the limits that is not there yet; then Limits is empty
}

// A Ladder is one sum by hand.
type Ladder struct {
	Text  string         // as written in the definition
	Rungs []reading.Rung // inputs first, the result in the last blank
	Uses  []Use          // where each input was written
	Each  bool           // done for every position of the dimension
}

// A Use is a reading that a ladder takes, with the sheet on which it stands.
type Use struct {
	Mark reading.Mark // as written
	Dims []*Dim       // one, or those of several places taken together
	Left bool         // the value left, written in putting back
}

// A LimitLadder works out the ends of one test of a limit: At of a nominal size,
// else Low, High or both.
type LimitLadder struct {
	Limit         *reading.Limit // the dimension's Left, Reuse or Repair
	Test          *reading.Test
	At, Low, High *Ladder
}

// readFormulas reads what dimensions are worked out from, each after its inputs,
// and sizes the boxes of their results.
func (b *builder) readFormulas() {
	state := map[*Dim]int{}
	for _, dd := range b.def.Dimensions {
		for _, d := range b.dims[dd.Mark.Value] {
			b.readFormula(d, dd, state, nil)
		}
	}
}

// The states of a dimension while formulas are read.
const (
	notRead = iota
	beingRead
	isRead
)

// readFormula reads the formula of one dimension, after those it takes. path are
// the dimensions that wait for it.
func (b *builder) readFormula(d *Dim, dd *def.Dimension, state map[*Dim]int, path []*Dim) {
	t := d.Place.at(dd.Formula)
	if state[d] != notRead || !t.Written() {
		return
	}
	state[d] = beingRead
	defer func() { state[d] = isRead }()
	v, fault := reading.ParseFormula(t.Value)
	if fault != nil {
		b.fault(t, fault)
		return
	}
	for _, u := range b.uses(d, v, t) {
		for _, in := range u.Dims {
			if state[in] == beingRead {
				b.workedRing(t, append(path, d), in)
				return
			}
			b.readFormula(in, b.dimDef(in), state, append(path, d))
		}
	}
	d.Formula = v
	l := b.ladder(d, v, units.None, t)
	if l == nil {
		return
	}
	b.formulaBox(d, dd, t, l)
}

// workedRing tells of dimensions that are worked out from each other.
func (b *builder) workedRing(t def.Text, path []*Dim, again *Dim) {
	var names []string
	for _, d := range path[slices.Index(path, again):] {
		names = append(names, d.Mark)
	}
	b.problems.Add(t.At, "worked-ring", "worked out from each other: "+strings.Join(names, " from ")+" from "+again.Mark, "measure one of them")
}

func (b *builder) dimDef(d *Dim) *def.Dimension {
	for _, dd := range b.def.Dimensions {
		if dd.Mark.Value == d.Base {
			return dd
		}
	}
	return nil
}

// uses resolves the marks of a value, each to one dimension, or to several where
// they are taken together. Marks that are no reading are told by checkMarks.
func (b *builder) uses(d *Dim, v *reading.Value, t def.Text) []Use {
	var out []Use
	single := v.Singles()
	for _, m := range v.Marks() {
		var dims []*Dim
		key, label, named := cut(string(m))
		for _, e := range b.dims[key] {
			if named && e.Place.Label == label || !named && e.Place.agrees(d.Place) {
				dims = append(dims, e)
			}
		}
		switch {
		case len(dims) == 0 || slices.Contains(dims, d): // told by checkMarks
			continue
		case len(dims) > 1 && slices.Contains(single, m):
			b.problems.Add(markPos(t, string(m)), "which-place", string(m)+" is read at several places", "name one: "+dims[0].Mark, "or take them together: mean of "+string(m))
			continue
		}
		out = append(out, Use{Mark: m, Dims: dims})
	}
	return out
}

// ladder writes the sum of a value, in a unit if that is known; nil where an input
// is not known or cannot be taken.
func (b *builder) ladder(d *Dim, v *reading.Value, unit units.Unit, t def.Text) *Ladder {
	l := &Ladder{Text: v.Text(), Uses: b.uses(d, v, t)}
	if len(l.Uses) != len(v.Marks()) {
		return nil
	}
	given := map[reading.Mark]reading.Given{"": {Box: d.Box, Boxes: d.Positions.Boxes(), Once: true}}
	for _, u := range l.Uses {
		g := reading.Given{}
		for _, in := range u.Dims {
			if in.Box.Form != reading.Digits && in.Box.Form != reading.Fraction {
				b.problems.Add(t.At, "not-a-number", in.Mark+" is answered, not measured: nothing can be worked out from it", "name a reading in numbers")
				return nil
			}
			if in.Box.Unit == units.None || unit != units.None && !alike(unit, in.Box.Unit) {
				return nil // told elsewhere
			}
			g.Box = widest(g.Box, in.Box)
			g.Boxes += in.Positions.Boxes()
		}
		g.Once = g.Boxes > 1 && len(u.Dims) == 1 && g.Boxes == d.Positions.Boxes()
		given[u.Mark] = g
		l.Each = l.Each || g.Once && slices.Contains(v.Singles(), u.Mark)
	}
	l.Each = l.Each || v.NeedsFound() && d.Positions.Boxes() > 1
	rungs, _, err := v.Rungs(func(m reading.Mark) reading.Given { return given[m] })
	if err != nil {
		b.problems.Add(t.At, "by-hand", d.Mark+": "+err.Error(), "formula: D1 - D2, both in the same unit")
		return nil
	}
	l.Rungs = rungs
	return l
}

// widest is a box that takes the readings of both.
func widest(a, b reading.Box) reading.Box {
	if a.Unit == units.None {
		return b
	}
	a.Before, a.After = max(a.Before, b.Before), max(a.After, b.After)
	a.Denominator, a.Signed = max(a.Denominator, b.Denominator), a.Signed || b.Signed
	return a
}

// Result is the box of the whole sum.
func (l *Ladder) Result() reading.Box { return l.result().Box }

// result is the blank that the whole sum is written in.
func (l *Ladder) result() *reading.Part {
	last := l.Rungs[len(l.Rungs)-1].Parts
	for i := len(last) - 1; i >= 0; i-- {
		if last[i].Blank != reading.NoBlank {
			return &last[i]
		}
	}
	return &last[len(last)-1]
}

// formulaBox sizes the box of a reading that is worked out: as its limits ask, and
// with all decimals that the sum has, since rounding before a verdict can turn it.
func (b *builder) formulaBox(d *Dim, dd *def.Dimension, t def.Text, l *Ladder) {
	sum := l.result().Box
	if dd.By.Written() {
		b.problems.Add(dd.By.At, "worked-by", d.Mark+" is worked out, so nothing reads it", "take by: out, or the formula")
	}
	box := sum
	if limits := d.limits(); len(limits) > 0 {
		asked, err := reading.BoxFor(limits, b.hint(d, dd))
		if err != nil {
			nines := units.Whole(1)
			for range sum.Before - 1 {
				nines = nines.Mul(units.Whole(10))
			}
			asked, err = reading.BoxFor(limits, reading.Hint{Nominal: &units.Quantity{Number: nines, Unit: sum.Unit}, Reads: &units.Quantity{Number: units.Exact(units.Whole(1).Rat(), sum.After), Unit: sum.Unit}})
		}
		if err != nil {
			b.problems.Add(t.At, "box-size", d.Base+": "+err.Error(), "found: record to 0.01 mm")
			return
		}
		if asked.Unit.RiseUnit() != sum.Unit.RiseUnit() {
			b.problems.Add(t.At, "two-units", d.Mark+" works out in "+sum.Unit.Text()+", and its limit is in "+asked.Unit.Text(), "write the limit in "+sum.Unit.Text())
			return
		}
		box = asked
		box.After, box.Denominator, box.Signed = max(asked.After, sum.After), max(asked.Denominator, sum.Denominator), asked.Signed || sum.Signed
	}
	d.Box = box
}

// readStamped takes over where a number stands on a part, and what one of it is.
func (b *builder) readStamped(d *Dim, dd *def.Dimension) {
	d.Stamped = b.faceAt(dd.StampedOn, d.Place)
	if !dd.OneIs.Written() {
		return
	}
	if d.Stamped.Part == nil {
		b.problems.Add(dd.OneIs.At, "one-of-what", d.Mark+" says what one is, but not where the number stands", "stamped-on: {wheel: rim}")
		return
	}
	if q, ok := b.quantity(dd.OneIs, "0.01 mm"); ok {
		if q.Number.Sign() <= 0 {
			b.problems.Add(dd.OneIs.At, "one-of-what", "one is "+q.Text()+": a step is more than nothing", "one-is: 0.01 mm")
			return
		}
		d.OneIs = &q
		d.Number = reading.Box{Before: stampedFigures, Signed: true}
		most := q.Number.Mul(units.Whole(999))
		d.Box = reading.Box{Before: most.Figures(), After: q.Number.Decimals(), Signed: true, Unit: q.Unit}
	}
}

// stampedFigures is how many figures a number stamped on a part may have: common
// practice, no source.
const stampedFigures = 3

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
	}
}

// working writes the ladders of a dimension at one step.
func (b *builder) working(d *Dim, dd *def.Dimension, st *Step, back bool) Working {
	var w Working
	if t := d.Place.at(dd.Formula); d.Formula != nil && d.Box.Unit != units.None {
		if w.Formula = b.ladder(d, d.Formula, units.None, t); w.Formula != nil {
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
	for _, x := range []written{{d.Left, d.Place.at(dd.Left)}, {d.Reuse, d.Place.at(dd.Reuse)}, {d.Repair, d.Place.at(dd.Repair)}} {
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
			w.Late = late
			if back {
				b.takenLate(x.text, d, st, late)
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

// oldNumber sees that the number stamped on a part that is renewed is read off the
// new one before it is used.
func (b *builder) oldNumber(d *Dim) {
	p := d.Stamped.Part
	if p == nil || d.FoundAt == nil {
		return
	}
	for _, m := range p.Back {
		if m.New && d.FoundAt.Index < m.Step.Index && (d.LeftAt == nil || d.LeftAt.Index < m.Step.Index) {
			b.problems = append(b.problems, source.Problem{
				Pos: b.measuredPos(d), Severity: source.Error, Code: "old-number",
				Message: d.Mark + " is read off the old " + p.Name + " at " + d.FoundAt.name() + ", and a new one goes on at " + m.Step.name(),
				Help:    []string{"read the number of the new one: set: [" + d.Base + "] at the step that fits it"},
				See:     []source.Also{{Pos: m.At, What: "the new one goes on here"}},
			})
		}
	}
}
