// Package svg reads a drawing of filled paths from an SVG file (W3C, Scalable Vector
// Graphics 1.1), such as a site's logo, so that it is printed as sharp as the type. It
// knows paths, simple shapes, groups and transforms, with plain fills; a drawing that
// needs more is refused with the place and what to do, never printed in part.
//
// It is a reader of our own: the libraries for Go that read SVG either leave out in
// silence what they do not know (the small reader of fpdf), or round all points to 1/64
// and draw into pixels (oksvg), or bring a whole engine of drawing along (canvas).
package svg

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"strconv"
	"strings"

	"matchmark/layout"
)

// mostOps is the most steps that the paths of one drawing may have: a logo has some
// hundreds.
const mostOps = 20_000

// An Error is what a drawing has that is not printed, with its line and column.
type Error struct {
	Line, Col int
	What      string // what is wrong, and what to do
}

func (e *Error) Error() string { return fmt.Sprintf("line %d: %s", e.Line, e.What) }

// Is reports whether data could be meant for an SVG file: it begins with a mark of XML.
func Is(data []byte) bool {
	return bytes.HasPrefix(bytes.TrimSpace(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))), []byte("<"))
}

// Block sets a drawing as large as goes into w by h with its sides in proportion. The
// error is an *Error.
func Block(data []byte, w, h layout.Mm, ref layout.Ref) (layout.Block, error) {
	r := &reader{dec: xml.NewDecoder(bytes.NewReader(data))}
	if err := r.read(); err != nil {
		return layout.Block{}, err
	}
	scale := min(w/layout.Mm(r.w), h/layout.Mm(r.h))
	items := make([]layout.Item, 0, len(r.paths))
	for _, p := range r.paths {
		var at layout.Point
		for i := range p.Ops {
			o := &p.Ops[i]
			for _, pt := range []*layout.Point{&o.A, &o.B, &o.P} {
				pt.X, pt.Y = (pt.X-layout.Mm(r.x))*scale, (pt.Y-layout.Mm(r.y))*scale
			}
			from := at
			if at = o.P; !inside(from, *o, layout.Mm(r.w)*scale, layout.Mm(r.h)*scale) {
				return layout.Block{}, &Error{Line: p.line, Col: 1, What: "a path runs out of the view box of the drawing: make the page of the drawing as large as the drawing"}
			}
		}
		items = append(items, layout.Item{Ref: ref, Shape: p.Path})
	}
	return layout.Drawn(layout.Mm(r.w)*scale, layout.Mm(r.h)*scale, items...), nil
}

// inside reports whether a step of a path from a point stays in a box of w by h, a
// hundredth of a millimetre given.
func inside(from layout.Point, o layout.Op, w, h layout.Mm) bool {
	const e = 0.01
	in := func(x, y layout.Mm) bool { return x >= -e && y >= -e && x <= w+e && y <= h+e }
	if o.Verb == layout.Close {
		return true
	}
	if o.Verb != layout.CurveTo {
		return in(o.P.X, o.P.Y)
	}
	const parts = 16
	for i := 1; i <= parts; i++ {
		u := layout.Mm(i) / parts
		v := 1 - u
		a, b, c, d := v*v*v, 3*v*v*u, 3*v*u*u, u*u*u
		if !in(a*from.X+b*o.A.X+c*o.B.X+d*o.P.X, a*from.Y+b*o.A.Y+c*o.B.Y+d*o.P.Y) {
			return false
		}
	}
	return true
}

// A path is an outline with the line of the file that it comes from.
type path struct {
	layout.Path
	line int
}

// A reader reads one drawing. x, y, w and h are its view box, in its own units.
type reader struct {
	dec        *xml.Decoder
	line, col  int // of the element that is being read
	x, y, w, h float64
	paths      []path
	ops        int
}

// A look is what an element hands down to those inside it.
type look struct {
	at   matrix
	fill layout.Ink // Usual for none
	wind bool       // filled by the non-zero rule
}

