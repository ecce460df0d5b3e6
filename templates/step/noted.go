package step

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// noted are the blocks of what a step has written down beside readings: marks across
// joints, which way round parts sit, the order of stacks. In putting back the same
// is ticked off.
func noted(c *block.Composer, st *job.Step) []layout.Block {
	width := c.Span - block.NumberWidth
	if st.Undoes != nil || st.Back {
		out := notedBack(c, st, width)
		if len(st.Marks) > 0 {
			out = append(out, matchMarks(c, st, width))
		}
		return anchored(out, st)
	}
	var out []layout.Block
	if len(st.Marks) > 0 {
		out = append(out, matchMarks(c, st, width))
	}
	var ways []layout.Block
	for _, w := range st.WayRound {
		ways = append(ways, wayFound(c, w, st, width))
	}
	if len(ways) > 0 {
		out = append(out, layout.Above(0, ways...))
	}
	for _, k := range st.Stacks {
		out = append(out, stackBlock(c, k, st, width).Anchored("stack "+k.Mark))
	}
	return anchored(out, st)
}

// anchored puts the blocks of what a step notes into their column, and names the first.
func anchored(out []layout.Block, st *job.Step) []layout.Block {
	for i := range out {
		out[i] = out[i].At(block.NumberWidth, 0)
		if i == 0 {
			out[i] = out[i].Anchored("marks " + st.No)
		}
	}
	return out
}

// cell is a cell of a ruled table with its text and, at the right end, its boxes, which are
// as high as it is.
func cell(text layout.Block, width, high layout.Mm, boxes ...layout.Block) layout.Block {
	for _, b := range boxes {
		width -= b.W
	}
	row := append([]layout.Block{text.Fill(width-2*cellPad, high, 0, 0.5).Pad(0, cellPad, 0, cellPad)}, boxes...)
	return layout.Beside(0, row...).Border(layout.Rect{Weight: layout.Rule})
}

// cellPad is the room at both ends of the text of such a cell, and cellHigh the least that
// the cell is higher than its text.
const cellPad, cellHigh layout.Mm = 1.2, 0.8

// wayFound is one line for which way round a part sits before it comes off.
func wayFound(c *block.Composer, w job.WayRound, st *job.Step, width layout.Mm) layout.Block {
	const wide = 75
	text := c.Para(width-wide-2*cellPad, []layout.Run{layout.T(layout.Strong, wayWords(c, w, st))}, layout.ParaOpts{Ref: st.At})
	high := max(c.WideBox(layout.RoleWords, wide, 1, "", st.At).H, text.H+cellHigh)
	return cell(text, width, high, c.CellBox(layout.RoleWords, wide, high, c.W.Step.WayFound.With(w.Mark), st.At))
}

func wayWords(c *block.Composer, w job.WayRound, st *job.Step) string {
	return c.W.Step.WayRound.With(partAt(c, w.Part, st), w.Mark, w.Faces)
}

// partAt is the name of a part, with its place where the step does not tell it.
func partAt(c *block.Composer, p *job.Part, st *job.Step) string {
	if p.Place.Label == "" || p.Place.Label == st.Place.Label {
		return p.Name
	}
	return p.Name + " " + p.Place.Label
}

// Measures of the boxes for a stack.
const (
	stackNo   layout.Mm = 7
	stackName layout.Mm = 26 // the most that the name of a piece takes
	stackBox  layout.Mm = 30 // the least box for what is there
	stackCols int       = 3
)

// stackBlock is the numbered column for the order of a stack, counted from its side.
func stackBlock(c *block.Composer, k *job.Stack, st *job.Step, width layout.Mm) layout.Block {
	w := c.W
	runs := []layout.Run{{Text: k.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Body, "  "+w.Step.StackOrder.With(k.What, k.From))}
	if k.Order != "" {
		runs = append(runs, layout.T(layout.Body, " · "+w.Step.StackExpected.With(k.Order)))
	}
	name := layout.Mm(0)
	for _, p := range k.Pieces {
		name = max(name, min(c.Width(layout.Body, p)+2, stackName))
	}
	cols := max(min(int(width/(stackNo+name+stackBox)), stackCols), 1)
	tall := (len(k.Pieces) + cols - 1) / cols
	one := width / layout.Mm(cols)
	var columns []layout.Block
	for i := 0; i < len(k.Pieces); i += tall {
		var rows []layout.Block
		for n := i; n < min(i+tall, len(k.Pieces)); n++ {
			rows = append(rows, stackRow(c, k, n, st, one, name))
		}
		columns = append(columns, layout.Above(0, rows...))
	}
	return layout.Above(0.8, c.Para(width, runs, layout.ParaOpts{Ref: st.At}), layout.Beside(0, columns...))
}

