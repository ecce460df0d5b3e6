package pdf

import (
	"crypto/sha256"
	"fmt"
	"math"
	"strconv"
	"unicode/utf16"

	"matchmark/layout"
)

// ptPerMm turns the millimetres of the page into the points of the file.
const ptPerMm = 72 / 25.4

// state is the part of the graphics state that the painter sets, so that it only
// writes what changes.
type state struct {
	fill, stroke ink
	weight, dash layout.Mm
	round        bool
	face         layout.Face
	size         layout.Pt
}

// ink is a tone as the state holds it; its zero value is none yet.
type ink uint8

// page paints the items of one page into a content stream; see skeleton.go
// for why the library does not.
type page struct {
	buf   []byte
	h     float64 // of the page, in points
	now   state
	names *skeleton
	faces *Faces
	err   error
}

// begin starts a page of the given height.
func (p *page) begin(h layout.Mm) {
	p.buf = p.buf[:0]
	p.h = float64(h) * ptPerMm
	p.now = state{weight: -1, dash: -1, size: -1}
}

// num writes a number with three decimals: a ten-thousandth of a millimetre is
// far finer than any printer.
func (p *page) num(v float64) {
	p.buf = appendNum(p.buf, v, 3)
	if math.IsNaN(v) || math.Abs(v) > 1e5 {
		p.fail(fmt.Errorf("a length on the page is %v points", v))
	}
}

func (p *page) fail(err error) {
	if p.err == nil {
		p.err = err
	}
}

// appendNum writes v rounded to so many decimals, and a space.
func appendNum(b []byte, v float64, decimals int) []byte {
	pow := int64(1)
	for range decimals {
		pow *= 10
	}
	n := int64(math.Round(v * float64(pow)))
	if n < 0 {
		b = append(b, '-')
		n = -n
	}
	b = strconv.AppendInt(b, n/pow, 10)
	if frac := n % pow; frac != 0 {
		b = append(b, '.')
		for frac != 0 {
			b = append(b, byte('0'+frac*10/pow))
			frac = frac * 10 % pow
		}
	}
	return append(b, ' ')
}

func (p *page) op(s string) { p.buf = append(append(p.buf, s...), '\n') }

// xy writes a place on the page; the file counts y upward.
func (p *page) xy(x, y layout.Mm) {
	p.num(float64(x) * ptPerMm)
	p.num(p.h - float64(y)*ptPerMm)
}

// fillInk and strokeInk set the tone if it is another than now.
func (p *page) fillInk(i layout.Ink) {
	if n := ink(i) + 1; p.now.fill != n {
		p.now.fill = n
		p.num(i.Level())
		p.op("g")
	}
}

func (p *page) strokeInk(i layout.Ink) {
	if n := ink(i) + 1; p.now.stroke != n {
		p.now.stroke = n
		p.num(i.Level())
		p.op("G")
	}
}

// pen sets the stroke.
func (p *page) pen(weight, dash layout.Mm, i layout.Ink) {
	p.strokeInk(i)
	if p.now.weight != weight {
		p.now.weight = weight
		p.num(float64(weight) * ptPerMm)
		p.op("w")
	}
	if p.now.dash == dash {
		return
	}
	p.now.dash = dash
	if dash == 0 {
		p.op("[] 0 d")
		return
	}
	p.buf = append(p.buf, '[')
	p.num(float64(dash) * ptPerMm)
	p.op("] 0 d")
}

// corners sets how strokes end and turn. A page starts with straight ones.
func (p *page) corners(round bool) {
	if p.now.round == round {
		return
	}
	p.now.round = round
	if round {
		p.op("1 J 1 j")
	} else {
		p.op("0 J 0 j")
	}
}

