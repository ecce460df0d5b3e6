package layout

// sign is the drawing of a character that the faces lack, in units of the height
// of a capital, standing on the baseline with y downward.
type sign struct {
	advance float64
	ops     []Op
	weight  float64 // of the stroke; 0 fills the outline
}

// path gives the sign in a style, with the character as its stand-in text.
func (g *sign) path(st Style, ink Ink, text string) Path {
	cap := st.CapHeight()
	p := Path{
		Ops:    scaled(g.ops, cap),
		Weight: Mm(g.weight) * cap,
		Ink:    ink,
		Round:  true,
		Alt:    text, AltWidth: Mm(g.advance) * cap, AltSize: st.Size,
	}
	if g.weight == 0 {
		p.Fill = ink
		if ink == Usual {
			p.Fill = Black
		}
	}
	return p
}

// scaled gives the steps of a path made larger by the factor.
func scaled(ops []Op, by Mm) []Op {
	out := make([]Op, len(ops))
	for i, o := range ops {
		out[i] = Op{
			Verb: o.Verb,
			A:    Point{o.A.X * by, o.A.Y * by},
			B:    Point{o.B.X * by, o.B.Y * by},
			P:    Point{o.P.X * by, o.P.Y * by},
		}
	}
	return out
}

// Polygon is the path through the points, closed at the end.
func Polygon(ps ...Point) []Op {
	return append(Polyline(ps...), Op{Verb: Close})
}

// Polyline is the path through the points, left open.
func Polyline(ps ...Point) []Op {
	ops := make([]Op, 0, len(ps)+1)
	for i, p := range ps {
		v := LineTo
		if i == 0 {
			v = MoveTo
		}
		ops = append(ops, Op{Verb: v, P: p})
	}
	return ops
}

// Circle is the path of a circle, in four cubic curves. The control distance
// 0.5523 of the radius keeps it round within 0.03 % (the usual constant,
// 4/3·(√2−1)).
func Circle(c Point, r Mm) []Op {
	k := r * 0.5522847498
	return []Op{
		{Verb: MoveTo, P: Point{c.X + r, c.Y}},
		{Verb: CurveTo, A: Point{c.X + r, c.Y + k}, B: Point{c.X + k, c.Y + r}, P: Point{c.X, c.Y + r}},
		{Verb: CurveTo, A: Point{c.X - k, c.Y + r}, B: Point{c.X - r, c.Y + k}, P: Point{c.X - r, c.Y}},
		{Verb: CurveTo, A: Point{c.X - r, c.Y - k}, B: Point{c.X - k, c.Y - r}, P: Point{c.X, c.Y - r}},
		{Verb: CurveTo, A: Point{c.X + k, c.Y - r}, B: Point{c.X + r, c.Y - k}, P: Point{c.X + r, c.Y}},
		{Verb: Close},
	}
}

// signs are the drawings, by character.
var signs = map[rune]*sign{
	'⌀': diameter, '∅': diameter,
	'☐': {advance: 1.2, weight: 0.08, ops: square},
	'☑': {advance: 1.2, weight: 0.08, ops: append(square[:len(square):len(square)], tickOps...)},
	'☒': {advance: 1.2, weight: 0.08, ops: append(append(square[:len(square):len(square)],
		Polyline(Point{0.25, -0.8}, Point{0.95, -0.1})...), Polyline(Point{0.95, -0.8}, Point{0.25, -0.1})...)},
	'✓': {advance: 1.1, weight: 0.13, ops: tickOps},
	'✗': {advance: 1.1, weight: 0.13, ops: append(
		Polyline(Point{0.2, -0.85}, Point{0.9, -0.1}), Polyline(Point{0.9, -0.85}, Point{0.2, -0.1})...)},
	'⚠': {advance: 1.35, weight: 0.1, ops: append(append(
		Polygon(Point{0.08, 0}, Point{0.675, -1.05}, Point{1.27, 0}),
		Polyline(Point{0.675, -0.72}, Point{0.675, -0.33})...),
		Polyline(Point{0.675, -0.2}, Point{0.675, -0.13})...)},
	'▶': {advance: 1, ops: Polygon(Point{0.1, -0.95}, Point{0.9, -0.5}, Point{0.1, -0.05})},
	'◀': {advance: 1, ops: Polygon(Point{0.9, -0.95}, Point{0.1, -0.5}, Point{0.9, -0.05})},
	'◆': {advance: 1, ops: Polygon(Point{0.5, -1}, Point{0.95, -0.5}, Point{0.5, 0}, Point{0.05, -0.5})},
}

var (
	diameter = &sign{advance: 1.15, weight: 0.1,
		ops: append(Circle(Point{0.55, -0.5}, 0.42), Polyline(Point{0.1, 0.02}, Point{1, -1.02})...)}
	square  = Polygon(Point{0.1, -0.95}, Point{1.1, -0.95}, Point{1.1, 0.05}, Point{0.1, 0.05})
	tickOps = Polyline(Point{0.2, -0.4}, Point{0.48, -0.1}, Point{0.98, -0.85})
)
