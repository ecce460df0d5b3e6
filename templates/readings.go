package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/dimension"
)

// readings sets the sheets of the dimensions with so many boxes that they need a
// sheet of their own: matrices of places, logs over time. They lie across, and hold
// the boxes found and those left below each other, so that nothing is copied.
func readings(c *composer) []layout.Piece {
	var out []layout.Piece
	done := map[*job.Dim]bool{}
	for _, d := range c.Job.Dims {
		if d.In != nil {
			d = d.In
		}
		if d.Sheet && !done[d] {
			done[d] = true
			out = append(out, dimension.Matrix(c.Composer, d)...)
		}
	}
	return out
}
