package job

import (
	"strconv"

	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// A When tells the two times at which a dimension is read.
type When uint8

const (
	// NoTime is for a box that belongs to neither, as that of a difference.
	NoTime When = iota
	// AsFound is before parting.
	AsFound
	// AsLeft is in putting back.
	AsLeft
)

// A BlankKind is what is written into a blank.
type BlankKind uint8

const (
	// ReadingBlank takes one reading, or the sum of a pack of shims.
	ReadingBlank BlankKind = iota
	// ResultBlank takes what a formula works out.
	ResultBlank
	// LeafBlank takes one leaf of a pack of shims.
	LeafBlank
	// NumberBlank takes the number that is stamped on a part.
	NumberBlank
	// GroupBlank takes the mean, the spread or the sum of all readings.
	GroupBlank
	// PartBlank takes the temperature of the part.
	PartBlank
	// SpareBlank is left free.
	SpareBlank
)

// A Blank is one printed box that is filled by hand for a dimension: a reading, or what
// a person makes of readings. Boxes that are copied from another sheet, those on the
// way of a sum, and those of a try that is done over are none.
type Blank struct {
	Dim  *Dim
	When When
	Kind BlankKind
	// N is which of the readings, leaves or spare boxes, from 0; of a GroupBlank the
	// reading.Group.
	N    int
	Box  reading.Box
	Step *Step // where it is filled
}

// Key names the blank on paper and in files: D7/DE found 3.
func (b Blank) Key() string { return BlankKey(b.Dim.Mark, b.When, b.Kind, b.N) }

// BlankKey is the key of a blank of a mark.
func BlankKey(mark string, when When, kind BlankKind, n int) string {
	side := [...]string{"", "found", "left"}[when]
	what := [...]string{"", "", "leaf ", "number ", "group ", "part ", "spare "}[kind]
	return mark + " " + side + " " + what + strconv.Itoa(n)
}

// Whole reports whether a person makes the value out of others: it need not be given.
func (b Blank) Whole() bool {
	return b.Kind == ResultBlank || b.Kind == GroupBlank
}

// Labels names every position, rows by columns; none for a single box.
func (p Positions) Labels() []string {
	if len(p.Rows) == 0 {
		return p.Cols
	}
	if len(p.Cols) == 0 {
		return p.Rows
	}
	var out []string
	for _, r := range p.Rows {
		for _, c := range p.Cols {
			out = append(out, r+", "+c)
		}
	}
	return out
}

// Single gives the dimension that box n of a merged one belongs to, and which box of it
// that is; of any other d itself.
func (d *Dim) Single(n int) (*Dim, int) {
	if len(d.Merged) == 0 {
		return d, n
	}
	each := max(d.Merged[0].Positions.Boxes(), 1)
	if n/each >= len(d.Merged) {
		return d, n
	}
	return d.Merged[n/each], n % each
}

// ReadingKind is the kind of the boxes of its readings.
func (d *Dim) ReadingKind() BlankKind {
	if d.Formula != nil {
		return ResultBlank
	}
	return ReadingBlank
}

// Leaves is how many leaves of its pack of shims have a box, 0 if none has.
func (d *Dim) Leaves() int {
	if d.Shims == nil || d.Shims.Stock == nil || d.Shims.Stock.Stock.Pick {
		return 0
	}
	return d.Shims.Stock.Stock.Most
}

// Wholes lists what is made of all readings at one time and has a box: what a limit
// asks for, and the sum where a ladder copies it.
func (d *Dim) Wholes(when When) []reading.Group {
	out := d.Groups()
	for _, g := range out {
		if g == reading.Sum {
			return out
		}
	}
	if !d.Sheet && (when == AsFound && d.SumFound || when == AsLeft && d.SumLeft) {
		out = append(out, reading.Sum)
	}
	return out
}

// PartWarm reports whether the temperature of the part is written beside the reading.
func (d *Dim) PartWarm() bool { return d.Warm != nil || d.State.Hot || d.State.Cold }

// PartUnit is the unit of the temperature of the part: the degrees that go with the
// unit of the reading.
func (d *Dim) PartUnit() units.Unit {
	if d.Warm != nil {
		return d.Warm.At.Unit
	}
	switch d.Box.Unit {
	case units.Inch, units.Mil, units.Foot, units.Fahrenheit:
		return units.Fahrenheit
	}
	return units.Celsius
}
