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

// gearTable lists every piece that has a tag with its load, what it may carry and how much
// of that is used, two in a row as they follow each other along the legs, with cells for
// the number on its tag and the day it was inspected. Below them stands what is counted
// and has no tag of its own: what the legs take hold of on the load, the ends and lugs of a
// bar, the bridle as a whole.
func gearTable(c *block.Composer, l *job.Lift, head *layout.Block) []layout.Piece {
	if l.ByHand {
		return nil
	}
	w := c.W
	both, rows := gearRows(c, l)
	bare := c.TwoUp(block.Col(w.Lift.NoTag, 0))
	bare.Table.MinH, bare.Table.PadY = 0, 0.4
	untagged, more := bare.Across(components(c, bare.Table.Room(0), l, false))
	out := both.Table.Pieces(block.LastTogether(rows), head)
	if len(more) == 0 {
		return out
	}
	return append(out, untagged.Table.Pieces(block.LastTogether(more), head)...)
}

// gearNumbers are widths of the cell for the number on a tag: the first that makes the list of
// gear lowest is taken, for the name of a piece in two lines costs a line of the sheet. The cell
// for the day of the inspection is as wide as a date.
var gearNumbers = []layout.Mm{24, 22, leastNumber}

const leastNumber, gearDay layout.Mm = 20.4, 24

// gearRows are the rows of the pieces that have a tag, with their table.
func gearRows(c *block.Composer, l *job.Lift) (both block.Grid, rows []layout.Row) {
	least := layout.Mm(0)
	for i, number := range gearNumbers {
		g := c.TwoUp(block.Col(c.W.Lift.GearHead, 0), block.Col(c.W.Lift.GearNumber, number), block.Col(c.W.Lift.GearInspected, gearDay))
		g.Table.MinH = tagRow
		if c.Pen().Gloves {
			g.Table.MinH += 2
		}
		grid, some := g.Across(components(c, g.Table.Room(0), l, true))
		high := layout.Mm(0)
		for _, p := range grid.Table.Pieces(some) {
			high += p.Block.H
		}
		if i == 0 || high < least-0.5 {
			both, rows, least = grid, some, high
		}
	}
	return both, rows
}

// components are the rows of the pieces that have a tag, or of those that have none, in a
// width: what a piece is called, what it carries of what it may, and why it may carry less.
func components(c *block.Composer, width layout.Mm, l *job.Lift, tagged bool) []layout.Row {
	var rows []layout.Row
	for i, x := range l.Result.Components {
		if l.HasTag(x) != tagged {
			continue
		}
		name, use := layout.Body, layout.Body
		if i == l.Result.Weakest {
			name, use = layout.Strong, layout.Strong
		}
		called := layout.T(name, x.Called(c.W))
		used := layout.T(use, c.W.Lift.GearUse.With(l.Print(x.Load.Up()), l.Print(x.Allowed.Down()), l.Print(x.Used.Percent())))
		para := func(runs ...layout.Run) layout.Block { return c.Para(width, runs, layout.ParaOpts{Ref: l.At}) }
		lines := []layout.Block{para(called, layout.T(use, "   "), used)}
		if c.Width(name, called.Text)+c.Width(use, "   "+used.Text) > width {
			lines = []layout.Block{para(called), para(used)}
		}
		if why := reductions(c, l.PaperUnits(c.W), x); why != "" {
			lines = append(lines, para(layout.T(layout.Caption, c.W.Lift.GearRated.With(l.Print(x.Rated.Down()), why))))
		}
		rows = append(rows, layout.Row{Ref: l.At, Cells: []layout.Block{layout.Above(0, lines...)}})
	}
	return rows
}

// reductions lists why a piece may carry less than its rating, or more.
func reductions(c *block.Composer, u lift.Units, x lift.Component) string {
	var out []string
	for _, r := range x.Reductions {
		if r.Factor == 1 {
			continue
		}
		out = append(out, r.Because(u)+" × "+r.Factor.Factor().In(u))
	}
	return strings.Join(out, c.W.Common.Semicolon)
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
		out = append(out, c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, name+c.W.Common.Colon), layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: l.At, Hang: 4}))
	}
	h := l.Result.Heat
	text := w.Lift.HoldsFrom.With(l.Print(h.Low.Up()), h.LowPiece, l.Print(h.High.Down()), h.HighPiece)
	if t := l.Plan.Temperatures; t != nil {
		text += " " + w.Lift.ComesTo.With(l.Print(t.Low.Given()), l.Print(t.High.Given()))
	}
	if h.Spent {
		text += " " + w.Lift.ChainSpent.With(l.Print(lift.SpentFrom.Given()))
	}
	line(w.Lift.ColdAndHot, text)
	for _, k := range l.Points() {
		says := w.Lift.RatedFor
		if k.Turns {
			says = w.Lift.RatedRound
		}
		line(k.What, says.With(l.Print(k.Rated.Down()), l.Print(k.LeastAngle.Up()), k.Source))
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
		line(strings.Join(names[text], c.W.Common.Semicolon), text)
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