// item paints one item.
func (p *page) item(it layout.Item) {
	if t, ok := it.Shape.(layout.Text); ok {
		p.text(it, t)
		return
	}
	x, y := it.X, it.Y
	if it.Turn != 0 {
		// The turned shape is painted about the page's own corner, which the
		// matrix moves to the shape's place.
		before := p.now
		sin, cos := math.Sincos(it.Turn * math.Pi / 180)
		p.op("q")
		p.matrix(cos, sin, x, y)
		top := p.h
		p.h, x, y = 0, 0, 0
		defer func() {
			p.op("Q")
			p.h, p.now = top, before
		}()
	}
	switch s := it.Shape.(type) {
	case layout.Line:
		p.corners(false)
		p.pen(s.Weight, s.Dash, s.Ink)
		p.xy(x, y)
		p.buf = append(p.buf, 'm', ' ')
		p.xy(x+s.DX, y+s.DY)
		p.op("l S")
	case layout.Rect:
		p.rect(x, y, s)
	case layout.Path:
		p.path(x, y, s)
	case layout.Modules:
		p.modules(x, y, s)
	case layout.Image:
		p.picture(x, y, s)
	}
}

// matrix turns what follows by the angle about the place.
func (p *page) matrix(cos, sin float64, x, y layout.Mm) {
	for _, v := range [4]float64{cos, sin, -sin, cos} {
		p.buf = appendNum(p.buf, v, 5)
	}
	p.xy(x, y)
	p.op("cm")
}

// text writes one line of text. Codes are UTF-16, as the library's fonts expect.
func (p *page) text(it layout.Item, t layout.Text) {
	if t.S == "" {
		return
	}
	p.fillInk(t.Ink)
	p.buf = append(p.buf, "BT "...)
	p.font(t.Face, t.Size)
	if it.Turn == 0 {
		p.xy(it.X, it.Y)
		p.buf = append(p.buf, "Td "...)
	} else {
		sin, cos := math.Sincos(it.Turn * math.Pi / 180)
		for _, v := range [4]float64{cos, sin, -sin, cos} {
			p.buf = appendNum(p.buf, v, 5)
		}
		p.xy(it.X, it.Y)
		p.buf = append(p.buf, "Tm "...)
	}
	p.buf = appendCodes(p.buf, t.S)
	p.op(" Tj ET")
}

func (p *page) font(face layout.Face, size layout.Pt) {
	if p.now.size == size && p.now.face == face {
		return
	}
	p.now.face, p.now.size = face, size
	p.buf = append(append(append(p.buf, '/'), p.names.fonts[face]...), ' ')
	p.num(float64(size))
	p.buf = append(p.buf, "Tf "...)
}

// appendCodes writes a string of two-byte codes. Brackets and backslashes are
// escaped, and so is the carriage return, which readers turn into a line feed.
func appendCodes(b []byte, s string) []byte {
	b = append(b, '(')
	for _, r := range s {
		for _, c := range [2]byte{byte(r >> 8), byte(r)} {
			switch c {
			case '(', ')', '\\':
				b = append(b, '\\', c)
			case '\r':
				b = append(b, '\\', 'r')
			default:
				b = append(b, c)
			}
		}
	}
	return append(b, ')')
}

// finishPath fills and strokes what was laid down, by the even-odd rule.
func (p *page) finishPath(fill, stroke bool) {
	switch {
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
	p.finishPath(r.Fill != layout.Usual, r.Weight > 0)
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
		p.finishPath(s.Fill != layout.Usual, s.Weight > 0)
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
	p.buf = append(append(p.buf, "cm /"...), p.names.pictures[sha256.Sum256(s.Data)]...)
	p.op(" Do Q")
}

// appendUTF16 writes a text string of the document information: UTF-16 with its
// mark, in hexadecimal.
func appendUTF16(b []byte, s string) []byte {
	const hex = "0123456789ABCDEF"
	b = append(b, "<FEFF"...)
	for _, u := range utf16.Encode([]rune(s)) {
		b = append(b, hex[u>>12], hex[u>>8&15], hex[u>>4&15], hex[u&15])
	}
	return append(b, '>')
}
