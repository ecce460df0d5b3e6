package templates

import (
	"strings"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/words"
)

// index sets the list of all dimensions: mark, limit, unit, source, and where each
// is read and set.
func index(c *composer) []layout.Piece {
	if len(c.Job.Dims) == 0 {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Common.Mark, 20), block.Col(w.Common.WhatMeasured, 0), block.Col(w.Common.Limit, 48), block.Col(w.Index.Unit, 10), block.Col(w.Index.Source, 26), block.Col(w.Index.FoundAt, 18), block.Col(w.Index.LeftAt, 19))
	g.Table.MinH, g.Table.PadY = 0, 0.4
	var rows []layout.Row
	done := map[*job.Dim]bool{}
	for _, d := range c.Job.Dims {
		if d.In != nil {
			d = d.In
		}
		if done[d] {
			continue
		}
		done[d] = true
		row := g.Row(d.At, g.Mark(0, layout.Strong, d.Mark, d.At), g.Text(1, layout.Body, d.What, d.At), c.indexLimit(g, 2, d),
			g.Text(3, layout.Body, unitWord(d), d.At), c.indexSource(g, d), g.Text(5, layout.Sub, c.whereRead(d, d.FoundAt, "found "), d.At))
		left := c.whereRead(d, d.LeftAt, "left ")
		if d.Left == nil {
			left = w.Common.RecordOnly
		}
		row.Cells = append(row.Cells, g.Text(6, layout.Sub, left, d.At))
		rows = append(rows, row)
	}
	return c.ListSheet(w.Index.Rule, g, rows)
}

// indexLimit is the limit of a dimension in a column of a list: for closing, and for old parts.
func (c *composer) indexLimit(g block.Grid, col int, d *job.Dim) layout.Block {
	text := func(l *reading.Limit, by []*reading.Limit) string {
		switch {
		case len(by) > 0:
			return dimension.ByPosition(c.Composer, d, by)
		case d.Zone(l) != "":
			return d.Zone(l) + " " + dimension.PlainWords(c.W, l)
		}
		return c.plainLimit(l)
	}
	var lines []layout.Block
	switch {
	case d.Left != nil:
		lines = append(lines, g.Text(col, layout.Strong, text(d.Left, d.LeftBy), d.At))
	case d.WatchedOnly():
		lines = append(lines, g.Text(col, layout.Strong, text(d.Found, d.FoundBy), d.At))
	default:
		lines = append(lines, g.Text(col, layout.Body, c.W.Common.RecordOnly, d.At))
	}
	for _, old := range []struct {
		l    *reading.Limit
		name string
	}{{d.Reuse, c.W.Common.OldPart}, {d.Repair, c.W.Common.Mended}} {
		if old.l != nil {
			lines = append(lines, g.Text(col, layout.Sub, old.name+" "+dimension.PlainWords(c.W, old.l), d.At))
		}
	}
	return layout.Above(0.3, lines...)
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

// indexSource is where a limit comes from, or that nobody has said.
func (c *composer) indexSource(g block.Grid, d *job.Dim) layout.Block {
	if d.NotSourced() {
		return c.Para(g.Table.Room(4), []layout.Run{{Text: c.W.Index.NotSourced, Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: d.At})
	}
	return g.Text(4, layout.Sub, numberBreaks(d.Source), d.At)
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
func unitWord(d *job.Dim) string {
	if d.Box.Form == reading.Digits || d.Box.Form == reading.Fraction {
		return d.Box.Unit.Print()
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
