package liftsheet

import (
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates/block"
)

// verdict is the row of what decides: the piece used most, the crane, the
// level, the headroom.
func verdict(c *block.Composer, l *job.Lift) layout.Block {
	w := c.W
	type cell struct{ name, big, small string }
	var cells []cell
	if l.ByHand {
		for i, g := range l.HandPlan.Grips {
			cells = append(cells, cell{g.Name, l.Print(l.HandResult.Most[i].Up()), w.Lift.MostCarries})
		}
		cells = append(cells, cell{w.Lift.Mass, l.Print((l.Load().Mass + l.Load().MassTolerance).Up()), w.Lift.TeamLine.With(l.Print(l.HandResult.Team.Down()))})
	} else {
		r := l.Result
		weakest := r.Components[r.Weakest]
		room := cell{w.Lift.Headroom, "—", w.Lift.NotLookedAt}
		if h := r.Headroom; h != nil {
			room = cell{w.Lift.Headroom, l.Print(h.Spare.Down()), w.Lift.HeadroomSpare.With(l.Print(h.Spare.Down()), l.Print(h.Needed.Up()))}
			if h.Over != "" {
				room.small = w.Lift.HeadroomOver.With(l.Print(h.Spare.Down()), h.Over, l.Print(h.Needed.Up()))
				if o := r.OtherHeadroom; o != nil {
					room.small += w.Common.Semicolon + w.Lift.HeadroomOver.With(l.Print(o.Spare.Down()), o.Over, l.Print(o.Needed.Up()))
				}
			}
		}
		load := w.Lift.HookLoad.With(l.Print(r.HookLoad.Up()), l.Print(r.Dynamic.FactorUp()))
		if r.Turn != nil {
			load = r.CraneName + w.Common.Colon + load
		}
		cells = []cell{
			{w.Lift.Weakest, l.Print(weakest.Used.Percent()), weakest.Called(c.W)},
			{w.Lift.CraneUsed, l.Print(r.CraneShare.Percent()), load},
			{w.Lift.LevelHead, l.Print(r.Tilt.Most.Up()), tiltText(c, l)},
			room,
		}
	}
	width := c.Span / layout.Mm(len(cells))
	t := layout.Table{PadX: 1.5, PadY: 1, Grid: true}
	var row layout.Row
	for _, x := range cells {
		t.Columns = append(t.Columns, layout.Column{Width: width})
		inner := width - 3
		row.Cells = append(row.Cells, layout.Above(0.3,
			c.Para(inner, []layout.Run{layout.T(layout.Caption, x.name+"  "), layout.T(layout.Head, x.big)}, layout.ParaOpts{Ref: l.At}),
			c.Para(inner, []layout.Run{layout.T(layout.Sub, x.small)}, layout.ParaOpts{Ref: l.At})))
	}
	return t.Block([]layout.Row{row})
}

// legTable lists the legs with their numbers in the drawing: length, angle, pull.
func legTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	if l.ByHand {
		return nil
	}
	w, r := c.W, l.Result
	g := c.Grid(block.Col(w.Common.Number, 9), block.Col(w.Lift.Leg, 0), block.Col(w.Lift.Length, 47), block.Col(w.Lift.Angle, 21), block.Col(w.Lift.Pulls, 19), block.Col(w.Lift.MostPulls, 32), block.Col(w.Lift.Design.With(l.Print(r.Dynamic.FactorUp())), 20))
	g.Table.MinH = 0
	var rows []layout.Row
	for i, x := range r.Legs {
		length := []layout.Run{layout.T(layout.Limit, l.Print(x.Length.Size())), layout.T(layout.Sub, "  "+lengthNote(c, l, x))}
		rows = append(rows, g.Row(l.At,
			g.Text(0, layout.Strong, strconv.Itoa(i+1), l.At), g.About(1, x.Name, l.TakesOf(i), l.At),
			c.Para(g.Table.Room(2), length, layout.ParaOpts{Ref: l.At}),
			g.Text(3, layout.Body, l.Print(x.Angle.Down()), l.At), g.Text(4, layout.Strong, l.Print(x.Tension.Up()), l.At),
			g.Text(5, layout.Body, l.Print(x.Low.Down())+" – "+l.Print(x.High.Up()), l.At), g.Text(6, layout.Body, l.Print(x.Design.Up()), l.At)))
	}
	return g.Table.Pieces(rows, head)
}

