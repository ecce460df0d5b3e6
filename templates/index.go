package templates

import (
	"matchmark/packs/job"
	"strings"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/reading"
)

// index sets the list of all dimensions: mark, limit, unit, source, and where each
// is read and set.
func index(c *composer) []layout.Piece {
	if len(c.job.Dims) == 0 {
		return nil
	}
	w := c.w
	g := c.grid(col(w.Common.Mark, 20), col(w.Common.WhatMeasured, 0), col(w.Common.Limit, 48), col(w.Index.Unit, 10), col(w.Index.Source, 26), col(w.Index.FoundAt, 18), col(w.Index.LeftAt, 18))
	g.table.MinH = 0
	var rows []layout.Row
	done := map[*job.Dim]bool{}
	for _, d := range c.job.Dims {
		if d.In != nil {
			d = d.In
		}
		if done[d] {
			continue
		}
		done[d] = true
		row := g.row(d.At, g.mark(0, layout.Strong, d.Mark, d.At), g.text(1, layout.Body, d.What, d.At), c.indexLimit(g, d),
			g.text(3, layout.Body, unitWord(d), d.At), c.indexSource(g, d), g.text(5, layout.Body, c.whereRead(d, d.FoundAt, "found "), d.At))
		left := c.whereRead(d, d.LeftAt, "left ")
		if d.Left == nil {
			left = w.Common.RecordOnly
		}
		row.Cells = append(row.Cells, g.text(6, layout.Body, left, d.At))
		rows = append(rows, row)
	}
	return c.listSheet(w.Index.Rule, g, rows)
}

// indexLimit is the limit of a dimension in the list: for closing, and for old parts.
func (c *composer) indexLimit(g grid, d *job.Dim) layout.Block {
	text := func(l *reading.Limit, by []*reading.Limit) string {
		switch {
		case len(by) > 0:
			return c.byPosition(d, by)
		case d.Zone(l) != "":
			return d.Zone(l) + " " + plainWords(c.w, l)
		}
		return c.plainLimit(l)
	}
	var lines []layout.Block
	switch {
	case d.Left != nil:
		lines = append(lines, g.text(2, layout.Strong, text(d.Left, d.LeftBy), d.At))
	case d.WatchedOnly():
		lines = append(lines, g.text(2, layout.Strong, text(d.Found, d.FoundBy), d.At))
	default:
		lines = append(lines, g.text(2, layout.Body, c.w.Common.RecordOnly, d.At))
	}
	for _, old := range []struct {
		l    *reading.Limit
		name string
	}{{d.Reuse, c.w.Common.OldPart}, {d.Repair, c.w.Common.Mended}} {
		if old.l != nil {
			lines = append(lines, g.text(2, layout.Sub, old.name+" "+plainWords(c.w, old.l), d.At))
		}
	}
	return layout.Above(0.3, lines...)
}

// plainLimit words a limit of any kind in one line, the answers of one that is
// ticked too.
func (c *composer) plainLimit(l *reading.Limit) string {
	if s := plainWords(c.w, l); s != "" {
		return s
	}
	s := ""
	for _, a := range l.Answers() {
		if s != "" {
			s += " / "
		}
		s += c.answerWord(a)
	}
	return s
}

// indexSource is where a limit comes from, or that nobody has said.
func (c *composer) indexSource(g grid, d *job.Dim) layout.Block {
	if d.NotSourced() {
		return c.Para(g.table.Room(4), []layout.Run{{Text: c.w.Index.NotSourced, Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: d.At})
	}
	return g.text(4, layout.Sub, numberBreaks(d.Source), d.At)
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
	return c.w.Common.StepPage.With(st.No, c.page(what+d.Mark))
}
