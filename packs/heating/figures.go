package heating

import (
	"matchmark/packs/fit"
	"matchmark/packs/heat"
	"matchmark/packs/units"
)

// worded writes a figure for a message, in one of two units, rounded to one side.
func worded(v float64, in, to units.Unit, decimals int, how units.Rounding) string {
	q, ok := units.ComputedAs(v, in, to)
	if !ok {
		return "nothing that can be told"
	}
	return q.Round(decimals, how).Text()
}

func (r *heatReader) temperature(t heat.Celsius, how units.Rounding) string {
	if r.heat.Fahrenheit {
		return worded(float64(t), units.Celsius, units.Fahrenheit, 0, how)
	}
	return worded(float64(t), units.Celsius, units.Celsius, 0, how)
}

// degrees words a temperature as the author writes them: to the nearest degree.
func (r *heatReader) degrees(t heat.Celsius) string { return r.temperature(t, units.Nearest) }

// degreesUp words a temperature that must be reached, degreesDown one that must not be
// passed.
func (r *heatReader) degreesUp(t heat.Celsius) string   { return r.temperature(t, units.Up) }
func (r *heatReader) degreesDown(t heat.Celsius) string { return r.temperature(t, units.Down) }

// fine words an interference or a clearance as the author writes lengths.
func (r *heatReader) fine(v heat.Mm) string {
	if r.heat.Inch {
		return worded(float64(v), units.Millimetre, units.Inch, 4, units.Nearest)
	}
	return worded(float64(v), units.Millimetre, units.Millimetre, 3, units.Nearest)
}

func (r *heatReader) torqueWord(t fit.NewtonMetre, how units.Rounding) string {
	if r.heat.Inch {
		return worded(float64(t), units.NewtonMetre, units.PoundFoot, 0, how)
	}
	return worded(float64(t), units.NewtonMetre, units.NewtonMetre, 0, how)
}

// torqueUp words a torque that is carried, torqueDown one that is held.
func (r *heatReader) torqueUp(t fit.NewtonMetre) string   { return r.torqueWord(t, units.Up) }
func (r *heatReader) torqueDown(t fit.NewtonMetre) string { return r.torqueWord(t, units.Down) }

// percentUp words a share used.
func percentUp(share float64) string {
	return worded(100*share, units.Percent, units.Percent, 0, units.Up)
}
