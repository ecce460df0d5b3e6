package main

import (
	"maps"
	"slices"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// mostPages bounds the pages of each starter, on A4 and on Letter. Those of the gearbox grew when no
// more than one page of work in five was to begin within a step, and on Letter by one more as the
// depth of each output seal is decided beside a copy of its reading; those of the triplex pump are
// fewer since a step is one act there and its bench work stands in an order that fills the pages. Those of the storm pump grew by one on A4 as steps of it
// came to say who holds what, what hangs meanwhile and what is done when a part does not move.
// On Letter two pumps took a page more when what is on for a while came to name its places.
var mostPages = map[string][2]int{
	"bevel-gearbox.yaml": {52, 56},
	"exhaust-fan.yaml":   {19, 21},
	"storm-pump.yaml":    {60, 68},
	"triplex-pump.yaml":  {54, 59},
}

// mostListed bounds how many pages the sheets besides those of work, of the storeroom and
// of readings take together when they are laid end to end. Acts of a heat stand apart by a rule, and
// each group of places has a line of its own. Those of the gearbox grew when its bench work came to stand
// in steps of one act, each of which has its line in the lists of steps and its signature. Those of the
// storm pump grew on Letter as its steps came to say what the electrician does and how probes are turned,
// those of the triplex pump by a line when its spare crossheads, one of each hand, got a line each.
var mostListed = map[string][2]float64{
	"bevel-gearbox.yaml": {20.7, 21.6},
	"exhaust-fan.yaml":   {8.0, 8.5},
	"storm-pump.yaml":    {24.75, 26.5},
	"triplex-pump.yaml":  {17.1, 17.9},
}

// mostWork bounds the pages of the traveler and of the reassembly sheet together.
var mostWork = map[string][2]int{
	"bevel-gearbox.yaml": {27, 30},
	"exhaust-fan.yaml":   {9, 10},
	"storm-pump.yaml":    {31, 37},
	"triplex-pump.yaml":  {32, 36},
}

// oneIn is of how many pages of work one may begin in the middle of a step, as layout keeps it
// for the sheets on which work stops and starts: more pages are taken rather than that more of
// them do. One in a pack always may.
const oneIn = 5

// leastFull is how full the pages of work are at the least, in per cent: a page that ends
// between two steps leaves the room that the next one does not go into. It is least where pages
// were added so that fewer begin within a step.
const leastFull = 81

// leastFullA4 is the same of each starter on A4, for which their steps are set in order.
var leastFullA4 = map[string]int{
	"bevel-gearbox.yaml": 92, // the list of critical dimensions begins on a page of its own there
	"exhaust-fan.yaml":   93,
	"storm-pump.yaml":    93,
	"triplex-pump.yaml":  93,
}

// TestPagesAndFill: paper that is half empty is turned twice as often. For each starter
// the pages of the pack and of its sheets are printed with how full they are, and held
// under a bound; so are the pages of work that begin in the middle of a step.
func TestPagesAndFill(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		for i, paper := range papers {
			_, pack := composed(t, starter, templates.Options{Paper: paper})
			work, full, parted := fillOf(t, starter+" "+paper.Name, pack.Pages.Pages)
			if most := mostWork[starter][i]; work > most {
				t.Errorf("%s on %s has %d pages of work, more than %d", starter, paper.Name, work, most)
			}
			least := leastFull
			if i == 0 {
				least = leastFullA4[starter]
			}
			if full < least*work {
				t.Errorf("%s on %s: the pages of work are %d %% full, less than %d %%", starter, paper.Name, full/work, least)
			}
			if most := max(work/oneIn, 1); parted > most {
				t.Errorf("%s on %s: %d of %d pages of work begin in a step, more than %d", starter, paper.Name, parted, work, most)
			}
			if got, most := listsTake(pack.Pages.Pages), mostListed[starter][i]; got > most {
				t.Errorf("%s on %s: the lists take %.2f pages, more than %.2f", starter, paper.Name, got, most)
			}
			if n, most := len(pack.Pages.Pages), mostPages[starter][i]; n > most {
				t.Errorf("%s on %s takes %d pages, more than %d", starter, paper.Name, n, most)
			}
		}
	}
}

// listsTake is the sum of what those sheets take of their pages.
func listsTake(frames []layout.Frame) float64 {
	sum := 0.0
	for _, f := range frames {
		for _, p := range f.Parts {
			if !slices.Contains([]string{"traveler", "reassembly", "register", "counts", "readings"}, p.Sheet) {
				sum += float64(p.Used / f.Room)
			}
		}
	}
	return sum
}

// fillOf prints the pages and fill of each sheet; it gives the pages of work, the sum of
// how full they are in per cent, and how many of them begin in a step.
func fillOf(t *testing.T, name string, frames []layout.Frame) (work, full, inStep int) {
	share, pages, parted := map[string]layout.Mm{}, map[string]int{}, map[string]int{}
	whole, filled := layout.Mm(0), layout.Mm(0)
	for _, f := range frames {
		whole += f.Used / f.Room
		for _, p := range f.Parts {
			pages[p.Sheet]++
			share[p.Sheet] += p.Used / f.Room
		}
		if f.Sheet == "traveler" || f.Sheet == "reassembly" {
			work++ // both may share a page, and the last one lists
			filled += f.Used / f.Room
		}
		if f.Parted {
			parted[f.Sheet]++
		}
	}
	t.Logf("%s: %d pages, %.0f %% full, %d of them not of work; lists take %.1f", name, len(frames), 100*float64(whole)/float64(len(frames)), len(frames)-work, listsTake(frames))
	for _, s := range slices.Sorted(maps.Keys(pages)) {
		t.Logf("  %-11s on %2d pages, takes %4.1f of them, %d begin in a step", s, pages[s], float64(share[s]), parted[s])
	}
	full = int(100 * filled)
	for _, s := range []string{"traveler", "reassembly"} {
		inStep += parted[s]
	}
	t.Logf("  %d pages of work, %d %% full, %d begin in a step", work, full/max(work, 1), inStep)
	return work, full, inStep
}
