package shim

import (
	"testing"

	"matchmark/packs/units"
)

// TestOff: which way and how far a pack of leaves of 0.03 is off. Rounded down it is
// never thicker, and thinner by one step less than a leaf: 0.02, the tolerance of a
// laminated brake shim (TM 5-3810-306-34, p. 15-125: leaves of 0.003 in, +0.000/-0.002
// in). Rounded up it is the other way, to the nearer one half of that each way.
func TestOff(t *testing.T) {
	t.Parallel()
	s, err := ParseLeaves("0.03 mm", 8)
	if err != nil {
		t.Fatal(err)
	}
	packs, err := s.Packs(units.Whole(0), hundredths(24))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name             string
		how              Rounding
		thinner, thicker int64
	}{
		{"down", Down, 2, 0},
		{"up", Up, 0, 2},
		{"nearest", Nearest, 1, 1},
	} {
		rows, err := Rows(packs, hundredths(0), hundredths(24), 2, c.how)
		if err != nil {
			t.Fatal(err)
		}
		thinner, thicker := Off(rows)
		if thinner.Cmp(hundredths(c.thinner)) != 0 || thicker.Cmp(hundredths(c.thicker)) != 0 {
			t.Errorf("rounded %s: %s thinner, %s thicker, want 0.0%d and 0.0%d", c.name, thinner.Text(), thicker.Text(), c.thinner, c.thicker)
		}
	}
}
