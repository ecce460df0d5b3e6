package draw

import (
	"math"
	"slices"

	"matchmark/layout"
)

// View is the part of the world that a scene shows, in the scene's own units,
// with X0 < X1 and Y0 < Y1.
type View struct{ X0, Y0, X1, Y1 float64 }

// XY is a place in a scene, in its own units, y upward.
type XY struct{ X, Y float64 }

// Pen is how a line is drawn.
type Pen struct {
	Weight layout.Mm
	Dash   layout.Mm
	Ink    layout.Ink
}

// The pens of machine drawings: outlines, thin lines for dimensions and hatching,
// and dashes for what is hidden.
var (
	Thick  = Pen{Weight: 0.5}
	Thin   = Pen{Weight: 0.2}
	Hidden = Pen{Weight: 0.25, Dash: 1}
)

// Scene collects a drawing. Make one with NewScene.
type Scene struct {
	scale float64 // paper millimetres for one unit
	view  View
	left  layout.Mm
	top   layout.Mm
	ref   layout.Ref
	w, h  layout.Mm
	lines []layout.Item
	words []layout.Item // above all lines
	over  []layout.Misfit
}

// NewScene fits the view into w by h with the largest scale that goes, in the
// middle. A view without an extent is drawn at a scale of 1.
func NewScene(v View, w, h layout.Mm, ref layout.Ref) *Scene {
	s := &Scene{view: v, w: w, h: h, ref: ref, scale: 1}
	dx, dy := v.X1-v.X0, v.Y1-v.Y0
	if dx > 0 || dy > 0 {
		s.scale = math.Inf(1)
		if dx > 0 {
			s.scale = float64(w) / dx
		}
		if dy > 0 {
			s.scale = min(s.scale, float64(h)/dy)
		}
	}
	s.left = (w - layout.Mm(dx*s.scale)) / 2
	s.top = (h - layout.Mm(dy*s.scale)) / 2
	return s
}

// Scale is the length on paper of one unit of the scene, in millimetres.
func (s *Scene) Scale() float64 { return s.scale }

// At gives the place on paper, from the top left corner of the drawing.
func (s *Scene) At(p XY) layout.Point {
	return layout.Point{
		X: s.left + layout.Mm((p.X-s.view.X0)*s.scale),
		Y: s.top + layout.Mm((s.view.Y1-p.Y)*s.scale),
	}
}

// Units gives a length on paper in units of the scene, to place things by paper
// size.
func (s *Scene) Units(m layout.Mm) float64 { return float64(m) / s.scale }

// Block is the drawing so far, w by h.
func (s *Scene) Block() layout.Block {
	b := layout.Drawn(s.w, s.h, append(slices.Clip(s.lines), s.cleared()...)...)
	b.AddMisfits(s.over...)
	return b
}

// add puts a shape with its origin at a place on paper.
func (s *Scene) add(at layout.Point, shape layout.Shape) {
	s.lines = append(s.lines, layout.Item{X: at.X, Y: at.Y, Ref: s.ref, Shape: shape})
}

// stroke adds a path that is already in paper coordinates.
func (s *Scene) stroke(ops []layout.Op, p Pen, fill layout.Ink) {
	s.add(layout.Point{}, layout.Path{Ops: ops, Weight: p.Weight, Dash: p.Dash, Ink: p.Ink, Fill: fill})
}

// points turns places of the scene into places on paper.
func (s *Scene) points(ps []XY) []layout.Point {
	out := make([]layout.Point, len(ps))
	for i, p := range ps {
		out[i] = s.At(p)
	}
	return out
}

// Role gives the shape drawn last a role, so that a drawing can be measured on
// the page. Without a shape it does nothing.
func (s *Scene) Role(role string) {
	if n := len(s.lines); n > 0 {
		s.lines[n-1].Role = role
	}
}

// Lines draws the open line through the places.
func (s *Scene) Lines(p Pen, ps ...XY) { s.stroke(layout.Polyline(s.points(ps)...), p, layout.Usual) }

// Shape draws the closed outline through the places, filled with the ink if it is
// not the zero ink.
func (s *Scene) Shape(p Pen, fill layout.Ink, ps ...XY) {
	s.stroke(layout.Polygon(s.points(ps)...), p, fill)
}

// Box draws an upright rectangle between two corners.
func (s *Scene) Box(p Pen, fill layout.Ink, a, b XY) {
	s.Shape(p, fill, a, XY{b.X, a.Y}, b, XY{a.X, b.Y})
}

// Ring draws a circle.
func (s *Scene) Ring(p Pen, fill layout.Ink, c XY, r float64) {
	s.stroke(layout.Circle(s.At(c), layout.Mm(r*s.scale)), p, fill)
}

// Arc draws the part of a circle from one clock angle clockwise to another, in
// degrees from the top.
func (s *Scene) Arc(p Pen, c XY, r, from, to float64) {
	s.stroke(arc(s.At(c), layout.Mm(r*s.scale), from, to), p, layout.Usual)
}

