package packs_test

import (
	"strings"
	"testing"
)

// triedPump sends to the hold W1 when the tries of a gap, and of a float below the hold, are no good.
const triedPump = lawHead + `parts:
  cover: {name: Bearing cover, mass: 5 kg}
  gasket: {name: Gasket, renew: always}
instruments: {gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.01 mm}}
dimensions:
  D1: {what: Gap, kind: gap, of: {cover: rim}, by: gauge, found: not taken, left: 0.30 to 0.60 mm, source: sheet}
  D2: {what: Float, kind: gap, of: {cover: face}, by: gauge, found: not taken, left: 0.30 to 0.60 mm, source: sheet}
holds:
  W1: {kind: hold, what: Gasket chosen, releases: engineer}
steps:
  - {step: set, do: Set the gap., set: [D1], until: D1 is in limits, tries: 3, still-out: "ABOVE"}
  - {step: choose, do: Choose the gasket., hold: W1}
  - {step: again, do: Set the float., set: [D2], until: D2 is in limits, tries: 3, still-out: "PUT"}
`

// What was agreed at a hold sends nobody to it, and one try above it that does is enough. Common
// practice, no source.
func TestTriesThatSendToAHold(t *testing.T) {
	t.Parallel()
	for _, above := range []struct {
		sends string
		told  bool
	}{{"tell the engineer", true}, {"Use the gasket chosen at W1.", true}, {"Stop; the engineer decides at W1.", false}} {
		toldJust(t, "hold-early", strings.Replace(triedPump, "ABOVE", above.sends, 1), []warned{
			{"Stop; the engineer decides at W1.", above.told},
			{"tell the engineer at W1", above.told},
			{"Take the gasket chosen at W1, then tell the engineer at W1", above.told},
			{"Take the next gasket of those chosen at W1", false},
			{"Use the gasket agreed at W1 and tell the engineer.", false},
			{"Take the gasket chosen by the engineer at W1.", false},
			{"Go back to the gap agreed with the engineer at W1", false},
			{"Use the gasket released at W1", false},
			{"Go back to the gap set at W1", false},
			{"tell the engineer", false},
		})
	}
}
