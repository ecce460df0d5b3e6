package picture

import (
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/align"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates/figure"
	"matchmark/templates/words"
)

// Measures of the drawing of an alignment: its height, the clock beside it, and on
// paper the heights of what is not to scale.
const (
	alignHeight layout.Mm = 47.5
	alignClock  layout.Mm = 46
	machineHigh layout.Mm = 18
	hubHigh     layout.Mm = 13
	hubWide     layout.Mm = 4
	footHigh    layout.Mm = 4
	footWide    layout.Mm = 6
)

// Alignment draws a coupling with its dials from the side, the distances along the
// shaft to scale, and the places of the dials as they are seen from the movable
// machine, each with the way that counts as +. Empty without distances.
func Alignment(set *layout.Setter, w *words.Catalogue, a *job.Alignment, width layout.Mm) layout.Block {
	far := 0.0
	for _, f := range a.Setup.Feet {
		far = max(far, lengthOf(f.At))
	}
	if far <= 0 {
		return layout.Block{}
	}
	sideW := width - alignClock - 6
	scale := scaleAbove(1.55 * far / float64(sideW-6))
	half := float64(sideW) * scale / 2
	mid := 0.42 * far
	s := draw.NewScene(draw.View{X0: mid - half, X1: mid + half, Y0: -28.5 * scale, Y1: 19 * scale}, sideW, alignHeight, a.At)
	p := alignPicture{set, w, a, s, far}
	p.machines()
	p.dials()
	p.distances()
	caption := set.Para(sideW, []layout.Run{layout.T(layout.Caption, w.Alignment.Drawing.With(figure.Scale(scale))+" "+w.Alignment.Distances)}, layout.ParaOpts{})
	return layout.Beside(6, layout.Above(0.5, s.Block().Drawing(a.Mark+" "+a.What), caption), p.clock())
}

// lengthOf is a length in millimetres, 0 where none is told.
func lengthOf(q *units.Quantity) float64 {
	if q == nil {
		return 0
	}
	mm, err := q.Convert(units.Millimetre)
	if err != nil {
		return 0
	}
	f, _ := mm.Number.Rat().Float64()
	return f
}

// An alignPicture draws one alignment.
type alignPicture struct {
	*layout.Setter
	w   *words.Catalogue
	a   *job.Alignment
	s   *draw.Scene
	far float64
}

// box draws an upright rectangle about the axis, heights in millimetres of paper.
func (p alignPicture) box(x0, x1 float64, high layout.Mm) {
	y := p.s.Units(high / 2)
	p.s.Box(draw.Thick, layout.White, draw.XY{X: x0, Y: -y}, draw.XY{X: x1, Y: y})
}

// machines draws both machines with their hubs, and the feet of the movable one.
func (p alignPicture) machines() {
	s, u := p.s, p.s.Units
	feet := p.a.Setup.Feet
	s.CenterLine(draw.XY{X: -0.45 * p.far}, draw.XY{X: 1.16 * p.far})
	span := lengthOf(p.a.Setup.Span)
	near := max(lengthOf(feet[0].At)-u(5), span+u(hubWide)+u(3))
	p.box(-0.42*p.far, -u(hubWide)-u(5), machineHigh)
	p.box(-u(hubWide), u(0), hubHigh)
	p.box(max(span, u(hubWide)*0.7), max(span, u(hubWide)*0.7)+u(hubWide), hubHigh)
	p.box(near, p.far+u(6), machineHigh)
	for i, f := range feet {
		x, y := lengthOf(f.At), -u(machineHigh/2)
		s.Box(draw.Thick, layout.White, draw.XY{X: x - u(footWide/2), Y: y - u(footHigh)}, draw.XY{X: x + u(footWide/2), Y: y})
		s.Role("align:" + p.a.Mark + ":foot:" + strconv.Itoa(i+1))
	}
	s.Label(draw.XY{X: (near + p.far + u(6)) / 2, Y: u(4)}, p.name(p.a.Movable, p.far+u(6)-near), 0.5, 0.5)
	s.Label(draw.XY{X: (-0.42*p.far - u(hubWide+5)) / 2, Y: u(4)}, p.name(p.a.Stationary, 0.42*p.far-u(hubWide+5)), 0.5, 0.5)
	up := p.far + u(6) - u(4)
	s.Arrow(draw.Thick, draw.XY{X: up, Y: u(machineHigh/2 + 1)}, draw.XY{X: up, Y: u(machineHigh/2 + 8)})
	s.Label(draw.XY{X: up - u(1), Y: u(machineHigh/2 + 5)}, p.Words(layout.SubBold, p.w.Alignment.Up), 1, 0.5)
}

// footName is the most width of the name of a pair of feet with its distance.
const footName layout.Mm = 40

