package joint_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"matchmark/packs/joint"
	"matchmark/packs/thread"
)

// Where the fasteners sit: geometry.
// Where a place lies on a clock face, by hand: a quarter turn is 90°.
func TestPlacesOnTheClock(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name   string
		layout joint.Layout
		number int
		want   joint.Degree
	}{
		{"the first of a circle is at the top", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400}, 1, 0},
		{"the second of eight is an eighth turn on", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400}, 2, 45},
		{"against the clock it is seven eighths on", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400, Anticlockwise: true}, 2, 315},
		{"the first may lie elsewhere", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400, First: 90}, 1, 90},
		{"a place left of the middle", joint.Layout{Shape: joint.Positions, Places: []joint.Point{{X: 0, Y: 0}, {X: 100, Y: 0}}, Order: []int{1, 2}}, 1, 270},
	} {
		p, err := c.layout.Pattern()
		if err != nil {
			t.Fatal(c.name, err)
		}
		if got := p.Clock(c.number); got < c.want-0.001 || got > c.want+0.001 {
			t.Errorf("%s: %v°, want %v°", c.name, got, c.want)
		}
	}
}

func TestPlaces(t *testing.T) {
	for _, c := range []struct {
		what string
		l    joint.Layout
		at   int
		want joint.Point
	}{
		{"fastener 1 at 12 o'clock", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400}, 1, joint.Point{X: 0, Y: 200}},
		{"fastener 3 of 8 at 3 o'clock", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400}, 3, joint.Point{X: 200, Y: 0}},
		{"against the clock at 9 o'clock", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400, Anticlockwise: true}, 3, joint.Point{X: -200, Y: 0}},
		{"a first one at 90°", joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400, First: 90}, 1, joint.Point{X: 200, Y: 0}},
		{"the top left corner", joint.Layout{Shape: joint.Rectangle, Method: joint.Outward, Along: 5, Across: 3, Length: 400, Width: 200}, 1, joint.Point{X: -200, Y: 100}},
		{"the third on top", joint.Layout{Shape: joint.Rectangle, Method: joint.Outward, Along: 5, Across: 3, Length: 400, Width: 200}, 3, joint.Point{X: 0, Y: 100}},
		{"the middle of the right side", joint.Layout{Shape: joint.Rectangle, Method: joint.Outward, Along: 5, Across: 3, Length: 400, Width: 200}, 6, joint.Point{X: 200, Y: 0}},
		{"the right end of the upper row", joint.Layout{Shape: joint.SplitLine, Method: joint.Outward, Along: 14, Rows: 2, Length: 1300, Width: 600}, 14, joint.Point{X: 650, Y: 300}},
		{"below it the first of the lower row", joint.Layout{Shape: joint.SplitLine, Method: joint.Outward, Along: 14, Rows: 2, Length: 1300, Width: 600}, 15, joint.Point{X: 650, Y: -300}},
		{"the top of an oval", joint.Layout{Shape: joint.Oval, Method: joint.Crosswise, Count: 4, Length: 600, Width: 300}, 1, joint.Point{X: 0, Y: 150}},
		{"its right end", joint.Layout{Shape: joint.Oval, Method: joint.Crosswise, Count: 4, Length: 600, Width: 300}, 2, joint.Point{X: 300, Y: 0}},
	} {
		p := pattern(t, c.l)
		if got := p.Places[c.at-1]; got != c.want {
			t.Errorf("%s: %v, want %v", c.what, got, c.want)
		}
	}
}

// The casing joint of 28 nuts: the four in the middle first, the corners last.
func TestSplitLineOf28(t *testing.T) {
	p := pattern(t, joint.Layout{Shape: joint.SplitLine, Method: joint.Outward, Along: 14, Rows: 2, Length: 1300, Width: 600})
	if len(p.Places) != 28 || !slices.Equal(p.Order[:4], []int{7, 21, 8, 22}) || !slices.Equal(p.Order[24:], []int{1, 15, 14, 28}) {
		t.Errorf("order %v", p.Order)
	}
	if w, h := p.Size(); w != 1300 || h != 600 {
		t.Errorf("size %g × %g mm", w, h)
	}
}

