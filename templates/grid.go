package templates

import "matchmark/layout"

// A column of a list sheet. The one column of no width takes the room that the
// others leave.
type column struct {
	head  string
	width layout.Mm
}

// col is a column of a width, 0 for what the others leave.
func col(head string, width layout.Mm) column { return column{head, width} }

// A grid sets the rows of a list sheet: printed cells, and empty ones to write in.
type grid struct {
	c     *composer
	table layout.Table
}

// rowH is the least height of a row that is written in by hand.
const rowH layout.Mm = 10

// grid makes a table over the whole width.
func (c *composer) grid(cols ...column) grid {
	rest := c.width
	for _, x := range cols {
		rest -= x.width
	}
	g := grid{c: c, table: layout.Table{PadX: 1.2, PadY: 1, Grid: true, MinH: rowH}}
	if c.Pen().Gloves {
		g.table.MinH += 2
	}
	for _, x := range cols {
		w := x.width
		if w == 0 {
			w = rest
		}
		head := c.Para(w-2*g.table.PadX, []layout.Run{layout.T(layout.SubBold, x.head)}, layout.ParaOpts{})
		g.table.Columns = append(g.table.Columns, layout.Column{Width: w, Head: head})
	}
	return g
}

// text sets a text in the width of a column; nothing when there is none.
func (g grid) text(i int, st layout.Style, text string, ref layout.Ref) layout.Block {
	if text == "" {
		return layout.Block{}
	}
	return g.c.Para(g.table.Room(i), []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: ref})
}

// about sets a name and, behind it in smaller type, what there is to know of it.
func (g grid) about(i int, name, facts string, ref layout.Ref) layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, name)}
	if facts != "" {
		runs = append(runs, layout.T(layout.Sub, "  "+facts))
	}
	return g.c.Para(g.table.Room(i), runs, layout.ParaOpts{Ref: ref})
}

// mark sets a mark in a column; one of two places, as D12/NDE-DIS, smaller, for it
// is not broken.
func (g grid) mark(i int, st layout.Style, mark string, ref layout.Ref) layout.Block {
	for _, smaller := range []layout.Style{layout.SubBold, layout.Caption.With(layout.Bold)} {
		if g.c.Width(st, mark) > g.table.Room(i) {
			st = smaller
		}
	}
	return g.text(i, st, mark, ref)
}

// row is one row of cells; those missing are left to write in.
func (g grid) row(ref layout.Ref, cells ...layout.Block) layout.Row {
	return layout.Row{Ref: ref, Cells: cells}
}

// blank are empty rows for what is found on the day.
func (g grid) blank(n int) []layout.Row {
	return make([]layout.Row, n)
}

// lastTogether keeps the last rows of a list on one page, so that no page has a
// row alone.
func lastTogether(rows []layout.Row) []layout.Row {
	for i := max(len(rows)-leastRows, 0); i < len(rows)-1; i++ {
		rows[i].KeepNext = true
	}
	return rows
}

// leastRows is how many rows of a list stand on its last page at the least.
const leastRows = 5

// listSheet is a sheet of one table: the sentence that rules it, then the rows.
func (c *composer) listSheet(rule string, g grid, rows []layout.Row) []layout.Piece {
	return append([]layout.Piece{c.ruleLine(rule)}, g.table.Pieces(lastTogether(rows))...)
}

// ruleLine is the sentence at the top of a sheet that says how it is filled in.
func (c *composer) ruleLine(sentence string) layout.Piece {
	return layout.Piece{Block: c.Para(c.width, []layout.Run{layout.T(layout.Body, sentence)}, layout.ParaOpts{}).Pad(0, 0, 2, 0), KeepNext: true}
}

// under sets a table below another one on the same sheet.
func (g grid) under(rows []layout.Row) []layout.Piece {
	out := g.table.Pieces(lastTogether(rows))
	out[0].Gap = 5
	return out
}
