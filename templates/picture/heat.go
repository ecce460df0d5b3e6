package picture

import (
	"fmt"
	"math"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
	"matchmark/templates/figure"
	"matchmark/templates/words"
)

// A heatPicture draws one heat.
type heatPicture struct {
	*layout.Setter
	w *words.Catalogue
	h *job.Heat
	u figure.Units
	// beside is whether the figures of distances stand beside them, below the arrows of the heat.
	beside bool
}

// JointHeight is the height of the picture of the joint, which stands beside text.
const JointHeight layout.Mm = 38

// Joint draws the joint to scale, cut along its axis: hub, shaft, shield and
// neighbours at their distances. Empty when its sizes are not known.
func Joint(set *layout.Setter, w *words.Catalogue, h *job.Heat, width, high layout.Mm) layout.Block {
	s := heatPicture{Setter: set, w: w, h: h, u: figure.UnitsOf(h)}
	d, o, l := float64(h.Fit.Diameter), float64(h.Ring.Outside), float64(h.Ring.Length)
	if d <= 0 || o <= d || l <= 0 {
		return layout.Block{}
	}
	far, front := l*1.5, math.Max(float64(h.Seat.Front), l*0.1)
	for _, n := range h.Neighbours {
		far = math.Max(far, l+float64(n.Distance)+l*0.45)
		if by := float64(high) / (1.56 * o); float64(n.Distance)*by < float64(figureBeyond+figureWide) {
			far, s.beside = math.Max(far, l+float64(n.Distance)+float64(figureBeyond+figureWide)/by), true
		}
	}
	// Room about the part for labels: above for the length, to the left for the
	// diameters.
	view := draw.View{X0: -front, Y0: -0.78 * o, X1: far + 0.1*l, Y1: 0.78 * o}
	// The diameters stand to the left, in millimetres of paper.
	const left layout.Mm = 45
	view.X0 -= draw.NewScene(view, width-left, high, h.At).Units(left)
	// Each further neighbour has its distance in a row of its own below.
	if rows := s.row(len(h.Neighbours)); rows > 1 {
		more := distanceRow * layout.Mm(rows-1)
		view.Y0 -= draw.NewScene(view, width, high, h.At).Units(more)
		high += more
	}
	sc := draw.NewScene(view, width, high, h.At)
	s.drawShaft(sc, front, far)
	for _, sign := range []float64{1, -1} {
		a, b := draw.XY{X: 0, Y: sign * d / 2}, draw.XY{X: l, Y: sign * o / 2}
		sc.Hatch(draw.XY{X: a.X, Y: math.Min(a.Y, b.Y)}, draw.XY{X: b.X, Y: math.Max(a.Y, b.Y)}, 2, sign > 0)
		sc.Box(draw.Thick, layout.Usual, a, b)
		sc.Role(s.role("hub"))
	}
	legend := s.drawNeighbours(sc, width)
	word := func(t string) layout.Block { return s.Words(layout.Sub, t) }
	sc.Dim(draw.XY{X: 0, Y: o / 2}, draw.XY{X: l, Y: o / 2}, 5, word(s.u.Length(h.Ring.Length)))
	sc.Dim(draw.XY{X: 0, Y: -o / 2}, draw.XY{X: 0, Y: o / 2}, layout.Mm(front*sc.Scale())+24, word("⌀ "+s.u.Length(h.Ring.Outside)))
	sc.Dim(draw.XY{X: -front, Y: -d / 2}, draw.XY{X: -front, Y: d / 2}, 4, word("⌀ "+s.u.Length(h.Fit.Diameter)))
	s.drawHeat(sc)
	scale := fmt.Sprintf("%.1f", units.Figure(1/sc.Scale()))
	caption := s.w.Heat.PictureScale.With(scale)
	if len(h.Neighbours) > 0 {
		caption += " " + s.w.Heat.PictureFaces
	}
	all := []layout.Block{sc.Block().Drawing(h.Mark + " " + h.What)}
	for _, t := range legend {
		all = append(all, s.Para(width, []layout.Run{layout.T(layout.Sub, t)}, layout.ParaOpts{Ref: h.At}))
	}
	return layout.Above(0.5, append(all, s.Para(width, []layout.Run{layout.T(layout.Caption, caption)}, layout.ParaOpts{Ref: h.At}))...)
}

// distanceRow is the height of one row of distances.
const distanceRow layout.Mm = 8

// role is the role of a line of the drawings, by which they are measured on paper.
func (s heatPicture) role(of string) string { return "heat:" + s.h.Mark + ":" + of }

