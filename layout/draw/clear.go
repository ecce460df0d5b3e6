package draw

import (
	"math"

	"matchmark/layout"
)

// Words stand above the lines of a drawing. Where a line would run through one, the word
// stands in a gap of it, as ISO 129-1 has it for the figures of dimensions.

// clearance is the gap about a word that a line runs through.
const clearance layout.Mm = 0.3

// Put adds a block that was drawn in the same view: its shapes lie under the words.
func (s *Scene) Put(b layout.Block) {
	s.lines = append(s.lines, b.Items()...)
	s.over = append(s.over, b.Misfits()...)
}

// cleared are the words of the drawing, each that a line runs through with its gap.
func (s *Scene) cleared() []layout.Item {
	out := make([]layout.Item, 0, len(s.words))
	for _, it := range s.words {
		if _, isText := it.Shape.(layout.Text); isText && s.struck(it) {
			l, t, r, b := it.Bounds()
			gap := layout.Rect{W: r - l + 2*clearance, H: b - t, Fill: layout.White}
			out = append(out, layout.Item{X: l - clearance, Y: t, Ref: it.Ref, Shape: gap})
		}
	}
	return append(out, s.words...)
}

// struck reports whether a line of the drawing runs through a word. What is filled is no
// line: a number stands in its ring.
func (s *Scene) struck(word layout.Item) bool {
	l, t, r, b := word.Bounds()
	for _, it := range s.lines {
		p, ok := it.Shape.(layout.Path)
		if !ok || p.Weight == 0 || p.Fill != layout.Usual {
			continue
		}
		left, top, right, bottom := it.Bounds()
		if right < l || left > r || bottom < t || top > b {
			continue
		}
		if runsThrough(p.Ops, l-it.X, t-it.Y, r-it.X, b-it.Y) {
			return true
		}
	}
	return false
}

// runsThrough reports whether a path has a piece within a rectangle.
func runsThrough(ops []layout.Op, l, t, r, b layout.Mm) bool {
	var at, start layout.Point
	for _, op := range ops {
		switch op.Verb {
		case layout.MoveTo:
			start = op.P
		case layout.LineTo:
			if crosses(at, op.P, l, t, r, b) {
				return true
			}
		case layout.CurveTo:
			const pieces = 8
			from := at
			for i := 1; i <= pieces; i++ {
				to := onCurve(at, op, float64(i)/pieces)
				if crosses(from, to, l, t, r, b) {
					return true
				}
				from = to
			}
		case layout.Close:
			if crosses(at, start, l, t, r, b) {
				return true
			}
			at = start
			continue
		}
		at = op.P
	}
	return false
}

// onCurve is the point of a cubic curve at a share of its way.
func onCurve(from layout.Point, op layout.Op, u float64) layout.Point {
	mix := func(p, a, b, q layout.Mm) layout.Mm {
		v := 1 - u
		return layout.Mm(v*v*v)*p + layout.Mm(3*v*v*u)*a + layout.Mm(3*v*u*u)*b + layout.Mm(u*u*u)*q
	}
	return layout.Point{X: mix(from.X, op.A.X, op.B.X, op.P.X), Y: mix(from.Y, op.A.Y, op.B.Y, op.P.Y)}
}

// crosses reports whether a straight piece has a point within a rectangle: it is cut off
// at each side in turn (Liang and Barsky).
func crosses(p, q layout.Point, l, t, r, b layout.Mm) bool {
	from, to := 0.0, 1.0
	for _, side := range []struct{ run, room layout.Mm }{
		{p.X - q.X, p.X - l}, {q.X - p.X, r - p.X}, {p.Y - q.Y, p.Y - t}, {q.Y - p.Y, b - p.Y},
	} {
		switch cut := float64(side.room / side.run); {
		case side.run == 0 && side.room < 0:
			return false
		case side.run < 0:
			from = math.Max(from, cut)
		case side.run > 0:
			to = math.Min(to, cut)
		}
	}
	return from < to
}
