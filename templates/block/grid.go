package block

import (
	"matchmark/layout"
)

// A Column of a list sheet. The one column of no width takes the room that the
// others leave.
type Column struct {
	head  string
	width layout.Mm
}

// Col is a column of a width, 0 for what the others leave.
func Col(head string, width layout.Mm) Column { return Column{head, width} }

// A Grid sets the rows of a list sheet: printed cells, and empty ones to write in.
type Grid struct {
	c     *Composer
	Table layout.Table
}

// rowH is the least height of a row that is written in by hand: a line of handwriting
// of 8.5 mm and its rule.
const rowH layout.Mm = 9

// Grid makes a table over the whole width.
func (c *Composer) Grid(cols ...Column) Grid { return c.gridPadded(1.2, cols...) }

// gridPadded is a table with so much room between its rules and what stands in its cells.
func (c *Composer) gridPadded(pad layout.Mm, cols ...Column) Grid {
	rest := c.Span
	for _, x := range cols {
		rest -= x.width
	}
	g := Grid{c: c, Table: layout.Table{PadX: pad, PadY: 0.3, Grid: true, MinH: rowH}}
	if c.Pen().Gloves {
		g.Table.MinH += 2
	}
	for _, x := range cols {
		w := x.width
		if w == 0 {
			w = rest
		}
		head := c.Para(w-2*g.Table.PadX, []layout.Run{layout.T(layout.SubBold, x.head)}, layout.ParaOpts{})
		g.Table.Columns = append(g.Table.Columns, layout.Column{Width: w, Head: head})
	}
	return g
}

// Text sets a text in the width of a column; nothing when there is none.
func (g Grid) Text(i int, st layout.Style, text string, ref layout.Ref) layout.Block {
	if text == "" {
		return layout.Block{}
	}
	return g.c.Para(g.Table.Room(i), []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: ref})
}

// About sets a name and, behind it in smaller type, what there is to know of it.
func (g Grid) About(i int, name, facts string, ref layout.Ref) layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, name)}
	if facts != "" {
		runs = append(runs, layout.T(layout.Sub, "  "+facts))
	}
	return g.c.Para(g.Table.Room(i), runs, layout.ParaOpts{Ref: ref})
}

// Mark sets a mark in a column; one of two places, as D12/NDE-DIS, smaller, for it
// is not broken.
func (g Grid) Mark(i int, st layout.Style, mark string, ref layout.Ref) layout.Block {
	for _, smaller := range []layout.Style{layout.SubBold, layout.Caption.With(layout.Bold)} {
		if g.c.Width(st, mark) > g.Table.Room(i) {
			st = smaller
		}
	}
	return g.Text(i, st, mark, ref)
}

// Row is one row of cells; those missing are left to write in.
func (g Grid) Row(ref layout.Ref, cells ...layout.Block) layout.Row {
	return layout.Row{Ref: ref, Cells: cells}
}

// Bare is the table of a list without the heads of its columns.
func (g Grid) Bare() layout.Table {
	t := g.Table
	t.Columns = append([]layout.Column{}, t.Columns...)
	for i := range t.Columns {
		t.Columns[i].Head = layout.Block{}
	}
	return t
}

// Blank are empty rows for what is found on the day.
func (g Grid) Blank(n int) []layout.Row {
	return make([]layout.Row, n)
}

// LastTogether keeps the first rows of a list on one page, and the last, so that no page
// has a row alone.
func LastTogether(rows []layout.Row) []layout.Row {
	for i := range max(len(rows)-1, 0) {
		rows[i].KeepNext = i < firstRows-1 || i >= len(rows)-leastRows
	}
	return rows
}

// leastRows is how many rows of a list stand on its last page at the least, firstRows on
// its first.
const (
	leastRows = 2
	firstRows = 2
)

// ListSheet is a sheet of one table: the sentence that rules it, then the rows.
func (c *Composer) ListSheet(rule string, g Grid, rows []layout.Row) []layout.Piece {
	return append([]layout.Piece{c.RuleLine(rule)}, g.Table.Pieces(LastTogether(rows))...)
}

// Under sets a table below another one on the same sheet.
func (g Grid) Under(rows []layout.Row) []layout.Piece {
	out := g.Table.Pieces(LastTogether(rows))
	out[0].Gap = 2.5
	return out
}
