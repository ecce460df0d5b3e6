package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/picture"
	"matchmark/templates/words"
)

// balloonW is the width of the column of the mark in its ring.
const balloonW layout.Mm = 20

// Block is the block of one dimension: balloon and picture in a column on the
// left; beside them what it is and in which state it is taken, the limit, the
// boxes, and the way to leave it empty honestly. That stands in the line of low boxes,
// in a column on the right, beside tall boxes, or below the picture, whichever takes
// the least height.
func Block(c *block.Composer, d *job.Dim, sides []Side, back bool, note string) layout.Block {
	left, leftW := balloon(c, d), balloonW
	if picture.Drawn(d.Kind) {
		left, leftW = pictureColumn(c, d), picture.Width+3
	}
	inner := c.Span - leftW - 2*block.CellPad
	k := content{Composer: c, d: d, sides: sides, back: back, note: note}
	best := framed(c, left, leftW, k.inLine(inner), inner)
	try := func(left, body layout.Block) {
		if body.Empty() {
			return
		}
		if b := framed(c, left, leftW, body, inner); b.H < best.H-0.5 {
			best = b
		}
	}
	for _, width := range []layout.Mm{leastReason, 42} {
		try(left, k.column(inner, width))
	}
	try(left, k.besideBoxes(inner))
	if leftW > balloonW {
		try(layout.Above(layout.GapY, left, verdictAside(c, d, sides, back, picture.Width).At(1.5, 0)), k.plain(inner))
	}
	return best
}

// content sets what stands beside the balloon of a dimension in several ways.
type content struct {
	*block.Composer
	d     *job.Dim
	sides []Side
	back  bool
	note  string
}

// parts are the head of a dimension, its boxes and those worked out from them, in a
// width. Of several rows of boxes the last is given apart, for what has room beside it.
func (k content) parts(width layout.Mm) (head, boxes, extra layout.Block) {
	c, d := k.Composer, k.d
	head = layout.Above(0.5, append(Head(c, d, k.note, width), limitLines(c, d, k.back, width)...)...)
	if d.Positions.Kind == job.Row && len(k.sides) == 1 {
		rows := block.FlowRows(append(positionBoxes(c, d, k.sides[0], d.Positions.Cols), groupBoxes(c, d, k.sides)...), width)
		last := len(rows) - 1
		if boxes = rows[last]; last > 0 {
			head = layout.Above(1.5, head, layout.Above(layout.GapY, rows[:last]...))
		}
	} else {
		boxes = boxBlock(c, d, k.sides, width)
	}
	extra = extraBoxes(c, d, k.sides, width, d.Positions.Kind != job.Row || len(k.sides) > 1)
	if corner, ok := intoCorner(boxes, extra, width); ok && d.Positions.Kind == job.Clock {
		boxes, extra = corner, layout.Block{}
	}
	return head, boxes, extra
}

// plain has no verdict: it stands elsewhere.
func (k content) plain(width layout.Mm) layout.Block {
	head, boxes, extra := k.parts(width)
	return layout.Above(layout.GapY, layout.Above(1.5, head, boxes), extra)
}

// inLine has the verdict in the line of low boxes, or below the boxes.
func (k content) inLine(width layout.Mm) layout.Block {
	head, boxes, extra := k.parts(width)
	return layout.Above(layout.GapY, layout.Above(1.5, head, verdict(k.Composer, k.d, k.sides, k.back, width, boxes)), extra)
}

// column has the verdict in a column on the right, as wide as given; nothing where the
// rest does not go into what is left.
func (k content) column(width, column layout.Mm) layout.Block {
	rest := width - column - layout.GapX
	body := k.plain(rest)
	if body.W > rest+0.01 || len(body.Misfits) > 0 {
		return layout.Block{}
	}
	aside := verdictAside(k.Composer, k.d, k.sides, k.back, column)
	return layout.Beside(layout.GapX, body.Fill(rest, body.H, 0, 0), aside)
}

// besideBoxes has the verdict in the room that tall boxes leave beside them.
func (k content) besideBoxes(width layout.Mm) layout.Block {
	head, boxes, extra := k.parts(width)
	aside := width - boxes.W - layout.GapX
	if aside < leastReason {
		return layout.Block{}
	}
	column := verdictAside(k.Composer, k.d, k.sides, k.back, aside)
	if with := layout.Above(layout.GapY, column, extra); with.W <= aside && with.H <= boxes.H+extra.H {
		column, extra = with, layout.Block{}
	}
	return layout.Above(layout.GapY, layout.Above(1.5, head, layout.Beside(layout.GapX, boxes, column)), extra)
}

// intoCorner puts a small block into the lower right corner of a large one, if the
// large one leaves it free, as the boxes about a clock face do.
func intoCorner(large, small layout.Block, width layout.Mm) (layout.Block, bool) {
	if small.Empty() || small.H > large.H {
		return layout.Block{}, false
	}
	top, x := large.H-small.H, layout.Mm(0)
	for _, it := range large.Items {
		if _, _, right, bottom := it.Bounds(); bottom > top-layout.GapY {
			x = max(x, right+layout.GapX)
		}
	}
	if x+small.W > width {
		return layout.Block{}, false
	}
	return layout.Overlay(large, small.At(x, top)), true
}

