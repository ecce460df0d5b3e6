package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// Widths of the critical sheet: the columns of marks, which takes what the boxes leave, and
// of initials.
const (
	leastMark   layout.Mm = 22
	initialsCol layout.Mm = 20.4
)

// mostBoxes is the width that the boxes of one side may take beside those of the other, and
// mostTight that where the initials stand below the mark.
func (c *composer) mostBoxes() layout.Mm { return (c.Span-leastMark-initialsCol)/2 - 2.4 }
func (c *composer) mostTight() layout.Mm { return (c.Span-leastMark)/2 - 2.4 }

// tight reports whether the boxes of both sides go on one line only where the initials
// stand below the mark.
func (c *composer) tight(d *job.Dim) bool {
	if d.FoundAt == nil || d.LeftAt == nil || d.Box.Form != reading.Digits && d.Box.Form != reading.Fraction || d.Positions.Boxes() == 1 {
		return false
	}
	row := block.RowWidth(c.severalBoxes(d))
	return row > c.mostBoxes() && row <= c.mostTight()
}

// nearRule is the room between a box and the rule of its row. Where boxes stand above those of a
// row, and not what is measured, the row is higher by belowBoxes, so that they are apart.
const nearRule, belowBoxes layout.Mm = 0.8, layout.GapY - 2*nearRule

// under gives the cells of a row the room that they need below other boxes.
func under(named bool, cells []layout.Block) []layout.Block {
	if named {
		return cells
	}
	for i, b := range cells {
		if !b.Empty() {
			cells[i] = b.Pad(belowBoxes, 0, 0, 0)
		}
	}
	return cells
}

// tightRow is a row of such a dimension.
func (c *composer) tightRow(d *job.Dim, of *layout.TableOf, named bool) []layout.Piece {
	boxes := layout.Bottom(layout.GapX, c.severalBoxes(d)...)
	side := boxes.W + 2.4
	g := c.Grid(block.Col("", 0), block.Col("", side), block.Col("", side))
	g.Table.PadY, g.Table.Of = nearRule, of
	g.Table.Columns[2].Span = 2
	mark := c.criticalMark(g, d)
	// The heads above the table are those of other columns.
	headed := func(side string) layout.Block { return layout.Above(0.3, c.Words(layout.Caption, side), boxes) }
	row := g.Row(d.At, under(named, []layout.Block{layout.Above(0.8, mark, c.Box(layout.RoleInitials, c.W.Common.Initials, d.At)), headed(c.W.Common.AsFound), headed(c.W.Common.AsLeft)})...)
	row.Middle = true
	return g.Bare().Pieces([]layout.Row{row})
}

// criticalMark is the mark of a row with the pages of its boxes. Text needs less room above
// and below it than a box.
func (c *composer) criticalMark(g block.Grid, d *job.Dim) layout.Block {
	var pages []string
	for _, p := range []string{c.whereRead(d, d.FoundAt, "found "), c.whereRead(d, d.LeftAt, "left ")} {
		if p != "" {
			pages = append(pages, p)
		}
	}
	return layout.Above(0.3, g.Mark(0, layout.StepNo, d.Mark, d.At), g.Text(0, layout.Caption, strings.Join(pages, ", "), d.At)).Pad(-1, 0, 0, 0)
}

// criticalGrids are the table of the sheet, and that of the rows whose boxes do not go
// beside each other: they stand in one column, those as left below those as found.
func (c *composer) criticalGrids(dims []*job.Dim) (beside, stacked block.Grid) {
	w := c.W
	var found, left layout.Mm
	for _, d := range dims {
		if c.tight(d) {
			continue
		}
		found, left = max(found, c.criticalBoxes(d, true).W), max(left, c.criticalBoxes(d, false).W)
	}
	found, left = min(max(found, 26), c.mostBoxes())+2.4, min(max(left, 26), c.mostBoxes())+2.4
	cols := []block.Column{block.Col(w.Common.Mark, 0), block.Col(w.Common.AsFound, found), block.Col(w.Common.AsLeft, left), block.Col(w.Common.Initials, initialsCol)}
	both := []block.Column{cols[0], block.Col(w.Common.AsFound+", "+w.Common.AsLeft, found+left), cols[3]}
	beside, stacked = c.Grid(cols...), c.Grid(both...)
	stacked.Table.Columns[1].Span = 2
	beside.Table.PadY, stacked.Table.PadY = nearRule, nearRule
	return beside, stacked
}

