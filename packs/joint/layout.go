package joint

// Where the fasteners of a joint sit, in mm
//
// The frame is that of the drawing: x to the right, y up, the middle of the pattern at 0,
// seen from the side that the fasteners are tightened from. Places are numbered as the
// shape says, from 1.
//
//	circle       clockwise from First (0 is 12 o'clock, 90 is 3 o'clock)
//	rectangle    clockwise from the top left corner, the corners belong to both sides
//	oval         two half circles with straight lines between them, clockwise from the
//	             middle of the top, all at equal distance along the line
//	split line   the upper row from left to right, then the lower from right to left
//	positions    as listed
//
// Geometry. Refused: fewer than one fastener, a shape without its size, two at one place.

import (
	"fmt"
	"math"

	"matchmark/packs/thread"
)

// A Shape is how the fasteners of a joint are laid out.
type Shape uint8

// The shapes.
const (
	Circle Shape = iota + 1
	Rectangle
	Oval
	SplitLine
	Positions
)

// A Point is a place on the joint.
type Point struct{ X, Y thread.Mm }

// A Layout says where the fasteners sit and how they are gone round.
type Layout struct {
	Shape  Shape
	Method Method

	Count         int       // of Circle and Oval
	Diameter      thread.Mm // of Circle: the bolt circle
	First         Degree    // of Circle: where fastener 1 sits, clockwise from 12 o'clock
	Anticlockwise bool      // of Circle: numbered against the clock

	Along, Across int // of Rectangle: fasteners on the long and on the short side, with the corners
	Rows          int // of SplitLine: 1 or 2, with Along fasteners in each

	Length, Width thread.Mm // of Rectangle, Oval and SplitLine: over the middles of the outermost

	Places []Point // of Positions
	Order  []int   // a maker's own order by place numbers, in place of the method's
}

// A Pattern is a layout with its order.
type Pattern struct {
	Places []Point // in the order of their numbers
	Order  []int   // the number of the place that is tightened first, second, …
}

// Clock is how many degrees clockwise from the top a place lies, seen from the middle of all, 0 up
// to 360: for words where the places lie too close to be drawn. Its number counts from 1 and is one
// of the places.
func (p Pattern) Clock(number int) Degree {
	var middle Point
	for _, q := range p.Places {
		middle.X += q.X / thread.Mm(len(p.Places))
		middle.Y += q.Y / thread.Mm(len(p.Places))
	}
	at := p.Places[number-1]
	turned := math.Atan2(float64(at.X-middle.X), float64(at.Y-middle.Y)) * 180 / math.Pi
	return Degree(math.Mod(turned+360, 360))
}

// Pattern lays the fasteners out and finds their order. The error is Refusals.
func (l Layout) Pattern() (Pattern, error) {
	var rs reasons
	places := l.places(&rs)
	if len(rs.Refusals) > 0 {
		return Pattern{}, rs.Err()
	}
	p := Pattern{Places: places}
	if l.Order != nil {
		p.Order = append([]int{}, l.Order...)
		checkOrder(&rs, l.Order, len(places))
	} else {
		p.Order = l.order(places, &rs)
	}
	if len(rs.Refusals) > 0 {
		return Pattern{}, rs.Err()
	}
	return p, nil
}

// Ranks gives for each place when it is tightened: 1 for the first.
func (p Pattern) Ranks() []int {
	out := make([]int, len(p.Order))
	for i, n := range p.Order {
		out[n-1] = i + 1
	}
	return out
}

// Loosening is the order backward.
func (p Pattern) Loosening() []int {
	out := make([]int, len(p.Order))
	for i, n := range p.Order {
		out[len(out)-1-i] = n
	}
	return out
}

// Size gives width and height of the pattern between the middles of its outermost
// fasteners, for drawing it to scale.
func (p Pattern) Size() (width, height thread.Mm) {
	if len(p.Places) == 0 {
		return 0, 0
	}
	low, high := p.Places[0], p.Places[0]
	for _, q := range p.Places {
		low.X, low.Y = min(low.X, q.X), min(low.Y, q.Y)
		high.X, high.Y = max(high.X, q.X), max(high.Y, q.Y)
	}
	return high.X - low.X, high.Y - low.Y
}

// places puts the fasteners on their shape.
func (l Layout) places(rs *reasons) []Point {
	switch l.Shape {
	case Circle:
		if l.counted(rs, "count", l.Count, 1) && l.sized(rs, "diameter", l.Diameter, l.Count > 1) {
			return l.circle()
		}
	case Rectangle:
		if l.counted(rs, "along", l.Along, 2) && l.counted(rs, "across", l.Across, 2) && l.sized(rs, "length", l.Length, true) && l.sized(rs, "width", l.Width, true) {
			return l.rectangle()
		}
	case Oval:
		if l.counted(rs, "count", l.Count, 2) && l.sized(rs, "length", l.Length, true) && l.sized(rs, "width", l.Width, true) {
			return l.oval(rs)
		}
	case SplitLine:
		if l.Rows != 1 && l.Rows != 2 {
			rs.add("rows", "write 1 for a single row, 2 for a row on each side", "%d rows of a split line", l.Rows)
		} else if l.counted(rs, "along", l.Along, 1) && l.sized(rs, "length", l.Length, l.Along > 1) && l.sized(rs, "width", l.Width, l.Rows == 2) {
			return l.splitLine()
		}
	case Positions:
		return l.listed(rs)
	default:
		rs.add("shape", "write circle, rectangle, oval, split line or a list of positions", "the shape of the joint is not told")
	}
	return nil
}

