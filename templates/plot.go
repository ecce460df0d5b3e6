package templates

import (
	"fmt"
	"math"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/filled"
	"matchmark/packs/units"
	"matchmark/templates/words"
)

// plotH is the height of a plot.
const plotH layout.Mm = 44

// From how many outages on a reading has a plot.
const leastPlot = 3

// Shares of the range of a plot.
const (
	plotMargins = 0.15 // the room above and below
	plotSides   = 0.05 // and at the sides
	pointStroke = 0.03 // half the height of the stroke of a reading
)

// plots sets a small plot of every reading that has three outages and more, two beside
// each other: over the running hours where all outages tell them.
func (c *composer) plots(lines []filled.Line) []layout.Piece {
	var all []layout.Block
	width := (c.Span - layout.GapX) / 2
	for _, l := range lines {
		points, outages := c.Last.Points(c.Filled, l.Dim, l.N)
		if outages < leastPlot {
			continue
		}
		if b, ok := c.plot(l, points, width); ok {
			all = append(all, b)
		}
	}
	if len(all) == 0 {
		return nil
	}
	out := []layout.Piece{{Block: c.Heading(c.W.Report.PlotHead), Gap: 5, KeepNext: true}}
	for i := 0; i < len(all); i += 2 {
		out = append(out, layout.Piece{Block: layout.Beside(layout.GapX, all[i:min(i+2, len(all))]...), Gap: layout.GapY})
	}
	return out
}

// A plotted is what a plot shows: readings over the hours of running or, where not all are
// known, over the outages, in the unit of the box.
type plotted struct {
	at             []draw.XY
	hours          bool
	floor, ceiling *float64 // the limits, nil where there is none
	low, high      float64  // what the plot reaches over
}

// plottedOf places the readings of a line.
func plottedOf(l filled.Line, points []filled.Point) plotted {
	p := plotted{hours: true, low: math.Inf(1), high: math.Inf(-1)}
	for _, point := range points {
		p.hours = p.hours && point.Hours != nil
	}
	outage, day := 0.0, ""
	for _, point := range points {
		if point.On != day || outage == 0 {
			outage, day = outage+1, point.On
		}
		x := outage
		if p.hours {
			x, _ = point.Hours.Number.Rat().Float64()
		}
		y, _ := point.Reading.Number.Rat().Float64()
		p.at = append(p.at, draw.XY{X: x, Y: y})
		p.low, p.high = min(p.low, y), max(p.high, y)
	}
	from, to := filled.LimitRange(l.Dim, l.N)
	p.floor, p.ceiling = float(from), float(to)
	for _, end := range []*float64{p.floor, p.ceiling} {
		if end != nil {
			p.low, p.high = min(p.low, *end), max(p.high, *end)
		}
	}
	room := (p.high - p.low) * plotMargins
	if room == 0 {
		room = max(math.Abs(p.high)*plotMargins, 0.01)
	}
	p.low, p.high = p.low-room, p.high+room
	return p
}

// bands are what lies beyond the limits.
func (p plotted) bands(w *words.Catalogue) []draw.Band {
	var out []draw.Band
	if p.floor != nil {
		out = append(out, draw.Band{From: p.low, To: *p.floor, Name: w.Report.Under.With(fmt.Sprintf("%.6g", units.Figure(*p.floor)))})
	}
	if p.ceiling != nil {
		out = append(out, draw.Band{From: *p.ceiling, To: p.high, Name: w.Report.Over.With(fmt.Sprintf("%.6g", units.Figure(*p.ceiling)))})
	}
	return out
}

// plot is one reading over time against its limits.
func (c *composer) plot(l filled.Line, points []filled.Point, width layout.Mm) (layout.Block, bool) {
	w, d, p := c.W, l.Dim, plottedOf(l, points)
	name := w.Report.PlotHours
	if !p.hours {
		name = w.Report.PlotOutage
	}
	first, last := p.at[0].X, p.at[len(p.at)-1].X
	margin := (last - first) * plotSides
	chart := draw.Chart{
		W: width, H: plotH, Ref: d.At,
		X:      draw.Axis{From: first - margin, To: last + margin, Name: name},
		Y:      draw.Axis{From: p.low, To: p.high, Name: w.Unit(d.Box.Unit.Print())},
		Series: []draw.Series{{Pen: draw.Thin, At: p.at, Name: "\u00a0\u00a0" + filled.Rounded(points[len(points)-1].Reading, d.Box).Number.Print()}},
		Bands:  p.bands(w),
	}
	for _, xy := range p.at { // each reading as a short stroke, the line between them is no reading
		dy := (p.high - p.low) * pointStroke
		chart.Series = append(chart.Series, draw.Series{Pen: draw.Pen{Weight: 1}, At: []draw.XY{{X: xy.X, Y: max(xy.Y-dy, p.low)}, {X: xy.X, Y: min(xy.Y+dy, p.high)}}})
	}
	b, err := chart.Block(c.Setter)
	if err != nil {
		return layout.Block{}, false // all outages at one count of hours
	}
	reach := ""
	if hours, known := l.Reaches(); known {
		reach = "  " + w.Report.Reaches.With(hours.Print())
	}
	title := c.Para(width, []layout.Run{layout.T(layout.SubBold, w.Report.PlotTitle.With(d.Mark, d.What)), layout.T(layout.Sub, "  "+l.Position+reach)}, layout.ParaOpts{Ref: d.At})
	return layout.Above(0.5, title, b), true
}

// float is a quantity for a drawing, nil if it is none.
func float(q *units.Quantity) *float64 {
	if q == nil {
		return nil
	}
	f, _ := q.Number.Rat().Float64()
	return &f
}
