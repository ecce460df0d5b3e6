package templates

import (
	"matchmark/packs/job"
	"strings"

	"matchmark/layout"
	"matchmark/packs/reading"
)

// critical sets the sheet that is asked for in the middle of the night: every
// dimension with a limit, as found and as left, and all that is easily missed.
func critical(c *composer) []layout.Piece {
	dims := c.criticalDims()
	if len(dims) == 0 {
		return nil
	}
	out := []layout.Piece{c.ruleLine(c.w.dims.criticalRule)}
	out = append(out, c.traps()...)
	w := c.w.dims
	found, left := c.criticalWidth(dims)
	g := c.grid(column{w.mark, 22}, column{w.what, 0}, column{w.limit, 56}, column{c.w.asFound, found}, column{c.w.asLeft, left}, column{c.w.initials, 21})
	var rows []layout.Row
	for _, d := range dims {
		rows = append(rows, c.criticalRow(g, d))
	}
	pieces := g.t.Pieces(rows)
	pieces[0].Gap = 3
	return append(out, pieces...)
}

// criticalDims are the dimensions of the sheet, merged ones once.
func (c *composer) criticalDims() []*job.Dim {
	var out []*job.Dim
	done := map[*job.Dim]bool{}
	for _, d := range c.job.Dims {
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

// traps lists what is easily missed, one thing a line in three columns, with the
// steps and their pages.
func (c *composer) traps() []layout.Piece {
	const columns = 3
	width := (c.width - (columns-1)*layout.GapX) / columns
	var things []string
	at := map[string][]layout.Run{}
	for _, s := range c.job.Sections {
		for _, st := range s.Steps {
			if st.Missed == "" || st.Undoes != nil && st.Undoes.Missed == st.Missed {
				continue // the row that undoes a step says the same again
			}
			where := fill(c.w.stepPage, st.No, c.page("step "+st.No))
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
	return []layout.Piece{{Block: layout.Above(1, c.heading(c.w.dims.traps), layout.Beside(layout.GapX, cols...)), KeepNext: true}}
}

// criticalWidth is the width of the columns of boxes: that of the widest box.
func (c *composer) criticalWidth(dims []*job.Dim) (found, left layout.Mm) {
	for _, d := range dims {
		found, left = max(found, c.criticalBoxes(d, true).W), max(left, c.criticalBoxes(d, false).W)
	}
	return max(found, 26) + 2.4, max(left, 26) + 2.4
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
		return c.box(d, side{copied: true}, "", true)
	}
	var out []layout.Block
	for _, w := range d.Worst() {
		caption := c.w.dims.smallest
		if w == job.Largest {
			caption = c.w.dims.largest
		}
		out = append(out, c.box(d, side{copied: true}, caption, true))
	}
	for _, g := range d.Groups() {
		out = append(out, c.groupBox(d, g, c.w.dims.group[g], true))
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
		ticks = append(ticks, c.Tick(layout.Body, c.answerWord(a), d.At))
	}
	return layout.Above(layout.GapY, ticks...)
}

// answerWord is a fixed word of the catalogue, or the author's own.
func (c *composer) answerWord(a reading.Answer) string {
	if a.Word != reading.Literal {
		return c.w.reading[a.Word]
	}
	return a.Phrase
}

// criticalRow is one dimension.
func (c *composer) criticalRow(g grid, d *job.Dim) layout.Row {
	what := []layout.Block{g.text(1, layout.Strong, d.What, d.At)}
	if state := strings.Join(c.stateLine(d), " · "); state != "" {
		what = append(what, g.text(1, layout.Sub, state, d.At))
	}
	var pages []string
	for _, p := range []string{c.whereRead(d, d.FoundAt, "found "), c.whereRead(d, d.LeftAt, "left ")} {
		if p != "" {
			pages = append(pages, p)
		}
	}
	mark := layout.Above(0.5, g.mark(0, layout.StepNo, d.Mark, d.At), g.text(0, layout.Caption, strings.Join(pages, ", "), d.At))
	if trap := trapOf(d); trap != "" {
		flag := layout.Run{Text: c.w.dims.missed, Style: layout.SubBold, Deco: layout.Inverse}
		what = append(what, c.Para(g.t.Room(1), []layout.Run{flag, layout.T(layout.SubBold, " "+trap)}, layout.ParaOpts{Ref: d.At}))
	}
	limit := c.indexLimit(g, d)
	var act []string
	for _, n := range []struct{ sentence, value string }{{c.w.ifOver, d.Over}, {c.w.ifUnder, d.Under}, {c.w.ifOut, d.Out}} {
		if n.value != "" {
			act = append(act, fill(n.sentence, n.value))
		}
	}
	limit = layout.Above(0.5, limit, g.text(2, layout.Sub, strings.Join(act, " · "), d.At))
	if d.NotSourced() {
		limit = layout.Above(0.5, limit, c.Para(g.t.Room(2), []layout.Run{{Text: c.w.notSourced, Style: layout.SubBold, Deco: layout.Boxed}}, layout.ParaOpts{Ref: d.At}))
	}
	row := g.row(d.At, mark, layout.Above(0.5, what...), limit, c.criticalBoxes(d, true), c.criticalBoxes(d, false),
		c.Box(layout.RoleInitials, "", d.At))
	row.Middle = true
	return row
}

// trapOf is what is easily missed at the steps that read or set a dimension.
func trapOf(d *job.Dim) string {
	for _, st := range []*job.Step{d.FoundAt, d.LeftAt} {
		if st != nil && st.Missed != "" {
			return st.Missed
		}
	}
	return ""
}
