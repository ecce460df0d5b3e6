package job

import (
	"slices"

	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// Answers are the answers that a dimension can have that is ticked, as they are typed;
// none for one that is measured.
func (d *Dim) Answers() []string {
	l := d.Left
	if l == nil {
		l = d.Found
	}
	if l == nil {
		return nil
	}
	var out []string
	for _, a := range l.Answers() {
		out = append(out, a.Typed())
	}
	return out
}

// Judged reports whether a reading of the dimension is in or out of a limit for
// closing, and not only recorded or near something.
func (d *Dim) Judged() bool { return judges(d.Left) }

// JudgedFound reports whether a reading is in or out of a limit as it is found, and set no
// more.
func (d *Dim) JudgedFound() bool { return d.Left == nil && judges(d.Found) }

// JudgedTwice reports whether a limit as found stands beside one for closing: the reading has
// one verdict, which is told by the one for closing.
func (d *Dim) JudgedTwice() bool { return d.Left != nil && judges(d.Found) }

// judges reports whether a reading is in or out of a limit, and not only recorded or near
// something; no limit judges nothing.
func judges(l *reading.Limit) bool {
	if l == nil {
		return false
	}
	switch l.Kind {
	case reading.MustBe, reading.NoneAllowed:
		return true
	case reading.Measured:
		for _, t := range l.Tests {
			if t.Rule != reading.About {
				return true
			}
		}
	}
	return false
}

// States are the states that the limits of a dimension let choose, or that must be, as written.
func (d *Dim) States() []string {
	var out []string
	for _, l := range []*reading.Limit{d.Found, d.Left} {
		if l != nil {
			out = append(out, l.Phrases...)
		}
	}
	return out
}

// Marks lists the other readings that a dimension is worked out from, or its
// limits are.
func (d *Dim) Marks() []reading.Mark {
	var out []reading.Mark
	if d.Formula != nil {
		out = d.Formula.Marks()
	}
	for _, l := range d.Limits() {
		out = append(out, l.Marks()...)
	}
	return out
}

// NotSourced reports whether the limit of a dimension does not say where it comes
// from.
func (d *Dim) NotSourced() bool { return d.Source == "" && d.Judged() }

// LeftLimits lists the limits for closing: one, or one a position.
func (d *Dim) LeftLimits() []*reading.Limit {
	switch {
	case len(d.LeftBy) > 0:
		return d.LeftBy
	case d.Left == nil:
		return nil
	}
	return []*reading.Limit{d.Left}
}

// EndAsNew reports whether a limit for an old or a mended part leaves an end to that for new
// ones, because it hangs on other readings or differs by position.
func (d *Dim) EndAsNew(l *reading.Limit) bool {
	_, rest := reading.Whole(l, d.LeftLimits())
	return rest
}

// Tests lists the tests of all limits for closing.
func (d *Dim) Tests() []reading.Test {
	var out []reading.Test
	for _, l := range d.LeftLimits() {
		out = append(out, l.Tests...)
	}
	return out
}

// ReadOn is the part that a reading of one part hangs on, with the assemblies that
// it belongs to. Read on the bench it does not miss the machine.
func (d *Dim) ReadOn(upward []*Part) []*Part {
	if len(upward) > 1 && (d.FoundAt == nil || d.FoundAt.Bench) && (d.LeftAt == nil || d.LeftAt.Bench) {
		return upward[:1]
	}
	return upward
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
	for _, l := range d.Limits() {
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

// Limits lists all limits of the dimension that are written, each once.
func (d *Dim) Limits() []*reading.Limit {
	var out []*reading.Limit
	for _, l := range append(append([]*reading.Limit{d.Found, d.Left, d.Worn, d.Mended}, d.FoundBy...), d.LeftBy...) {
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
func (d *Dim) Zone(l *reading.Limit) string { return d.Zones[l] }

// WatchedOnly reports whether the dimension has a limit while it is read, but
// nothing that must stand at closing: a temperature during heating.
func (d *Dim) WatchedOnly() bool { return d.Left == nil && d.FoundJudged() }

// FoundJudged reports whether found: names a limit, and not only how its box is written.
func (d *Dim) FoundJudged() bool {
	if d.Found == nil {
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
func (d *Dim) Worst() []Extreme { return worst(d.Tests()) }

// Worst lists the readings by which one limit of several is broken first, as that of a
// dimension does.
func (l LimitAt) Worst() []Extreme { return worst(l.Limit.Tests) }

func worst(tests []reading.Test) []Extreme {
	var low, high bool
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

// ByHand reports whether the dimension, or a limit of it, is worked out from boxes, or
// it is made up of leaves.
func (d *Dim) ByHand() bool {
	return d.Formula != nil || d.OneIs != nil || d.Shims != nil || len(d.FoundWork.Limits) > 0 || len(d.LeftWork.Limits) > 0
}

// RecordOnly reports whether the reading has no verdict: its limit only says how it is
// written down.
func (d *Dim) RecordOnly() bool {
	return !slices.ContainsFunc(d.Limits(), func(l *reading.Limit) bool { return l.Kind != reading.Record || l.Step == nil })
}
