package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// workedInTry are the readings of a step that are worked out from what each of its tries reads:
// every try has its own, for nobody rubs out the sum of the try before. What ends the step has
// its box anyway.
func workedInTry(st *job.Step) []*job.Dim {
	if st.Until == nil {
		return nil
	}
	read := []*job.Dim{st.Until.Dim}
	for _, a := range st.EachTry {
		read = append(read, a.Dim)
	}
	var out []*job.Dim
	own := slices.Concat(st.Measure, st.Set)
	for grown := true; grown; { // one may be worked out from another
		grown = false
		for _, d := range own {
			if d.Formula == nil || slices.Contains(read, d) || !slices.ContainsFunc(read, func(x *job.Dim) bool { return takes(d, x) }) {
				continue
			}
			read, out, grown = append(read, d), append(out, d), true
		}
	}
	return out
}

// takes reports whether a reading is worked out from another, by its mark or by its mark
// without the place.
func takes(d, from *job.Dim) bool {
	return from != nil && slices.ContainsFunc(d.Formula.Marks(), func(m reading.Mark) bool {
		return string(m) == from.Mark || string(m) == from.Base && (from.Place.Label == "" || from.Place.Label == d.Place.Label)
	})
}

// workedBoxes are the boxes of the readings that one try has worked out: those toward what
// ends the step, which stand before its box, and the others.
func workedBoxes(c *block.Composer, st *job.Step) (toward, other []layout.Block) {
	worked := workedInTry(st)
	for _, d := range worked {
		caption := d.Mark + ", " + string(c.W.Limit[reading.WordWorkedOut])
		if unit := c.W.Unit(d.Box.Unit.Print()); unit != "" {
			caption += ", " + unit
		}
		boxes := placeBoxes(c, d, caption)
		if leadsTo(d, st.Until.Dim, worked) {
			toward = append(toward, boxes...)
		} else {
			other = append(other, boxes...)
		}
	}
	return toward, other
}

// leadsTo reports whether a reading is worked out from another, or from one of those between
// that is. A reading is never worked out from itself, so this ends.
func leadsTo(from, d *job.Dim, between []*job.Dim) bool {
	if d == nil || d.Formula == nil {
		return false
	}
	return takes(d, from) || slices.ContainsFunc(between, func(m *job.Dim) bool {
		return m != from && m != d && takes(d, m) && leadsTo(from, m, between)
	})
}
