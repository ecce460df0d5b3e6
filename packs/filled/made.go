package filled

import (
	"strings"

	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// Readings that are made of what was typed
//
//	pack of shims   sum of its leaves
//	stamped number  number × what one of it stands for
//	formula         the sum of the definition, exact
//	warm part       reading − growth for each degree × (part − 20 °C)
//
// What a person made of the same on paper is held against it: a difference is told, and
// of leaves and numbers, where nobody can say which of the two was misread, no value is
// taken.

// leaves adds the leaves of a pack up. Where the value of one is not sure there is no
// sum but the one on paper.
func (r *Result) leaves(d *job.Dim, when job.When, t *taken) {
	sum := units.Quantity{Unit: d.Box.Unit}
	var leaves []string
	var at source.Pos
	for i := range d.Leaves() {
		if r.Values.unsure[job.BlankKey(d.Mark, when, job.LeafBlank, i)] {
			return
		}
		e, there := r.entry(d, when, job.LeafBlank, i)
		if !there || e.Quantity == nil {
			continue
		}
		sum.Number = sum.Number.Add(e.Quantity.Number)
		leaves, at = append(leaves, e.Quantity.Number.Text()), e.At
	}
	switch e, there := r.entry(d, when, job.ReadingBlank, 0); {
	case len(leaves) == 0 || r.Values.unsure[job.BlankKey(d.Mark, when, job.ReadingBlank, 0)]:
	case !there || e.Quantity == nil:
		r.Problems.Warn(at, "no-leaf-sum", d.Mark+" "+sides[when]+": the sum of the leaves is not typed; "+strings.Join(leaves, " + ")+" make "+sum.Text()+", if that is all of them", "type the sum as well, from the paper")
		t.readings[0] = &sum
	case e.Quantity.Number.Cmp(sum.Number) != 0:
		r.Problems.Add(e.At, "leaf-sum", d.Mark+" "+sides[when]+": the leaves "+strings.Join(leaves, " + ")+" make "+sum.Text()+", and their sum is typed as "+e.Quantity.Text(), "look at the paper, and put the one right that differs")
		t.readings[0] = nil
	}
}

// Leaves are the thicknesses of a pack as typed, without unit; none if no leaf was.
func (r *Result) Leaves(d *job.Dim, when job.When) []string {
	var out []string
	for i := range d.Leaves() {
		if e, there := r.entry(d, when, job.LeafBlank, i); there && e.Quantity != nil {
			out = append(out, e.Quantity.Number.Print())
		}
	}
	return out
}

// stamped makes a size of the number on a part.
func (r *Result) stamped(d *job.Dim, when job.When, t *taken) {
	number, there := r.entry(d, when, job.NumberBlank, 0)
	if !there || number.Quantity == nil {
		return
	}
	size := units.Quantity{Number: number.Quantity.Number.Mul(d.OneIs.Number), Unit: d.OneIs.Unit}
	if e, typed := r.entry(d, when, job.ReadingBlank, 0); typed && e.Quantity != nil {
		if c, err := e.Quantity.Cmp(size); err == nil && c != 0 {
			r.Problems.Add(e.At, "number-size", d.Mark+" "+sides[when]+": the number "+number.Quantity.Number.Text()+" makes "+size.Text()+", and the size is typed as "+e.Quantity.Text(), "look at the paper, and put the one right that differs")
			t.readings[0] = nil
			return
		}
	}
	t.readings[0] = &size
}

// formula works a dimension out from its inputs. Where one is missing, what the person
// at the machine worked out stands.
func (r *Result) formula(d *job.Dim, when job.When, t *taken) {
	l := working(d, when).Formula
	if l == nil {
		return
	}
	env := r.env(d, l)
	for i := range t.readings {
		q, err := d.Formula.WorkAt(env, i, len(t.readings))
		if err != nil {
			continue
		}
		if e, typed := r.entry(d, when, job.ResultBlank, i); typed && e.Quantity != nil {
			r.sumAgrees(e, q, d.Box)
		}
		t.readings[i] = &q
	}
}

// sumAgrees holds what a person worked out against what comes out. A box that rounds
// may hold either of the two values that the last digit can have.
func (r *Result) sumAgrees(e Entry, q units.Quantity, box reading.Box) {
	off := e.Quantity.Number.Sub(q.Number).Abs()
	step := units.Exact(units.Whole(1).Rat(), box.After).Step()
	if box.Form == reading.Digits && off.Cmp(step) < 0 {
		return
	}
	if off.Sign() == 0 {
		return
	}
	r.Problems.Warn(e.At, "sum-differs", e.Blank.Dim.Mark+" "+sides[e.Blank.When]+inBrackets(position(e.Blank))+": worked out by hand as "+e.Quantity.Text()+", and the readings make "+printed(q, box)+": the readings are used", "look at the paper: a reading was misread, or the sum")
}

// printed is a quantity with the digits of a box, as it is typed.
func printed(q units.Quantity, box reading.Box) string {
	return Rounded(q, box).Text()
}

// Rounded is a quantity with the digits of a box.
func Rounded(q units.Quantity, box reading.Box) units.Quantity {
	if box.Form == reading.Fraction {
		return units.Quantity{Number: units.Parts(q.Number.Rat(), box.Denominator), Unit: q.Unit}
	}
	return q.Round(box.After, units.Nearest)
}

// Ends are the two ends of a limit with the digits of a box: the lower one up and the
// upper one down, so that no reading of those digits is let in that is out.
func Ends(low, high units.Quantity, box reading.Box) (units.Quantity, units.Quantity) {
	if box.Form == reading.Fraction {
		return Rounded(low, box), Rounded(high, box) // a fraction is written as it is
	}
	return low.Round(box.After, units.Up), high.Round(box.After, units.Down)
}

// moreDigits is how many digits beyond those of the box are told of what is worked out
// for it: rounding an end of a limit could let a reading in that is out.
const moreDigits = 2

// Exactly is what is worked out for a box with the digits that it needs, at least those
// of the box and at most two more. A lower end of a limit is rounded up and an upper one
// down: rounding never lets a reading in.
func Exactly(q units.Quantity, box reading.Box, how units.Rounding) units.Quantity {
	if box.Form == reading.Fraction {
		return Rounded(q, box)
	}
	after := min(max(units.Exact(q.Number.Rat(), box.After).Decimals(), box.After), box.After+moreDigits)
	return q.Round(after, how)
}

// cooled takes off a reading what it is too large by because its part is warm.
func (r *Result) cooled(d *job.Dim, when job.When, t *taken) {
	e, there := r.entry(d, when, job.PartBlank, 0)
	if d.Warm == nil || !there || e.Quantity == nil {
		return
	}
	over, err := e.Quantity.Sub(d.Warm.At)
	if err != nil {
		return
	}
	growth := units.Quantity{Number: over.Number.Mul(d.Warm.PerDegree.Number), Unit: d.Warm.PerDegree.Unit}
	for i, q := range t.readings {
		if q == nil {
			continue
		}
		if cold, err := q.Sub(growth); err == nil {
			t.readings[i] = &cold
		}
	}
}

// wholesAgree holds the mean, the spread and the sum as worked out on paper against the
// readings.
func (r *Result) wholesAgree(d *job.Dim, when job.When) {
	for _, g := range []reading.Group{reading.Mean, reading.Spread, reading.Sum} {
		e, there := r.entry(d, when, job.GroupBlank, int(g))
		if !there || e.Quantity == nil {
			continue
		}
		all := r.raw(d, when)
		if d.In != nil { // its block has one box for all of them
			all = nil
			for _, x := range d.In.Merged {
				all = append(all, r.raw(x, when)...)
			}
		}
		if q, err := reading.Together(g, all); err == nil {
			r.sumAgrees(e, q, e.Blank.Box)
		}
	}
}

// raw are the readings as they stand in the boxes.
func (r *Result) raw(d *job.Dim, when job.When) []*units.Quantity {
	t := r.readings(d, when)
	if d.Warm == nil {
		return t.readings
	}
	out := make([]*units.Quantity, len(t.readings))
	for i := range out {
		if e, there := r.entry(d, when, d.ReadingKind(), i); there {
			out[i] = e.Quantity
		}
	}
	return out
}
