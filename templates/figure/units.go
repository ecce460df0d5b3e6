package figure

import (
	"math"
	"strings"

	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/packs/units"
)

// A Units writes the figures of a heat in the units that its author uses. What is
// needed, loads or is reached is rounded up, what is held, is left or lasts down, in
// the unit of the paper and once.
type Units struct{ Inch, Fahrenheit bool }

// UnitsOf are the units of a heat.
func UnitsOf(h *job.Heat) Units { return Units{h.Inch, h.Fahrenheit} }

// told writes an amount in a unit of the paper.
func told(v float64, in, to units.Unit, decimals int, how units.Rounding) string {
	return Quantity(rounded(v, in, to, decimals, how))
}

// rounded is an amount in a unit of the paper; what is no number is none.
func rounded(v float64, in, to units.Unit, decimals int, how units.Rounding) units.Quantity {
	q, _ := units.ComputedAs(v, in, to)
	return q.Round(decimals, how)
}

// InterferenceUp is a length of the size of an interference that is counted with or needed, InterferenceDown one that is
// left or may be had.
func (u Units) InterferenceUp(v heat.Mm) string   { return u.fine(v, units.Up) }
func (u Units) InterferenceDown(v heat.Mm) string { return u.fine(v, units.Down) }

func (u Units) fine(v heat.Mm, how units.Rounding) string {
	if u.Inch {
		return told(float64(v), units.Millimetre, units.Inch, 4, how)
	}
	return told(float64(v), units.Millimetre, units.Millimetre, 3, how)
}

// OnChart is an opening as it stands at a line of the chart: in µm or mil, without its
// unit.
func (u Units) OnChart(v heat.Mm, how units.Rounding) string {
	if u.Inch {
		return rounded(float64(v), units.Millimetre, units.Mil, 1, how).Number.Print()
	}
	return rounded(float64(v), units.Millimetre, units.Micrometre, 0, how).Number.Print()
}

// Length is a length of the size of a part, with no more decimals than it has.
func (u Units) Length(v heat.Mm) string {
	to, decimals := units.Millimetre, 2
	if u.Inch {
		to, decimals = units.Inch, 3
	}
	number, unit, _ := strings.Cut(rounded(float64(v), units.Millimetre, to, decimals, units.Nearest).Print(), NBSP)
	if mark := string(units.DecimalMark); strings.Contains(number, mark) {
		number = strings.TrimSuffix(strings.TrimRight(number, "0"), mark)
	}
	return number + NBSP + unit
}

// Along is how far apart two things lie, counted in millimetres, as Length writes it.
func (u Units) Along(mm float64) string { return u.Length(heat.Mm(mm)) }

// Degree is the sign of a degree with the space before it.
func (u Units) Degree() string { return NBSP + u.degrees().Print() }

func (u Units) degrees() units.Unit {
	if u.Fahrenheit {
		return units.Fahrenheit
	}
	return units.Celsius
}

func (u Units) temperature(t heat.Celsius, how units.Rounding) string {
	return rounded(float64(t), units.Celsius, u.degrees(), 0, how).Print()
}

// Temp is a temperature as it was written: to the nearest degree.
func (u Units) Temp(t heat.Celsius) string { return u.temperature(t, units.Nearest) }

// TempUp is a temperature that must be reached, or that something reaches: up to the
// full degree.
func (u Units) TempUp(t heat.Celsius) string { return u.temperature(t, units.Up) }

// AtMost is a temperature that must not be passed: down to the full degree.
func (u Units) AtMost(t heat.Celsius) string { return u.temperature(t, units.Down) }

// AtLeast is a temperature that must be passed: up to the next full 5 °C or 10 °F.
func (u Units) AtLeast(t heat.Celsius) string {
	step := units.Whole(5)
	if u.Fahrenheit {
		step = units.Whole(10)
	}
	q, _ := units.ComputedAs(float64(t), units.Celsius, u.degrees())
	q.Number = q.Number.Quo(step).Round(0, units.Up).Mul(step)
	return q.Print()
}

// Rise is a difference of two temperatures that is needed or reached.
func (u Units) Rise(k heat.KelvinRise) string {
	to := units.CelsiusRise
	if u.Fahrenheit {
		to = units.FahrenheitRise
	}
	return rounded(float64(k), units.KelvinRise, to, 0, units.Up).Print()
}

// ForceUp is what it takes, and so what a tool must be good for, ForceHeld what a joint
// holds: to the two figures that a friction is known to.
func (u Units) ForceUp(n float64) string   { return u.force(n, 2, units.Up) }
func (u Units) ForceHeld(n float64) string { return u.force(n, 2, units.Down) }

// ForceDown is what a tool is good for: three figures, so that a rating of so many
// stays as it was written.
func (u Units) ForceDown(n float64) string { return u.force(n, 3, units.Down) }

func (u Units) force(n float64, figures int, how units.Rounding) string {
	if u.Inch {
		return inFigures(n, units.Newton, units.PoundForce, figures, how)
	}
	return inFigures(n, units.Newton, units.Kilonewton, figures, how)
}

// TorqueDown is a torque that is surely there, TorqueUp one that is carried: to two
// figures and to three.
func (u Units) TorqueDown(nm float64) string { return u.torque(nm, 2, units.Down) }
func (u Units) TorqueUp(nm float64) string   { return u.torque(nm, 3, units.Up) }

func (u Units) torque(nm float64, figures int, how units.Rounding) string {
	if u.Inch {
		return inFigures(nm, units.NewtonMetre, units.PoundFoot, figures, how)
	}
	return inFigures(nm, units.NewtonMetre, units.NewtonMetre, figures, how)
}

// Stress is a stress or pressure without its sign: whole megapascals, or psi to two
// figures, up.
func (u Units) Stress(mpa float64) string {
	if u.Inch {
		return inFigures(math.Abs(mpa), units.Megapascal, units.PSI, 2, units.Up)
	}
	return told(math.Abs(mpa), units.Megapascal, units.Megapascal, 0, units.Up)
}

// inFigures writes an amount in a unit to so many figures.
func inFigures(v float64, in, to units.Unit, figures int, how units.Rounding) string {
	c, _ := units.ComputedAs(v, in, to)
	x, _ := c.Number.Rat().Float64()
	if x == 0 {
		return Quantity(c)
	}
	decimals, step := figures-1-int(math.Floor(math.Log10(math.Abs(x)))), units.Whole(1)
	for ; decimals < 0; decimals++ {
		step = step.Mul(units.Whole(10))
	}
	n := c.Number.Quo(step).Round(decimals, how)
	for decimals > 0 && n.Round(decimals-1, units.Nearest).Cmp(n) == 0 {
		decimals--
		n = n.Round(decimals, units.Nearest)
	}
	c.Number = n.Mul(step)
	return Quantity(c)
}

// Crayon is the mark to put on the skin.
func (u Units) Crayon(l heat.Limit) string {
	if u.Fahrenheit {
		return u.Temp(l.Crayon(heat.InFahrenheit))
	}
	return u.Temp(l.Crayon(heat.InCelsius))
}

// Turns is a speed, as it was written.
func Turns(n fit.PerMinute) string {
	return Quantity(rounded(float64(n), units.None, units.None, 0, units.Up))
}
