package liftsheet

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// stopTable lists the places at which the lift stops and is looked at in the order in which
// they are met, with the initials of who gave the word to go on, each time that the lift is
// made. Struck are the stops that a step does not meet: an open cell would have a load
// unhooked with nothing under it, or looked for what can't be seen on its way back. What no
// step meets is left out.
func stopTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	w := c.W
	cols := []block.Column{block.Col(w.Common.Number, 9), block.Col(w.Lift.Stops, 0)}
	for _, st := range l.Steps {
		cols = append(cols, block.Col(w.Lift.InitialsAt.With(st.No), 20.4))
	}
	g := c.Grid(cols...)
	var rows []layout.Row
	for _, x := range stopPoints(c, l) {
		if len(l.Steps) > 0 && !slices.ContainsFunc(l.Steps, x.met) {
			continue
		}
		cells := []layout.Block{g.Text(0, layout.StepNo, strconv.Itoa(len(rows)+1), l.At), g.Text(1, layout.Body, x.text, l.At)}
		for n, st := range l.Steps {
			struck := "—"
			if x.met(st) {
				struck = ""
			}
			cells = append(cells, g.Text(2+n, layout.Body, struck, l.At))
		}
		rows = append(rows, g.Row(l.At, cells...))
	}
	g.Table.MinH = tagRow
	return g.Table.Pieces(rows, head)
}

// A stopPoint is a place to stop, and whether a step of the lift meets it.
type stopPoint struct {
	text string
	met  func(*job.Step) bool
}

// stopPoints are the usual places to stop and the lift's own, in the order in which a load
// meets them.
func stopPoints(c *block.Composer, l *job.Lift) []stopPoint {
	w := c.W.Lift
	var out []stopPoint
	usual := func(k job.StopKind, text string) {
		out = append(out, stopPoint{text, func(st *job.Step) bool { return l.Meets(st, k) }})
	}
	own := func(k job.StopKind) {
		for _, x := range l.OwnStops() {
			if x.Kind == k {
				out = append(out, stopPoint{x.Text, func(st *job.Step) bool { return l.MeetsOwn(st, x) }})
			}
		}
	}
	if l.ByHand {
		// What people lift by hand never stays hanging.
		usual(job.StopTakeUp, w.HandStops[0])
		own(job.StopTrial)
		usual(job.StopTakeUp, w.HandStops[1])
		own(job.StopGoingUp)
		own(job.StopComing)
		usual(job.StopSetDown, w.HandStops[2])
		return out
	}
	var turn *lift.TurnResult
	if l.Result != nil {
		turn = l.Result.Turn
	}
	slack, trial := w.StopSlack, w.StopTrial
	if turn != nil {
		slack, trial = w.StopPlumb, w.StopTrialTurned
	}
	usual(job.StopTakeUp, slack)
	out = append(out, hotStops(c, l, trial.With(l.Print(l.Trial.Size())))...)
	own(job.StopTrial)
	if len(l.Stops) == 0 { // what is told of the trial lift or of the way in does not replace it
		usual(job.StopGoingUp, w.StopLiftOff)
	}
	own(job.StopGoingUp)
	if drawn := l.DrawnHot; slices.ContainsFunc(l.Steps, drawn) {
		out = append(out, stopPoint{w.StopHotClear, drawn})
	}
	usual(job.StopTravel, w.StopPath)
	if turn != nil {
		usual(job.StopTravel, w.StopTakesHold.With(turn.Lower, l.Print(turn.Free.Down())))
		usual(job.StopTravel, w.StopHalfWay)
		usual(job.StopTravel, w.StopOneHook.With(turn.Upper))
	}
	own(job.StopComing)
	usual(job.StopSeat, w.StopSeat)
	usual(job.StopSetDown, w.StopUnhook)
	return out
}

