package reading

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/units"
)

// TestBracketsThatWiden: 11 ± 0.3 mm beside 0.445/0.421 in, the example of the note to
// ASME Y14.5 and IEEE 268 (read in a summary), let a part of 10.694 mm pass; rounded
// inward it is 0.444/0.422 in.
func TestBracketsThatWiden(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ line, inward string }{
		{"10.7 to 11.3 mm (0.421 to 0.445 in)", "0.422 to 0.444 in"},
		{"10.7 to 11.3 mm (0.422 to 0.445 in)", ""}, // 0.003 of 0.6 mm
		{"10.7 to 11.3 mm (0.422 to 0.444 in)", ""},
		{"11.0 +/- 0.3 mm (0.433 +/- 0.012 in)", "0.422 to 0.444 in"},
		{"at most 0.46 mm (0.018 in)", ""},
	} {
		l, err := Parse(c.line)
		if err != nil {
			t.Fatal(c.line, err)
		}
		w, ok := l.Tests[0].Widened()
		if ok != (c.inward != "") || w.Inward != c.inward {
			t.Errorf("%s: widens %v, inward %q, want %q", c.line, ok, w.Inward, c.inward)
		}
	}
}

// TestInwardNeverWidens: the band that is offered lies within the band that was written.
func TestInwardNeverWidens(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.IntRange(1, 5000).Draw(t, "low")
		high := low + rapid.IntRange(10, 500).Draw(t, "band")
		q := func(n int) units.Quantity {
			return units.Quantity{Number: units.Whole(int64(n)).Quo(units.Whole(100)), Unit: units.Millimetre}
		}
		like := units.Quantity{Number: units.Whole(1).Quo(units.Whole(1000)), Unit: units.Inch}
		line := inward(q(low), q(high), like, like)
		l, err := Parse(line)
		if err != nil {
			t.Skip(line) // a band narrower than the step
		}
		a, b, _ := l.Tests[0].Limits()
		if x, err := a.Cmp(q(low)); err != nil || x < 0 {
			t.Fatalf("%s begins below %d hundredths of a millimetre", line, low)
		}
		if x, err := b.Cmp(q(high)); err != nil || x > 0 {
			t.Fatalf("%s ends above %d hundredths of a millimetre", line, high)
		}
	})
}
