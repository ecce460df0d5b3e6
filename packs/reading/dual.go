package reading

import (
	"math/big"

	"matchmark/packs/units"
)

// sameInBoth compares a test with the one in the bracket behind it, number by
// number.
func (c *cursor) sameInBoth(from int, t, o *Test) {
	to := c.pos
	for _, v := range append(t.values(), o.values()...) {
		if !v.plain() {
			c.failAt(from, to-from, "brackets", "only sizes can be told in another unit", "0.30 to 0.40 mm (0.012 to 0.016 in)")
			return
		}
	}
	a, b := t.Unit, o.Unit
	switch {
	case a == b:
		c.failAt(from, to-from, "brackets", "the bracket is in the same unit, "+a.Text(), t.ruleText())
		return
	case a.Dimension() == units.Rise && b.Dimension() == units.Temperature, a.Dimension() == units.Temperature && b.Dimension() == units.Rise:
		c.riseInBrackets(from, to, t, o)
		return
	case a.Dimension() != b.Dimension():
		c.failAt(from, to-from, "brackets", "the bracket is in "+b.Text()+", "+b.Dimension().One()+"; before it stands "+a.Dimension().One(), t.ruleText())
		return
	}
	for i, v := range t.values() {
		end := eitherWay
		if t.Rule == Range && i == 0 || t.Rule == AtLeast {
			end = lower
		} else if t.Rule == Range || t.Rule == AtMost {
			end = upper
		}
		c.agree(from, to, quantity(v.sum(), a), quantity(o.values()[i].sum(), b), end)
	}
	if t.Rule == Nominal {
		c.agree(from, to, quantity(t.Upper, a.RiseUnit()), quantity(o.Upper, b.RiseUnit()), upper)
		c.agree(from, to, quantity(t.Lower, a.RiseUnit()), quantity(o.Lower, b.RiseUnit()), lower)
	}
}

func quantity(n units.Number, u units.Unit) units.Quantity {
	return units.Quantity{Number: n, Unit: u}
}

// An end says which way a converted number may be rounded: a limit inward, so
// that the band does not grow, anything else only to the nearest.
type end uint8

const (
	eitherWay end = iota
	lower
	upper
)

// agree sees that two quantities are one size told in two units.
func (c *cursor) agree(from, to int, a, b units.Quantity, e end) {
	if !c.ok() || agrees(a, b, e) {
		return
	}
	converted, err := a.Convert(b.Unit)
	if err != nil {
		return // the dimensions have been compared
	}
	slip, finer := slipped(a, b, e)
	right := likeTyped(converted, b.Number, finer)
	message := a.Text() + " is " + right.Text() + ", not " + b.Text()
	if slip != "" {
		message += ": " + slip
	}
	c.failAt(from, to-from, "dual", message, "("+right.Text()+")", "if the source prints it like this, use says: and write which one is used")
}

// likeTyped rounds a converted quantity to the form that model was typed in, with
// so many decimals more, and more again while nothing would be left of it.
func likeTyped(q units.Quantity, model units.Number, finer int) units.Quantity {
	if d := model.Denominator(); d > 0 {
		top := q.Number.Mul(units.Whole(d)).Round(0, units.Nearest)
		if top.Sign() != 0 {
			return quantity(top.Quo(units.Whole(d)), q.Unit)
		}
	}
	decimals := model.Decimals() + finer
	r := q.Round(decimals, units.Nearest)
	for q.Number.Sign() != 0 && r.Number.Sign() == 0 && decimals < units.MaxFigures {
		decimals++
		r = q.Round(decimals, units.Nearest)
	}
	return r
}