// framed puts a frame about the column on the left and the content beside it.
func framed(c *block.Composer, left layout.Block, leftW layout.Mm, content layout.Block, inner layout.Mm) layout.Block {
	content = content.Fill(inner, content.H, 0, 0).Pad(1.5, block.CellPad, block.CellPad, block.CellPad)
	high := max(content.H, left.H+2)
	bar := layout.Drawn(0, high, layout.Item{Shape: layout.Line{DY: high, Weight: layout.Inner}})
	block := layout.Beside(0, left.Fill(leftW, high, 0.5, 0.5), bar, content.Fill(content.W, high, 0, 0)).Border(layout.Rect{Weight: layout.Rule})
	return block.Pad(0, 0, 1, 0)
}

// lowBoxes is the height of one line of boxes with their captions.
const lowBoxes layout.Mm = 16

// leastReason is the least width of the box for why a reading was not taken.
const leastReason layout.Mm = 34

// ring is the mark in a ring.
func ring(c *block.Composer, d *job.Dim) layout.Block {
	mark := c.Words(layout.StepNo, d.Base)
	r := max(mark.W/2+1.5, 5.8)
	ring := layout.Drawn(2*r, 2*r, layout.Item{Shape: layout.Path{Ops: layout.Circle(layout.Point{X: r, Y: r}, r), Weight: layout.Outline}})
	return layout.Overlay(ring, mark.Fill(2*r, 2*r, 0.5, 0.5))
}

// balloon is the mark in a ring, its place below.
func balloon(c *block.Composer, d *job.Dim) layout.Block {
	ring := ring(c, d).Center(balloonW)
	if d.Place.Label == "" {
		return ring
	}
	return layout.Above(1, ring, fullMark(c, d, balloonW-2, layout.Centered).At(1, 0))
}

// pictureColumn is the column of a dimension with a picture: the mark in a ring, beside
// it the part whose face the picture begins at, the picture below them.
func pictureColumn(c *block.Composer, d *job.Dim) layout.Block {
	const besideRing = 17 // units of the drawing that lie below the ring
	upper, below := picture.NameAndDrawing(c.Setter, d, besideRing)
	ring := ring(c, d).At(0.5, 0)
	top := max(ring.H-upper.H, 0) // the name stands right above the line from it
	return layout.Above(0.4, layout.Beside(0.7, ring, upper.Pad(top, 0, 0, 0)), below.At(1.5, 0))
}

// fullMark is the mark with its place, in smaller type where there are two places,
// as in D12/NDE-DIS.
func fullMark(c *block.Composer, d *job.Dim, width layout.Mm, a layout.Align) layout.Block {
	style := layout.SubBold
	text := d.Mark
	if c.Width(style, text) > width {
		style = layout.Caption.With(layout.Bold)
	}
	if c.Width(style, text) > width {
		text = d.Place.Label
	}
	return c.Para(width, []layout.Run{layout.T(style, text)}, layout.ParaOpts{Align: a, Ref: d.At})
}

// Head is what is measured, between which faces, and in which state.
func Head(c *block.Composer, d *job.Dim, note string, width layout.Mm) []layout.Block {
	runs := []layout.Run{layout.T(layout.Strong, d.What)}
	if c.Other != nil && c.Other.DimText(d) != d.What {
		runs = append(runs, layout.T(layout.Sub, "  "+c.Other.DimText(d)))
	}
	if picture.Drawn(d.Kind) && d.Place.Label != "" {
		runs = append([]layout.Run{layout.T(layout.Strong, d.Mark+"  ")}, runs...)
	}
	if f := faces(c.W, d); f != "" {
		runs = append(runs, layout.T(layout.Sub, " — "+f))
	}
	out := []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}
	small := []layout.Run{layout.T(layout.Sub, strings.Join(StateLine(c, d), " · "))}
	if note != "" {
		small = append(small, layout.T(layout.Sub, "  "), layout.Run{Text: note, Style: layout.SubBold, Deco: layout.Inverse})
	}
	out = append(out, c.Para(width, small, layout.ParaOpts{Ref: d.At}))
	if p := d.Adjuster; p != nil && p.LeaveAlone != "" {
		runs := []layout.Run{{Text: c.W.Dimension.LeaveAlone, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Body, " "+p.Name+": "+p.LeaveAlone)}
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: d.At}))
	}
	if d.Note != "" {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Body, d.Note)}, layout.ParaOpts{Ref: d.At}))
	}
	return out
}

// faces words the two faces of a dimension, or the one it is of.
func faces(w *words.Catalogue, d *job.Dim) string {
	one := func(f job.Face) string {
		if f.Name == "" {
			return f.Part.Name
		}
		return w.Dimension.FaceOf.With(f.Name, f.Part.Name)
	}
	switch {
	case d.From.Part != nil && d.To.Part == d.From.Part && d.From.Name != "" && d.To.Name != "":
		return w.Dimension.Between.With(d.From.Name, one(d.To))
	case d.From.Part != nil && d.To.Part != nil:
		return w.Dimension.Between.With(one(d.From), one(d.To))
	case d.Of.Part != nil:
		return one(d.Of)
	case d.Stamped.Part != nil:
		return w.Dimension.StampedOn.With(one(d.Stamped))
	}
	return ""
}

