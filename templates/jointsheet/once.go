package jointsheet

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/block"
)

// A joint at one place that is tightened once has no table: its ticks stand in rows, each
// with its number, and beside or below them the cells for who did it with what.

// onceTicks are those rows; empty for another joint, or where how tight it becomes does not
// stand above them.
func onceTicks(c *block.Composer, g []*job.Joint) layout.Block {
	j := g[0]
	if len(g) > 1 || j.Spec.BreaksLoose != nil || len(finalTorque(c, j)) == 0 {
		return layout.Block{}
	}
	if r := roundsOf(j); len(r) > 1 || r[0].Kind != joint.Tighten || r[0].Way != joint.InPattern || r[0].Travel > 0 {
		return layout.Block{}
	}
	n := max(j.Count(), 1)
	best := layout.Block{}
	for across := min(n, int(c.Span/onceCol)); across > 0; across-- {
		b := onceRows(c, j, n, across)
		if best.Empty() || b.H < best.H {
			best = b
		}
	}
	return best
}

// onceCol is the width of a cell with a number of two figures and its box, clear of each other.
const onceCol = tickCol + 1

// onceRows are n ticks, so many in a row.
func onceRows(c *block.Composer, j *job.Joint, n, across int) layout.Block {
	t := layout.Table{PadX: 0.4, PadY: tickPad, Grid: true, MinH: tickRow}
	for range across {
		t.Columns = append(t.Columns, layout.Column{Width: onceCol})
	}
	var rows []layout.Row
	for i := range n {
		if i%across == 0 {
			rows = append(rows, layout.Row{Middle: true, Ref: j.At})
		}
		number := c.Words(layout.SubBold, orderHead(j, i))
		row := &rows[len(rows)-1]
		row.Cells = append(row.Cells, layout.Middle(1, number.Right(max(t.Room(0)-7.6, number.W)), c.Tick(layout.Sub, "", j.At)))
	}
	ticks := t.Block(rows)
	rest := c.Span - ticks.W
	if rest < 3*leastDid {
		return layout.Above(layout.GapY, ticks, signRow(c, j))
	}
	return layout.Beside(0, ticks, onceDid(c, j, rest, ticks.H))
}

// onceDid are the cells of who did it with what, with what they are for in their corners.
func onceDid(c *block.Composer, j *job.Joint, width, high layout.Mm) layout.Block {
	w := c.W.Tightening
	who := max(leastDid, min(width/3, 28))
	t := layout.Table{PadX: 0.6, PadY: 0.2, Grid: true, MinH: high}
	row := layout.Row{Ref: j.At}
	for i, text := range []string{toolHead(c, j), w.FinalBy, w.CheckedBy} {
		col := who
		if i == 0 {
			col = width - 2*who
		}
		t.Columns = append(t.Columns, layout.Column{Width: col})
		row.Cells = append(row.Cells, c.Para(col-2*t.PadX, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: j.At}))
	}
	return t.Block([]layout.Row{row})
}
