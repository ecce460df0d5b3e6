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

// tallest is the height up to which it does so where it takes less height than in two.
const tallest layout.Mm = 165

// handContents sets a dimension that is worked out by hand: its head, the sums for its
// limits, its own sum or its shims, the verdict below them or in a column beside them,
// whichever takes less height. What is too tall for one frame goes on in a second,
// between two sums.
func (k content) handContents() []layout.Block {
	defer k.share()()
	least := k.handFrames()
	if !k.back && len(workOf(k.entries[0].sides).Limits) == 0 {
		return least // it has no boxes beside those of the sums
	}
	k.before = true
	if other := k.handFrames(); summed(other) < summed(least)-0.5 {
		return other
	}
	return least
}

// summed is the height of blocks together.
func summed(bs []layout.Block) (h layout.Mm) {
	for _, b := range bs {
		h += b.H
	}
	return h
}

// handFrames are handContents with the names of single boxes above them, or before.
func (k content) handFrames() []layout.Block {
	width := k.Span - 2*block.CellPad
	parts := k.handPieces(width)
	out := []layout.Block{}
	frame, gap := k.handHead(width), headRoom // no box stands in a head
	whole := layout.Above(headRoom, frame, layout.Above(layout.GapY, parts...))
	for _, p := range parts {
		if whole.H > tallest && frame.H+gap+p.H > tallFrame {
			out = append(out, frame)
			frame, gap = k.shortHead(width), headRoom // the next page may begin here
		}
		frame, gap = layout.Above(gap, frame, p), layout.GapY
	}
	out = append(out, frame)
	if one := k.handBeside(width); !one.Empty() && one.H < summed(out)-0.5 {
		return []layout.Block{one}
	}
	return out
}

// handPieces are the sums of a dimension and last the row with its boxes and its verdict.
func (k content) handPieces(width layout.Mm) []layout.Block {
	e := k.entries[0]
	parts, items := k.handParts(e, width)
	items = append(items, extraItems(k.Composer, e.d, e.sides)...)
	row := k.flow(width, items, k.verdict(e, way{}))
	if low := k.flow(width, items, k.verdict(e, way{stacked: true})); low.h < row.h-0.5 {
		row = low
	}
	return append(parts, layout.Above(layout.GapY, row.make(), warmLine(k.Composer, e.d, writtenSide(e.sides), width)))
}

// shortHead is the head of a dimension where it goes on.
func (k content) shortHead(width layout.Mm) layout.Block {
	runs := []layout.Run{markRun(k.Composer, k.d().Mark, width), layout.T(layout.Strong, "  "+k.d().What)}
	runs = append(runs, k.limitOf(k.d(), false).runs()...)
	return k.Para(width, runs, layout.ParaOpts{Ref: k.d().At})
}

// handBeside has the verdict in a column on the right of the sums; nothing where the sums
// do not go into what is left.
func (k content) handBeside(width layout.Mm) layout.Block {
	e := k.entries[0]
	verdict := k.verdict(e, way{stacked: true})
	aside := widest(verdict)
	if k.reason != (reason{}) {
		aside = max(aside, k.leastReason())
	}
	left := width - aside - layout.GapX
	parts, items := k.handParts(e, left)
	if items = append(items, extraItems(k.Composer, e.d, e.sides)...); len(items) > 0 {
		parts = append(parts, block.FlowRow(items, left))
	}
	body := layout.Above(layout.GapY, append(parts, warmLine(k.Composer, e.d, writtenSide(e.sides), left))...)
	head := k.handHead(width)
	if !body.W.Fits(left) || len(body.Misfits()) > 0 || head.H+headRoom+body.H > tallest {
		return layout.Block{}
	}
	return layout.Above(headRoom, head, layout.Beside(layout.GapX, body.Fill(left, body.H, 0, 0), k.flow(aside, verdict).make()))
}

