package step

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// branchLines say at the head of a step whether it is done: the question or the
// reading that decides, with its box, and what is done if not.
func branchLines(c *block.Composer, st *job.Step, width layout.Mm) []layout.Block {
	w := c.W
	if on := st.OnlyIf; on != nil {
		text := w.Step.OnlyIfDone.With(on.No, c.Page("step "+on.No))
		return []layout.Block{decision(c, st, text, nil, w.Step.DoThis, w.Step.LeaveOut, width)}
	}
	a := st.If
	if a == nil {
		return nil
	}
	no := st.Otherwise
	if no == "" {
		no = w.Step.LeaveOut
	}
	return []layout.Block{decision(c, st, conditionWords(c, a), a, w.Step.DoThis, no, width)}
}

// conditionWords tell a condition: D3 is over 0.50 mm.
func conditionWords(c *block.Composer, a *job.Asked) string {
	text := dimension.PartWords(c.W, a.Cond.Words())
	if a.Dim != nil && string(a.Cond.Mark) != a.Dim.Mark {
		text = a.Dim.Mark + text[len(a.Cond.Mark):] // with its place
	}
	return text
}

// aboveFrame is how far a frame stands below the rule that a step begins with, so that the two
// are seen as two.
const aboveFrame layout.Mm = 1.2

// decision is a frame with a condition, the box of the reading that it asks for,
// and two boxes to tick.
func decision(c *block.Composer, st *job.Step, text string, a *job.Asked, yes, no string, width layout.Mm) layout.Block {
	const pad = 2
	inner := width - 2*pad
	runs := []layout.Run{{Text: c.W.Step.If, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+text)}
	out := []layout.Block{c.Para(inner, runs, layout.ParaOpts{Ref: st.At})}
	if a != nil && a.Dim != nil {
		out = append(out, askedBoxes(c, a, inner))
	}
	var ticks []layout.Block
	for _, x := range []struct{ word, does string }{{string(c.W.Limit[reading.WordYes]), yes}, {string(c.W.Limit[reading.WordNo]), no}} {
		tick := c.Tick(layout.Strong, x.word, st.At)
		line := c.Para(inner-tick.W-3, []layout.Run{layout.T(layout.Body, x.does)}, layout.ParaOpts{Ref: st.At})
		line.W = block.InkRight(line)
		ticks = append(ticks, layout.Middle(3, tick, line))
	}
	out = append(out, block.FlowRow(ticks, inner))
	return layout.Above(1.5, out...).Pad(1, pad, 1, pad).Border(layout.Rect{Weight: layout.Outline, Dash: 2}).Pad(aboveFrame, 0, 1, 0)
}

// askedBoxes copy the reading that decides; of many, what it stands for is looked up
// on its page.
func askedBoxes(c *block.Composer, a *job.Asked, width layout.Mm) layout.Block {
	caption, anchor := c.W.Common.AsFound, "found "
	if a.Left {
		caption, anchor = c.W.Common.AsLeft, "left "
	}
	where := c.W.Common.TakenFrom.With(a.Dim.Mark, a.Dim.What, caption, c.Page(anchor+a.Dim.Mark))
	digits := a.Dim.Box.Form == reading.Digits || a.Dim.Box.Form == reading.Fraction
	if !digits || a.Dim.Positions.Boxes() > 1 {
		return c.Para(width, []layout.Run{layout.T(layout.Sub, where)}, layout.ParaOpts{Ref: a.At})
	}
	box := dimension.Box(c, a.Dim, dimension.Side{Copied: true}, "", true)
	name := c.Para(width-box.W-3, []layout.Run{layout.T(layout.Sub, where)}, layout.ParaOpts{Ref: a.At})
	return layout.Middle(3, name, box)
}

// WaitsLine points from the place of a step that waits to where it is printed.
func WaitsLine(c *block.Composer, st *job.Step) layout.Block {
	text := c.W.Step.Waits.With(st.No, st.Later, c.Page("step "+st.No))
	return c.Para(c.Span, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At})
}
