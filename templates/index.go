package templates

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/words"
)

// index sets the list of all dimensions: mark, limit, source, and where each is read and
// set. Places of one dimension of which the same is said are lines of one row.
func index(c *composer) []layout.Piece {
	if len(c.Job.Dims) == 0 {
		return nil
	}
	dims := c.indexRows()
	mark, page := c.indexMarks(dims)
	var best indexTable
	taken := 0
	var places []layout.Block // alike in all widths but for where the steps stand in their line
	for i, source := range indexSources {
		t := c.indexTable(mark, source, page)
		if i == 0 {
			places = c.indexPlaces(t.grid, dims)
		}
		if c.fillIndex(&t, dims, places); i == 0 || t.high < best.high && !t.misfits {
			best, taken = t, i
		}
		if len(dims) > dimension.Many {
			break
		}
	}
	if taken > 0 {
		places = c.indexPlaces(best.grid, dims)
	}
	var changed []bool
	for i, ds := range dims {
		best.rows[i].Cells[0] = places[i]
		changed = append(changed, slices.ContainsFunc(ds, c.since.Dim))
	}
	return append(c.barredRows(c.ListSheet(c.W.Index.Rule, best.grid, best.rows), changed), c.coarseLine(dims)...)
}

// indexSources are widths of the column of sources: that is taken that makes the list
// lowest, of many dimensions the first.
var indexSources = []layout.Mm{29, 23, 26, 32, 36}

// An indexTable is the list with columns of some widths: its rows, how high it is, and whether
// something does not fit.
type indexTable struct {
	grid    block.Grid
	rows    []layout.Row
	high    layout.Mm
	misfits bool
}

// indexTable is the list without its rows.
func (c *composer) indexTable(mark, source, page layout.Mm) indexTable {
	w := c.W
	g := c.Grid(block.Col(w.Common.Mark, mark), block.Col(w.Common.WhatMeasured+", "+w.Common.Limit, 0), block.Col(w.Index.Source, source), block.Col(w.Index.FoundAt, page), block.Col(w.Index.LeftAt, page))
	g.Table.MinH, g.Table.PadY = 0, 0.3
	head := g.Table.Pieces(nil)[0].Block
	return indexTable{grid: g, high: head.H, misfits: len(head.Misfits()) > 0}
}

// fillIndex sets the rows of a list, each as high as its places or its words.
func (c *composer) fillIndex(t *indexTable, dims [][]*job.Dim, places []layout.Block) {
	t.rows = make([]layout.Row, len(dims))
	for i, ds := range dims {
		t.rows[i] = t.grid.Row(ds[0].At, places[i], c.indexWhat(t.grid, ds[0]), c.indexSource(t.grid, ds[0]))
		row := layout.Mm(0)
		for _, cell := range t.rows[i].Cells {
			row = max(row, cell.H)
			t.misfits = t.misfits || len(cell.Misfits()) > 0
		}
		t.high += row + 2*t.grid.Table.PadY
	}
}

// Widths of the columns of marks and of steps with their pages: as wide as their texts, up
// to where marks are set smaller and pages in two lines.
const (
	leastIndexMark, mostIndexMark layout.Mm = 15, 22.5
	leastIndexPage, mostIndexPage layout.Mm = 17, 20
)

// indexMarks are these widths.
func (c *composer) indexMarks(dims [][]*job.Dim) (mark, page layout.Mm) {
	const pads = 2.5
	mark, page = leastIndexMark, leastIndexPage
	for _, ds := range dims {
		for _, like := range c.samePlaces(ds) {
			wide := c.Width(layout.Strong, like[0].Mark)
			if len(like) > 1 {
				wide = c.Line(0, sharedMark(like), layout.ParaOpts{}).W
			}
			mark = max(mark, wide+pads)
		}
	}
	for _, d := range slices.Concat(dims...) {
		for _, at := range []string{c.whereRead(d, d.FoundAt, "found "), c.whereRead(d, d.LeftAt, "left ")} {
			page = max(page, c.Width(layout.Sub, at)+pads)
		}
	}
	return min(mark, mostIndexMark), min(page, mostIndexPage)
}

