package dimension

import (
	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// boxItems are the write-in boxes of a dimension, one for each place it is read at and
// each side: low ones one by one, many in one block of at most so many columns, those of
// several sides in one of the tables.
func boxItems(c *block.Composer, d *job.Dim, sides []Side, tables []layout.Block, w way, width layout.Mm) []layout.Block {
	var out []layout.Block
	switch p := d.Positions; {
	case p.Kind == job.Single:
		out = sideItems(c, d, sides, w.before, width)
	case len(tables) > 0:
		out = []layout.Block{tables[tableIn(tables, w.cols, width)]}
		if len(sides) == 1 {
			return out
		}
		if m := movement(d); m == nil || m.Thick == nil {
			if tick := backedOff(c, d); workOf(sides) == &d.LeftWork && !tick.Empty() {
				out = append(out, tick)
			}
			return out
		}
	case p.Kind == job.Clock:
		return []layout.Block{boxClock(c, d, sides[0])}
	case p.Kind == job.Row:
		return positionBoxes(c, d, sides[0], p.Cols)
	default:
		return []layout.Block{boxGrid(c, d, sides[0], w.cols, width)}
	}
	if workOf(sides) == &d.LeftWork {
		out = append(out, adjustItems(c, d, w.before)...)
	}
	return out
}

// Box is the write-in box of one reading, in the form that its limits ask for, under its
// key; of a pack that is printed filled, with what was found in it.
func Box(c *block.Composer, d *job.Dim, s Side, caption string, unit bool) layout.Block {
	if s.kind == job.ReadingBlank {
		s.kind = d.ReadingKind()
	}
	one, n := d.Single(s.at)
	key := job.BlankKey(one.Mark, s.When, s.kind, n)
	if s.typed == "" && s.When == job.AsFound && (s.Copied || d.Sheet) {
		s.typed = c.Filled.Typed(key)
	}
	b := formBox(c, d, s, caption, unit)
	if s.When == job.NoTime || s.Copied {
		return b
	}
	return b.Named(key)
}

// formBox is the box of a reading, blank or typed in.
func formBox(c *block.Composer, d *job.Dim, s Side, caption string, unit bool) layout.Block {
	b := d.Box
	switch {
	case s.typed == "":
	case b.Form == reading.Line, b.Form == reading.Grid:
		return c.TypedWords(60, caption, s.typed, s.Copied, d.At)
	case b.Form == reading.Fraction:
		return c.TypedFraction(caption, c.W.Unit(b.Unit.Print()), s.typed, s.Copied, d.At)
	}
	switch b.Form {
	case reading.Line:
		return c.WideBox(layout.RoleWords, 60, 1, caption, d.At)
	case reading.Grid:
		if d.Kind == picture.Contact {
			return picture.Flank(c.Setter, c.W, caption, d)
		}
		return c.Sketch(85, 60, caption, d.At)
	case reading.Ticks:
		return answers(c, d, s, caption)
	case reading.Fraction:
		return c.Fraction(caption, c.W.Unit(b.Unit.Print()), s.Copied, d.At)
	}
	n := layout.Number{Before: b.Before, After: b.After, Sign: b.Signed || s.signed, Caption: caption, Copied: s.Copied, Typed: s.typed, Ref: d.At}
	if unit {
		n.Unit = c.W.Unit(b.Unit.Print())
	}
	return c.Value(n)
}

// answers are the boxes to tick of a dimension that is answered, not measured.
func answers(c *block.Composer, d *job.Dim, s Side, caption string) layout.Block {
	l := d.Left
	if l == nil {
		l = d.Found
	}
	row := []layout.Block{c.Words(layout.Caption, caption)}
	for _, a := range l.Answers() {
		if s.typed != "" && a.Typed() == s.typed {
			row = append(row, c.Ticked(layout.Body, AnswerWord(c, a), s.Copied, d.At))
			continue
		}
		row = append(row, c.Tick(layout.Body, AnswerWord(c, a), d.At))
	}
	return layout.Middle(layout.GapX, row...)
}

// positionBoxes are the boxes of one side, one a position, named by it first: right, as left.
// The unit stands in the
// first caption and behind the last box, so that a row of four goes into the width.
func positionBoxes(c *block.Composer, d *job.Dim, s Side, positions []string) []layout.Block {
	var all []layout.Block
	for i, p := range positions {
		caption := s.caption
		if i == 0 {
			caption = withUnit(c, d, caption)
		}
		last := i == len(positions)-1
		all = append(all, Box(c, d, s.on(s.at+i), spoken(p, caption), last || d.Box.Form == reading.Fraction))
	}
	return all
}

// sideItems are the boxes of one reading, one a side, their names above them or before.
// Where they do not all go into the width with the unit behind each, it stands behind the
// last.
func sideItems(c *block.Composer, d *job.Dim, sides []Side, before bool, width layout.Mm) []layout.Block {
	row := func(units bool) []layout.Block {
		var all []layout.Block
		for i, s := range sides {
			unit := units || i == len(sides)-1
			if before {
				all = append(all, nameBefore(c, d, s.caption, Box(c, d, s, "", unit)))
				continue
			}
			all = append(all, Box(c, d, s, s.caption, unit))
		}
		return all
	}
	if all := row(true); block.RowWidth(all) <= width {
		return all
	}
	return row(false)
}

// nameGap is the room between the name of a box and the box behind it.
const nameGap layout.Mm = 1.2

// nameBefore sets the name of a box before it, in as many lines as are no higher.
func nameBefore(c *block.Composer, d *job.Dim, name string, box layout.Block) layout.Block {
	if name == "" {
		return box
	}
	w := foldedWidth(c, layout.Caption, []string{name}, labelLines(layout.Caption))
	return layout.Middle(nameGap, rowLabel(c, d, layout.Caption, name, w), box)
}

// boxClock sets the boxes round a clock face, the first at the top, clockwise as
// seen from where one stands.
func boxClock(c *block.Composer, d *job.Dim, s Side) layout.Block {
	var places []draw.Place
	n := len(d.Positions.Cols)
	for i, p := range d.Positions.Cols {
		caption := p
		if i == 0 {
			caption = spoken(p, withUnit(c, d, s.caption))
		}
		places = append(places, draw.Place{Angle: float64(i) * 360 / float64(n), Box: Box(c, d, s.on(i), caption, false)})
	}
	return draw.Clock(c.Setter, clockR, places, true, d.At)
}

// clockR is the radius of a clock face.
const clockR layout.Mm = 7

// withUnit puts the unit into the caption of a block of boxes, where it stands once
// and not behind each box.
func withUnit(c *block.Composer, d *job.Dim, caption string) string {
	return spoken(caption, unitOf(c, d))
}

// unitOf is the unit of a box that has none behind it, empty where it has.
func unitOf(c *block.Composer, d *job.Dim) string {
	if d.Box.Form != reading.Digits {
		return ""
	}
	return c.W.Unit(d.Box.Unit.Print())
}

// boxGrid sets rows by columns of boxes with their names, turned on its side where
// that goes into the width and the way it was written does not. A list without
// columns is folded into as many columns as the width has room for.
func boxGrid(c *block.Composer, d *job.Dim, s Side, cols int, width layout.Mm) layout.Block {
	p := d.Positions
	if len(p.Cols) == 0 {
		return boxList(c, d, s, cols, width)
	}
	across := func(r, col int) int { return r*len(p.Cols) + col }
	down := func(r, col int) int { return across(col, r) }
	grid := rowsOf(c, d, s, p.Rows, p.Cols, across)
	if p.Kind == job.Log {
		return grid
	}
	if turned := rowsOf(c, d, s, p.Cols, p.Rows, down); cols > 0 && turned.W <= width && turned.H < grid.H {
		return turned
	}
	if grid.W <= width {
		return grid
	}
	if turned := rowsOf(c, d, s, p.Cols, p.Rows, down); turned.W <= width {
		return turned
	}
	var rows []layout.Block
	for i, r := range p.Rows {
		label := c.Words(layout.Sub, r)
		rows = append(rows, label, block.FlowRow(positionBoxes(c, d, s.on(across(i, 0)), p.Cols), width))
	}
	return layout.Above(layout.GapY, rows...)
}

// rowsOf sets one row of boxes a name, the captions above the first. at tells which
// reading stands in a row and column.
func rowsOf(c *block.Composer, d *job.Dim, s Side, down, across []string, at func(row, col int) int) layout.Block {
	labelW := labelWidth(c, down)
	var rows []layout.Block
	for i, r := range down {
		var row []layout.Block
		for k, col := range across {
			caption := ""
			if i == 0 {
				caption = spoken(col, withUnit(c, d, s.caption))
			}
			row = append(row, Box(c, d, s.on(at(i, k)), caption, false))
		}
		rows = append(rows, namedRow(c, d, r, labelW, layout.Bottom(layout.GapX, row...)))
	}
	return layout.Above(layout.GapY, rows...)
}

// namedRow sets the name of a row before its boxes.
func namedRow(c *block.Composer, d *job.Dim, name string, width layout.Mm, boxes layout.Block) layout.Block {
	label := c.Line(width, []layout.Run{layout.T(layout.Sub, name)}, layout.ParaOpts{Ref: d.At})
	return layout.Bottom(2, label.Pad(0, 0, 2.5, 0), boxes)
}

// boxList sets one box a name, down the first column and then down the next, in so many
// columns as are asked for, 0 for as many as look well.
func boxList(c *block.Composer, d *job.Dim, s Side, cols int, width layout.Mm) layout.Block {
	names := d.Positions.Rows
	labelW := labelWidth(c, names)
	one := labelW + 2 + Box(c, d, s, withUnit(c, d, s.caption), false).W
	if cols == 0 {
		cols = (len(names) + 2) / 3
	}
	cols = max(min(int((width+layout.GapX)/(one+layout.GapX)), cols), 1)
	tall := (len(names) + cols - 1) / cols
	var columns []layout.Block
	for i := 0; i < len(names); i += tall {
		var rows []layout.Block
		for k := i; k < min(i+tall, len(names)); k++ {
			caption := ""
			if k == i {
				caption = withUnit(c, d, s.caption)
			}
			rows = append(rows, namedRow(c, d, names[k], labelW, Box(c, d, s.on(k), caption, false)))
		}
		columns = append(columns, layout.Above(layout.GapY, rows...))
	}
	return layout.Beside(layout.GapX, columns...)
}

// PositionNames names every reading, rows by columns.
func PositionNames(p job.Positions) []string { return p.Labels() }

// labelWidth is the width of the longest name in a column of names.
func labelWidth(c *block.Composer, names []string) layout.Mm {
	w := layout.Mm(0)
	for _, n := range names {
		w = max(w, c.Width(layout.Sub, n))
	}
	return w
}

// AnswerWord is a fixed word of the catalogue, or the author's own.
func AnswerWord(c *block.Composer, a reading.Answer) string {
	if a.Word != reading.Literal {
		return string(c.W.Limit[a.Word])
	}
	return a.Phrase
}
