package picture

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates/words"
)

// The drawing of a lift: a side view and a plan to one scale. What stands in
// them is where the calculation put it; the scale is the largest of the usual ones
// at which both fit.

// Measures of the drawing.
const (
	noteW     layout.Mm = 32 // notes of legs beside the side view
	planEdge  layout.Mm = 8  // room about the plan for the numbers of the picks
	viewGap   layout.Mm = 4
	besideH   layout.Mm = 100 // most height of views beside each other
	stackedH  layout.Mm = 140 // most height of views above each other
	overHook  layout.Mm = 7   // the crane's line above the hook
	underSide layout.Mm = 9   // dimensions below the side view
	ringSize  layout.Mm = 1.3 // a pick
	captionW  layout.Mm = 45  // least width of the line below the plan
)

// drawScales are the scales that stand on a scale rule, as so many units to one.
var drawScales = []float64{1, 2, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 125, 150, 200, 250, 500, 1000}

// A liftView is one view of a lift: what it shows of a point, and the corners of
// what has to go into it.
type liftView struct {
	role       string
	across, up func(p lift.Point) float64
	low, high  draw.XY
}

// see makes the view large enough for a point.
func (v *liftView) see(p lift.Point) {
	x, y := v.across(p), v.up(p)
	v.low.X, v.low.Y = min(v.low.X, x), min(v.low.Y, y)
	v.high.X, v.high.Y = max(v.high.X, x), max(v.high.Y, y)
}

func (v *liftView) at(p lift.Point) draw.XY { return draw.XY{X: v.across(p), Y: v.up(p)} }

func along(axis string) func(lift.Point) float64 {
	return func(p lift.Point) float64 {
		switch axis {
		case "x":
			return float64(p.X)
		case "y":
			return float64(p.Y)
		}
		return float64(p.Z)
	}
}

// A liftPicture draws one lift in its two views.
type liftPicture struct {
	*layout.Setter
	w     *words.Catalogue
	l     *job.Lift
	width layout.Mm // there is for the two views
	scene lift.Scene
	legs  []lift.LegResult
	axis  string // the axis to the right in the side view
	scale float64
}

// Lift sets side view and plan beside each other, or above each other where
// the load is long.
func Lift(s *layout.Setter, w *words.Catalogue, l *job.Lift, width layout.Mm) layout.Block {
	p := &liftPicture{Setter: s, w: w, l: l, width: width}
	if l.ByHand {
		p.scene = l.HandResult.Drawing
	} else {
		p.scene, p.legs = l.Result.Drawing, l.Result.Legs
	}
	p.axis = p.longAxis()
	side := p.view("side", along(p.axis), along("z"))
	plan := p.view("plan", along("x"), along("y"))
	for _, n := range drawScales {
		p.scale = n
		w, h := p.paper(side)
		pw, ph := p.paper(plan)
		w, h = w+2*p.noteEdge(side), h+overHook+underSide
		pw, ph = max(pw+2*planEdge, captionW), ph+2*planEdge
		if w+viewGap+pw <= width && max(h, ph) <= besideH {
			room := width - viewGap - pw
			return layout.Beside(viewGap, p.sideView(side, room, h), p.planView(plan, pw, ph))
		}
		if max(w, pw) <= width && h+ph <= stackedH {
			return layout.Above(2, p.sideView(side, width, h), p.planView(plan, pw, ph).Center(width))
		}
	}
	return layout.Block{}
}

// longAxis is the axis along which the two ends of the machine lie, else that
// along which the picks lie farther apart.
func (p *liftPicture) longAxis() string {
	points := p.scene.Picks
	if len(p.scene.Span) > 0 {
		points = p.scene.Span
	}
	spread := func(of func(lift.Point) float64) float64 {
		low, high := math.Inf(1), math.Inf(-1)
		for _, k := range points {
			low, high = min(low, of(k)), max(high, of(k))
		}
		return high - low
	}
	if spread(along("y")) > spread(along("x")) {
		return "y"
	}
	return "x"
}

// view makes a view that holds the whole lift.
func (p *liftPicture) view(role string, across, up func(lift.Point) float64) *liftView {
	v := &liftView{role: role, across: across, up: up}
	v.low, v.high = v.at(p.scene.CoG), v.at(p.scene.CoG)
	for _, list := range [][]lift.Point{p.scene.Band, p.scene.Picks, p.scene.Bar, p.scene.Outline, p.scene.Span} {
		for _, q := range list {
			v.see(q)
		}
	}
	for _, x := range p.legs {
		v.see(x.From)
		v.see(x.To)
	}
	if p.legs != nil {
		v.see(p.scene.Hook)
	}
	return v
}

