package lift

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"matchmark/packs/units"
)

// Kg is a mass in kilograms, or a force as the weight of that mass.
type Kg float64

// Mm is a length in millimetres.
type Mm float64

// Newton is a force.
type Newton float64

// Kilopascal is a pressure, in kN/m².
type Kilopascal float64

// Celsius is a temperature.
type Celsius float64

// NewtonMetre is a bending moment.
type NewtonMetre float64

// Degree is an angle in degrees.
type Degree float64

// Ratio is a plain number: 1 is the whole, 0.75 is 75 %.
type Ratio float64

// Density is in kilograms per cubic metre.
type Density float64

// standardGravity is in m/s²: ISO 80000-3, conventional value.
const standardGravity = 9.80665

// Newton gives the force of the mass's weight at standard gravity.
func (k Kg) Newton() Newton { return Newton(float64(k) * standardGravity) }

// A Point is a place in the load's own frame: x and y in plan, z up.
type Point struct{ X, Y, Z Mm }

// String quotes a mass as it was given, to a tenth. A result is worded by Up or Down.
func (k Kg) String() string { return quoted(float64(k), " kg") }

// Up words a load or a pull, not below what it is: whole kilograms from 100 up,
// tenths below.
func (k Kg) Up() string { return coarse(float64(k), units.Kilogram, units.Quantity.RoundUp) }

// Down words what a piece may carry, not above what it is, as coarse as Up.
func (k Kg) Down() string { return coarse(float64(k), units.Kilogram, units.Quantity.RoundDown) }

// String quotes a length as it was given, to a tenth.
func (m Mm) String() string { return quoted(float64(m), " mm") }

// Up words a length that is needed, or by which something is off, in whole millimetres.
func (m Mm) Up() string { return directed(float64(m), units.Millimetre, 0, units.Quantity.RoundUp) }

// Down words a length that is left, in whole millimetres.
func (m Mm) Down() string { return directed(float64(m), units.Millimetre, 0, units.Quantity.RoundDown) }

// String gives the angle to the nearest tenth of a degree.
func (d Degree) String() string { return fmt.Sprintf("%.1f°", float64(d)) }

// Up words a tilt or a lean, not below what it is, in tenths of a degree.
func (d Degree) Up() string { return directed(float64(d), units.Degree, 1, units.Quantity.RoundUp) }

// Down words the angle of a leg from horizontal, not above what it is: the flatter
// leg pulls more.
func (d Degree) Down() string { return directed(float64(d), units.Degree, 1, units.Quantity.RoundDown) }

// Percent words a share that is used, in whole per cent and not below what it is.
func (r Ratio) Percent() string {
	return directed(100*float64(r), units.Percent, 0, units.Quantity.RoundUp)
}

// PercentDown words a share that is left or allowed, not above what it is.
func (r Ratio) PercentDown() string {
	return directed(100*float64(r), units.Percent, 0, units.Quantity.RoundDown)
}

// Factor words a factor on a rating with two decimals, not above what it is.
func (r Ratio) Factor() string { return directed(float64(r), units.None, 2, units.Quantity.RoundDown) }

// FactorUp words a factor on a load with two decimals, not below what it is.
func (r Ratio) FactorUp() string { return directed(float64(r), units.None, 2, units.Quantity.RoundUp) }

// Up words a pressure in kN/m², not below what it is, with one decimal.
func (p Kilopascal) Up() string {
	return strings.Replace(directed(float64(p), units.Kilopascal, 1, units.Quantity.RoundUp), "kPa", "kN/m²", 1)
}

// up and down word a temperature in whole degrees, rounded into the band that holds.
func (c Celsius) up() string {
	return directed(float64(c), units.Celsius, 0, units.Quantity.RoundUp)
}

func (c Celsius) down() string {
	return directed(float64(c), units.Celsius, 0, units.Quantity.RoundDown)
}

// A side is one of the two ways of rounding of units.Quantity.
type side func(q units.Quantity, to units.Unit, decimals int) (units.Quantity, error)

// directed writes an amount with so many decimals, rounded to its side.
func directed(amount float64, unit units.Unit, decimals int, to side) string {
	q, ok := units.Computed(amount, unit)
	if !ok {
		return "no number"
	}
	q, err := to(q, unit, decimals)
	if err != nil {
		return "no number"
	}
	return q.Text()
}

// coarse writes whole units from 100 up and tenths below.
func coarse(amount float64, unit units.Unit, to side) string {
	tenths := directed(amount, unit, 1, to)
	if len(strings.TrimLeft(tenths[:strings.Index(tenths+".", ".")], "-")) < 3 {
		return tenths
	}
	return directed(amount, unit, 0, to)
}

// quoted writes an amount that a person gave, to a tenth at most.
func quoted(amount float64, unit string) string {
	return strconv.FormatFloat(math.Round(10*amount)/10, 'f', -1, 64) + unit
}

func radians(d Degree) float64 { return float64(d) * math.Pi / 180 }
func degrees(r float64) Degree { return Degree(r * 180 / math.Pi) }

// finite reports whether every number is an ordinary one.
func finite(xs ...float64) bool {
	for _, x := range xs {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}