// hotStops are the trial lift and what stands in its place where the load is hot: one that is
// drawn off would grip again while it waits, and one that is put on has its trial lift cold.
// Common practice, no source.
func hotStops(c *block.Composer, l *job.Lift, trial string) []stopPoint {
	w := c.W.Lift
	takenUp := func(st *job.Step) bool { return l.Meets(st, job.StopTakeUp) }
	drawn := func(st *job.Step) bool { return takenUp(st) && l.DrawnHot(st) }
	putOn := func(st *job.Step) bool { return takenUp(st) && l.HotLoad(st) != nil && !l.DrawnHot(st) }
	var out []stopPoint
	if len(l.Steps) == 0 || slices.ContainsFunc(l.Steps, func(st *job.Step) bool { return !l.DrawnHot(st) }) {
		out = append(out, stopPoint{trial, func(st *job.Step) bool { return takenUp(st) && !l.DrawnHot(st) }})
	}
	if slices.ContainsFunc(l.Steps, putOn) {
		out = append(out, stopPoint{w.StopPutOnHot, putOn})
	}
	if slices.ContainsFunc(l.Steps, drawn) {
		out = append(out, stopPoint{w.StopDrawnHot, drawn})
	}
	return out
}

// days are the boxes that are filled in each time that the lift is made: a row a time, what
// is written in columns.
func days(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	const gap layout.Mm = 2.5
	if len(l.Steps) == 0 {
		return nil
	}
	if l.ByHand {
		return []layout.Piece{{Block: handDays(c, l), Gap: gap, Under: []*layout.Block{head}}}
	}
	var out []layout.Piece
	table := func(padY layout.Mm, cols []dayColumn) {
		ps := dayTable(c, l, head, padY, cols)
		ps[0].Gap = gap
		out = append(out, ps...)
	}
	read, gear := trialColumns(c, l)
	table(layout.GapY/2, read)
	if !gear {
		table(cellPad, []dayColumn{{c.W.Lift.SameGear, c.Span - dayCol, nil, false}})
	}
	heads := signHeads(c.W, l)
	tables := (len(heads) + mostSign - 1) / mostSign
	for some := range slices.Chunk(heads, (len(heads)+tables-1)/tables) {
		var names []dayColumn
		for _, head := range some {
			names = append(names, dayColumn{head, (c.Span - dayCol) / layout.Mm(len(some)), nil, false})
		}
		table(cellPad, names)
	}
	return out
}

// signHeads are the heads of the cells to sign in, one for each of those who must be there;
// one for all of a role of which nobody says how many they are.
func signHeads(w *words.Catalogue, l *job.Lift) []string {
	var out []string
	for _, role := range Roles(w, l) {
		post := job.PostOf(role)
		sentence := w.Lift.NameSign
		if !post.Told {
			sentence = w.Lift.NamesSign
		}
		for _, name := range post.Each() {
			out = append(out, sentence.With(name))
		}
	}
	return out
}

// Roles are those who sign for a lift by gear: who must be there, under the name by which the
// sheet calls for him, and always a person in charge; the usual three where nobody is named.
func Roles(w *words.Catalogue, l *job.Lift) []string {
	if len(l.Crew) == 0 {
		return []string{w.Lift.InCharge, w.Lift.Driver, w.Lift.Rigger}
	}
	inCharge := func(name string) bool {
		name = strings.ToLower(name)
		return strings.Contains(name, strings.ToLower(w.Lift.InCharge)) || strings.Contains(name, words.English.Lift.InCharge)
	}
	if slices.ContainsFunc(l.Crew, inCharge) {
		return l.Crew
	}
	return append([]string{w.Lift.InCharge}, l.Crew...)
}

// handDays are the boxes of who is in charge where people lift, one for each time.
func handDays(c *block.Composer, l *job.Lift) layout.Block {
	var boxes []layout.Block
	width := (c.Span - 2*layout.GapX) / 3
	for _, st := range l.Steps {
		head := c.Para(width, []layout.Run{layout.T(layout.SubBold, c.W.Lift.TheDay.With(c.StepRef(st)))}, layout.ParaOpts{Ref: l.At})
		boxes = append(boxes, layout.Above(0.5, head, c.WideBox(layout.RoleName, width, 1, c.W.Lift.NameSign.With(c.W.Lift.InCharge), l.At)))
	}
	return block.FlowRow(boxes, c.Span)
}

