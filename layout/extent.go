package layout

import "math"

// box is an upright rectangle by two of its corners.
type box struct{ x0, y0, x1, y1 Mm }

// Bounds is the upright box about the item on its page, turn and stroke counted:
// its left, top, right and bottom.
func (i Item) Bounds() (left, top, right, bottom Mm) {
	b := i.Shape.extent()
	if i.Turn == 0 {
		return i.X + b.x0, i.Y + b.y0, i.X + b.x1, i.Y + b.y1
	}
	sin, cos := turnOf(i.Turn)
	left, top = Mm(math.Inf(1)), Mm(math.Inf(1))
	right, bottom = Mm(math.Inf(-1)), Mm(math.Inf(-1))
	for _, c := range [4]Point{{b.x0, b.y0}, {b.x1, b.y0}, {b.x0, b.y1}, {b.x1, b.y1}} {
		x := i.X + c.X*Mm(cos) + c.Y*Mm(sin)
		y := i.Y - c.X*Mm(sin) + c.Y*Mm(cos)
		left, right = min(left, x), max(right, x)
		top, bottom = min(top, y), max(bottom, y)
	}
	return left, top, right, bottom
}

// turnOf gives sine and cosine of an angle in degrees, exact for quarter turns.
func turnOf(deg float64) (sin, cos float64) {
	switch math.Mod(math.Mod(deg, 360)+360, 360) {
	case 0:
		return 0, 1
	case 90:
		return 1, 0
	case 180:
		return 0, -1
	case 270:
		return -1, 0
	}
	return math.Sincos(deg * math.Pi / 180)
}

// The share of the type size that letters may reach above and below the
// baseline: ascent 1935 and descent 432 of 2048 units in the Go fonts.
const (
	riseShare = 1935.0 / 2048
	fallShare = 432.0 / 2048
)

func (t Text) extent() box {
	em := t.Size.Mm()
	return box{0, -em * riseShare, t.Width, em * fallShare}
}

func (l Line) extent() box {
	h := l.Weight / 2
	return box{min(0, l.DX) - h, min(0, l.DY) - h, max(0, l.DX) + h, max(0, l.DY) + h}
}

func (r Rect) extent() box {
	h := r.Weight / 2
	return box{-h, -h, r.W + h, r.H + h}
}

func (i Image) extent() box { return box{0, 0, i.W, i.H} }

// extent of a path is that of its points; a curve stays inside its control
// points, so the box may be a little too big and is never too small.
func (p Path) extent() box {
	b := box{Mm(math.Inf(1)), Mm(math.Inf(1)), Mm(math.Inf(-1)), Mm(math.Inf(-1))}
	add := func(q Point) {
		b.x0, b.x1 = min(b.x0, q.X), max(b.x1, q.X)
		b.y0, b.y1 = min(b.y0, q.Y), max(b.y1, q.Y)
	}
	for _, o := range p.Ops {
		switch o.Verb {
		case CurveTo:
			add(o.A)
			add(o.B)
			add(o.P)
		case MoveTo, LineTo:
			add(o.P)
		}
	}
	if b.x0 > b.x1 {
		return box{}
	}
	h := p.Weight / 2
	return box{b.x0 - h, b.y0 - h, b.x1 + h, b.y1 + h}
}
