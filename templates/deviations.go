package templates

import (
	"strconv"

	"matchmark/layout"
)

// deviations sets what was done otherwise than printed, with fields to sketch in,
// and the log of handing over from one crew to the next.
func deviations(c *composer) []layout.Piece {
	w := c.w
	g := c.grid(column{w.number, 9}, column{w.deviationStep, 18}, column{w.deviationWhat, 0}, column{w.deviationAgreed, 32}, column{w.deviationEffect, 46})
	var rows []layout.Row
	for i := range deviationRows {
		rows = append(rows, g.row(nil, g.text(0, layout.Body, strconv.Itoa(i+1), nil)))
	}
	out := c.listSheet(w.deviationsRule, g, rows)
	half := (c.width - layout.GapX) / 2
	sketch := c.Sketch(half, sketchH, w.sketch, nil)
	out = append(out, layout.Piece{Block: layout.Beside(layout.GapX, sketch, sketch), Gap: 4})
	log := c.grid(column{w.shift, 22}, column{w.handoverReached, 20}, column{w.handoverHalf, 0}, column{w.partsLie, 36}, column{w.handoverNext, 36}, column{w.fromTo, 28})
	log.t.MinH = handoverH
	pieces := log.t.Pieces(log.blank(handovers))
	pieces[0].NewPage = true
	return append(out, pieces...)
}

const (
	deviationRows           = 8
	handovers               = 5
	handoverH     layout.Mm = 30
	sketchH       layout.Mm = 60
)
