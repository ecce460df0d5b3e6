package draw

import (
	"fmt"
	"math"
	"slices"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"matchmark/layout"
)

// ruler measures every sign half as wide as its type is high.
type ruler struct{}

func (ruler) Width(_ layout.Face, size layout.Pt, s string) layout.Mm {
	return layout.Mm(utf8.RuneCountInString(s)) * size.Mm() / 2
}

func (ruler) Has(_ layout.Face, r rune) bool { return r < 0x180 }

func setter() *layout.Setter { return layout.NewSetter(ruler{}, layout.Pen{}) }

func near(a, b layout.Mm) bool { return math.Abs(float64(a-b)) < 1e-6 }

// One scale both ways, the view in the middle, y upward.
func TestSceneScale(t *testing.T) {
	t.Parallel()
	s := NewScene(View{X0: -100, Y0: 0, X1: 100, Y1: 50}, 60, 40, nil)
	// 200 units into 60 mm is 0.3; 50 units are then 15 mm, 12.5 mm from the edges.
	if s.Scale() != 0.3 {
		t.Errorf("scale %v, want 0.3", s.Scale())
	}
	for _, c := range []struct {
		p    XY
		x, y layout.Mm
	}{{XY{-100, 50}, 0, 12.5}, {XY{100, 0}, 60, 27.5}, {XY{0, 25}, 30, 20}} {
		if p := s.At(c.p); !near(p.X, c.x) || !near(p.Y, c.y) {
			t.Errorf("%v lies at %v, want %v, %v", c.p, p, c.x, c.y)
		}
	}
	if s.Units(3) != 10 {
		t.Errorf("3 mm of paper are %v units, want 10", s.Units(3))
	}
}

// Points on the curve of an arc are on the circle: the cubic of Bernstein form is
// evaluated here and compared with the circle's equation.
func TestArcIsRound(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ from, to float64 }{{0, 360}, {30, 100}, {90, -45}} {
		ops := arc(layout.Point{X: 5, Y: 7}, 20, c.from, c.to)
		at := ops[0].P
		for _, o := range ops[1:] {
			for u := 0.0; u <= 1; u += 0.125 {
				b := [4]float64{(1 - u) * (1 - u) * (1 - u), 3 * u * (1 - u) * (1 - u), 3 * u * u * (1 - u), u * u * u}
				x := b[0]*float64(at.X) + b[1]*float64(o.A.X) + b[2]*float64(o.B.X) + b[3]*float64(o.P.X)
				y := b[0]*float64(at.Y) + b[1]*float64(o.A.Y) + b[2]*float64(o.B.Y) + b[3]*float64(o.P.Y)
				if r := math.Hypot(x-5, y-7); math.Abs(r-20) > 0.002 {
					t.Fatalf("arc %v: a point is %.4f from the centre, want 20", c, r)
				}
			}
			at = o.P
		}
		// The end lies in the direction of the clock angle.
		sin, cos := math.Sincos(c.to * math.Pi / 180)
		if !near(at.X, layout.Mm(5+20*sin)) || !near(at.Y, layout.Mm(7-20*cos)) {
			t.Errorf("arc %v ends at %v", c, at)
		}
	}
}

// Hatching stays in its rectangle, at 45 degrees, one pitch apart.
func TestHatch(t *testing.T) {
	t.Parallel()
	for _, rising := range []bool{true, false} {
		s := NewScene(View{0, 0, 40, 30}, 40, 30, nil)
		s.Hatch(XY{5, 4}, XY{25, 20}, 2, rising)
		ops := s.Block().Items()[0].Shape.(layout.Path).Ops
		// Across the strokes a 20 by 16 rectangle measures 36/√2 = 25.5 mm.
		if n, want := len(ops)/2, 12; n < want || n > want+1 {
			t.Errorf("%d strokes, want about %d", n, want)
		}
		for i := 0; i < len(ops); i += 2 {
			a, b := ops[i].P, ops[i+1].P
			for _, p := range []layout.Point{a, b} {
				if p.X < 5-1e-6 || p.X > 25+1e-6 || p.Y < 10-1e-6 || p.Y > 26+1e-6 {
					t.Errorf("a stroke reaches to %v", p)
				}
			}
			dx, dy := b.X-a.X, b.Y-a.Y
			if !near(layout.Mm(math.Abs(float64(dx))), layout.Mm(math.Abs(float64(dy)))) || (dx*dy < 0) != rising {
				t.Errorf("a stroke goes by %v, %v", dx, dy)
			}
		}
	}
}

