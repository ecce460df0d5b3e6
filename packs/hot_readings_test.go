package packs_test

import (
	"slices"
	"strings"
	"testing"
)

// Drawing a hub off hot ends what is read between it and its shaft; pushing a new one on hot
// does not, for it is read as it sits.
func TestWhatIsPushedOnHotIsReadAfterwards(t *testing.T) {
	t.Parallel()
	const text = lawHead + `parts: {shaft: {name: Shaft}, hub: {name: Hub, mass: 8 kg, RENEW}}
instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.01 mm}}
containers: {C1: {name: Hub, kind: box, keep: dry}}
dimensions:
  D1: {what: Hub to shaft end, kind: stand-off, from: {hub: face}, to: {shaft: end}, by: gauge, found: record to 0.01 mm, nominal: 20 mm}
heats:
  H1: {what: Hub, fit: 75 H7/m6, hub: {part: hub, material: carbon steel, outside: 135 mm, length: 100 mm, kind: plain carbon steel hub}, shaft: {part: shaft, material: carbon steel, behind: 900 mm}, nothing-near: bare shaft, put-on: {by: induction, clearance: 0.08 mm}}
steps:
STEPS`
	for _, c := range []struct {
		name, renew, steps string
		told               bool
	}{
		{"pushed on hot, then read", "renew: added", "  - {step: \"on\", do: Heat the hub and push it on., heat: [H1], fit: [hub]}\n  - {step: read, do: Measure it., measure: [D1]}\n", false},
		{"read, then drawn off hot", "renew: never", "  - {step: read, do: Measure it., measure: [D1]}\n  - {step: off, do: Draw the hub off hot., heat: [H1], remove: [hub], into: C1}\n", false},
		{"drawn off hot, then read", "renew: never", "  - {step: off, do: Draw the hub off hot., heat: [H1], remove: [hub], into: C1}\n  - {step: read, do: Measure it., measure: [D1]}\n", true},
	} {
		_, codes := codesOf(strings.NewReplacer("RENEW", c.renew, "STEPS", c.steps).Replace(text))
		if got := slices.Contains(codes, "too-late"); got != c.told {
			t.Errorf("%s: told that it is read too late %v, want %v: %v", c.name, got, c.told, codes)
		}
	}
}
