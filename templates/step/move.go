package step

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// removalLines are the lines of what goes into each container.
func removalLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, g := range groupByPlace(st.Remove, func(m *job.Move) job.Where { return m.To }) {
		out = append(out, moveLine(c, c.W.Common.Into, g, width, false))
	}
	return out
}

// fitRun is the table of what comes out of each container.
func fitRun(c *block.Composer, st *job.Step) run {
	return fitPart(c, st, groupByPlace(st.Fit, func(m *job.Move) job.Where { return m.From }))
}

// fitPart is that table of some containers, of which the first ones may stand beside the boxes
// in the head of the step and the rest below them.
func fitPart(c *block.Composer, st *job.Step, groups []moveGroup) run {
	r := inWidths(func(width layout.Mm) []layout.Block { return fitRows(c, st, groups, width) })
	r.ruled = true
	if len(groups) > mostParted {
		return r
	}
	for n := 1; n < len(groups); n++ {
		r.parted = append(r.parted, func() [2]run { return [2]run{fitPart(c, st, groups[:n]), fitPart(c, st, groups[n:])} })
	}
	return r
}

// mostParted is the most containers of which the first ones are tried beside the boxes.
const mostParted = 6

// fitRows are the rows of what comes out of some containers, a box for the count at the end
// of each: a ruled table of one to three cells a row, read from left to right, of all ways
// the one that takes least height.
func fitRows(c *block.Composer, st *job.Step, groups []moveGroup, width layout.Mm) []layout.Block {
	if len(groups) == 0 {
		return nil
	}
	box := c.Box(layout.RoleCount, c.W.Common.CountOut, groups[0].at)
	texts := make([]map[layout.Mm]layout.Block, len(groups)) // of each in the widths that are tried
	cellOf := func(i int, width layout.Mm) fitCell {
		text, known := texts[i][width]
		if !known {
			text = fitText(c, st, groups[i], width-box.W-2*cellPad)
			if texts[i] == nil {
				texts[i] = map[layout.Mm]layout.Block{}
			}
			texts[i][width] = text
		}
		return fitCell{groups[i].at, text, width}
	}
	rows := make([][]fitCell, len(groups)+1) // the best row that begins with each group
	least := make([]layout.Mm, len(groups)+1)
	for i := len(groups) - 1; i >= 0; i-- {
		for _, shares := range fitShares {
			n := len(shares)
			if i+n > len(groups) {
				continue
			}
			row, misfits := make([]fitCell, n), n*len(box.Misfits)
			for k, share := range shares {
				row[k] = cellOf(i+k, width*share)
				misfits += len(row[k].text.Misfits)
			}
			h := rowHeight(row, box.H)
			if h += h*h*tallRows + 1000*layout.Mm(misfits) + least[i+n]; rows[i] == nil || h < least[i]-0.5 {
				rows[i], least[i] = row, h
			}
		}
	}
	var out []layout.Block
	for i := 0; i < len(groups); i += len(rows[i]) {
		out = append(out, fitRow(c, rows[i], box))
	}
	return out
}

// A fitCell is one cell of that table.
type fitCell struct {
	at    layout.Ref
	text  layout.Block
	width layout.Mm
}

// rowHeight is the height of a row of cells whose boxes have a height at the least.
func rowHeight(row []fitCell, least layout.Mm) layout.Mm {
	for _, x := range row {
		least = max(least, x.text.H+cellHigh)
	}
	return least
}

// fitRow is one row of cells, each with its text and a box as wide as that given.
func fitRow(c *block.Composer, row []fitCell, box layout.Block) layout.Block {
	high := rowHeight(row, box.H)
	var cells []layout.Block
	for _, x := range row {
		cells = append(cells, cell(x.text, x.width, high, c.CellBox(layout.RoleCount, box.W, high, c.W.Common.CountOut, x.at)))
	}
	return layout.Beside(0, cells...)
}

// tallRows is what speaks against rows of many lines, by the square of their height: of ways that
// are nearly as low that with lower rows is taken.
const tallRows layout.Mm = 0.005

// fitShares are the shares that the cells of a row of that table may have of its width. Of two
// ways that are as low the one with a full row later is taken: what comes first is mostly short.
var fitShares = [][]layout.Mm{{0.5, 0.5}, {1. / 3, 1. / 3, 1. / 3}, {1. / 3, 2. / 3}, {2. / 3, 1. / 3}, {1}}

// fitText is what comes out of a container, with a box to tick where it is empty after that.
func fitText(c *block.Composer, st *job.Step, g moveGroup, width layout.Mm) layout.Block {
	room := width
	var empty layout.Block
	if emptied(st, g) {
		empty = emptyTick(c, g.where.Container)
		room -= empty.W + textGap
	}
	text := moveLine(c, fetchVerb(c, g), g, room, true)
	text.W = room
	if !empty.Empty() {
		text = layout.Middle(textGap, text, empty)
	}
	return text
}

// emptyWords is how wide the words beside the box for an empty container are, mostEmpty how wide
// they may be so that they are no higher than a box.
const emptyWords, mostEmpty layout.Mm = 20, 30

// emptyTick is the box to tick where a container is empty after a row.
func emptyTick(c *block.Composer, from *job.Container) layout.Block {
	runs := []layout.Run{layout.T(layout.SubBold, from.Mark), layout.T(layout.Sub, " "+c.W.Step.EmptyHere)}
	width := max(emptyWords, c.Width(layout.SubBold, from.Mark))
	words := c.Para(width, runs, layout.ParaOpts{Ref: from.At})
	for words.H > twoLines && width < mostEmpty {
		width++
		words = c.Para(width, runs, layout.ParaOpts{Ref: from.At})
	}
	words.W = block.InkRight(words)
	return layout.Middle(1.2, c.Tick(layout.Sub, "", from.At), words)
}

