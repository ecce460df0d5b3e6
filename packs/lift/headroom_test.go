package lift

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestHeadroomCoversLongLegs: two legs that are both long by the error meet, by the
// triangle of the two slings and the distance of the picks (Heron), no higher than the
// headroom counts with. The hook was planned at the height of legs as drawn.
func TestHeadroomCoversLongLegs(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		p := good()
		a := rapid.Float64Range(200, 900).Draw(t, "a")
		b := rapid.Float64Range(200, 900).Draw(t, "b")
		h := rapid.Float64Range(1200, 2500).Draw(t, "h")
		e := rapid.Float64Range(1, 20).Draw(t, "e")
		p.Picks[0].At, p.Picks[1].At = Point{X: Mm(-a)}, Point{X: Mm(b)}
		p.HookHeight, p.LengthError = Mm(h), Mm(e)
		p.Headroom = &Headroom{HighHook: 9000, PassOver: 1000, Underside: 300, Stack: 100}
		r, err := Compute(p)
		if err != nil {
			t.Skip(err)
		}
		side := func(d float64) float64 { return math.Hypot(d, h) + e }
		x, y, base := side(a), side(b), a+b
		s := (x + y + base) / 2
		up := 2 * math.Sqrt(s*(s-x)*(s-y)*(s-base)) / base
		if got := float64(r.Headroom.Needed); got < 1000+300+up+100-1e-6 {
			t.Fatalf("needs %.2f mm, legs long by %.1f mm take %.2f", got, e, 1400+up)
		}
	})
}

// A bridle without ends counted nothing for the corner that hangs low. Plane geometry: the
// load turns about its hook until the centre of gravity is plumb under it, and a corner 900 mm
// out and 400 mm under the centre of gravity then hangs 900 sin(x) - 400 (1 - cos(x)) lower.
func TestWithoutEndsTheLowCornerCounts(t *testing.T) {
	t.Parallel()
	p := bare(1000, Point{Z: -300}, Point{X: -600}, Point{X: 600})
	p.Load.CoGTolerance = Point{X: 60, Y: 0.001, Z: 0.001}
	p.LengthError, p.HookHeight = 0.001, 1500
	p.Load.Outline = box(Point{X: -900, Y: -100, Z: -700}, Point{X: 900, Y: 100, Z: 50})
	p.Headroom = &Headroom{HighHook: 9000, PassOver: 1000, Underside: 700, Stack: 100}
	x := math.Atan2(60, 1800)
	want := 900*math.Sin(x) - 400*(1-math.Cos(x))
	r := compute(t, p)
	near(t, "low corner", float64(r.Headroom.LowEnd), want, 0.5)
	// Ends that are given are where it is looked at: they count by themselves.
	p.Load.Span = &Span{NameA: "A", NameB: "B", A: Point{X: -500, Z: -300}, B: Point{X: 500, Z: -300}}
	near(t, "low end", float64(compute(t, p).Headroom.LowEnd), 500*math.Sin(x), 0.5)
	p.Load.Span, p.Load.Outline = nil, nil
	if no := refusalOf(t, p); no.Field != "load.outline" {
		t.Errorf("without ends and size: %s", no.Field)
	}
}
