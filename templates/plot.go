package templates

import (
	"fmt"
	"math"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/filled"
	"matchmark/packs/units"
)

// plotH is the height of a plot.
const plotH layout.Mm = 44

// From how many outages on a reading has a plot.
const leastPlot = 3

// Shares of the range of a plot.
const (
	plotMargins = 0.15 // the room above and below
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

// plot is one reading over time against its limits.
func (c *composer) plot(l filled.Line, points []filled.Point, width layout.Mm) (layout.Block, bool) {
	w, d := c.W, l.Dim
	hours := true
	for _, p := range points {
		hours = hours && p.Hours != nil
	}
	var at []draw.XY
	outage, day := 0.0, ""
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range points {
		if p.On != day || outage == 0 {
			outage, day = outage+1, p.On
		}
		x := outage
		if hours {
			x, _ = p.Hours.Number.Rat().Float64()
		}
		y, _ := p.Reading.Number.Rat().Float64()
		at = append(at, draw.XY{X: x, Y: y})
		low, high = min(low, y), max(high, y)
	}
	from, to := filled.LimitRange(d, l.N)
	floor, ceiling := float(from), float(to)
	for _, end := range []*float64{floor, ceiling} {
		if end != nil {
			low, high = min(low, *end), max(high, *end)
		}
	}
	room := (high - low) * plotMargins
	if room == 0 {
		room = max(math.Abs(high)*plotMargins, 0.01)
	}
	low, high = low-room, high+room
	name := w.Report.PlotHours
	if !hours {
		name = w.Report.PlotOutage
	}
	chart := draw.Chart{
		W: width, H: plotH, Ref: d.At,
		X:      draw.Axis{From: at[0].X, To: at[len(at)-1].X, Name: name},
		Y:      draw.Axis{From: low, To: high, Name: w.Unit(d.Box.Unit.Print())},
		Series: []draw.Series{{Pen: draw.Thin, At: at, Name: "\u00a0\u00a0" + filled.Rounded(points[len(points)-1].Reading, d.Box).Number.Print()}},
	}
	for _, p := range at { // each reading as a short stroke, the line between them is no reading
		dy := (high - low) * pointStroke
		chart.Series = append(chart.Series, draw.Series{Pen: draw.Pen{Weight: 1}, At: []draw.XY{{X: p.X, Y: max(p.Y-dy, low)}, {X: p.X, Y: min(p.Y+dy, high)}}})
	}
	chart.X.From, chart.X.To = chart.X.From-(chart.X.To-chart.X.From)*0.05, chart.X.To+(chart.X.To-chart.X.From)*0.05
	if floor != nil {
		chart.Bands = append(chart.Bands, draw.Band{From: low, To: *floor, Name: w.Report.Under.With(fmt.Sprintf("%.6g", units.Figure(*floor)))})
	}
	if ceiling != nil {
		chart.Bands = append(chart.Bands, draw.Band{From: *ceiling, To: high, Name: w.Report.Over.With(fmt.Sprintf("%.6g", units.Figure(*ceiling)))})
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