// Boxes about a clock face keep the gaps between write-in boxes, stay off the
// ring, and lie within the block.
func TestClockLaws(t *testing.T) {
	t.Parallel()
	s := setter()
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "places")
		r := layout.Mm(rapid.IntRange(8, 25).Draw(t, "radius"))
		var places []Place
		for i := range n {
			places = append(places, Place{
				Angle: float64(i) * 360 / float64(n),
				Label: fmt.Sprint(i),
				Box:   s.Value(layout.Number{Before: rapid.IntRange(1, 4).Draw(t, "digits"), After: 2, Unit: "mm"}),
			})
		}
		b := Clock(s, r, places, true, nil)
		var boxes [][4]layout.Mm
		var ring [4]layout.Mm
		for _, it := range b.Items() {
			l, top, right, bottom := it.Bounds()
			if l < -0.5 || top < -0.5 || right > b.W+0.5 || bottom > b.H+0.5 {
				t.Fatalf("%+v lies outside %v x %v", it, b.W, b.H)
			}
			if it.Role == layout.RoleValue {
				boxes = append(boxes, [4]layout.Mm{l, top, right, bottom})
			}
			if ring[2] == 0 {
				ring = [4]layout.Mm{l, top, right, bottom} // the ring is drawn first
			}
		}
		if len(boxes) != n {
			t.Fatalf("%d boxes, want %d", len(boxes), n)
		}
		cx, cy := (ring[0]+ring[2])/2, (ring[1]+ring[3])/2
		const edge = 0.31 // outlines reach half their weight beyond the box
		for i, a := range boxes {
			dx, dy := max(a[0]-cx, cx-a[2], 0), max(a[1]-cy, cy-a[3], 0)
			if d := layout.Mm(math.Hypot(float64(dx), float64(dy))); d < r+1.5 {
				t.Fatalf("box %d comes within %v of the centre of a ring of %v", i, d, r)
			}
			for _, o := range boxes[:i] {
				apartX := max(a[0]-o[2], o[0]-a[2])
				apartY := max(a[1]-o[3], o[1]-a[3])
				if apartX < layout.GapX-edge && apartY < layout.GapY-edge {
					t.Fatalf("boxes are %v and %v apart", apartX, apartY)
				}
			}
		}
	})
}

func TestRoundValues(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		a    Axis
		most int
		want []float64
	}{
		{Axis{From: 0, To: 20}, 5, []float64{0, 5, 10, 15, 20}},
		{Axis{From: 0, To: 250}, 4, []float64{0, 100, 200}},
		{Axis{From: -0.05, To: 0.05}, 6, []float64{-0.04, -0.02, 0, 0.02, 0.04}},
	} {
		got := roundValues(c.a, c.most)
		if !slices.EqualFunc(got, c.want, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 }) {
			t.Errorf("%v: %v, want %v", c.a, got, c.want)
		}
	}
}

func TestChart(t *testing.T) {
	t.Parallel()
	c := Chart{W: 100, H: 60, X: Axis{0, 20, "min"}, Y: Axis{0, 250, "skin °C"},
		Series: []Series{{Pen: Thick, Name: "hub", At: []XY{{0, 0}, {20, 250}}}},
		Bands:  []Band{{From: 200, To: 250, Name: "never"}}}
	b, err := c.Block(setter())
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for _, it := range b.Items() {
		p, ok := it.Shape.(layout.Path)
		if !ok || p.Weight != Thick.Weight {
			continue
		}
		found = true
		// From corner to corner of the field, which has 14 mm to its left, 24 to
		// its right, 5 above and 11 below.
		if a, z := p.Ops[0].P, p.Ops[1].P; !near(a.X, 14) || !near(a.Y, 49) || !near(z.X, 76) || !near(z.Y, 5) {
			t.Errorf("the line goes from %v to %v", a, z)
		}
	}
	if !found {
		t.Error("no line is drawn")
	}
	for _, bad := range []func(*Chart){
		func(c *Chart) { c.X.To = 0 },
		func(c *Chart) { c.Y.From = math.NaN() },
		func(c *Chart) { c.Series[0].At[1].Y = 251 },
		func(c *Chart) { c.Bands[0].To = 260 },
		func(c *Chart) { c.Spans = []Span{{From: 5, To: 21, Name: "now"}} },
		func(c *Chart) { c.Spans = []Span{{From: 5, To: 4, Name: "now"}} },
	} {
		c := c
		c.Series = []Series{{At: slices.Clone(c.Series[0].At)}}
		c.Bands = slices.Clone(c.Bands)
		bad(&c)
		if _, err := c.Block(setter()); err == nil {
			t.Errorf("%+v is drawn", c)
		}
	}
}

// A figure of a dimension was struck by its own line, and names by the lines of legs: a word
// that a line runs through stands in a gap of it, one beside the line does not.
func TestWordsStandInAGapOfTheLineThroughThem(t *testing.T) {
	word := func() layout.Block {
		return layout.Drawn(6, 3, layout.Item{Y: 2.4, Shape: layout.Text{S: "150", Size: 8, Width: 6}})
	}
	gaps := func(b layout.Block) (n, at int) {
		for i, it := range b.Items() {
			if r, ok := it.Shape.(layout.Rect); ok && r.Fill == layout.White {
				n, at = n+1, i
			}
		}
		return n, at
	}
	for _, c := range []struct {
		name string
		line func(s *Scene)
		want int
	}{
		{"through", func(s *Scene) { s.Lines(Thin, XY{0, 10}, XY{40, 10}) }, 1},
		{"slanting through a corner", func(s *Scene) { s.Lines(Thin, XY{17, 8}, XY{23, 12}) }, 1},
		{"above", func(s *Scene) { s.Lines(Thin, XY{0, 14}, XY{40, 14}) }, 0},
		{"ends before", func(s *Scene) { s.Lines(Thin, XY{0, 10}, XY{14, 10}) }, 0},
		{"a filled ring about a number", func(s *Scene) { s.Ring(Thin, layout.White, XY{20, 10}, 2) }, 0},
	} {
		s := NewScene(View{0, 0, 40, 20}, 40, 20, nil)
		s.Label(XY{20, 10}, word(), 0.5, 0.5) // drawn before the line
		c.line(s)
		b := s.Block()
		n, at := gaps(b)
		if n != c.want {
			t.Errorf("%s: %d gaps, want %d", c.name, n, c.want)
		}
		if n == 1 {
			if _, text := b.Items()[at+1].Shape.(layout.Text); !text || at != len(b.Items())-2 {
				t.Errorf("%s: the gap does not lie above the lines and below the word", c.name)
			}
		}
	}
}
