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

// page paints the items of one page into a content stream; see store.go
// for why the library does not.
type page struct {
	buf     []byte
	h       float64 // of the page, in points
	now     state
	digests [][sha256.Size]byte // of the document's pictures
	faces   *Faces
	// spaced sets a space behind the text that is painted next.
	spaced bool
	err    error
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
	if p.spaced {
		p.buf = appendCodes(p.buf, t.S+" ")
	} else {
		p.buf = appendCodes(p.buf, t.S)
	}
	p.op(" Tj ET")
}

func (p *page) font(face layout.Face, size layout.Pt) {
	if p.now.size == size && p.now.face == face {
		return
	}
	p.now.face, p.now.size = face, size
	p.buf = append(append(append(p.buf, '/'), fontName(face)...), ' ')
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
