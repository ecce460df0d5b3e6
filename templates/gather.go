package templates

import (
	"slices"
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
	used := []block.Column{block.Col(w.Gather.HowMuch, 14), block.Col(w.Gather.Issued, 12), block.Col(w.Gather.Used, 11.5), block.Col(w.Gather.Returned, 16)}
	out = append(out, c.supplyList(s.Spares, 0, append([]block.Column{block.Col(w.Gather.Spares, 0)}, used...)...)...)
	out = append(out, c.supplyList(s.Consumables, 0, append([]block.Column{block.Col(w.Gather.Consumables, 0)}, used...)...)...)
	if len(out) == 0 {
		return nil
	}
	return append([]layout.Piece{c.RuleLine(w.Gather.Rule)}, out...)
}

// instrumentList has a box for the number of each instrument and for the day on
// which its calibration is due, in one column or two, whichever is lower. Of those of which
// several are used at once each has a line.
func (c *composer) instrumentList(list []*job.InstrumentUse) []layout.Piece {
	if len(list) == 0 {
		return nil
	}
	w := c.W
	head := func(number, due, issued, returned layout.Mm) []block.Column {
		return []block.Column{block.Col(w.Gather.Instruments, 0), block.Col(w.Common.InstrumentNo, number), block.Col(w.Gather.CalDue, due), block.Col(w.Gather.Issued, issued), block.Col(w.Gather.Returned, returned)}
	}
	return c.lower(head(30, 30, 18, 18), head(14, 16, 11, 13.5), func(g block.Grid) []layout.Row { return c.instrumentRows(g, list) }, 1)
}

// instrumentRows are the rows of instruments.
func (c *composer) instrumentRows(g block.Grid, list []*job.InstrumentUse) []layout.Row {
	w := c.W
	var rows []layout.Row
	for _, in := range list {
		facts := []string{}
		if in.Low != nil {
			low := in.Low.Print()
			if in.Low.Unit == in.High.Unit {
				low = in.Low.Number.Print() // the unit stands behind the other
			}
			facts = append(facts, low+" – "+in.High.Print())
		}
		if in.Reads != nil {
			facts = append(facts, w.Gather.Reads.With(in.Reads.Print()))
		}
		if either := strings.Join(baseMarks(in.ReadBy(0)), ", "); in.Count > 1 && either != "" {
			facts = append(facts, w.Gather.AnyOfThem.With(either))
		} else if either != "" {
			facts = append(facts, either)
		}
		what := g.About(0, in.Name, strings.Join(facts, " · "), in.At)
		if in.Count < 2 {
			rows = append(rows, g.Row(in.At, what, g.Text(1, layout.Body, in.Number, in.At)))
			continue
		}
		for i := range in.Count {
			name := block.InstrumentPiece(c.Composer, in.Instrument, i+1)
			own := strings.Join(baseMarks(in.ReadBy(i+1)), ", ")
			if i > 0 {
				rows = append(rows, g.Row(in.At, g.About(0, name, own, in.At)))
				continue
			}
			if own != "" {
				facts = append(facts, own)
			}
			// The number that is told is that of the first; the others are written in.
			what = g.About(0, name, strings.Join(facts, " · "), in.At)
			rows = append(rows, g.Row(in.At, what, g.Text(1, layout.Body, in.Number, in.At)))
		}
	}
	return rows
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
// Of one whose number is not said one is fetched.
func (c *composer) toolList(list []*job.Supply) []layout.Piece {
	w := c.W.Gather
	list = slices.Clone(list)
	for i, s := range list {
		if s.Count == "" {
			one := *s
			one.Count = "1"
			list[i] = &one
		}
	}
	return c.supplyList(list, 1, block.Col(w.Tools, 0), block.Col(w.HowMuch, 12), block.Col(w.Issued, 13), block.Col(w.Returned, 16))
}

// supplyList is one of the lists of tools, spares and consumables, in one column or two
// beside each other, whichever is lower; one column has so many empty rows.
func (c *composer) supplyList(list []*job.Supply, blank int, cols ...block.Column) []layout.Piece {
	if len(list) == 0 {
		return nil
	}
	return c.lower(cols, cols, func(g block.Grid) []layout.Row {
		var rows []layout.Row
		for _, s := range list {
			rows = append(rows, g.Row(s.At, g.About(0, s.What, c.supplyFacts(s), s.At), g.Text(1, layout.Body, s.Count, s.At)))
		}
		return rows
	}, blank)
}

// lower sets a list in one column or two beside each other, whichever is lower and has room for its words: in one with so
// many empty rows, in two with one that fills the second column.
func (c *composer) lower(cols, halves []block.Column, set func(block.Grid) []layout.Row, blank int) []layout.Piece {
	one := c.Grid(cols...)
	single := one.Under(append(set(one), one.Blank(blank)...))
	half := c.TwoUp(halves...)
	rows := set(half)
	double := c.twoTables(half, append(rows, half.Blank(len(rows)%2)...))
	double[0].Gap = single[0].Gap
	if height(double) < height(single) && misfits(double) <= misfits(single) {
		return double
	}
	return single
}

// misfits counts what has no room in pieces.
func misfits(ps []layout.Piece) int {
	n := 0
	for _, p := range ps {
		n += len(p.Block.Misfits())
	}
	return n
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
	list = slices.Clone(list)
	slices.SortFunc(list, func(a, b *job.Step) int { return a.Index - b.Index })
	list = slices.Compact(list)
	var out []string
	for len(list) > 0 {
		n := 1
		for n < len(list) && list[n].Section == list[0].Section && list[n].Index == list[0].Index+n {
			n++
		}
		if n > 2 {
			out = append(out, list[0].No+"–"+list[n-1].No)
			list = list[n:]
			continue
		}
		out = append(out, list[0].No)
		list = list[1:]
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