// stackRow is one piece: its number, what is expected, the box for what is there.
func stackRow(c *block.Composer, k *job.Stack, n int, st *job.Step, width, nameW layout.Mm) layout.Block {
	text := layout.Beside(0, c.Words(layout.Strong, strconv.Itoa(n+1)).Fill(stackNo-cellPad, layout.Body.Lead, 0, 0),
		c.Para(max(nameW, 1), []layout.Run{layout.T(layout.Body, k.Pieces[n])}, layout.ParaOpts{Ref: st.At}))
	boxW := width - stackNo - nameW - cellPad
	high := max(c.WideBox(layout.RoleWords, boxW, 1, "", st.At).H, text.H+cellHigh)
	return cell(text, width, high, c.CellBox(layout.RoleWords, boxW, high, c.W.Step.StackPiece.With(strconv.Itoa(n+1)), st.At))
}

// notedBack are the lines to tick when parts go back: marks that meet, the way round
// they sit, the order of the stack.
func notedBack(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []string
	line := func(text string) { out = append(out, text) }
	ways := st.WayRound
	for _, p := range marked(st) {
		line(meetWords(c, p, st))
	}
	for _, m := range st.Fit {
		for _, w := range m.Part.WayRound {
			if !containsWay(ways, w) {
				ways = append(ways[:len(ways):len(ways)], w)
			}
		}
	}
	for _, w := range ways {
		line(wayWords(c, w, st))
	}
	stacks := st.Stacks
	if st.Undoes != nil {
		stacks = st.Undoes.Stacks
	}
	for _, k := range append(stacks[:len(stacks):len(stacks)], st.Laid...) {
		line(laidWords(c, k))
	}
	if len(out) == 0 {
		return nil
	}
	return []layout.Block{notedTicks(c, st, width, out)}
}

// notedTicks are lines to tick, in the rows in which they take the least height.
func notedTicks(c *block.Composer, st *job.Step, width layout.Mm, texts []string) layout.Block {
	r := inWidths(func(width layout.Mm) []layout.Block {
		return guardTicks(c, st, width, texts, func(text string) string { return text })
	})
	r.guards = true
	return layout.Above(lineGap, rowsOf(r, width)...)
}

// notedTick is a line to tick.
func notedTick(c *block.Composer, st *job.Step, width layout.Mm, text string) layout.Block {
	tick := c.Tick(layout.Body, "", st.At)
	words := c.Para(width-tick.W-2, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: st.At})
	words.W = block.InkRight(words)
	return layout.Middle(2, tick, words)
}

func laidWords(c *block.Composer, k *job.Stack) string {
	return k.Mark + "  " + c.W.Step.StackBack.With(k.What, k.From, c.Page("stack "+k.Mark))
}

// laid are the lines to tick of the marks that meet, and of the stacks that are put together,
// in a step among those that take apart. In putting back they stand among the rest of what is
// noted.
func laid(c *block.Composer, st *job.Step) []layout.Block {
	texts := laidTexts(c, st)
	if len(texts) == 0 {
		return nil
	}
	return []layout.Block{notedTicks(c, st, c.Span-block.NumberWidth, texts).At(block.NumberWidth, 0)}
}

func laidTexts(c *block.Composer, st *job.Step) []string {
	if st.Undoes != nil || st.Back {
		return nil
	}
	var out []string
	for _, p := range marked(st) {
		out = append(out, meetWords(c, p, st))
	}
	for _, k := range st.Laid {
		out = append(out, laidWords(c, k))
	}
	return out
}

// laysAt reports whether what a step lays by marks and orders is ticked behind one of its verbs.
func laysAt(v job.Verb, st *job.Step) bool {
	if len(st.Fit) == 0 {
		return v == job.DoFitForNow
	}
	return v == job.DoFit
}

func containsWay(list []job.WayRound, w job.WayRound) bool {
	for _, x := range list {
		if x == w {
			return true
		}
	}
	return false
}