// verdict is the line of the boxes, if they are low enough to stand in it, with
// in or out, the reason why a reading was not taken, and initials.
func verdict(c *block.Composer, d *job.Dim, sides []Side, back bool, width layout.Mm, boxes layout.Block) layout.Block {
	initials := c.Box(layout.RoleInitials, c.W.Common.Initials, d.At)
	ticks := verdictTicks(c, d, sides, back)
	fixed := []layout.Block{ticks, initials}
	rest := width
	for _, b := range append(fixed, boxes) {
		if !b.Empty() {
			rest -= b.W + layout.GapX
		}
	}
	if boxes.H <= lowBoxes && rest >= leastReason {
		return layout.Bottom(layout.GapX, boxes, ticks, c.WideBox(layout.RoleWords, rest, 1, c.W.Common.NotTaken, d.At), initials)
	}
	rest += boxes.W + layout.GapX
	return layout.Above(layout.GapY, boxes, layout.Middle(layout.GapX, ticks, c.WideBox(layout.RoleWords, rest, 1, c.W.Common.NotTaken, d.At), initials))
}

// verdictAside is the verdict in a column beside tall boxes.
func verdictAside(c *block.Composer, d *job.Dim, sides []Side, back bool, width layout.Mm) layout.Block {
	ticks := verdictTicks(c, d, sides, back)
	if ticks.W > width {
		ticks = layout.Block{}
		for _, where := range verdictPlaces(d) {
			list := layout.Above(layout.GapY, verdictList(c, d, sides, back)...)
			ticks = layout.Above(layout.GapY, ticks, placed(c, d, where, list, width))
		}
	}
	return layout.Above(layout.GapY, ticks,
		c.WideBox(layout.RoleWords, min(width, 60), 1, c.W.Common.NotTaken, d.At), c.Box(layout.RoleInitials, c.W.Common.Initials, d.At)).Pad(3, 0, 0, 0)
}

// verdictList are the boxes for what follows from a reading: in or out, and for a
// part found within a limit for old ones whether it goes back.
func verdictList(c *block.Composer, d *job.Dim, sides []Side, back bool) []layout.Block {
	w := c.W
	late := len(sides) > 0 && sides[0].work != nil && sides[0].work.Late != nil
	var words []string
	switch {
	case !back && d.Repair != nil:
		words = []string{w.Dimension.GoesBack, w.Common.Mended, w.Dimension.Renewed}
	case !back && d.Reuse != nil:
		words = []string{w.Dimension.GoesBack, w.Dimension.Renewed}
	case back && !late && d.Reuse != nil && d.Repair == nil:
		words = []string{c.W.Common.InLimits, w.Dimension.OldPartInLimits, c.W.Common.OutOfLimits}
	case late:
	case d.WatchedOnly() && !back, d.Judged() && (!d.FoundIsRecorded() || back && (!d.Left.NeedsFound() || len(sides) > 1)):
		words = []string{c.W.Common.InLimits, c.W.Common.OutOfLimits}
	}
	var ticks []layout.Block
	for _, s := range words {
		ticks = append(ticks, c.Tick(layout.Body, s, d.At))
	}
	return ticks
}

// verdictPlaces names the positions that are judged together: those of each limit, for
// one box to tick does not speak for several limits; one empty name where there is one.
func verdictPlaces(d *job.Dim) []string {
	by := d.LeftBy
	if d.Left == nil {
		by = d.FoundBy
	}
	if len(by) == 0 || d.Reuse != nil {
		return []string{""}
	}
	var out []string
	for _, at := range d.ByLimit(by) {
		if at.Limit.Kind != reading.Record {
			out = append(out, strings.Join(at.Names, ", "))
		}
	}
	return out
}

// verdictTicks sets the boxes of the verdict in a row.
func verdictTicks(c *block.Composer, d *job.Dim, sides []Side, back bool) layout.Block {
	ticks := verdictList(c, d, sides, back)
	if len(ticks) == 0 {
		return layout.Block{}
	}
	var rows []layout.Block
	for _, where := range verdictPlaces(d) {
		rows = append(rows, placed(c, d, where, layout.Middle(layout.GapX, ticks...), placesWide))
	}
	return layout.Above(layout.GapY, rows...).Pad(0, 0, 1.5, 0)
}

// placesWide is how wide the names of positions that are judged together run.
const placesWide layout.Mm = 60

// placed puts the names of the positions that boxes to tick are for above them.
func placed(c *block.Composer, d *job.Dim, where string, ticks layout.Block, width layout.Mm) layout.Block {
	if where == "" || ticks.Empty() {
		return ticks
	}
	return layout.Above(0.5, fitToItems(c.Para(width, []layout.Run{layout.T(layout.SubBold, where)}, layout.ParaOpts{Ref: d.At})), ticks)
}
