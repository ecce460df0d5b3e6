package reading

import (
	"errors"

	"matchmark/packs/units"
)

// A Form is the shape of a write-in box.
type Form uint8

const (
	// Digits is a box with a printed point and its unit.
	Digits Form = iota
	// Fraction is a box for a whole number and a fraction of given denominator.
	Fraction
	// Line is a line for words.
	Line
	// Grid is a field to draw on.
	Grid
	// Ticks is one tick box for each answer, which Limit.Answers lists.
	Ticks
)

// A Box is the write-in box that one reading needs.
type Box struct {
	Form          Form
	Before, After int        // digits before and behind the point; for a Fraction of its whole part, and none
	Signed        bool       // needs a box for + or -
	Unit          units.Unit // printed behind the box
	Denominator   int64      // of a Fraction: the finest one of the limit
}

// A Hint is what else is known of the size of a reading. Nil is not known.
type Hint struct {
	Nominal *units.Quantity // about how large it is
	High    *units.Quantity // the end of the instrument's range
	Reads   *units.Quantity // the smallest reading of the instrument
	Signed  bool            // the reading can be below zero though no limit is
}

// BoxFor sizes the box of one reading for all its limits together (as found, as
// left, for reuse); nil ones count as not written. The digits before the point
// take the largest value that the limits name with as much again beyond them, so
// that a reading that is out still fits: for two ends one band more, for one end
// twice its value (common practice, no source). Other readings than lengths and
// temperatures are far out when they are: with an "at most" alone their box has room
// for ten times it, and one with either end alone for all that the instrument shows,
// where its range is known (common practice, no source). Where no limit has a size of its
// own the nominal size tells, then the end of the instrument's range. The digits
// behind the point are those of the limits as typed, else of the instrument, else
// of the nominal size. What cannot be told is an error that says what to give.
func BoxFor(limits []*Limit, hint Hint) (Box, error) {
	b := Box{Signed: hint.Signed, After: -1}
	form, formSet := Digits, false
	var large units.Number
	sized, open := false, limitEnds{}
	for _, l := range limits {
		if l == nil || l.Kind == SameAsFound && formSet {
			continue
		}
		f := l.form()
		if formSet && f != form {
			return Box{}, errors.New("one limit asks for " + formWord(form) + " and another for " + formWord(f) + "; one box takes one of them")
		}
		form, formSet = f, true
		if f != Digits {
			continue
		}
		if err := b.takeUnit(l); err != nil {
			return Box{}, err
		}
		b.takeDigits(l)
		if n, below, ok := l.reach(); ok {
			sized = true
			if n.Cmp(large) > 0 {
				large = n
			}
			b.Signed = b.Signed || below
		}
		open.take(l)
	}
	if b.Form = form; form != Digits {
		return Box{Form: form}, nil
	}
	return b.finish(open.reach(large, b.Unit, hint), sized, hint)
}

// form gives the shape of the box of one limit; a fraction is Digits until all
// limits are known.
func (l *Limit) form() Form {
	switch l.Kind {
	case Measured, Record:
		return Digits
	case Sketch:
		return Grid
	case Words, SameAsFound:
		return Line
	}
	return Ticks
}

func formWord(f Form) string {
	return [...]string{"a number", "a number", "words", "a sketch", "a tick"}[f]
}

// takeUnit sees that a limit has the unit of those before.
func (b *Box) takeUnit(l *Limit) error {
	u := l.Unit()
	switch {
	case u == units.None:
	case b.Unit == units.None || b.Unit == u.RiseUnit():
		b.Unit = u
	case b.Unit != u && b.Unit.RiseUnit() != u:
		return errors.New("one limit is in " + b.Unit.Text() + " and another in " + u.Text() + "; one box takes one unit")
	}
	return nil
}

// takeDigits takes the decimals, or the fraction, of a limit that has sizes.
func (b *Box) takeDigits(l *Limit) {
	if l.Step == nil && !l.hasNumbers() {
		return
	}
	b.Denominator = max(b.Denominator, l.Denominator())
	b.After = max(b.After, l.Decimals())
}

