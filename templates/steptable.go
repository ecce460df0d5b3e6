package templates

import (
	"matchmark/layout"
	"matchmark/packs/job"
)

// stepTable sets one step at many places as a table: a row a place, with its number,
// where its parts go or come from, the readings and who did it.
func (c *composer) stepTable(steps []*job.Step) []layout.Piece {
	w := c.w
	first := steps[0]
	cols := []column{col(w.Common.Number, 15), col(w.Step.Place, 0)}
	if len(first.Fit) > 0 {
		cols = append(cols, col(w.Common.CountOut, c.Box(layout.RoleCount, "", first.At).W+3))
	}
	for _, d := range first.Measure {
		cols = append(cols, col(c.tableHead(d, w.Common.AsFound), c.tableBox(d, false).W+3))
	}
	for _, d := range first.Set {
		if d.FoundAt != nil {
			cols = append(cols, col(d.Base+" "+w.Common.AsFound, c.box(d, side{}, "", true).W+3))
		}
		cols = append(cols, col(c.tableHead(d, w.Common.AsLeft), c.tableBox(d, true).W+3))
	}
	g := c.grid(append(cols, col(w.Common.Initials, 21))...)
	var rows []layout.Row
	for _, st := range steps {
		rows = append(rows, c.tableRow(g, st))
	}
	text := c.Para(c.width-numberW, []layout.Run{layout.T(layout.Body, c.stepText(first))}, layout.ParaOpts{Ref: first.At})
	span := first.No + "–" + steps[len(steps)-1].No
	head := layout.Above(0.5, c.Words(layout.StepNo, span), text)
	var out []layout.Piece
	for _, n := range first.Cautions {
		out = append(out, layout.Piece{Block: c.caution(n), Gap: 2, KeepNext: true})
	}
	out = append(out, layout.Piece{Block: head.Pad(0, 0, 1, 0), Gap: 2, KeepNext: true})
	for _, d := range append(append([]*job.Dim{}, first.Measure...), first.Set...) {
		about := append(c.dimensionHead(d, "", c.width), c.limitNotes(d, c.width, false)...)
		out = append(out, layout.Piece{Block: layout.Above(0.5, about...).Pad(0, 0, 1, 0), KeepNext: true})
	}
	out = append(out, g.table.Pieces(rows)...)
	for _, st := range steps {
		if len(st.Empty) > 0 {
			out = append(out, layout.Piece{Block: c.emptyLine(st), Gap: 1})
		}
	}
	return out
}

// tableHead names a column of readings, with its limit.
func (c *composer) tableHead(d *job.Dim, caption string) string {
	head := d.Base + " " + caption
	if d.Left != nil {
		head += ": " + plainWords(c.w, d.Left)
	}
	return head
}

// tableRow is the step at one place.
func (c *composer) tableRow(g grid, st *job.Step) layout.Row {
	w := c.w
	place := []layout.Block{g.text(1, layout.Strong, st.Place.Label, st.At), g.text(1, layout.Sub, st.Place.Name, st.At)}
	var counts []layout.Block
	for _, m := range byWhere(st.Remove, func(m *job.Move) job.Where { return m.To }) {
		place = append(place, g.text(1, layout.Body, w.Common.Into+" "+c.whereMark(m.where)+" "+partList(m.moves), st.At))
	}
	for _, m := range byWhere(st.Fit, func(m *job.Move) job.Where { return m.From }) {
		place = append(place, g.text(1, layout.Body, w.Common.From+" "+c.whereMark(m.where)+" "+partList(m.moves), st.At))
		counts = append(counts, c.Box(layout.RoleCount, "", st.At))
	}
	if st.Missed != "" {
		place = append(place, g.text(1, layout.SubBold, w.Step.EasilyMissed+" "+st.Missed, st.At))
	}
	if note := c.stepNote(st); note != "" {
		place = append(place, g.text(1, layout.Sub, note, st.At))
	}
	where := layout.Above(0.3, place...)
	for _, d := range st.Recall {
		where = where.Anchored("left " + d.Mark)
	}
	cells := []layout.Block{g.text(0, layout.StepNo, st.No, st.At).Anchored("step " + st.No), where}
	if len(st.Fit) > 0 {
		cells = append(cells, layout.Above(layout.GapY, counts...))
	}
	for _, d := range st.Measure {
		cells = append(cells, c.tableBox(d, false).Anchored("found "+d.Mark))
	}
	for _, d := range st.Set {
		if d.FoundAt != nil {
			cells = append(cells, c.box(d, side{copied: true}, "", true))
		}
		cells = append(cells, c.tableBox(d, true).Anchored("left "+d.Mark))
	}
	return g.row(st.At, append(cells, c.Box(layout.RoleInitials, "", st.At))...)
}

// tableBox is the box of one reading in a row, with its verdict below.
func (c *composer) tableBox(d *job.Dim, back bool) layout.Block {
	box := c.box(d, side{}, "", true)
	if !d.Judged() || d.Left.NeedsFound() && !back {
		return box
	}
	ticks := layout.Beside(layout.GapX, c.Tick(layout.Sub, c.w.Common.InLimits, d.At), c.Tick(layout.Sub, c.w.Common.OutOfLimits, d.At))
	return layout.Above(1.5, box, ticks)
}
