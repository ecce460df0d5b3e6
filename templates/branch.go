package templates

import (
	"matchmark/packs/job"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/reading"
)

// branchLines say at the head of a step whether it is done: the question or the
// reading that decides, with its box, and what is done if not.
func (c *composer) branchLines(st *job.Step, width layout.Mm) []layout.Block {
	w := c.w
	if on := st.OnlyIf; on != nil {
		text := w.Step.OnlyIfDone.With(on.No, c.page("step "+on.No))
		return []layout.Block{c.decision(st, text, nil, w.Step.DoThis, w.Step.LeaveOut, width)}
	}
	a := st.If
	if a == nil {
		return nil
	}
	no := st.Otherwise
	if no == "" {
		no = w.Step.LeaveOut
	}
	return []layout.Block{c.decision(st, c.askWords(a), a, w.Step.DoThis, no, width)}
}

// askWords tell a condition: D3 is over 0.50 mm.
func (c *composer) askWords(a *job.Asked) string {
	text := partWords(c.w, a.Cond.Words())
	if a.Dim != nil && string(a.Cond.Mark) != a.Dim.Mark {
		text = a.Dim.Mark + text[len(a.Cond.Mark):] // with its place
	}
	return text
}

// decision is a frame with a condition, the box of the reading that it asks for,
// and two boxes to tick.
func (c *composer) decision(st *job.Step, text string, a *job.Asked, yes, no string, width layout.Mm) layout.Block {
	const pad = 2
	inner := width - 2*pad
	runs := []layout.Run{{Text: c.w.Step.If, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+text)}
	out := []layout.Block{c.Para(inner, runs, layout.ParaOpts{Ref: st.At})}
	if a != nil && a.Dim != nil {
		out = append(out, c.askedBoxes(a, inner))
	}
	for _, x := range []struct{ word, does string }{{c.w.Limit[reading.WordYes], yes}, {c.w.Limit[reading.WordNo], no}} {
		tick := c.Tick(layout.Strong, x.word, st.At)
		line := c.Para(inner-tick.W-3, []layout.Run{layout.T(layout.Body, x.does)}, layout.ParaOpts{Ref: st.At})
		out = append(out, layout.Middle(3, tick, line))
	}
	return layout.Above(1.5, out...).Inset(pad).Border(layout.Rect{Weight: layout.Outline, Dash: 2}).Pad(0, 0, 1, 0)
}

// askedBoxes copy the reading that decides; of many, what it stands for is looked up
// on its page.
func (c *composer) askedBoxes(a *job.Asked, width layout.Mm) layout.Block {
	caption, anchor := c.w.Common.AsFound, "found "
	if a.Left {
		caption, anchor = c.w.Common.AsLeft, "left "
	}
	where := c.w.Common.TakenFrom.With(a.Dim.Mark, a.Dim.What, caption, c.page(anchor+a.Dim.Mark))
	digits := a.Dim.Box.Form == reading.Digits || a.Dim.Box.Form == reading.Fraction
	if !digits || a.Dim.Positions.Boxes() > 1 {
		return c.Para(width, []layout.Run{layout.T(layout.Sub, where)}, layout.ParaOpts{Ref: a.At})
	}
	box := c.box(a.Dim, side{copied: true}, "", true)
	name := c.Para(width-box.W-3, []layout.Run{layout.T(layout.Sub, where)}, layout.ParaOpts{Ref: a.At})
	return layout.Middle(3, name, box)
}

