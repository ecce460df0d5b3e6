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
	extra := c.beside(d, sides, inner)
	var content layout.Block
	if byHand(d, sides) {
		content = c.handContent(d, sides, back, note, inner)
	} else if boxes.W <= right && across.H > lowBoxes {
		beside := layout.Above(layout.GapY, layout.Above(0.5, head...), boxes)
		content = layout.Above(layout.GapY, layout.Beside(cellPad, pic, beside), extra, c.verdict(d, sides, back, inner, layout.Block{}))
	} else {
		top := layout.Beside(cellPad, pic, layout.Above(0.5, head...))
		content = layout.Above(1.5, top, layout.Above(layout.GapY, c.verdict(d, sides, back, inner, across), extra))
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
	runs := []layout.Run{layout.T(layout.Strong, d.What)}
	if f := faces(c.w, d); f != "" {
		runs = append(runs, layout.T(layout.Body, " — "+f))
	}
	out := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}
	small := []layout.Run{layout.T(layout.Sub, strings.Join(c.stateLine(d), " · "))}
	if note != "" {
		small = append(small, layout.T(layout.Sub, "  "), layout.Run{Text: note, Style: layout.SubBold, Deco: layout.Inverse})
	}
	out = append(out, c.Para(width, small, layout.ParaOpts{Ref: d.At}))
	if d.Note != "" {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Body, d.Note)}, layout.ParaOpts{Ref: d.At}))
	}
	return out
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
func (c *composer) verdict(d *packs.Dim, sides []side, back bool, width layout.Mm, boxes layout.Block) layout.Block {
	const leastReason = 34
	initials := c.Box(layout.RoleInitials, c.w.initials, d.At)
	ticks := c.verdictTicks(d, sides, back)
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

// verdictTicks are the boxes for what follows from a reading: in or out, and for a
// part found within a limit for old ones whether it goes back.
func (c *composer) verdictTicks(d *packs.Dim, sides []side, back bool) layout.Block {
	w := c.w.dims
	late := len(sides) > 0 && sides[0].work != nil && sides[0].work.Late != nil
	var words []string
	switch {
	case !back && d.Repair != nil:
		words = []string{w.goesBack, w.mended, w.renewed}
	case !back && d.Reuse != nil:
		words = []string{w.goesBack, w.renewed}
	case late:
	case d.WatchedOnly() && !back, d.Judged() && (!d.Left.NeedsFound() || len(sides) > 1):
		words = []string{c.w.in, c.w.out}
	}
	var ticks []layout.Block
	for _, s := range words {
		ticks = append(ticks, c.Tick(layout.Body, s, d.At))
	}
	if len(ticks) == 0 {
		return layout.Block{}
	}
	return layout.Middle(layout.GapX, ticks...).Pad(0, 0, 1.5, 0)
}
