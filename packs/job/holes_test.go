package job

import (
	"slices"
	"testing"

	"matchmark/packs/joint"
)

// The columns of ticks were headed 1 to 12 where the order went by the numbers of the holes: 1, 4, 2.
func TestHolesInTheirOrder(t *testing.T) {
	for _, x := range []struct {
		pattern string
		count   int
		want    []int
	}{
		{"by hole number: 1, 4, 2, 5, 3, 6 at one hub", 6, []int{1, 4, 2, 5, 3, 6}},
		{"1-3-2-4", 4, []int{1, 3, 2, 4}},
		{"crosswise", 4, nil},
		{"1, 3, 2", 4, nil},                    // one is not told
		{"1, 3, 2, 5", 4, nil},                 // there is no hole 5
		{"1, 3, 2, 4, then 1 again", 4, nil},   // twice
		{"1, 3, 2, 4 in 2 rounds", 4, nil},     // another number
		{"99999999999999999999, 2, 1", 3, nil}, // no number of a hole
	} {
		j := &Joint{Pattern: x.pattern, Parts: []*Part{{Count: x.count}}}
		if got := j.Holes(); !slices.Equal(got, x.want) {
			t.Errorf("%q of %d: %v, want %v", x.pattern, x.count, got, x.want)
		}
		if j.Order = (&joint.Pattern{}); j.Holes() != nil {
			t.Errorf("%q: the drawing tells the order, and the holes are %v", x.pattern, j.Holes())
		}
	}
}
