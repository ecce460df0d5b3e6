package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/heatsheet"
	"matchmark/templates/liftsheet"
)

// Measures of a step row.
const (
	signOff layout.Mm = 41 // initials and time, with their gap
	textGap layout.Mm = 5
)

// row is one step: number, what to do, what goes where, and who did it when.
func row(c *block.Composer, st *job.Step) layout.Block {
	width := c.Span - block.NumberWidth - signOff - textGap
	number := c.Line(block.NumberWidth, []layout.Run{layout.T(layout.StepNo, st.No)}, layout.ParaOpts{Ref: st.At})
	if st.Hours != nil {
		number = layout.Above(2, number, c.WideBox(layout.RoleWords, block.NumberWidth-2, 1, c.W.Step.Hours, st.At))
		number.W = block.NumberWidth
	}
	boxes := layout.Beside(layout.GapX, c.Box(layout.RoleInitials, c.W.Common.Initials, st.At), c.Box(layout.RoleTime, c.W.Common.Time, st.At))
	var extra []layout.Block
	if st.Check != "" {
		extra = append(extra, c.WideBox(layout.RoleInitials, signOff, 1, c.W.Step.CheckedBy.With(st.Check), st.At))
	}
	if st.Photo {
		extra = append(extra, c.WideBox(layout.RoleWords, signOff, 1, c.W.Step.Photo, st.At))
	}
	boxes = layout.Above(layout.GapY, append([]layout.Block{boxes}, extra...)...)
	var row layout.Block
	for beside := range 3 {
		// The lines stand beside the boxes for initials, or below them over the whole
		// width, whichever takes less height.
		text := layout.Above(1, stepLines(c, st, width, beside)...)
		text.W = width
		r := layout.Beside(0, number, text, layout.Space(textGap, 1), boxes)
		if below := linesBelow(c, st, c.Span-block.NumberWidth, beside); len(below) > 0 {
			r = layout.Above(1, r, layout.Above(1, below...).At(block.NumberWidth, 0))
		}
		if row.Empty() || r.H < row.H-0.5 {
			row = r
		}
	}
	return row.Pad(0, 0, 1, 0).Anchored("step " + st.No)
}

// stepLines are the lines of a step that stand beside the boxes for initials: what
// to do, and with beside 1 what goes where, with 0 all of them.
func stepLines(c *block.Composer, st *job.Step, width layout.Mm, beside int) []layout.Block {
	runs := append(stepState(c, st), layout.T(layout.Body, Text(c, st)))
	if st.Missed != "" {
		runs = append(runs, layout.T(layout.Body, "  "), layout.Run{Text: st.Missed, Style: layout.Strong, Deco: layout.Inverse})
	}
	lines := append(branchLines(c, st, width), c.Para(width, runs, layout.ParaOpts{Ref: st.At}))
	lines = append(lines, lastLines(c, st, width)...)
	if beside < 2 {
		lines = append(lines, removals(c, st, width)...)
	}
	if beside < 1 {
		lines = append(append(lines, fits(c, st, width)...), furtherLines(c, st, width)...)
	}
	return lines
}

// lastLines is the line at the step that takes readings away for good: those of
// earlier steps must be written down before it is begun.
func lastLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var marks []string
	last := ""
	for _, d := range c.Job.Dims {
		if d.LastChance != st || d.FoundAt == nil || d.FoundAt == st || d.In != nil {
			continue
		}
		page := c.Page("found " + d.Mark)
		if page == last {
			marks = append(marks, d.Mark)
			continue
		}
		marks, last = append(marks, c.W.Common.StepPage.With(d.Mark, page)), page
	}
	if len(marks) == 0 {
		return nil
	}
	runs := []layout.Run{{Text: c.W.Step.GoneAfterThis.With(strings.Join(marks, ", ")), Style: layout.SubBold, Deco: layout.Boxed}}
	if one := c.Line(0, runs, layout.ParaOpts{Ref: st.At}); one.W > width {
		runs[0].Deco = layout.Plain
	}
	return []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: st.At})}
}

// linesBelow are the lines of a step that do not stand beside its boxes.
func linesBelow(c *block.Composer, st *job.Step, width layout.Mm, beside int) []layout.Block {
	var out []layout.Block
	if beside > 1 {
		out = append(out, removals(c, st, width)...)
	}
	if beside > 0 {
		if len(fits(c, st, width)) > 0 {
			out = append(out, inPairs(c, st))
		}
		out = append(out, furtherLines(c, st, width)...)
	}
	return out
}

