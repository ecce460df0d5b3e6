package templates

import (
	"matchmark/packs/job"
	"strconv"

	"matchmark/layout"
)

// stopTable lists the places at which the lift stops and is looked at, with the
// initials of who gave the word to go on, each time that the lift is made.
func (c *composer) stopTable(l *job.Lift, head *layout.Block) []layout.Piece {
	w := c.w
	cols := []column{col(w.Common.Number, 9), col(w.Lift.Stops, 0)}
	for _, st := range l.Steps {
		cols = append(cols, col(w.Lift.InitialsAt.With(st.No), 20))
	}
	g := c.grid(cols...)
	var rows []layout.Row
	for i, text := range c.stopPoints(l) {
		rows = append(rows, g.row(l.At, g.text(0, layout.StepNo, strconv.Itoa(i+1), l.At), g.text(1, layout.Body, text, l.At)))
	}
	g.table.MinH = tagRow
	out := g.table.Pieces(rows, head)
	note := c.Para(c.width, []layout.Run{layout.T(layout.Sub, w.Lift.UsualStops)}, layout.ParaOpts{})
	return append(out, layout.Piece{Block: note, Gap: 1, Under: []*layout.Block{head}})
}

// stopPoints are the usual places to stop, with the lift's own before it travels.
func (c *composer) stopPoints(l *job.Lift) []string {
	w := c.w
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

// liftDay are the boxes that are filled in when the lift is made at a step.
func (c *composer) liftDay(l *job.Lift, st *job.Step) layout.Block {
	w := c.w
	rows := []layout.Block{c.heading(w.Lift.TheDay.With(c.stepRef(st)))}
	if !l.ByHand {
		rows = append(rows, c.trialRow(l))
		rows = append(rows, c.WideBox(layout.RoleWords, c.width, 1, w.Lift.SameGear, l.At))
	}
	roles := []string{w.Lift.InCharge, w.Lift.Driver, w.Lift.Rigger}
	if l.ByHand {
		roles = roles[:1]
	}
	var names []layout.Block
	for _, role := range roles {
		names = append(names, c.WideBox(layout.RoleName, (c.width-2*layout.GapX)/3, 1, w.Lift.NameSign.With(role), l.At))
	}
	rows = append(rows, layout.Beside(layout.GapX, names...))
	return layout.Above(layout.GapY, rows...)
}

// trialRow are the readings of the trial lift: the load cell, level or not, the
// gap at each end, the wind.
func (c *composer) trialRow(l *job.Lift) layout.Block {
	w := c.w
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
	return flowRow(row, c.width)
}
