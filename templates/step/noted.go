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
	var lines []layout.Block
	inner := c.Span - block.NumberWidth - 2*block.CellPad
	if st.Undoes != nil || st.Back {
		lines = notedBack(c, st, c.Span-block.NumberWidth)
		if len(lines) == 0 {
			return nil
		}
		return []layout.Block{lines[0].At(block.NumberWidth, layout.GapY-1).Anchored("marks " + st.No)}
	} else {
		for _, p := range st.Marks {
			lines = append(lines, matchMark(c, p, st, inner))
		}
		for _, w := range st.WayRound {
			lines = append(lines, wayFound(c, w, st, inner))
		}
		for _, k := range st.Stacks {
			lines = append(lines, stackBlock(c, k, st, inner).Anchored("stack "+k.Mark))
		}
	}
	if len(lines) == 0 {
		return nil
	}
	body := layout.Above(layout.GapY, lines...)
	body.W = inner
	return []layout.Block{body.Inset(block.CellPad).Border(layout.Rect{Weight: layout.Rule}).At(block.NumberWidth, 0).Anchored("marks " + st.No)}
}

// matchMark is one line for a mark across the joint of a part.
func matchMark(c *block.Composer, p *job.Part, st *job.Step, width layout.Mm) layout.Block {
	mark := c.WideBox(layout.RoleWords, 40, 1, c.W.Step.MarkUsed, st.At)
	where := c.WideBox(layout.RoleWords, 55, 1, c.W.Step.WhereMarked, st.At)
	rest := width - mark.W - where.W - 2*layout.GapX
	text := c.Para(rest, []layout.Run{layout.T(layout.Body, c.W.Step.MatchMark.With(partAt(c, p, st)))}, layout.ParaOpts{Ref: st.At})
	return layout.Middle(layout.GapX, text, mark, where)
}

// wayFound is one line for which way round a part sits before it comes off.
func wayFound(c *block.Composer, w job.WayRound, st *job.Step, width layout.Mm) layout.Block {
	box := c.WideBox(layout.RoleWords, 75, 1, c.W.Step.WayFound.With(w.Mark), st.At)
	text := c.Para(width-box.W-layout.GapX, []layout.Run{layout.T(layout.Strong, wayWords(c, w, st))}, layout.ParaOpts{Ref: st.At})
	return layout.Middle(layout.GapX, text, box)
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
	cols := max(min(int((width+layout.GapX)/(stackNo+name+stackBox+layout.GapX)), stackCols), 1)
	tall := (len(k.Pieces) + cols - 1) / cols
	one := (width - layout.Mm(cols-1)*layout.GapX) / layout.Mm(cols)
	var columns []layout.Block
	for i := 0; i < len(k.Pieces); i += tall {
		var rows []layout.Block
		for n := i; n < min(i+tall, len(k.Pieces)); n++ {
			rows = append(rows, stackRow(c, k, n, st, one, name))
		}
		columns = append(columns, layout.Above(layout.GapY, rows...))
	}
	return layout.Above(1.5, c.Para(width, runs, layout.ParaOpts{Ref: st.At}), layout.Beside(layout.GapX, columns...))
}

// stackRow is one piece: its number, what is expected, the box for what is there.
func stackRow(c *block.Composer, k *job.Stack, n int, st *job.Step, width, nameW layout.Mm) layout.Block {
	box := width - stackNo
	row := []layout.Block{c.Words(layout.Strong, strconv.Itoa(n+1)).Fill(stackNo, 9, 0, 0.5)}
	if k.Pieces[n] != "" {
		row = append(row, c.Para(nameW, []layout.Run{layout.T(layout.Body, k.Pieces[n])}, layout.ParaOpts{Ref: st.At}))
		box -= nameW
	}
	return layout.Middle(0, append(row, c.WideBox(layout.RoleWords, box, 1, c.W.Step.StackPiece.With(strconv.Itoa(n+1)), st.At))...)
}

// notedBack are the lines to tick when parts go back: marks that meet, the way round
// they sit, the order of the stack.
func notedBack(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	var out []layout.Block
	line := func(text string) {
		tick := c.Tick(layout.Body, "", st.At)
		words := c.Para(width-tick.W-2, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: st.At})
		words.W = block.InkRight(words)
		out = append(out, layout.Middle(2, tick, words))
	}
	ways := st.WayRound
	for _, m := range st.Fit {
		if m.Part.Marked != nil {
			line(c.W.Step.MarksMeet.With(partAt(c, m.Part, st), c.Page("marks "+m.Part.Marked.No)))
		}
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
	for _, k := range stacks {
		line(k.Mark + "  " + c.W.Step.StackBack.With(k.What, k.From, c.Page("stack "+k.Mark)))
	}
	if len(out) == 0 {
		return nil
	}
	return []layout.Block{block.FlowRow(out, width)}
}

func containsWay(list []job.WayRound, w job.WayRound) bool {
	for _, x := range list {
		if x == w {
			return true
		}
	}
	return false
}