// furtherLines are heats, what guards the step, lifts, what is on for now, what is
// loosened and tightened, and the small line.
func furtherLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	out := heatsheet.Lines(c, st, width)
	out = append(out, guardLines(c, st, width)...)
	out = append(out, liftsheet.Lines(c, st, width)...)
	out = append(out, forNowLines(c, st, width)...)
	out = append(out, fastenLines(c, st, width)...)
	if note := stepNote(c, st); note != "" {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Sub, note)}, layout.ParaOpts{Ref: st.At}))
	}
	return out
}

// inPairs sets the lines of what comes out of containers in two columns over the
// whole width, each with its box for the count.
func inPairs(c *block.Composer, st *job.Step) layout.Block {
	width := (c.Span - block.NumberWidth - textGap) / 2
	lines := fits(c, st, width)
	var rows []layout.Block
	for i := 0; i < len(lines); i += 2 {
		left := lines[i].Fill(width, lines[i].H, 0, 0)
		rows = append(rows, layout.Beside(textGap, append([]layout.Block{left}, lines[i+1:min(i+2, len(lines))]...)...))
	}
	return layout.Above(layout.GapY, rows...)
}

// Text is what a step says. A put-back row whose author wrote no back: line
// is worded from what it fits and sets.
func Text(c *block.Composer, st *job.Step) string {
	if st.Do != "" {
		return st.Do
	}
	var out []string
	if len(st.Fit) > 0 {
		out = append(out, c.W.Step.PutBack.With(block.PartList(st.Fit)))
	}
	if len(st.Set) > 0 {
		out = append(out, c.W.Step.SetAgain.With(dimMarks(st.Set)))
	}
	if len(st.Close) > 0 {
		out = append(out, c.W.Step.Close.With(openingNames(st.Close)))
	}
	if len(out) == 0 {
		out = append(out, c.W.Step.LookUp.With(dimMarks(st.Recall)))
	}
	return strings.Join(out, " ")
}

// stepNote is the small line under a step: what it comes after and why, where it
// may be moved, what a row undoes, the old part that is not to be mixed up.
func stepNote(c *block.Composer, st *job.Step) string {
	var out []string
	if st.Undoes != nil {
		out = append(out, c.W.Step.Undoes.With(st.Undoes.No, c.Page("step "+st.Undoes.No)))
	}
	for _, d := range st.After {
		s := c.W.Step.After.With(d.Step.No)
		if d.Reason != "" {
			s += ": " + d.Reason
		}
		out = append(out, s)
	}
	if st.Free != nil {
		out = append(out, FreeWords(c, st.Free))
	}
	if st.Hours != nil {
		out = append(out, c.W.Step.HoursPlanned.With(st.Hours.Print(), st.HoursSoFar.Print()))
	}
	return strings.Join(out, " · ")
}

// FreeWords says between which steps a step may be done.
func FreeWords(c *block.Composer, f *job.Free) string {
	switch {
	case f.After != nil && f.Before != nil:
		return c.W.Step.AnyTimeBetween.With(f.After.No, f.Before.No)
	case f.Before != nil:
		return c.W.Step.AnyTimeBefore.With(f.Before.No)
	case f.After != nil:
		return c.W.Step.AnyTimeAfter.With(f.After.No)
	}
	return c.W.Step.AnyTimeAtAll
}

// removals are the lines of what goes into each container.
func removals(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, g := range byWhere(st.Remove, func(m *job.Move) job.Where { return m.To }) {
		out = append(out, moveLine(c, c.W.Common.Into, g, width, layout.Block{}))
	}
	return out
}

