package main

import (
	"strings"
	"testing"

	"matchmark/layout"
)

// TestGuardsOnPaper: what guards a step is on paper in both directions: a hold that is
// released twice has two rows to sign, a lock that comes off for a test has a row each
// time that it is on, a guard that is left out at a put-back row has its reason there,
// and what is easily missed in taking off alone is on no tag and at no put-back row.
func TestGuardsOnPaper(t *testing.T) {
	t.Parallel()
	_, pack := goodPack(t, "mirrored.yaml", layout.A4, false)
	text := sheetTexts(t, pack.Pages)
	tags := strings.Join(words(t, painted(t, pack.Tags), len(pack.Tags.Pages)), "\n")
	for _, c := range []struct {
		sheet string
		want  []string
		not   []string
	}{
		{"reassembly", []string{"HOLD W1 again", "Caution of 3.3 left out here: Puller under load. Why: it goes on without a puller", "Nobody checks here as at 2.1: whoever unlocks sees it", "left-hand thread", "permit handed back: Permit to work"}, []string{"a stone behind", "the shim behind"}},
		{"traveler", []string{"HOLD W1", "a stone behind the screen", "take the lock off until it is locked again: Isolator 7", "open or off meanwhile, everybody clear of it: Milling chamber, Belt guard", "lock on again Isolator 7"}, []string{"W1 again"}},
		{"holds", []string{"W1 again", "R1.3"}, nil},
		{"isolations", []string{"off for now at 4.1", "locked again at 4.1", "unlocked at R3.1"}, nil},
	} {
		got := strings.Join(strings.Fields(text[c.sheet]), " ")
		for _, w := range c.want {
			if !strings.Contains(got, w) {
				t.Errorf("%s does not say %q:\n%s", c.sheet, w, got)
			}
		}
		for _, w := range c.not {
			if strings.Contains(got, w) {
				t.Errorf("%s says %q", c.sheet, w)
			}
		}
	}
	if strings.Contains(tags, "stone behind") {
		t.Error("a tag tells what is easily missed in taking off alone")
	}
}

// TestHangingLoadOnPaper: between two stages of a lift each step says which load
// hangs, and what is put under it before a hand goes in, on the way down as well; where the
// lift goes on, it is out again.
func TestHangingLoadOnPaper(t *testing.T) {
	t.Parallel()
	_, pack := goodPack(t, "field-steam-turbine.yaml", layout.A4, false)
	text := sheetTexts(t, pack.Pages)
	for sheet, want := range map[string]map[string]int{
		"traveler":   {"Load that hangs.": 2, "L1 hangs on the hook since 2.1": 2, "a hardwood block under each journal": 3, "out again: a hardwood block under each": 1, "L1 stays on the hook": 1, "L1 goes on from 2.1": 1},
		"reassembly": {"Load that hangs.": 2, "L1 hangs on the hook since R1.4": 2, "a hardwood block under each": 3, "out again: a hardwood block under each": 1, "L1 stays on the hook": 1, "L1 goes on from R1.4": 1},
	} {
		got := strings.Join(strings.Fields(text[sheet]), " ")
		for w, n := range want {
			if strings.Count(got, w) != n {
				t.Errorf("%s says %q %d times, want %d", sheet, w, strings.Count(got, w), n)
			}
		}
	}
}
