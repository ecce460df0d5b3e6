package reading

import (
	"testing"

	"matchmark/packs/units"
)

// TestBoxHasRoomFarOut: a winding that must have 100 megohm may read 1500, and that fits its box;
// a housing that may shake by 2.8 mm/s shakes by 11.2 when it is bad; a size that has a least value keeps the box of its limit, whatever the tape reaches.
func TestBoxHasRoomFarOut(t *testing.T) {
	for _, c := range []struct {
		limit, high   string
		before, after int
	}{
		{"at least 100 megohm", "2000 megohm", 4, 0},
		{"at least 100 megohm", "2 gigohm", 4, 0},
		{"at least 100 megohm", "50 megohm", 3, 0},
		{"at most 100 milliohm", "2000 milliohm", 4, 0},
		{"at most 2.8 mm/s", "", 2, 1}, // ISO 20816-3: zone D of a large machine begins at 7.1, a bad one has 11.2
		{"at most 2.8 mm/s", "100 mm/s", 3, 1},
		{"2.0 to 2.8 mm/s", "100 mm/s", 1, 1},
		{"at most 0.05 mm", "10 mm", 1, 2},
		{"at most 40 °C", "400 °C", 2, 0},
		{"at least 4.0 mm", "150 mm", 1, 1},
	} {
		l, fault := Parse(c.limit)
		if fault != nil {
			t.Fatal(fault)
		}
		var hint Hint
		if c.high != "" {
			high, err := units.ParseQuantity(c.high)
			if err != nil {
				t.Fatal(err)
			}
			hint.High = &high
		}
		b, err := BoxFor([]*Limit{l}, hint)
		if err != nil || b.Before != c.before || b.After != c.after {
			t.Errorf("%s, to %s: a box of %d.%d (%v), want %d.%d", c.limit, c.high, b.Before, b.After, err, c.before, c.after)
		}
	}
}
