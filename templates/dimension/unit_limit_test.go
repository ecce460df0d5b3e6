package dimension

import (
	"strings"
	"testing"

	"matchmark/layout"
)

// A narrow sum had "mm", "0.060 – 0.080" and "mm" below each other: the unit of the limit was
// torn off and read as that of the box.
func TestALimitBehindASumKeepsItsUnit(t *testing.T) {
	t.Parallel()
	jb, c := starter("exhaust-fan.yaml", 184)
	d := jb.Dims[0]
	const limit = "0.060 – 0.080 mm"
	whole := c.Line(0, []layout.Run{layout.T(layout.Limit, limit)}, layout.ParaOpts{}).W
	for _, width := range []layout.Mm{2 * whole, 2.5 * whole, 4 * whole, 6 * whole} {
		got := unitAndLimit(c, d, limit, width)
		lines := map[layout.Mm]string{}
		for _, it := range got.Items() {
			if s, ok := it.Shape.(layout.Text); ok {
				lines[it.Y] += s.S + " "
			}
		}
		onOne := false
		for _, said := range lines {
			onOne = onOne || strings.Contains(said, limit)
		}
		if !onOne || got.W > width/2+0.01 {
			t.Errorf("in %.1f mm: %v, %.1f mm wide; want %q on one line, in half the width", width, lines, got.W, limit)
		}
	}
}
