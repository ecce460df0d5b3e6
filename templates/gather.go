package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// gather sets the lists of what is fetched before the work: instruments, tools,
// spares and consumables, with boxes for what was issued, used and returned.
func gather(c *composer) []layout.Piece {
	w, s := c.W, c.Job.Supplies
	out := c.instrumentList(s.Instruments)
	out = append(out, c.toolList(s.Tools)...)
	for _, l := range []struct {
		title string
		list  []*job.Supply
	}{{w.Gather.Spares, s.Spares}, {w.Gather.Consumables, s.Consumables}} {
		if len(l.list) > 0 {
			out = append(out, c.supplyList(l.title, l.list)...)
		}
	}
	if len(out) == 0 {
		return nil
	}
	return append([]layout.Piece{c.RuleLine(w.Gather.Rule)}, out...)
}

// instrumentList has a box for the number of each instrument and for the day on
// which its calibration is due.
func (c *composer) instrumentList(list []*job.InstrumentUse) []layout.Piece {
	if len(list) == 0 {
		return nil
	}
	w := c.W
	g := c.Grid(block.Col(w.Gather.Instruments, 0), block.Col(w.Common.InstrumentNo, 30), block.Col(w.Gather.CalDue, 30), block.Col(w.Gather.Issued, 18), block.Col(w.Gather.Returned, 18))
	var rows []layout.Row
	for _, in := range list {
		facts := []string{}
		if in.Low != nil {
			facts = append(facts, in.Low.Print()+" – "+in.High.Print())
		}
		if in.Reads != nil {
			facts = append(facts, w.Gather.Reads.With(in.Reads.Print()))
		}
		if len(in.Dims) > 0 {
			facts = append(facts, strings.Join(baseMarks(in.Dims), ", "))
		}
		what := g.About(0, in.Name, strings.Join(facts, " · "), in.At)
		rows = append(rows, g.Row(in.At, what, g.Text(1, layout.Body, in.Number, in.At)))
	}
	return g.Under(append(rows, g.Blank(1)...))
}

// baseMarks are the marks of dimensions without their places, each once.
func baseMarks(ds []*job.Dim) []string {
	var out []string
	for _, d := range ds {
		if len(out) == 0 || out[len(out)-1] != d.Base {
			out = append(out, d.Base)
		}
	}
	return out
}

// toolList is the list of tools, two beside each other: what is issued comes back, none
// of it is used up.
func (c *composer) toolList(list []*job.Supply) []layout.Piece {
	if len(list) == 0 {
		return nil
	}
	w := c.W
	g := c.TwoUp(block.Col(w.Gather.Tools, 0), block.Col(w.Gather.HowMuch, 13), block.Col(w.Gather.Issued, 16), block.Col(w.Gather.Returned, 17))
	var rows []layout.Row
	for _, s := range list {
		rows = append(rows, g.Row(s.At, g.About(0, s.What, c.supplyFacts(s), s.At), g.Text(1, layout.Body, s.Count, s.At)))
	}
	both, pairs := g.Pairs(append(rows, g.Blank(1+(len(rows)+1)%2)...))
	return both.Under(pairs)
}

// supplyList is one of the lists of spares and consumables.
func (c *composer) supplyList(title string, list []*job.Supply) []layout.Piece {
	w := c.W
	g := c.Grid(block.Col(title, 0), block.Col(w.Gather.HowMuch, 24), block.Col(w.Gather.Issued, 18), block.Col(w.Gather.Used, 18), block.Col(w.Gather.Returned, 18))
	var rows []layout.Row
	for _, s := range list {
		what := g.About(0, s.What, c.supplyFacts(s), s.At)
		rows = append(rows, g.Row(s.At, what, g.Text(1, layout.Body, s.Count, s.At)))
	}
	return g.Under(append(rows, g.Blank(1)...))
}

// stepNumbers lists steps without their pages: the things lie at the machine by then, and
// the sheet of all steps has the pages.
func stepNumbers(list []*job.Step) string {
	var out []string
	for _, st := range list {
		out = append(out, st.No)
	}
	return strings.Join(out, ", ")
}

// supplyFacts is what there is to know of a tool, spare or consumable.
func (c *composer) supplyFacts(s *job.Supply) string {
	var facts []string
	add := func(text string) {
		if text != "" {
			facts = append(facts, text)
		}
	}
	add(s.Size)
	if s.Must {
		add(c.W.Gather.AlwaysRenewed)
	}
	if len(s.Steps) > 0 {
		add(c.W.Gather.UsedAt.With(stepNumbers(s.Steps)))
	}
	add(s.Note)
	return strings.Join(facts, " · ")
}