// slipped names the usual slips of a conversion, and how many decimals more than
// typed the right number needs.
func slipped(a, b units.Quantity, e end) (slip string, finer int) {
	exact, stepA, step := new(big.Rat), a.Number.Step().Rat(), b.Number.Step().Rat()
	times := func(r *big.Rat) (units.Quantity, *big.Rat) {
		return quantity(units.Exact(new(big.Rat).Mul(b.Number.Rat(), r), 0), b.Unit), new(big.Rat).Mul(step, r)
	}
	for i, power := range []int64{10, 100, 1000} {
		if q, s := times(big.NewRat(power, 1)); within(a, q, e, stepA, s) {
			return "a factor of " + units.Whole(power).Text(), 0
		}
		if q, s := times(big.NewRat(1, power)); within(a, q, e, stepA, s) {
			return "a factor of " + units.Whole(power).Text(), i + 1
		}
	}
	point, err := quantity(a.Number, temperatureOf(a.Unit)).Convert(temperatureOf(b.Unit))
	switch {
	case err != nil:
	case a.Unit.Dimension() == units.Rise && within(point, quantity(b.Number, point.Unit), eitherWay, exact, step):
		return "converted as a temperature, with the 32 added", 0
	case a.Unit.Dimension() == units.Temperature:
		rise, err := quantity(a.Number, a.Unit.RiseUnit()).Convert(b.Unit.RiseUnit())
		if err == nil && within(rise, quantity(b.Number, rise.Unit), eitherWay, exact, step) {
			return "converted as a rise, without the 32", 0
		}
	}
	return "", 0
}

// temperatureOf gives the temperature unit of a unit of rise.
func temperatureOf(u units.Unit) units.Unit {
	switch u {
	case units.CelsiusRise, units.KelvinRise:
		return units.Celsius
	case units.FahrenheitRise:
		return units.Fahrenheit
	}
	return u
}

// agrees reports whether a and b can be one size: they differ by no more than
// both were rounded, or one of them is the other rounded inward.
func agrees(a, b units.Quantity, e end) bool {
	return within(a, b, e, a.Number.Step().Rat(), b.Number.Step().Rat())
}

// within is agrees with the steps given that the two were rounded to, each in the
// unit of its own quantity; 0 for one that was not rounded.
func within(a, b units.Quantity, e end, stepA, stepB *big.Rat) bool {
	same, err := b.Convert(a.Unit)
	if err != nil {
		return false
	}
	size, err := quantity(units.Exact(stepB, 0), b.Unit.RiseUnit()).Convert(a.Unit.RiseUnit())
	if err != nil {
		return false
	}
	stepInA := size.Number.Rat()
	// gap is how far b lies above a.
	gap := new(big.Rat).Sub(same.Number.Rat(), a.Number.Rat())
	half := new(big.Rat).Mul(new(big.Rat).Add(stepA, stepInA), big.NewRat(1, 2))
	if new(big.Rat).Abs(gap).Cmp(half) <= 0 {
		return true
	}
	// Inward: a lower limit goes up when it is converted, an upper one down. If b
	// is the converted one its own step counts, else that of a.
	if e == upper {
		gap.Neg(gap)
	}
	switch {
	case e == eitherWay:
		return false
	case gap.Sign() > 0:
		return gap.Cmp(stepInA) < 0
	}
	return gap.Neg(gap).Cmp(stepA) < 0
}

// riseInBrackets is the fault of a rise told as a temperature, or the reverse.
func (c *cursor) riseInBrackets(from, to int, t, o *Test) {
	a, b := quantity(t.values()[0].sum(), t.Unit), quantity(o.values()[0].sum(), o.Unit)
	if a.Unit.Dimension() == units.Rise {
		right, err := a.Convert(o.Unit.RiseUnit())
		if err != nil {
			return
		}
		message := a.Text() + " is " + right.Round(b.Number.Decimals(), units.Nearest).Text() + ", not " + b.Text() + ": a rise is a difference, no 32 is added"
		c.failAt(from, to-from, "rise", message, "("+right.Round(b.Number.Decimals(), units.Nearest).Text()+")")
		return
	}
	c.failAt(from, to-from, "rise", a.Text()+" is a temperature, "+b.Text()+" a difference of two; over another part it is "+
		quantity(a.Number, a.Unit.RiseUnit()).Text(), t.ruleText())
}
