package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/templates/block"
)

// deviations sets what was done otherwise than printed, with fields to sketch in,
// and the log of handing over from one crew to the next.
func deviations(c *composer) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(w.Common.Number, 9), block.Col(w.Deviations.Step, 18), block.Col(w.Deviations.What, 0), block.Col(w.Deviations.Agreed, 32), block.Col(w.Deviations.Effect, 53))
	var rows []layout.Row
	for i := range deviationRows {
		rows = append(rows, g.Row(nil, g.Text(0, layout.Body, strconv.Itoa(i+1), nil)))
	}
	out := c.ListSheet(w.Deviations.Rule, g, rows)
	half := (c.Span - layout.GapX) / 2
	sketch := c.Sketch(half, sketchH, w.Deviations.Sketch, nil)
	out = append(out, layout.Piece{Block: layout.Beside(layout.GapX, sketch, sketch), Gap: layout.GapY})
	log := c.Grid(block.Col(w.Handover.Shift, 22), block.Col(w.Handover.Reached, 20), block.Col(w.Handover.HalfDone, 0), block.Col(w.Handover.PartsLie, 36), block.Col(w.Handover.Next, 36), block.Col(w.Handover.FromTo, 28))
	log.Table.MinH = handoverH
	return append(out, log.Under(log.Blank(shifts(c.Job)))...)
}

const (
	deviationRows           = 8 // besides two at the foot of each page
	handovers               = 2
	handoverH     layout.Mm = 17
	sketchH       layout.Mm = 60
)
