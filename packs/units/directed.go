package units

// What is done: a quantity is put into another unit and rounded to one side.
//
//	up    loads, stresses, shares used, forces and temperatures that are needed
//	down  capacities, what a fit holds, windows, clearances, room that is left
//
// Up is toward the larger number and down toward the smaller, also below zero: a
// clearance of -30.4 mm is printed as -31 mm. The conversion is exact and is
// rounded once, so that both numbers of a pair, 1000 kg and 2204 lb, lie on the
// safe side of the same amount.

import (
	"math"
	"math/big"
	"strconv"
)

// computedFigures is how far a floating point result is trusted. Fifteen to
// seventeen figures are held, and what a calculation of a few hundred steps loses
// stays behind the twelfth: 75 % worked out as 75.00000000000001 % is 75 %. A
// difference of two such results may leave dust where there is nothing: a load that
// hangs level, worked out as 1e-14°, is not rounded up to 0.1° out of level.
const (
	computedFigures = 12
	dust            = 1e-9
)

// Computed gives an amount that was worked out in floating point, in a unit, as a
// quantity of twelve figures; less than a billionth of the unit is nothing. ok is
// false where it is no ordinary number; the quantity is then 0 of the unit.
func Computed(amount float64, unit Unit) (q Quantity, ok bool) {
	if math.Abs(amount) < dust {
		amount = 0
	}
	r, ok := new(big.Rat).SetString(strconv.FormatFloat(amount, 'e', computedFigures-1, 64))
	if !ok {
		return Quantity{Unit: unit}, false
	}
	return Quantity{Number: Exact(r, 0), Unit: unit}, true
}

// ComputedAs is Computed in another unit: the figure is converted as it was held and
// trusted to twelve figures there. A limit of 400 °F, reckoned with as 204.444… °C, is
// 400 °F again, and not a hair less that rounds down to 399 °F. ok is false where it is
// no ordinary number, or of another dimension.
func ComputedAs(amount float64, unit, to Unit) (q Quantity, ok bool) {
	r := new(big.Rat).SetFloat64(amount) // nil for what is no ordinary number
	if r == nil {
		return Quantity{Unit: to}, false
	}
	c, err := Quantity{Number: Exact(r, 0), Unit: unit}.Convert(to)
	if err != nil {
		return Quantity{Unit: to}, false
	}
	v, _ := c.Number.Rat().Float64()
	return Computed(v, to)
}

// RoundUp gives the quantity in a unit with so many decimals (0 or more), not
// below what it is: for a load, a stress, a share used, a force or a temperature
// that is needed. The error is that of Convert.
func (q Quantity) RoundUp(to Unit, decimals int) (Quantity, error) {
	return q.directed(to, decimals, Up)
}

// RoundDown gives the quantity in a unit with so many decimals (0 or more), not
// above what it is: for a capacity, a window, a clearance. The error is that of
// Convert.
func (q Quantity) RoundDown(to Unit, decimals int) (Quantity, error) {
	return q.directed(to, decimals, Down)
}

func (q Quantity) directed(to Unit, decimals int, how Rounding) (Quantity, error) {
	c, err := q.Convert(to)
	if err != nil {
		return Quantity{}, err
	}
	return c.Round(decimals, how), nil
}
