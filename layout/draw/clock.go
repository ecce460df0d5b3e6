package draw

import (
	"cmp"
	"math"
	"slices"

	"matchmark/layout"
)

// Place is a position on a clock face: its angle in degrees from the top,
// clockwise, a label set inside the ring, and the box to write in.
type Place struct {
	Angle float64
	Label string
	Box   layout.Block
}

// Clock draws a ring of the radius with a tick at each place and the boxes about
// it, no two of them closer than the gaps between write-in boxes. A thin line
// leads from the tick to a box that does not stand right before it. A mark at the
// top stands for the reference mark of the machine.
func Clock(s *layout.Setter, r layout.Mm, places []Place, mark bool, ref layout.Ref) layout.Block {
	at := boxesAbout(r, places)
	edge := r + 1.5 + Thick.Weight/2 // the outer ends of the ticks
	x0, y0, x1, y1 := -edge, -edge, edge, edge
	if mark {
		y0 = -r - markH
	}
	for i, p := range at {
		x0, x1 = min(x0, p.X), max(x1, p.X+places[i].Box.W)
		y0, y1 = min(y0, p.Y), max(y1, p.Y+places[i].Box.H)
	}
	// One unit is a millimetre, the ring's centre the origin, y upward.
	sc := NewScene(View{float64(x0), -float64(y1), float64(x1), -float64(y0)}, x1-x0, y1-y0, ref)
	sc.Ring(Thick, layout.Usual, XY{}, float64(r))
	ext := float64(r) * 0.25
	sc.CenterLine(XY{-ext, 0}, XY{ext, 0})
	sc.CenterLine(XY{0, -ext}, XY{0, ext})
	if mark {
		h := float64(markH)
		sc.Box(Pen{}, layout.Black, XY{-h / 2, float64(r) - 0.3}, XY{h / 2, float64(r) + h})
	}
	for i, p := range places {
		u := XY{math.Sin(p.Angle * math.Pi / 180), math.Cos(p.Angle * math.Pi / 180)}
		tick(sc, u, float64(r))
		leader(sc, u, float64(r), at[i], p.Box, len(places) == quarters)
		if p.Label != "" {
			b := s.Line(0, []layout.Run{layout.T(layout.Sub, p.Label)}, layout.ParaOpts{Ref: ref})
			in := float64(r) - 1.8 - math.Abs(u.X)*float64(b.W)/2 - math.Abs(u.Y)*float64(b.H)/2
			sc.Label(XY{u.X * in, u.Y * in}, b, 0.5, 0.5)
		}
		sc.label(layout.Point{X: at[i].X - x0, Y: at[i].Y - y0}, p.Box, 0, 0)
	}
	return sc.Block()
}

// markH is the size of the reference mark on a ring.
const markH layout.Mm = 2.4

// tick crosses the ring in the direction u.
func tick(sc *Scene, u XY, r float64) {
	sc.Lines(Thick, XY{u.X * (r - 1.5), u.Y * (r - 1.5)}, XY{u.X * (r + 1.5), u.Y * (r + 1.5)})
}

// leader draws the thin line from a tick to its box, unless the box stands right
// before the tick; always if it must.
func leader(sc *Scene, u XY, r float64, at layout.Point, b layout.Block, must bool) {
	x0, x1 := float64(at.X), float64(at.X+b.W)
	y0, y1 := -float64(at.Y+b.H), -float64(at.Y)
	from := XY{u.X * (r + 1.5), u.Y * (r + 1.5)}
	// The point of the box that is nearest to the tick, on the side's middle.
	to := XY{min(max(from.X, x0), x1), min(max(from.Y, y0), y1)}
	if must || math.Hypot(to.X-from.X, to.Y-from.Y) > 4.5 {
		to.Y = (y0 + y1) / 2
		sc.Lines(Thin, from, to)
	}
}

// nearReach is how far from the ring boxes may stand and still plainly belong to
// their ticks.
const nearReach layout.Mm = 10

// boxesAbout gives the top left corner of each box, from the ring's centre, y
// downward. Boxes stand in the directions of their places as long as this keeps
// them near the ring; many boxes go into columns beside it.
func boxesAbout(r layout.Mm, places []Place) []layout.Point {
	out := make([]layout.Point, len(places))
	if len(places) == quarters {
		return inQuarters(r, places)
	}
	for reach := r + 4.5; reach <= r+nearReach; reach++ {
		for i, p := range places {
			sin, cos := math.Sincos(p.Angle * math.Pi / 180)
			// The box touches the circle of the reach with its nearer side.
			d := reach + layout.Mm(math.Abs(sin))*p.Box.W/2 + layout.Mm(math.Abs(cos))*p.Box.H/2
			out[i] = layout.Point{X: d*layout.Mm(sin) - p.Box.W/2, Y: -d*layout.Mm(cos) - p.Box.H/2}
		}
		if clear(out, places) {
			return out
		}
	}
	return inColumns(r, places)
}

// quarters is the number of places that stand two by two beside the ring.
const quarters = 4

// inQuarters sets four boxes beside the ring, two by two, in the order of the clock from
// the upper right: each stands in the quarter that follows its place.
func inQuarters(r layout.Mm, places []Place) []layout.Point {
	reach := r + 5
	out := make([]layout.Point, quarters)
	for i, p := range places {
		b := p.Box
		out[i] = layout.Point{X: reach, Y: -b.H - layout.GapY/2}
		if i == 1 || i == 2 {
			out[i].Y = layout.GapY / 2
		}
		if i > 1 {
			out[i].X = -reach - b.W
		}
	}
	return out
}

// inColumns stacks the boxes of the right half beside the ring from top to
// bottom, those of the left half likewise, each column about the ring's middle. A
// place at the very top or bottom belongs to the right column.
func inColumns(r layout.Mm, places []Place) []layout.Point {
	out := make([]layout.Point, len(places))
	for _, side := range []layout.Mm{1, -1} {
		var col []int
		var tall layout.Mm
		for i, p := range places {
			if (math.Sin(p.Angle*math.Pi/180) > -1e-9) == (side > 0) {
				col = append(col, i)
				tall += p.Box.H + layout.GapY
			}
		}
		slices.SortStableFunc(col, func(i, j int) int {
			return cmp.Compare(math.Cos(places[j].Angle*math.Pi/180), math.Cos(places[i].Angle*math.Pi/180))
		})
		y := -(tall - layout.GapY) / 2
		for _, i := range col {
			x := r + nearReach
			if side < 0 {
				x = -x - places[i].Box.W
			}
			out[i] = layout.Point{X: x, Y: y}
			y += places[i].Box.H + layout.GapY
		}
	}
	return out
}

// clear tells whether no two boxes come closer than the gaps between write-in
// boxes.
func clear(at []layout.Point, places []Place) bool {
	for i := range at {
		for j := range i {
			a, b := places[i].Box, places[j].Box
			apartX := max(at[i].X-at[j].X-b.W, at[j].X-at[i].X-a.W)
			apartY := max(at[i].Y-at[j].Y-b.H, at[j].Y-at[i].Y-a.H)
			if apartX < layout.GapX && apartY < layout.GapY {
				return false
			}
		}
	}
	return true
}
