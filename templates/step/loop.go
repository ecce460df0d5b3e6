package step

import (
	"slices"
	"strconv"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
)

// loopBlock sets the boxes of every try of a step that is done over and over, with
// what ends it and what is done when the last try is no good.
func loopBlock(c *block.Composer, st *job.Step) layout.Block {
	w, u := c.W, st.Until
	width := c.Span - block.NumberWidth - 2*block.CellPad
	head := w.Step.Until.With(conditionWords(c, u), strconv.Itoa(st.Tries))
	runs := []layout.Run{{Text: w.Step.Again, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Strong, "  "+head)}
	if u.Dim == nil && len(st.Measure)+len(st.Set) > 0 && st.Tries > 1 {
		earlier := w.Step.BoxesLast
		if len(st.EachTry) == 0 {
			earlier = w.Step.EarlierTries.With(c.Page("found today"))
		}
		runs = append(runs, layout.T(layout.Sub, "   "+earlier))
	}
	out := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: u.At})}
	var tries []layout.Block
	for i := range st.Tries {
		tries = append(tries, tryBlock(c, st, i, width))
	}
	out = append(out, block.FlowRow(tries, width))
	last := w.Step.StillNoGood.With(st.StillOut)
	if u.Dim != nil {
		if len(st.EachTry) == 0 {
			last = w.Step.FurtherTry.With(c.Page("found today")) + " " + last
		}
		last = w.Step.BoxesLast + " " + last
	}
	out = append(out, c.Para(width, []layout.Run{layout.T(layout.Body, last)}, layout.ParaOpts{Ref: u.At}))
	framed := layout.Above(layout.GapY, out...)
	framed = framed.Fill(width, framed.H, 0, 0).Pad(1.5, block.CellPad, block.CellPad, block.CellPad)
	return framed.Border(layout.Rect{Weight: layout.Rule}).At(block.NumberWidth, 0)
}

// tryBlock is one try: what it does before it is read again, its boxes, and whether it was
// good. Of what a try does, the first has the readings of the step alone: the rest was done
// by the step. The last has no boxes for those where they go into the boxes above, as all
// readings do that stay.
func tryBlock(c *block.Composer, st *job.Step, no int, width layout.Mm) layout.Block {
	name := c.W.Step.TryNo.With(strconv.Itoa(no + 1))
	var acts, read, toward, worked []layout.Block
	label := c.Words(layout.Strong, name)
	room := width - label.W - layout.GapX
	for _, a := range st.EachTry {
		own := a.Dim != nil && (slices.Contains(st.Set, a.Dim) || slices.Contains(st.Measure, a.Dim))
		above := own && st.Until.Dim == nil && no == st.Tries-1
		switch {
		case above || no == 0 && !own:
		case own || len(read) > 0:
			read = append(read, tryAct(c, a, room)...)
		default:
			acts = append(acts, tryAct(c, a, room)...)
		}
	}
	if st.Until.Dim != nil || no < st.Tries-1 {
		toward, worked = workedBoxes(c, st)
	}
	if len(acts)+len(read)+len(toward)+len(worked) == 0 {
		boxes, good := tried(c, st.Until, "")
		return oneTry(label, boxes, good, width)
	}
	mark := ""
	if st.Until.Dim != nil {
		mark = st.Until.Dim.Mark
	}
	boxes, good := tried(c, st.Until, mark)
	return layout.Beside(layout.GapX, label.Pad(2.5, 0, 0, 0), tryRows(acts, slices.Concat(read, toward, boxes), good, worked, room))
}

// tryRows are the boxes of a try: all in one row, or of one with several readings what it does
// first in rows of its own, so that the readings of all tries part their rows at the same boxes
// and stand below each other.
// The ticks for whether it was good stand beside the box that they judge, above each other
// where that saves a row, and before what is worked out besides.
func tryRows(acts, read, good, worked []layout.Block, width layout.Mm) layout.Block {
	var best layout.Block
	for _, ticks := range []layout.Block{layout.Middle(layout.GapX, good...).Pad(0, 0, 1.5, 0), layout.Above(layout.GapY, good...)} {
		last := append(append(slices.Clone(read), ticks), worked...)
		all := append(slices.Clone(acts), last...)
		rows := block.FlowRow(all, width)
		if len(acts) > 0 && len(read) > 1 && block.RowWidth(all) > width {
			rows = layout.Above(layout.GapY, block.FlowRow(acts, width), block.FlowRow(last, width))
		}
		if best.Empty() || rows.H < best.H-tickSaves {
			best = rows
		}
	}
	return best
}

