package filled_test

import (
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/filled"
	"matchmark/packs/reading"
	"matchmark/packs/units"
)

// A limit that is worked out, as that about a mean of three readings, was rounded to the
// nearest in its boxes: a reading just below its lower end was let in by the paper and
// refused by the verdict. Whatever a printed limit lets in, the exact one does.
func TestPrintedEndsLetNothingIn(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		exact := func(name string) units.Quantity {
			r := big.NewRat(rapid.Int64Range(-100_000, 100_000).Draw(t, name), rapid.Int64Range(1, 999).Draw(t, name+" parts"))
			return units.Quantity{Number: units.Exact(r, 0), Unit: units.Millimetre}
		}
		low := exact("low")
		high := units.Quantity{Number: low.Number.Add(exact("band").Number.Abs()), Unit: low.Unit}
		box := reading.Box{Form: reading.Digits, After: rapid.IntRange(0, 4).Draw(t, "decimals"), Unit: units.Millimetre}
		a, b := filled.Ends(low, high, box)
		pairs := [][2]units.Quantity{{a, b}, {filled.Exactly(low, box, units.Up), filled.Exactly(high, box, units.Down)}}
		for _, p := range pairs {
			if p[0].Number.Cmp(low.Number) < 0 || p[1].Number.Cmp(high.Number) > 0 {
				t.Fatalf("%s to %s is printed as %s to %s", low.Text(), high.Text(), p[0].Text(), p[1].Text())
			}
			step := units.Exact(big.NewRat(1, 1), 0)
			for range box.After {
				step = step.Quo(units.Whole(10))
			}
			if p[0].Number.Sub(low.Number).Cmp(step) >= 0 || high.Number.Sub(p[1].Number).Cmp(step) >= 0 {
				t.Fatalf("%s to %s is printed as %s to %s, off by a digit of the box and more", low.Text(), high.Text(), p[0].Text(), p[1].Text())
			}
		}
	})
}
