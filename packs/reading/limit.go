package reading

import "matchmark/packs/units"

// Fault is what is wrong with a line: where, and what to write instead.
type Fault = units.Fault

// A Mark is the printed key of a dimension, with its place if it has one: D7,
// D7/DE.
type Mark string

// A Kind is the sort of line that a limit is.
type Kind uint8

const (
	// Measured is a limit with tests of numbers.
	Measured Kind = iota
	// Record has no limit; Step tells unit and decimals if they were given.
	Record
	// Words is a line to write on.
	Words
	// Sketch is a grid to draw on.
	Sketch
	// Tick is one box to tick.
	Tick
	// NoneAllowed asks for none of what is looked for.
	NoneAllowed
	// YesOrNo is a question to answer, without a limit.
	YesOrNo
	// SameAsFound asks for the choice or the words found: of numbers it says too little.
	SameAsFound
	// MustBe asks for the one state in Phrases.
	MustBe
	// Choose offers the states in Phrases.
	Choose
)

// A Limit is one line that says what a reading has to be. The numbers of its
// tests are in one unit.
type Limit struct {
	Kind    Kind
	Tests   []Test          // of Measured, joined with "and"
	Phrases []string        // of MustBe one, of Choose two or more
	Step    *units.Quantity // of Record: one of the last digit, as 0.01 mm; nil if not given
}

// A Group says what of the readings of one dimension a test looks at.
type Group uint8

const (
	// Each reading by itself. It is what a test means that names nothing.
	Each Group = iota
	// Mean of all readings.
	Mean
	// Spread is the largest reading less the smallest.
	Spread
	// Sum of all readings.
	Sum
)

// A Rule is the shape of a test.
type Rule uint8

const (
	// Range is from Low to High, both allowed.
	Range Rule = iota
	// AtLeast is Low and more.
	AtLeast
	// AtMost is High and less.
	AtMost
	// Nominal is At, from At+Lower to At+Upper.
	Nominal
	// About is near At; the source gives no tolerance and there is no verdict.
	About
	// Exactly is At pieces.
	Exactly
)

// A Test is one rule for a group of readings.
type Test struct {
	Group Group
	Rule  Rule
	// Low, High and At are set as the Rule says, the others are nil.
	Low, High, At *Value
	// Upper and Lower are the deviations of Nominal, with their signs. Even is
	// true when they were typed as one +/- number.
	Upper, Lower units.Number
	Even         bool
	// Unit is the unit of all numbers of the test; None when it has no number
	// of its own, as in "about D2".
	Unit units.Unit
	// Other is the same limit in another unit, as it stood in brackets; nil if none did.
	Other *Test

	place, width int // where the test stands in the line, for faults found later
}

// values lists those of Low, High and At that are set.
func (t *Test) values() []*Value {
	var out []*Value
	for _, v := range []*Value{t.Low, t.High, t.At} {
		if v != nil {
			out = append(out, v)
		}
	}
	return out
}

// numbers lists the sizes of the test as typed, with the deviations. A size
// under a factor and a rate per length are no sizes of the box and are left out.
func (t *Test) numbers() []units.Number {
	var out []units.Number
	for _, v := range t.values() {
		out = append(out, v.numbers()...)
	}
	if t.Rule == Nominal {
		out = append(out, t.Upper)
		if !t.Even {
			out = append(out, t.Lower)
		}
	}
	return out
}

// Marks lists the other readings that the limit needs, each once, as they come.
func (l *Limit) Marks() []Mark {
	var out []Mark
	for i := range l.Tests {
		for _, v := range l.Tests[i].values() {
			out = v.appendMarks(out)
		}
	}
	return out
}

// NeedsFound reports whether the limit cannot be judged without what was found.
func (l *Limit) NeedsFound() bool {
	if l.Kind == SameAsFound {
		return true
	}
	for i := range l.Tests {
		for _, v := range l.Tests[i].values() {
			if v.needsFound() {
				return true
			}
		}
	}
	return false
}

// Unit gives the unit of the readings, None when the line has none of its own. A
// test of the spread of temperatures is in degrees of rise; the reading itself
// is in the unit of the other tests.
func (l *Limit) Unit() units.Unit {
	if l.Step != nil {
		return l.Step.Unit
	}
	for _, spread := range []bool{false, true} {
		for i := range l.Tests {
			if t := &l.Tests[i]; t.Unit != units.None && (t.Group == Spread) == spread {
				return t.Unit
			}
		}
	}
	return units.None
}

// Decimals gives the most digits behind the point that the limit was typed with.
func (l *Limit) Decimals() int {
	if l.Step != nil {
		return l.Step.Number.Decimals()
	}
	most := 0
	for i := range l.Tests {
		for _, n := range l.Tests[i].numbers() {
			most = max(most, n.Decimals())
		}
	}
	return most
}

// Denominator gives the finest inch fraction that the limit was typed with, 0
// when it was typed in decimals.
func (l *Limit) Denominator() int64 {
	if l.Step != nil {
		return l.Step.Number.Denominator()
	}
	finest := int64(0)
	for i := range l.Tests {
		for _, n := range l.Tests[i].numbers() {
			finest = max(finest, n.Denominator())
		}
	}
	return finest
}

// Band gives the width of the narrowest test that has two ends, to be set against
// the smallest reading of the instrument. A spread counts from 0, since it is
// never less. ok is false when no test has two ends or they hang on other readings.
func (l *Limit) Band() (width units.Quantity, ok bool) {
	for i := range l.Tests {
		w, has := l.Tests[i].band()
		if has && (!ok || w.Number.Cmp(width.Number) < 0) {
			width, ok = w, true
		}
	}
	return width, ok
}

// band gives the width between the two ends of a test.
func (t *Test) band() (units.Quantity, bool) {
	unit := t.Unit.RiseUnit()
	switch {
	case t.Rule == Nominal:
		return units.Quantity{Number: t.Upper.Sub(t.Lower), Unit: unit}, true
	case t.Rule == Range && t.Low.constant() && t.High.constant():
		return units.Quantity{Number: t.High.sum().Sub(t.Low.sum()), Unit: unit}, true
	case t.Rule == AtMost && t.Group == Spread && t.High.constant():
		return units.Quantity{Number: t.High.sum(), Unit: unit}, true
	}
	return units.Quantity{}, false
}

// About gives the size that a reading is about, where the source has no tolerance; nil
// for any other test, and where it hangs on other readings.
func (t *Test) About() *units.Quantity {
	if t.Rule != About || !t.At.constant() {
		return nil
	}
	q := quantity(t.At.sum(), t.Unit)
	return &q
}

// Limits gives the lowest and highest value that the test allows, nil where it
// has no end; ok is false when they hang on other readings, and for About.
func (t *Test) Limits() (low, high *units.Quantity, ok bool) {
	for _, v := range t.values() {
		if !v.constant() {
			return nil, nil, false
		}
	}
	q := func(n units.Number) *units.Quantity { return &units.Quantity{Number: n, Unit: t.Unit} }
	switch t.Rule {
	case Range:
		return q(t.Low.sum()), q(t.High.sum()), true
	case AtLeast:
		return q(t.Low.sum()), nil, true
	case AtMost:
		return nil, q(t.High.sum()), true
	case Nominal:
		at := t.At.sum()
		return q(at.Add(t.Lower)), q(at.Add(t.Upper)), true
	case Exactly:
		return q(t.At.sum()), q(t.At.sum()), true
	}
	return nil, nil, false
}
