package svg

import (
	"encoding/xml"
	"strconv"

	"matchmark/layout"
)

// outline gives the outline of a shape.
func (r *reader) outline(t xml.StartElement) ([]layout.Op, error) {
	if t.Name.Local == "path" {
		return r.pathOps(attr(t, "d"))
	}
	var wrong error
	v := func(name string) float64 {
		s := attr(t, name)
		if s == "" {
			return 0
		}
		n, err := strconv.ParseFloat(s, 64)
		if (err != nil || !finite(n)) && wrong == nil {
			wrong = r.fail("%s=%q is not a plain number", name, s)
		}
		return n
	}
	var ops []layout.Op
	switch t.Name.Local {
	case "rect":
		rx, ry := v("rx"), v("ry")
		if rx == 0 {
			rx = ry
		}
		if ry == 0 {
			ry = rx
		}
		w, h := v("width"), v("height")
		ops = rectangle(v("x"), v("y"), w, h, min(rx, w/2), min(ry, h/2))
	case "circle":
		ops = ellipse(v("cx"), v("cy"), v("r"), v("r"))
	case "ellipse":
		ops = ellipse(v("cx"), v("cy"), v("rx"), v("ry"))
	case "polygon", "polyline":
		n, ok := numbers(attr(t, "points"))
		if !ok || len(n)%2 != 0 || len(n) < 6 {
			return nil, r.fail("points=%q are not three points or more", attr(t, "points"))
		}
		for i := 0; i < len(n); i += 2 {
			ops = append(ops, layout.Op{Verb: layout.LineTo, P: pt(n[i], n[i+1])})
		}
		ops[0].Verb = layout.MoveTo
		ops = append(ops, layout.Op{Verb: layout.Close})
	case "text", "tspan":
		return nil, r.fail("text is not printed from a drawing: in the drawing program make paths of it")
	case "image":
		return nil, r.fail("a picture stands in the drawing: use it as PNG by itself, or draw it in paths")
	default:
		return nil, r.fail("<%s> is not printed: in the drawing program make plain filled paths of it", t.Name.Local)
	}
	return ops, wrong
}

func pt(x, y float64) layout.Point { return layout.Point{X: layout.Mm(x), Y: layout.Mm(y)} }

// quarter is how far along the tangent the control points of a quarter of an ellipse
// stand, in parts of its half axis; see layout.Circle.
const quarter = 0.5522847498

// ellipse is the outline of an ellipse about a centre.
func ellipse(cx, cy, rx, ry float64) []layout.Op {
	if rx <= 0 || ry <= 0 {
		return nil
	}
	return rectangle(cx-rx, cy-ry, 2*rx, 2*ry, rx, ry)
}

// rectangle is the outline of a rectangle with its corners round, as a quarter of an
// ellipse each.
func rectangle(x, y, w, h, rx, ry float64) []layout.Op {
	if w <= 0 || h <= 0 {
		return nil
	}
	line := func(x, y float64) layout.Op { return layout.Op{Verb: layout.LineTo, P: pt(x, y)} }
	curve := func(ax, ay, bx, by, x, y float64) layout.Op {
		return layout.Op{Verb: layout.CurveTo, A: pt(ax, ay), B: pt(bx, by), P: pt(x, y)}
	}
	if rx <= 0 || ry <= 0 {
		return []layout.Op{{Verb: layout.MoveTo, P: pt(x, y)}, line(x+w, y), line(x+w, y+h), line(x, y+h), {Verb: layout.Close}}
	}
	kx, ky := rx*(1-quarter), ry*(1-quarter)
	r, b := x+w, y+h
	return []layout.Op{
		{Verb: layout.MoveTo, P: pt(x+rx, y)},
		line(r-rx, y), curve(r-kx, y, r, y+ky, r, y+ry),
		line(r, b-ry), curve(r, b-ky, r-kx, b, r-rx, b),
		line(x+rx, b), curve(x+kx, b, x, b-ky, x, b-ry),
		line(x, y+ry), curve(x, y+ky, x+kx, y, x+rx, y),
		{Verb: layout.Close},
	}
}
