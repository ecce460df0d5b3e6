package reading

import (
	"testing"

	"matchmark/packs/units"
)

// TestBoxOfInsulation: a winding that must have 100 megohm may read 1500, and that fits its box;
// a size that has a least value keeps the box of its limit, whatever the tape reaches.
func TestBoxOfInsulation(t *testing.T) {
	for _, c := range []struct {
		limit, high   string
		before, after int
	}{
		{"at least 100 megohm", "2000 megohm", 4, 0},
		{"at least 100 megohm", "2 gigohm", 4, 0},
		{"at least 100 megohm", "50 megohm", 3, 0},
		{"at most 100 milliohm", "2000 milliohm", 3, 0},
		{"at least 4.0 mm", "150 mm", 1, 1},
	} {
		l, fault := Parse(c.limit)
		if fault != nil {
			t.Fatal(fault)
		}
		high, err := units.ParseQuantity(c.high)
		if err != nil {
			t.Fatal(err)
		}
		b, err := BoxFor([]*Limit{l}, Hint{High: &high})
		if err != nil || b.Before != c.before || b.After != c.after {
			t.Errorf("%s, to %s: a box of %d.%d (%v), want %d.%d", c.limit, c.high, b.Before, b.After, err, c.before, c.after)
		}
	}
}
