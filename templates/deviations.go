package templates

import (
	"strconv"

	"matchmark/layout"
)

// deviations sets what was done otherwise than printed, with fields to sketch in,
// and the log of handing over from one crew to the next.
func deviations(c *composer) []layout.Piece {
	w := c.w
	g := c.grid(col(w.Common.Number, 9), col(w.Deviations.Step, 18), col(w.Deviations.What, 0), col(w.Deviations.Agreed, 32), col(w.Deviations.Effect, 46))
	var rows []layout.Row
	for i := range deviationRows {
		rows = append(rows, g.row(nil, g.text(0, layout.Body, strconv.Itoa(i+1), nil)))
	}
	out := c.listSheet(w.Deviations.Rule, g, rows)
	half := (c.width - layout.GapX) / 2
	sketch := c.Sketch(half, sketchH, w.Deviations.Sketch, nil)
	out = append(out, layout.Piece{Block: layout.Beside(layout.GapX, sketch, sketch), Gap: 4})
	log := c.grid(col(w.Handover.Shift, 22), col(w.Handover.Reached, 20), col(w.Handover.HalfDone, 0), col(w.Handover.PartsLie, 36), col(w.Handover.Next, 36), col(w.Handover.FromTo, 28))
	log.table.MinH = handoverH
	pieces := log.table.Pieces(log.blank(handovers))
	pieces[0].NewPage = true
	return append(out, pieces...)
}

const (
	deviationRows           = 8
	handovers               = 5
	handoverH     layout.Mm = 30
	sketchH       layout.Mm = 60
)
