package svg

import (
	"math"
	"strconv"
	"strings"

	"matchmark/layout"
)

// The data of a path: the letters M L H V C S Q T A Z with their numbers (SVG 1.1,
// chapter 8.3); small letters count from the point before. Arcs become cubic curves by
// the implementation notes, appendix F.6.5, a quarter of a turn at most each.

// takes is how many numbers stand behind each letter.
var takes = map[byte]int{'M': 2, 'L': 2, 'H': 1, 'V': 1, 'C': 6, 'S': 4, 'Q': 4, 'T': 2, 'A': 7, 'Z': 0}

// A pen follows the data of a path.
type pen struct {
	ops          []layout.Op
	x, y         float64 // where it is
	fromX, fromY float64 // where the part of the path began
	ctlX, ctlY   float64 // last control point
	after        byte    // letter before, as capital
}

// pathOps reads the data of a path.
func (r *reader) pathOps(d string) ([]layout.Op, error) {
	p := &pen{}
	for s := strings.TrimLeft(d, blanks); s != ""; {
		letter := s[0]
		capital := letter &^ 0x20
		n, known := takes[capital]
		if !known || p.after == 0 && capital != 'M' {
			return nil, r.fail("the path has %q where a letter such as M, L or C should stand", clip(s))
		}
		s = strings.TrimLeft(s[1:], blanks)
		for first := true; first || n > 0 && s != "" && startsNumber(s); first = false {
			var v [7]float64
			for i := range n {
				var ok bool
				if v[i], s, ok = number(s, capital == 'A' && (i == 3 || i == 4)); !ok {
					return nil, r.fail("the path has %q where a number should stand, behind %c", clip(s), letter)
				}
			}
			step := letter
			if capital == 'M' && !first {
				step = 'L' | letter&0x20
			}
			p.step(step, v)
			if len(p.ops) > mostOps {
				return nil, r.fail("the path has over %d steps: make it simpler in the drawing program", mostOps)
			}
		}
	}
	return p.ops, nil
}

const blanks = " \t\r\n\f,"

func clip(s string) string { return s[:min(len(s), 12)] }

func startsNumber(s string) bool { return strings.IndexByte("+-.0123456789", s[0]) >= 0 }

// number cuts the number off that s begins with; a flag of an arc is one digit.
func number(s string, flag bool) (float64, string, bool) {
	i := 0
	digits := func() {
		for i < len(s) && s[i] >= '0' && s[i] <= '9' {
			i++
		}
	}
	if flag {
		if s == "" || s[0] != '0' && s[0] != '1' {
			return 0, s, false
		}
		i = 1
	} else {
		if i < len(s) && (s[i] == '+' || s[i] == '-') {
			i++
		}
		digits()
		if i < len(s) && s[i] == '.' {
			i++
			digits()
		}
		if e := i; i < len(s) && s[i]|0x20 == 'e' {
			i++
			if i < len(s) && (s[i] == '+' || s[i] == '-') {
				i++
			}
			from := i
			if digits(); i == from {
				i = e
			}
		}
	}
	n, err := strconv.ParseFloat(s[:i], 64)
	return n, strings.TrimLeft(s[i:], blanks), err == nil && finite(n)
}

// finite reports whether a number can be printed.
func finite(n float64) bool { return math.Abs(n) < 1e9 }

// numbers reads a list of numbers.
func numbers(s string) (list []float64, ok bool) {
	for s = strings.TrimLeft(s, blanks); s != ""; {
		var n float64
		if n, s, ok = number(s, false); !ok {
			return nil, false
		}
		list = append(list, n)
	}
	return list, true
}

// step carries out one letter.
func (p *pen) step(letter byte, v [7]float64) {
	capital := letter &^ 0x20
	if letter != capital { // from the point before
		for i := range takes[capital] {
			switch {
			case capital == 'H', capital != 'V' && capital != 'A' && i%2 == 0, capital == 'A' && i == 5:
				v[i] += p.x
			case capital != 'A' || i == 6:
				v[i] += p.y
			}
		}
	}
	x, y := p.x, p.y
	switch capital {
	case 'M':
		p.ops = append(p.ops, layout.Op{Verb: layout.MoveTo, P: pt(v[0], v[1])})
		x, y, p.fromX, p.fromY = v[0], v[1], v[0], v[1]
	case 'L':
		x, y = p.line(v[0], v[1])
	case 'H':
		x, y = p.line(v[0], p.y)
	case 'V':
		x, y = p.line(p.x, v[0])
	case 'C':
		x, y = p.cubic(v[0], v[1], v[2], v[3], v[4], v[5])
	case 'S':
		ax, ay := p.mirrored("CS")
		x, y = p.cubic(ax, ay, v[0], v[1], v[2], v[3])
	case 'Q':
		x, y = p.square(v[0], v[1], v[2], v[3])
	case 'T':
		ax, ay := p.mirrored("QT")
		x, y = p.square(ax, ay, v[0], v[1])
	case 'A':
		p.arc(v)
		x, y = v[5], v[6]
	case 'Z':
		p.ops = append(p.ops, layout.Op{Verb: layout.Close})
		x, y = p.fromX, p.fromY
	}
	p.x, p.y, p.after = x, y, capital
}

