package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/words"
)

// critical sets the sheet that is asked for in the middle of the night: every
// dimension with a limit, as found and as left, and all that is easily missed.
func critical(c *composer) []layout.Piece {
	dims := c.criticalDims()
	if len(dims) == 0 {
		return nil
	}
	out := []layout.Piece{c.RuleLine(c.W.Critical.Rule)}
	out = append(out, c.easilyMissed()...)
	g, wide := c.criticalGrids(dims)
	table := &layout.TableOf{Columns: len(g.Table.Columns)}
	g.Table.Of, wide.Table.Of = table, table
	pieces := g.Table.Pieces(make([]layout.Row, 1))
	head := pieces[0]
	head.Gap = 3
	out = append(out, head)
	var name *layout.Block
	for i, d := range dims {
		if i == 0 || d.Base != dims[i-1].Base || c.criticalSaid(d) != c.criticalSaid(dims[i-1]) {
			b := c.criticalName(d, table)
			name = &b
			out = append(out, layout.Piece{Block: b, KeepNext: true, Under: pieces[1].Under})
		}
		t, cells := g, c.criticalRow(g, d, false)
		if !c.besides(g, d) {
			t, cells = wide, c.criticalRow(wide, d, true)
		}
		row := t.Bare().Pieces([]layout.Row{cells})[0]
		row.Under = append(pieces[1].Under[:1:1], name)
		out = append(out, row)
	}
	return out
}

// criticalSaid is what stands above the rows of a dimension: of the next place of the
// same dimension it is not said again.
func (c *composer) criticalSaid(d *job.Dim) string {
	return strings.Join(append(dimension.StateLine(c.Composer, d), d.What, c.criticalActs(d), missedAt(d)), "|")
}

// criticalName is what is measured, how, what is done when it is out of its limit, and
// what is easily missed there; drawn again where a page begins between its rows.
func (c *composer) criticalName(d *job.Dim, of *layout.TableOf) layout.Block {
	t := layout.Table{PadX: 1.2, PadY: 0.6, Grid: true, Columns: []layout.Column{{Width: c.Span, Span: of.Columns}}, Of: of}
	runs := []layout.Run{layout.T(layout.Strong, d.What+"  ")}
	facts := dimension.StateLine(c.Composer, d)
	if acts := c.criticalActs(d); acts != "" {
		facts = append(facts, acts)
	}
	runs = append(runs, layout.T(layout.Sub, strings.Join(facts, " · ")))
	if trap := missedAt(d); trap != "" {
		runs = append(runs, layout.T(layout.Sub, "  "), layout.Run{Text: c.W.Critical.EasilyMissed, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.SubBold, " "+trap))
	}
	return t.Block([]layout.Row{{Cells: []layout.Block{c.Para(t.Room(0), runs, layout.ParaOpts{Ref: d.At})}, Ref: d.At}})
}

// criticalActs say what is done when a reading is out of its limit.
func (c *composer) criticalActs(d *job.Dim) string {
	var act []string
	for _, n := range []struct {
		sentence words.Sentence
		value    string
	}{{c.W.Common.IfOver, d.Over}, {c.W.Common.IfUnder, d.Under}, {c.W.Common.IfOut, d.Out}} {
		if n.value != "" {
			act = append(act, n.sentence.With(n.value))
		}
	}
	return strings.Join(act, " · ")
}

// criticalDims are the dimensions of the sheet, merged ones once.
func (c *composer) criticalDims() []*job.Dim {
	var out []*job.Dim
	done := map[*job.Dim]bool{}
	for _, d := range c.Job.Dims {
		critical := d.Critical
		if d.In != nil {
			d = d.In
		}
		if critical && !done[d] && d.Box.Form != reading.Grid {
			done[d] = true
			out = append(out, d)
		}
	}
	return out
}

// easilyMissed lists what is easily missed, one thing a line in three columns, with the
// steps and their pages.
func (c *composer) easilyMissed() []layout.Piece {
	const columns = 2
	width := (c.Span - (columns-1)*layout.GapX) / columns
	var things []string
	at := map[string][]layout.Run{}
	for _, s := range c.Job.Sections {
		for _, st := range s.Steps {
			if st.Missed == "" || st.Undoes != nil && st.Undoes.Missed == st.Missed {
				continue // the row that undoes a step says the same again
			}
			where := c.W.Common.StepPage.With(st.No, c.Page("step "+st.No))
			if p := st.Place.Label; p != "" {
				where += " " + p
			}
			if at[st.Missed] == nil {
				things = append(things, st.Missed)
			}
			at[st.Missed] = append(at[st.Missed], layout.Run{Text: where, Style: layout.SubBold, Deco: layout.Boxed, Ref: st.At}, layout.Run{Text: " ", Style: layout.Body, Ref: st.At})
		}
	}
	if len(things) == 0 {
		return nil
	}
	var lines []layout.Block
	for _, s := range things {
		runs := append(at[s], layout.Run{Text: s, Style: layout.Body, Ref: at[s][0].Ref})
		lines = append(lines, c.Para(width, runs, layout.ParaOpts{Hang: 3}))
	}
	var cols []layout.Block
	each := (len(lines) + columns - 1) / columns
	for i := 0; i < len(lines); i += each {
		cols = append(cols, layout.Above(0.6, lines[i:min(i+each, len(lines))]...))
	}
	return []layout.Piece{{Block: layout.Above(1, c.Heading(c.W.Critical.EasilyMissedTitle), layout.Beside(layout.GapX, cols...)), KeepNext: true}}
}

