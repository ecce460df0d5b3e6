package picture

import (
	"testing"

	"matchmark/layout"
	"matchmark/packs/lift"
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

// The leader of the leg below the first of two hooks ran across the load to a note at its other end.
func TestNotesOfLegsStandAtTheirOwnEnd(t *testing.T) {
	t.Parallel()
	at := func(x lift.Mm) lift.LegResult {
		return lift.LegResult{From: lift.Point{X: x, Z: 2000}, To: lift.Point{X: x}}
	}
	for _, c := range []struct {
		name       string
		hook, want float64
	}{
		{"two hooks, the first over the head", -5000, -500},
		{"two hooks, the first over the tail", 4000, -500},
		{"one hook between the legs", 300, 300},
	} {
		p := &liftPicture{legs: []lift.LegResult{at(-5000), at(4000)}, scene: lift.Scene{Hook: lift.Point{X: lift.Mm(c.hook)}}}
		if got := p.middle(&liftView{across: coordinate("x")}); got != c.want {
			t.Errorf("%s: notes part at %g mm, want %g mm", c.name, got, c.want)
		}
	}
}
