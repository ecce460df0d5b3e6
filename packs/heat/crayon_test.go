package heat

import (
	"testing"

	"pgregory.net/rapid"
)

// TestCrayonIsBelowItsLimit: the full step under the limit, never the limit itself, which
// a probe tells. Common practice, no source: crayons come in steps of 10 °C and of 25 °F.
func TestCrayonIsBelowItsLimit(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		limit, celsius Celsius
		fahrenheit     float64
	}{{200, 190, 375}, {195, 190, 375}, {300, 290, 550}, {120, 110, 225}, {(450 - 32) * 5 / 9., 230, 425}} {
		l := Limit{At: c.limit, Source: "test"}
		if got := l.Crayon(InCelsius); got != c.celsius {
			t.Errorf("crayon for %v °C: %v °C, want %v", c.limit, got, c.celsius)
		}
		if got := float64(l.Crayon(InFahrenheit))*9/5 + 32; got < c.fahrenheit-1e-6 || got > c.fahrenheit+1e-6 {
			t.Errorf("crayon for %v °C: %v °F, want %v", c.limit, got, c.fahrenheit)
		}
	}
}

// TestTheCrayonEndsTheHeat: whatever of the band is put in, the hub is free before the
// crayon melts, and with the heat left on until it melts no skin passes it. The sheet said
// "heat on until the crayon melts" of a window that was worked out for the heat off, and
// the band reached as far as the limit, where a crew that obeys its crayon has long
// stopped.
func TestTheCrayonEndsTheHeat(t *testing.T) {
	t.Parallel()
	seen := 0
	checkSome(t, 10, func(t *rapid.T) {
		p := joint(t)
		p.Contact = Contact{Perfect: true, TouchUntil: p.Fit.Clearance}
		p.Crayon = rapid.SampledFrom([]Crayon{InCelsius, InFahrenheit}).Draw(t, "crayon")
		plan, err := p.Plan()
		if err != nil {
			return
		}
		seen++
		melts := p.Skin.Crayon(p.Crayon)
		if plan.Crayon != melts || plan.Hottest > melts+0.5 {
			t.Fatalf("the skin has %v °C, the crayon melts at %v", plan.Hottest, melts)
		}
		s := search{pull: &p, grid: usualGrid}
		if most := s.try(float64(plan.Band.Most)); !most.frees {
			t.Fatal("the most of the band does not free before the crayon melts")
		}
		if hotter := s.try(float64(plan.Band.Most) * 1.05); hotter.frees {
			t.Fatal("more than the most frees as well")
		}
		// Left on for as long as is told, the heat never passes the crayon.
		b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, usualGrid)
		if !p.heatFor(b, float64(plan.Net), float64(plan.Free+plan.HeatOn), 1e9, usualGrid) {
			t.Fatal("no solution")
		}
		if skin := Celsius(b.skin()); skin > melts+1 {
			t.Fatalf("left on for %v s the skin has %v °C, the crayon melts at %v", plan.HeatOn, skin, melts)
		}
	})
	if seen == 0 {
		t.Error("no pull was planned")
	}
}

// TestAHotterCrayonNeverNarrowsTheBand: without a crayon the heat goes off at the limit,
// and the band is as wide or wider.
func TestAHotterCrayonNeverNarrowsTheBand(t *testing.T) {
	t.Parallel()
	p := stormPump(t)
	wide := planned(t, p)
	p.Crayon = InCelsius
	narrow := planned(t, p)
	if narrow.Band.Most >= wide.Band.Most || narrow.Band.Least < wide.Band.Least*0.99 || narrow.Crayon != 190 || wide.Crayon != 200 {
		t.Errorf("with its crayon %.0f to %.0f W, without %.0f to %.0f W", narrow.Band.Least, narrow.Band.Most, wide.Band.Least, wide.Band.Most)
	}
}
