package templates

import (
	"strconv"

	"matchmark/layout"
)

// Numbers of the rows for what is found on the day. The dimensions go on from the
// last mark that a definition may use.
const (
	spareDims    = 4
	firstSpare   = 51
	spareBack    = 4
	spareDimH    = layout.Mm(22)
	spareBackH   = layout.Mm(16)
	spareBackKey = "RX"
)

// foundToday sets the rows for what nobody planned: four dimensions and four rows
// of putting back. Four lines for containers are on the register.
func foundToday(c *composer) []layout.Piece {
	w := c.w
	dims := c.grid(col(w.Common.Mark, 16), col(w.Found.What, 0), col(w.Found.By, 26), col(w.Found.Limit, 26), col(w.Common.AsFound, 30), col(w.Common.AsLeft, 30))
	dims.table.MinH = spareDimH
	var rows []layout.Row
	for i := range spareDims {
		rows = append(rows, dims.row(nil, dims.text(0, layout.StepNo, "X"+strconv.Itoa(firstSpare+i), nil)))
	}
	out := c.listSheet(w.Found.Rule, dims, rows)
	back := c.grid(col(w.Found.Row, 16), col(w.Found.GoesBack, 0), col(w.Common.From, 24), col(w.Common.CountOut, 24), col(w.Common.Initials, 24), col(w.Common.Time, 22))
	back.table.MinH = spareBackH
	rows = nil
	for i := range spareBack {
		rows = append(rows, back.row(nil, back.text(0, layout.StepNo, spareBackKey+strconv.Itoa(i+1), nil)))
	}
	return append(out, back.under(rows)...)
}
