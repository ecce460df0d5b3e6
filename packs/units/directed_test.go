package units

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

// A tonne is 2204.62 lb (U014 of the outside values): as a capacity 2204 lb, as a
// load 2205 lb. It stood as 2205 lb for both on paper.
func TestOneTonneInPounds(t *testing.T) {
	q, err := ParseQuantity("1 t")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		what, want string
		round      func(Unit, int) (Quantity, error)
		unit       Unit
		decimals   int
	}{
		{"capacity", "2204 lb", q.RoundDown, Pound, 0},
		{"load", "2205 lb", q.RoundUp, Pound, 0},
		{"capacity to a tenth", "2204.6 lb", q.RoundDown, Pound, 1},
		{"load in its own unit", "1 t", q.RoundUp, Tonne, 0},
		{"capacity in kg", "1000 kg", q.RoundDown, Kilogram, 0},
	} {
		got, err := c.round(c.unit, c.decimals)
		if err != nil || got.Text() != c.want {
			t.Errorf("%s: got %s, %v, want %s", c.what, got.Text(), err, c.want)
		}
	}
	if _, err := q.RoundUp(Millimetre, 0); err == nil {
		t.Error("a mass was rounded to millimetres")
	}
}

// Up is never below and down never above the exact amount, by less than one step,
// in whatever unit; a pair of units never puts the two on different sides.
func TestDirectedRoundingKeepsItsSide(t *testing.T) {
	families := [][]Unit{
		{Kilogram, Gram, Pound, Tonne}, {Millimetre, Inch, Foot, Metre, Mil, Micrometre}, {Newton, Kilonewton, PoundForce},
		{Megapascal, PSI, Bar}, {Celsius, Fahrenheit}, {CelsiusRise, FahrenheitRise, KelvinRise}, {Percent}, {NewtonMetre, PoundFoot},
	}
	rapid.Check(t, func(t *rapid.T) {
		family := rapid.SampledFrom(families).Draw(t, "family")
		from, to := rapid.SampledFrom(family).Draw(t, "from"), rapid.SampledFrom(family).Draw(t, "to")
		x := rapid.Float64Range(-1e5, 1e5).Draw(t, "amount")
		decimals := rapid.IntRange(0, 4).Draw(t, "decimals")
		q, ok := Computed(x, from)
		if !ok {
			t.Fatalf("%g is no number", x)
		}
		exact, err := q.Convert(to)
		if err != nil {
			t.Fatal(err)
		}
		up, err1 := q.RoundUp(to, decimals)
		down, err2 := q.RoundDown(to, decimals)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		step := up.Number.Step()
		if over := up.Number.Sub(exact.Number); over.Sign() < 0 || over.Cmp(step) >= 0 {
			t.Fatalf("%s up is %s", exact.Text(), up.Text())
		}
		if under := exact.Number.Sub(down.Number); under.Sign() < 0 || under.Cmp(step) >= 0 {
			t.Fatalf("%s down is %s", exact.Text(), down.Text())
		}
		if up.Unit != to || down.Unit != to || up.Number.Decimals() != max(decimals, 0) {
			t.Fatalf("got %s and %s, want %d decimals of %s", up.Text(), down.Text(), decimals, to.Text())
		}
	})
}

// A result is taken to twelve figures and no further off than half of the last.
func TestComputedHoldsTwelveFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-1e9, 1e9).Draw(t, "amount")
		q, _ := Computed(x, Kilogram)
		off := new(big.Rat).Sub(q.Number.Rat(), new(big.Rat).SetFloat64(x))
		d, _ := off.Float64()
		if math.Abs(d) > 5.1e-12*math.Abs(x)+dust {
			t.Fatalf("%g became %s", x, q.Text())
		}
	})
	// The reckoning's own dust moves no figure on paper: 0.1 + 0.2 in floating point.
	q, _ := Computed(0.1+0.2, Millimetre)
	if up, _ := q.RoundUp(Millimetre, 1); up.Text() != "0.3 mm" {
		t.Errorf("0.1 + 0.2 up is %s", up.Text())
	}
	// A level load that came out 1e-14° off was told as hanging 0.1° out of level.
	q, _ = Computed(1e-14, Degree)
	if up, _ := q.RoundUp(Degree, 1); up.Text() != "0.0°" {
		t.Errorf("1e-14° up is %s", up.Text())
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if q, ok := Computed(x, Pound); ok || q.Text() != "0 lb" {
			t.Errorf("%g became %s, %v", x, q.Text(), ok)
		}
	}
}

// TestComputedAsComesBack: a limit written as 400 °F was printed as 399 °F, one of
// 1000 lb would be 999 lb, because what is held in the metric unit was cut off there
// and then converted.
func TestComputedAsComesBack(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		typed    Unit
		held     Unit
		from, to int64
	}{{Fahrenheit, Celsius, -400, 2000}, {Pound, Kilogram, 1, 3000}, {Inch, Millimetre, 1, 3000}, {PSI, Megapascal, 1, 3000}, {PoundFoot, NewtonMetre, 1, 3000}} {
		for n := c.from; n <= c.to; n++ {
			same, err := Quantity{Number: Whole(n), Unit: c.typed}.Convert(c.held)
			if err != nil {
				t.Fatal(err)
			}
			v, _ := same.Number.Rat().Float64()
			for _, how := range []Rounding{Up, Down} {
				got, ok := ComputedAs(v, c.held, c.typed)
				if got = got.Round(0, how); !ok || got.Number.Cmp(Whole(n)) != 0 {
					t.Errorf("%d %s comes back as %s", n, c.typed.Text(), got.Text())
				}
			}
		}
	}
	if _, ok := ComputedAs(math.NaN(), Celsius, Fahrenheit); ok {
		t.Error("what is no number is a temperature")
	}
	if _, ok := ComputedAs(1, Celsius, Pound); ok {
		t.Error("a temperature is a mass")
	}
}
