package templates

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/stock"
)

// TestPages gives a page of each stock in use: the outline of every label, and on the
// first one rulers in millimetres across and down, for seeing whether the printer scales
// or shifts before labels are spoilt.
func TestPages(o Options) []Roll {
	c := &composer{paper: o.Paper, tagging: o.Tags}
	var out []Roll
	for _, u := range []stock.Use{stock.Hang, stock.Box, stock.Bag} {
		s := c.stockFor(u)
		g := grid(s)
		g.Marks = true
		labels := make([]layout.Block, s.PerPage())
		for i := range labels {
			labels[i] = outline(s, i == 0)
		}
		out = append(out, Roll{Name: s.Name, Doc: &layout.Doc{Title: s.Name, Pages: g.Impose("test", labels, 0).Frames}})
	}
	return out
}

// outline is the edge of a label with its hole, and rulers from its upper left corner.
func outline(s stock.Stock, ruled bool) layout.Block {
	w, h := layout.Mm(s.W), layout.Mm(s.H)
	items := []layout.Item{{Shape: layout.Rect{W: w, H: h, Weight: layout.Inner, Radius: layout.Mm(s.Corner)}}}
	if s.Hole > 0 {
		items = append(items, layout.Item{Shape: layout.Path{Weight: layout.Inner, Ops: layout.Circle(layout.Point{X: w / 2, Y: layout.Mm(s.HoleAt)}, layout.Mm(s.Hole)/2)}})
	}
	if !ruled {
		return layout.Drawn(w, h, items...)
	}
	p := layout.Path{Weight: layout.Inner}
	stroke := func(x0, y0, x1, y1 layout.Mm) {
		p.Ops = append(p.Ops, layout.Op{Verb: layout.MoveTo, P: layout.Point{X: x0, Y: y0}}, layout.Op{Verb: layout.LineTo, P: layout.Point{X: x1, Y: y1}})
	}
	number := func(n int, x, y layout.Mm) {
		items = append(items, layout.Item{X: x, Y: y, Shape: layout.Text{S: strconv.Itoa(n), Face: layout.Regular, Size: layout.Caption.Size}})
	}
	const at layout.Mm = 5 // the rulers lie so far inside the edges
	for mm := 0; mm <= int(w); mm++ {
		stroke(layout.Mm(mm), at, layout.Mm(mm), at+tickOf(mm))
		if mm%10 == 0 && mm > 0 && mm < int(w) {
			number(mm, layout.Mm(mm)-1.2, at+6.5)
		}
	}
	for mm := 0; mm <= int(h); mm++ {
		stroke(at, layout.Mm(mm), at+tickOf(mm), layout.Mm(mm))
		if mm%10 == 0 && mm > 10 && mm < int(h) {
			number(mm, at+4.6, layout.Mm(mm)+0.9)
		}
	}
	items = append(items, layout.Item{Shape: p})
	return layout.Drawn(w, h, items...)
}

// tickOf is how long the stroke of a ruler is: longer at fives and tens.
func tickOf(mm int) layout.Mm {
	switch {
	case mm%10 == 0:
		return 4
	case mm%5 == 0:
		return 3
	}
	return 1.8
}