// Counts that are no multiple of four: opposite pairs, then the pair nearest to square.
func TestCirclesOfOddCounts(t *testing.T) {
	for count, want := range map[int][]int{
		1: {1}, 2: {1, 2}, 3: {1, 3, 2}, 5: {1, 4, 2, 5, 3}, 6: {1, 4, 2, 5, 3, 6}, 10: {1, 6, 3, 8, 5, 10, 2, 7, 4, 9},
	} {
		p := pattern(t, joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: count, Diameter: 200})
		if !slices.Equal(p.Order, want) {
			t.Errorf("%d: %v, want %v", count, p.Order, want)
		}
	}
}

// All fasteners of an oval lie on its line, at equal distances along it.
func TestOvalIsOnItsLine(t *testing.T) {
	p := pattern(t, joint.Layout{Shape: joint.Oval, Method: joint.Crosswise, Count: 22, Length: 700, Width: 300})
	for i, q := range p.Places {
		x := math.Max(math.Abs(float64(q.X))-200, 0)
		if r := math.Hypot(x, float64(q.Y)); math.Abs(r-150) > 1e-6 {
			t.Errorf("place %d lies %g mm from the line's middle", i+1, r)
		}
	}
}

func TestLayoutsRefused(t *testing.T) {
	circle := joint.Layout{Shape: joint.Circle, Method: joint.Crosswise, Count: 8, Diameter: 400}
	with := func(f func(*joint.Layout)) joint.Layout { l := circle; f(&l); return l }
	for _, c := range []struct {
		what, field string
		l           joint.Layout
	}{
		{"no shape", "shape", joint.Layout{Method: joint.Crosswise}},
		{"no count", "count", with(func(l *joint.Layout) { l.Count = 0 })},
		{"a thousand bolts", "count", with(func(l *joint.Layout) { l.Count = 1000 })},
		{"no bolt circle", "diameter", with(func(l *joint.Layout) { l.Diameter = 0 })},
		{"no method", "method", with(func(l *joint.Layout) { l.Method = 0 })},
		{"a circle outward", "method", with(func(l *joint.Layout) { l.Method = joint.Outward })},
		{"a split line crosswise", "method", joint.Layout{Shape: joint.SplitLine, Method: joint.Crosswise, Along: 5, Rows: 2, Length: 500, Width: 200}},
		{"three rows", "rows", joint.Layout{Shape: joint.SplitLine, Method: joint.Outward, Along: 5, Rows: 3, Length: 500, Width: 200}},
		{"an oval on end", "length", joint.Layout{Shape: joint.Oval, Method: joint.Outward, Count: 5, Length: 200, Width: 500}},
		{"two at one place", "places[1]", joint.Layout{Shape: joint.Positions, Method: joint.Outward, Places: make([]joint.Point, 2)}},
		{"a place that is no number", "places[0]", joint.Layout{Shape: joint.Positions, Method: joint.Outward, Places: []joint.Point{{X: thread.Mm(math.NaN())}}}},
		{"no places", "places", joint.Layout{Shape: joint.Positions, Method: joint.Outward}},
		{"an order that is short", "order", with(func(l *joint.Layout) { l.Order = []int{1, 2} })},
		{"an order with a place twice", "order", with(func(l *joint.Layout) { l.Order = []int{1, 2, 3, 4, 5, 6, 7, 7} })},
		{"an order with a ninth of eight", "order", with(func(l *joint.Layout) { l.Order = []int{1, 2, 3, 4, 5, 6, 7, 9} })},
	} {
		_, err := c.l.Pattern()
		var rs joint.Refusals
		if !errors.As(err, &rs) || rs[0].Field != c.field {
			t.Errorf("%s: %v, want the field %s", c.what, err, c.field)
		}
	}
}
