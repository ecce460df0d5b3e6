package layout

// What the items of a page are part of, for readers that hear the page: a drawing, a
// heading, a cell of a table. Blocks say it when they are made, it goes with their items
// to the frame, and the painter writes it; nothing is placed by it.

// Sort is what an Element is.
type Sort uint8

// The sorts. A RowStart is the mark that each row of a table begins with, so that a row
// with nothing printed in it is one too.
const (
	FigureSort Sort = iota
	HeadingSort
	CellSort
	RowStart
)

// Element is what an item is part of. Items of one element share the pointer.
type Element struct {
	Sort Sort
	// Alt is what a reader is told of a figure who cannot see it.
	Alt string
	// Level of a heading: 1 is the title of a sheet.
	Level int
	// Table, Row and Column place a cell, counted from 0; Spans are the columns that each
	// cell of its row takes. Head says that it is the head of one.
	Table       *TableOf
	Row, Column int
	Spans       []int
	Head        bool
	// In is the cell that the element stands in, nil for none.
	In *Element
}

// TableOf is one table for a reader: the cells of all its rows share the pointer.
type TableOf struct {
	Columns int
	rows    int // that were set
}

// of is the table that rows are of, and how its columns are counted in that.
func (t Table) of() (of *TableOf, spans []int) {
	if of = t.Of; of == nil {
		of = &TableOf{Columns: len(t.Columns)}
	}
	for _, c := range t.Columns {
		spans = append(spans, max(c.Span, 1))
	}
	return of, spans
}

// Drawing makes one figure of all items of the block.
func (b Block) Drawing(alt string) Block {
	return b.part(&Element{Sort: FigureSort, Alt: alt})
}

// Heading makes one heading of all items of the block, 1 for the title of a sheet, 2 for
// what its outline has below it.
func (b Block) Heading(level int) Block {
	return b.part(&Element{Sort: HeadingSort, Level: level})
}

func (b Block) part(e *Element) Block {
	b.ink = b.ink.changed(func(items []Item) {
		for i := range items {
			items[i].Of = e
		}
	})
	return b
}

// rowOf is a row of a table while blocks are put into its cells.
type rowOf struct{ start *Element }

func (t *TableOf) row(spans []int, head bool) rowOf {
	r := rowOf{&Element{Sort: RowStart, Table: t, Row: t.rows, Spans: spans, Head: head}}
	t.rows++
	return r
}

// cellOf is a cell of a table. What was put into it and was part of something before, is part
// of that within the cell.
type cellOf struct {
	cell Element
	made map[*Element]*Element
}

// cell is the cell of a column.
func (r rowOf) cell(column int) *cellOf {
	c := &cellOf{cell: *r.start}
	c.cell.Sort, c.cell.Column = CellSort, column
	return c
}

func (c *cellOf) fill(items []Item) {
	for i := range items {
		items[i].Of = c.within(items[i].Of)
	}
}

func (c *cellOf) within(e *Element) *Element {
	if e == nil {
		return &c.cell
	}
	if m, known := c.made[e]; known {
		return m
	}
	if c.made == nil {
		c.made = map[*Element]*Element{}
	}
	m := *e
	m.In = c.within(e.In)
	c.made[e] = &m
	return &m
}
