package packs

import (
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// An Arrangement is how the boxes of one reading are laid out.
type Arrangement int

const (
	// Single is one box.
	Single Arrangement = iota
	// Row is up to four boxes beside each other.
	Row
	// Clock is boxes round a clock face, the first at the top, the others
	// clockwise as seen from where one stands.
	Clock
	// Grid is rows by columns.
	Grid
	// Log is rows by columns, a row each time that the interval is over.
	Log
)

// Positions are the places at which one dimension is read.
type Positions struct {
	Kind             Arrangement
	RowName, ColName string   // what the rows and columns are, as "station"
	Rows, Cols       []string // for Row and Clock only Cols
}

// Boxes counts the readings.
func (p Positions) Boxes() int {
	return max(len(p.Rows), 1) * max(len(p.Cols), 1)
}

// Names are the positions that a limit may differ by: the columns, or the rows of
// a list that has no columns.
func (p Positions) Names() []string {
	if len(p.Cols) > 0 {
		return p.Cols
	}
	return p.Rows
}

// A State is what must hold while a reading is taken; what is not said is empty.
type State struct {
	With   string // in the author's words
	Pushed string // which way the moving part is pushed
	Load   string
	Plane  string
	Hot    bool   // taken hot
	Cold   bool   // taken cold
	OnThe  string // "diameter" or "radius"
}

// Warm is the correction of a reading of a warm part: PerDegree is taken off for
// each degree over At.
type Warm struct {
	Material  string
	PerDegree units.Quantity // length, to three figures
	At        units.Quantity // 20 °C, or 68 °F for a size in inches
	Source    string         // of the expansion
}

// A Saying is what one of several sources that differ says of a limit.
type Saying struct {
	Source, Text, Note string
	Used               bool
	Hold               *Hold // at which it was chosen, nil if that is not said
}

// A Stack is an order of parts from one side outward, at one place.
type Stack struct {
	Mark, Base string
	Place      Place
	What, From string
	Order      string   // in words, where Pieces have no names
	Pieces     []string // what is expected at each place of the stack; empty texts where it is not said
	Step       *Step    // where it is written down
}

// A WayRound says which side of a part faces what.
type WayRound struct {
	Part        *Part
	Mark, Faces string
}

// Groups lists what is worked out from all readings of the dimension together
// because a limit asks for it: mean, spread, sum, each once in this order.
func (d *Dim) Groups() []reading.Group {
	var out []reading.Group
	for _, g := range []reading.Group{reading.Mean, reading.Spread, reading.Sum} {
		if d.groupLimit(g) != nil {
			out = append(out, g)
		}
	}
	return out
}

// groupLimit is the limit of one group as if it were that of a reading, nil if
// there is none.
func (d *Dim) groupLimit(g reading.Group) *reading.Limit {
	for _, l := range d.limits() {
		for _, t := range l.Tests {
			if t.Group == g {
				t.Group = reading.Each
				return &reading.Limit{Tests: []reading.Test{t}}
			}
		}
	}
	return nil
}

// GroupBox is the box for the mean, the spread or the sum of the readings.
func (d *Dim) GroupBox(g reading.Group) reading.Box {
	box := d.Box
	if g == reading.Sum {
		box = d.SumBox()
	}
	if l := d.groupLimit(g); l != nil {
		if b, err := reading.BoxFor([]*reading.Limit{l}, reading.Hint{}); err == nil {
			box.Before, box.After, box.Unit = max(b.Before, 1), max(b.After, box.After), b.Unit
			box.Signed = b.Signed
		}
	}
	box.Signed = box.Signed && g != reading.Spread
	return box
}

// SumBox is the box for the sum of all readings of the dimension.
func (d *Dim) SumBox() reading.Box {
	box := d.Box
	most := units.Whole(1)
	for range max(box.Before, 1) {
		most = most.Mul(units.Whole(10))
	}
	box.Before = most.Mul(units.Whole(int64(d.Positions.Boxes()))).Sub(units.Whole(1)).Figures()
	return box
}

// limits lists all limits of the dimension that are written, each once.
func (d *Dim) limits() []*reading.Limit {
	var out []*reading.Limit
	for _, l := range append(append([]*reading.Limit{d.Found, d.Left, d.Reuse, d.Repair}, d.FoundBy...), d.LeftBy...) {
		known := l == nil
		for _, o := range out {
			known = known || o == l
		}
		if !known {
			out = append(out, l)
		}
	}
	return out
}

// Zone is the size by letter and grade that a limit was written as, such as
// "Ø130 m6"; empty if it was written in numbers.
func (d *Dim) Zone(l *reading.Limit) string { return d.zones[l] }

// WatchedOnly reports whether the dimension has a limit while it is read, but
// nothing that must stand at closing: a temperature during heating.
func (d *Dim) WatchedOnly() bool {
	if d.Left != nil || d.Found == nil {
		return false
	}
	switch d.Found.Kind {
	case reading.Measured, reading.NoneAllowed, reading.MustBe:
		return true
	}
	return false
}

// An Extreme is one of several readings that a limit looks at first.
type Extreme int

const (
	// Smallest of all readings.
	Smallest Extreme = iota
	// Largest of all readings.
	Largest
)

// Worst lists the readings by which the limits for closing are broken first: the
// largest for "at most", the smallest for "at least", both for a band and where that
// cannot be told; none where only mean, spread or sum is looked at.
func (d *Dim) Worst() []Extreme {
	var low, high bool
	tests := d.tests()
	for _, t := range tests {
		if t.Group == reading.Each {
			low = low || t.Rule != reading.AtMost
			high = high || t.Rule != reading.AtLeast
		}
	}
	if len(tests) == 0 {
		low, high = true, true
	}
	var out []Extreme
	if low {
		out = append(out, Smallest)
	}
	if high {
		out = append(out, Largest)
	}
	return out
}
