package picture

import (
	"testing"

	"matchmark/layout"
)

// Two distances of 120 mm beside each other were printed as 120 mm120 mm.
func TestLabelsBesideEachOtherStandApart(t *testing.T) {
	for _, c := range []struct{ left, right, between layout.Mm }{{10, 10, 10}, {10, 10, 11}, {8, 14, 11.2}, {10, 10, 30}} {
		l, r := apart(layout.Block{W: c.left, H: 3}, layout.Block{W: c.right, H: 3}, c.between)
		// A label lies with its middle where it is put, and the text of the left one at its left.
		endOfLeft, startOfRight := -l.W/2+c.left, c.between+r.W/2-c.right
		if gap := startOfRight - endOfLeft; gap < labelGap-1e-9 {
			t.Errorf("labels of %v and %v, %v apart, leave %v", c.left, c.right, c.between, gap)
		}
		if c.between == 30 && (l.W != c.left || r.W != c.right) {
			t.Error("labels with room are moved")
		}
	}
}
