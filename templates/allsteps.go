package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/jointsheet"
	"matchmark/templates/step"
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
			out = append(out, layout.Piece{Block: layout.Above(1.5, balanced(lines, width), c.Rule(layout.Rule)), Gap: 1.5})
			lines, high = nil, 0
		}
	}
	for i, s := range c.Job.Sections {
		if len(s.Steps) == 0 {
			continue
		}
		lines = append(lines, columnLine{c.sectionRow(s, width), 2.5, true})
		for _, t := range c.toldSteps(s, back) {
			b := c.Para(width, t.runs, layout.ParaOpts{Ref: t.at, Hang: 3})
			lines = append(lines, columnLine{b, 0.8, false})
			if high += b.H; high > bandMost {
				band()
			}
		}
		if high > bandHigh || i == len(c.Job.Sections)-1 {
			band()
		}
	}
	return out
}

// bandHigh is how high the steps of a band are in one column at the least: the sheet is a
// row of bands, each to be read down its first column and then down its second.
const bandHigh layout.Mm = 60

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

// A toldStep is one or some steps of which the same is said, with its runs.
type toldStep struct {
	at   layout.Ref
	runs []layout.Run
}

// toldSteps are the steps of a section as they are told; neighbours that say the same, as
// those of a table over several places, are told together.
func (c *composer) toldSteps(s *job.Section, back map[*job.Step]*job.Step) []toldStep {
	var out []toldStep
	var all [][]*job.Step
	said := ""
	for _, st := range s.Steps {
		says := step.Text(c.Composer, st) + "|" + c.looks(st)
		if n := len(all); n > 0 && says == said && len(all[n-1]) < mostTogether {
			all[n-1] = append(all[n-1], st)
			continue
		}
		all, said = append(all, []*job.Step{st}), says
	}
	for _, sts := range all {
		var backs []*job.Step
		for _, st := range sts {
			if b := back[st]; b != nil {
				backs = append(backs, b)
			}
		}
		look := c.looks(sts[0])
		if len(backs) > 0 {
			look = joinFacts(look, c.W.AllSteps.BackAt.With(c.StepRefs(backs)))
		}
		text := strings.Join(strings.Fields(step.Text(c.Composer, sts[0])), " ")
		runs := []layout.Run{layout.T(layout.SubBold, c.StepRefs(sts)+"  "), layout.T(layout.Sub, text)}
		if look != "" {
			runs = append(runs, layout.T(layout.SubBold, "  "+look))
		}
		out = append(out, toldStep{sts[0].At, runs})
	}
	return out
}

// mostTogether is how many steps are told together at the most: the numbers of very many
// alike ones would be higher than a page.
const mostTogether = 24

// sectionRow is the line above the steps of a section, with its page and hours.
func (c *composer) sectionRow(s *job.Section, width layout.Mm) layout.Block {
	text := c.W.AllSteps.SectionLine.With(c.W.Common.StepPage.With(s.No, c.Page("section "+s.No)), sectionTitle(s))
	if h := s.Hours(); h.Sign() > 0 {
		text += " · " + c.W.AllSteps.Hours.With(h.Print())
	}
	line := layout.Drawn(width, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: width, Weight: layout.Rule}})
	return layout.Above(0.4, c.Para(width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: s.At}), line)
}

// looks is what a reader looks for at a step: its hold, lifts, heats, alignments, joints
// with how tight, what is set, what is easily missed. Of a row that puts back nothing that
// its step has said.
func (c *composer) looks(st *job.Step) string {
	var out []string
	add := func(mark string) {
		if mark != "" {
			out = append(out, mark)
		}
	}
	if st.Hold != nil {
		add(st.Hold.Mark)
	}
	for _, l := range st.Lifts {
		add(l.Mark)
	}
	for _, h := range st.Heats {
		add(h.Mark)
	}
	for _, a := range st.Align {
		add(a.Mark)
	}
	for _, f := range st.Tighten {
		add(jointsheet.Setting(f))
	}
	var set, read []*job.Dim // what has a limit as left is set, the rest is read
	for _, d := range st.Set {
		if d.Left != nil {
			set = append(set, d)
		} else {
			read = append(read, d)
		}
	}
	if len(set) > 0 {
		add(c.W.AllSteps.Set.With(strings.Join(baseMarks(set), ", ")))
	}
	if len(read) > 0 {
		add(c.W.AllSteps.Read.With(strings.Join(baseMarks(read), ", ")))
	}
	if st.Missed != "" && (st.Undoes == nil || st.Undoes.Missed != st.Missed) {
		add(c.W.AllSteps.Missed.With(st.Missed))
	}
	return strings.Join(out, " · ")
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
	list := []layout.Block{c.Heading(w.Sections), columnsOf(lines, columns, width, 0.6)}
	marks := func(name string, all []string) {
		if len(all) > 0 {
			list = append(list, c.Para(c.Span, []layout.Run{layout.T(layout.SubBold, name+"  "), layout.T(layout.Sub, strings.Join(all, " · "))}, layout.ParaOpts{}))
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
