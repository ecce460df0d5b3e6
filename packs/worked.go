package packs

import (
	"matchmark/packs/job"
	"matchmark/packs/source"
	"slices"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// readFormulas reads what dimensions are worked out from, each after its inputs,
// and sizes the boxes of their results.
func (b *builder) readFormulas() {
	state := map[*job.Dim]int{}
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
func (b *builder) readFormula(d *job.Dim, dd *def.Dimension, state map[*job.Dim]int, path []*job.Dim) {
	t := textAt(d.Place, dd.Formula)
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
func (b *builder) workedRing(t source.Text, path []*job.Dim, again *job.Dim) {
	var names []string
	for _, d := range path[slices.Index(path, again):] {
		names = append(names, d.Mark)
	}
	b.problems.Add(t.At, "worked-ring", "worked out from each other: "+strings.Join(names, " from ")+" from "+again.Mark, "measure one of them")
}

func (b *builder) dimDef(d *job.Dim) *def.Dimension {
	for _, dd := range b.def.Dimensions {
		if dd.Mark.Value == d.Base {
			return dd
		}
	}
	return nil
}

// uses resolves the marks of a value, each to one dimension, or to several where
// they are taken together. Marks that are no reading are told by checkMarks.
func (b *builder) uses(d *job.Dim, v *reading.Value, t source.Text) []job.Use {
	var out []job.Use
	single := v.Singles()
	for _, m := range v.Marks() {
		var dims []*job.Dim
		key, label, named := cut(string(m))
		for _, e := range b.dims[key] {
			if named && e.Place.Label == label || !named && e.Place.Agrees(d.Place) {
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
		out = append(out, job.Use{Mark: m, Dims: dims})
	}
	return out
}

// ladder writes the sum of a value, in a unit if that is known; nil where an input
// is not known or cannot be taken.
func (b *builder) ladder(d *job.Dim, v *reading.Value, unit units.Unit, t source.Text) *job.Ladder {
	l := &job.Ladder{Text: v.Text(), Uses: b.uses(d, v, t)}
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
		g.Summed = len(u.Dims) == 1 && g.Boxes >= leastSummed
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

// leastSummed is how many readings of one dimension are added up where they stand;
// fewer are copied one by one.
const leastSummed = 3

// widest is a box that takes the readings of both.
func widest(a, b reading.Box) reading.Box {
	if a.Unit == units.None {
		return b
	}
	a.Before, a.After = max(a.Before, b.Before), max(a.After, b.After)
	a.Denominator, a.Signed = max(a.Denominator, b.Denominator), a.Signed || b.Signed
	return a
}

// formulaBox sizes the box of a reading that is worked out: as its limits ask, and
// with all decimals that the sum has, since rounding before a verdict can turn it. A
// reading without a verdict is rounded where its author says to how much.
func (b *builder) formulaBox(d *job.Dim, dd *def.Dimension, t source.Text, l *job.Ladder) {
	sum := l.Blank().Box
	if dd.By.Written() {
		b.problems.Add(dd.By.At, "worked-by", d.Mark+" is worked out, so nothing reads it", "take by: out, or the formula")
	}
	box := sum
	if limits := d.Limits(); len(limits) > 0 {
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
		if asked.Unit.Dimension() == units.Temperature && sum.Unit.Dimension() == units.Rise {
			rise := asked.Unit.RiseUnit().Text()
			b.problems.Add(limitPos(dd, d.Place), "rise", d.Mark+" works out how much warmer one is than the other, and its limit is a temperature in "+asked.Unit.Text()+": write "+rise, "60 to 80 "+rise)
			return
		}
		if asked.Unit.RiseUnit() != sum.Unit.RiseUnit() {
			b.problems.Add(t.At, "two-units", d.Mark+" works out in "+sum.Unit.Text()+", and its limit is in "+asked.Unit.Text(), "write the limit in "+sum.Unit.Text())
			return
		}
		box = asked
		if d.RecordOnly() && asked.Form == reading.Digits && asked.After < sum.After {
			box.Before, box.Signed = max(asked.Before, sum.Before), asked.Signed || sum.Signed
			d.Box = box
			return
		}
		box.After, box.Denominator, box.Signed = max(asked.After, sum.After), max(asked.Denominator, sum.Denominator), asked.Signed || sum.Signed
	}
	d.Box = box
}
