package reading

import (
	"strconv"
	"strings"
	"unicode"

	"matchmark/packs/units"
)

// settle finds the one unit of a test, gives it to the sizes typed without, and
// sees that the numbers stand in order and have the same decimals. from is where
// the test begins; the cursor stands behind it.
func (c *cursor) settle(from int, t *Test) {
	if !c.ok() {
		return
	}
	sizes := t.sizes()
	unit, bare, ok := c.unitOf(from, t, sizes)
	switch {
	case !ok:
		return
	case bare && unit == units.None, t.bareUnderRate():
		c.noUnit(from, c.pos)
		return
	case t.Group == Spread && unit.Dimension() == units.Temperature:
		rise := unit.RiseUnit().Text()
		c.failFrom(from, "rise", "a spread is a difference, "+unit.Text()+" a temperature: write "+rise, "spread at most 10 "+rise)
		return
	}
	t.Unit = unit
	for _, s := range sizes {
		if s.Unit == units.None {
			s.Unit = unit
		}
	}
	c.sameDecimals(from, t)
	c.order(from, t)
	c.turnedRound(from, t)
	if unit.Counted() {
		for _, n := range t.numbers() {
			c.wholeOnly(from, quantity(n, unit))
		}
	}
}

// wholeOnly sees that of what is counted there is no part.
func (c *cursor) wholeOnly(from int, q units.Quantity) {
	if q.Number.Decimals() == 0 && q.Number.Denominator() == 0 {
		return
	}
	one := quantity(units.Whole(8), q.Unit).Text()
	switch q.Unit {
	case units.Flat:
		c.failFrom(from, "pieces", "no part of a flat: "+q.Text()+"; a share of a turn is told in turns", "exactly "+one, "1/4 +/- 1/12 turn")
	case units.Notch:
		c.failFrom(from, "pieces", "no part of a notch: "+q.Text(), "exactly "+one)
	default:
		c.failFrom(from, "pieces", "no part of a piece: "+q.Text(), "exactly "+one)
	}
}

// sizes lists the sizes of a test that set its unit. A rate counts with what it
// gives (0.5 mm per m gives mm); what it is taken of has a unit of its own.
func (t *Test) sizes() []*units.Quantity {
	var out []*units.Quantity
	for _, v := range t.values() {
		out = v.appendSizes(out)
	}
	return out
}

func (v *Value) appendSizes(out []*units.Quantity) []*units.Quantity {
	for i := range v.Terms {
		switch it := &v.Terms[i].Item; it.Kind {
		case Size, Rate:
			out = append(out, &it.Size)
		case Bracket:
			out = it.Value.appendSizes(out)
		}
	}
	return out
}

// bareUnderRate reports whether a rate is taken of a size that has no unit.
func (t *Test) bareUnderRate() bool {
	bare := false
	for _, v := range t.values() {
		v.each(func(it *Item) {
			if it.Kind == Rate {
				it.Of.each(func(of *Item) { bare = bare || of.Kind == Size && of.Size.Unit == units.None })
			}
		})
	}
	return bare
}

// unitOf finds the one unit of a test; bare tells that a number stands without.
func (c *cursor) unitOf(from int, t *Test, sizes []*units.Quantity) (unit units.Unit, bare, ok bool) {
	unit = t.Unit // of the tolerance
	bare = t.Rule == Nominal && unit == units.None
	for _, s := range sizes {
		switch {
		case s.Unit == units.None:
			bare = true
		case unit == units.None, s.Unit == unit, s.Unit.RiseUnit() == unit && t.Rule == Nominal:
			unit = s.Unit
		case unit.RiseUnit() == s.Unit:
			// A step of temperature added to one: D1 + 10 C rise +/- 2 °C.
		default:
			c.twoUnits(from, unit, s.Unit)
			return unit, bare, false
		}
	}
	return unit, bare, true
}

// twoUnits is the fault of two units side by side.
func (c *cursor) twoUnits(from int, a, b units.Unit) {
	f := "two units in one limit: " + a.Text() + " and " + b.Text()
	if a.Dimension() == b.Dimension() {
		c.failFrom(from, "two-units", f+"; the second goes in brackets", "0.30 to 0.40 mm (0.012 to 0.016 in)")
		return
	}
	c.failFrom(from, "two-units", f+", "+a.Dimension().One()+" and "+b.Dimension().One(), "0.30 to 0.40 mm")
}

// noUnit is the fault of numbers without a unit.
func (c *cursor) noUnit(from, to int) {
	if c.pos = c.skip(to); unicode.IsLetter(c.peek()) || strings.ContainsRune("\"'”″", c.peek()) && !c.end() {
		if c.ahead("and") < 0 {
			c.unknown("a unit is missing")
			return
		}
	}
	c.pos = to
	text := c.typed(from, to)
	c.failAt(from, to-from, "no-unit", "no unit: "+text+" what? Write the unit once, at the end: "+text+" mm", c.with(from, to, text+" mm"))
}