// indexWhat is what is measured, and its limit: beside it from the middle of the column on
// or to its right edge, or below where both do not go on one line; behind it where the limit
// is longer than a line.
func (c *composer) indexWhat(g block.Grid, d *job.Dim) layout.Block {
	const col, between = 1, 3
	room := g.Table.Room(col)
	name, wide := c.Width(layout.Body, d.What), layout.Mm(0)
	var limits []layout.Block
	for _, l := range c.limitsOf(d) {
		wide = max(wide, c.Width(l.style, l.text))
		limits = append(limits, g.Text(col, l.style, l.text, d.At))
	}
	what, x := g.Text(col, layout.Body, d.What, d.At), min(max(room/2, name+between), room-wide)
	var b layout.Block
	switch limit := layout.Above(0, limits...); {
	case x >= name+between:
		b = layout.Overlay(what, limit.At(x, 0))
	case wide <= room:
		b = layout.Above(0, what, limit.At(min(room/2, room-wide), 0))
	default:
		first := c.limitsOf(d)[0]
		runs := []layout.Run{layout.T(layout.Body, d.What+"  "), layout.T(first.style, first.text)}
		b = layout.Above(0, append([]layout.Block{c.Para(room, runs, layout.ParaOpts{Ref: d.At})}, limits[1:]...)...)
	}
	b.W = room
	return b
}

// indexRows are the dimensions of the rows: printed ones once, neighbouring places of
// which the same is said together.
func (c *composer) indexRows() [][]*job.Dim {
	var out [][]*job.Dim
	done := map[*job.Dim]bool{}
	said := ""
	for _, d := range c.Job.Dims {
		if d.In != nil {
			d = d.In
		}
		if done[d] {
			continue
		}
		done[d] = true
		says := strings.Join(append([]string{d.Base, d.What, c.sourceText(d)}, c.limitLines(d)...), "|")
		if n := len(out); n > 0 && says == said {
			out[n-1] = append(out[n-1], d)
			continue
		}
		out, said = append(out, []*job.Dim{d}), says
	}
	slices.SortStableFunc(out, func(a, b []*job.Dim) int { return job.ByNumber(a[0].Base, b[0].Base) })
	return out
}

// A limitLine is one line of a limit in a list.
type limitLine struct {
	style layout.Style
	text  string
}

// limitLines are the texts of the limits of a dimension.
func (c *composer) limitLines(d *job.Dim) []string {
	var out []string
	for _, l := range c.limitsOf(d) {
		out = append(out, l.text)
	}
	return out
}

// limitsOf are the limits of a dimension in lines; of one that is only recorded the unit of
// its boxes.
func (c *composer) limitsOf(d *job.Dim) []limitLine {
	text := func(l *reading.Limit, by []*reading.Limit) string {
		switch {
		case len(by) > 0:
			return dimension.ByPosition(c.Composer, d, by)
		case d.Zone(l) != "":
			return d.Zone(l) + " " + dimension.PlainWords(c.W, l)
		}
		return c.plainLimit(l)
	}
	var lines []limitLine
	switch {
	case d.Left != nil:
		lines = append(lines, limitLine{layout.Strong, text(d.Left, d.LeftBy)})
	case d.WatchedOnly():
		lines = append(lines, limitLine{layout.Strong, text(d.Found, d.FoundBy)})
	case unitWord(c.W, d) != "":
		lines = append(lines, limitLine{layout.Body, c.W.Common.RecordOnly + ", " + unitWord(c.W, d)})
	default:
		lines = append(lines, limitLine{layout.Body, c.W.Common.RecordOnly})
	}
	for _, old := range []struct {
		l    *reading.Limit
		name string
	}{{d.Reuse, c.W.Common.OldPart}, {d.Repair, c.W.Common.Mended}} {
		if old.l != nil {
			lines = append(lines, limitLine{layout.Sub, dimension.OldWords(c.W, old.name, old.l, dimension.WornWords(c.Composer, d, old.l))})
		}
	}
	return lines
}

// plainLimit words a limit of any kind in one line, the answers of one that is
// ticked too.
func (c *composer) plainLimit(l *reading.Limit) string {
	if s := dimension.PlainWords(c.W, l); s != "" {
		return s
	}
	s := ""
	for _, a := range l.Answers() {
		if s != "" {
			s += " / "
		}
		s += dimension.AnswerWord(c.Composer, a)
	}
	return s
}

// unitWord is the unit of the boxes of a dimension; those without a number have none.
func unitWord(w *words.Catalogue, d *job.Dim) string {
	if d.Box.Form == reading.Digits || d.Box.Form == reading.Fraction {
		return w.Unit(d.Box.Unit.Print())
	}
	return ""
}

// whereRead is the step and the page where the boxes of a dimension stand.
func (c *composer) whereRead(d *job.Dim, st *job.Step, what string) string {
	if st == nil {
		return ""
	}
	return c.W.Common.StepPage.With(st.No, c.Page(what+d.Mark))
}

// LimitText words a limit as it is printed, in one line, blanks left out.
func LimitText(l *reading.Limit) string { return dimension.PlainWords(words.English, l) }