// A dayColumn is what is written each time that the lift is made: its head, its width, and
// the boxes of a cell; nil for a cell to write in. What is read at the trial lift is struck
// at a step that goes on with a load that hangs, or draws it off hot.
type dayColumn struct {
	head  string
	width layout.Mm
	boxes func() layout.Block
	trial bool
}

// mostSign is how many sign beside each other.
const mostSign = 6

// Widths of the tables of the day: the step at which the lift is made, the wind, and the
// least in which it is written what gear was changed. A cell for name and signature is
// nameHigh high.
const (
	dayCol    layout.Mm = 15
	windCol   layout.Mm = 22
	gearLeast layout.Mm = 40
	nameHigh  layout.Mm = 10
	cellPad   layout.Mm = 0.8
	dayPadX   layout.Mm = 1
)

// dayTable has a row for each time that the lift is made.
func dayTable(c *block.Composer, l *job.Lift, under *layout.Block, padY layout.Mm, cols []dayColumn) []layout.Piece {
	t := layout.Table{PadX: dayPadX, PadY: padY, Grid: true, MinH: nameHigh}
	if c.Pen().Gloves {
		t.MinH += 2
	}
	for _, x := range append([]dayColumn{{c.W.Lift.Day, dayCol, nil, false}}, cols...) {
		head := c.Para(x.width-2*t.PadX, []layout.Run{layout.T(layout.Caption, x.head)}, layout.ParaOpts{Ref: l.At})
		t.Columns = append(t.Columns, layout.Column{Width: x.width, Head: head})
	}
	var rows []layout.Row
	for _, st := range l.Steps {
		cells := []layout.Block{c.Para(t.Room(0), []layout.Run{layout.T(layout.SubBold, c.StepRef(st))}, layout.ParaOpts{Ref: l.At})}
		for _, x := range cols {
			b := layout.Block{}
			switch {
			case x.trial && (slices.Contains(st.GoesOn, l) || l.DrawnHot(st)):
				b = c.Words(layout.Body, "—")
			case x.boxes != nil:
				b = x.boxes()
			}
			cells = append(cells, b)
		}
		rows = append(rows, layout.Row{Cells: cells, Middle: true, Ref: l.At})
	}
	return t.Pieces(block.LastTogether(rows), under)
}

// trialColumns are the readings of the trial lift: the load cell, level or not, the gap at
// each end, the wind; and what gear was changed, where there is room for it.
func trialColumns(c *block.Composer, l *job.Lift) (cols []dayColumn, gear bool) {
	w := c.W
	rest := c.Span - dayCol
	add := func(head string, trial bool, boxes func() layout.Block) {
		width := windCol
		if boxes != nil {
			width = boxes().W + 2*dayPadX
		}
		cols = append(cols, dayColumn{head, width, boxes, trial})
		rest -= width
	}
	digits := func(n int) func() layout.Block {
		return func() layout.Block { return c.Value(layout.Number{Before: n, Ref: l.At}) }
	}
	if t := l.Result.Turn; t != nil { // a cell at each hook; nothing of it is level
		add(w.Lift.HookReads.With(t.Upper, l.WeightUnit()), false, digits(l.LoadDigits()))
		add(w.Lift.HookReads.With(t.Lower, l.WeightUnit()), false, digits(l.LoadDigits()))
		add(w.Lift.Wind, false, nil)
		if rest < gearLeast {
			cols[len(cols)-1].width += rest
			return cols, false
		}
		return append(cols, dayColumn{w.Lift.SameGear, rest, nil, false}), true
	}
	add(w.Lift.LoadCell.With(l.WeightUnit()), false, digits(l.LoadDigits()))
	add(w.Lift.TrialLevel.With(l.Print(l.Trial.Size())), true, func() layout.Block {
		return layout.Beside(layout.GapX, c.Tick(layout.Sub, w.Lift.Yes, l.At), c.Tick(layout.Sub, w.Lift.No, l.At))
	})
	for _, end := range l.Ends() {
		add(w.Lift.GapAt.With(end, l.LengthUnit()), true, digits(3))
	}
	add(w.Lift.Wind, false, nil)
	if rest >= gearLeast {
		return append(cols, dayColumn{w.Lift.SameGear, rest, nil, false}), true
	}
	cols[len(cols)-1].width += rest
	return cols, false
}
