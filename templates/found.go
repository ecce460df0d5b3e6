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
	dims := c.grid(column{w.mark, 16}, column{w.spareWhat, 0}, column{w.by, 26}, column{w.spareLimit, 26}, column{w.asFound, 30}, column{w.asLeft, 30})
	dims.t.MinH = spareDimH
	var rows []layout.Row
	for i := range spareDims {
		rows = append(rows, dims.row(nil, dims.text(0, layout.StepNo, "X"+strconv.Itoa(firstSpare+i), nil)))
	}
	out := c.listSheet(w.foundRule, dims, rows)
	back := c.grid(column{w.spareRow, 16}, column{w.spareBack, 0}, column{w.from, 24}, column{w.countOut, 24}, column{w.initials, 24}, column{w.time, 22})
	back.t.MinH = spareBackH
	rows = nil
	for i := range spareBack {
		rows = append(rows, back.row(nil, back.text(0, layout.StepNo, spareBackKey+strconv.Itoa(i+1), nil)))
	}
	return append(out, back.under(rows)...)
}