// tickSaves is how much height ticks must save to stand above each other.
const tickSaves layout.Mm = 2

// tryAct are the boxes of one thing that a further try does.
func tryAct(c *block.Composer, a job.TryAct, width layout.Mm) []layout.Block {
	switch {
	case a.Dim != nil:
		caption := a.Dim.Mark
		if unit := c.W.Unit(a.Dim.Box.Unit.Print()); unit != "" {
			caption += ", " + unit
		}
		return placeBoxes(c, a.Dim, caption)
	case a.Joint != nil:
		return []layout.Block{tickWords(c, a.Joint.Mark+"\u00a0"+a.Joint.Torque, a, width)}
	}
	return []layout.Block{tickWords(c, a.Words, a, width)}
}

// placeBoxes are the boxes of a reading in a try, one for each of its places, the first under the
// caption of all.
func placeBoxes(c *block.Composer, d *job.Dim, caption string) []layout.Block {
	var out []layout.Block
	for i, n := range places(d) {
		switch {
		case i == 0 && n != "":
			n = caption + ", " + n
		case i == 0:
			n = caption
		}
		out = append(out, dimension.Box(c, d, dimension.Side{}, n, false))
	}
	return out
}

// tickWords is a box to tick with its words, which go on below where they are long.
func tickWords(c *block.Composer, text string, a job.TryAct, width layout.Mm) layout.Block {
	tick := c.Tick(layout.Body, "", a.At)
	words := c.Para(width-tick.W-2, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: a.At})
	words.W = block.InkRight(words)
	return layout.Middle(2, tick, words).Pad(0, 0, 1.5, 0)
}

// places are the names of the places that a dimension is read at, one without a name where
// there is one alone.
func places(d *job.Dim) []string {
	if names := dimension.PositionNames(d.Positions); len(names) > 0 {
		return names
	}
	return []string{""}
}

// tried are the boxes of what ends a step, the first under a name, and those for whether it
// was good.
func tried(c *block.Composer, u *job.Asked, name string) (boxes, good []layout.Block) {
	w := c.W
	if u.Dim == nil || u.Cond.Ask == reading.AskState || u.Dim.Box.Form == reading.Ticks {
		return nil, []layout.Block{c.Tick(layout.Body, string(w.Limit[reading.WordYes]), u.At), c.Tick(layout.Body, string(w.Limit[reading.WordNo]), u.At)}
	}
	names := places(u.Dim)
	for i, n := range names {
		if i == 0 {
			n = strings.Trim(name+", "+n, ", ")
		}
		boxes = append(boxes, dimension.Box(c, u.Dim, dimension.Side{}, n, len(names) == 1))
	}
	for _, g := range u.Dim.Groups() {
		boxes = append(boxes, dimension.GroupBox(c, u.Dim, g, w.Common.Group[g], false))
	}
	return boxes, []layout.Block{c.Tick(layout.Body, w.Common.InLimits, u.At), c.Tick(layout.Body, w.Common.OutOfLimits, u.At)}
}

// oneTry sets a try that does nothing but read again.
func oneTry(label layout.Block, boxes, good []layout.Block, width layout.Mm) layout.Block {
	switch len(boxes) {
	case 0:
		return layout.Middle(layout.GapX, append([]layout.Block{label}, good...)...)
	case 1:
		ticks := layout.Middle(layout.GapX, good...)
		room := width - label.W - ticks.W - 2*layout.GapX
		return layout.Bottom(layout.GapX, label.Pad(0, 0, 2.5, 0), block.FlowRow(boxes, room), ticks.Pad(0, 0, 1.5, 0))
	}
	// The ticks stand above each other, so that the boxes of four places fit beside them.
	told := layout.Middle(layout.GapX, label, layout.Above(layout.GapY, good...))
	return layout.Bottom(layout.GapX, told, block.FlowRow(boxes, width-told.W-layout.GapX))
}
