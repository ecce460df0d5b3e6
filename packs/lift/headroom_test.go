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

// The hoist over the second pick went 1 m less high than the crane, and the sheet told the room
// of the crane alone; a longer leg to it was not counted either. Each hook by its own height:
// to clear + underside + pick and leg + leg error + stack, and the end that hangs low by the
// tilt that is allowed (plane geometry).
func TestHeadroomOfTwoHooks(t *testing.T) {
	t.Parallel()
	p := rotor(TwoHooks)
	p.LengthError = 0.001
	p.Crane, p.SecondCrane = Crane{Name: "north", Rated: 2000}, Crane{Name: "south", Rated: 2000}
	p.Headroom = &Headroom{HighHook: 6000, SecondHighHook: 5000, PassOver: 1000, Underside: 300, Stack: 200}
	r := compute(t, p)
	near(t, "the lower hook needs", float64(r.Headroom.Needed), 1000+300+1500+200, 0.01)
	near(t, "the lower hook spares", float64(r.Headroom.Spare), 5000-3000, 0.01)
	p.Headroom.SecondHighHook, p.Legs[0].Length = 8000, 2600
	r = compute(t, p)
	near(t, "a longer leg to the other", float64(r.Headroom.Spare), 6000-4100, 0.01)
	p.Load.Span = &Span{NameA: "A", NameB: "B", A: Point{X: -900}, B: Point{X: 900}}
	p.MaxTilt = 10
	r = compute(t, p)
	// The ends lie 935 and 865 mm from the centre of gravity.
	near(t, "an end low by 10°", float64(r.Headroom.LowEnd), 935*math.Sin(10*math.Pi/180), 0.1)
	p.Headroom.SecondHighHook = 0
	if no := refusalOf(t, p); no.Field != "headroom.secondhighhook" {
		t.Errorf("without the height of the second hook: %s", no.Field)
	}
}