// lengthNote says what is to be done about the length of a leg.
func lengthNote(c *block.Composer, l *job.Lift, x lift.LegResult) string {
	switch {
	case x.Slack > 0.5:
		return c.W.Lift.HangsSlack.With(l.Print(x.Slack.Up()))
	case x.Shorten > 0.5:
		return c.W.Lift.Shorten.With(l.Print(x.Shorten.Size()))
	case x.Chosen:
		return c.W.Lift.ChosenLength
	}
	return c.W.Lift.InHand
}

// turnTable tells, by the angle from lying, what each hook carries of a load that is turned,
// how its legs pull on what they take hold of, and where the hooks stand.
func turnTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	if l.ByHand || l.Result.Turn == nil {
		return nil
	}
	w, t := c.W, l.Result.Turn
	g := c.Grid(block.Col(w.Lift.TurnedBy, 17), block.Col(w.Lift.TurnCarries.With(t.Upper), 0), block.Col(w.Lift.TurnCarries.With(t.Lower), 26),
		block.Col(w.Lift.TurnPull, 25), block.Col(w.Lift.TurnHigher.With(t.Upper), 26), block.Col(w.Lift.TurnApart, 22), block.Col(w.Lift.TurnReads.With(l.WeightUnit(), t.Upper, t.Lower), 42))
	g.Table.MinH = tagRow
	var rows []layout.Row
	for _, x := range t.Rows {
		text := func(i int, st layout.Style, words lift.Words) layout.Block {
			return g.Text(i, st, l.Print(words), l.At)
		}
		rows = append(rows, g.Row(l.At, text(0, layout.Strong, x.Angle.Down()), text(1, layout.Body, x.Upper.Up()), text(2, layout.Body, x.Lower.Up()),
			text(3, layout.Body, x.Pull.Down()), text(4, layout.Body, x.Higher.Size()), text(5, layout.Body, x.Apart.Size()), g.Text(6, layout.Body, "", l.At)))
	}
	out := g.Table.Pieces(rows, head)
	note := c.Para(c.Span, []layout.Run{layout.T(layout.Sub, w.Lift.TurnNote)}, layout.ParaOpts{Ref: l.At})
	return append(out, layout.Piece{Block: note, Gap: 1, Under: []*layout.Block{head}})
}

// legNotes are the lines below the legs: how four were counted, the press on the
// load, the bail of a beam.
func legNotes(c *block.Composer, l *job.Lift) []layout.Block {
	if l.ByHand {
		return nil
	}
	w, r := c.W, l.Result
	var notes []string
	if l.EvenSplit() {
		var even []string
		for _, x := range r.Legs {
			even = append(even, l.Print(x.Even.Up()))
		}
		notes = append(notes, w.Lift.EvenSplit.With(strings.Join(even, ", ")))
	}
	if l.Plan.Rig == lift.Beam {
		notes = append(notes, w.Lift.Bail.With(l.Print(r.Bail.Size()), l.Plan.Picks[0].Name))
	}
	if l.Plan.Rig == lift.Bridle && len(l.Plan.Picks) > 1 {
		notes = append(notes, w.Lift.PressLine.With(l.Print(r.Press.Up())))
	}
	if r.Tilt.Most > r.Tilt.Total {
		notes = append(notes, w.Lift.TiltedWithin.With(l.Print(r.Tilt.Within.Up()), l.Print(r.LengthError.Up().Fine()), l.Print(r.Tilt.Most.Up())))
	}
	if r.Tackle != nil {
		notes = append(notes, w.Lift.TackleLine.With(l.Print(r.Tackle.Pull.Up())))
	}
	if len(notes) == 0 {
		return nil
	}
	return []layout.Block{c.Para(c.Span, []layout.Run{layout.T(layout.Sub, strings.Join(notes, " "))}, layout.ParaOpts{Ref: l.At})}
}
