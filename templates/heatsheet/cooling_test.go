package heatsheet

import (
	"testing"

	"matchmark/packs/heat"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// What the sheet wants ready before the heat goes on had no tick in the order of work.
func TestCoolingIsTickedWhereAStuckHubNeedsIt(t *testing.T) {
	near := func(most, stuck heat.Celsius) heat.Warmed {
		return heat.Warmed{Neighbour: heat.Neighbour{Name: "Pads", Limit: heat.Limit{At: 100}}, Greatest: most, IfStuck: stuck}
	}
	for _, c := range []struct {
		near []heat.Warmed
		want int
	}{{nil, 0}, {[]heat.Warmed{near(50, 90)}, 0}, {[]heat.Warmed{near(50, 115)}, 1}, {[]heat.Warmed{near(50, 90), near(60, 115), near(70, 130)}, 1}} {
		s := sheet{Composer: &block.Composer{W: words.English}, h: &job.Heat{Pull: &job.HotPull{Plan: &heat.Plan{Neighbours: c.near}}}}
		if got := s.coolingReady(); len(got) != c.want {
			t.Errorf("%v: acts %q, want %d", c.near, got, c.want)
		}
	}
}
