package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// Measures of a matrix.
const (
	matrixPadX   layout.Mm = 2.5 // half the gap between two boxes
	matrixPadY   layout.Mm = 1.5
	matrixLabelW layout.Mm = 34 // the widest column of names
	matrixWordW  layout.Mm = 9  // "found" and "left"
)

// A matrix is one dimension laid out over sheets.
type matrix struct {
	*block.Composer
	d          *job.Dim
	sides      []Side
	rows, cols []string
	across     bool // rows and columns changed places, for the width
	label      layout.Mm
	cell       layout.Mm // width of a column of boxes, padding counted
}

// Matrix sets one dimension: its heading, then tables of boxes whose heads are
// repeated on each page, then what is worked out from them and the verdict.
func Matrix(c *block.Composer, d *job.Dim) []layout.Piece {
	m := &matrix{Composer: c, d: d, rows: d.Positions.Rows, cols: d.Positions.Cols}
	if len(m.rows) == 0 {
		m.rows, m.cols = m.cols, nil
	}
	if d.FoundAt != nil {
		m.sides = append(m.sides, Side{caption: c.W.Common.AsFound, When: job.AsFound})
	}
	if d.LeftAt != nil && d.Left != nil {
		m.sides = append(m.sides, Side{caption: c.W.Common.AsLeft, When: job.AsLeft})
	}
	m.measure()
	out := []layout.Piece{{Block: everyAnchor(m.heading(), d), Gap: 6, KeepNext: true, Title: d.Mark + "  " + d.What, Level: 1}}
	short := m.short()
	for i, cols := range m.parts() {
		pieces := m.table(cols).Pieces(m.tableRows(cols), &short)
		if i > 0 {
			pieces[0].Gap = 4
		}
		out = append(out, pieces...)
	}
	foot := layout.Above(layout.GapY, extraBoxes(c, d, m.sides, c.Span), m.foot())
	return append(out, layout.Piece{Block: foot, Gap: layout.GapY, Under: []*layout.Block{&short}})
}

// measure finds the widths, and lays rows and columns the other way where only that
// goes on the sheet.
func (m *matrix) measure() {
	box := Box(m.Composer, m.d, m.side(0), "", false)
	for _, n := range m.cols {
		box.W = max(box.W, min(m.Width(layout.SubBold, n), 30))
	}
	m.cell = box.W + 2*matrixPadX
	if len(m.cols) > m.fits(m.cols) && len(m.rows) < len(m.cols) && len(m.rows) <= m.fits(m.rows) {
		m.rows, m.cols, m.across = m.cols, m.rows, true
	}
	for _, n := range m.rows {
		m.label = max(m.label, m.Width(layout.Strong, n)+2*matrixPadX)
	}
	m.label = min(m.label, matrixLabelW)
	for _, word := range strings.Fields(m.rowsName()) {
		m.label = max(m.label, m.Width(layout.SubBold, word)+2*matrixPadX) // the head is not broken within a word
	}
	if len(m.sides) > 1 {
		m.label += matrixWordW
	}
}

// side is one of the sides that are printed; a dimension that no step takes has none,
// which check has told.
func (m *matrix) side(i int) Side {
	if i < len(m.sides) {
		return m.sides[i]
	}
	return Side{}
}

// initials is the width of the column for initials.
const matrixInitials = 18 + 2*matrixPadX

// fits is how many columns of boxes go beside the longest name of a row.
func (m *matrix) fits([]string) int {
	return int((m.Span - matrixLabelW - matrixWordW - matrixInitials) / m.cell)
}

// parts splits the columns into runs of nearly one length that fit the width, as
// indices.
func (m *matrix) parts() [][]int {
	n := max(len(m.cols), 1)
	per := max(int((m.Span-m.label-matrixInitials)/m.cell), 1)
	runs := (n + per - 1) / per
	var out [][]int
	for i, k := 0, 0; i < runs; i++ {
		end := (i + 1) * n / runs
		var run []int
		for ; k < end; k++ {
			run = append(run, k)
		}
		out = append(out, run)
	}
	return out
}

// sets is how many times the rows can stand beside each other: few columns are
// folded, so that a long list of places does not run down one edge of many pages.
func (m *matrix) sets(cols []int) int {
	one := m.label + layout.Mm(len(cols))*m.cell + matrixInitials
	return max(min(int(m.Span/one), len(m.rows)), 1)
}

// rowsName is the name that stands above the names of the rows.
func (m *matrix) rowsName() string {
	if m.across {
		return m.d.Positions.ColName
	}
	return m.d.Positions.RowName
}

// table has the columns of a part, repeated for each set.
func (m *matrix) table(cols []int) layout.Table {
	t := layout.Table{PadX: matrixPadX, PadY: matrixPadY, Grid: true}
	head := func(w layout.Mm, text string) layout.Column {
		b := m.Para(w-2*matrixPadX, []layout.Run{layout.T(layout.SubBold, text)}, layout.ParaOpts{Ref: m.d.At})
		return layout.Column{Width: w, Head: b}
	}
	name := m.rowsName()
	for range m.sets(cols) {
		t.Columns = append(t.Columns, head(m.label, name))
		for _, k := range cols {
			text := ""
			if len(m.cols) > 0 {
				text = m.cols[k]
			}
			t.Columns = append(t.Columns, head(m.cell, text))
		}
		t.Columns = append(t.Columns, head(matrixInitials, m.W.Common.Initials))
	}
	return t
}

