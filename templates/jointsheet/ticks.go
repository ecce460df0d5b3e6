package jointsheet

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
)

// Measures of the table of ticks: its rows are as high as a pen in a glove needs.
const (
	tickRow  layout.Mm = 9.2
	orderCol layout.Mm = 11
	roundCol layout.Mm = 17
	tableGap layout.Mm = 5
	mostRows int       = 16 // of one table; more go into another
)

// StageWords words one round of a tightening: how tight, and where it goes on by an
// angle how far.
func StageWords(c *block.Composer, r joint.Round) string {
	w := c.W
	set := ""
	if r.Setting != nil {
		set = settingPrint(r.Setting)
	}
	switch r.Kind {
	case joint.Tighten:
		return w.Tightening.Stage[r.Kind].With(set)
	case joint.Turn, joint.BackOff:
		angle := units.Quantity{Number: units.Whole(int64(r.Angle)), Unit: units.Degree}
		return w.Tightening.Stage[r.Kind].With(angle.Print())
	case joint.LastRound, joint.AgainRunning:
		return w.Tightening.Stage[r.Kind].With(set)
	}
	return w.Tightening.Stage[r.Kind].With()
}

// roundWords words one round of a joint; those that come again after a time name it.
func roundWords(c *block.Composer, j *job.Joint, r joint.Round) string {
	if r.Kind == joint.AgainAfter && r.Setting != nil && r.Stage >= 0 && r.Stage < len(j.Spec.Stages) && j.Spec.Stages[r.Stage].Hours != nil {
		return c.W.Tightening.Stage[r.Kind].With(settingPrint(r.Setting), j.Spec.Stages[r.Stage].Hours.Print())
	}
	return StageWords(c, r)
}

// roundHead is the head of the column of one round: how tight in both units, which
// way round.
func roundHead(c *block.Composer, j *job.Joint, r joint.Round, width layout.Mm) layout.Block {
	lines := []layout.Block{c.Para(width, []layout.Run{layout.T(layout.SubBold, roundWords(c, j, r))}, layout.ParaOpts{Ref: j.At})}
	small := func(text string) {
		if text != "" {
			lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: j.At}))
		}
	}
	if r.Kind == joint.Tighten && r.Setting != nil {
		small(strings.TrimSpace(strings.TrimPrefix(inBoth("", r.Setting), " ")))
	}
	if r.Travel > 0 {
		mm := units.Quantity{Number: units.Exact(units.Whole(int64(float64(r.Travel)*100+0.5)).Quo(units.Whole(100)).Rat(), 2), Unit: units.Millimetre}
		small(c.W.Tightening.Moves.With(mm.Print()))
	}
	if r.Way != joint.InPattern {
		small(c.W.Tightening.Way[r.Way])
	}
	return layout.Above(0.3, lines...)
}

// ticks set the table of ticks of a joint at one place, with the boxes of who did it.
func ticks(c *block.Composer, j *job.Joint, named bool) []layout.Block {
	var out []layout.Block
	if named && j.Place.Label != "" {
		out = append(out, c.Para(c.Span, []layout.Run{{Text: j.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Strong, "  "+j.Place.Name)}, layout.ParaOpts{Ref: j.At}))
	}
	n := j.Count()
	rounds := j.Rounds
	if len(rounds) == 0 {
		rounds = []joint.Round{{Stage: -1}}
	}
	width := orderCol + roundCol*layout.Mm(len(rounds))
	across := max(int((c.Span+tableGap)/(width+tableGap)), 1)
	boxes := signBoxes(c, j)
	for from := 0; from < n; {
		left := n - from
		rows := min((left+across-1)/across, mostRows)
		if left <= mostRows/2 && width+tableGap+boxes.W <= c.Span {
			rows = left // stands beside the boxes
		}
		var tables []layout.Block
		for k := 0; k < across && from < n; k++ {
			to := min(from+rows, n)
			tables = append(tables, tickTable(c, j, rounds, from, to))
			from = to
		}
		out = append(out, layout.Beside(tableGap, tables...))
	}
	last := out[len(out)-1]
	if last.W+tableGap+boxes.W <= c.Span {
		out[len(out)-1] = layout.Beside(tableGap, last, boxes)
		return out
	}
	return append(out, signRow(c, j))
}

// tickTable is the table of some fasteners by their place in the order.
func tickTable(c *block.Composer, j *job.Joint, rounds []joint.Round, from, to int) layout.Block {
	t := layout.Table{PadX: 1, PadY: 0.8, Grid: true, MinH: tickRow}
	t.Columns = append(t.Columns, layout.Column{Width: orderCol, Head: c.Words(layout.Caption, c.W.Tightening.OrderColumn)})
	for _, r := range rounds {
		head := c.Words(layout.Sub, c.W.Step.IsTight)
		if r.Kind != joint.Tighten || r.Setting != nil {
			head = roundHead(c, j, r, roundCol-2)
		}
		t.Columns = append(t.Columns, layout.Column{Width: roundCol, Head: head})
	}
	var rows []layout.Row
	for i := from; i < to; i++ {
		cells := []layout.Block{c.Words(layout.Strong, strconv.Itoa(i+1)).Center(t.Room(0))}
		for k := range rounds {
			cells = append(cells, c.Tick(layout.Sub, "", j.At).Center(t.Room(k+1)))
		}
		rows = append(rows, layout.Row{Cells: cells, Middle: true, Ref: j.At})
	}
	return t.Block(rows)
}

// signs are the boxes of who tightened with what, and who checked.
func signs(c *block.Composer, j *job.Joint) []layout.Block {
	w := c.W
	out := []layout.Block{
		c.WideBox(layout.RoleWords, 34, 1, w.Tightening.ToolNo, j.At), c.Box(layout.RoleDate, w.Tightening.Calibrated, j.At),
		c.WideBox(layout.RoleInitials, 34, 1, w.Tightening.FinalBy, j.At), c.WideBox(layout.RoleInitials, 34, 1, w.Tightening.CheckedBy, j.At),
	}
	if j.Spec.BreaksLoose != nil {
		out = append(out, c.WideBox(layout.RoleWords, 34, 1, w.Tightening.BelowIt, j.At))
	}
	return out
}

// signBoxes set them below each other, two in a row.
func signBoxes(c *block.Composer, j *job.Joint) layout.Block {
	all := signs(c, j)
	var rows []layout.Block
	for i := 0; i < len(all); i += 2 {
		rows = append(rows, layout.Beside(layout.GapX, all[i:min(i+2, len(all))]...))
	}
	return layout.Above(layout.GapY, rows...)
}

// signRow sets them beside each other.
func signRow(c *block.Composer, j *job.Joint) layout.Block {
	return block.FlowRow(signs(c, j), c.Span)
}
