package dimension

import (
	"slices"
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// StateLine is the state in which a dimension is read and what it is read with, as
// pieces of one line.
func StateLine(c *block.Composer, d *job.Dim) []string {
	w, s := c.W, d.State
	var out []string
	add := func(sentence words.Sentence, value string) {
		if value != "" {
			out = append(out, sentence.With(block.Together(value)))
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
		out = append(out, w.Dimension.By.With(readWith(c, d)))
	}
	if d.CountedFrom != "" {
		out = append(out, c.W.Common.CountedFrom.With(d.CountedFrom))
	}
	if d.ViewedFrom != "" && (d.Positions.Kind == job.Clock || d.ViewedFrom != d.Place.ViewedFrom) {
		out = append(out, c.W.Common.SeenFrom.With(d.ViewedFrom))
	}
	return out
}

// readWith names an instrument beside a reading: its range and step stand on the
// gather list. One of several alike is told as there; the number is that of the first.
func readWith(c *block.Composer, d *job.Dim) string {
	name := d.By.Name
	if d.ByPiece > 0 {
		name = block.InstrumentPiece(c, d.By, d.ByPiece)
	}
	if d.By.Number == "" || d.ByPiece > 1 {
		return name
	}
	return name + ", " + c.W.Dimension.Number.With(d.By.Number)
}

// groupBoxes are the boxes for what is worked out from all readings: what a limit
// asks for, and the sum where a ladder copies it, with the unit behind each box or in the
// words above it.
func groupBoxes(c *block.Composer, d *job.Dim, sides []Side, unitAbove bool) []layout.Block {
	var row []layout.Block
	for _, g := range []reading.Group{reading.Mean, reading.Spread, reading.Sum} {
		for _, s := range sides {
			if !hasGroup(d, g, s) {
				continue
			}
			row = append(row, groupBox(c, d, g, s, spoken(c.W.Common.Group[g], s.caption), unitAbove))
		}
	}
	return row
}

// hasGroup reports whether a side has a box for what is worked out from all readings.
// There is no difference of means: it is that of two boxes beside. A sum that a ladder
// takes is not copied: the ladder takes it from its own page.
func hasGroup(d *job.Dim, g reading.Group, s Side) bool {
	return !s.signed && slices.Contains(d.Wholes(s.When), g) && (!s.Copied || slices.Contains(d.Groups(), g))
}

// groupBox is the box of what is worked out from all readings of one side, under its
// key; of a pack that is printed filled, with that of those found in it. Its unit stands
// behind it, or in its caption if it has one.
func groupBox(c *block.Composer, d *job.Dim, g reading.Group, s Side, caption string, unitAbove bool) layout.Block {
	one, _ := d.Single(0)
	key := job.BlankKey(one.Mark, s.When, job.GroupBlank, int(g))
	b := d.GroupBox(g)
	n := layout.Number{Before: b.Before, After: b.After, Sign: b.Signed, Unit: c.W.Unit(b.Unit.Print()), Caption: caption, Copied: s.Copied, Ref: d.At}
	if unitAbove {
		if caption != "" {
			n.Caption = spoken(caption, n.Unit)
		}
		n.Unit = ""
	}
	if s.When == job.AsFound && (s.Copied || d.Sheet) {
		n.Typed = c.Filled.Typed(key)
	}
	if s.Copied || s.When == job.NoTime {
		return c.Value(n)
	}
	return c.Value(n).Named(key)
}

// extraItems are the boxes that stand with the readings of a dimension: what is worked
// out from all of them, the temperature of the part, spare ones.
func extraItems(c *block.Composer, d *job.Dim, sides []Side) []layout.Block {
	return append(groupBoxes(c, d, sides, false), moreItems(c, d, sides)...)
}

// moreItems are the same without what is worked out.
func moreItems(c *block.Composer, d *job.Dim, sides []Side) []layout.Block {
	var row []layout.Block
	own := writtenSide(sides)
	if d.Warm == nil && d.PartWarm() {
		row = append(row, named(temperature(c, d, c.W.Dimension.PartAt), d, own, job.PartBlank, 0))
	}
	for i := range d.Spare {
		row = append(row, named(Box(c, d, Side{}, c.W.Dimension.Spare.With(strconv.Itoa(i+1)), true), d, own, job.SpareBlank, i))
	}
	return row
}

// extraBoxes are the same in rows, and the correction of a warm part.
func extraBoxes(c *block.Composer, d *job.Dim, sides []Side, width layout.Mm) layout.Block {
	var lines layout.Block
	if row := extraItems(c, d, sides); len(row) > 0 {
		lines = block.FlowRow(row, width)
	}
	return layout.Above(layout.GapY, lines, warmLine(c, d, writtenSide(sides), width)).Tagged(d.At)
}

// writtenSide is the first side that is written at its step, one of no time where all
// are copied.
func writtenSide(sides []Side) Side {
	for _, s := range sides {
		if !s.Copied && !s.signed {
			return s
		}
	}
	return Side{}
}

// named gives a box beside the readings of a side its key.
func named(b layout.Block, d *job.Dim, s Side, kind job.BlankKind, n int) layout.Block {
	if s.When == job.NoTime {
		return b
	}
	one, _ := d.Single(0)
	return b.Named(job.BlankKey(one.Mark, s.When, kind, n))
}

// GroupBox is the box of what is worked out from all readings: mean, spread or sum.
func GroupBox(c *block.Composer, d *job.Dim, g reading.Group, caption string, copied bool) layout.Block {
	b := d.GroupBox(g)
	return c.Value(layout.Number{Before: b.Before, After: b.After, Sign: b.Signed, Unit: c.W.Unit(b.Unit.Print()), Caption: caption, Copied: copied, Ref: d.At})
}

// temperature is the box for the temperature of the part, in the degrees that go
// with the unit of the reading.
func temperature(c *block.Composer, d *job.Dim, caption string) layout.Block {
	return c.Value(layout.Number{Before: 3, Unit: d.PartUnit().Print(), Caption: caption, Sign: !d.State.Hot, Ref: d.At})
}

// warmLine is the correction of a part that is not at 20 °C, as a line to be worked
// through: its temperature, the degrees over, what that makes, and for a single
// reading the size at 20 °C.
func warmLine(c *block.Composer, d *job.Dim, s Side, width layout.Mm) layout.Block {
	if d.Warm == nil {
		return layout.Block{}
	}
	w := c.W
	at := d.Warm.At.Print()
	text := func(s string) layout.Block { return c.Words(layout.Sub, s) }
	degrees := layout.Number{Before: 3, Sign: true, Unit: d.Warm.At.Unit.Print(), Ref: d.At}
	number := func(n layout.Number) layout.Block { return c.Value(n) }
	part := degrees
	part.Caption = w.Dimension.WarmStep
	// The correction is told with one digit more than the reading has.
	growth := layout.Number{Before: 1, After: d.Box.After + 1, Sign: true, Unit: d.Warm.PerDegree.Unit.Print(), Ref: d.At}
	row := []layout.Block{
		text(w.Dimension.Warm.With(at, d.Warm.Material)), named(number(part), d, s, job.PartBlank, 0), text(w.Dimension.WarmLess.With(at)), number(degrees),
		text(w.Dimension.WarmFor.With(d.Warm.PerDegree.Print())), number(growth),
	}
	if d.Positions.Boxes() == 1 && d.Box.Form == reading.Digits {
		row = append(row, text(w.Dimension.WarmAt.With(at)), Box(c, d, Side{}, "", true))
	} else {
		row = append(row, text(w.Dimension.WarmAll.With(at)))
	}
	return block.FlowMiddle(row, width).Tagged(d.At)
}
