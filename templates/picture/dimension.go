package picture

import (
	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
)

// Measures of the picture of a dimension: the drawing, and the names of the two
// parts above and below it; and of the small one without names.
const (
	Width      layout.Mm = 30
	SmallWidth layout.Mm = 20
	drawingH   layout.Mm = 16.5
	smallH     layout.Mm = 12.2
	viewW      float64   = 36.0 // units of the drawing across
	viewH      float64   = 22.0 // and up
)

// A sketch draws the two faces of one kind of dimension with the arrow between
// them. from and to are the places that the names of the two parts point at.
type sketch struct {
	draw     func(s *draw.Scene, mark layout.Block)
	from, to draw.XY
}

// sketches are the pictures by the kind of a dimension. A kind without a picture
// is printed with the names of its parts alone.
var sketches = map[string]sketch{
	"stand-off":       {standOff, draw.XY{X: 12.5, Y: 15}, draw.XY{X: 28, Y: 7}},
	"gap":             {gap, draw.XY{X: 8, Y: 16}, draw.XY{X: 28, Y: 4}},
	"diameter":        {diameter, draw.XY{X: 13, Y: 15.6}, draw.XY{X: 24, Y: 5}},
	"float":           {float, draw.XY{X: 17, Y: 14}, draw.XY{X: 31, Y: 3}},
	"runout":          {runout, draw.XY{X: 8, Y: 11}, draw.XY{X: 8, Y: 4}},
	"clearance":       {clearance, draw.XY{X: 14.5, Y: 12}, draw.XY{X: 26, Y: 14.7}},
	"clearance-below": {clearanceBelow, draw.XY{X: 14.5, Y: 8}, draw.XY{X: 26, Y: 5.3}},
	"bore":            {bore, draw.XY{X: 18, Y: 16}, draw.XY{X: 18, Y: 4}},
	"depth":           {depth, draw.XY{X: 6, Y: 12}, draw.XY{X: 18, Y: 4.5}},
	"length":          {length, draw.XY{X: 12, Y: 10}, draw.XY{X: 24, Y: 7}},
	"thickness":       {thickness, draw.XY{X: 14, Y: 10}, draw.XY{X: 22, Y: 9}},
	"backlash":        {backlash, draw.XY{X: 14, Y: 14}, draw.XY{X: 18, Y: 3}},
	"angle":           {angle, draw.XY{X: 19, Y: 11.3}, draw.XY{X: 20, Y: 4}},
}

// Drawn reports whether a kind of dimension has a picture.
func Drawn(kind string) bool {
	_, ok := sketches[kind]
	return ok
}

// OfDimension is the drawing of a dimension by its kind, with the names of the parts
// whose faces it lies between above and below.
func OfDimension(s *layout.Setter, d *job.Dim) layout.Block {
	upper, drawing := nameAndDrawing(s, d)
	out := layout.Above(0.3, upper, drawing)
	if drawing.Empty() {
		return out.Fill(Width, upper.H, 0, 0).Drawing(d.Base + " " + d.What)
	}
	out.W = Width
	return out.Drawing(d.Base + " " + d.What)
}

// Small is the drawing of a dimension in little room, without the names of the parts:
// they stand in its head.
func Small(set *layout.Setter, d *job.Dim) layout.Block {
	s := draw.NewScene(draw.View{X1: viewW, Y1: viewH}, SmallWidth, smallH, d.At)
	sketches[d.Kind].draw(s, set.Words(layout.Caption.With(layout.Bold), d.Base))
	return s.Block()
}

