package templates

import (
	"matchmark/packs/job"
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
)

// Measures of a step row.
const (
	numberW layout.Mm = 17 // the step number, and below it the box for hours
	signOff layout.Mm = 41 // initials and time, with their gap
	textGap layout.Mm = 5
)

// sectionHead is the heading of a section: its number, name, place and the side
// it is seen from. It is drawn again on each page that the section runs on to.
func (c *composer) sectionHead(s *job.Section) *layout.Block {
	text := s.Name
	if s.Place.Label != "" {
		text += ", " + s.Place.Name
		if s.Place.Name != s.Place.Label && !strings.HasSuffix(s.Place.Name, " "+s.Place.Label) {
			text += " (" + s.Place.Label + ")"
		}
	}
	runs := []layout.Run{layout.T(layout.Section, "▶ "+s.No+"  "+text)}
	var from []string
	if s.Place.CountedFrom != "" {
		from = append(from, fill(c.w.countedFrom, s.Place.CountedFrom))
	}
	if s.Place.ViewedFrom != "" {
		from = append(from, fill(c.w.seenFrom, s.Place.ViewedFrom))
	}
	if len(from) > 0 {
		runs = append(runs, layout.T(layout.Sub, "   "+strings.Join(from, " · ")))
	}
	b := layout.Above(1, c.Para(c.width, runs, layout.ParaOpts{Ref: s.At}), c.rule(layout.Heavy)).Pad(1, 0, 1.5, 0)
	return &b
}

// stepRow is one step: number, what to do, what goes where, and who did it when.
func (c *composer) stepRow(st *job.Step) layout.Block {
	width := c.width - numberW - signOff - textGap
	number := c.Line(numberW, []layout.Run{layout.T(layout.StepNo, st.No)}, layout.ParaOpts{Ref: st.At})
	if st.Hours != nil {
		number = layout.Above(2, number, c.WideBox(layout.RoleWords, numberW-2, 1, c.w.hours, st.At))
		number.W = numberW
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleInitials, c.w.initials, st.At), c.Box(layout.RoleTime, c.w.time, st.At))
	var extra []layout.Block
	if st.Check != "" {
		extra = append(extra, c.WideBox(layout.RoleInitials, signOff, 1, fill(c.w.second, st.Check), st.At))
	}
	if st.Photo {
		extra = append(extra, c.WideBox(layout.RoleWords, signOff, 1, c.w.photo, st.At))
	}
	boxes = layout.Above(layout.GapY, append([]layout.Block{boxes}, extra...)...)
	var row layout.Block
	for beside := range 3 {
		// The lines stand beside the boxes for initials, or below them over the whole
		// width, whichever takes less height.
		text := layout.Above(1, c.stepLines(st, width, beside)...)
		text.W = width
		r := layout.Beside(0, number, text, layout.Space(textGap, 1), boxes)
		if below := c.linesBelow(st, c.width-numberW, beside); len(below) > 0 {
			r = layout.Above(1, r, layout.Above(1, below...).At(numberW, 0))
		}
		if row.Empty() || r.H < row.H-0.5 {
			row = r
		}
	}
	return row.Pad(0, 0, 1, 0).Anchored("step " + st.No)
}

// stepLines are the lines of a step that stand beside the boxes for initials: what
// to do, and with beside 1 what goes where, with 0 all of them.
func (c *composer) stepLines(st *job.Step, width layout.Mm, beside int) []layout.Block {
	runs := append(c.stepState(st), layout.T(layout.Body, c.stepText(st)))
	if st.Missed != "" {
		runs = append(runs, layout.T(layout.Body, "  "), layout.Run{Text: st.Missed, Style: layout.Strong, Deco: layout.Inverse})
	}
	lines := append(c.branchLines(st, width), c.Para(width, runs, layout.ParaOpts{Ref: st.At}))
	lines = append(lines, c.lastLines(st, width)...)
	lines = append(lines, c.hangingLines(st, width)...)
	if beside < 2 {
		lines = append(lines, c.removals(st, width)...)
	}
	if beside < 1 {
		lines = append(append(lines, c.fits(st, width)...), c.furtherLines(st, width)...)
	}
	return lines
}

