package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
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

// workedBoxes are the boxes of the readings that one try has worked out.
func workedBoxes(c *block.Composer, st *job.Step) []layout.Block {
	var out []layout.Block
	for _, d := range workedInTry(st) {
		caption := d.Mark + ", " + string(c.W.Limit[reading.WordWorkedOut])
		if unit := c.W.Unit(d.Box.Unit.Print()); unit != "" {
			caption += ", " + unit
		}
		out = append(out, dimension.Box(c, d, dimension.Side{}, caption, false))
	}
	return out
}