// tableRows are the rows of a part, from one set to the next and then down, so that a
// list that goes on to another page goes on with the next number.
func (m *matrix) tableRows(cols []int) []layout.Row {
	sets := m.sets(cols)
	n := len(m.rows)
	tall := (n + sets - 1) / sets
	rows := make([]layout.Row, tall)
	for i := range rows {
		rows[i] = layout.Row{Ref: m.d.At, Middle: true}
		for s := range sets {
			k := i*sets + s
			if k >= n {
				continue
			}
			cells := []layout.Block{m.rowName(k)}
			for _, col := range cols {
				cells = append(cells, m.boxes(m.at(k, col)))
			}
			cells = append(cells, m.eachSide(func(Side) layout.Block { return m.Box(layout.RoleInitials, "", m.d.At) }))
			rows[i].Cells = append(rows[i].Cells, cells...)
		}
	}
	return rows
}

// at is which reading stands in a row and column.
func (m *matrix) at(row, col int) int {
	if m.across {
		row, col = col, row
	}
	return row*max(len(m.d.Positions.Cols), 1) + col
}

// boxes are the boxes of one cell, found above left.
func (m *matrix) boxes(at int) layout.Block {
	return m.eachSide(func(s Side) layout.Block { return Box(m.Composer, m.d, s.on(at), "", false) })
}

// eachSide stacks one block for each side.
func (m *matrix) eachSide(one func(Side) layout.Block) layout.Block {
	var out []layout.Block
	for _, s := range m.sides {
		out = append(out, one(s))
	}
	return layout.Above(layout.GapY, out...)
}

// rowName is the name of a row, with the words for its two lines of boxes.
func (m *matrix) rowName(k int) layout.Block {
	room := m.label - 2*matrixPadX
	if len(m.sides) > 1 {
		room -= matrixWordW
	}
	name := m.Para(room, []layout.Run{layout.T(layout.Strong, m.rows[k])}, layout.ParaOpts{Ref: m.d.At})
	if len(m.sides) < 2 {
		return name
	}
	boxH := Box(m.Composer, m.d, m.sides[0], "", false).H
	words := []string{m.W.Readings.Found, m.W.Readings.Left}
	i := -1
	lines := m.eachSide(func(Side) layout.Block {
		i++
		return m.Words(layout.Caption, words[i]).Fill(matrixWordW, boxH, 1, 0.5)
	})
	return layout.Middle(0, name, lines).Tagged(m.d.At)
}

// heading is mark, what is measured and how, the limits, and who took it with what.
func (m *matrix) heading() layout.Block {
	d := m.d
	pic := picture.OfDimension(m.Setter, d)
	right := m.Span - balloonW - pic.W - 3*block.CellPad
	note := ""
	if d.LastChance != nil && d.FoundAt != nil {
		note = m.W.Dimension.GoneAfter.With(goneAt(d))
		if d.LastChance == d.FoundAt {
			note = m.W.Dimension.GoneWithin.With(d.FoundAt.No)
		}
	}
	head := append(Head(m.Composer, d, note, right), limitLines(m.Composer, d, d.Left != nil, right)...)
	if d.FoundOut != "" && d.FoundAt != nil && d.Left != nil { // the limit above is that of both readings
		head = append(head, m.Para(right, []layout.Run{layout.T(layout.Sub, FoundOut(m.W, d))}, layout.ParaOpts{Ref: d.At}))
	}
	text := layout.Above(0.5, head...)
	boxes := []layout.Block{
		m.WideBox(layout.RoleWords, 40, 1, m.W.Common.InstrumentNo, d.At), m.WideBox(layout.RoleDate, 30, 1, m.W.Readings.CalibratedUntil, d.At),
	}
	if d.Positions.Kind == job.Log {
		boxes = append(boxes, m.WideBox(layout.RoleTime, 36, 1, m.W.Readings.ClockAtStart, d.At))
	}
	text = layout.Above(layout.GapY, text, layout.Beside(layout.GapX, boxes...))
	balloon := balloon(m.Composer, d).Tagged(d.At).Heading(2)
	return layout.Beside(block.CellPad, balloon.Fill(balloonW, max(balloon.H, text.H), 0.5, 0), pic, text).Pad(0, 0, 2, 0)
}

// short is what stands again at the top of each page that the boxes go on to.
func (m *matrix) short() layout.Block {
	d := m.d
	runs := []layout.Run{layout.T(layout.StepNo, d.Mark+"  "), layout.T(layout.Strong, d.What)}
	if d.Box.Form == reading.Digits {
		runs = append(runs, layout.T(layout.Strong, ", "+m.W.Unit(d.Box.Unit.Print())))
	}
	switch {
	case len(d.LeftBy) > 0:
		runs = append(runs, layout.T(layout.Body, "  "+ByPosition(m.Composer, d, d.LeftBy)))
	case d.Left != nil:
		runs = append(runs, layout.T(layout.Body, "  "+PlainWords(m.W, d.Left)))
	case len(d.FoundBy) > 0:
		runs = append(runs, layout.T(layout.Body, "  "+ByPosition(m.Composer, d, d.FoundBy)))
	case d.Found != nil:
		runs = append(runs, layout.T(layout.Body, "  "+PlainWords(m.W, d.Found)))
	}
	return m.Para(m.Span, runs, layout.ParaOpts{Ref: d.At}).Pad(1, 0, 1.5, 0)
}

// foot is the verdict on all boxes of the matrix.
func (m *matrix) foot() layout.Block {
	d := m.d
	row := verdictItems(m.Composer, d, m.sides, d.LeftAt != nil, false)
	half := (m.Span - block.RowWidth(row) - 2*layout.GapX) / 2
	last := len(row) - 1
	initials := row[last]
	row = append(row[:last:last], m.WideBox(layout.RoleWords, half, 1, m.W.Readings.OutAt, d.At), m.WideBox(layout.RoleWords, half, 1, m.W.Common.NotTaken, d.At), initials)
	return layout.Bottom(layout.GapX, row...)
}
