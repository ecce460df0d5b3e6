package templates

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs"
)

// Measures of the block of a dimension.
const (
	balloonW layout.Mm = 20
	pictureW layout.Mm = 30
	cellPad  layout.Mm = 2
)

// A side is one column of boxes of a dimension: as found on the traveler, and in
// putting back the found value copied, the value left and their difference.
type side struct {
	caption string
	signed  bool
	copied  bool
	work    *packs.Working // what is worked out by hand for this side
}

// dimension is the block of one dimension: balloon, picture, what it is and in
// which state it is taken, the boxes, the limit, and the way to leave it empty
// honestly. The boxes stand beside the picture, or below it if they are wide.
func (c *composer) dimension(d *packs.Dim, sides []side, back bool, note string) layout.Block {
	inner := c.width - numberW - balloonW - 2*cellPad
	right := inner - pictureW - cellPad
	head := append(c.dimensionHead(d, note, right), c.limitLines(d, back, right)...)
	pic := c.picture(d)
	boxes, across := c.boxes(d, sides, right), c.boxes(d, sides, inner)
	var content layout.Block
	if byHand(d, sides) {
		content = c.handContent(d, sides, back, note, inner)
	} else if boxes.W <= right && across.H > lowBoxes {
		beside := layout.Above(layout.GapY, layout.Above(0.5, head...), boxes)
		content = layout.Above(layout.GapY, layout.Beside(cellPad, pic, beside), c.verdict(d, sides, inner, layout.Block{}))
	} else {
		top := layout.Beside(cellPad, pic, layout.Above(0.5, head...))
		content = layout.Above(1.5, top, c.verdict(d, sides, inner, across))
	}
	content = content.Fill(inner, content.H, 0, 0).Pad(1.5, cellPad, cellPad, cellPad)
	balloon := c.balloon(d).Fill(balloonW, content.H, 0.5, 0.5)
	bar := layout.Drawn(0, content.H, layout.Item{Shape: layout.Line{DY: content.H, Weight: layout.Inner}})
	block := layout.Beside(0, balloon, bar, content).Border(layout.Rect{Weight: layout.Rule})
	return block.At(numberW, 0).Pad(0, 0, 1, 0)
}

// lowBoxes is the height of one line of boxes with their captions.
const lowBoxes layout.Mm = 16

// balloon is the mark in a ring, its place below.
func (c *composer) balloon(d *packs.Dim) layout.Block {
	mark := c.Words(layout.StepNo, d.Base)
	r := max(mark.W/2+2.5, 7.5)
	ring := layout.Drawn(2*r, 2*r, layout.Item{Shape: layout.Path{Ops: layout.Circle(layout.Point{X: r, Y: r}, r), Weight: layout.Outline}})
	ring = layout.Overlay(ring, mark.Fill(2*r, 2*r, 0.5, 0.5)).Center(balloonW)
	if d.Place.Label == "" {
		return ring
	}
	style := layout.SubBold
	if c.Width(style, d.Mark) > balloonW-2 {
		style = layout.Caption.With(layout.Bold) // of two places, as D12/NDE-DIS
	}
	place := c.Para(balloonW-2, []layout.Run{layout.T(style, d.Mark)}, layout.ParaOpts{Align: layout.Centered, Ref: d.At})
	return layout.Above(1, ring, place.At(1, 0))
}

// dimensionHead is what is measured, between which faces, and in which state.
func (c *composer) dimensionHead(d *packs.Dim, note string, width layout.Mm) []layout.Block {
	w := c.w
	runs := []layout.Run{layout.T(layout.Strong, d.What)}
	if f := faces(w, d); f != "" {
		runs = append(runs, layout.T(layout.Body, " — "+f))
	}
	var state []string
	if d.State.With != "" {
		state = append(state, w.with+": "+d.State.With)
	}
	if d.By != nil {
		by := w.by + ": " + d.By.Name
		if d.By.Reads != nil {
			by += ", " + fill(w.reads, d.By.Reads.Print())
		}
		state = append(state, by)
	}
	if d.ViewedFrom != "" && (d.Positions.Kind == packs.Clock || d.ViewedFrom != d.Place.ViewedFrom) {
		state = append(state, fill(w.seen, d.ViewedFrom))
	}
	out := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}
	small := []layout.Run{layout.T(layout.Sub, strings.Join(state, " · "))}
	if note != "" {
		small = append(small, layout.T(layout.Sub, "  "), layout.Run{Text: note, Style: layout.SubBold, Deco: layout.Inverse})
	}
	return append(out, c.Para(width, small, layout.ParaOpts{Ref: d.At}))
}

// faces words the two faces of a dimension, or the one it is of.
func faces(w words, d *packs.Dim) string {
	one := func(f packs.Face) string {
		if f.Name == "" {
			return f.Part.Name
		}
		return fill(w.faceOf, f.Name, f.Part.Name)
	}
	switch {
	case d.From.Part != nil && d.To.Part != nil:
		return one(d.From) + " " + w.to + " " + one(d.To)
	case d.Of.Part != nil:
		return one(d.Of)
	case d.Stamped.Part != nil:
		return fill(w.stampedOn, one(d.Stamped))
	}
	return ""
}

// verdict is the line of the boxes, if they are low enough to stand in it, with
// in or out, the reason why a reading was not taken, and initials.
func (c *composer) verdict(d *packs.Dim, sides []side, width layout.Mm, boxes layout.Block) layout.Block {
	const leastReason = 34
	initials := c.Box(layout.RoleInitials, c.w.initials, d.At)
	var ticks layout.Block
	if late := sides[0].work != nil && sides[0].work.Late != nil; d.Judged() && !late && (!d.Left.NeedsFound() || len(sides) > 1) {
		ticks = layout.Middle(layout.GapX, c.Tick(layout.Body, c.w.in, d.At), c.Tick(layout.Body, c.w.out, d.At)).Pad(0, 0, 1.5, 0)
	}
	fixed := []layout.Block{ticks, initials}
	rest := width
	for _, b := range append(fixed, boxes) {
		if !b.Empty() {
			rest -= b.W + layout.GapX
		}
	}
	if boxes.H <= lowBoxes && rest >= leastReason {
		return layout.Bottom(layout.GapX, boxes, ticks, c.WideBox(layout.RoleWords, rest, 1, c.w.notTaken, d.At), initials)
	}
	rest += boxes.W + layout.GapX
	return layout.Above(layout.GapY, boxes, layout.Middle(layout.GapX, ticks, c.WideBox(layout.RoleWords, rest, 1, c.w.notTaken, d.At), initials))
}
