package lift

import (
	"fmt"
	"math"
)

// Kg is a mass in kilograms, or a force as the weight of that mass.
type Kg float64

// Mm is a length in millimetres.
type Mm float64

// Newton is a force.
type Newton float64

// Kilopascal is a pressure, in kN/m².
type Kilopascal float64

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

// String gives the mass rounded to whole kilograms from 100 kg up, and to a
// tenth below, for messages.
func (k Kg) String() string {
	if math.Abs(float64(k)) >= 99.95 {
		return fmt.Sprintf("%.0f kg", float64(k))
	}
	return fmt.Sprintf("%.1f kg", float64(k))
}

// String gives the length to a whole millimetre, for messages.
func (m Mm) String() string { return fmt.Sprintf("%.0f mm", float64(m)) }

// String gives the angle to a tenth of a degree, for messages.
func (d Degree) String() string { return fmt.Sprintf("%.1f°", float64(d)) }

// Percent gives the ratio in whole per cent, for messages.
func (r Ratio) Percent() string { return fmt.Sprintf("%.0f %%", 100*float64(r)) }

// Factor gives the ratio as a factor with two decimals.
func (r Ratio) Factor() string { return fmt.Sprintf("%.2f", float64(r)) }

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
