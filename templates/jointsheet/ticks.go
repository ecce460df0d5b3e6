package jointsheet

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/packs/units"
	"matchmark/templates/block"
	"matchmark/templates/figure"
)

// Measures of the table of ticks: its rows and columns are as wide apart as a pen in a
// glove needs.
const (
	tickRow  layout.Mm = 9
	tickPad  layout.Mm = 0.5 // above and below what stands in a cell
	tickCol  layout.Mm = 11.2
	orderCol layout.Mm = 11
	roundCol layout.Mm = 22 // how tight, in both units
	placeCol layout.Mm = 17 // the same where the rounds are columns
	tableGap layout.Mm = 5
	signCol  layout.Mm = 28 // a number of a tool, or initials
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
	if h := hoursOf(j, r); h != "" && r.Setting != nil {
		return c.W.Tightening.Stage[r.Kind].With(settingPrint(r.Setting), h)
	}
	return StageWords(c, r)
}

// roundHead is the head of the column of one round: how tight in both units, which
// way round.
func roundHead(c *block.Composer, j *job.Joint, r joint.Round, width layout.Mm) layout.Block {
	w := c.W
	style := layout.SubBold
	if width < placeCol-2 {
		style = layout.Caption.With(layout.Bold)
	}
	var lines []layout.Block
	line := func(st layout.Style, text string) {
		if text != "" {
			lines = append(lines, c.Para(width, []layout.Run{layout.T(st, breakable(text))}, layout.ParaOpts{Ref: j.At}))
		}
	}
	head := w.Tightening.Head[r.Kind]
	if r.Kind == joint.FurtherTry {
		head = w.Step.TryNo.With(strconv.Itoa(r.Repeat + 1))
	}
	if head == "" {
		line(style, roundWords(c, j, r))
	} else {
		line(style, head)
		if r.Setting != nil {
			line(style, settingPrint(r.Setting))
		}
	}
	if r.Setting != nil && (head == "" || !tightenedTo(j, r.Setting)) {
		line(layout.Caption, strings.TrimSpace(inBoth("", r.Setting)))
	}
	if h := hoursOf(j, r); h != "" {
		line(layout.Caption, w.Tightening.After.With(h))
	}
	if r.Travel > 0 {
		line(layout.Caption, w.Tightening.Moves.With(figure.Hundredths(float64(r.Travel))+figure.NBSP+units.Millimetre.Print()))
	}
	if r.Way == joint.Backward {
		line(layout.Caption, w.Tightening.Way[r.Way])
	}
	return layout.Above(0.3, lines...)
}

// tightenedTo reports whether a round of its own tightens to a setting: a round that comes
// again to it has no need to say it in both units.
func tightenedTo(j *job.Joint, s *joint.Setting) bool {
	return slices.ContainsFunc(j.Rounds, func(r joint.Round) bool {
		return r.Kind == joint.Tighten && r.Setting != nil && settingPrint(r.Setting) == settingPrint(s)
	})
}

// roundNotes say of a round that goes another way how it goes; empty where none does.
func roundNotes(c *block.Composer, j *job.Joint) layout.Block {
	var out []string
	for _, r := range j.Rounds {
		if r.Way == joint.Around {
			out = append(out, block.Capital(c.W.Tightening.RoundNote.With(StageWords(c, r), c.W.Tightening.Way[r.Way])))
		}
	}
	if len(out) == 0 {
		return layout.Block{}
	}
	return c.Para(c.Span, []layout.Run{layout.T(layout.Body, strings.Join(out, " "))}, layout.ParaOpts{Ref: j.At})
}

// hoursOf is how long after a round comes again, empty for all others.
func hoursOf(j *job.Joint, r joint.Round) string {
	if r.Kind != joint.AgainAfter || r.Stage < 0 || r.Stage >= len(j.Spec.Stages) || j.Spec.Stages[r.Stage].Hours == nil {
		return ""
	}
	return j.Spec.Stages[r.Stage].Hours.Print()
}

// ticks set the tables of ticks of a joint with the boxes of who did it: a row a round,
// a column a fastener in its order, as many as there is room for and then below again.
func ticks(c *block.Composer, j *job.Joint) []layout.Block {
	n := j.Count()
	across := int((c.Span - roundCol) / tickCol)
	tables := (n + across - 1) / max(across, 1)
	var out []layout.Block
	for from := 0; from < n; {
		// Tables of one joint are of equal length.
		to := min(from+(n+tables-1)/tables, n)
		out = append(out, tickTable(c, j, from, to))
		from = to
	}
	return withSigns(c, j, out)
}

// placeTicks are those of all places, by the marks of which they are found.
func placeTicks(c *block.Composer, g []*job.Joint) []layout.Block {
	out := placeTables(c, g)
	for _, j := range g {
		if !slices.ContainsFunc(out, func(b layout.Block) bool {
			return slices.ContainsFunc(b.Anchors(), func(a layout.Anchor) bool { return a.Name == ticksAnchor(j) })
		}) {
			out[0] = out[0].Anchored(ticksAnchor(j))
		}
	}
	return append(heldTables(c, g), out...)
}