// nameAndDrawing is the name of the part that stands above the drawing of a dimension, and
// the drawing with the other name below it.
func nameAndDrawing(set *layout.Setter, d *job.Dim) (upper, below layout.Block) {
	from, to := d.From.Part, d.To.Part
	if from == nil {
		from = d.Of.Part
	}
	if to == from {
		to = nil
	}
	k, drawn := sketches[d.Kind]
	name := func(p *job.Part) layout.Block {
		if p == nil {
			return layout.Block{}
		}
		return set.Para(Width, []layout.Run{layout.T(layout.Caption, p.Name)}, layout.ParaOpts{Align: layout.Centered, Ref: d.At})
	}
	upper, lower := name(from), name(to)
	if !drawn {
		return upper, lower
	}
	s := draw.NewScene(draw.View{X1: viewW, Y1: viewH}, Width, drawingH, d.At)
	k.draw(s, set.Words(layout.Caption.With(layout.Bold), d.Base))
	if !upper.Empty() {
		s.Lines(draw.Thin, draw.XY{X: min(max(k.from.X, 9), viewW-9), Y: viewH}, k.from)
	}
	if !lower.Empty() {
		s.Lines(draw.Thin, draw.XY{X: min(max(k.to.X, 9), viewW-9), Y: 0}, k.to)
	}
	below = layout.Above(0.3, s.Block(), lower)
	below.W = Width
	return upper, below
}

// sectionBox is a part in section: outline and hatching.
func sectionBox(s *draw.Scene, a, b draw.XY, rising bool) {
	s.Hatch(a, b, 1.4, rising)
	s.Box(draw.Thick, layout.Usual, a, b)
}

// standOff: a nut on the end of a shaft, from its outer face to the shaft's end.
func standOff(s *draw.Scene, mark layout.Block) {
	s.Box(draw.Thick, layout.Usual, draw.XY{X: 2, Y: 7}, draw.XY{X: 30, Y: 13})
	s.CenterLine(draw.XY{X: 0, Y: 10}, draw.XY{X: 33, Y: 10})
	sectionBox(s, draw.XY{X: 11, Y: 13}, draw.XY{X: 16, Y: 16.5}, true)
	sectionBox(s, draw.XY{X: 11, Y: 3.5}, draw.XY{X: 16, Y: 7}, false)
	s.Dim(draw.XY{X: 16, Y: 16.5}, draw.XY{X: 30, Y: 16.5}, 1.5, mark)
	s.Lines(draw.Thin, draw.XY{X: 30, Y: 13}, draw.XY{X: 30, Y: 17.5})
}

// gap: two faces that look at each other.
func gap(s *draw.Scene, mark layout.Block) {
	sectionBox(s, draw.XY{X: 3, Y: 4}, draw.XY{X: 14, Y: 16}, true)
	sectionBox(s, draw.XY{X: 22, Y: 4}, draw.XY{X: 33, Y: 16}, false)
	s.Lines(draw.Thin, draw.XY{X: 14, Y: 10}, draw.XY{X: 22, Y: 10})
	s.DoubleArrow(draw.Thin, draw.XY{X: 14, Y: 10}, draw.XY{X: 22, Y: 10})
	s.Label(draw.XY{X: 18, Y: 11}, mark, 0.5, 1)
}

// diameter: a ring measured across, the mark of the top on it.
func diameter(s *draw.Scene, mark layout.Block) {
	m := draw.XY{X: 18, Y: 10}
	s.Ring(draw.Thick, layout.Usual, m, 7.5)
	s.CenterLine(draw.XY{X: 18, Y: 1}, draw.XY{X: 18, Y: 19})
	s.Shape(draw.Thin, layout.Black, draw.XY{X: 17.2, Y: 17.3}, draw.XY{X: 18.8, Y: 17.3}, draw.XY{X: 18.8, Y: 18.9}, draw.XY{X: 17.2, Y: 18.9})
	s.DoubleArrow(draw.Thin, draw.XY{X: 10.5, Y: 10}, draw.XY{X: 25.5, Y: 10})
	s.Label(draw.XY{X: 21.5, Y: 10.4}, mark, 0.5, 1)
}