// emptied reports whether a container must be empty at the step, and is what a group comes
// from: the last of them, for a container of several places.
func emptied(st *job.Step, g moveGroup) bool {
	from := g.where.Container
	if from == nil || !slices.ContainsFunc(st.Empty, func(x job.Emptied) bool { return x.In == from }) {
		return false
	}
	into := func(m *job.Move) bool { return m.To.Container == from }
	if slices.ContainsFunc(st.Remove, into) || slices.ContainsFunc(st.TakeOut, into) {
		return false
	}
	var places []job.Where // of the container, in the order of their rows
	for _, m := range st.Fit {
		if m.From.Container == from && !slices.Contains(places, m.From) {
			places = append(places, m.From)
		}
	}
	return len(places) > 0 && places[len(places)-1] == g.where
}

// fetchVerb is what stands before where parts come from; nothing for new ones that come
// from no place of the job.
func fetchVerb(c *block.Composer, g moveGroup) string {
	if g.where.Scrap {
		return ""
	}
	return c.W.Common.From
}

// A moveGroup is what goes to or comes from one place.
type moveGroup struct {
	at    layout.Ref
	off   bool // taken off
	where job.Where
	moves []*job.Move
}

// groupByPlace groups moves by the place they go to or come from, in order.
func groupByPlace(ms []*job.Move, where func(*job.Move) job.Where) []moveGroup {
	var out []moveGroup
next:
	for _, m := range ms {
		for i := range out {
			if out[i].where == where(m) {
				out[i].moves = append(out[i].moves, m)
				continue next
			}
		}
		out = append(out, moveGroup{at: m.At, off: m.Undo == nil && m.From == (job.Where{}), where: where(m), moves: []*job.Move{m}})
	}
	return out
}

// moveLine is one line of the kind: into [C2/DE] 1 Lock nut, 1 Tab washer (2
// pieces); of one kind the pieces are told once. In putting back it says what is renewed.
func moveLine(c *block.Composer, verb string, g moveGroup, width layout.Mm, back bool) layout.Block {
	var runs []layout.Run
	if verb != "" {
		runs = append(runs, layout.T(layout.Body, verb+" "), layout.Run{Text: whereMark(c, g.where), Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, " "))
		if g.where.Spot != nil && g.off {
			runs = append(runs, layout.T(layout.Body, spotText(c, g.where.Spot, g.moves[0].Step)+": "))
		}
	}
	runs = append(runs, layout.T(layout.Body, block.PartList(g.moves, calledHere(c, g.moves))))
	if n := job.Pieces(g.moves); !oneKind(g.moves) { // else the list has told how many
		runs = append(runs, layout.T(layout.Body, " ("+c.W.Pieces(n)+")"))
	}
	for _, s := range setMarks(g.moves) {
		runs = append(runs, layout.T(layout.Body, " "), layout.Run{Text: c.W.Common.MatchedSet.With(s), Style: layout.SubBold, Deco: layout.Boxed})
	}
	runs = append(runs, tagRuns(c, g.moves)...)
	for _, text := range saidOf(c, g.moves, g.off) {
		runs = append(runs, layout.T(layout.Body, " · "+text))
	}
	runs = append(runs, turning(c, movedParts(g.moves), g.off)...)
	for _, text := range block.OldPieces(c, g.moves) {
		runs = append(runs, layout.T(layout.Strong, " · "+text))
	}
	for _, text := range renewed(c, g.moves) {
		runs = append(runs, layout.T(layout.Strong, " · "+text))
	}
	if s := renewals(c, g.moves); len(s) > 0 && back {
		runs = append(runs, layout.T(layout.Strong, " · "+strings.Join(s, ", ")))
	}
	return c.Para(width, runs, layout.ParaOpts{Ref: g.at})
}

// calledHere names what a line moves. An old piece that was kept until its new one goes on is
// called old: a mechanic took it out of its container and fitted it again.
func calledHere(c *block.Composer, ms []*job.Move) func(string) string {
	return func(name string) string {
		if slices.ContainsFunc(ms, func(m *job.Move) bool { return m.Part.Name == name && m.New && m.Undo != nil && !m.Undo.To.Scrap }) {
			return c.W.Step.OldPiece.With(name)
		}
		return name
	}
}

// oneKind reports whether moves are of parts of one name, which a line tells once.
func oneKind(ms []*job.Move) bool { return len(job.Contents(ms)) == 1 }

// renewed say which parts come new, those apart whose old pieces were kept until now.
func renewed(c *block.Composer, ms []*job.Move) []string {
	var fresh, kept []string
	for _, m := range ms {
		list := &fresh
		if m.Undo != nil && !m.Undo.To.Scrap {
			list = &kept
		}
		if m.New && !slices.Contains(*list, m.Part.Name) {
			*list = append(*list, m.Part.Name)
		}
	}
	var out []string
	switch {
	case len(fresh) == 1 && oneKind(ms):
		out = append(out, c.W.Step.FitNewOne)
	case len(fresh) > 0:
		out = append(out, c.W.Step.FitNew.With(strings.Join(fresh, ", ")))
	}
	if len(kept) > 0 {
		out = append(out, c.W.Step.FitNewScrap.With(strings.Join(kept, ", ")))
	}
	return out
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

// setMarks are the matched sets of what is moved, each once.
func setMarks(ms []*job.Move) []string {
	var out []string
	for _, m := range ms {
		if m.Part.Set != nil && !slices.Contains(out, m.Part.Set.Mark) {
			out = append(out, m.Part.Set.Mark)
		}
	}
	return out
}
