package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
)

// toldLead is the distance between the lines of a step on the sheet of all steps, which are
// short and looked up, not read one after another.
const toldLead layout.Mm = 3.6

// allSteps sets the sheet to turn to when unsure: every step, whole, with its page and what
// a reader looks for, in two columns.
func allSteps(c *composer) []layout.Piece {
	back := map[*job.Step]*job.Step{}
	for _, st := range c.Job.Steps() {
		if st.Undoes != nil {
			back[st.Undoes] = st
		}
	}
	width := (c.Span - layout.GapX) / 2
	var lines []columnLine
	for _, like := range c.likeSections() {
		lines = append(lines, columnLine{c.sectionRow(like, width), 1.2, true})
		for _, t := range c.toldSteps(like, back) {
			b := c.Para(width, t.runs, layout.ParaOpts{Ref: t.at, Hang: 2})
			if t.changed {
				b = c.bar(b, true)
			}
			lines = append(lines, columnLine{b, 0.35, false})
		}
	}
	two := bands{width: width, between: layout.GapX, foot: c.Rule(layout.Rule), gap: 1}
	return c.columnPages([]layout.Piece{c.RuleLine(c.W.AllSteps.Rule)}, lines, two)
}

// sectionRow are the lines above the steps of like sections, with their pages, and by when
// each is done.
func (c *composer) sectionRow(like []*job.Section, width layout.Mm) layout.Block {
	var lines []layout.Block
	for _, s := range like {
		at := c.W.Common.StepPage.With(s.No, c.Page("section "+s.No))
		if title := sectionTitle(s); title != "" {
			at = c.W.AllSteps.SectionLine.With(at, title)
		}
		runs := []layout.Run{layout.T(layout.Strong, at)}
		if s.HoursSoFar != nil { // its own hours stand in the list of sections on the front sheet
			runs = append(runs, layout.T(layout.Sub, "  "+c.W.Step.SectionHours.With(s.HoursSoFar.Print(), s.CrewSoFar.Print())))
		}
		lines = append(lines, c.Para(width, runs, layout.ParaOpts{Ref: s.At, Hang: 2}))
	}
	line := layout.Drawn(width, layout.Rule, layout.Item{Y: layout.Rule / 2, Shape: layout.Line{DX: width, Weight: layout.Rule}})
	return layout.Above(0.2, append(lines, line)...)
}

// bandLines is how many lines of the list of sections are set in columns together, so that
// a longer list goes on over a page.
const bandLines = 90

// sectionList is the list of sections on the front sheet with their pages and hours, band
// by band, and the pages of holds, lifts and heats.
func (c *composer) sectionList() []layout.Block {
	w := c.W.AllSteps
	const columns = 3
	width := (c.Span - (columns-1)*layout.GapX) / columns
	var lines []layout.Block
	for _, s := range c.Job.Sections {
		text := w.SectionLine.With(s.No, listed(sectionTitle(s), c.W.Front.PageNo.With(c.Page("section "+s.No))))
		if h := s.Hours(); h.Sign() > 0 {
			text += " · " + w.Hours.With(h.Print())
		}
		lines = append(lines, c.Para(width, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: s.At, Hang: 4}))
	}
	if h := c.Job.Hours; h.Sign() > 0 {
		runs := []layout.Run{layout.T(layout.SubBold, w.Total.With(h.Print(), c.Job.CrewHours.Print()))}
		if n := c.Job.WithoutHours(); n > 0 {
			runs = append(runs, layout.T(layout.Sub, "  "+c.W.Count(w.NoHours, n)))
		}
		lines = append(lines, c.Para(width, runs, layout.ParaOpts{}))
	}
	out := []layout.Block{c.Heading(w.Sections)}
	for i := 0; i < len(lines); i += bandLines {
		band := columnsOf(lines[i:min(i+bandLines, len(lines))], columns, width, 0.4)
		if i == 0 {
			band = layout.Above(1, out[0], band)
			out = nil
		}
		out = append(out, band)
	}
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
	if last := len(out) - 1; len(runs) > 0 {
		out[last] = layout.Above(1, out[last], c.Para(c.Span, runs, layout.ParaOpts{}))
	}
	return out
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
