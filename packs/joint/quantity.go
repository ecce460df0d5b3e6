package joint

import (
	"fmt"
	"math"
	"math/big"

	"matchmark/packs/thread"
	"matchmark/packs/units"
)

// Newton is a force.
type Newton float64

// NewtonMetre is a torque.
type NewtonMetre float64

// MPa is a stress, in N/mm².
type MPa float64

// Ratio is a plain number: 1 is the whole.
type Ratio float64

// Degree is an angle.
type Degree float64

// A Band is what a force may come to: the least, the figure aimed at, the most.
type Band struct{ Low, Aim, High Newton }

// Percent gives the ratio in whole per cent, rounded up, for messages about stress.
func (r Ratio) Percent() string {
	return fmt.Sprintf("%.0f %%", math.Ceil(100*float64(r)*(1-rounding)))
}

// worded puts figures into a sentence in a language, their numbers written by write.
func worded(t units.Tongue, write func(number string) string, format string, args []any) string {
	said := make([]any, len(args))
	for i, a := range args {
		switch x := a.(type) {
		case Setting:
			said[i] = x.in(t, write)
		case units.Quantity:
			said[i] = write(x.Text())
		case string: // a fixed word, or a thread
			said[i] = units.Said(t, x)
		default:
			said[i] = a
		}
	}
	return fmt.Sprintf(units.Said(t, format), said...)
}

// asTyped leaves a number as it is typed.
func asTyped(number string) string { return number }

// rounding is the relative error of binary sums that a directed rounding must not take
// for a real part: without it 0.75 of proof could print as 76 %.
const rounding = 1e-9

// figuresTold is how many figures a result is told with. Friction is known to two at
// best; the third keeps the rounding from showing in the sums.
const figuresTold = 3

// in gives a value of the base unit in another unit, to three figures. The direction is
// that of the value: Down never says more than there is, Up never less.
func in(value float64, base, unit units.Unit, how units.Rounding) units.Quantity {
	exact := new(big.Rat).SetFloat64(value * slack(how))
	if exact == nil {
		return units.Quantity{Unit: unit}
	}
	q, err := units.Quantity{Number: units.Exact(exact, 0), Unit: base}.Convert(unit)
	if err != nil {
		return units.Quantity{Unit: unit}
	}
	f, _ := q.Number.Rat().Float64()
	decimals := 0
	if f != 0 {
		decimals = figuresTold - 1 - int(math.Floor(math.Log10(math.Abs(f))))
	}
	if decimals >= 0 {
		return q.Round(decimals, how)
	}
	// Round whole tens, hundreds, thousands: 28 300 lbf and not 28 349.
	scale := units.Exact(new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(-decimals)), nil)), 0)
	n := q.Number.Quo(scale).Round(0, how).Mul(scale)
	return units.Quantity{Number: units.Exact(n.Rat(), 0), Unit: unit}
}

// slack keeps a directed rounding from taking the error of binary sums for a real part.
func slack(how units.Rounding) float64 {
	switch how {
	case units.Up:
		return 1 - rounding
	case units.Down:
		return 1 + rounding
	}
	return 1
}

// base gives the value of a quantity in a unit of its own dimension; the caller has
// looked at the dimension.
func base(q units.Quantity, unit units.Unit) float64 {
	c, err := q.Convert(unit)
	if err != nil {
		return math.NaN()
	}
	f, _ := c.Number.Rat().Float64()
	return f
}

func newtons(q units.Quantity) Newton           { return Newton(base(q, units.Newton)) }
func newtonMetres(q units.Quantity) NewtonMetre { return NewtonMetre(base(q, units.NewtonMetre)) }
func megapascals(q units.Quantity) MPa          { return MPa(base(q, units.Megapascal)) }
func millimetres(q units.Quantity) thread.Mm    { return thread.Mm(base(q, units.Millimetre)) }

// ratio gives a plain number.
func ratio(n units.Number) Ratio {
	f, _ := n.Rat().Float64()
	return Ratio(f)
}
