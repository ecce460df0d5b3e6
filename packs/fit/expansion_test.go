package fit

import (
	"math"
	"testing"
)

// The expansions of steel and aluminium, as Swyt, J. Res. NIST 99 (1994) 31, prints
// them in his introduction (read): 11.5 and 23.1 parts in a million for each degree,
// which is micrometres on a metre.
func TestCorrectionAgainstSwyt(t *testing.T) {
	for material, micrometresOnAMetre := range map[string]float64{"steel": 11.5, "aluminium": 23.1} {
		e, err := ExpansionOf(material)
		if err != nil {
			t.Fatal(err)
		}
		got, err := e.PerDegree(1000)
		if err != nil || math.Abs(float64(got)*1000-micrometresOnAMetre) > 1e-9 {
			t.Errorf("%s: %g µm on a metre for each degree, %v, want %g (Swyt 1994)", material, float64(got)*1000, err, micrometresOnAMetre)
		}
	}
}

// The straight correction stands for the law L / (1 + a (T - 20)) of Measured within
// a thousandth of itself over the span that it is told for.
func TestCorrectionIsNearTheLaw(t *testing.T) {
	for _, e := range expansions {
		for _, at := range []Celsius{0, 10, 30, 60} {
			const size = 420.0
			per, err := e.PerDegree(size)
			if err != nil {
				t.Fatal(err)
			}
			straight := float64(per) * (float64(at) - 20)
			warm := size * (1 + float64(e.Alpha)*(float64(at)-20))
			law, _ := at20("size", Mm(warm), at, e.Alpha)
			if off := math.Abs(warm - straight - float64(law)); off > 1e-3*math.Abs(straight) {
				t.Errorf("%s at %g °C: %g mm off the law", e.Material, float64(at), off)
			}
		}
	}
}

func TestCorrectionRefuses(t *testing.T) {
	if _, err := ExpansionOf("cheese"); err == nil {
		t.Error("the expansion of cheese is known")
	}
	for _, size := range []Mm{0, -5, 4000, Mm(math.NaN())} {
		if _, err := expansions[0].PerDegree(size); err == nil {
			t.Errorf("%g mm was taken", float64(size))
		}
	}
}
