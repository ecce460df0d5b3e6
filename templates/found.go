package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/templates/block"
)

// Numbers of the rows for what is found on the day, at the most. The dimensions go on from the
// last mark that a definition may use.
const (
	spareDims    = 4
	firstSpare   = 51
	spareBack    = 4
	spareDimH    = layout.Mm(17)
	spareBackH   = layout.Mm(9)
	spareBackKey = "RX"
)

// foundToday sets the rows for what nobody planned: dimensions and rows of putting back.
// The lines for containers are on the register.
func foundToday(c *composer) []layout.Piece {
	w := c.W
	dims := c.Grid(block.Col(w.Common.Mark, 16), block.Col(w.Found.What, 0), block.Col(w.Found.By, 26), block.Col(w.Found.Limit, 26), block.Col(w.Common.AsFound, 30), block.Col(w.Common.AsLeft, 30))
	dims.Table.MinH = spareDimH
	var rows []layout.Row
	for i := range blanks(len(c.Job.Dims), 15, 1, spareDims) {
		rows = append(rows, dims.Row(nil, dims.Text(0, layout.StepNo, "X"+strconv.Itoa(firstSpare+i), nil)))
	}
	out := c.ListSheet(w.Found.Rule, dims, rows)
	out[0] = anchored(out[0], "found today")
	back := c.Grid(block.Col(w.Found.Row, 16), block.Col(w.Found.GoesBack, 0), block.Col(w.Common.From, 24), block.Col(w.Common.CountOut, 24), block.Col(w.Common.Initials, 24), block.Col(w.Common.Time, 22))
	back.Table.MinH = spareBackH
	rows = nil
	for i := range blanks(len(c.Job.Steps()), 15, 1, spareBack) {
		rows = append(rows, back.Row(nil, back.Text(0, layout.StepNo, spareBackKey+strconv.Itoa(i+1), nil)))
	}
	return append(out, back.Under(rows)...)
}
