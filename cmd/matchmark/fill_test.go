package main

import (
	"sort"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// mostPages bounds the pages of each starter, on A4 and on Letter, those of tightening
// and alignment counted in.
var mostPages = map[string][2]int{
	"bevel-gearbox.yaml": {84, 93},
	"exhaust-fan.yaml":   {37, 40},
	"storm-pump.yaml":    {100, 108},
	"triplex-pump.yaml":  {92, 101},
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
	pages, used, parted := map[string]int{}, map[string]layout.Mm{}, map[string]int{}
	for _, f := range frames {
		pages[f.Sheet]++
		used[f.Sheet] += f.Used / f.Room
		if f.Parted {
			parted[f.Sheet]++
		}
	}
	var sheets []string
	for s := range pages {
		sheets = append(sheets, s)
	}
	sort.Strings(sheets)
	t.Logf("%s: %d pages", name, len(frames))
	for _, s := range sheets {
		t.Logf("  %-11s %2d pages, %3.0f %% full, %d begin in a step", s, pages[s], 100*float64(used[s])/float64(pages[s]), parted[s])
	}
}
