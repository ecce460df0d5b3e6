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
