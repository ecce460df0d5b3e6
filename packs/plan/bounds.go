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
	low, high := d.Expected()
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
