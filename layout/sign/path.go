package sign

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"matchmark/layout"
)

// part is one stroke or area of a sign, on a field of 100 by 100 with y downward.
// A weight of 0 fills the path. White parts lie on black ones.
type part struct {
	path   string
	weight layout.Mm
	white  bool
}

// drawn keeps each sign in each size in which it was drawn, a handful of each.
var drawn sync.Map

// drawing tells a sign by its name.
type drawing struct {
	name string
	size layout.Mm
}

// items are the parts of a sign in a size, the lowest first, for the caller to write to.
func (d drawing) items(parts func() []part) []layout.Item {
	shapes, known := drawn.Load(d)
	if !known {
		var set []layout.Shape
		for _, p := range parts() {
			set = append(set, p.sized(d.size))
		}
		shapes, _ = drawn.LoadOrStore(d, set)
	}
	all := shapes.([]layout.Shape)
	items := make([]layout.Item, len(all))
	for i, shape := range all {
		items[i].Shape = shape
	}
	return items
}

// sized gives the part at the size of the sign, in millimetres.
func (p part) sized(size layout.Mm) layout.Path {
	ink := layout.Black
	if p.white {
		ink = layout.White
	}
	out := layout.Path{Ops: slices.Clip(parse(p.path, size/100)), Weight: p.weight * size / 100, Ink: ink, Round: true}
	if p.weight == 0 {
		out.Fill = ink
	}
	return out
}

// parse reads a path as in drawing programs: M and L with a point, C with three,
// O with a centre and a radius for a circle, Z to close; numbers parted by
// spaces. The paths are part of the program, so a wrong one is a fault of it.
func parse(path string, scale layout.Mm) []layout.Op {
	var ops []layout.Op
	words := strings.Fields(path)
	number := func() layout.Mm {
		v, err := strconv.ParseFloat(words[0], 64)
		if err != nil {
			panic(fmt.Sprintf("sign path %q: %v", path, err))
		}
		words = words[1:]
		return layout.Mm(v) * scale
	}
	point := func() layout.Point { x := number(); return layout.Point{X: x, Y: number()} }
	for len(words) > 0 {
		verb := words[0]
		words = words[1:]
		switch verb {
		case "M":
			ops = append(ops, layout.Op{Verb: layout.MoveTo, P: point()})
		case "L":
			ops = append(ops, layout.Op{Verb: layout.LineTo, P: point()})
		case "C":
			a, b := point(), point()
			ops = append(ops, layout.Op{Verb: layout.CurveTo, A: a, B: b, P: point()})
		case "O":
			c := point()
			ops = append(ops, layout.Circle(c, number())...)
		case "Z":
			ops = append(ops, layout.Op{Verb: layout.Close})
		default:
			panic(fmt.Sprintf("sign path %q: step %q", path, verb))
		}
	}
	return ops
}
