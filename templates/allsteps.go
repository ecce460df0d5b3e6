package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
)

// allSteps sets the sheet to turn to when unsure: every step, whole, with its page and what
// a reader looks for, in two columns.
func allSteps(c *composer) []layout.Piece {
	out := []layout.Piece{c.RuleLine(c.W.AllSteps.Rule)}
	back := map[*job.Step]*job.Step{}
	for _, st := range c.Job.Steps() {
		if st.Undoes != nil {
			back[st.Undoes] = st
		}
	}
	width := (c.Span - layout.GapX) / 2
	var lines []columnLine
	high := layout.Mm(0)
	band := func() {
		if len(lines) > 0 {
			out = append(out, layout.Piece{Block: layout.Above(1, balanced(lines, width), c.Rule(layout.Rule)), Gap: 1})
			lines, high = nil, 0
		}
	}
	for _, like := range c.likeSections() {
		lines = append(lines, columnLine{c.sectionRow(like, width), 2, true})
		for _, t := range c.toldSteps(like, back) {
			b := c.Para(width, t.runs, layout.ParaOpts{Ref: t.at, Hang: 2})
			if t.changed {
				b = c.bar(b, true)
			}
			lines = append(lines, columnLine{b, 0.5, false})
			if high += b.H; high > bandMost {
				band()
			}
		}
		if high > bandHigh {
			band()
		}
	}
	band()
	return out
}

// bandHigh is how high the steps of a band are in one column at the least: the sheet is a
// row of bands, each to be read down its first column and then down its second.
const bandHigh layout.Mm = 40

// bandMost is how high they are at the most: a long section goes on in the next band, for
// a band is not parted between pages.
const bandMost layout.Mm = 240

// A columnLine is a block in a column, with the room above it; a head stays with the next.
type columnLine struct {
	block layout.Block
	gap   layout.Mm
	head  bool
}

// balanced sets lines in two columns of a width so that the higher one is as low as it can be.
func balanced(lines []columnLine, width layout.Mm) layout.Block {
	high := func(ls []columnLine) (h layout.Mm) {
		for i, l := range ls {
			if i > 0 {
				h += l.gap
			}
			h += l.block.H
		}
		return h
	}
	best, least := 0, high(lines) // 0 for one column
	for cut := 1; cut < len(lines); cut++ {
		if lines[cut-1].head {
			continue
		}
		if h := max(high(lines[:cut]), high(lines[cut:])); h < least {
			best, least = cut, h
		}
	}
	column := func(ls []columnLine) layout.Block {
		var out []layout.Block
		for i, l := range ls {
			if i > 0 {
				out = append(out, l.block.Pad(l.gap, 0, 0, 0))
				continue
			}
			out = append(out, l.block)
		}
		return layout.Above(0, out...)
	}
	if best == 0 {
		return layout.Beside(layout.GapX, column(lines))
	}
	left := column(lines[:best])
	return layout.Beside(layout.GapX, left.Fill(width, left.H, 0, 0), column(lines[best:]))
}

// sectionRow are the lines above the steps of like sections, with their pages and hours.
func (c *composer) sectionRow(like []*job.Section, width layout.Mm) layout.Block {
	var lines []layout.Block
	for _, s := range like {
		text := c.W.AllSteps.SectionLine.With(c.W.Common.StepPage.With(s.No, c.Page("section "+s.No)), sectionTitle(s))
		if h := s.Hours(); h.Sign() > 0 {
			text += " · " + c.W.AllSteps.Hours.With(h.Print())
		}
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: s.At}))
	}
	line := layout.Drawn(width, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: width, Weight: layout.Rule}})
	return layout.Above(0.4, append(lines, line)...)
}

// sectionList is the list of sections on the front sheet with their pages and hours, and
// the pages of holds, lifts and heats.
func (c *composer) sectionList() layout.Block {
	w := c.W.AllSteps
	const columns = 3
	width := (c.Span - (columns-1)*layout.GapX) / columns
	var lines []layout.Block
	for _, s := range c.Job.Sections {
		text := w.SectionLine.With(s.No, sectionTitle(s)+", "+c.W.Front.PageNo.With(c.Page("section "+s.No)))
		if h := s.Hours(); h.Sign() > 0 {
			text += " · " + w.Hours.With(h.Print())
		}
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: s.At, Hang: 4}))
	}
	if h := c.Job.Hours; h.Sign() > 0 {
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.SubBold, w.Total.With(h.Print(), c.Job.CrewHours.Print()))}, layout.ParaOpts{}))
	}
	list := []layout.Block{c.Heading(w.Sections), columnsOf(lines, columns, width, 0.4)}
	var runs []layout.Run
	marks := func(name string, all []string) {
		if len(all) > 0 {
			runs = append(runs, layout.T(layout.SubBold, name+"  "), layout.T(layout.Sub, strings.Join(all, " · ")+"   "))
		}
	}
	var holds, lifts, heats []string
	for _, r := range holdRows(c.Job) {
		if r.at != nil {
			holds = append(holds, r.hold.Mark+" "+c.StepRef(r.at))
		}
	}
	for _, l := range c.Job.Lifts {
		lifts = append(lifts, c.W.Common.StepPage.With(l.Mark+" "+l.What, c.Page("lift "+l.Mark)))
	}
	for _, h := range c.Job.Heats {
		heats = append(heats, c.W.Common.StepPage.With(h.Mark+" "+h.What, c.Page("heat "+h.Mark)))
	}
	marks(w.Holds, holds)
	marks(w.Lifts, lifts)
	marks(w.Heats, heats)
	if len(runs) > 0 {
		list = append(list, c.Para(c.Span, runs, layout.ParaOpts{}))
	}
	return layout.Above(1, list...)
}

// columnsOf sets lines in columns of a width with a gap between lines, to be read down each.
func columnsOf(lines []layout.Block, columns int, width, gap layout.Mm) layout.Block {
	var cols []layout.Block
	each := (len(lines) + columns - 1) / columns
	for i := 0; i < len(lines); i += each {
		col := layout.Above(gap, lines[i:min(i+each, len(lines))]...)
		col.W = width
		cols = append(cols, col)
	}
	return layout.Beside(layout.GapX, cols...)
}
