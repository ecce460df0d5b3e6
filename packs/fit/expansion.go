package fit

import (
	"fmt"
	"strings"
)

// Correction of a size that is read on a warm part.
//
//	L   size of the part, near enough for the correction; mm
//	a   mean expansion of its material near 20 °C; 1/K
//	c   what the size is too large for each degree over 20 °C; mm
//
//	c = a L
//
// Source: ISO 1 (sizes hold at 20 °C); the expansions have their source each.
// Valid: 0 to 60 °C, where the term of second order stays under a thousandth of the
// correction, for an instrument that is itself near 20 °C. An instrument of the same
// material and as warm as the part shows the size at 20 °C of itself.
// Refused: materials that are not in the table, sizes outside 0 to 3150 mm.

// An Expansion is the growth of a material near 20 °C.
type Expansion struct {
	Material string
	Alpha    PerKelvin // mean near 20 °C; by the rest of its material to some 5 %
	Source   string
}

// expansions are those of what shop parts are made of.
var expansions = []Expansion{
	{"steel", 11.5e-6, "Swyt, J. Res. NIST 99 (1994) 31"},
	{"stainless steel", 17.2e-6, "Incropera, Table A.1 note, 9.6e-6/°F for 304"},
	{"cast iron", 10.9e-6, "Gere, Mechanics of Materials, middle of 10.4 to 11.4"},
	{"bronze", 18e-6, "Gere, Mechanics of Materials"},
	{"aluminium", 23.1e-6, "Swyt, J. Res. NIST 99 (1994) 31"},
}

// ExpansionOf finds a material of the table; its error lists those there are.
func ExpansionOf(material string) (Expansion, error) {
	var known []string
	for _, e := range expansions {
		if e.Material == material {
			return e, nil
		}
		known = append(known, e.Material)
	}
	return Expansion{}, fmt.Errorf("the expansion of %q is not known here: %s", material, strings.Join(known, ", "))
}

// PerDegree gives c for a size, in millimetres for each degree Celsius. Its error is
// a *FieldError.
func (e Expansion) PerDegree(size Mm) (Mm, error) {
	if !(size > 0 && size <= 3150) {
		return 0, wrong("size", "%g mm: over 0 up to 3150 mm is wanted for a correction to 20 °C", size)
	}
	return Mm(float64(e.Alpha) * float64(size)), nil
}