// fits are the lines of what comes out of each container, with a box for the count.
func fits(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, g := range byWhere(st.Fit, func(m *job.Move) job.Where { return m.From }) {
		verb := c.W.Common.From
		if g.where.Scrap {
			verb = ""
		}
		out = append(out, moveLine(c, verb, g, width, c.Box(layout.RoleCount, c.W.Common.CountOut, g.at)))
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
func moveLine(c *block.Composer, verb string, g load, width layout.Mm, box layout.Block) layout.Block {
	var runs []layout.Run
	if verb != "" {
		runs = append(runs, layout.T(layout.Body, verb+" "), layout.Run{Text: whereMark(c, g.where), Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, " "))
	}
	runs = append(runs, layout.T(layout.Body, block.PartList(g.moves)))
	if n := job.Pieces(g.moves); n > 1 {
		runs = append(runs, layout.T(layout.Body, " ("+c.W.Common.Pieces(n)+")"))
	}
	for _, s := range setsIn(g.moves) {
		runs = append(runs, layout.T(layout.Body, " "), layout.Run{Text: c.W.Common.MatchedSet.With(s), Style: layout.SubBold, Deco: layout.Boxed})
	}
	var fresh []string
	for _, m := range g.moves {
		if m.New && !slices.Contains(fresh, m.Part.Name) {
			fresh = append(fresh, m.Part.Name)
		}
	}
	if len(fresh) > 0 {
		runs = append(runs, layout.T(layout.Strong, " · "+c.W.Step.FitNew.With(strings.Join(fresh, ", "))))
	}
	if s := renewals(c, g.moves); len(s) > 0 && !box.Empty() {
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
func whereMark(c *block.Composer, w job.Where) string {
	switch {
	case w.Mark() != "":
		return w.Mark()
	case w.Scrap:
		return job.ScrapMark
	}
	return c.W.Step.Bench
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

// Together is the height up to which a step stays on one page with all its
// boxes. A taller one may go on to the next page between two dimensions, where its
// number stands once more.
const Together layout.Mm = 80

// GoesOn is the line above the boxes of a step on the page that it goes on to.
func GoesOn(c *block.Composer, st *job.Step) *layout.Block {
	runs := []layout.Run{layout.T(layout.StepNo, st.No+"  "), layout.T(layout.Sub, c.W.Step.GoesOn)}
	if p := ownPlace(st); p != "" {
		runs = append(runs, layout.T(layout.Sub, "  "), layout.Run{Text: p, Style: layout.SubBold, Deco: layout.Boxed})
	}
	b := c.Para(c.Span, runs, layout.ParaOpts{Ref: st.At}).Pad(1, 0, 1, 0)
	return &b
}

func Height(ps []layout.Piece) layout.Mm {
	h := layout.Mm(0)
	for _, p := range ps {
		h += p.Gap + p.Block.H
	}
	return h
}

// Pieces sets one step: cautions, row, dimensions, hold.
func Pieces(c *block.Composer, st *job.Step) []layout.Piece {
	var out []layout.Piece
	for i, n := range st.Cautions {
		gap := layout.Mm(1)
		if i == 0 {
			gap = 2
		}
		out = append(out, layout.Piece{Block: c.Caution(n).Tagged(st.At), Gap: gap, KeepNext: true})
	}
	out = append(out, layout.Piece{Block: row(c, st), Gap: 1.5})
	for _, b := range noted(c, st) {
		out = append(out, layout.Piece{Block: b, Gap: 1})
	}
	for _, d := range st.Measure {
		out = append(out, stackPieces(dimension.Found(c, d))...)
	}
	for _, d := range st.Set {
		out = append(out, stackPieces(dimension.Left(c, d))...)
	}
	for _, b := range judged(c, st) {
		out = append(out, layout.Piece{Block: b, Gap: 1})
	}
	if st.Until != nil {
		out = append(out, layout.Piece{Block: loopBlock(c, st), Gap: 1})
	}
	for _, d := range st.Recall {
		out = append(out, layout.Piece{Block: dimension.Recall(c, d), Gap: 1})
	}
	if len(st.Empty) > 0 {
		out = append(out, layout.Piece{Block: emptyLine(c, st), Gap: 1})
	}
	if st.Hold != nil {
		out = append(out, layout.Piece{Block: holdBar(c, st.Hold), Gap: 2})
	}
	for i, p := range out[:len(out)-1] {
		// The row stays with its first boxes, and the last ones with the hold and
		// the line of what must be empty.
		row := i == len(st.Cautions)
		last := i == len(out)-2 && (st.Hold != nil || len(st.Empty) > 0)
		out[i].KeepNext = p.KeepNext || row || last
		out[i].MayPart = row && !last && Height(out) > Together
	}
	out = append(out, layout.Piece{Block: c.Rule(layout.Inner).Tagged(st.At), Gap: 1, Closes: true})
	out[len(out)-2].KeepNext = true
	return out
}

// stackPieces sets the blocks of one dimension below each other.
func stackPieces(blocks []layout.Block) []layout.Piece {
	var out []layout.Piece
	for _, b := range blocks {
		out = append(out, layout.Piece{Block: b, Gap: 1})
	}
	return out
}

// emptyLine lists the containers that must be empty when the step is done.
func emptyLine(c *block.Composer, st *job.Step) layout.Block {
	row := []layout.Block{c.Words(layout.Strong, c.W.Step.EmptyNow)}
	for _, x := range st.Empty {
		row = append(row, c.Tick(layout.Strong, x.Mark, st.At))
	}
	return block.FlowRow(row, c.Span-block.NumberWidth).At(block.NumberWidth, 0)
}