// name is the name of a machine in its box, which is so wide.
func (p alignPicture) name(text string, wide float64) layout.Block {
	return fitted(p.Setter, layout.Sub, text, layout.Mm(wide*p.s.Scale())-2, layout.ParaOpts{Ref: p.a.At, Align: layout.Centered})
}

// dial draws a dial on top of a hub.
func (p alignPicture) dial(x float64) {
	u := p.s.Units
	top := u(hubHigh / 2)
	p.s.Lines(draw.Thick, draw.XY{X: x, Y: top}, draw.XY{X: x, Y: top + u(3)})
	p.s.Ring(draw.Thick, layout.White, draw.XY{X: x, Y: top + u(5.5)}, u(2.5))
	p.s.Lines(draw.Thin, draw.XY{X: x, Y: top + u(5.5)}, draw.XY{X: x + u(1.2), Y: top + u(7)})
}

// dials draws the dials: on rim and face that of the rim, and the other at the face.
func (p alignPicture) dials() {
	s, u := p.s, p.s.Units
	set := p.a.Setup
	plane := -u(hubWide) / 2
	s.Lines(draw.Hidden, draw.XY{X: plane, Y: -u(24)}, draw.XY{X: plane, Y: u(15)})
	s.Label(draw.XY{X: plane + u(1), Y: u(18.5)}, p.Words(layout.Caption, p.w.Alignment.DialPlane), 1, 1)
	if set.Method == align.ReverseDials {
		p.dial(plane)
		p.dial(lengthOf(set.Span) + plane)
		return
	}
	x := plane
	if set.DialsOn == align.Movable {
		x = u(hubWide)*0.7 + u(hubWide)/2
	}
	p.dial(x)
}

// distances draws how far the feet are from the plane of the dial.
func (p alignPicture) distances() {
	s, u := p.s, p.s.Units
	plane := -u(hubWide) / 2
	for i, f := range p.a.Setup.Feet {
		y := -u(machineHigh/2 + footHigh)
		s.Lines(draw.Thin, draw.XY{X: lengthOf(f.At), Y: y}, draw.XY{X: lengthOf(f.At), Y: y - u(layout.Mm(5+6*i))})
		label := fitted(p.Setter, layout.Caption, f.Name+" "+f.At.Print(), footName, layout.ParaOpts{Ref: p.a.At})
		s.Dim(draw.XY{X: lengthOf(f.At), Y: y - u(layout.Mm(5+6*i))}, draw.XY{X: plane, Y: y - u(layout.Mm(5+6*i))}, 0.5, label)
	}
	if p.a.Setup.Method == align.ReverseDials {
		y := u(hubHigh/2 + 8)
		s.Dim(draw.XY{X: plane, Y: y}, draw.XY{X: plane + lengthOf(p.a.Setup.Span), Y: y}, 2.5, p.Words(layout.Caption, p.a.Setup.Span.Print()))
	}
}

// clock draws the places of a dial as they are seen from the movable machine.
func (p alignPicture) clock() layout.Block {
	const r layout.Mm = 11
	out := float64(alignClock) / 2
	s := draw.NewScene(draw.View{X0: -out, X1: out, Y0: -14, Y1: 24}, alignClock, 38, p.a.At)
	s.Ring(draw.Thick, layout.White, draw.XY{}, float64(r))
	for i, at := range []draw.XY{{Y: float64(r)}, {X: float64(r)}, {Y: -float64(r)}, {X: -float64(r)}} {
		s.Lines(draw.Thick, draw.XY{X: at.X * 0.9, Y: at.Y * 0.9}, draw.XY{X: at.X * 1.1, Y: at.Y * 1.1})
		s.Label(draw.XY{X: at.X * 0.62, Y: at.Y * 0.7}, p.Words(layout.Caption, strconv.Itoa(i*90)+"°"), 0.5, 0.5)
	}
	s.Arrow(draw.Thick, draw.XY{X: float64(r) + 1.5}, draw.XY{X: float64(r) + 9})
	s.Label(draw.XY{X: float64(r) + 5.5, Y: 1}, p.Words(layout.SubBold, p.w.Alignment.Right), 0.5, 1)
	s.Arrow(draw.Thick, draw.XY{Y: float64(r) + 1.5}, draw.XY{Y: float64(r) + 9})
	s.Label(draw.XY{X: 1.5, Y: float64(r) + 5}, p.Words(layout.SubBold, p.w.Alignment.Up), 0, 0.5)
	caption := p.Para(alignClock, []layout.Run{layout.T(layout.Caption, p.w.Alignment.SeenFrom.With(p.a.Movable))}, layout.ParaOpts{Align: layout.Centered})
	return layout.Above(0.5, s.Block(), caption)
}
