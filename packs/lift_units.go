package packs

import (
	"matchmark/packs/units"
)

// kilograms is a mass as the calculation takes it.
func kilograms(q units.Quantity) float64 {
	c, err := q.Convert(units.Kilogram)
	if err != nil {
		return 0
	}
	x, _ := c.Number.Rat().Float64()
	return x
}