// drawHeat draws where the heat goes in: below, because the length stands above.
func (s heatPicture) drawHeat(sc *draw.Scene) {
	o, l := float64(s.h.Ring.Outside), float64(s.h.Ring.Length)
	for _, at := range []float64{0.25, 0.5, 0.75} {
		sc.Arrow(draw.Thin, draw.XY{X: at * l, Y: -o/2 - sc.Units(7)}, draw.XY{X: at * l, Y: -o/2 - sc.Units(1)})
	}
	sc.Label(draw.XY{X: -sc.Units(1), Y: -o/2 - sc.Units(4)}, s.Words(layout.Sub, s.w.Heat.HeatArrow), 1, 0.5)
}

// drawShaft draws the seat and what runs on from it; a hollow one shows its bore.
func (s heatPicture) drawShaft(sc *draw.Scene, front, far float64) {
	d, bore := float64(s.h.Fit.Diameter), float64(s.h.Seat.Bore)
	end := math.Min(far, float64(s.h.Ring.Length)+float64(s.h.Seat.Behind))
	if s.h.Seat.Front == 0 {
		front = 0
	}
	sc.Lines(draw.Thick, draw.XY{X: end, Y: d / 2}, draw.XY{X: -front, Y: d / 2}, draw.XY{X: -front, Y: -d / 2}, draw.XY{X: end, Y: -d / 2})
	sc.Role(s.role("shaft"))
	// A wavy end says that the shaft runs on.
	var wave []draw.XY
	for i := range 17 {
		y := d/2 - d*float64(i)/16
		wave = append(wave, draw.XY{X: end + 0.03*d*math.Sin(float64(i)/16*4*math.Pi), Y: y})
	}
	sc.Lines(draw.Thin, wave...)
	for _, y := range []float64{bore / 2, -bore / 2} {
		if bore > 0 {
			sc.Lines(draw.Hidden, draw.XY{X: -front, Y: y}, draw.XY{X: end, Y: y})
		}
	}
	sc.CenterLine(draw.XY{X: -front - 0.1*d}, draw.XY{X: end + 0.1*d})
}

// drawNeighbours draws what sits beside the hub, at its distance, and the shield
// before the nearest. A name stands beside its part where it has room to the edge of
// the drawing; else the parts have numbers, and the lines that name them are given back.
func (s heatPicture) drawNeighbours(sc *draw.Scene, width layout.Mm) (legend []string) {
	h := s.h
	d, o, l := float64(h.Fit.Diameter), float64(h.Ring.Outside), float64(h.Ring.Length)
	word := func(t string) layout.Block { return s.Words(layout.Sub, t) }
	numbered := len(h.Neighbours) > 1
	for _, n := range h.Neighbours {
		x := sc.At(draw.XY{X: l + float64(n.Distance) + sc.Units(1)}).X
		numbered = numbered || x+word(s.partAtMost(n)).W > width
	}
	for i, n := range h.Neighbours {
		x := l + float64(n.Distance)
		// Only the face has its place; how large it is nobody has said.
		deep, high := 0.2*l, o/2*0.9
		for _, sign := range []float64{1, -1} {
			sc.Box(draw.Hidden, layout.Usual, draw.XY{X: x, Y: sign * d / 2}, draw.XY{X: x + deep, Y: sign * high})
			sc.Role(s.role("near:" + strconv.Itoa(i+1)))
		}
		s.distance(sc, n.Distance, o/2+sc.Units(3+distanceRow*layout.Mm(s.row(i))))
		name := s.partAtMost(n)
		if numbered {
			legend = append(legend, strconv.Itoa(i+1)+"  "+name)
			name = strconv.Itoa(i + 1)
		}
		sc.Label(draw.XY{X: x + sc.Units(1), Y: high}, word(name), 0, 1.1)
	}
	if p := h.Pull; p != nil && p.Shield != "" && len(h.Neighbours) > 0 {
		x := l + float64(h.Neighbours[0].Distance)*0.4
		for _, sign := range []float64{1, -1} {
			sc.Lines(draw.Pen{Weight: 1}, draw.XY{X: x, Y: sign * (d/2 + sc.Units(0.6))}, draw.XY{X: x, Y: sign * o * 0.62})
		}
		sc.Label(draw.XY{X: x, Y: o * 0.62}, word(s.w.Heat.Shield), 0.5, 1.1)
	}
	return legend
}

// row is in which row below the hub a distance stands, from 0: where their figures stand beside
// them, the first is left to the arrows of the heat, which the arrows from without would cross.
func (s heatPicture) row(i int) int {
	if s.beside {
		return i + 1
	}
	return i
}

