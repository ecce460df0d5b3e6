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
	used := []block.Column{block.Col(w.Gather.HowMuch, 12), block.Col(w.Gather.Issued, 12.5), block.Col(w.Gather.Used, 11.5), block.Col(w.Gather.Returned, 16)}
	out = append(out, c.supplyList(s.Spares, 0, append([]block.Column{block.Col(w.Gather.Spares, 0)}, used...)...)...)
	out = append(out, c.supplyList(s.Consumables, 1, append([]block.Column{block.Col(w.Gather.Consumables, 0)}, used...)...)...)
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

// toolList is the list of tools: what is issued comes back, none of it is used up.
func (c *composer) toolList(list []*job.Supply) []layout.Piece {
	w := c.W.Gather
	return c.supplyList(list, 1, block.Col(w.Tools, 0), block.Col(w.HowMuch, 12), block.Col(w.Issued, 13), block.Col(w.Returned, 16))
}

// supplyList is one of the lists of tools, spares and consumables, in one column or two
// beside each other, whichever is lower; with empty rows as said at the least, and one that
// fills the second column.
func (c *composer) supplyList(list []*job.Supply, blank int, cols ...block.Column) []layout.Piece {
	if len(list) == 0 {
		return nil
	}
	set := func(g block.Grid) []layout.Row {
		var rows []layout.Row
		for _, s := range list {
			rows = append(rows, g.Row(s.At, g.About(0, s.What, c.supplyFacts(s), s.At), g.Text(1, layout.Body, s.Count, s.At)))
		}
		return rows
	}
	one := c.Grid(cols...)
	single := one.Under(append(set(one), one.Blank(blank)...))
	half := c.TwoUp(cols...)
	double := c.twoTables(half, append(set(half), half.Blank(max(blank, len(list)%2))...))
	double[0].Gap = single[0].Gap
	if height(double) < height(single) {
		return double
	}
	return single
}

// height is how high pieces are together.
func height(ps []layout.Piece) layout.Mm {
	h := layout.Mm(0)
	for _, p := range ps {
		h += p.Gap + p.Block.H
	}
	return h
}

// stepNumbers lists steps without their pages, in the order of the work, of three or more
// that follow each other in a section the first and the last: the things lie at the machine by
// then, and the sheet of all steps has the pages.
func (c *composer) stepNumbers(list []*job.Step) string {
	in := map[*job.Step]bool{}
	for _, st := range list {
		in[st] = true
	}
	var out []string
	for _, s := range c.Job.Sections {
		for i := 0; i < len(s.Steps); i++ {
			from := i
			for i < len(s.Steps) && in[s.Steps[i]] {
				i++
			}
			run := s.Steps[from:i]
			if len(run) > 2 {
				out = append(out, run[0].No+"–"+run[len(run)-1].No)
				continue
			}
			for _, st := range run {
				out = append(out, st.No)
			}
		}
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
		add(c.W.Gather.UsedAt.With(c.stepNumbers(s.Steps)))
	}
	add(s.Note)
	return strings.Join(facts, " · ")
}
