package templates

import (
	"slices"
	"strings"
	"unicode/utf8"

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
	var best []layout.Piece
	for _, width := range indexWidths {
		ps := c.indexTable(dims, width[0], width[1])
		if best == nil || height(ps) < height(best) && !slices.ContainsFunc(ps, func(p layout.Piece) bool { return len(p.Block.Misfits) > 0 }) {
			best = ps
		}
		if len(dims) > dimension.Many {
			break
		}
	}
	return best
}

// indexWidths are widths of the columns of limits and of sources: the pair is taken that
// makes the list lowest, of many dimensions the first.
var indexWidths = [][2]layout.Mm{{50, 28}, {44, 28}, {44, 23}, {38, 23}, {56, 23}}

// indexTable is the list with columns of these widths.
func (c *composer) indexTable(dims [][]*job.Dim, limit, source layout.Mm) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(w.Common.Mark, 21), block.Col(w.Common.WhatMeasured, 0), block.Col(w.Common.Limit, limit), block.Col(w.Index.Source, source), block.Col(w.Index.FoundAt, indexPage), block.Col(w.Index.LeftAt, indexPage))
	g.Table.MinH, g.Table.PadY = 0, 0.3
	var rows []layout.Row
	var changed []bool
	for _, ds := range dims {
		d := ds[0]
		var lines []layout.Block
		for _, d := range ds {
			lines = append(lines, c.indexPlace(g, d))
		}
		places := layout.Above(0, lines...)
		row := g.Row(d.At, places, g.Text(1, layout.Body, d.What, d.At), c.indexLimit(g, 2, d), c.indexSource(g, d))
		rows, changed = append(rows, row), append(changed, slices.ContainsFunc(ds, c.since.Dim))
	}
	return c.barredRows(c.ListSheet(w.Index.Rule, g, rows), changed)
}

// indexPage is the width of a column of steps with their pages.
const indexPage layout.Mm = 20

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
	return out
}

// indexPlace is the line of one place in its row: its mark, and across the row where it is
// read and set.
func (c *composer) indexPlace(g block.Grid, d *job.Dim) layout.Block {
	page := func(col int, st *job.Step, what string) layout.Block {
		x := layout.Mm(0)
		for i := range col {
			x += g.Table.Columns[i].Width
		}
		return g.Text(col, layout.Sub, c.whereRead(d, st, what), d.At).At(x, 0.3)
	}
	line := layout.Overlay(g.Mark(0, layout.Strong, d.Mark, d.At), page(4, d.FoundAt, "found "), page(5, d.LeftAt, "left "))
	line.W = g.Table.Room(0)
	return line
}

// A limitLine is one line of a limit in a list.
type limitLine struct {
	style layout.Style
	text  string
}

// indexLimit is the limit of a dimension in a column of a list: for closing, and for old parts.
func (c *composer) indexLimit(g block.Grid, col int, d *job.Dim) layout.Block {
	var lines []layout.Block
	for _, l := range c.limitsOf(d) {
		lines = append(lines, g.Text(col, l.style, l.text, d.At))
	}
	return layout.Above(0.3, lines...)
}

// limitLines are the texts of indexLimit.
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
			lines = append(lines, limitLine{layout.Sub, old.name + " " + dimension.PlainWords(c.W, old.l)})
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

// sourceText is where a limit comes from, or that nobody has said.
func (c *composer) sourceText(d *job.Dim) string {
	if d.NotSourced() {
		return c.W.Index.NotSourced
	}
	return numberBreaks(d.Source)
}

// indexSource is the source in its column.
func (c *composer) indexSource(g block.Grid, d *job.Dim) layout.Block {
	if d.NotSourced() {
		return c.Para(g.Table.Room(3), []layout.Run{{Text: c.sourceText(d), Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: d.At})
	}
	return g.Text(3, layout.Sub, c.sourceText(d), d.At)
}

// longNumber is from how many signs the number of a document may be parted.
const longNumber = 15

// numberBreaks lets long numbers of documents go on in the next line behind a dash;
// unlike marks and sizes they are not copied by hand.
func numberBreaks(source string) string {
	words := strings.Split(source, " ")
	for i, w := range words {
		if utf8.RuneCountInString(w) >= longNumber {
			words[i] = strings.ReplaceAll(w, "-", "-\u200b")
		}
	}
	return strings.Join(words, " ")
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