// distance draws how far a neighbour is from the hub, so far below the axis. The figure of one
// that is too narrow for it stands beyond the neighbour.
func (s heatPicture) distance(sc *draw.Scene, of heat.Mm, down float64) {
	l := float64(s.h.Ring.Length)
	hub, near := draw.XY{X: l, Y: -down}, draw.XY{X: l + float64(of), Y: -down}
	figure := s.Words(layout.Sub, s.u.Length(of))
	if sc.Units(figure.W+1) < float64(of) {
		sc.Dim(near, hub, 3, figure)
		return
	}
	sc.Dim(near, hub, 3, layout.Block{})
	sc.Label(draw.XY{X: near.X + sc.Units(figureBeyond), Y: -down - sc.Units(3)}, figure, 0, 0.5)
}

// figureBeyond is how far from a neighbour the figure of its distance stands where it is beside
// it, the arrow from without between them, and figureWide the room for it.
const figureBeyond, figureWide layout.Mm = 5.5, 10

// chartH is the height of the chart of the opening.
const chartH layout.Mm = 54

// Opening draws the opening over the time: what is needed, when it is there, the
// window to draw in, and where it would level off.
func Opening(set *layout.Setter, w *words.Catalogue, h *job.Heat, p *heat.Plan, width layout.Mm) layout.Block {
	s := heatPicture{Setter: set, w: w, h: h, u: figure.UnitsOf(h)}
	u := s.u
	minutes := func(t heat.Second) float64 { return float64(t) / 60 }
	length := func(v heat.Mm) float64 {
		if u.Inch {
			return float64(v) / 25.4 * 1000
		}
		return float64(v) * 1000
	}
	unit := "µm"
	if u.Inch {
		unit = "mil"
	}
	end, top := p.Free+p.Stays, p.Need.Opening
	for _, m := range p.Course {
		top = max(top, m.Opening)
	}
	showLevel := p.Levels > 0 && p.Levels < 3*p.Need.Opening
	if showLevel {
		top = max(top, p.Levels)
	}
	if p.Endless {
		end = 2 * p.Free
	}
	x := draw.Axis{From: 0, To: minutes(end) * 1.08, Name: s.w.Heat.ChartTime}
	y := draw.Axis{From: 0, To: length(top) * 1.12, Name: s.w.Heat.ChartOpening.With(unit, figure.Kilowatts(p.Net, units.Nearest))}
	var line []draw.XY
	for _, m := range p.Course {
		if m.At <= end && m.Opening >= 0 {
			line = append(line, draw.XY{X: minutes(m.At), Y: length(m.Opening)})
		}
	}
	level := func(v heat.Mm, role string, name words.Sentence, pen draw.Pen, how units.Rounding) draw.Series {
		return draw.Series{Pen: pen, Role: s.role(role), Name: name.With(u.OnChart(v, how)), At: []draw.XY{{X: 0, Y: length(v)}, {X: x.To, Y: length(v)}}}
	}
	c := draw.Chart{W: width, H: chartH, X: x, Y: y, Ref: s.h.At, Field: s.role("field"),
		Spans: []draw.Span{{From: minutes(p.Free), To: minutes(end), Name: s.w.Heat.ChartWindow}},
		Series: []draw.Series{
			level(p.Need.Opening, "needed", s.w.Heat.ChartNeeded, draw.Thin, units.Up),
			level(s.h.Fit.Counted, "grips", s.w.Heat.ChartGrips, draw.Hidden, units.Up),
			{Pen: draw.Thick, Role: s.role("opening"), At: line},
			{Pen: draw.Hidden, Role: s.role("free"), At: []draw.XY{{X: minutes(p.Free), Y: 0}, {X: minutes(p.Free), Y: length(p.Need.Opening)}}},
		},
	}
	if showLevel {
		c.Series = append(c.Series, level(p.Levels, "ceiling", s.w.Heat.ChartLevels, draw.Hidden, units.Down))
	}
	b, err := c.Block(s.Setter)
	if err != nil {
		b.AddMisfits(layout.Misfit{Ref: s.h.At, Kind: layout.Undrawn, Text: s.h.Mark, Detail: err.Error()})
	}
	return b.Drawing(h.Mark + " " + h.What)
}

// partAtMost names a neighbour and how hot it may get, if that is known.
func (s heatPicture) partAtMost(n job.HeatNeighbour) string {
	if n.Limit.Source == "" {
		return n.Name
	}
	return s.w.Heat.PartAtMost.With(n.Name, s.u.AtMost(n.Limit.At))
}
