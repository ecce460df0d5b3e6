package layout

import "testing"

// A table below a head kept 3 mm to a box that stood far beside its own: who writes with a pen
// needs that room below a box, or 5 mm beside it (common practice, no source).
func TestGapBelowLooksWhereBoxesStand(t *testing.T) {
	t.Parallel()
	box := func(x, y Mm, role string) Block {
		return Drawn(100, 20, Item{X: x, Y: y, Role: role, Shape: Rect{W: 18, H: 9, Weight: Outline}})
	}
	at := func(foot Mm) Block { b := box(60, 20-9-foot, RoleCount); return b }
	parted := at(6)
	parted.SetPartings([]Parting{{Upper: box(0, 0, RoleCount), Lower: at(0)}})
	// Between the outlines of two boxes, which are 0.3 mm wide.
	for _, c := range []struct {
		name         string
		upper, lower Block
		want         Mm
	}{
		{"right below", at(0), box(60, 1, RoleCount), 2.3},
		{"half below", at(0), box(45, 0.5, RoleInitials), 2.8},
		{"beside, too near", at(0), box(39, 1, RoleCount), 2.3},
		{"beside, as far as a pen needs", at(0), box(37, 1, RoleCount), 0.5},
		{"far beside", at(0), box(0, 0.2, RoleCount), 0.5},
		{"room at the foot of the upper one", at(2.8), box(60, 0, RoleCount), 0.5},
		{"a tick", at(0), box(60, 1, RoleTick), 0.5},
		{"one that may end higher on a page of its own", parted, box(60, 1, RoleCount), 2.3},
		{"no box above", Space(100, 20), box(60, 0, RoleCount), 0.5},
	} {
		if got := GapBelow(c.upper, c.lower, 0.5); got < c.want-0.05 || got > c.want+0.05 {
			t.Errorf("%s: the gap is %.2f mm, want %.2f mm", c.name, got, c.want)
		}
	}
	if got := GapBelow(at(0), box(60, 0, RoleCount), 0); got != 0 {
		t.Errorf("rows of a table that share a line are set %.2f mm apart", got)
	}
}
