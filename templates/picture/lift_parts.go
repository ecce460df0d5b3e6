package picture

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/lift"
)

// body draws the load: the outline of the box that it fills, or the lines between
// its picks.
func (p *liftPicture) body(s *draw.Scene, v *liftView) {
	points := p.scene.Outline
	pen := draw.Pen{Weight: 0.35}
	if len(points) == 0 {
		points = append(slices.Clone(p.scene.Picks), p.scene.CoG)
		pen = draw.Hidden
	}
	var flat []draw.XY
	for _, q := range points {
		flat = append(flat, v.at(q))
	}
	if shape := hull(flat); len(shape) > 2 {
		s.Shape(pen, layout.Usual, shape...)
	} else {
		s.Lines(pen, shape...)
	}
	for _, k := range p.scene.Picks {
		s.Ring(draw.Pen{}, layout.Black, v.at(k), s.Units(ringSize/2))
	}
}

// hull is the outline about points in a plane, counter-clockwise.
func hull(ps []draw.XY) []draw.XY {
	ps = slices.Clone(ps)
	sort.Slice(ps, func(i, j int) bool {
		if ps[i].X != ps[j].X {
			return ps[i].X < ps[j].X
		}
		return ps[i].Y < ps[j].Y
	})
	ps = slices.Compact(ps)
	if len(ps) < 3 {
		return ps
	}
	turn := func(a, b, c draw.XY) float64 { return (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X) }
	half := func(ps []draw.XY) []draw.XY {
		var out []draw.XY
		for _, q := range ps {
			for len(out) > 1 && turn(out[len(out)-2], out[len(out)-1], q) <= 0 {
				out = out[:len(out)-1]
			}
			out = append(out, q)
		}
		return out[:len(out)-1]
	}
	lower := half(ps)
	slices.Reverse(ps)
	return append(lower, half(ps)...)
}

// bar draws the spreader or beam.
func (p *liftPicture) bar(s *draw.Scene, v *liftView) {
	if b := p.scene.Bar; len(b) == 2 {
		s.Lines(draw.Pen{Weight: 1.2}, v.at(b[0]), v.at(b[1]))
		if p.l.Plan.Rig == lift.Beam && v.role == "side" {
			s.Lines(draw.Thick, v.at(b[0]), v.at(p.scene.Hook), v.at(b[1]))
		}
	}
}

// hooks are the bearing points above all legs: one, or two.
func (p *liftPicture) hooks() []lift.Point {
	if p.l.Plan.Rig == lift.TwoHooks {
		return []lift.Point{p.legs[0].From, p.legs[1].From}
	}
	return []lift.Point{p.scene.Hook}
}

// plumb draws the crane's line, the hook, and the plumb line down through the
// centre of gravity.
func (p *liftPicture) plumb(s *draw.Scene, v *liftView) {
	g := v.at(p.scene.CoG)
	if p.l.ByHand {
		return
	}
	for _, h := range p.hooks() {
		at := v.at(h)
		s.Lines(draw.Pen{Weight: 0.35}, draw.XY{X: at.X, Y: at.Y + s.Units(overHook)}, at)
		s.Ring(draw.Thick, layout.White, at, s.Units(1.1))
	}
	if p.l.Plan.Rig != lift.TwoHooks {
		at := v.at(p.scene.Hook)
		s.CenterLine(at, draw.XY{X: g.X, Y: v.low.Y - s.Units(2)})
		s.Label(draw.XY{X: at.X + s.Units(2), Y: at.Y + s.Units(3)}, p.Words(layout.Caption, p.w.Lift.Hook), 0, 0.5)
	}
}

// discR is the radius of the disc of the centre of gravity, and seenR how far a box about it
// reaches from its middle at the least where it is seen behind the disc.
const (
	discR layout.Mm = 1.5
	seenR layout.Mm = 2
)

// band is the box within which the centre of gravity may lie, in a view; not ok where it is
// not drawn: nothing is told of it, or the disc covers it.
func (p *liftPicture) band(v *liftView) (low, high draw.XY, ok bool) {
	g := v.at(p.scene.CoG)
	low, high = g, g
	for _, q := range p.scene.Band {
		at := v.at(q)
		low = draw.XY{X: min(low.X, at.X), Y: min(low.Y, at.Y)}
		high = draw.XY{X: max(high.X, at.X), Y: max(high.Y, at.Y)}
	}
	reach := max(g.X-low.X, high.X-g.X, g.Y-low.Y, high.Y-g.Y)
	return low, high, reach >= float64(seenR)*p.scale
}

// centreMark says how the centre of gravity is drawn, and the box where it may lie where one
// is seen.
func (p *liftPicture) centreMark() string {
	text := p.w.Lift.CentreMark
	for _, v := range []*liftView{p.view("side", coordinate(p.axis), coordinate("z")), p.view("plan", coordinate("x"), coordinate("y"))} {
		if _, _, ok := p.band(v); ok {
			return text + " " + p.w.Lift.BandMark
		}
	}
	return text
}

// centre draws the centre of gravity and the box within which it may lie.
func (p *liftPicture) centre(s *draw.Scene, v *liftView) {
	if low, high, ok := p.band(v); ok {
		s.Box(draw.Pen{Weight: 0.25, Dash: 0.8}, layout.Usual, low, high)
	}
	g, r := v.at(p.scene.CoG), s.Units(discR)
	s.Ring(draw.Pen{Weight: 0.3}, layout.White, g, r)
	for _, quarter := range []float64{0, 180} {
		var ps []draw.XY
		for a := quarter; a <= quarter+90; a += 15 {
			sin, cos := math.Sincos(a * math.Pi / 180)
			ps = append(ps, draw.XY{X: g.X + r*cos, Y: g.Y + r*sin})
		}
		s.Shape(draw.Pen{}, layout.Black, append(ps, g)...)
	}
}

