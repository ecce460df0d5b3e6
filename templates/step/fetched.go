package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// fitRun is the table of what comes out of each container.
func fitRun(c *block.Composer, st *job.Step) run {
	var groups []fitGroup
	for _, g := range groupByPlace(st.Fit, func(m *job.Move) job.Where { return m.From }) {
		f := fitGroup{at: g.at, text: moveText(c, fetchVerb(c, g), g, true)}
		if emptied(st, g) {
			f.empty = emptyTick(c, g.where.Container)
		}
		groups = append(groups, f)
	}
	return fitPart(c, groups)
}

// A fitGroup is what comes out of one container, with a box to tick where it is empty after that.
type fitGroup struct {
	at    layout.Ref
	text  *layout.Paragraph
	empty layout.Block
}

// fitPart is that table of some containers, of which the first ones may stand beside the boxes
// in the head of the step and the rest below them.
func fitPart(c *block.Composer, groups []fitGroup) run {
	r := inWidths(func(width layout.Mm) []layout.Block { return fitRows(c, groups, width) })
	r.ruled = true
	if len(groups) > mostParted {
		return r
	}
	for n := 1; n < len(groups); n++ {
		r.parted = append(r.parted, func() [2]run { return [2]run{fitPart(c, groups[:n]), fitPart(c, groups[n:])} })
	}
	return r
}

// mostParted is the most containers of which the first ones are tried beside the boxes.
const mostParted = 6

// fitRows are the rows of what comes out of some containers, a box for the count at the end
// of each: a ruled table of one to three cells a row, read from left to right, of all ways
// the one that takes least height.
func fitRows(c *block.Composer, groups []fitGroup, width layout.Mm) []layout.Block {
	if len(groups) == 0 {
		return nil
	}
	box := c.Box(layout.RoleCount, c.W.Common.CountOut, groups[0].at)
	texts := make([]map[layout.Mm]layout.Block, len(groups)) // of each in the widths that are tried
	cellOf := func(i int, width layout.Mm) fitCell {
		text, known := texts[i][width]
		if !known {
			text = groups[i].in(width - box.W - 2*cellPad)
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
			row, misfits := make([]fitCell, n), n*len(box.Misfits())
			for k, share := range shares {
				row[k] = cellOf(i+k, width*share)
				misfits += len(row[k].text.Misfits())
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

// in is the text of a cell.
func (g fitGroup) in(width layout.Mm) layout.Block {
	room := width
	if !g.empty.Empty() {
		room -= g.empty.W + textGap
	}
	text := g.text.Set(room)
	text.W = room
	if !g.empty.Empty() {
		text = layout.Middle(textGap, text, g.empty)
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