// lastLines is the line at the step that takes readings away for good: those of
// earlier steps must be written down before it is begun.
func (c *composer) lastLines(st *job.Step, width layout.Mm) []layout.Block {
	var marks []string
	last := ""
	for _, d := range c.job.Dims {
		if d.LastChance != st || d.FoundAt == nil || d.FoundAt == st || d.In != nil {
			continue
		}
		page := c.page("found " + d.Mark)
		if page == last {
			marks = append(marks, d.Mark)
			continue
		}
		marks, last = append(marks, fill(c.w.stepPage, d.Mark, page)), page
	}
	if len(marks) == 0 {
		return nil
	}
	runs := []layout.Run{{Text: fill(c.w.lastHere, strings.Join(marks, ", ")), Style: layout.SubBold, Deco: layout.Boxed}}
	if one := c.Line(0, runs, layout.ParaOpts{Ref: st.At}); one.W > width {
		runs[0].Deco = layout.Plain
	}
	return []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: st.At})}
}

// linesBelow are the lines of a step that do not stand beside its boxes.
func (c *composer) linesBelow(st *job.Step, width layout.Mm, beside int) []layout.Block {
	var out []layout.Block
	if beside > 1 {
		out = append(out, c.removals(st, width)...)
	}
	if beside > 0 {
		if len(c.fits(st, width)) > 0 {
			out = append(out, c.inPairs(st))
		}
		out = append(out, c.furtherLines(st, width)...)
	}
	return out
}

// furtherLines are heats, what guards the step, lifts, what is on for now, what is
// loosened and tightened, and the small line.
func (c *composer) furtherLines(st *job.Step, width layout.Mm) []layout.Block {
	out := c.heatLines(st, width)
	out = append(out, c.guardLines(st, width)...)
	out = append(out, c.liftLines(st, width)...)
	out = append(out, c.forNowLines(st, width)...)
	out = append(out, c.fastenLines(st, width)...)
	for _, x := range st.Without {
		text := fill(c.w.without[x.Guard], st.Undoes.No, x.Reason)
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: x.At}))
	}
	if note := c.stepNote(st); note != "" {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Sub, note)}, layout.ParaOpts{Ref: st.At}))
	}
	return out
}

// inPairs sets the lines of what comes out of containers in two columns over the
// whole width, each with its box for the count.
func (c *composer) inPairs(st *job.Step) layout.Block {
	width := (c.width - numberW - textGap) / 2
	lines := c.fits(st, width)
	var rows []layout.Block
	for i := 0; i < len(lines); i += 2 {
		left := lines[i].Fill(width, lines[i].H, 0, 0)
		rows = append(rows, layout.Beside(textGap, append([]layout.Block{left}, lines[i+1:min(i+2, len(lines))]...)...))
	}
	return layout.Above(layout.GapY, rows...)
}

// stepText is what a step says. A put-back row whose author wrote no back: line
// is worded from what it fits and sets.
func (c *composer) stepText(st *job.Step) string {
	if st.Do != "" {
		return st.Do
	}
	var out []string
	if len(st.Fit) > 0 {
		out = append(out, fill(c.w.putBackDefault, partList(st.Fit)))
	}
	if len(st.Set) > 0 {
		out = append(out, fill(c.w.setDefault, dimMarks(st.Set)))
	}
	if len(st.Close) > 0 {
		out = append(out, fill(c.w.closeDefault, openingNames(st.Close)))
	}
	if len(out) == 0 && len(st.Lifts) > 0 {
		for _, l := range st.Lifts {
			out = append(out, fill(c.w.lowerDefault, l.What))
		}
	}
	if len(out) == 0 {
		out = append(out, fill(c.w.compareDefault, dimMarks(st.Recall)))
	}
	return strings.Join(out, " ")
}

// stepNote is the small line under a step: what it comes after and why, where it
// may be moved, what a row undoes, the old part that is not to be mixed up.
func (c *composer) stepNote(st *job.Step) string {
	var out []string
	if st.Undoes != nil {
		out = append(out, fill(c.w.undoes, st.Undoes.No, c.page("step "+st.Undoes.No)))
	}
	for _, d := range st.After {
		s := fill(c.w.after, d.Step.No)
		if d.Reason != "" {
			s += ": " + d.Reason
		}
		out = append(out, s)
	}
	if st.Free != nil {
		out = append(out, c.freeWords(st.Free))
	}
	if st.Hours != nil {
		out = append(out, fill(c.w.hoursPlanned, st.Hours.Print(), st.HoursSoFar.Print()))
	}
	return strings.Join(out, " · ")
}

