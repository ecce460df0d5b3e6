package plan

import (
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// The states of a dimension while formulas are worked through.
const (
	notRead = iota
	beingRead
	isRead
)

// formulas sizes the boxes of what is worked out from other readings, each after
// its inputs.
func (p *planner) formulas() {
	state := map[*job.Dim]int{}
	for _, d := range p.job.Dims {
		p.formula(d, state, nil)
	}
}

// formula works through the formula of one dimension, after those it takes. path are
// the dimensions that wait for it.
func (p *planner) formula(d *job.Dim, state map[*job.Dim]int, path []*job.Dim) {
	v, t := d.Formula, d.Wrote.Formula
	if state[d] != notRead || v == nil {
		return
	}
	state[d] = beingRead
	defer func() { state[d] = isRead }()
	for _, u := range p.uses(d, v, t) {
		for _, in := range u.Dims {
			if state[in] == beingRead {
				p.ring(t, append(path, d), in)
				d.Formula = nil
				return
			}
			p.formula(in, state, append(path, d))
		}
	}
	if l := p.ladder(d, v, units.None, t); l != nil {
		p.formulaBox(d, t, l)
		d.TellTravel()
	}
}

// ring tells of dimensions that are worked out from each other.
func (p *planner) ring(t source.Text, path []*job.Dim, again *job.Dim) {
	var names []string
	for _, d := range path[slices.Index(path, again):] {
		names = append(names, d.Mark)
	}
	p.problems.Add(t.At, "worked-ring", "worked out from each other: "+strings.Join(names, " from ")+" from "+again.Mark, "measure one of them")
}

// formulaBox sizes the box of a reading that is worked out: as its limits ask, and
// with all decimals that the sum has, since rounding before a verdict can turn it. A
// reading without a verdict is rounded where its author says to how much.
func (p *planner) formulaBox(d *job.Dim, t source.Text, l *job.Ladder) {
	sum := l.Blank().Box
	if d.Wrote.By.Written() {
		p.problems.Add(d.Wrote.By.At, "worked-by", d.Mark+" is worked out, so nothing reads it", "take by: out, or the formula")
	}
	box := sum
	if limits := d.Limits(); len(limits) > 0 {
		asked, err := reading.BoxFor(limits, d.Hint)
		if err != nil {
			nines := units.Whole(1)
			for range sum.Before - 1 {
				nines = nines.Mul(units.Whole(10))
			}
			asked, err = reading.BoxFor(limits, reading.Hint{Nominal: &units.Quantity{Number: nines, Unit: sum.Unit}, Reads: &units.Quantity{Number: units.Exact(units.Whole(1).Rat(), sum.After), Unit: sum.Unit}})
		}
		if err != nil {
			p.problems.Add(t.At, "box-size", d.Base+": "+err.Error(), "for example found: record to … mm")
			return
		}
		if asked.Unit.Dimension() == units.Temperature && sum.Unit.Dimension() == units.Rise {
			rise := asked.Unit.RiseUnit().Text()
			p.problems.Add(d.LimitPos(), "rise", d.Mark+" works out how much warmer one is than the other, and its limit is a temperature in "+asked.Unit.Text()+": write "+rise, "60 to 80 "+rise)
			return
		}
		if asked.Unit.RiseUnit() != sum.Unit.RiseUnit() {
			p.problems.Add(t.At, "two-units", d.Mark+" works out in "+sum.Unit.Text()+", and its limit is in "+asked.Unit.Text(), "write the limit in "+sum.Unit.Text())
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
