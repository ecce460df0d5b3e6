package figure

import (
	"fmt"
	"math"
	"strconv"

	"matchmark/packs/heat"
	"matchmark/packs/job"
)

// A Units writes the figures of a heat in the units that its author uses.
// Figures are rounded to what can be read at the machine, and where rounding has
// a safe side, to that side.
type Units struct{ Inch, Fahrenheit bool }

// UnitsOf are the units of a heat.
func UnitsOf(h *job.Heat) Units { return Units{h.Inch, h.Fahrenheit} }

// Interference is a length of the size of an interference.
func (u Units) Interference(v heat.Mm) string {
	if u.Inch {
		return trueMinus(fmt.Sprintf("%.4f", float64(v)/25.4)) + NBSP + "in"
	}
	return trueMinus(fmt.Sprintf("%.3f", float64(v))) + NBSP + "mm"
}

// Length is a length of the size of a part, with no more decimals than it has.
func (u Units) Length(v heat.Mm) string {
	if u.Inch {
		return strconv.FormatFloat(math.Round(float64(v)/25.4*1000)/1000, 'f', -1, 64) + NBSP + "in"
	}
	return strconv.FormatFloat(math.Round(float64(v)*100)/100, 'f', -1, 64) + NBSP + "mm"
}

// scale turns a temperature into the one printed.
func (u Units) scale(t heat.Celsius) float64 {
	if u.Fahrenheit {
		return float64(t)*9/5 + 32
	}
	return float64(t)
}

// Degree is the sign of a degree with the space before it.
func (u Units) Degree() string {
	if u.Fahrenheit {
		return NBSP + "°F"
	}
	return NBSP + "°C"
}

// Temp is a temperature to the nearest degree.
func (u Units) Temp(t heat.Celsius) string {
	return trueMinus(fmt.Sprintf("%.0f", u.scale(t))) + u.Degree()
}

// TempUp is a temperature that must be reached: up to the full degree.
func (u Units) TempUp(t heat.Celsius) string {
	return trueMinus(fmt.Sprintf("%.0f", math.Ceil(u.scale(t)-1e-9))) + u.Degree()
}

// AtLeast is a temperature that must be passed: up to the next full 5 °C or 10 °F.
func (u Units) AtLeast(t heat.Celsius) string {
	step := 5.0
	if u.Fahrenheit {
		step = 10
	}
	return fmt.Sprintf("%.0f", step*math.Ceil(u.scale(t)/step-1e-9)) + u.Degree()
}

// AtMost is a temperature that must not be passed: down to the full degree.
func (u Units) AtMost(t heat.Celsius) string {
	return fmt.Sprintf("%.0f", math.Floor(u.scale(t)+1e-9)) + u.Degree()
}

// Rise is a difference of two temperatures.
func (u Units) Rise(k heat.KelvinRise) string {
	if u.Fahrenheit {
		return fmt.Sprintf("%.0f", float64(k)*9/5) + u.Degree()
	}
	return fmt.Sprintf("%.0f", float64(k)) + u.Degree()
}

// Force is in kilonewtons, or in pounds where inches are written; two figures are
// all that a friction is known to.
func (u Units) Force(n float64) string {
	return u.newtons(n, func(v float64) float64 { return figures(v, 2, math.Round) })
}

// ForceUp is what a tool must be good for: two figures, upward.
func (u Units) ForceUp(n float64) string {
	return u.newtons(n, func(v float64) float64 { return figures(v-1e-9*v, 2, math.Ceil) })
}

// ForceDown is what a tool is good for: three figures, downward, so that a rating
// of so many stays as it was written.
func (u Units) ForceDown(n float64) string {
	return u.newtons(n, func(v float64) float64 { return figures(v+1e-9*v, 3, math.Floor) })
}

func (u Units) newtons(n float64, round func(float64) float64) string {
	if u.Inch {
		return Thousands(round(n/4.4482216152605)) + NBSP + "lbf"
	}
	return Thousands(round(n/1000)) + NBSP + "kN"
}

// TorqueDown is a torque that is surely there: down to the full hundred.
func (u Units) TorqueDown(nm float64) string {
	unit, name := 1.0, "N·m"
	if u.Inch {
		unit, name = 1.3558179483314004, "lb-ft"
	}
	return Thousands(math.Floor(nm/unit/100)*100) + NBSP + name
}

// Stress is a stress or pressure without its sign: whole megapascals, or psi to
// two figures.
func (u Units) Stress(mpa float64) string {
	if u.Inch {
		return Thousands(figures(math.Abs(mpa)/0.006894757293168361, 2, math.Round)) + NBSP + "psi"
	}
	return fmt.Sprintf("%.0f", math.Abs(mpa)) + NBSP + "MPa"
}

// Crayon is the mark to put on the skin: the next step below the limit at which
// crayons are sold, 10 °C or 25 °F. Common practice, no source.
func (u Units) Crayon(l heat.Limit) string {
	if !u.Fahrenheit {
		return u.Temp(l.Crayon())
	}
	return fmt.Sprintf("%.0f", 25*(math.Ceil(u.scale(l.At)/25-1e-9)-1)) + u.Degree()
}
