package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/jointsheet"
	"matchmark/templates/step"
)

// allSteps sets the sheet to turn to when unsure: a line for every step with its page,
// and what a reader looks for. A row that only puts back what a step took off stands in
// the line of that step.
func allSteps(c *composer) []layout.Piece {
	w := c.W.AllSteps
	const at, look layout.Mm = 23, 86
	g := c.Grid(block.Col(w.Step, at), block.Col(w.What, 0), block.Col(w.Look, look))
	g.Table.MinH, g.Table.PadY = 0, 0.35
	pieces := g.Table.Pieces(make([]layout.Row, 1))
	out := []layout.Piece{c.RuleLine(w.Rule), pieces[0]}
	back := map[*job.Step]*job.Step{}
	for _, s := range c.Job.Sections {
		for _, st := range s.Steps {
			if st.Undoes != nil {
				back[st.Undoes] = st
			}
		}
	}
	bare := g.Bare()
	for _, s := range c.Job.Sections {
		head := c.sectionRow(s)
		for _, st := range s.Steps {
			look := c.looks(st)
			if st.Undoes != nil && look == "" {
				continue
			}
			if !head.Empty() {
				out = append(out, layout.Piece{Block: head, KeepNext: true, Under: pieces[1].Under})
				head = layout.Block{}
			}
			if b := back[st]; b != nil {
				look = joinFacts(look, w.BackAt.With(c.StepRef(b)))
			}
			cells := []layout.Block{g.Text(0, layout.SubBold, c.StepRef(st), st.At), c.cut(layout.Sub, step.Text(c.Composer, st), g.Table.Room(1), st.At), g.Text(2, layout.Sub, look, st.At)}
			row := bare.Pieces([]layout.Row{{Cells: cells, Ref: st.At}})[0]
			row.Under = pieces[1].Under
			out = append(out, row)
		}
	}
	return out
}

// sectionRow is the row above the steps of a section, with its page and hours.
func (c *composer) sectionRow(s *job.Section) layout.Block {
	text := c.W.AllSteps.SectionLine.With(c.W.Common.StepPage.With(s.No, c.Page("section "+s.No)), sectionTitle(s))
	if h := s.Hours(); h.Sign() > 0 {
		text += " · " + c.W.AllSteps.Hours.With(h.Print())
	}
	t := layout.Table{PadX: 1.2, PadY: 0.8, Grid: true, Columns: []layout.Column{{Width: c.Span}}}
	return t.Block([]layout.Row{{Cells: []layout.Block{c.Para(t.Room(0), []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: s.At})}}})
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
	if marks := baseMarks(st.Set); len(marks) > 0 {
		add(c.W.AllSteps.Set.With(strings.Join(marks, ", ")))
	}
	if st.Missed != "" && (st.Undoes == nil || st.Undoes.Missed != st.Missed) {
		add(c.W.AllSteps.Missed.With(st.Missed))
	}
	return strings.Join(out, " · ")
}

// cut sets as many words of a text as go into one line.
func (c *composer) cut(st layout.Style, text string, width layout.Mm, ref layout.Ref) layout.Block {
	text = strings.Join(strings.Fields(text), " ")
	if c.Width(st, text) > width {
		for c.Width(st, text+" …") > width && text != "" {
			i := strings.LastIndexByte(text, ' ')
			text = text[:max(i, 0)]
		}
		text += " …"
	}
	return c.Para(width, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: ref})
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
	list := []layout.Block{c.Heading(w.Sections), columnsOf(lines, columns, width)}
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

// columnsOf sets lines in columns of a width, to be read down each.
func columnsOf(lines []layout.Block, columns int, width layout.Mm) layout.Block {
	var cols []layout.Block
	each := (len(lines) + columns - 1) / columns
	for i := 0; i < len(lines); i += each {
		col := layout.Above(0.6, lines[i:min(i+each, len(lines))]...)
		col.W = width
		cols = append(cols, col)
	}
	return layout.Beside(layout.GapX, cols...)
}