// float: a shoulder that moves between two faces.
func float(s *draw.Scene, mark layout.Block) {
	s.Box(draw.Thick, layout.Usual, draw.XY{X: 1, Y: 8}, draw.XY{X: 35, Y: 12})
	s.CenterLine(draw.XY{X: 0, Y: 10}, draw.XY{X: 36, Y: 10})
	s.Box(draw.Thick, layout.White, draw.XY{X: 15, Y: 6}, draw.XY{X: 21, Y: 14})
	for _, y := range [][2]float64{{13, 17}, {3, 7}} {
		sectionBox(s, draw.XY{X: 4, Y: y[0]}, draw.XY{X: 10, Y: y[1]}, y[0] > 10)
		sectionBox(s, draw.XY{X: 26, Y: y[0]}, draw.XY{X: 32, Y: y[1]}, y[0] < 10)
	}
	s.DoubleArrow(draw.Thin, draw.XY{X: 21, Y: 15.5}, draw.XY{X: 26, Y: 15.5})
	s.Label(draw.XY{X: 23.5, Y: 16}, mark, 0.5, 1)
}

// runout: a shaft turned under a dial.
func runout(s *draw.Scene, mark layout.Block) {
	s.Box(draw.Thick, layout.Usual, draw.XY{X: 2, Y: 3}, draw.XY{X: 27, Y: 11})
	s.CenterLine(draw.XY{X: 0, Y: 7}, draw.XY{X: 30, Y: 7})
	s.Lines(draw.Thick, draw.XY{X: 18, Y: 11}, draw.XY{X: 18, Y: 13})
	s.Ring(draw.Thick, layout.Usual, draw.XY{X: 18, Y: 16}, 3)
	s.Lines(draw.Thin, draw.XY{X: 18, Y: 16}, draw.XY{X: 19.6, Y: 17.8})
	s.Arc(draw.Thin, draw.XY{X: 31, Y: 7}, 3.5, 200, 340)
	s.Arrow(draw.Thin, draw.XY{X: 29.3, Y: 9.9}, draw.XY{X: 30.2, Y: 10.6})
	s.Label(draw.XY{X: 22.5, Y: 16}, mark, 0, 0.5)
}

// clearance: a roller under its outer ring.
func clearance(s *draw.Scene, mark layout.Block) {
	s.Arc(draw.Thick, draw.XY{X: 18, Y: -6}, 22, -38, 38)
	s.Arc(draw.Thick, draw.XY{X: 18, Y: -6}, 24.5, -38, 38)
	s.Arc(draw.Thick, draw.XY{X: 18, Y: -6}, 11, -45, 45)
	s.Ring(draw.Thick, layout.Usual, draw.XY{X: 18, Y: 9.6}, 4.6)
	s.Arrow(draw.Thin, draw.XY{X: 18, Y: 11}, draw.XY{X: 18, Y: 14.2})
	s.Arrow(draw.Thin, draw.XY{X: 18, Y: 19.4}, draw.XY{X: 18, Y: 16})
	s.Label(draw.XY{X: 24, Y: 9.5}, mark, 0, 0.5)
}

// clearanceBelow: a roller over the bottom of an outer ring that hangs.
func clearanceBelow(s *draw.Scene, mark layout.Block) {
	s.Arc(draw.Thick, draw.XY{X: 18, Y: 26}, 22, 142, 218)
	s.Arc(draw.Thick, draw.XY{X: 18, Y: 26}, 24.5, 142, 218)
	s.Arc(draw.Thick, draw.XY{X: 18, Y: 26}, 11, 135, 225)
	s.Ring(draw.Thick, layout.Usual, draw.XY{X: 18, Y: 10.4}, 4.6)
	s.Arrow(draw.Thin, draw.XY{X: 18, Y: 9}, draw.XY{X: 18, Y: 5.8})
	s.Arrow(draw.Thin, draw.XY{X: 18, Y: 0.6}, draw.XY{X: 18, Y: 4})
	s.Label(draw.XY{X: 24, Y: 10.5}, mark, 0, 0.5)
}
