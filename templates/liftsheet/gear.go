package liftsheet

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates/block"
)

// tagRow is the height of a row in which the number of a tag is written.
const tagRow layout.Mm = 9

// gearTable lists every piece that has a tag with its load, its rating and what is left
// of it, and has boxes for the number on its tag and the day it was inspected. Below them
// stands what is counted and has no tag of its own: what the legs take hold of on the load,
// the ends and lugs of a bar, the bridle as a whole.
func gearTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	if l.ByHand {
		return nil
	}
	w := c.W
	const number, day layout.Mm = 24, 24
	g := c.Grid(block.Col(w.Lift.Piece, 0), block.Col(w.Lift.Load, 17), block.Col(w.Lift.Rated, 17), block.Col(w.Lift.Reduced, 34), block.Col(w.Lift.Used, 13), block.Col(w.Lift.GearNumber, number), block.Col(w.Lift.GearInspected, day))
	g.Table.MinH = tagRow
	tagged := componentRows(c, g, l, true)
	bare := g
	n := len(g.Table.Columns)
	bare.Table.MinH, bare.Table.PadY = 0, 0.7
	bare.Table.Columns = append([]layout.Column{}, g.Table.Columns[:n-1]...)
	bare.Table.Columns[n-2].Width = number + day
	rows := componentRows(c, bare, l, false)
	if len(rows) == 0 {
		return g.Table.Pieces(block.LastTogether(tagged), head)
	}
	for i := range rows {
		rows[i].Cells = append(rows[i].Cells, bare.Text(n-2, layout.Caption, w.Lift.NoTag, l.At))
		rows[i].KeepNext = i == len(rows)-2
	}
	out := g.Table.Pieces(tagged, head)
	more := bare.Table.Pieces(rows, head)[1:]
	for i := range more {
		more[i].Under = out[len(out)-1].Under
	}
	return append(out, more...)
}

// componentRows are the rows of the pieces that have a tag, or of those that have none.
func componentRows(c *block.Composer, g block.Grid, l *job.Lift, tagged bool) []layout.Row {
	var rows []layout.Row
	for i, x := range l.Result.Components {
		if l.HasTag(x) != tagged {
			continue
		}
		style := layout.Body
		if i == l.Result.Weakest {
			style = layout.Strong
		}
		left := layout.Above(0, g.Text(3, style, l.Print(x.Allowed.Down()), l.At), g.Text(3, layout.Caption, reductions(l.PaperUnits(c.W), x), l.At))
		rows = append(rows, g.Row(l.At, g.Text(0, style, x.Called(c.W), l.At), g.Text(1, style, l.Print(x.Load.Up()), l.At), g.Text(2, style, l.Print(x.Rated.Down()), l.At), left, g.Text(4, style, l.Print(x.Used.Percent()), l.At)))
	}
	return rows
}

// reductions lists why a piece may carry less than its rating, or more.
func reductions(u lift.Units, x lift.Component) string {
	var out []string
	for _, r := range x.Reductions {
		if r.Factor == 1 {
			continue
		}
		out = append(out, r.Because(u)+" × "+r.Factor.Factor().In(u))
	}
	return strings.Join(out, "; ")
}

// gearNotes are the lines below the gear: how cold and how hot it may become, and what
// to look at on a piece where a rule gives a number.
func gearNotes(c *block.Composer, l *job.Lift) []layout.Block {
	if l.ByHand {
		return nil
	}
	w := c.W
	var out []layout.Block
	line := func(name, text string) {
		out = append(out, c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, name+": "), layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: l.At, Hang: 4}))
	}
	h := l.Result.Heat
	text := w.Lift.HoldsFrom.With(l.Print(h.Low.Up()), h.LowPiece, l.Print(h.High.Down()), h.HighPiece)
	if t := l.Plan.Temperatures; t != nil {
		text += " " + w.Lift.ComesTo.With(l.Print(t.Low.Given()), l.Print(t.High.Given()))
	}
	line(w.Lift.ColdAndHot, text)
	for _, k := range l.Points() {
		line(k.What, w.Lift.RatedFor.With(l.Print(k.Rated.Down()), l.Print(k.LeastAngle.Up()), k.Source))
	}
	// Pieces of one kind have the same said of them.
	var what []string
	names := map[string][]string{}
	for _, k := range l.Result.Looks {
		text := k.In(l.PaperUnits(c.W))
		if names[text] == nil {
			what = append(what, text)
		}
		names[text] = append(names[text], k.Name)
	}
	for _, text := range what {
		line(strings.Join(names[text], "; "), text)
	}
	return []layout.Block{layout.Above(0.6, out...)}
}

// known lists what is written of the legs of a lift that cannot be computed.
func known(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	w := c.W
	legs := append(append([]lift.Leg{}, l.Plan.TopLegs...), l.Plan.Legs...)
	if len(legs) == 0 {
		return nil
	}
	g := c.Grid(block.Col(w.Lift.Leg, 0), block.Col(w.Lift.TakesHold, 40), block.Col(w.Lift.Length, 30), block.Col(w.Lift.Sling, 50), block.Col(w.Lift.Rated, 30))
	g.Table.MinH = 0
	or := func(text string) string {
		if text == "" {
			return w.Lift.NotWritten
		}
		return text
	}
	var rows []layout.Row
	for i, x := range legs {
		length, takes := "", l.TakesOf(i)
		if x.Length > 0 {
			length = l.Print(x.Length.Given())
		}
		if i >= len(l.Plan.TopLegs) {
			takes = or(takes)
		}
		rows = append(rows, g.Row(l.At, g.Text(0, layout.Strong, x.Name, l.At), g.Text(1, layout.Body, takes, l.At), g.Text(2, layout.Body, or(length), l.At),
			g.Text(3, layout.Body, or(x.Sling.Name), l.At), g.Text(4, layout.Body, rated(c, l, x.Sling.Rated), l.At)))
	}
	out := g.Table.Pieces(rows, head)
	out[0].Gap = 3
	return out
}
