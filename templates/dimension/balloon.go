package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// balloonW is the width of the column of the mark in its ring.
const balloonW layout.Mm = 20

// ring is the mark in a ring.
func ring(c *block.Composer, d *job.Dim) layout.Block {
	mark := c.Words(layout.StepNo, d.Base)
	r := max(mark.W/2+1.5, 5.8)
	ring := layout.Drawn(2*r, 2*r, layout.Item{Shape: layout.Path{Ops: layout.Circle(layout.Point{X: r, Y: r}, r), Weight: layout.Outline}})
	return layout.Overlay(ring, mark.Fill(2*r, 2*r, 0.5, 0.5))
}

// balloon is the mark in a ring, its place below.
func balloon(c *block.Composer, d *job.Dim) layout.Block {
	ring := ring(c, d).Center(balloonW)
	if d.Place.Label == "" {
		return ring
	}
	return layout.Above(1, ring, fullMark(c, d, balloonW-2, layout.Centered).At(1, 0))
}

// fullMark is the mark with its place, in smaller type where there are two places,
// as in D12/NDE-DIS.
func fullMark(c *block.Composer, d *job.Dim, width layout.Mm, a layout.Align) layout.Block {
	style := layout.SubBold
	text := d.Mark
	if c.Width(style, text) > width {
		style = layout.Caption.With(layout.Bold)
	}
	if c.Width(style, text) > width {
		text = d.Place.Label
	}
	return c.Para(width, []layout.Run{layout.T(style, text)}, layout.ParaOpts{Align: a, Ref: d.At})
}
