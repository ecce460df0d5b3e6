package draw

import (
	"slices"
	"testing"

	"matchmark/layout"
)

// A dimension: heads between the extension lines when there is room and outside
// when there is not, the label beside the line.
func TestDim(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name   string
		length float64
		inside bool
	}{{"long", 20, true}, {"short", 3, false}} {
		s := NewScene(View{0, 0, 40, 40}, 40, 40, nil)
		s.Dim(XY{10, 10}, XY{10 + c.length, 10}, 8, setter().Words(layout.Sub, "D7"))
		var tips []layout.Point
		var label layout.Item
		for _, it := range s.Block().Items() {
			switch sh := it.Shape.(type) {
			case layout.Path:
				if sh.Fill == layout.Black {
					tips = append(tips, sh.Ops[0].P)
					body := (sh.Ops[1].P.X + sh.Ops[2].P.X) / 2
					if in := (body > 10) == (body < layout.Mm(10+c.length)); in != c.inside {
						t.Errorf("%s: a head lies about x %.2f", c.name, body)
					}
				}
			case layout.Text:
				label = it
			}
		}
		slices.SortFunc(tips, func(a, b layout.Point) int { return int(a.X - b.X) })
		if len(tips) != 2 || !near(tips[0].X, 10) || !near(tips[1].X, layout.Mm(10+c.length)) {
			t.Errorf("%s: tips at %v, want at both ends", c.name, tips)
		}
		// Left of the direction to the right is up: 30 mm down less 8.
		if !near(tips[0].Y, 22) {
			t.Errorf("%s: the line is at %v, want 22", c.name, tips[0].Y)
		}
		if l, _, r, b := label.Bounds(); b > 22 || (l+r)/2 < 10 || (l+r)/2 > layout.Mm(10+c.length) {
			t.Errorf("%s: the label lies at %v to %v, foot %v", c.name, l, r, b)
		}
	}
}

// The label of a length that is no longer than it stands off the heads, that of a long one near
// the line.
func TestTheLabelStandsClearOfTheHeads(t *testing.T) {
	t.Parallel()
	foot := func(length float64) layout.Mm {
		s := NewScene(View{0, 0, 40, 40}, 40, 40, nil)
		s.Dim(XY{10, 10}, XY{10 + length, 10}, 8, setter().Words(layout.Sub, "46 mm"))
		for _, it := range s.Block().Items() {
			if _, text := it.Shape.(layout.Text); text {
				_, _, _, b := it.Bounds()
				return b
			}
		}
		t.Fatal("no label")
		return 0
	}
	for _, c := range []struct{ short, long float64 }{{3, 25}, {10, 25}} {
		if short, long := foot(c.short), foot(c.long); !near(long-short, headWide/2) {
			t.Errorf("the label of %v mm ends at %v, that of %v mm at %v", c.short, short, c.long, long)
		}
	}
}
