package pdf

import (
	"crypto/sha256"
	"slices"
	"strconv"

	"matchmark/layout"
)

// finishPath fills and strokes what was laid down, by the even-odd rule or, with wind, by
// the non-zero one.
func (p *page) finishPath(fill, stroke, wind bool) {
	switch {
	case fill && stroke && wind:
		p.op("B")
	case fill && wind:
		p.op("f")
	case fill && stroke:
		p.op("B*")
	case fill:
		p.op("f*")
	case stroke:
		p.op("S")
	default:
		p.op("n")
	}
}

func (p *page) rect(x, y layout.Mm, r layout.Rect) {
	if r.Fill != layout.Usual {
		p.fillInk(r.Fill)
	}
	if r.Weight > 0 {
		p.pen(r.Weight, r.Dash, r.Ink)
	}
	p.corners(false)
	if r.Radius > 0 {
		p.steps(x, y, roundRect(r.W, r.H, r.Radius))
	} else {
		p.xy(x, y+r.H)
		p.num(float64(r.W) * ptPerMm)
		p.num(float64(r.H) * ptPerMm)
		p.buf = append(p.buf, "re "...)
	}
	p.finishPath(r.Fill != layout.Usual, r.Weight > 0, false)
}

// roundRect is the outline of a rectangle with round corners.
func roundRect(w, h, r layout.Mm) []layout.Op {
	r = min(r, w/2, h/2)
	k := r * (1 - 0.5522847498) // see layout.Circle
	pt := func(x, y layout.Mm) layout.Point { return layout.Point{X: x, Y: y} }
	line := func(x, y layout.Mm) layout.Op { return layout.Op{Verb: layout.LineTo, P: pt(x, y)} }
	curve := func(a, b, c layout.Point) layout.Op { return layout.Op{Verb: layout.CurveTo, A: a, B: b, P: c} }
	return []layout.Op{
		{Verb: layout.MoveTo, P: pt(r, 0)},
		line(w-r, 0), curve(pt(w-k, 0), pt(w, k), pt(w, r)),
		line(w, h-r), curve(pt(w, h-k), pt(w-k, h), pt(w-r, h)),
		line(r, h), curve(pt(k, h), pt(0, h-k), pt(0, h-r)),
		line(0, r), curve(pt(0, k), pt(k, 0), pt(r, 0)),
		{Verb: layout.Close},
	}
}

// steps lays down a path.
func (p *page) steps(x, y layout.Mm, ops []layout.Op) {
	for _, o := range ops {
		switch o.Verb {
		case layout.MoveTo:
			p.xy(x+o.P.X, y+o.P.Y)
			p.buf = append(p.buf, "m "...)
		case layout.LineTo:
			p.xy(x+o.P.X, y+o.P.Y)
			p.buf = append(p.buf, "l "...)
		case layout.CurveTo:
			p.xy(x+o.A.X, y+o.A.Y)
			p.xy(x+o.B.X, y+o.B.Y)
			p.xy(x+o.P.X, y+o.P.Y)
			p.buf = append(p.buf, "c "...)
		case layout.Close:
			p.buf = append(p.buf, "h "...)
		}
	}
}

func (p *page) path(x, y layout.Mm, s layout.Path) {
	if s.Fill != layout.Usual {
		p.fillInk(s.Fill)
	}
	if s.Weight > 0 {
		p.pen(s.Weight, s.Dash, s.Ink)
	}
	if len(s.Ops) > 0 {
		p.corners(s.Round)
		p.steps(x, y, s.Ops)
		p.finishPath(s.Fill != layout.Usual, s.Weight > 0, s.Wind)
	}
	if s.Alt != "" {
		p.invisible(x, y, s)
	}
}

// invisible writes the text that a drawing stands for, so that it is found and
// copied. It is stretched to the width that the drawing takes in the line.
func (p *page) invisible(x, y layout.Mm, s layout.Path) {
	p.buf = append(p.buf, "BT 3 Tr "...)
	if w := p.faces.Width(layout.Regular, s.AltSize, s.Alt); w > 0 && s.AltWidth > 0 {
		p.num(100 * float64(s.AltWidth/w))
		p.buf = append(p.buf, "Tz "...)
	}
	p.font(layout.Regular, s.AltSize)
	p.xy(x, y)
	p.buf = append(p.buf, "Td "...)
	p.buf = appendCodes(p.buf, s.Alt)
	p.op(" Tj 0 Tr 100 Tz ET")
}

// modules paints a QR symbol as one path of row runs in whole numbers under one
// matrix: neighbouring squares share their edges exactly, so no hairlines show.
func (p *page) modules(x, y layout.Mm, m layout.Modules) {
	if m.Count() == 0 {
		return
	}
	p.fillInk(layout.Black)
	p.buf = append(p.buf, "q "...)
	scale := float64(m.Size) * ptPerMm / float64(m.Count())
	p.buf = appendNum(p.buf, scale, 5)
	p.buf = append(p.buf, "0 0 "...)
	p.buf = appendNum(p.buf, -scale, 5)
	p.xy(x, y)
	p.op("cm")
	for row, bits := range m.Bits() {
		for i := 0; i < len(bits); {
			if !bits[i] {
				i++
				continue
			}
			from := i
			for i < len(bits) && bits[i] {
				i++
			}
			for _, v := range [3]int{from, row, i - from} {
				p.buf = append(strconv.AppendInt(p.buf, int64(v), 10), ' ')
			}
			p.buf = append(p.buf, "1 re\n"...)
		}
	}
	p.op("f Q")
}

// picture paints a stored picture: the library keeps it in a unit square.
func (p *page) picture(x, y layout.Mm, s layout.Image) {
	p.buf = append(p.buf, "q "...)
	p.num(float64(s.W) * ptPerMm)
	p.buf = append(p.buf, "0 0 "...)
	p.num(float64(s.H) * ptPerMm)
	p.xy(x, y+s.H)
	p.buf = append(append(p.buf, "cm /"...), pictureName(slices.Index(p.digests, sha256.Sum256(s.Data)))...)
	p.op(" Do Q")
}
