package heat

import (
	"math"
	"testing"
)

// An edge of the band is the last rung that works: one rung further the hub is not freed.
func TestAnEdgeIsTheLastRungThatWorks(t *testing.T) {
	t.Parallel()
	rung := math.Pow(edgeFactor, 1.0/edgeRungs)
	for name, change := range map[string]func(*Pull){
		"hot before it frees":    func(*Pull) {},
		"joint opens":            func(p *Pull) { p.Contact.TouchUntil = 0 },
		"late before it frees":   func(p *Pull) { p.Longest = 100 },
		"a very wide band":       func(p *Pull) { p.Fit.Interference = 0.03 },
		"a hub that may crack":   func(p *Pull) { p.Hub.Material = named(t, "grey cast iron"); p.Fit.Interference = 0.01 },
		"a shaft that runs on":   func(p *Pull) { p.Shaft.Front = 300 },
		"induction, a deep one":  func(p *Pull) { p.Source = Source{Means: Induction, Depth: 5} },
		"a hub that freed early": func(p *Pull) { p.Skin.At = 350 },
	} {
		p := stormPump(t)
		change(&p)
		s := search{pull: &p, grid: usualGrid}
		b, err := s.band()
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		least, most := float64(b.Least), float64(b.Most)
		for _, c := range []struct {
			power float64
			frees bool
		}{{least, true}, {least / rung, false}, {most, true}, {most * rung, false}} {
			if got := s.try(c.power).frees; got != c.frees {
				t.Errorf("%s: %.1f W, of a band from %.1f to %.1f W, frees: %v", name, c.power, least, most, got)
			}
		}
	}
}