// sameDecimals sees that all sizes of a test have the same decimals, since one
// box takes them all. A whole 0 fits any.
func (c *cursor) sameDecimals(from int, t *Test) {
	var first *units.Number
	for _, n := range t.numbers() {
		if n.Sign() == 0 && n.Decimals() == 0 {
			continue
		}
		if first == nil {
			first = &n
			continue
		}
		a, b := n.Denominator() > 0 || n.Rat().IsInt() && n.Decimals() == 0, first.Denominator() > 0 || first.Rat().IsInt() && first.Decimals() == 0
		switch {
		case a && b: // fractions and whole inches
		case n.Denominator() > 0 || first.Denominator() > 0:
			c.failFrom(from, "mixed-forms", "a fraction and a decimal in one limit: "+first.Text()+" and "+n.Text()+"; the box takes one form", "1/2 +/- 1/64 in", "0.500 +/- 0.016 in")
			return
		case n.Decimals() != first.Decimals():
			most := max(n.Decimals(), first.Decimals())
			message := first.Abs().Text() + " and " + n.Abs().Text() + ": decimals differ, the box takes " + countWord(most)
			t.pad(most)
			c.failFrom(from, "decimals", message, c.with(from, c.pos, groupText(t.Group)+t.ruleText()))
			return
		}
	}
}

// pad writes all sizes of the test with so many decimals.
func (t *Test) pad(decimals int) {
	pad := func(n *units.Number) {
		if n.Decimals() < decimals && n.Sign() != 0 {
			*n = n.Round(decimals, units.Nearest)
		}
	}
	for _, v := range t.values() {
		for i := range v.Terms {
			if v.Terms[i].By == ByNothing && v.Terms[i].Item.Kind == Size {
				pad(&v.Terms[i].Item.Size.Number)
			}
		}
	}
	pad(&t.Upper)
	pad(&t.Lower)
}

// countWord words a small count of decimals.
func countWord(n int) string {
	if n < 7 {
		return [...]string{"none", "one", "two", "three", "four", "five", "six"}[n]
	}
	return strconv.Itoa(n)
}

// order sees that the smaller limit stands first.
func (c *cursor) order(from int, t *Test) {
	if t.Rule != Range || !t.Low.constant() || !t.High.constant() || !c.ok() {
		return
	}
	low, high := t.Low.sum(), t.High.sum()
	switch low.Cmp(high) {
	case 0:
		help := "about "
		if low.Sign() == 0 {
			help = "at most " // nothing, as far as it can be read
		}
		c.failFrom(from, "same-limits", "both limits are the same: "+c.typed(from, c.pos), help+units.Quantity{Number: low, Unit: t.Unit}.Text())
	case 1:
		good := high.Text() + " to " + units.Quantity{Number: low, Unit: t.Unit}.Text()
		c.failFrom(from, "limit-order", "the smaller limit comes first: "+good,
			c.with(from, c.pos, groupText(t.Group)+good), "if the source prints it like this, use says: and tell who turned it round")
	}
}

// turnedRound finds a tolerance larger than its size: the two were most likely
// swapped. Around 0 there is nothing to compare, and a temperature has no size.
func (c *cursor) turnedRound(from int, t *Test) {
	if t.Rule != Nominal || !t.At.constant() || t.Unit.Dimension() == units.Temperature || !c.ok() {
		return
	}
	at, wide := t.At.sum(), t.Upper.Abs()
	if low := t.Lower.Abs(); low.Cmp(wide) > 0 {
		wide = low
	}
	if at.Sign() == 0 || at.Abs().Cmp(wide) >= 0 {
		return
	}
	unit := t.Unit
	low, high, _ := t.Limits()
	c.failFrom(from, "tolerance-size", "the tolerance "+quantity(wide, unit).Text()+" is larger than the size "+quantity(at, unit).Text()+": turned round?",
		c.with(from, c.pos, groupText(t.Group)+wide.Text()+" +/- "+quantity(at.Abs(), unit).Text()),
		c.with(from, c.pos, groupText(t.Group)+low.Number.Text()+" to "+high.Text()))
}

// oneUnit sees that the tests of a limit share their unit; a spread of
// temperatures is in degrees of rise.
func (c *cursor) oneUnit(l *Limit) {
	var first *Test
	for i := range l.Tests {
		t := &l.Tests[i]
		if t.Unit == units.None {
			continue
		}
		if first == nil {
			first = t
			continue
		}
		a, b := first.Unit, t.Unit
		if first.Group == Spread || t.Group == Spread {
			a, b = a.RiseUnit(), b.RiseUnit()
		}
		if a != b {
			c.pos = t.place + t.width
			c.twoUnits(t.place, a, b)
			return
		}
	}
}
