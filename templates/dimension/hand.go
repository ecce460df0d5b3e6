package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/picture"
)

// byHand reports whether a dimension is worked out by hand, or its limits are.
func byHand(d *job.Dim, sides []Side) bool {
	w := workOf(sides)
	return w != nil && (w.Formula != nil || len(w.Limits) > 0 || d.OneIs != nil || d.Shims != nil)
}

// workOf is what is worked out by hand for the sides of a dimension, nil if nothing
// can be.
func workOf(sides []Side) *job.Working {
	for _, s := range sides {
		if s.work != nil {
			return s.work
		}
	}
	return nil
}

// tallFrame is the height up to which what belongs to one dimension stands in one
// frame.
const tallFrame layout.Mm = 140

// handBlocks sets a dimension that is worked out by hand: its head, the sums for its
// limits, its own sum or its shims, the verdict below them or below the balloon,
// whichever takes less height. What is too tall for one frame goes on in a second,
// between two sums.
func handBlocks(c *block.Composer, d *job.Dim, sides []Side, back bool, note string) []layout.Block {
	width := c.Span - balloonW - 2*block.CellPad
	parts := handParts(c, d, sides, back, note, width)
	last := len(parts) - 1
	parts[last] = layout.Above(layout.GapY, verdict(c, d, sides, back, width, parts[last]), extraBoxes(c, d, sides, width, true))
	var out []layout.Block
	var frame layout.Block
	for _, p := range parts {
		if !frame.Empty() && frame.H+layout.GapY+p.H > tallFrame {
			out = append(out, framed(c, balloon(c, d), balloonW, frame, width))
			frame = layout.Block{}
		}
		frame = layout.Above(layout.GapY, frame, p)
	}
	out = append(out, framed(c, balloon(c, d), balloonW, frame, width))
	if one := underBalloon(c, d, sides, back, note); len(out) == 1 && !one.Empty() && one.H < out[0].H-0.5 {
		out[0] = one
	}
	return out
}

// underBalloon is a dimension worked out by hand in one frame with the verdict below
// the balloon, where the sums leave its column empty; nothing where the sums do not go
// into what is left.
func underBalloon(c *block.Composer, d *job.Dim, sides []Side, back bool, note string) layout.Block {
	leftW := picture.Width + 3
	width := c.Span - leftW - 2*block.CellPad
	body := layout.Above(layout.GapY, append(handParts(c, d, sides, back, note, width), extraBoxes(c, d, sides, width, true))...)
	if body.W > width+0.01 || len(body.Misfits) > 0 || body.H > tallFrame {
		return layout.Block{}
	}
	left := layout.Above(layout.GapY, balloon(c, d).Fill(leftW, balloon(c, d).H, 0.5, 0), verdictAside(c, d, sides, back, picture.Width).At(1.5, 0))
	return framed(c, left, leftW, body, width)
}

// handParts are the head, the sums for the limits and the boxes, in a width.
func handParts(c *block.Composer, d *job.Dim, sides []Side, back bool, note string, width layout.Mm) []layout.Block {
	parts := []layout.Block{handHead(c, d, back, note, width)}
	parts = append(parts, limitLadders(c, d, *workOf(sides), width)...)
	return append(parts, handBoxes(c, d, sides, width)...)
}

// handHead is the head of a dimension that is worked out; only one that is measured
// as well has a picture.
func handHead(c *block.Composer, d *job.Dim, back bool, note string, width layout.Mm) layout.Block {
	if d.From.Part == nil && d.Of.Part == nil {
		return layout.Above(0.5, append(Head(c, d, note, width), limitLines(c, d, back, width)...)...)
	}
	right := width - picture.Width - block.CellPad
	head := append(Head(c, d, note, right), limitLines(c, d, back, right)...)
	return layout.Beside(block.CellPad, picture.OfDimension(c.Setter, d), layout.Above(0.5, head...))
}

// handBoxes sets the boxes of a reading that is worked out, made up of shims, or
// read off a part as a number: in putting back the value found first.
func handBoxes(c *block.Composer, d *job.Dim, sides []Side, width layout.Mm) []layout.Block {
	s := sides[min(1, len(sides)-1)]
	if d.Shims != nil {
		return shimBoxes(c, d, sides, width)
	}
	if s.work.Formula == nil && d.OneIs == nil {
		return []layout.Block{boxBlock(c, d, sides, width)}
	}
	var out []layout.Block
	if sides[0].Copied && d.Positions.Boxes() == 1 {
		out = append(out, boxRow(c, d, sides[:1], nil, width))
	}
	if s.work.Formula == nil {
		return append(out, stampedBoxes(c, d, s, width))
	}
	out = append(out, ladders(c, d, s.work.Formula, s, width)...)
	if s.work == &d.LeftWork && d.Positions.Boxes() == 1 {
		out[len(out)-1] = layout.Above(layout.GapY, out[len(out)-1], adjustRow(c, d, width))
	}
	return out
}

// workedLaterLine says where a limit is worked out that hangs on a reading not yet taken.
func workedLaterLine(c *block.Composer, d *job.Dim, u *job.Use, width layout.Mm) layout.Block {
	text := c.W.Dimension.WorkedLater.With(PlainWords(c.W, d.Left), u.Dims[0].Mark, c.Page("left "+d.Mark))
	return c.Para(width, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: d.At})
}