// placeTables set the ticks of a joint at each of its places, or at its only one, for each
// time that it is tightened.
func placeTables(c *block.Composer, g []*job.Joint) []layout.Block {
	g = eachTime(c.Job, g)
	if len(g) > 2 && sameRounds(g) && g[0].Count() <= fewBolts && g[0].Count() < len(roundsOf(g[0])) && g[0].Spec.BreaksLoose == nil {
		return []layout.Block{placeTable(c, g)}
	}
	if once := onceTicks(c, g); !once.Empty() {
		return []layout.Block{once}
	}
	if pairs := pairTable(c, g); sameRounds(g) && !pairs.Empty() {
		return []layout.Block{pairs}
	}
	if few := fewTable(c, g); !few.Empty() {
		return []layout.Block{few}
	}
	if len(g) == 1 {
		return ticks(c, g[0])
	}
	var out []layout.Block
	for _, j := range g {
		tables := ticks(c, j)
		tables[0] = layout.Above(1, placeLabel(c, j), tables[0]).Anchored(ticksAnchor(j))
		out = append(out, tables...)
	}
	return out
}

// fewBolts is up to how many fasteners, tightened in more rounds than they are, have rows
// of their own in one table.
const fewBolts = 2

// placeTable is one table for a joint of few fasteners at many places: a row a
// fastener, with cells to write in for who did it with what.
func placeTable(c *block.Composer, g []*job.Joint) layout.Block {
	const signs layout.Mm = 22
	w := c.W
	rounds := roundsOf(g[0])
	head := func(text string, width layout.Mm) layout.Block {
		return c.Para(width-2, []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: g[0].At})
	}
	rest := c.Span - orderCol - placeCol*layout.Mm(len(rounds)) - 3*signs
	t := layout.Table{PadX: 1, PadY: tickPad, Grid: true, MinH: tickRow}
	t.Columns = []layout.Column{{Width: rest, Head: head(w.Tightening.WhereColumn, rest)}, {Width: orderCol, Head: head(w.Tightening.OrderColumn, orderCol)}}
	for _, r := range rounds {
		t.Columns = append(t.Columns, layout.Column{Width: placeCol, Head: tickHead(c, g[0], r, placeCol)})
	}
	for _, text := range []string{toolHead(c, g[0]), w.Tightening.FinalBy, w.Tightening.CheckedBy} {
		t.Columns = append(t.Columns, layout.Column{Width: signs, Head: head(text, signs)})
	}
	var rows []layout.Row
	for _, j := range g {
		for i := range max(j.Count(), 1) {
			where := layout.Block{}
			if i == 0 {
				where = c.Para(rest-2, []layout.Run{{Text: j.Mark, Style: layout.SubBold, Deco: layout.Boxed}, layout.T(layout.Sub, " "+j.Place.Name)}, layout.ParaOpts{Ref: j.At})
			}
			cells := []layout.Block{where, c.Words(layout.Strong, orderHead(j, i)).Center(orderCol - 2)}
			for range rounds {
				cells = append(cells, c.Tick(layout.Sub, "", j.At).Center(placeCol-2))
			}
			rows = append(rows, layout.Row{Cells: cells, Middle: true, Ref: j.At})
		}
	}
	return t.Block(rows)
}

// tickHead is the head of a column of ticks.
func tickHead(c *block.Composer, j *job.Joint, r joint.Round, col layout.Mm) layout.Block {
	if r.Kind == joint.Tighten && r.Setting == nil {
		return c.Words(layout.Sub, c.W.Step.IsTight)
	}
	return roundHead(c, j, r, col-2)
}

// roundsOf are the rounds of a joint; one that says nothing is tightened once.
func roundsOf(j *job.Joint) []joint.Round {
	if len(j.Rounds) > 0 {
		return j.Rounds
	}
	return []joint.Round{{Stage: -1}}
}

// tickTable is the table of some fasteners by their place in the order.
func tickTable(c *block.Composer, j *job.Joint, from, to int) layout.Block {
	t := layout.Table{PadX: 1, PadY: tickPad, Grid: true, MinH: tickRow}
	t.Columns = []layout.Column{{Width: roundCol, Head: c.Words(layout.Caption, c.W.Tightening.OrderColumn)}}
	for i := from; i < to; i++ {
		t.Columns = append(t.Columns, layout.Column{Width: tickCol, Head: c.Words(layout.Strong, orderHead(j, i)).Center(tickCol - 2*t.PadX)})
	}
	var rows []layout.Row
	for _, r := range roundsOf(j) {
		cells := []layout.Block{tickHead(c, j, r, roundCol)}
		for range to - from {
			cells = append(cells, c.Tick(layout.Sub, "", j.At).Center(tickCol-2*t.PadX))
		}
		rows = append(rows, layout.Row{Cells: cells, Middle: true, Ref: j.At})
	}
	return t.Block(rows)
}

// orderHead is the head of the column, or row, of the fastener that is tightened as number i, from
// 0: its hole, where the order is told by their numbers, else its place in the order.
func orderHead(j *job.Joint, i int) string {
	if holes := j.Holes(); i < len(holes) {
		return strconv.Itoa(holes[i])
	}
	return strconv.Itoa(i + 1)
}

// breakable lets a line end between a number and its unit, in the head of a column.
func breakable(text string) string { return strings.ReplaceAll(text, "\u00a0", " ") }
