package pdf

import "matchmark/layout"

// Tables of the structure (ISO 32000-1, 14.8.4.3.4). A row has a cell for each column from
// its beginning, so that one with nothing printed in it counts too.

// tables are those of a document by where they stand: a block may be placed twice.
type tables struct {
	at    map[tableIn]*grid
	known map[*layout.TableOf]bool
}

type tableIn struct {
	parent int
	of     *layout.TableOf
}

// A grid is a table as far as it is written.
type grid struct {
	element int
	row     int   // the last
	cells   []int // of the last row
	page    int   // of the last row
}

func newTables() tables {
	return tables{at: map[tableIn]*grid{}, known: map[*layout.TableOf]bool{}}
}

// seen reports whether something of a table was written before; what is in no table
// counts as seen.
func (ts tables) seen(e *layout.Element) bool {
	for e.In != nil {
		e = e.In
	}
	return e.Table == nil || ts.known[e.Table]
}

// inside is the element of the cell that something stands in, or that of its sheet.
func (t *tags) inside(sheet int, in *layout.Element) int {
	if in == nil {
		return sheet
	}
	return t.cell(t.inside(sheet, in.In), in)
}

// cell is the element of a cell.
func (t *tags) cell(parent int, e *layout.Element) int {
	now := t.tables.at[tableIn{parent, e.Table}]
	if now == nil || now.row != e.Row || now.page != t.number {
		now = t.row(parent, e)
	}
	return now.cells[e.Column]
}

// row begins a row of a table: a table of its own where the one before is at an end, for
// something else was read since, or it has that row already.
func (t *tags) row(parent int, e *layout.Element) *grid {
	key := tableIn{parent, e.Table}
	now := t.tables.at[key]
	if now == nil || now.row >= e.Row || t.lastIn(parent) != now.element {
		now = &grid{element: t.add(element{kind: "Table", parent: parent})}
		t.tables.at[key], t.tables.known[e.Table] = now, true
	}
	r := t.add(element{kind: "TR", parent: now.element})
	now.row, now.page, now.cells = e.Row, t.number, nil
	for _, span := range e.Spans {
		now.cells = append(now.cells, t.add(element{kind: cellKind(e), parent: r, span: span}))
	}
	t.last = group{}
	return now
}

// lastIn is the last that was put into an element, -1 where that is no element.
func (t *tags) lastIn(parent int) int {
	kids := t.kids
	if parent >= 0 {
		kids = t.elements[parent].kids
	}
	if n := len(kids); n > 0 && kids[n-1] < 0 {
		return ^kids[n-1]
	}
	return -1
}

// cellKind is what a cell is: a head or one of data.
func cellKind(e *layout.Element) string {
	if e.Head {
		return "TH"
	}
	return "TD"
}