// criticalGrids are the table of the sheet, and that of the rows whose boxes do not go
// beside each other: they stand in one column, those as left below those as found.
func (c *composer) criticalGrids(dims []*job.Dim) (beside, stacked block.Grid) {
	w := c.W
	var found, left layout.Mm
	for _, d := range dims {
		found, left = max(found, c.criticalBoxes(d, true).W), max(left, c.criticalBoxes(d, false).W)
	}
	found, left = max(found, 26)+2.4, max(left, 26)+2.4
	if rest := c.Span - markCol - initialsCol; found+left > rest-leastLimit {
		// Not all go: the limit has its room, and what does not go is stacked.
		most := (rest - goodLimit) / 2
		found, left = min(found, most), min(left, most)
	}
	cols := []block.Column{block.Col(w.Common.Mark, markCol), block.Col(w.Common.Limit, 0), block.Col(w.Common.AsFound, found), block.Col(w.Common.AsLeft, left), block.Col(w.Common.Initials, initialsCol)}
	both := append(cols[:2:2], block.Col(w.Common.AsFound+", "+w.Common.AsLeft, found+left), cols[4])
	beside, stacked = c.Grid(cols...), c.Grid(both...)
	stacked.Table.Columns[2].Span = 2
	beside.Table.PadY, stacked.Table.PadY = layout.GapY/2, layout.GapY/2 // boxes of neighbouring rows
	return beside, stacked
}

// besides reports whether the boxes of a dimension go beside each other, and beside its limit.
func (c *composer) besides(g block.Grid, d *job.Dim) bool {
	return c.criticalBoxes(d, true).W <= g.Table.Room(2) && c.criticalBoxes(d, false).W <= g.Table.Room(3) && len(c.indexLimit(g, 1, d).Misfits) == 0
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
	var out []layout.Block
	box := func(caption string) {
		out = append(out, dimension.Box(c.Composer, d, dimension.Side{Copied: true}, caption, true))
	}
	extremes := func(list []job.Extreme) {
		for _, w := range list {
			caption := c.W.Critical.Smallest
			if w == job.Largest {
				caption = c.W.Critical.Largest
			}
			box(caption)
		}
	}
	if len(d.LeftBy) == 0 {
		extremes(d.Worst())
	}
	for _, at := range d.ByLimit(d.LeftBy) {
		// The smallest of all positions tells nothing where they have limits of their own.
		width := dimension.Box(c.Composer, d, dimension.Side{Copied: true}, "", true).W
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.SubBold, strings.Join(at.Names, ", "))}, layout.ParaOpts{Ref: d.At}))
		if at.Boxes == 1 {
			box("")
		} else {
			extremes(at.Worst())
		}
	}
	for _, g := range d.Groups() {
		out = append(out, dimension.GroupBox(c.Composer, d, g, c.W.Common.Group[g], true))
	}
	return layout.Above(layout.GapY, out...)
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

// Widths of the critical sheet: the least that a limit is set in, what it has where some
// boxes are stacked, the columns of marks and of initials.
const (
	leastLimit  layout.Mm = 28
	goodLimit   layout.Mm = 36
	markCol     layout.Mm = 22
	initialsCol layout.Mm = 20.4
)

// criticalRow is one dimension at one place: its limit and its boxes, those as left below
// those as found where they do not go beside each other.
func (c *composer) criticalRow(g block.Grid, d *job.Dim, stacked bool) layout.Row {
	var pages []string
	for _, p := range []string{c.whereRead(d, d.FoundAt, "found "), c.whereRead(d, d.LeftAt, "left ")} {
		if p != "" {
			pages = append(pages, p)
		}
	}
	mark := layout.Above(0.5, g.Mark(0, layout.StepNo, d.Mark, d.At), g.Text(0, layout.Caption, strings.Join(pages, ", "), d.At))
	limit := c.indexLimit(g, 1, d)
	if d.NotSourced() {
		limit = layout.Above(0.5, limit, c.Para(g.Table.Room(1), []layout.Run{{Text: c.W.Common.NotSourced, Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: d.At}))
	}
	found, left := c.criticalBoxes(d, true), c.criticalBoxes(d, false)
	cells := []layout.Block{mark, limit, found, left}
	if stacked {
		named := func(name string, b layout.Block) layout.Block {
			if b.Empty() {
				return b
			}
			return layout.Above(0.3, c.Words(layout.Caption, name), b)
		}
		boxes := block.FlowRow([]layout.Block{named(c.W.Common.AsFound, found), named(c.W.Common.AsLeft, left)}, g.Table.Room(2))
		cells = append(cells[:2], boxes)
	}
	row := g.Row(d.At, append(cells, c.Box(layout.RoleInitials, "", d.At))...)
	row.Middle = true
	return row
}

// missedAt is what is easily missed at the steps that read or set a dimension.
func missedAt(d *job.Dim) string {
	for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
		if st != nil && st.Missed != "" {
			return st.Missed
		}
	}
	return ""
}
