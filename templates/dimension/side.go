package dimension

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// A Side is one column of boxes of a dimension: as found on the traveler, and in
// putting back the found value copied, the value left and their difference.
type Side struct {
	caption string
	signed  bool
	Copied  bool
	When    job.When     // whose value stands in its boxes
	work    *job.Working // what is worked out by hand for this side

	kind  job.BlankKind // of the box, where it is not that of a reading
	at    int           // which of its boxes, from 0
	typed string        // what stands in it, where that is no reading
}

// on is the side for one of its boxes.
func (s Side) on(i int) Side {
	s.at = i
	return s
}

// A Kind says at which of its uses a step has a dimension.
type Kind int

// The uses: measured before parting, set in putting back, looked up again.
const (
	Found Kind = iota
	Left
	Recall
)

// sidesOf are the columns of boxes of a dimension: as found on the traveler; in putting
// back the value found copied, the value left, and their difference where the limit is
// one of what was found.
func sidesOf(c *block.Composer, d *job.Dim, kind Kind) []Side {
	copied := Side{caption: c.W.Common.CopyFound.With(c.Page("found " + d.Mark)), Copied: true, When: job.AsFound}
	switch kind {
	case Found:
		return []Side{{caption: c.W.Common.AsFound, When: job.AsFound, work: &d.FoundWork}}
	case Recall:
		return []Side{copied}
	}
	var sides []Side
	if d.FoundAt != nil && d.Box.Form != reading.Grid {
		sides = append(sides, copied)
	}
	sides = append(sides, Side{caption: c.W.Common.AsLeft, When: job.AsLeft, work: &d.LeftWork})
	if len(sides) == 2 && d.Formula == nil && d.OneIs == nil && d.Box.Form == reading.Digits && needsFound(d) {
		sides = append(sides, Side{caption: c.W.Dimension.Difference, signed: true})
	}
	return sides
}

// needsFound reports whether a limit for what is left is one of what was found.
func needsFound(d *job.Dim) bool {
	for _, l := range []*reading.Limit{d.Left, d.Reuse, d.Repair} {
		if l != nil && l.NeedsFound() {
			return true
		}
	}
	return false
}

// onlyLine reports whether a step has one line for a dimension: its boxes stand on a
// sheet of their own, or it is only compared with what was drawn.
func onlyLine(d *job.Dim, kind Kind) bool {
	return d.Sheet || kind == Recall && (d.Box.Form == reading.Grid || d.Box.Form == reading.Line)
}

func lineOf(c *block.Composer, d *job.Dim, kind Kind) layout.Block {
	if kind != Recall {
		return sheetLine(c, d, kind == Left)
	}
	text := c.W.Dimension.CompareWith.With(d.Mark+"  "+d.What, c.Page("found "+d.Mark))
	return c.Para(c.Span-block.NumberWidth, []layout.Run{layout.T(layout.Body, text)}, layout.ParaOpts{Ref: d.At}).At(block.NumberWidth, 0).Anchored("left " + d.Mark)
}

// sheetLine stands at the step in the place of the boxes: how many there are and on
// which page.
func sheetLine(c *block.Composer, d *job.Dim, back bool) layout.Block {
	sentence, anchor := c.W.Readings.BoxesOn, "found "
	if back {
		sentence, anchor = c.W.Readings.BoxesOnBack, "left "
	}
	width := c.Span - block.NumberWidth
	tick := c.Tick(layout.Body, "", d.At)
	runs := []layout.Run{{Text: d.Mark, Style: layout.Strong, Deco: layout.Boxed}, layout.T(layout.Strong, " "+d.What+"  "),
		layout.T(layout.Body, sentence.With(strconv.Itoa(d.Positions.Boxes()), c.Page(anchor+d.Mark)))}
	if !back {
		if note := lastChanceNote(c, d); note != "" {
			runs = append(runs, layout.T(layout.Body, "  "), layout.Run{Text: note, Style: layout.SubBold, Deco: layout.Inverse})
		}
	}
	text := c.Para(width-tick.W-10, runs, layout.ParaOpts{Ref: d.At})
	return layout.Middle(4, tick, text).Pad(1.5, 3, 1.5, 3).Border(layout.Rect{Weight: layout.Rule}).At(block.NumberWidth, 0)
}

// everyAnchor names the page of a block by the marks of all dimensions that it
// holds, as found and as left.
func everyAnchor(b layout.Block, d *job.Dim) layout.Block {
	return Anchored(Anchored(b, d, "found "), d, "left ")
}

// Anchored names the page of a block by a dimension, by those that it stands for, and, for the
// first of those that stand together elsewhere, by the one that they are there.
func Anchored(b layout.Block, d *job.Dim, what string) layout.Block {
	b = b.Anchored(what + d.Mark)
	for _, x := range d.Merged {
		b = b.Anchored(what + x.Mark)
	}
	if d.In != nil && d == d.In.Merged[0] {
		b = b.Anchored(what + d.In.Mark)
	}
	return b
}