// loopBlock sets the boxes of every try of a step that is done over and over, with
// what ends it and what is done when the last try is no good.
func (c *composer) loopBlock(st *job.Step) layout.Block {
	w, u := c.w, st.Until
	width := c.width - numberW - 2*cellPad
	head := w.Step.Until.With(c.askWords(u), strconv.Itoa(st.Tries))
	runs := []layout.Run{{Text: w.Step.Again, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+head)}
	out := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: u.At})}
	for i := range st.Tries {
		out = append(out, c.try(u, w.Step.TryNo.With(strconv.Itoa(i+1)), width))
	}
	last := w.Step.StillNoGood.With(st.StillOut)
	if u.Dim != nil {
		last = w.Step.LastTry.With(u.Dim.Mark) + " " + last
	}
	out = append(out, c.Para(width, []layout.Run{layout.T(layout.Body, last)}, layout.ParaOpts{Ref: u.At}))
	block := layout.Above(layout.GapY, out...)
	block = block.Fill(width, block.H, 0, 0).Pad(1.5, cellPad, cellPad, cellPad)
	return block.Border(layout.Rect{Weight: layout.Rule}).At(numberW, 0)
}

// try is one try: its boxes, and whether it was good.
func (c *composer) try(u *job.Asked, name string, width layout.Mm) layout.Block {
	w := c.w
	label := c.Words(layout.Strong, name)
	good := []layout.Block{c.Tick(layout.Body, w.Common.InLimits, u.At), c.Tick(layout.Body, w.Common.OutOfLimits, u.At)}
	if u.Dim == nil || u.Cond.Ask == reading.AskState || u.Dim.Box.Form == reading.Ticks {
		good = []layout.Block{c.Tick(layout.Body, w.Limit[reading.WordYes], u.At), c.Tick(layout.Body, w.Limit[reading.WordNo], u.At)}
		return layout.Middle(layout.GapX, append([]layout.Block{label}, good...)...)
	}
	names := positionNames(u.Dim.Positions)
	if len(names) == 0 {
		names = []string{""}
	}
	var boxes []layout.Block
	for _, n := range names {
		boxes = append(boxes, c.box(u.Dim, side{}, n, len(names) == 1))
	}
	for _, g := range u.Dim.Groups() {
		boxes = append(boxes, c.groupBox(u.Dim, g, w.Common.Group[g], false))
	}
	ticks := layout.Middle(layout.GapX, good...)
	room := width - label.W - ticks.W - 2*layout.GapX
	return layout.Bottom(layout.GapX, label.Pad(0, 0, 2.5, 0), flowRow(boxes, room), ticks.Pad(0, 0, 1.5, 0))
}

// waitsLine points from the place of a step that waits to where it is printed.
func (c *composer) waitsLine(st *job.Step) layout.Block {
	text := c.w.Step.Waits.With(st.No, st.Later, c.page("step "+st.No))
	return c.Para(c.width, []layout.Run{layout.T(layout.Strong, text)}, layout.ParaOpts{Ref: st.At})
}

// deferred sets the work that waits until the machine has run, on the close-out
// sheet: when it is due, the step with its boxes, or the joint that is tightened
// again.
func (c *composer) deferred() []layout.Piece {
	if len(c.job.Deferred) == 0 {
		return nil
	}
	w := c.w
	head := layout.Above(1, c.Words(layout.Section, w.CloseOut.LaterHead), c.rule(layout.Heavy)).Pad(1, 0, 1.5, 0)
	out := []layout.Piece{{Block: head, Gap: 5, KeepNext: true}}
	for _, x := range c.job.Deferred {
		when := c.Words(layout.Strong, x.When)
		boxes := layout.Beside(layout.GapX, c.Box(layout.RoleDate, w.CloseOut.DueDate, x.At), c.Box(layout.RoleTime, w.Common.Time, x.At), c.Box(layout.RoleName, w.Common.NameSign, x.At))
		out = append(out, layout.Piece{Block: layout.Middle(layout.GapX, when, boxes), Gap: 3, KeepNext: true})
		if x.Step != nil {
			out = append(out, c.step(x.Step)...)
			continue
		}
		text := w.CloseOut.TightenAgain.With(x.Joint.Mark+" "+x.Joint.What, x.Joint.Torque)
		line := c.Para(c.width-30, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: x.At})
		out = append(out, layout.Piece{Block: layout.Middle(layout.GapX, line, c.Box(layout.RoleInitials, w.Common.Initials, x.At)), Gap: 2})
	}
	return out
}