func (r *reader) fail(format string, args ...any) error {
	return &Error{Line: r.line, Col: r.col, What: fmt.Sprintf(format, args...)}
}

// read reads the whole file.
func (r *reader) read() error {
	stack := []look{{at: identity, fill: layout.Black, wind: true}}
	begun := false
	for {
		r.line, r.col = r.dec.InputPos()
		token, err := r.dec.Token()
		switch {
		case err == io.EOF && (!begun || len(r.paths) == 0):
			return r.fail("nothing is drawn in it")
		case err == io.EOF:
			return nil
		case err != nil:
			r.line, r.col = r.dec.InputPos()
			return r.fail("the file is damaged here, or is no SVG: %s", strings.TrimPrefix(err.Error(), "XML syntax error on "))
		}
		switch t := token.(type) {
		case xml.StartElement:
			if !begun {
				if err := r.begin(t); err != nil {
					return err
				}
				begun = true
			}
			l, skip, err := r.element(t, stack[len(stack)-1])
			if err != nil {
				return err
			}
			if skip {
				if err := r.dec.Skip(); err != nil {
					return r.fail("the file ends within an element")
				}
				continue
			}
			stack = append(stack, l)
		case xml.EndElement:
			stack = stack[:len(stack)-1]
		}
	}
}

// begin reads the size of the drawing.
func (r *reader) begin(t xml.StartElement) error {
	if t.Name.Local != "svg" {
		return r.fail("the file is no SVG drawing: it begins with <%s>", t.Name.Local)
	}
	if box := attr(t, "viewBox"); box != "" {
		n, ok := numbers(box)
		if !ok || len(n) != 4 || n[2] <= 0 || n[3] <= 0 {
			return r.fail("viewBox=%q is not four numbers: left, top, width and height", box)
		}
		r.x, r.y, r.w, r.h = n[0], n[1], n[2], n[3]
		return nil
	}
	var err1, err2 error
	r.w, err1 = strconv.ParseFloat(strings.TrimSuffix(attr(t, "width"), "px"), 64)
	r.h, err2 = strconv.ParseFloat(strings.TrimSuffix(attr(t, "height"), "px"), 64)
	if err1 != nil || err2 != nil || !(r.w > 0 && r.h > 0 && r.w < 1e9 && r.h < 1e9) {
		return r.fail("the drawing does not tell its size: save it with a viewBox")
	}
	return nil
}

// attr is the value of an attribute, empty if it is not written.
func attr(t xml.StartElement, name string) string {
	for _, a := range t.Attr {
		if a.Name.Local == name && a.Name.Space == "" {
			return strings.TrimSpace(a.Value)
		}
	}
	return ""
}

// silent are elements that draw nothing.
var silent = map[string]bool{"title": true, "desc": true, "metadata": true, "defs": true}

// svgSpace is the name space of SVG; an element of another one belongs to the program
// that wrote the file.
const svgSpace = "http://www.w3.org/2000/svg"

// element reads one element. What it hands down is given, or that all inside it is passed
// over.
func (r *reader) element(t xml.StartElement, l look) (look, bool, error) {
	name := t.Name.Local
	if silent[name] || t.Name.Space != "" && t.Name.Space != svgSpace {
		return l, true, nil
	}
	if err := r.styles(t, &l); err != nil {
		return l, false, err
	}
	if name == "svg" || name == "g" {
		return l, false, nil
	}
	ops, err := r.outline(t)
	if err != nil {
		return l, false, err
	}
	if r.ops += len(ops); r.ops > mostOps {
		return l, false, r.fail("the drawing has over %d steps: make it simpler in the drawing program", mostOps)
	}
	if l.fill != layout.Usual && len(ops) > 0 {
		r.paths = append(r.paths, path{layout.Path{Ops: l.at.all(ops), Fill: l.fill, Wind: l.wind}, r.line})
	}
	return l, false, nil
}
