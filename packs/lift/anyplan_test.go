package lift

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Whatever is written, the answer is numbers or a reason, never a panic, and no
// reason comes without its field.
func TestAnyPlanIsAnsweredOrRefused(t *testing.T) {
	t.Parallel()
	odd := []float64{0, -1, 1e-9, 1e12, math.NaN(), math.Inf(1)}
	rapid.Check(t, func(t *rapid.T) {
		num := func(what string) float64 {
			if rapid.IntRange(0, 9).Draw(t, what+" odd") == 0 {
				return rapid.SampledFrom(odd).Draw(t, what)
			}
			return rapid.Float64Range(-3000, 3000).Draw(t, what)
		}
		at := func(what string) Point { return Point{X: Mm(num(what)), Y: Mm(num(what)), Z: Mm(num(what))} }
		p := good()
		p.Rig = Rig(rapid.IntRange(0, 5).Draw(t, "rig"))
		p.Load.Mass, p.HookHeight, p.Bar.Length, p.Bar.Rated = Kg(num("mass")), Mm(num("hook")), Mm(num("bar")), 1000
		cog := at("cog")
		p.Load.CoG = &cog
		p.Picks, p.Legs = nil, nil
		inHand := rapid.Bool().Draw(t, "in hand")
		if inHand {
			p.HookHeight = 0
		}
		for range rapid.IntRange(0, 5).Draw(t, "picks") {
			p.Picks = append(p.Picks, Pick{At: at("pick")})
			p.Legs = append(p.Legs, straight("l", 0))
			if inHand || p.Rig > Bridle {
				p.Legs[len(p.Legs)-1].Length = Mm(max(num("length"), 0))
			}
		}
		r, err := Compute(p)
		if err != nil {
			for _, no := range err.(Refusals) {
				if no.Field == "" || no.Message == "" || no.Help == "" {
					t.Fatalf("a refusal without its words: %+v", no)
				}
			}
			return
		}
		for _, c := range r.Components {
			if !finite(float64(c.Used)) || c.Used < 0 {
				t.Fatalf("%s is used %v", c.Name, c.Used)
			}
		}
		if !finite(float64(r.Tilt.Total), float64(r.HookHeight), float64(r.Press)) {
			t.Fatalf("not numbers: %+v", r)
		}
	})
}