// handEntry is one of several like places without its head, the verdict below the sums or
// in a column beside them, whichever takes less height.
func (k content) handEntry(e entry, w way, width layout.Mm) sized {
	k.limitTold = true // in the head
	k.before = w.before
	below := k.handRows(e, width, k.verdict(e, w))
	verdict := k.verdict(e, way{stacked: true})
	aside := k.flow(widest(verdict), verdict)
	left := width - aside.w - layout.GapX
	rows := k.handRows(e, left, nil)
	filled := rows
	filled.w, filled.make = left, func() layout.Block { return rows.make().Fill(left, rows.h, 0, 0) }
	if one := beside(layout.GapX, filled, aside); one.misfits == 0 && rows.w.Fits(left) && one.h < below.h-0.5 {
		return one
	}
	return below
}

// widest is the width of the widest of some blocks.
func widest(bs []layout.Block) (w layout.Mm) {
	for _, b := range bs {
		w = max(w, b.W)
	}
	return w
}

// handRows are the sums and boxes of one of several like places, and with them its verdict
// if it does not stand beside them.
func (k content) handRows(e entry, width layout.Mm, verdict []layout.Block) sized {
	set := once(k.tried.byHand, boxesKey{e.d, 0, k.before, width}, func() handSet { return k.handSet(e, width) })
	var rows []sized
	for _, p := range set.parts {
		rows = append(rows, done(p))
	}
	if len(set.items)+len(verdict) > 0 {
		rows = append(rows, k.flow(width, set.items, verdict))
	}
	return above(layout.GapY, append(rows, k.warm(e, width))...)
}

// handSet is what handEntry has in every way.
func (k content) handSet(e entry, width layout.Mm) handSet {
	parts, items := k.handParts(e, width)
	return handSet{parts, append(items, extraItems(k.Composer, e.d, e.sides)...)}
}

// handHead is the head of a dimension that is worked out, with its limit and the table
// that leads to a pack of shims; only one that is measured as well has a picture.
func (k content) handHead(width layout.Mm) layout.Block {
	d, w := k.d(), way{limitInHead: true}
	head := layout.Block{}
	if d.From.Part == nil && d.Of.Part == nil || !picture.Drawn(d.Kind) {
		head = k.head(w, width).make()
	} else {
		for _, pic := range pictures(k.Composer, d) {
			if one := layout.Beside(block.CellPad, pic, k.head(w, width-pic.W-block.CellPad).make()); head.Empty() || one.H < head.H-plain {
				head = one
			}
		}
	}
	if d.Shims != nil && len(d.Shims.Rows) > 0 && k.back {
		head = layout.Above(headRoom, head, k.packTable(width))
	}
	return head
}

// handParts are the sums for the limits and those of the reading, and the boxes that
// stand in one row with the verdict: in putting back the value found first, of a pack of
// shims the ends that its sum must be in.
func (k content) handParts(e entry, width layout.Mm) (parts, items []layout.Block) {
	c, d, sides := k.Composer, e.d, e.sides
	parts, ends := limitLadders(c, d, *workOf(sides), k.before, width)
	limit := k.limitOf(d, k.before).boxesIn(width)
	s := sides[min(1, len(sides)-1)]
	switch {
	case d.Shims != nil:
		rows, last := k.shimBoxes(d, sides, width)
		if !last.Empty() {
			items = append(items, last)
		}
		return append(parts, rows...), append(append(items, limit...), ends...)
	case s.work.Formula == nil && d.OneIs == nil:
		limit, boxes := k.foundFirst(e, limit, boxItems(c, d, sides, k.tables(e), way{before: k.before}, width), k.before, width)
		return parts, append(append(ends, limit...), boxes...)
	}
	items = append(ends, limit...)
	if sides[0].Copied && d.Positions.Boxes() == 1 {
		items = append(items, sideItems(c, d, sides[:1], k.before, width)...)
	}
	if s.work.Formula == nil {
		return append(parts, stampedBoxes(c, d, s, width)), items
	}
	parts = append(parts, ladders(c, d, s.work.Formula, s, k.limitTold, width)...)
	if s.work == &d.LeftWork && d.Positions.Boxes() == 1 {
		items = append(items, adjustItems(c, d, k.before)...)
	}
	return parts, items
}
