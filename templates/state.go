package templates

import (
	"matchmark/packs/job"
	"matchmark/templates/words"
	"slices"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// stateLine is the state in which a dimension is read and what it is read with, as
// pieces of one line.
func (c *composer) stateLine(d *job.Dim) []string {
	w, s := c.w, d.State
	var out []string
	add := func(sentence words.Sentence, value string) {
		if value != "" {
			out = append(out, sentence.With(value))
		}
	}
	add(w.Dimension.With, s.With)
	add(w.Dimension.Pushed, s.Pushed)
	add(w.Dimension.Load, s.Load)
	add(w.Dimension.Plane, s.Plane)
	switch {
	case s.Hot:
		out = append(out, w.Dimension.TakenHot)
	case s.Cold:
		out = append(out, w.Dimension.TakenCold)
	}
	switch s.OnThe {
	case "diameter":
		out = append(out, w.Dimension.OnDiameter)
	case "radius":
		out = append(out, w.Dimension.OnRadius)
	}
	if d.By != nil {
		out = append(out, w.Dimension.By.With(c.readWith(d.By)))
	}
	if d.CountedFrom != "" {
		out = append(out, c.w.Common.CountedFrom.With(d.CountedFrom))
	}
	if d.ViewedFrom != "" && (d.Positions.Kind == job.Clock || d.ViewedFrom != d.Place.ViewedFrom) {
		out = append(out, c.w.Common.SeenFrom.With(d.ViewedFrom))
	}
	return out
}

// readWith names an instrument beside a reading: its range and step stand on the
// gather list.
func (c *composer) readWith(in *job.Instrument) string {
	if in.Number == "" {
		return in.Name
	}
	return in.Name + ", " + c.w.Dimension.Number.With(in.Number)
}

// groupBoxes are the boxes for what is worked out from all readings: what a limit
// asks for, and the sum where a ladder copies it.
func (c *composer) groupBoxes(d *job.Dim, sides []side) []layout.Block {
	var row []layout.Block
	for _, g := range d.Groups() {
		for _, s := range sides {
			if s.signed {
				continue // no difference of means: it is that of two boxes beside
			}
			row = append(row, c.groupBox(d, g, c.w.Common.Group[g]+", "+s.caption, s.copied))
		}
	}
	for _, s := range sides {
		if s.copied || s.signed || s.work == nil || slices.Contains(d.Groups(), reading.Sum) {
			continue
		}
		if s.work == &d.FoundWork && d.SumFound || s.work == &d.LeftWork && d.SumLeft {
			row = append(row, c.groupBox(d, reading.Sum, c.w.Common.Group[reading.Sum]+", "+s.caption, false))
		}
	}
	return row
}

// beside are the boxes that stand with the readings of a dimension: with groups
// what is worked out from all of them, the temperature of the part, the correction
// of a warm one, spare ones.
func (c *composer) beside(d *job.Dim, sides []side, width layout.Mm, groups bool) layout.Block {
	var row []layout.Block
	if groups {
		row = c.groupBoxes(d, sides)
	}
	if d.Warm == nil && (d.State.Hot || d.State.Cold) {
		row = append(row, c.temperature(d, c.w.Dimension.PartAt))
	}
	for i := range d.Spare {
		row = append(row, c.box(d, side{}, c.w.Dimension.Spare.With(strconv.Itoa(i+1)), true))
	}
	var lines layout.Block
	if len(row) > 0 {
		lines = flowRow(row, width)
	}
	return layout.Above(layout.GapY, lines, c.warmLine(d, width)).Tagged(d.At)
}

// groupBox is the box of what is worked out from all readings: mean, spread or sum.
func (c *composer) groupBox(d *job.Dim, g reading.Group, caption string, copied bool) layout.Block {
	b := d.GroupBox(g)
	return c.Value(layout.Number{Before: b.Before, After: b.After, Sign: b.Signed, Unit: b.Unit.Print(), Caption: caption, Copied: copied, Ref: d.At})
}

// temperature is the box for the temperature of the part, in the degrees that go
// with the unit of the reading.
func (c *composer) temperature(d *job.Dim, caption string) layout.Block {
	unit := units.Celsius
	if u := d.Box.Unit; u == units.Inch || u == units.Mil || u == units.Foot || u == units.Fahrenheit {
		unit = units.Fahrenheit
	}
	return c.Value(layout.Number{Before: 3, Unit: unit.Print(), Caption: caption, Sign: !d.State.Hot, Ref: d.At})
}

// warmLine is the correction of a part that is not at 20 °C, as a line to be worked
// through: its temperature, the degrees over, what that makes, and for a single
// reading the size at 20 °C.
func (c *composer) warmLine(d *job.Dim, width layout.Mm) layout.Block {
	if d.Warm == nil {
		return layout.Block{}
	}
	w := c.w
	at := d.Warm.At.Print()
	text := func(s string) layout.Block { return c.Words(layout.Sub, s) }
	degrees := layout.Number{Before: 3, Sign: true, Unit: d.Warm.At.Unit.Print(), Ref: d.At}
	number := func(n layout.Number) layout.Block { return c.Value(n) }
	part := degrees
	part.Caption = w.Dimension.WarmStep
	// The correction is told with one digit more than the reading has.
	growth := layout.Number{Before: 1, After: d.Box.After + 1, Sign: true, Unit: d.Warm.PerDegree.Unit.Print(), Ref: d.At}
	row := []layout.Block{
		text(w.Dimension.Warm.With(at, d.Warm.Material)), number(part), text(w.Dimension.WarmLess.With(at)), number(degrees),
		text(w.Dimension.WarmFor.With(d.Warm.PerDegree.Print())), number(growth),
	}
	if d.Positions.Boxes() == 1 && d.Box.Form == reading.Digits {
		row = append(row, text(w.Dimension.WarmAt.With(at)), c.box(d, side{}, "", true))
	} else {
		row = append(row, text(w.Dimension.WarmAll.With(at)))
	}
	return flowMiddle(row, width)
}