func (l *Limit) hasNumbers() bool {
	for i := range l.Tests {
		if len(l.Tests[i].numbers()) > 0 {
			return true
		}
	}
	return false
}

// reach gives the largest value, without sign, that a box for the limit has to
// hold, and whether values below zero belong to it. ok is false when the limit
// does not tell.
func (l *Limit) reach() (largest units.Number, below, ok bool) {
	for i := range l.Tests {
		t := &l.Tests[i]
		if t.Group == Spread || t.Group == Sum {
			continue // tell nothing of a single reading
		}
		low, high, known := t.Limits()
		if t.Rule == About && t.At.constant() {
			q := quantity(t.At.sum(), t.Unit)
			low, high, known = nil, &q, true
		}
		if !known {
			continue
		}
		ok = true
		for _, n := range ends(low, high) {
			if n.Abs().Cmp(largest) > 0 {
				largest = n.Abs()
			}
		}
		below = below || low != nil && low.Number.Sign() < 0 || high != nil && high.Number.Sign() < 0
	}
	return largest, below, ok
}

// ends gives the values out to which a box should reach beyond the limits.
func ends(low, high *units.Quantity) []units.Number {
	switch {
	case low == nil:
		return []units.Number{high.Number.Add(high.Number)}
	case high == nil:
		return []units.Number{low.Number.Add(low.Number)}
	}
	band := high.Number.Sub(low.Number)
	if band.Sign() == 0 { // a count of pieces
		band = high.Number
	}
	return []units.Number{low.Number.Sub(band), low.Number, high.Number, high.Number.Add(band)}
}

// finish fills in what the limits did not tell from the hint.
func (b Box) finish(large units.Number, sized bool, hint Hint) (Box, error) {
	for _, q := range []*units.Quantity{hint.Nominal, hint.Reads, hint.High} {
		if q != nil && b.Unit == units.None {
			b.Unit = q.Unit
		}
	}
	if b.Unit == units.None {
		return Box{}, errors.New("no limit and no instrument tells the unit; write record to 0.01 mm")
	}
	nominal, err := hinted(hint.Nominal, b.Unit)
	if err != nil {
		return Box{}, err
	}
	high, err := hinted(hint.High, b.Unit)
	if err != nil {
		return Box{}, err
	}
	switch {
	case nominal != nil:
		sized = true
		if n := nominal.Number.Abs(); n.Cmp(large) > 0 {
			large = n
		}
		b.Signed = b.Signed || nominal.Number.Sign() < 0
	case !sized && high != nil:
		sized, large = true, high.Number.Abs()
	}
	if !sized {
		return Box{}, errors.New("nothing tells how many digits the reading has; give its nominal size or an instrument with a range")
	}
	if b.Denominator > 0 {
		b.Form, b.After = Fraction, 0
	} else if b.After < 0 {
		if err := b.decimalsFrom(hint); err != nil {
			return Box{}, err
		}
	}
	b.Before = large.Figures()
	return b, nil
}

// hinted converts a hint to the unit of the box.
func hinted(q *units.Quantity, u units.Unit) (*units.Quantity, error) {
	if q == nil {
		return nil, nil
	}
	c, err := q.Convert(u)
	if err != nil {
		if r, err := q.Convert(u.RiseUnit()); err == nil {
			return &r, nil
		}
		return nil, errors.New("the box is in " + u.Text() + ", but " + err.Error())
	}
	return &c, nil
}

// decimalsFrom takes the digits behind the point from the instrument or the
// nominal size, in the unit that they are told in only: a converted number has no
// digits of its own.
func (b *Box) decimalsFrom(hint Hint) error {
	for _, q := range []*units.Quantity{hint.Reads, hint.Nominal} {
		if q == nil || q.Unit != b.Unit {
			continue
		}
		if d := q.Number.Denominator(); d > 0 {
			b.Form, b.Denominator, b.After = Fraction, d, 0
			return nil
		}
		b.After = q.Number.Decimals()
		return nil
	}
	return errors.New("nothing tells how many decimals the reading has; write record to 0.01 " + b.Unit.Text() + ", or an instrument with its reads")
}
