package layout

// Column is one column of a Table: its width, rules and padding counted, and its
// head. Span is how many columns of the whole it takes where its Table is a part of one;
// 0 counts as 1.
type Column struct {
	Width Mm
	Head  Block
	Span  int
}

// Table describes rows of blocks under one head.
type Table struct {
	Columns []Column
	// PadX and PadY is the room between a cell's content and its rules.
	PadX, PadY Mm
	// Grid draws the rules between columns too, and a frame about all.
	Grid bool
	// MinH is the least height of a row.
	MinH Mm
	// Of is set where the rows of several Tables are one for a reader.
	Of *TableOf
}

// Row is one row of a Table, one block a column from the left; missing ones are
// empty.
type Row struct {
	Cells []Block
	// Middle sets the cells on the row's middle instead of its top.
	Middle bool
	// KeepNext keeps the row on one page with the next.
	KeepNext bool
	Anchor   string
	Ref      Ref
}

// Width is the width of the whole table.
func (t Table) Width() (w Mm) {
	for _, c := range t.Columns {
		w += c.Width
	}
	return w
}

// Room is the width that a cell of column i has for its content.
func (t Table) Room(i int) Mm { return t.Columns[i].Width - 2*t.PadX }

// Pieces gives the table as pieces of flow, one a row, the head first. The head
// stays with the first row and is drawn again on every page the table goes on to;
// outer lists blocks that the whole table stands under.
func (t Table) Pieces(rows []Row, outer ...*Block) []Piece {
	of, spans := t.of()
	head := t.head(of, spans)
	under := append(outer[:len(outer):len(outer)], &head)
	out := make([]Piece, 0, len(rows)+1)
	if !head.Empty() {
		out = append(out, Piece{Block: head, KeepNext: len(rows) > 0, Under: outer})
	}
	for _, r := range rows {
		out = append(out, Piece{Block: t.row(r, of.row(spans, false)), KeepNext: r.KeepNext, Under: under})
	}
	return out
}

// Block gives the whole table as one block, for tables that never part.
func (t Table) Block(rows []Row) Block {
	of, spans := t.of()
	bs := []Block{t.head(of, spans)}
	for _, r := range rows {
		bs = append(bs, t.row(r, of.row(spans, false)))
	}
	return Above(0, bs...)
}

// head is the row of column heads; empty when no column has one.
func (t Table) head(of *TableOf, spans []int) Block {
	r := Row{Cells: make([]Block, len(t.Columns))}
	any := false
	for i, c := range t.Columns {
		r.Cells[i] = c.Head
		any = any || !c.Head.Empty()
	}
	if !any {
		return Block{}
	}
	t.MinH, t.PadY = 0, min(t.PadY, headPad)
	return t.row(r, of.row(spans, true))
}

// headPad is the room above and below the heads of columns at the most: words stand nearer to a
// rule than boxes do.
const headPad Mm = 0.5

// row sets one row. Neighbouring rows share the rule between them: each draws
// the one at its foot, and one at its top that the row above covers.
func (t Table) row(r Row, of rowOf) Block {
	h := t.MinH
	for _, c := range r.Cells {
		h = max(h, c.H+2*t.PadY)
	}
	rules := t.rules(h)
	rules.Of = of.start
	out := Drawn(t.Width(), h, rules)
	x := Mm(0)
	for i, c := range r.Cells {
		if i >= len(t.Columns) {
			break
		}
		if !c.W.Fits(t.Room(i)) {
			out.AddMisfits(Misfit{Ref: refOr(c.someRef(), r.Ref), Kind: TooWide, Text: c.someText(), Over: c.W - t.Room(i)})
		}
		y := t.PadY
		if r.Middle {
			y = (h - c.H) / 2
		}
		c.ink = c.ink.changed(of.cell(i).fill)
		out.place(c, x+t.PadX, y)
		if out.Base == 0 && c.Base != 0 {
			out.Base = y + c.Base
		}
		x += t.Columns[i].Width
	}
	if r.Anchor != "" {
		out.besides = out.besides.with([]Anchor{{Name: r.Anchor}}, nil)
	}
	return out
}

// rules are the rules of one row, as one path.
func (t Table) rules(h Mm) Item {
	w := t.Width()
	p := Path{Weight: Rule, Ops: make([]Op, 0, 4+2*len(t.Columns)+2)}
	stroke := func(x0, y0, x1, y1 Mm) {
		p.Ops = append(p.Ops, Op{Verb: MoveTo, P: Point{x0, y0}}, Op{Verb: LineTo, P: Point{x1, y1}})
	}
	stroke(0, 0, w, 0)
	stroke(0, h, w, h)
	if t.Grid {
		x := Mm(0)
		stroke(0, 0, 0, h)
		for _, c := range t.Columns {
			x += c.Width
			stroke(x, 0, x, h)
		}
	}
	return Item{Shape: p}
}
