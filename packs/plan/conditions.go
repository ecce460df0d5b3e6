package plan

import (
	"cmp"
	"slices"
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// conditions takes away the conditions whose reading cannot be looked at in the way
// that is asked.
func (p *planner) conditions() {
	for _, s := range p.job.Sections {
		for _, st := range s.Steps {
			for _, a := range []**job.Asked{&st.If, &st.Until} {
				if x := *a; x != nil && x.Dim != nil && !p.canBeAsked(x) {
					*a = nil
				}
			}
		}
	}
}

// canBeAsked sees that the reading of a condition can be looked at in this way.
func (p *planner) canBeAsked(a *job.Asked) bool {
	t := a.Wrote
	c, d := a.Cond, a.Dim
	digits := d.Box.Form == reading.Digits || d.Box.Form == reading.Fraction
	switch c.Ask {
	case reading.AskIn, reading.AskOut:
		if !d.Judged() {
			p.noVerdict(a)
			return false
		}
	case reading.AskOver, reading.AskUnder:
		bound := boundUnit(c)
		switch {
		case len(c.Value.Marks()) > 0:
			p.problems.Add(t.At, "two-readings", "a condition compares one reading with a size: "+t.Value, "make the difference a dimension of its own (formula: D3 - D4), and ask about that")
			return false
		case !digits:
			p.problems.Add(t.At, "not-a-number", d.Mark+" is answered, not measured: it is neither over nor under", d.Base+" is "+answerOf(d))
			return false
		case d.Box.Unit != units.None && bound != units.None && bound != d.Box.Unit:
			p.problems.Add(t.At, "two-units", d.Mark+" is in "+d.Box.Unit.Text()+" and the condition in "+bound.Text(), "write the condition in "+d.Box.Unit.Text())
			return false
		}
		p.checkBound(t, c, d)
	case reading.AskState:
		if known := d.Answers(); !slices.Contains(known, c.State) {
			help := d.Base + " is over … " + unitOf(d)
			if len(known) > 0 {
				help = "its answers: " + strings.Join(known, ", ")
			}
			p.problems.Add(t.At, "no-answer", source.Quote(c.State)+" is no answer that "+d.Mark+" can have", help)
			return false
		}
	}
	return true
}

// noVerdict tells of a condition on the verdict of a reading that has none. One that is only read
// as found has its limit there, and is asked about by the size itself.
func (p *planner) noVerdict(a *job.Asked) {
	d := a.Dim
	asks := d.Base + " is over … " + unitOf(d)
	switch {
	case len(d.Answers()) > 0:
		asks = d.Base + " is " + answerOf(d)
	case d.JudgedFound():
		p.problems.Add(a.Wrote.At, "no-verdict", d.Mark+" has a limit as found alone, and a condition asks of the one as left", asks, d.Base+" is under … "+unitOf(d))
		return
	}
	p.problems.Add(a.Wrote.At, "no-verdict", d.Mark+" has no limit that it could be in or out of", "left: … to … "+unitOf(d)+", at "+d.Base, asks)
}

// unitOf is the unit that the box of a reading stands in, mm where nothing tells it.
func unitOf(d *job.Dim) string { return cmp.Or(d.Box.Unit.Text(), units.Millimetre.Text()) }

// boundUnit is the unit of the size that a reading is over or under.
func boundUnit(c *reading.Condition) units.Unit {
	for _, t := range c.Value.Terms {
		if t.Item.Kind == reading.Size || t.Item.Kind == reading.Rate {
			return t.Item.Size.Unit
		}
	}
	return units.None
}

func answerOf(d *job.Dim) string { return append(d.Answers(), "…")[0] }
