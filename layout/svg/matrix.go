package svg

import (
	"math"
	"strings"

	"matchmark/layout"
)

// A matrix takes a point (x, y) to (ax + cy + e, bx + dy + f).
type matrix struct{ a, b, c, d, e, f float64 }

var identity = matrix{a: 1, d: 1}

// times is the matrix that applies n first and m after it.
func (m matrix) times(n matrix) matrix {
	return matrix{
		m.a*n.a + m.c*n.b, m.b*n.a + m.d*n.b,
		m.a*n.c + m.c*n.d, m.b*n.c + m.d*n.d,
		m.a*n.e + m.c*n.f + m.e, m.b*n.e + m.d*n.f + m.f,
	}
}

// all takes the points of an outline over.
func (m matrix) all(ops []layout.Op) []layout.Op {
	to := func(p layout.Point) layout.Point {
		x, y := float64(p.X), float64(p.Y)
		return pt(m.a*x+m.c*y+m.e, m.b*x+m.d*y+m.f)
	}
	out := make([]layout.Op, len(ops))
	for i, o := range ops {
		out[i] = layout.Op{Verb: o.Verb, A: to(o.A), B: to(o.B), P: to(o.P)}
	}
	return out
}

// transform reads a list of transforms.
func transform(s string) (matrix, bool) {
	m := identity
	for s = strings.Trim(s, blanks); s != ""; s = strings.Trim(s, blanks) {
		name, rest, ok := strings.Cut(s, "(")
		inside, after, closed := strings.Cut(rest, ")")
		n, readable := numbers(inside)
		if !ok || !closed || !readable {
			return m, false
		}
		one, ok := single(strings.TrimSpace(name), n)
		if !ok {
			return m, false
		}
		m, s = m.times(one), after
	}
	for _, v := range []float64{m.a, m.b, m.c, m.d, m.e, m.f} {
		if !finite(v) {
			return m, false
		}
	}
	return m, true
}

// single is one transform.
func single(name string, n []float64) (matrix, bool) {
	switch {
	case name == "matrix" && len(n) == 6:
		return matrix{n[0], n[1], n[2], n[3], n[4], n[5]}, true
	case name == "translate" && len(n) == 1:
		return matrix{1, 0, 0, 1, n[0], 0}, true
	case name == "translate" && len(n) == 2:
		return matrix{1, 0, 0, 1, n[0], n[1]}, true
	case name == "scale" && len(n) == 1:
		return matrix{n[0], 0, 0, n[0], 0, 0}, true
	case name == "scale" && len(n) == 2:
		return matrix{n[0], 0, 0, n[1], 0, 0}, true
	case name == "rotate" && (len(n) == 1 || len(n) == 3):
		sin, cos := math.Sincos(n[0] * math.Pi / 180)
		turn := matrix{cos, sin, -sin, cos, 0, 0}
		if len(n) == 1 {
			return turn, true
		}
		return matrix{1, 0, 0, 1, n[1], n[2]}.times(turn).times(matrix{1, 0, 0, 1, -n[1], -n[2]}), true
	}
	return identity, false
}
