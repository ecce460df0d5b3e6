package main

import (
	"maps"
	"slices"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// mostPages bounds the pages of each starter, on A4 and on Letter.
var mostPages = map[string][2]int{
	"bevel-gearbox.yaml": {70, 73},
	"exhaust-fan.yaml":   {30, 34},
	"storm-pump.yaml":    {88, 91},
	"triplex-pump.yaml":  {83, 86},
}

// TestPagesAndFill: paper that is half empty is turned twice as often. For each starter
// the pages of the pack and of its sheets are printed with how full they are, and held
// under a bound; so is the share of pages of work that begin in the middle of a step.
func TestPagesAndFill(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		for i, paper := range papers {
			_, pack := composed(t, starter, templates.Options{Paper: paper})
			fillOf(t, starter+" "+paper.Name, pack.Pages.Pages)
			if n, most := len(pack.Pages.Pages), mostPages[starter][i]; n > most {
				t.Errorf("%s on %s takes %d pages, more than %d", starter, paper.Name, n, most)
			}
		}
	}
}

func fillOf(t *testing.T, name string, frames []layout.Frame) {
	share, pages, parted := map[string]layout.Mm{}, map[string]int{}, map[string]int{}
	full := layout.Mm(0)
	for _, f := range frames {
		full += f.Used / f.Room
		for _, p := range f.Parts {
			pages[p.Sheet]++
			share[p.Sheet] += p.Used / f.Room
		}
		if f.Parted {
			parted[f.Sheet]++
		}
	}
	t.Logf("%s: %d pages, %.0f %% full, %d of them not of work", name, len(frames), 100*float64(full)/float64(len(frames)), len(frames)-pages["traveler"]-pages["reassembly"])
	for _, s := range slices.Sorted(maps.Keys(pages)) {
		t.Logf("  %-11s on %2d pages, takes %4.1f of them, %d begin in a step", s, pages[s], float64(share[s]), parted[s])
	}
}
