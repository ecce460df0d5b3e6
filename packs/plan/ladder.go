package plan

import (
	"slices"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// uses lists the readings that a value takes, each one dimension, or several where
// they are taken together. Marks that are no reading are told elsewhere.
func (p *planner) uses(d *job.Dim, v *reading.Value, t source.Text) []job.Use {
	var out []job.Use
	single := v.Singles()
	for _, m := range v.Marks() {
		dims := d.Ref(m)
		switch {
		case len(dims) == 0 || slices.Contains(dims, d):
			continue
		case len(dims) > 1 && slices.Contains(single, m):
			p.problems.Add(t.PlaceOf(string(m)), "which-place", string(m)+" is read at several places", "name one: "+dims[0].Mark, "or take them together: mean of "+string(m))
			continue
		}
		out = append(out, job.Use{Mark: m, Dims: dims})
	}
	return out
}

// ladder writes the sum of a value, in a unit if that is known; nil where an input
// is not known or cannot be taken.
func (p *planner) ladder(d *job.Dim, v *reading.Value, unit units.Unit, t source.Text) *job.Ladder {
	l := &job.Ladder{Text: v.Text(), Uses: p.uses(d, v, t)}
	if len(l.Uses) != len(v.Marks()) {
		return nil
	}
	given := map[reading.Mark]reading.Given{"": {Box: d.Box, Boxes: d.Positions.Boxes(), Once: true}}
	for _, u := range l.Uses {
		g := reading.Given{}
		for _, in := range u.Dims {
			if in.Box.Form != reading.Digits && in.Box.Form != reading.Fraction {
				p.problems.Add(t.At, "not-a-number", in.Mark+" is answered, not measured: nothing can be worked out from it", "name a reading in numbers")
				return nil
			}
			if in.Box.Unit == units.None || unit != units.None && unit.Dimension() != in.Box.Unit.Dimension() {
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
		p.problems.Add(t.At, "by-hand", d.Mark+": "+err.Error(), "formula: D1 - D2, both in the same unit")
		return nil
	}
	l.Rungs, l.Value, l.Given = rungs, v, given
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