func (l Layout) counted(rs *reasons, field string, n, least int) bool {
	if n >= least && n <= mostCount {
		return true
	}
	rs.add(field, "count them on the joint", "%d fasteners; it takes from %d to %d", n, least, mostCount)
	return false
}

func (l Layout) sized(rs *reasons, field string, mm thread.Mm, needed bool) bool {
	if mm > 0 && !math.IsInf(float64(mm), 0) || !needed && mm == 0 {
		return true
	}
	rs.add(field, "write it in mm or in; without it the pattern cannot be drawn", "the %s of the pattern is %g mm", field, float64(mm))
	return false
}

// at gives a place by its clock angle.
func at(angle float64, radius thread.Mm) Point {
	s, c := math.Sincos(angle * math.Pi / 180)
	return Point{tidy(radius * thread.Mm(s)), tidy(radius * thread.Mm(c))}
}

// tidy takes the rounding of sines out, so that what lies on a line prints on it.
func tidy(mm thread.Mm) thread.Mm { return thread.Mm(math.Round(float64(mm)*1e9)/1e9) + 0 }

func (l Layout) circle() []Point {
	step := 360 / float64(l.Count)
	if l.Anticlockwise {
		step = -step
	}
	out := make([]Point, l.Count)
	for i := range out {
		out[i] = at(float64(l.First)+float64(i)*step, l.Diameter/2)
	}
	return out
}

func (l Layout) rectangle() []Point {
	var out []Point
	x, y := l.Length/2, l.Width/2
	side := func(from, to Point, n int) {
		for i := 0; i < n-1; i++ {
			f := thread.Mm(i) / thread.Mm(n-1)
			out = append(out, Point{tidy(from.X + f*(to.X-from.X)), tidy(from.Y + f*(to.Y-from.Y))})
		}
	}
	side(Point{-x, y}, Point{x, y}, l.Along)
	side(Point{x, y}, Point{x, -y}, l.Across)
	side(Point{x, -y}, Point{-x, -y}, l.Along)
	side(Point{-x, -y}, Point{-x, y}, l.Across)
	return out
}

func (l Layout) oval(rs *reasons) []Point {
	if l.Length < l.Width {
		rs.add("length", "the length is the longer of the two", "an oval %g mm long and %g mm wide", float64(l.Length), float64(l.Width))
		return nil
	}
	r := l.Width / 2
	straight := l.Length - l.Width
	whole := 2*straight + thread.Mm(2*math.Pi)*r
	out := make([]Point, l.Count)
	for i := range out {
		out[i] = onOval(whole*thread.Mm(i)/thread.Mm(l.Count), r, straight)
	}
	return out
}

// onOval goes so far along an oval, clockwise from the middle of its top.
func onOval(way, r, straight thread.Mm) Point {
	arc := thread.Mm(math.Pi) * r
	half := straight / 2
	turned := func(way thread.Mm) float64 { return float64(way/r) * 180 / math.Pi }
	switch {
	case way <= half:
		return Point{tidy(way), tidy(r)}
	case way <= half+arc:
		p := at(turned(way-half), r)
		return Point{tidy(half + p.X), p.Y}
	case way <= half+arc+straight:
		return Point{tidy(half - (way - half - arc)), tidy(-r)}
	case way <= half+2*arc+straight:
		p := at(180+turned(way-half-arc-straight), r)
		return Point{tidy(p.X - half), p.Y}
	}
	return Point{tidy(way - 2*arc - 2*straight), tidy(r)}
}

func (l Layout) splitLine() []Point {
	row := func(y thread.Mm, from, to thread.Mm) []Point {
		out := make([]Point, l.Along)
		for i := range out {
			f := thread.Mm(0.5)
			if l.Along > 1 {
				f = thread.Mm(i) / thread.Mm(l.Along-1)
			}
			out[i] = Point{tidy(from + f*(to-from)), tidy(y)}
		}
		return out
	}
	x := l.Length / 2
	if l.Rows == 1 {
		return row(0, -x, x)
	}
	return append(row(l.Width/2, -x, x), row(-l.Width/2, x, -x)...)
}

// listed takes the places as they are, moved so that their middle is at 0.
func (l Layout) listed(rs *reasons) []Point {
	if !l.counted(rs, "places", len(l.Places), 1) {
		return nil
	}
	for i, p := range l.Places {
		if math.IsNaN(float64(p.X+p.Y)) || math.IsInf(float64(p.X+p.Y), 0) {
			rs.add(fmt.Sprintf("places[%d]", i), "write it in mm", "place %d is not told", i+1)
		}
		for j, q := range l.Places[:i] {
			if math.Hypot(float64(p.X-q.X), float64(p.Y-q.Y)) < 1 {
				rs.add(fmt.Sprintf("places[%d]", i), "measure both again", "places %d and %d are less than 1 mm apart", j+1, i+1)
			}
		}
	}
	low, high := l.Places[0], l.Places[0]
	for _, q := range l.Places {
		low.X, low.Y = min(low.X, q.X), min(low.Y, q.Y)
		high.X, high.Y = max(high.X, q.X), max(high.Y, q.Y)
	}
	out := make([]Point, len(l.Places))
	for i, q := range l.Places {
		out[i] = Point{tidy(q.X - (low.X+high.X)/2), tidy(q.Y - (low.Y+high.Y)/2)}
	}
	return out
}
