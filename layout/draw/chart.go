package draw

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"matchmark/layout"
)

// Axis is one axis of a chart: the range shown, From < To, and its name with the
// unit.
type Axis struct {
	From, To float64
	Name     string
}

// Series is a line of a chart through its places, with a name set at its end and
// the role that its item on the page has.
type Series struct {
	Pen  Pen
	Name string
	At   []XY
	Role string
}

// Band is the part of a chart between two values of y that is hatched and named,
// such as the values that are not allowed.
type Band struct {
	From, To float64
	Name     string
}

// Span is the part of a chart between two values of x that is hatched and named
// below its top, such as the time in which something must be done.
type Span struct {
	From, To float64
	Name     string
}

// Chart describes a simple chart with straight axes. Field is the role of the frame
// about its axes.
type Chart struct {
	W, H   layout.Mm
	X, Y   Axis
	Series []Series
	Bands  []Band
	Spans  []Span
	Ref    layout.Ref
	Field  string
}

// Block draws the chart, W by H with its labels. An axis without an extent is an
// error; values outside the axes are an error too, for they would be drawn over
// something else.
func (c Chart) Block(s *layout.Setter) (layout.Block, error) {
	if err := c.check(); err != nil {
		return layout.Block{}, err
	}
	const left, right, top, bottom = 14, 24, 5, 11
	in := inner{c: c, s: s, w: c.W - left - right, h: c.H - top - bottom}
	// The axes have different units, so the scene is in millimetres of paper.
	in.sc = NewScene(View{-left, -bottom, float64(c.W) - left, float64(c.H) - bottom}, c.W, c.H, c.Ref)
	in.grid()
	for _, b := range c.Bands {
		lo, hi := in.at(XY{c.X.From, b.From}), in.at(XY{c.X.To, b.To})
		in.sc.Hatch(lo, hi, 2, true)
		in.sc.Label(XY{lo.X + 2, (lo.Y + hi.Y) / 2}, in.word(layout.Sub, b.Name).Border(layout.Rect{Fill: layout.White}), 0, 0.5)
	}
	for _, b := range c.Spans {
		lo, hi := in.at(XY{b.From, c.Y.From}), in.at(XY{b.To, c.Y.To})
		in.sc.Hatch(lo, hi, 2, false)
		in.sc.Label(XY{(lo.X + hi.X) / 2, hi.Y - 1}, in.word(layout.Sub, b.Name).Border(layout.Rect{Fill: layout.White}), 0.5, 0)
	}
	for _, l := range c.Series {
		ps := make([]XY, len(l.At))
		for i, p := range l.At {
			ps[i] = in.at(p)
		}
		in.sc.Lines(l.Pen, ps...)
		in.sc.Role(l.Role)
		if n := len(ps); n > 0 && l.Name != "" {
			in.sc.Label(XY{ps[n-1].X + 1, ps[n-1].Y}, in.word(layout.Sub, l.Name), 0, 0.5)
		}
	}
	in.sc.Box(Thin, layout.Usual, XY{}, XY{float64(in.w), float64(in.h)})
	in.sc.Role(c.Field)
	return in.sc.Block(), nil
}

// check refuses what cannot be drawn.
func (c Chart) check() error {
	for _, a := range []Axis{c.X, c.Y} {
		if !(a.From < a.To) || math.IsInf(a.To-a.From, 0) {
			return fmt.Errorf("axis %q goes from %v to %v", a.Name, a.From, a.To)
		}
	}
	in := func(a Axis, v float64) bool { return v >= a.From && v <= a.To }
	for _, l := range c.Series {
		for _, p := range l.At {
			if !in(c.X, p.X) || !in(c.Y, p.Y) {
				return fmt.Errorf("line %q goes through %v, %v, outside the axes", l.Name, p.X, p.Y)
			}
		}
	}
	for _, b := range c.Bands {
		if !in(c.Y, b.From) || !in(c.Y, b.To) || b.From > b.To {
			return fmt.Errorf("band %q from %v to %v lies outside the axis", b.Name, b.From, b.To)
		}
	}
	for _, b := range c.Spans {
		if !in(c.X, b.From) || !in(c.X, b.To) || b.From > b.To {
			return fmt.Errorf("span %q from %v to %v lies outside the axis", b.Name, b.From, b.To)
		}
	}
	return nil
}

// inner is the field within the axes, its origin in the lower left corner.
type inner struct {
	c    Chart
	s    *layout.Setter
	sc   *Scene
	w, h layout.Mm
}

// at places a pair of values in the field.
func (in inner) at(p XY) XY {
	return XY{
		(p.X - in.c.X.From) / (in.c.X.To - in.c.X.From) * float64(in.w),
		(p.Y - in.c.Y.From) / (in.c.Y.To - in.c.Y.From) * float64(in.h),
	}
}

func (in inner) word(st layout.Style, t string) layout.Block {
	return in.s.Line(0, []layout.Run{layout.T(st, t)}, layout.ParaOpts{Ref: in.c.Ref})
}

// grid draws the light lines at round values, the values, and the axis names.
func (in inner) grid() {
	light := Pen{Weight: layout.Inner, Ink: layout.Faint}
	for _, v := range roundValues(in.c.X, int(in.w/14)) {
		x := in.at(XY{v, in.c.Y.From}).X
		in.sc.Lines(light, XY{x, 0}, XY{x, float64(in.h)})
		in.sc.Label(XY{x, -0.6}, in.word(layout.Caption, number(v)), 0.5, 0)
	}
	for _, v := range roundValues(in.c.Y, int(in.h/9)) {
		y := in.at(XY{in.c.X.From, v}).Y
		in.sc.Lines(light, XY{0, y}, XY{float64(in.w), y})
		in.sc.Label(XY{-1, y}, in.word(layout.Caption, number(v)), 1, 0.5)
	}
	in.sc.Label(XY{float64(in.w), -4.2}, in.word(layout.Sub, in.c.X.Name), 1, 0)
	in.sc.Label(XY{-12, float64(in.h) + 0.6}, in.word(layout.Sub, in.c.Y.Name), 0, 1)
}

// number writes a value on an axis, with the decimal sign of the paper; -0 is 0.
func number(v float64) string {
	return strings.Replace(strconv.FormatFloat(v+0, 'g', 6, 64), ".", string(layout.DecimalMark), 1)
}

// roundValues lists values of the form 1, 2 or 5 times a power of ten within the
// axis, at most about so many.
func roundValues(a Axis, most int) []float64 {
	raw := (a.To - a.From) / float64(max(most, 1))
	pow := math.Pow(10, math.Floor(math.Log10(raw)))
	step := 10 * pow
	for _, m := range []float64{1, 2, 5} {
		if m*pow >= raw*(1-1e-9) {
			step = m * pow
			break
		}
	}
	var out []float64
	for n := math.Ceil(a.From/step - 1e-9); n*step <= a.To+step*1e-9; n++ {
		out = append(out, n*step)
	}
	return out
}
