package step

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// Table sets one step at many places as a table: a row a place, with its number,
// where its parts go or come from, the readings and who did it.
func Table(c *block.Composer, steps []*job.Step) []layout.Piece {
	w := c.W
	first := steps[0]
	cols := []block.Column{block.Col(w.Common.Number, 15), block.Col(w.Step.Place, 0)}
	if len(first.Fit) > 0 {
		cols = append(cols, block.Col(w.Common.CountOut, c.Box(layout.RoleCount, "", first.At).W+3))
	}
	for _, d := range first.Measure {
		cols = append(cols, block.Col(tableHead(c, d, w.Common.AsFound), tableBox(c, d, false).W+3))
	}
	for _, d := range first.Set {
		if d.FoundAt != nil {
			cols = append(cols, block.Col(d.Base+" "+w.Common.AsFound, dimension.Box(c, d, dimension.Side{}, "", true).W+3))
		}
		cols = append(cols, block.Col(tableHead(c, d, w.Common.AsLeft), tableBox(c, d, true).W+3))
	}
	g := c.Grid(append(cols, block.Col(w.Common.Initials, 21))...)
	var rows []layout.Row
	for _, st := range steps {
		rows = append(rows, tableRow(c, g, st))
	}
	text := c.Para(c.Span-block.NumberWidth, []layout.Run{layout.T(layout.Body, Text(c, first))}, layout.ParaOpts{Ref: first.At})
	span := first.No + "–" + steps[len(steps)-1].No
	head := layout.Above(0.5, c.Words(layout.StepNo, span), text)
	var out []layout.Piece
	for _, n := range first.Cautions {
		out = append(out, layout.Piece{Block: c.Caution(n), Gap: 2, KeepNext: true})
	}
	out = append(out, layout.Piece{Block: head.Pad(0, 0, 1, 0), Gap: 2, KeepNext: true})
	for _, d := range append(append([]*job.Dim{}, first.Measure...), first.Set...) {
		about := append(dimension.Head(c, d, "", c.Span), dimension.LimitNotes(c, d, c.Span, false)...)
		out = append(out, layout.Piece{Block: layout.Above(0.5, about...).Pad(0, 0, 1, 0), KeepNext: true})
	}
	out = append(out, g.Table.Pieces(rows)...)
	for _, st := range steps {
		if len(st.Empty) > 0 {
			out = append(out, layout.Piece{Block: emptyLine(c, st), Gap: 1})
		}
	}
	return out
}

// tableHead names a column of readings, with its limit.
func tableHead(c *block.Composer, d *job.Dim, caption string) string {
	head := d.Base + " " + caption
	if d.Left != nil {
		head += ": " + dimension.PlainWords(c.W, d.Left)
	}
	return head
}

// tableRow is the step at one place.
func tableRow(c *block.Composer, g block.Grid, st *job.Step) layout.Row {
	w := c.W
	place := []layout.Block{g.Text(1, layout.Strong, st.Place.Label, st.At), g.Text(1, layout.Sub, st.Place.Name, st.At)}
	var counts []layout.Block
	for _, m := range groupByPlace(st.Remove, func(m *job.Move) job.Where { return m.To }) {
		place = append(place, g.Text(1, layout.Body, w.Common.Into+" "+whereMark(c, m.where)+" "+block.PartList(m.moves), st.At))
	}
	for _, m := range groupByPlace(st.Fit, func(m *job.Move) job.Where { return m.From }) {
		place = append(place, g.Text(1, layout.Body, w.Common.From+" "+whereMark(c, m.where)+" "+block.PartList(m.moves), st.At))
		counts = append(counts, c.Box(layout.RoleCount, "", st.At))
	}
	if st.Missed != "" {
		place = append(place, g.Text(1, layout.SubBold, w.Step.EasilyMissed+" "+st.Missed, st.At))
	}
	for _, d := range append(append([]*job.Dim{}, st.Measure...), st.Set...) {
		if text := dimension.LastText(c, d); text != "" {
			place = append(place, g.Text(1, layout.Sub, text, st.At))
		}
	}
	if note := note(c, st); note != "" {
		place = append(place, g.Text(1, layout.Sub, note, st.At))
	}
	where := layout.Above(0.3, place...)
	for _, d := range st.Recall {
		where = where.Anchored("left " + d.Mark)
	}
	cells := []layout.Block{g.Text(0, layout.StepNo, st.No, st.At).Anchored("step " + st.No), where}
	if len(st.Fit) > 0 {
		cells = append(cells, layout.Above(layout.GapY, counts...))
	}
	for _, d := range st.Measure {
		cells = append(cells, tableBox(c, d, false).Anchored("found "+d.Mark))
	}
	for _, d := range st.Set {
		if d.FoundAt != nil {
			cells = append(cells, dimension.Box(c, d, dimension.Side{Copied: true, When: job.AsFound}, "", true))
		}
		cells = append(cells, tableBox(c, d, true).Anchored("left "+d.Mark))
	}
	return g.Row(st.At, append(cells, c.Box(layout.RoleInitials, "", st.At))...)
}

// tableBox is the box of one reading in a row, with its verdict below.
func tableBox(c *block.Composer, d *job.Dim, back bool) layout.Block {
	when := job.AsFound
	if back {
		when = job.AsLeft
	}
	box := dimension.Box(c, d, dimension.Side{When: when}, "", true)
	if !d.Judged() || d.Left.NeedsFound() && !back {
		return box
	}
	ticks := layout.Beside(layout.GapX, c.Tick(layout.Sub, c.W.Common.InLimits, d.At), c.Tick(layout.Sub, c.W.Common.OutOfLimits, d.At))
	return layout.Above(1.5, box, ticks)
}
