package draw

import (
	"math"

	"matchmark/layout"
)

// Sizes of arrows on paper: a slender head, as on machine drawings.
const (
	headLong layout.Mm = 2.4
	headWide layout.Mm = 0.9
)

// Arrow draws a line from a to b with a head at b.
func (s *Scene) Arrow(p Pen, a, b XY) { s.arrow(p, s.At(a), s.At(b), false) }

// DoubleArrow draws a line with a head at both ends.
func (s *Scene) DoubleArrow(p Pen, a, b XY) { s.arrow(p, s.At(a), s.At(b), true) }

func (s *Scene) arrow(p Pen, a, b layout.Point, both bool) {
	s.stroke(layout.Polyline(a, b), p, layout.Usual)
	s.head(a, b)
	if both {
		s.head(b, a)
	}
}

// head draws the head of an arrow that comes from one place and ends at another.
func (s *Scene) head(from, to layout.Point) {
	dx, dy := float64(to.X-from.X), float64(to.Y-from.Y)
	length := math.Hypot(dx, dy)
	if length == 0 {
		return
	}
	ux, uy := layout.Mm(dx/length), layout.Mm(dy/length)
	base := layout.Point{X: to.X - ux*headLong, Y: to.Y - uy*headLong}
	h := headWide / 2
	s.stroke(layout.Polygon(to,
		layout.Point{X: base.X - uy*h, Y: base.Y + ux*h},
		layout.Point{X: base.X + uy*h, Y: base.Y - ux*h}), Pen{}, layout.Black)
}

// Dim draws a dimension between two places: extension lines, a line with heads at
// the distance off to the left of the direction from a to b (in millimetres of
// paper, negative to the right), and the label beside its middle. Where the heads
// would not fit between, they stand outside and point inward.
func (s *Scene) Dim(a, b XY, off layout.Mm, label layout.Block) {
	const overshoot layout.Mm = 1
	p, q := s.At(a), s.At(b)
	dx, dy := float64(q.X-p.X), float64(q.Y-p.Y)
	length := math.Hypot(dx, dy)
	if length == 0 {
		return
	}
	ux, uy := layout.Mm(dx/length), layout.Mm(dy/length)
	// Left of the direction of travel, on paper with y downward.
	nx, ny := uy, -ux
	shift := func(r layout.Point, d layout.Mm) layout.Point {
		return layout.Point{X: r.X + nx*d, Y: r.Y + ny*d}
	}
	end := off + overshoot
	if off < 0 {
		end = off - overshoot
	}
	s.stroke(append(layout.Polyline(p, shift(p, end)), layout.Polyline(q, shift(q, end))...), Thin, layout.Usual)
	p, q = shift(p, off), shift(q, off)
	heads := layout.Mm(length) / 2 // from the middle to the nearer ends of the heads
	if layout.Mm(length) >= 3*headLong {
		heads -= headLong
		s.arrow(Thin, p, q, true)
	} else {
		outP := layout.Point{X: p.X - ux*2*headLong, Y: p.Y - uy*2*headLong}
		outQ := layout.Point{X: q.X + ux*2*headLong, Y: q.Y + uy*2*headLong}
		s.stroke(layout.Polyline(outP, outQ), Thin, layout.Usual)
		s.head(outP, p)
		s.head(outQ, q)
	}
	// The label stands clear of the line by half its own size in the direction of
	// the normal, on the far side of what is measured.
	side := layout.Mm(1)
	if off < 0 {
		side = -1
	}
	const clear layout.Mm = 0.4
	ax, ay := layout.Mm(math.Abs(float64(nx))), layout.Mm(math.Abs(float64(ny)))
	reach := ax*label.W/2 + ay*label.H/2 + clear
	if ay*label.W/2+ax*label.H/2+clear > heads {
		reach += headWide / 2 // it reaches over the heads
	}
	mid := layout.Point{X: (p.X + q.X) / 2, Y: (p.Y + q.Y) / 2}
	s.label(layout.Point{X: mid.X + nx*side*reach, Y: mid.Y + ny*side*reach}, label, 0.5, 0.5)
}