// distances draws how far the outermost picks lie from the plumb line.
func (p *liftPicture) distances(s *draw.Scene, v *liftView) {
	spans := p.spans(v)
	labels := [2]layout.Block{p.distance(spans[0]), p.distance(spans[1])}
	between := s.Scale() * (spans[1][1] - spans[0][0]) / 2
	left, right := apart(labels[0], labels[1], layout.Mm(between))
	for i, d := range spans {
		if s.Scale()*(d[1]-d[0]) >= leastDistance {
			s.Dim(draw.XY{X: d[1], Y: v.low.Y}, draw.XY{X: d[0], Y: v.low.Y}, 4, [2]layout.Block{left, right}[i])
		}
	}
}

// labelGap is the white between two labels beside each other.
const labelGap layout.Mm = 1.5

// apart gives two labels whose middles lie so far from each other, padded on their inner sides
// where they would run together.
func apart(left, right layout.Block, between layout.Mm) (l, r layout.Block) {
	short := labelGap - (between - (left.W+right.W)/2)
	if short <= 0 {
		return left, right
	}
	return left.Pad(0, short, 0, 0), right.Pad(0, 0, 0, short)
}

// spans are the ways from the centre of gravity to the outermost picks of either side.
func (p *liftPicture) spans(v *liftView) [2][2]float64 {
	g := v.across(p.scene.CoG)
	low, high := g, g
	for _, k := range p.scene.Picks {
		low, high = min(low, v.across(k)), max(high, v.across(k))
	}
	return [2][2]float64{{low, g}, {g, high}}
}

// distance is the label of a span.
func (p *liftPicture) distance(d [2]float64) layout.Block {
	return p.Words(layout.Caption, p.l.Print(lift.Mm(d[1]-d[0]).Size()))
}

// clearGap is the room between two distances beside each other that are read apart.
const clearGap = 2.5

// leastDistance is the least way on paper, in millimetres, that is dimensioned.
const leastDistance = 8

// roomForDistances reports whether the spans have such room.
func (p *liftPicture) roomForDistances(v *liftView, room LiftRoom) bool {
	for _, d := range p.spans(v) {
		least := map[LiftRoom]float64{DrawnRoom: leastDistance}[room]
		if room == ClearRoom {
			least = float64(p.distance(d).W) + clearGap
		}
		if wide := d[1] - d[0]; wide > 0 && wide/p.scale < least {
			return false
		}
	}
	return true
}

// endName is the most width of the name of an end of the load.
const endName layout.Mm = 26

// ends names the two ends at which the level is looked at, in a view so wide: beside the load
// with a leader that ends at the point, where there is room for it.
func (p *liftPicture) ends(s *draw.Scene, v *liftView, w layout.Mm) {
	span := p.l.Load().Span
	if span == nil {
		return
	}
	left, right := v.high.X, v.low.X
	for _, q := range p.scene.Outline {
		left, right = min(left, v.across(q)), max(right, v.across(q))
	}
	for i, q := range p.scene.Span {
		at := v.at(q)
		name := span.NameA
		if i == 1 {
			name = span.NameB
		}
		label := fitted(p.Setter, layout.Caption, name, endName, layout.ParaOpts{Ref: p.l.At})
		s.Lines(draw.Thin, draw.XY{X: at.X, Y: at.Y - s.Units(1.5)}, draw.XY{X: at.X, Y: at.Y + s.Units(1.5)})
		// Inside the load above the point, or beside it where it stands at an edge.
		half := s.Units(label.W/2 + 1)
		mid, room := (v.low.X+v.high.X)/2, s.Units(w/2-label.W-2.5)
		switch {
		case at.X > v.across(p.scene.CoG) && right <= mid+room && at.X+half > right-s.Units(label.W/2):
			s.Lines(draw.Thin, at, draw.XY{X: right + s.Units(2), Y: at.Y})
			s.Label(draw.XY{X: right + s.Units(2.5), Y: at.Y}, label, 0, 0.5)
		case at.X < v.across(p.scene.CoG) && left >= mid-room && at.X-half < left+s.Units(label.W/2):
			s.Lines(draw.Thin, at, draw.XY{X: left - s.Units(2), Y: at.Y})
			s.Label(draw.XY{X: left - s.Units(2.5), Y: at.Y}, label, 1, 0.5)
		case at.X-half > left && at.X+half < right:
			s.Label(draw.XY{X: at.X, Y: at.Y + s.Units(2)}, label, 0.5, 1)
		case at.X > v.across(p.scene.CoG):
			s.Label(draw.XY{X: at.X + s.Units(1.5), Y: at.Y}, label, 0, 0.5)
		default:
			s.Label(draw.XY{X: at.X - s.Units(1.5), Y: at.Y}, label, 1, 0.5)
		}
	}
}

// number draws the number of the leg at its pick, outside the load.
func (p *liftPicture) number(s *draw.Scene, v *liftView, i int, k lift.Point) {
	at, g := v.at(k), v.at(p.scene.CoG)
	dx, dy := at.X-g.X, at.Y-g.Y
	size := math.Hypot(dx, dy)
	if size == 0 {
		dx, size = 1, 1
	}
	out := s.Units(4)
	m := draw.XY{X: at.X + dx/size*out, Y: at.Y + dy/size*out}
	s.Ring(draw.Thin, layout.White, m, s.Units(2))
	n := i + 1 + len(p.l.Plan.TopLegs)
	s.Label(m, p.Words(layout.Caption, strconv.Itoa(n)), 0.5, 0.5)
}
