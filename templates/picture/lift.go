package picture

import (
	"math"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/templates/figure"
	"matchmark/templates/words"
)

// The drawing of a lift: a side view and a plan to one scale. What stands in
// them is where the calculation put it; the scale is the largest of the usual ones
// at which both fit.

// Measures of the drawing.
const (
	noteW       layout.Mm = 26 // notes of legs beside the side view
	handW       layout.Mm = 32 // those of people's hands
	planEdge    layout.Mm = 8  // room about the plan for the numbers of the picks
	viewGap     layout.Mm = 4
	besideH     layout.Mm = 64 // height of views beside each other, if they go into it
	stackedH    layout.Mm = 84 // height of views above each other
	besideMost  layout.Mm = 72
	stackedMost layout.Mm = 96
	overHook    layout.Mm = 7   // the crane's line above the hook
	underSide   layout.Mm = 9   // dimensions below the side view
	ringSize    layout.Mm = 1.3 // a pick
	captionW    layout.Mm = 38  // least width of the line below the plan
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

// include makes the view large enough for a point.
func (v *liftView) include(p lift.Point) {
	x, y := v.across(p), v.up(p)
	v.low.X, v.low.Y = min(v.low.X, x), min(v.low.Y, y)
	v.high.X, v.high.Y = max(v.high.X, x), max(v.high.Y, y)
}

func (v *liftView) at(p lift.Point) draw.XY { return draw.XY{X: v.across(p), Y: v.up(p)} }

// coordinate gives the part of a point along an axis.
func coordinate(axis string) func(lift.Point) float64 {
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

// LiftRoom is how much room the distances to the picks must have in the drawing of a lift.
type LiftRoom int

// From no room, with which short ones are left out, to labels that stand clear.
const (
	AnyRoom LiftRoom = iota
	DrawnRoom
	ClearRoom
)

// Lift sets side view and plan beside each other, or above each other where
// the load is long. It is empty where the distances to the picks have less room in the
// width.
func Lift(s *layout.Setter, w *words.Catalogue, l *job.Lift, width layout.Mm, room LiftRoom) layout.Block {
	p := &liftPicture{Setter: s, w: w, l: l, width: width}
	if l.ByHand {
		p.scene = l.HandResult.Drawing
	} else {
		p.scene, p.legs = l.Result.Drawing, l.Result.Legs
	}
	p.axis = p.longAxis()
	// As low as the distances go into it, else higher.
	for _, most := range [][2]layout.Mm{{besideH, stackedH}, {besideMost, stackedMost}} {
		if b := p.views(room, most[0], most[1]); !b.Empty() {
			return b
		}
	}
	return layout.Block{}
}

// views are the two views at the largest scale at which they go into the width and into a
// height, beside each other or above each other.
func (p *liftPicture) views(room LiftRoom, beside, stacked layout.Mm) layout.Block {
	side := p.view("side", coordinate(p.axis), coordinate("z"))
	plan := p.view("plan", coordinate("x"), coordinate("y"))
	for _, n := range drawScales {
		p.scale = n
		if !p.roomForDistances(side, room) {
			break
		}
		w, h := p.paper(side)
		pw, ph := p.paper(plan)
		w, h = w+2*p.noteEdge(side), h+p.above(side)+underSide
		pw, ph = max(pw+2*planEdge, captionW), ph+2*planEdge
		var views layout.Block
		switch {
		case w+viewGap+pw <= p.width && max(h, ph) <= beside:
			views = layout.Beside(viewGap, p.sideView(side, p.width-viewGap-pw, h), p.planView(plan, pw, ph))
		case max(w, pw) <= p.width && h+ph <= stacked:
			views = layout.Above(2, p.sideView(side, p.width, h), p.planView(plan, p.width, ph))
		default:
			continue
		}
		return views.Drawing(p.l.Mark + " " + p.l.What)
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
	if spread(coordinate("y")) > spread(coordinate("x")) {
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
			v.include(q)
		}
	}
	for _, x := range p.legs {
		v.include(x.From)
		v.include(x.To)
	}
	if p.legs != nil {
		v.include(p.scene.Hook)
	}
	return v
}

// paper is the size of a view on paper.
func (p *liftPicture) paper(v *liftView) (w, h layout.Mm) {
	return layout.Mm((v.high.X - v.low.X) / p.scale), layout.Mm((v.high.Y - v.low.Y) / p.scale)
}

// above is the room above the side view: for the crane's line, or for what people carry.
func (p *liftPicture) above(v *liftView) layout.Mm {
	if p.l.ByHand {
		return p.overHands(v)
	}
	return overHook
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
	fresh := p.frame(v, w, h, p.above(v), underSide)
	s := fresh()
	p.body(s, v)
	p.bar(s, v)
	p.plumb(s, v)
	p.centre(s, v)
	p.distances(s, v)
	p.ends(s, v, w)
	if p.l.ByHand {
		p.handNotes(s, v)
	} else {
		p.legNotes(s, v, w)
	}
	s.Put(p.legLines(fresh, v, draw.Thick))
	caption := p.Para(w, []layout.Run{layout.T(layout.Caption, p.w.Lift.SideView.With(figure.Scale(p.scale), p.axis))}, layout.ParaOpts{Align: layout.Centered})
	return layout.Above(1, s.Block(), caption)
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
	s.Put(p.legLines(fresh, v, draw.Thin))
	caption := p.Para(w, []layout.Run{layout.T(layout.Caption, p.w.Lift.PlanView.With(figure.Scale(p.scale))+" "+p.centreMark())}, layout.ParaOpts{Align: layout.Centered})
	return layout.Above(1, trimmed(s.Block()), caption)
}

// trimmed is a drawing without what is empty of it above and below, but for a millimetre.
func trimmed(b layout.Block) layout.Block {
	const edge layout.Mm = 1
	top, bottom := b.H, layout.Mm(0)
	for _, it := range b.Items() {
		_, t, _, low := it.Bounds()
		top, bottom = min(top, t), max(bottom, low)
	}
	cut := max(top-edge, 0)
	h := max(min(bottom+edge, b.H)-cut, 0)
	b = b.At(0, -cut)
	b.H = h
	return b
}

// legLines draws every leg from its bearing point above to its pick, each an item
// of its own role, so that the drawing can be measured.
func (p *liftPicture) legLines(fresh func() *draw.Scene, v *liftView, pen draw.Pen) layout.Block {
	var all []layout.Block
	for i, x := range p.legs {
		s := fresh()
		s.Lines(pen, v.at(x.From), v.at(x.To))
		s.Role("leg:" + p.l.Mark + ":" + v.role + ":" + strconv.Itoa(i+1))
		all = append(all, s.Block())
	}
	return layout.Overlay(all...)
}
