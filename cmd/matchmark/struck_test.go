package main

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// TestStruckStops: a rotor raised a hand's width and left on the hook for its shim packs
// had a cell for initials at "then unhook"; whoever filled each cell unhooked it there.
// The last three stops are struck for that step alone, and open where it is set down.
func TestStruckStops(t *testing.T) {
	t.Parallel()
	_, storm := composed(t, "storm-pump.yaml", templates.Options{Paper: layout.A4})
	_, turbine := goodPack(t, "field-steam-turbine.yaml", layout.A4, false)
	_, fan := composed(t, "exhaust-fan.yaml", templates.Options{Paper: layout.A4})
	for _, c := range []struct {
		name   string
		pack   *templates.Pack
		struck int // of a row: one for each step that leaves the load hanging
		over   int // the steps after it in which it is only let down: it hangs lower than a hand's width
	}{{"storm-pump", storm, 1, 1}, {"field-steam-turbine", turbine, 2, 1}, {"exhaust-fan", fan, 0, 0}} {
		text := strings.Join(strings.Fields(sheetTexts(t, c.pack.Pages)["lifts"]), " ")
		for _, stop := range []string{"tag lines manned.", "hands out.", "then unhook."} {
			struck := c.struck
			if stop == "hands out." {
				struck += c.over
			}
			if got := strings.Count(text, stop+strings.Repeat(" —", struck)); got == 0 && struck > 0 {
				t.Errorf("%s: %q is not struck %d times", c.name, stop, struck)
			}
			if more := stop + strings.Repeat(" —", struck+1); strings.Contains(text, more) {
				t.Errorf("%s: %q is struck more than %d times", c.name, stop, struck)
			}
		}
	}
}
