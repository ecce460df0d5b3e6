package lift

import (
	"math"

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

// String quotes a mass as it was given, to a tenth of a kilogram. A result is
// worded by Up or Down.
func (k Kg) String() string { return k.Given().String() }

// Given words a mass as a person wrote it.
func (k Kg) Given() Words { return Words{amount: float64(k), unit: units.Kilogram, fine: true} }

// Up words a load or a pull, not below what it is: whole kilograms or pounds from 100
// up, tenths below.
func (k Kg) Up() Words { return Words{amount: float64(k), unit: units.Kilogram, to: units.Up} }

// Down words what a piece may carry, not above what it is, as coarse as Up.
func (k Kg) Down() Words { return Words{amount: float64(k), unit: units.Kilogram, to: units.Down} }

// String quotes a length as it was given, to a tenth of a millimetre.
func (m Mm) String() string { return m.Given().String() }

// Given words a length as a person wrote it.
func (m Mm) Given() Words { return Words{amount: float64(m), unit: units.Millimetre, fine: true} }

// Up words a length that is needed, or by which something is off, in whole millimetres
// or tenths of an inch.
func (m Mm) Up() Words { return Words{amount: float64(m), unit: units.Millimetre, to: units.Up} }

// Down words a length that is left, as fine as Up.
func (m Mm) Down() Words { return Words{amount: float64(m), unit: units.Millimetre, to: units.Down} }

// Size words a length to which something is to be made or set, to the nearest whole
// millimetre or tenth of an inch.
func (m Mm) Size() Words { return Words{amount: float64(m), unit: units.Millimetre} }

// String gives the angle to the nearest tenth of a degree.
func (d Degree) String() string { return d.Given().String() }

// Given words an angle to the nearest tenth of a degree.
func (d Degree) Given() Words { return directed(float64(d), units.Degree, 1, units.Nearest) }

// Up words a tilt or a lean, not below what it is, in tenths of a degree.
func (d Degree) Up() Words { return directed(float64(d), units.Degree, 1, units.Up) }

// Down words the angle of a leg from horizontal, not above what it is: the flatter
// leg pulls more.
func (d Degree) Down() Words { return directed(float64(d), units.Degree, 1, units.Down) }

// Percent words a share that is used, in whole per cent and not below what it is.
func (r Ratio) Percent() Words {
	return directed(100*float64(r), units.Percent, 0, units.Up)
}

// PercentDown words a share that is left or allowed, not above what it is.
func (r Ratio) PercentDown() Words {
	return directed(100*float64(r), units.Percent, 0, units.Down)
}

// Factor words a factor on a rating with two decimals, not above what it is.
func (r Ratio) Factor() Words { return directed(float64(r), units.None, 2, units.Down) }

// FactorUp words a factor on a load with two decimals, not below what it is.
func (r Ratio) FactorUp() Words { return directed(float64(r), units.None, 2, units.Up) }

// Given words a pressure as a person wrote it.
func (p Kilopascal) Given() Words {
	return Words{amount: float64(p), unit: units.Kilopascal, fine: true}
}

// Up words a pressure, not below what it is: in kN/m² with one decimal, or in lb/ft².
func (p Kilopascal) Up() Words {
	return Words{amount: float64(p), unit: units.Kilopascal, to: units.Up}
}

// String gives the temperature as it was given.
func (c Celsius) String() string { return c.Given().String() }

// Given words a temperature as a person wrote it.
func (c Celsius) Given() Words { return Words{amount: float64(c), unit: units.Celsius, fine: true} }

// Up and Down word a temperature in whole degrees: the low end of a band goes up and
// the high end down, into the band that holds.
func (c Celsius) Up() Words { return Words{amount: float64(c), unit: units.Celsius, to: units.Up} }

// Down is told at Up.
func (c Celsius) Down() Words { return Words{amount: float64(c), unit: units.Celsius, to: units.Down} }

// directed words an amount that has one unit only, with so many decimals, rounded to its
// side.
func directed(amount float64, unit units.Unit, decimals int, to units.Rounding) Words {
	return Words{amount: amount, unit: unit, to: to, decimals: &decimals}
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