// freeWords says between which steps a step may be done.
func (c *composer) freeWords(f *job.Free) string {
	switch {
	case f.After != nil && f.Before != nil:
		return fill(c.w.anyTime, f.After.No, f.Before.No)
	case f.Before != nil:
		return fill(c.w.anyTimeBefore, f.Before.No)
	case f.After != nil:
		return fill(c.w.anyTimeAfter, f.After.No)
	}
	return c.w.anyTimeAtAll
}

// removals are the lines of what goes into each container.
func (c *composer) removals(st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, g := range byWhere(st.Remove, func(m *job.Move) job.Where { return m.To }) {
		out = append(out, c.moveLine(c.w.into, g, width, layout.Block{}))
	}
	return out
}

// fits are the lines of what comes out of each container, with a box for the count.
func (c *composer) fits(st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, g := range byWhere(st.Fit, func(m *job.Move) job.Where { return m.From }) {
		verb := c.w.from
		if g.where.Scrap {
			verb = ""
		}
		out = append(out, c.moveLine(verb, g, width, c.Box(layout.RoleCount, c.w.countOut, g.at)))
	}
	return out
}

// A load is what goes to or comes from one place.
type load struct {
	at    layout.Ref
	where job.Where
	moves []*job.Move
}

// byWhere groups moves by the place they go to or come from, in order.
func byWhere(ms []*job.Move, where func(*job.Move) job.Where) []load {
	var out []load
next:
	for _, m := range ms {
		for i := range out {
			if out[i].where == where(m) {
				out[i].moves = append(out[i].moves, m)
				continue next
			}
		}
		out = append(out, load{at: m.At, where: where(m), moves: []*job.Move{m}})
	}
	return out
}

// moveLine is one line of the kind: into [C2/DE] 1 Lock nut, 1 Tab washer (2
// pieces). A box for the count stands at its end in putting back.
func (c *composer) moveLine(verb string, g load, width layout.Mm, box layout.Block) layout.Block {
	var runs []layout.Run
	if verb != "" {
		runs = append(runs, layout.T(layout.Body, verb+" "), layout.Run{Text: c.whereMark(g.where), Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, " "))
	}
	runs = append(runs, layout.T(layout.Body, partList(g.moves)))
	if n := job.Pieces(g.moves); n > 1 {
		runs = append(runs, layout.T(layout.Body, " ("+c.w.count(n)+")"))
	}
	for _, s := range setsIn(g.moves) {
		runs = append(runs, layout.T(layout.Body, " "), layout.Run{Text: fill(c.w.matchedSet, s), Style: layout.SubBold, Deco: layout.Boxed})
	}
	var fresh []string
	for _, m := range g.moves {
		if m.New && !slices.Contains(fresh, m.Part.Name) {
			fresh = append(fresh, m.Part.Name)
		}
	}
	if len(fresh) > 0 {
		runs = append(runs, layout.T(layout.Strong, " · "+fill(c.w.fitNew, strings.Join(fresh, ", "))))
	}
	if s := c.renewals(g.moves); len(s) > 0 && !box.Empty() {
		runs = append(runs, layout.T(layout.Strong, " · "+strings.Join(s, ", ")))
	}
	if !box.Empty() {
		width -= box.W + textGap
	}
	line := c.Para(width, runs, layout.ParaOpts{Ref: g.at})
	if box.Empty() {
		return line
	}
	return layout.Beside(textGap, line, box)
}

// whereMark is a place as printed: its mark, or bench or scrap.
func (c *composer) whereMark(w job.Where) string {
	switch {
	case w.Mark() != "":
		return w.Mark()
	case w.Scrap:
		return job.ScrapMark
	}
	return c.w.bench
}

func partList(ms []*job.Move) string {
	var out []string
	for _, x := range job.Contents(ms) {
		out = append(out, strconv.Itoa(x.N)+"\u00a0"+x.Name)
	}
	return strings.Join(out, ", ")
}

func dimMarks(ds []*job.Dim) string {
	var out []string
	for _, d := range ds {
		out = append(out, d.Mark)
	}
	return strings.Join(out, ", ")
}

func setsIn(ms []*job.Move) []string {
	var out []string
	for _, m := range ms {
		if m.Part.Set != nil && (len(out) == 0 || out[len(out)-1] != m.Part.Set.Mark) {
			out = append(out, m.Part.Set.Mark)
		}
	}
	return out
}