func (p *pen) line(x, y float64) (float64, float64) {
	p.ops = append(p.ops, layout.Op{Verb: layout.LineTo, P: pt(x, y)})
	return x, y
}

func (p *pen) cubic(ax, ay, bx, by, x, y float64) (float64, float64) {
	p.ops = append(p.ops, layout.Op{Verb: layout.CurveTo, A: pt(ax, ay), B: pt(bx, by), P: pt(x, y)})
	p.ctlX, p.ctlY = bx, by
	return x, y
}

// square is a curve with one control point, which is a cubic one with two of two thirds.
func (p *pen) square(ax, ay, x, y float64) (float64, float64) {
	p.cubic(p.x+(ax-p.x)*2/3, p.y+(ay-p.y)*2/3, x+(ax-x)*2/3, y+(ay-y)*2/3, x, y)
	p.ctlX, p.ctlY = ax, ay
	return x, y
}

// mirrored is the last control point on the other side, where the letter before was one
// of those given.
func (p *pen) mirrored(letters string) (float64, float64) {
	if strings.IndexByte(letters, p.after) < 0 {
		return p.x, p.y
	}
	return 2*p.x - p.ctlX, 2*p.y - p.ctlY
}

// arc draws an arc of an ellipse: half axes, turn in degrees, the larger one, clockwise,
// and where it ends.
func (p *pen) arc(v [7]float64) {
	rx, ry, x, y := math.Abs(v[0]), math.Abs(v[1]), v[5], v[6]
	if rx == 0 || ry == 0 || x == p.x && y == p.y {
		p.line(x, y)
		return
	}
	sin, cos := math.Sincos(v[2] * math.Pi / 180)
	dx, dy := (p.x-x)/2, (p.y-y)/2
	x1, y1 := cos*dx+sin*dy, -sin*dx+cos*dy
	if s := x1*x1/(rx*rx) + y1*y1/(ry*ry); s > 1 { // too small to reach: just large enough
		rx, ry = rx*math.Sqrt(s), ry*math.Sqrt(s)
	}
	q := (rx*rx*ry*ry - rx*rx*y1*y1 - ry*ry*x1*x1) / (rx*rx*y1*y1 + ry*ry*x1*x1)
	q = math.Sqrt(max(q, 0))
	if v[3] == v[4] {
		q = -q
	}
	cx1, cy1 := q*rx*y1/ry, -q*ry*x1/rx
	cx, cy := cos*cx1-sin*cy1+(p.x+x)/2, sin*cx1+cos*cy1+(p.y+y)/2
	from := math.Atan2((y1-cy1)/ry, (x1-cx1)/rx)
	sweep := math.Atan2((-y1-cy1)/ry, (-x1-cx1)/rx) - from
	if v[4] == 1 && sweep < 0 {
		sweep += 2 * math.Pi
	} else if v[4] == 0 && sweep > 0 {
		sweep -= 2 * math.Pi
	}
	n := max(int(math.Ceil(math.Abs(sweep)/(math.Pi/2)-1e-9)), 1)
	part := sweep / float64(n)
	k := 4.0 / 3 * math.Tan(part/4)
	at := func(a, b float64) (float64, float64) {
		return cx + rx*cos*a - ry*sin*b, cy + rx*sin*a + ry*cos*b
	}
	for i := range n {
		s0, c0 := math.Sincos(from + part*float64(i))
		s1, c1 := math.Sincos(from + part*float64(i+1))
		ax, ay := at(c0-k*s0, s0+k*c0)
		bx, by := at(c1+k*s1, s1-k*c1)
		ex, ey := at(c1, s1)
		if i == n-1 {
			ex, ey = x, y
		}
		p.cubic(ax, ay, bx, by, ex, ey)
	}
}