// arc makes the path of an arc in pieces of at most 45 degrees, for which the
// cubic curve is true to better than a thousandth of the radius.
func arc(c layout.Point, r layout.Mm, from, to float64) []layout.Op {
	n := max(int(math.Ceil(math.Abs(to-from)/45)), 1)
	step := (to - from) / float64(n) * math.Pi / 180
	k := layout.Mm(4.0/3*math.Tan(step/4)) * r
	at := func(a float64) (p, tangent layout.Point) {
		sin, cos := math.Sincos(a)
		return layout.Point{X: c.X + r*layout.Mm(sin), Y: c.Y - r*layout.Mm(cos)},
			layout.Point{X: layout.Mm(cos), Y: layout.Mm(sin)}
	}
	a := from * math.Pi / 180
	p, t := at(a)
	ops := []layout.Op{{Verb: layout.MoveTo, P: p}}
	for range n {
		a += step
		q, u := at(a)
		ops = append(ops, layout.Op{Verb: layout.CurveTo,
			A: layout.Point{X: p.X + k*t.X, Y: p.Y + k*t.Y},
			B: layout.Point{X: q.X - k*u.X, Y: q.Y - k*u.Y}, P: q})
		p, t = q, u
	}
	return ops
}

// CenterLine draws the line of long and short strokes that marks an axis.
func (s *Scene) CenterLine(a, b XY) {
	const long, short, gap = 5, 1, 1
	p, q := s.At(a), s.At(b)
	length := math.Hypot(float64(q.X-p.X), float64(q.Y-p.Y))
	var ops []layout.Op
	along := func(d float64) layout.Point {
		t := layout.Mm(min(d/length, 1))
		return layout.Point{X: p.X + (q.X-p.X)*t, Y: p.Y + (q.Y-p.Y)*t}
	}
	for d, i := 0.0, 0; d < length; i++ {
		run := float64(long)
		if i%2 == 1 {
			run = short
		}
		ops = append(ops, layout.Op{Verb: layout.MoveTo, P: along(d)}, layout.Op{Verb: layout.LineTo, P: along(d + run)})
		d += run + gap
	}
	s.stroke(ops, Thin, layout.Usual)
}

// Hatch fills an upright rectangle with strokes at 45 degrees, pitch millimetres
// of paper apart, and draws no outline. Rising strokes go up to the right; two
// parts that touch are hatched in opposite directions.
func (s *Scene) Hatch(a, b XY, pitch layout.Mm, rising bool) {
	p, q := s.At(a), s.At(b)
	x0, x1 := min(p.X, q.X), max(p.X, q.X)
	y0, y1 := min(p.Y, q.Y), max(p.Y, q.Y)
	step := pitch * math.Sqrt2
	var ops []layout.Op
	// A stroke is the line x+y = c; it is cut off at the sides of the rectangle.
	for c := x0 + y0 + step/2; c < x1+y1; c += step {
		ax, bx := max(x0, c-y1), min(x1, c-y0)
		from, to := layout.Point{X: ax, Y: c - ax}, layout.Point{X: bx, Y: c - bx}
		if !rising {
			from.X, to.X = x0+x1-from.X, x0+x1-to.X
		}
		ops = append(ops, layout.Op{Verb: layout.MoveTo, P: from}, layout.Op{Verb: layout.LineTo, P: to})
	}
	s.stroke(ops, Thin, layout.Usual)
}

// Label sets a block at a place; across and down say which point of the block
// comes there: 0, 0 its top left corner, 0.5, 0.5 its middle. A block that would reach
// out of the drawing is moved into it; one that is larger than the drawing is a misfit.
func (s *Scene) Label(at XY, b layout.Block, across, down float64) {
	s.label(s.At(at), b, across, down)
}

func (s *Scene) label(p layout.Point, b layout.Block, across, down float64) {
	x, y := s.within(b, p.X-b.W*layout.Mm(across), p.Y-b.H*layout.Mm(down))
	for _, it := range b.Items() {
		it.X += x
		it.Y += y
		s.words = append(s.words, it)
	}
	s.over = append(s.over, b.Misfits()...)
}

// slack is how far a label may reach out of the drawing, for rounding.
const slack layout.Mm = 0.01

// within moves a label into the drawing.
func (s *Scene) within(b layout.Block, x, y layout.Mm) (layout.Mm, layout.Mm) {
	for _, over := range []struct {
		kind layout.Kind
		by   layout.Mm
	}{{layout.TooWide, b.W - s.w}, {layout.TooHigh, b.H - s.h}} {
		if over.by > slack {
			s.over = append(s.over, layout.Misfit{Ref: s.ref, Kind: over.kind, Text: textOf(b), Over: over.by})
		}
	}
	return max(min(x, s.w-b.W), 0), max(min(y, s.h-b.H), 0)
}

// textOf is the first text of a label.
func textOf(b layout.Block) string {
	for _, it := range b.Items() {
		if t, ok := it.Shape.(layout.Text); ok {
			return t.S
		}
	}
	return ""
}
