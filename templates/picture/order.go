package picture

import (
	"math"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
	"matchmark/packs/joint"
	"matchmark/templates/figure"
	"matchmark/templates/words"
)

// Measures of the drawing of an order: the circles of fasteners, the room about them
// for the mark of 12 o'clock, and the mark.
const (
	boltMost  layout.Mm = 3.4
	boltLeast layout.Mm = 2.1
	boltApart layout.Mm = 0.7 // the white between two circles: those that touch look like a chain
	orderEdge layout.Mm = 3
	orderTop  layout.Mm = 8
	topMark   layout.Mm = 3
)

// Order draws the fasteners of a joint at their places to scale, each with its number
// in the order of tightening; at the top the mark of 12 o'clock. It goes into width
// and height and is empty where the joint has no order, or where the places would lie too
// close for their numbers, or their circles for an eye to part them. scale says in words how
// large it is drawn.
func Order(set *layout.Setter, w *words.Catalogue, j *job.Joint, width, height layout.Mm) (drawing layout.Block, scale string) {
	if j.Order == nil || len(j.Order.Places) < 2 {
		return layout.Block{}, ""
	}
	p := *j.Order
	wide, high := p.Size()
	room := layout.Mm(2) * (boltMost + orderEdge)
	by := min(float64(width-room)/math.Max(float64(wide), 1), float64(height-room-orderTop)/math.Max(float64(high), 1))
	by = 1 / scaleAbove(1/by)
	bolt := min(boltMost, (layout.Mm(nearest(p)*by)-boltApart)/2)
	style := layout.SubBold
	if len(p.Order) > 99 || bolt < 2.7 && len(p.Order) > 9 {
		style = layout.Caption.With(layout.Bold)
	}
	if bolt < boltLeast || set.Width(style, strconv.Itoa(len(p.Order))) > 2*bolt-0.4 {
		return layout.Block{}, ""
	}
	half := draw.XY{X: float64(wide)/2 + float64(boltMost+orderEdge)/by, Y: float64(high)/2 + float64(boltMost+orderEdge)/by}
	word := set.Words(layout.Caption, topWord(w, j))
	half.X = math.Max(half.X, float64(topMark+word.W)/by)
	view := draw.View{X0: -half.X, X1: half.X, Y0: -half.Y, Y1: half.Y + float64(orderTop)/by}
	s := draw.NewScene(view, layout.Mm((view.X1-view.X0)*by), layout.Mm((view.Y1-view.Y0)*by), j.At)
	outline(s, j, p, s.Units(bolt))
	ranks := p.Ranks()
	for i, q := range p.Places {
		at := draw.XY{X: float64(q.X), Y: float64(q.Y)}
		s.Ring(draw.Thick, layout.White, at, s.Units(bolt))
		s.Role("joint:" + j.Mark + ":" + strconv.Itoa(ranks[i]))
		s.Label(at, set.Words(style, strconv.Itoa(ranks[i])), 0.5, 0.5)
	}
	top := float64(high)/2 + s.Units(boltMost+1)
	s.Shape(draw.Pen{}, layout.Black, draw.XY{X: -s.Units(topMark / 2), Y: top + s.Units(topMark)}, draw.XY{X: s.Units(topMark / 2), Y: top + s.Units(topMark)}, draw.XY{Y: top})
	s.Label(draw.XY{X: s.Units(topMark), Y: top + s.Units(topMark/2)}, word, 0, 0.5)
	return trimmed(s.Block()).Drawing(j.Mark + " " + j.What), w.Tightening.Scale.With(figure.Scale(1 / by))
}

// topWord names the mark at the top of a drawing.
func topWord(w *words.Catalogue, j *job.Joint) string {
	if j.Layout.Shape == joint.Circle {
		return w.Tightening.ClockTop
	}
	return w.Tightening.Top
}

// scaleAbove is the nearest scale of a rule that is not larger than asked.
func scaleAbove(n float64) float64 {
	for _, s := range drawScales {
		if s >= n {
			return s
		}
	}
	return math.Ceil(n)
}

// nearest is the least distance between two places.
func nearest(p joint.Pattern) float64 {
	least := math.Inf(1)
	for i, a := range p.Places {
		for _, b := range p.Places[:i] {
			least = math.Min(least, math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y)))
		}
	}
	return least
}

// outline draws the line on which the fasteners sit, each in a circle of a radius bolt, and the
// middle of a circle of them, which ends before theirs begin.
func outline(s *draw.Scene, j *job.Joint, p joint.Pattern, bolt float64) {
	xy := func(q joint.Point) draw.XY { return draw.XY{X: float64(q.X), Y: float64(q.Y)} }
	wide, high := p.Size()
	switch shape := j.Layout.Shape; shape {
	case joint.Circle:
		r := float64(j.Layout.Diameter) / 2
		s.Ring(draw.Hidden, layout.Usual, draw.XY{}, r)
		if arm := min(r/4, r-bolt-s.Units(boltApart)); arm > s.Units(boltApart) {
			s.CenterLine(draw.XY{X: -arm}, draw.XY{X: arm})
			s.CenterLine(draw.XY{Y: -arm}, draw.XY{Y: arm})
		}
	case joint.SplitLine:
		s.CenterLine(draw.XY{X: -float64(wide)/2 - s.Units(4)}, draw.XY{X: float64(wide)/2 + s.Units(4)})
		s.CenterLine(draw.XY{Y: -float64(high)/2 - s.Units(4)}, draw.XY{Y: float64(high)/2 + s.Units(4)})
	case joint.Rectangle, joint.Oval:
		var ps []draw.XY
		for _, q := range append(p.Places[:len(p.Places):len(p.Places)], p.Places[0]) {
			ps = append(ps, xy(q))
		}
		s.Lines(draw.Hidden, ps...)
	}
}
