package jointsheet

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// A joint of few fasteners has one table for all its places: the rounds of a place below
// each other with a tick for each fastener, and to their right cells as high as all of them
// for who did it with what.

// Widths of that table: the place, at the least and for its name, and the least of the
// cells for the tool and for initials.
const (
	whereCol  layout.Mm = 17
	mostWhere layout.Mm = 44
	leastDid  layout.Mm = 18
)

// fewTable is that table; empty where the fasteners are too many for it, or where a box is
// asked for that it has not.
func fewTable(c *block.Composer, g []*job.Joint) layout.Block {
	j, n := g[0], max(g[0].Count(), 1)
	first, where := roundCol, whereCol
	if len(g) > 1 {
		most := c.Span - placeCol - tickCol*layout.Mm(n) - 3*leastDid
		for _, j := range g {
			name := min(c.Width(layout.Caption, j.Place.Name)+2.2, most, mostWhere)
			where = max(where, c.Width(layout.SubBold, j.Mark)+5, name)
		}
		first = where + placeCol
	}
	rest := c.Span - first - tickCol*layout.Mm(n)
	if j.Spec.BreaksLoose != nil || rest < 3*leastDid {
		return layout.Block{}
	}
	who := max(leastDid, min(rest/3, 28))
	did := layout.Table{PadX: 1, PadY: tickPad, Grid: true}
	tick := layout.Table{PadX: 1, PadY: tickPad, Grid: true, MinH: tickRow}
	head := func(text string, width layout.Mm) layout.Block {
		return c.Para(width-2, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: j.At})
	}
	if len(g) > 1 {
		tick.Columns = append(tick.Columns, layout.Column{Width: where, Head: head(c.W.Tightening.WhereColumn, where)})
	}
	tick.Columns = append(tick.Columns, layout.Column{Width: first - tick.Width(), Head: head(c.W.Tightening.OrderColumn, placeCol)})
	for i := range n {
		tick.Columns = append(tick.Columns, layout.Column{Width: tickCol, Head: c.Words(layout.Strong, orderHead(j, i)).Center(tickCol - 2)})
	}
	for i, text := range []string{toolHead(c, j), c.W.Tightening.FinalBy, c.W.Tightening.CheckedBy} {
		width := who
		if i == 0 {
			width = rest - 2*who
		}
		did.Columns = append(did.Columns, layout.Column{Width: width, Head: head(text, width)})
	}
	high := max(headHeight(tick), headHeight(did))
	rows := []layout.Block{layout.Beside(0, headRow(&tick, high), headRow(&did, high))}
	for _, j := range g {
		left := fewRows(c, tick, j, len(g) > 1)
		right := did
		right.MinH = left.H
		rows = append(rows, layout.Beside(0, left, right.Block(make([]layout.Row, 1))))
	}
	return layout.Above(0, rows...)
}

// headHeight is the height of the heads of a table.
func headHeight(t layout.Table) (high layout.Mm) {
	for _, col := range t.Columns {
		high = max(high, col.Head.H)
	}
	return high
}

// headRow takes the heads from a table and sets them as a row of a height.
func headRow(t *layout.Table, high layout.Mm) layout.Block {
	cells := make([]layout.Block, len(t.Columns))
	for i := range t.Columns {
		cells[i], t.Columns[i].Head = t.Columns[i].Head, layout.Block{}
	}
	row := *t
	row.MinH = high + 2*t.PadY
	return row.Block([]layout.Row{{Cells: cells}})
}

// fewRows are the rounds of a joint at one place.
func fewRows(c *block.Composer, t layout.Table, j *job.Joint, named bool) layout.Block {
	var rows []layout.Row
	for i, r := range roundsOf(j) {
		var cells []layout.Block
		if named {
			where := layout.Block{}
			if i == 0 {
				mark := c.Para(t.Room(0), []layout.Run{{Text: j.Mark, Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: j.At})
				where = layout.Above(0.3, mark, c.Para(t.Room(0), []layout.Run{layout.T(layout.Caption, j.Place.Name)}, layout.ParaOpts{Ref: j.At}))
			}
			cells = append(cells, where)
		}
		cells = append(cells, tickHead(c, j, r, t.Columns[len(cells)].Width))
		for range max(j.Count(), 1) {
			cells = append(cells, c.Tick(layout.Sub, "", j.At).Center(tickCol-2))
		}
		rows = append(rows, layout.Row{Cells: cells, Middle: true, Ref: j.At})
	}
	return t.Block(rows)
}