// besides reports whether the boxes of a dimension go beside each other.
func (c *composer) besides(g block.Grid, d *job.Dim) bool {
	return c.criticalBoxes(d, true).W <= g.Table.Room(1) && c.criticalBoxes(d, false).W <= g.Table.Room(2)
}

// criticalBoxes are the boxes of one side: one for one reading, of several those that
// the limit looks at. All of them stand on the page that the row names.
func (c *composer) criticalBoxes(d *job.Dim, found bool) layout.Block {
	if found && d.FoundAt == nil || !found && d.LeftAt == nil {
		return layout.Block{}
	}
	switch form := d.Box.Form; {
	case form == reading.Line:
		return c.WideBox(layout.RoleWords, 40, 1, "", d.At)
	case form != reading.Digits && form != reading.Fraction:
		return c.answerTicks(d)
	case d.Positions.Boxes() == 1:
		return dimension.Box(c.Composer, d, dimension.Side{Copied: true}, "", true)
	}
	boxes := c.severalBoxes(d)
	if row := layout.Bottom(layout.GapX, boxes...); row.W <= c.mostBoxes() {
		return row
	}
	if d.FoundAt == nil || d.LeftAt == nil {
		return block.FlowRow(boxes, 2*c.mostBoxes()) // there are none of the other side
	}
	return block.FlowRow(boxes, c.mostBoxes())
}

// severalBoxes are the boxes of a dimension with several readings, with their unit in the
// caption: the extremes that its limits look at, and those of its groups.
func (c *composer) severalBoxes(d *job.Dim) []layout.Block {
	box := func(caption string) layout.Block {
		if d.Box.Form == reading.Digits {
			caption = strings.TrimPrefix(caption+", "+unitWord(c.W, d), ", ")
		}
		return dimension.Box(c.Composer, d, dimension.Side{Copied: true}, caption, false)
	}
	extremes := func(list []job.Extreme) []layout.Block {
		var out []layout.Block
		for _, w := range list {
			caption := c.W.Critical.Smallest
			if w == job.Largest {
				caption = c.W.Critical.Largest
			}
			out = append(out, box(caption))
		}
		return out
	}
	var out []layout.Block
	by := d.LeftBy
	if d.Left == nil {
		by = d.FoundBy
	}
	if len(by) == 0 {
		out = extremes(d.Worst())
	}
	for _, at := range d.ByLimit(by) {
		// The smallest of all positions tells nothing where they have limits of their own.
		boxes := []layout.Block{box("")}
		if at.Boxes > 1 {
			boxes = extremes(at.Worst())
		}
		of := layout.Bottom(layout.GapX, boxes...)
		name := c.Para(of.W, []layout.Run{layout.T(layout.SubBold, strings.Join(at.Names, ", "))}, layout.ParaOpts{Ref: d.At})
		out = append(out, layout.Above(0.3, name, of))
	}
	for _, g := range d.Groups() {
		b := d.GroupBox(g)
		out = append(out, c.Value(layout.Number{Before: b.Before, After: b.After, Sign: b.Signed, Copied: true, Ref: d.At,
			Caption: strings.TrimSuffix(c.W.Common.Group[g]+", "+c.W.Unit(b.Unit.Print()), ", ")}))
	}
	return out
}

// answerTicks are the boxes to tick of a dimension that is answered.
func (c *composer) answerTicks(d *job.Dim) layout.Block {
	l := d.Left
	if l == nil {
		l = d.Found
	}
	var ticks []layout.Block
	for _, a := range l.Answers() {
		ticks = append(ticks, c.Tick(layout.Body, dimension.AnswerWord(c.Composer, a), d.At))
	}
	return block.FlowRow(ticks, 40)
}

// criticalRow is one dimension at one place: its mark and its boxes, those as left below
// those as found where they do not go beside each other.
func (c *composer) criticalRow(g block.Grid, d *job.Dim, stacked, named bool) layout.Row {
	mark := c.criticalMark(g, d).Pad(0, 0, -1, 0)
	found, left := c.criticalBoxes(d, true), c.criticalBoxes(d, false)
	cells := []layout.Block{mark, found, left}
	if stacked {
		named := func(name string, b layout.Block) layout.Block {
			if b.Empty() {
				return b
			}
			return layout.Above(0.3, c.Words(layout.Caption, name), b)
		}
		boxes := block.FlowRow([]layout.Block{named(c.W.Common.AsFound, found), named(c.W.Common.AsLeft, left)}, g.Table.Room(1))
		cells = []layout.Block{mark, boxes}
	}
	row := g.Row(d.At, under(named, append(cells, c.Box(layout.RoleInitials, "", d.At)))...)
	row.Middle = true
	return row
}
