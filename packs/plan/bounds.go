package plan

import (
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// checkBound warns of a condition that every reading which can be expected fulfils, or
// none: D2 is over 0.50 mm, where D2 is about 25 mm.
func (p *planner) checkBound(t source.Text, c *reading.Condition, d *job.Dim) {
	bound := (&reading.Test{Rule: reading.About, At: c.Value, Unit: boundUnit(c)}).About()
	low, high := p.expected(d)
	if bound == nil {
		return
	}
	two := units.Whole(2)
	// far and near are half the least and twice the most that can be expected.
	under := low != nil && low.Sign() > 0 && bound.Number.Mul(two).Cmp(*low) <= 0
	over := high != nil && high.Sign() > 0 && bound.Number.Cmp(high.Mul(two)) >= 0
	// A gap may wear to many times what it should be; a size of 25 mm does not.
	size := low != nil && high != nil && low.Sign() > 0 && high.Sub(*low).Mul(units.Whole(5)).Cmp(*low) <= 0
	what := ""
	switch asksOver := c.Ask == reading.AskOver; {
	case under && asksOver, over && !asksOver:
		what = "any reading is"
	case size && (over && asksOver || under && !asksOver):
		what = "no reading is"
	default:
		return
	}
	expected := low
	if expected == nil {
		expected = high
	}
	p.problems.WarnWith(t.At, "bound", c.Text()+": "+what+", for "+d.Mark+" is about "+units.Quantity{Number: *expected, Unit: d.Box.Unit}.Text(), d.At, d.Mark,
		"put the number right, or ask about the reading that is meant")
}

// expected gives the least and the most that a reading should be, by its limits and its
// nominal size; nil where nothing says it.
func (p *planner) expected(d *job.Dim) (low, high *units.Number) {
	take := func(q *units.Quantity, is **units.Number, sign int) {
		if q == nil {
			return
		}
		c, err := q.Convert(d.Box.Unit)
		if err == nil && (*is == nil || c.Number.Cmp(**is) == sign) {
			*is = &c.Number
		}
	}
	atMost := false // a limit that has no lower end
	for _, l := range d.Limits() {
		for i := range l.Tests {
			t := &l.Tests[i]
			if t.Group == reading.Spread || t.Group == reading.Sum {
				continue
			}
			from, to, ok := t.Limits()
			if about := t.About(); about != nil {
				from, to, ok = about, about, true
			}
			if !ok {
				return nil, nil
			}
			atMost = atMost || from == nil
			take(from, &low, -1)
			take(to, &high, 1)
		}
	}
	if nominal := d.Hint.Nominal; nominal != nil {
		take(nominal, &low, -1)
		take(nominal, &high, 1)
		atMost = false
	}
	if atMost {
		low = nil
	}
	return low, high
}
