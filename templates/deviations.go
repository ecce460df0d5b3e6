package templates

import (
	"strconv"

	"matchmark/layout"
)

// deviations sets what was done otherwise than printed, with fields to sketch in,
// and the log of handing over from one crew to the next.
func deviations(c *composer) []layout.Piece {
	w := c.w
	g := c.grid(column{w.Common.Number, 9}, column{w.Deviations.Step, 18}, column{w.Deviations.What, 0}, column{w.Deviations.Agreed, 32}, column{w.Deviations.Effect, 46})
	var rows []layout.Row
	for i := range deviationRows {
		rows = append(rows, g.row(nil, g.text(0, layout.Body, strconv.Itoa(i+1), nil)))
	}
	out := c.listSheet(w.Deviations.Rule, g, rows)
	half := (c.width - layout.GapX) / 2
	sketch := c.Sketch(half, sketchH, w.Deviations.Sketch, nil)
	out = append(out, layout.Piece{Block: layout.Beside(layout.GapX, sketch, sketch), Gap: 4})
	log := c.grid(column{w.Handover.Shift, 22}, column{w.Handover.Reached, 20}, column{w.Handover.HalfDone, 0}, column{w.Handover.PartsLie, 36}, column{w.Handover.Next, 36}, column{w.Handover.FromTo, 28})
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