// paper is the size of a view on paper.
func (p *liftPicture) paper(v *liftView) (w, h layout.Mm) {
	return layout.Mm((v.high.X - v.low.X) / p.scale), layout.Mm((v.high.Y - v.low.Y) / p.scale)
}

// frame makes a scene of a size on paper at the scale, the view in its middle and
// above room for so much below.
func (p *liftPicture) frame(v *liftView, w, h, above, below layout.Mm) func() *draw.Scene {
	mid := (v.low.X + v.high.X) / 2
	half := float64(w) * p.scale / 2
	top := v.high.Y + float64(above)*p.scale
	view := draw.View{X0: mid - half, X1: mid + half, Y0: v.low.Y - float64(below)*p.scale, Y1: top}
	return func() *draw.Scene { return draw.NewScene(view, w, h, p.l.At) }
}

// sideView draws the lift from the side.
func (p *liftPicture) sideView(v *liftView, w, h layout.Mm) layout.Block {
	fresh := p.frame(v, w, h, overHook, underSide)
	s := fresh()
	p.body(s, v)
	p.bar(s, v)
	p.plumb(s, v)
	p.centre(s, v)
	p.distances(s, v)
	p.ends(s, v)
	if p.l.ByHand {
		p.handNotes(s, v)
	} else {
		p.legNotes(s, v, w)
	}
	caption := p.Para(w, []layout.Run{layout.T(layout.Caption, p.w.Lift.SideView.With(strconv.FormatFloat(p.scale, 'f', -1, 64), p.axis))}, layout.ParaOpts{Align: layout.Centered})
	return layout.Above(1, layout.Overlay(s.Block(), p.legLines(fresh, v, draw.Thick)), caption)
}

// planView draws the lift from above.
func (p *liftPicture) planView(v *liftView, w, h layout.Mm) layout.Block {
	fresh := p.frame(v, w, h, planEdge, planEdge)
	s := fresh()
	p.body(s, v)
	p.bar(s, v)
	p.centre(s, v)
	for i, k := range p.scene.Picks {
		p.number(s, v, i, k)
	}
	caption := p.Para(w, []layout.Run{layout.T(layout.Caption, p.w.Lift.PlanView.With(strconv.FormatFloat(p.scale, 'f', -1, 64))+" "+p.w.Lift.CentreMark)}, layout.ParaOpts{Align: layout.Centered})
	return layout.Above(1, layout.Overlay(s.Block(), p.legLines(fresh, v, draw.Thin)), caption)
}

// legLines draws every leg from its bearing point above to its pick, each an item
// of its own role, so that the drawing can be measured.
func (p *liftPicture) legLines(fresh func() *draw.Scene, v *liftView, pen draw.Pen) layout.Block {
	var all []layout.Block
	for i, x := range p.legs {
		s := fresh()
		s.Lines(pen, v.at(x.From), v.at(x.To))
		b := s.Block()
		b.Items[0].Role = "leg:" + p.l.Mark + ":" + v.role + ":" + strconv.Itoa(i+1)
		all = append(all, b)
	}
	return layout.Overlay(all...)
}

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

// centre draws the centre of gravity and the box within which it may lie.
func (p *liftPicture) centre(s *draw.Scene, v *liftView) {
	if band := p.scene.Band; len(band) > 0 {
		low, high := v.at(band[0]), v.at(band[0])
		for _, q := range band {
			at := v.at(q)
			low = draw.XY{X: min(low.X, at.X), Y: min(low.Y, at.Y)}
			high = draw.XY{X: max(high.X, at.X), Y: max(high.Y, at.Y)}
		}
		s.Box(draw.Pen{Weight: 0.25, Dash: 0.8}, layout.Usual, low, high)
	}
	g, r := v.at(p.scene.CoG), s.Units(1.5)
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
	g := v.across(p.scene.CoG)
	low, high := g, g
	for _, k := range p.scene.Picks {
		low, high = min(low, v.across(k)), max(high, v.across(k))
	}
	y := v.low.Y
	dim := func(a, b float64) {
		if s.Scale()*(b-a) < 8 {
			return
		}
		label := p.Words(layout.Caption, p.l.Length(lift.Mm(b-a)))
		s.Dim(draw.XY{X: b, Y: y}, draw.XY{X: a, Y: y}, 4, label)
	}
	dim(low, g)
	dim(g, high)
}

// ends names the two ends at which the level is looked at.
func (p *liftPicture) ends(s *draw.Scene, v *liftView) {
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
		label := p.Words(layout.Caption, name)
		s.Lines(draw.Thin, draw.XY{X: at.X, Y: at.Y - s.Units(1.5)}, draw.XY{X: at.X, Y: at.Y + s.Units(1.5)})
		// Inside the load above the point, or beside it where it stands at an edge.
		half := s.Units(label.W/2 + 1)
		switch {
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
