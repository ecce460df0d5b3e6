package liftsheet

import (
	"slices"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// stopTable lists the places at which the lift stops and is looked at, with the
// initials of who gave the word to go on, each time that the lift is made. A step that
// leaves the load on the hook has the last stops struck: they are those of the step that
// sets it down, and an open cell would have it unhooked with nothing under it.
func stopTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	w := c.W
	cols := []block.Column{block.Col(w.Common.Number, 9), block.Col(w.Lift.Stops, 0)}
	for _, st := range l.Steps {
		cols = append(cols, block.Col(w.Lift.InitialsAt.With(st.No), 20))
	}
	g := c.Grid(cols...)
	var rows []layout.Row
	points := stopPoints(c, l)
	for i, text := range points {
		cells := []layout.Block{g.Text(0, layout.StepNo, strconv.Itoa(i+1), l.At), g.Text(1, layout.Body, text, l.At)}
		for n, st := range l.Steps {
			struck := ""
			if i >= len(points)-setDownStops && slices.Contains(st.LeftHanging, l) {
				struck = "—"
			}
			cells = append(cells, g.Text(2+n, layout.Body, struck, l.At))
		}
		rows = append(rows, g.Row(l.At, cells...))
	}
	g.Table.MinH = tagRow
	out := g.Table.Pieces(rows, head)
	note := c.Para(c.Span, []layout.Run{layout.T(layout.Sub, w.Lift.UsualStops)}, layout.ParaOpts{})
	return append(out, layout.Piece{Block: note, Gap: 1, Under: []*layout.Block{head}})
}

// setDownStops is how many stops, the last ones of stopPoints, a load has that is carried
// along, set down and unhooked. What people lift by hand never stays hanging.
const setDownStops = 3

// stopPoints are the usual places to stop, with the lift's own before it travels.
func stopPoints(c *block.Composer, l *job.Lift) []string {
	w := c.W
	if l.ByHand {
		return append(append([]string{w.Lift.HandStops[0]}, l.Stops...), w.Lift.HandStops[1:]...)
	}
	out := []string{w.Lift.StopSlack, w.Lift.StopTrial.With(l.Print(l.Trial.Size()))}
	if len(l.Stops) == 0 {
		out = append(out, w.Lift.StopLiftOff)
	}
	out = append(out, l.Stops...)
	return append(out, w.Lift.StopPath, w.Lift.StopSeat, w.Lift.StopUnhook)
}

// days are the boxes that are filled in each time that the lift is made. From three times
// on they stand beside each other, as many as go.
func days(c *block.Composer, l *job.Lift) []layout.Block {
	var out []layout.Block
	if len(l.Steps) < 3 || l.ByHand {
		for _, st := range l.Steps {
			out = append(out, dayBoxes(c, l, st, c.Span))
		}
		return out
	}
	width := (c.Span - 2*layout.GapX) / 3
	for i := 0; i < len(l.Steps); i += 3 {
		var row []layout.Block
		for _, st := range l.Steps[i:min(i+3, len(l.Steps))] {
			b := dayBoxes(c, l, st, width)
			row = append(row, b.Fill(width, b.H, 0, 0))
		}
		out = append(out, layout.Beside(layout.GapX, row...))
	}
	return out
}

// dayBoxes are the boxes that are filled in when the lift is made at a step.
func dayBoxes(c *block.Composer, l *job.Lift, st *job.Step, width layout.Mm) layout.Block {
	w := c.W
	head := c.Para(width, []layout.Run{layout.T(layout.Strong, w.Lift.TheDay.With(c.StepRef(st)))}, layout.ParaOpts{Ref: l.At})
	line := layout.Drawn(width, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: width, Weight: layout.Rule}})
	rows := []layout.Block{layout.Above(0.8, head, line)}
	if !l.ByHand {
		gear := c.WideBox(layout.RoleWords, width, 1, "", l.At)
		if caption := c.Para(width-1.2, []layout.Run{layout.T(layout.Caption, w.Lift.SameGear)}, layout.ParaOpts{Ref: l.At}); caption.H > layout.Caption.Lead {
			gear = layout.Above(0.3, caption, gear) // two lines of it would fill the box
		} else {
			gear = c.WideBox(layout.RoleWords, width, 1, w.Lift.SameGear, l.At)
		}
		rows = append(rows, trialRow(c, l, width), gear)
	}
	roles := []string{w.Lift.InCharge, w.Lift.Driver, w.Lift.Rigger}
	if l.ByHand {
		roles = roles[:1]
	}
	var names []layout.Block
	for _, role := range roles {
		names = append(names, c.WideBox(layout.RoleName, (c.Span-2*layout.GapX)/3, 1, w.Lift.NameSign.With(role), l.At))
	}
	for _, r := range block.Rows(names, width) {
		rows = append(rows, layout.Bottom(layout.GapX, r...))
	}
	return layout.Above(layout.GapY, rows...)
}

// trialRow are the readings of the trial lift: the load cell, level or not, the
// gap at each end, the wind.
func trialRow(c *block.Composer, l *job.Lift, width layout.Mm) layout.Block {
	w := c.W
	gap := func(end string) layout.Block {
		return c.Value(layout.Number{Before: 3, Caption: w.Lift.GapAt.With(end, l.LengthUnit()), Ref: l.At})
	}
	row := []layout.Block{c.Value(layout.Number{Before: l.LoadDigits(), Caption: w.Lift.LoadCell.With(l.WeightUnit()), Ref: l.At})}
	level := layout.Above(0.5, c.Words(layout.Caption, w.Lift.TrialLevel.With(l.Print(l.Trial.Size()))),
		layout.Beside(layout.GapX, c.Tick(layout.Body, w.Lift.Yes, l.At), c.Tick(layout.Body, w.Lift.No, l.At)))
	row = append(row, level)
	for _, end := range l.Ends() {
		row = append(row, gap(end))
	}
	row = append(row, c.WideBox(layout.RoleWords, 30, 1, w.Lift.Wind, l.At))
	return block.FlowRow(row, width)
}
