package liftsheet

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// stopTable lists the places at which the lift stops and is looked at, with the
// initials of who gave the word to go on, each time that the lift is made.
func stopTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	w := c.W
	cols := []block.Column{block.Col(w.Common.Number, 9), block.Col(w.Lift.Stops, 0)}
	for _, st := range l.Steps {
		cols = append(cols, block.Col(w.Lift.InitialsAt.With(st.No), 20))
	}
	g := c.Grid(cols...)
	var rows []layout.Row
	for i, text := range stopPoints(c, l) {
		rows = append(rows, g.Row(l.At, g.Text(0, layout.StepNo, strconv.Itoa(i+1), l.At), g.Text(1, layout.Body, text, l.At)))
	}
	g.Table.MinH = tagRow
	out := g.Table.Pieces(rows, head)
	note := c.Para(c.Span, []layout.Run{layout.T(layout.Sub, w.Lift.UsualStops)}, layout.ParaOpts{})
	return append(out, layout.Piece{Block: note, Gap: 1, Under: []*layout.Block{head}})
}

// stopPoints are the usual places to stop, with the lift's own before it travels.
func stopPoints(c *block.Composer, l *job.Lift) []string {
	w := c.W
	if l.ByHand {
		return append(append([]string{w.Lift.HandStops[0]}, l.Stops...), w.Lift.HandStops[1:]...)
	}
	out := []string{w.Lift.StopSlack, w.Lift.StopTrial.With(l.Length(l.Trial))}
	if len(l.Stops) == 0 {
		out = append(out, w.Lift.StopLiftOff)
	}
	out = append(out, l.Stops...)
	return append(out, w.Lift.StopPath, w.Lift.StopSeat, w.Lift.StopUnhook)
}

// dayBoxes are the boxes that are filled in when the lift is made at a step.
func dayBoxes(c *block.Composer, l *job.Lift, st *job.Step) layout.Block {
	w := c.W
	rows := []layout.Block{c.Heading(w.Lift.TheDay.With(c.StepRef(st)))}
	if !l.ByHand {
		rows = append(rows, trialRow(c, l))
		rows = append(rows, c.WideBox(layout.RoleWords, c.Span, 1, w.Lift.SameGear, l.At))
	}
	roles := []string{w.Lift.InCharge, w.Lift.Driver, w.Lift.Rigger}
	if l.ByHand {
		roles = roles[:1]
	}
	var names []layout.Block
	for _, role := range roles {
		names = append(names, c.WideBox(layout.RoleName, (c.Span-2*layout.GapX)/3, 1, w.Lift.NameSign.With(role), l.At))
	}
	rows = append(rows, layout.Beside(layout.GapX, names...))
	return layout.Above(layout.GapY, rows...)
}

// trialRow are the readings of the trial lift: the load cell, level or not, the
// gap at each end, the wind.
func trialRow(c *block.Composer, l *job.Lift) layout.Block {
	w := c.W
	gap := func(end string) layout.Block {
		return c.Value(layout.Number{Before: 3, Caption: w.Lift.GapAt.With(end, l.LengthUnit()), Ref: l.At})
	}
	row := []layout.Block{c.Value(layout.Number{Before: l.LoadDigits(), Caption: w.Lift.LoadCell.With(l.WeightUnit()), Ref: l.At})}
	level := layout.Above(0.5, c.Words(layout.Caption, w.Lift.TrialLevel.With(l.Length(l.Trial))),
		layout.Beside(layout.GapX, c.Tick(layout.Body, w.Lift.Yes, l.At), c.Tick(layout.Body, w.Lift.No, l.At)))
	row = append(row, level)
	for _, end := range l.Ends() {
		row = append(row, gap(end))
	}
	row = append(row, c.WideBox(layout.RoleWords, 30, 1, w.Lift.Wind, l.At))
	return block.FlowRow(row, c.Span)
}
