package templates

import (
	"math"
	"strconv"

	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/filled"
	"matchmark/packs/reading"
)

// Measures of a plot, and from how many outages on a reading has one.
const (
	plotH       layout.Mm = 44
	leastPlot             = 3
	plotMargins           = 0.15 // of the range, above and below
	pointStroke           = 0.03 // half the height of the stroke of a reading, of the range
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
	floor, ceiling := limitEnds(l)
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
		Y:      draw.Axis{From: low, To: high, Name: d.Box.Unit.Print()},
		Series: []draw.Series{{Pen: draw.Thin, At: at, Name: filled.Rounded(points[len(points)-1].Reading, d.Box).Number.Print()}},
	}
	for _, p := range at { // each reading as a short stroke, the line between them is no reading
		dy := (high - low) * pointStroke
		chart.Series = append(chart.Series, draw.Series{Pen: draw.Pen{Weight: 1}, At: []draw.XY{{X: p.X, Y: max(p.Y-dy, low)}, {X: p.X, Y: min(p.Y+dy, high)}}})
	}
	chart.X.From, chart.X.To = chart.X.From-(chart.X.To-chart.X.From)*0.05, chart.X.To+(chart.X.To-chart.X.From)*0.05
	if floor != nil {
		chart.Bands = append(chart.Bands, draw.Band{From: low, To: *floor, Name: w.Report.Under.With(strconv.FormatFloat(*floor, 'g', 6, 64))})
	}
	if ceiling != nil {
		chart.Bands = append(chart.Bands, draw.Band{From: *ceiling, To: high, Name: w.Report.Over.With(strconv.FormatFloat(*ceiling, 'g', 6, 64))})
	}
	b, err := chart.Block(c.Setter)
	if err != nil {
		return layout.Block{}, false // all outages at one count of hours
	}
	title := c.Para(width, []layout.Run{layout.T(layout.SubBold, w.Report.PlotTitle.With(d.Mark, d.What)), layout.T(layout.Sub, "  "+l.Position)}, layout.ParaOpts{Ref: d.At})
	return layout.Above(0.5, title, b), true
}

// limitEnds are the ends of the limit of a reading for closing, or for an old part, as
// far as they hang on nothing; in the unit of its box.
func limitEnds(l filled.Line) (low, high *float64) {
	d := l.Dim
	limits := d.LeftLimits()
	if d.WatchedOnly() {
		if limits = d.FoundBy; len(limits) == 0 {
			limits = []*reading.Limit{d.Found}
		}
	}
	if d.Reuse != nil {
		limits = []*reading.Limit{d.Reuse}
	}
	if len(limits) == 0 {
		return nil, nil
	}
	for _, t := range limits[l.N%len(limits)].Tests {
		if t.Group != reading.Each {
			continue
		}
		from, to, ok := t.Limits()
		if !ok {
			continue
		}
		if from != nil {
			f, _ := from.Number.Rat().Float64()
			low = &f
		}
		if to != nil {
			f, _ := to.Number.Rat().Float64()
			high = &f
		}
	}
	return low, high
}
