package packs_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A reading as left sends to no hold that was released above it, in any order of the three; where
// nothing is read above the hold that is told of the hold. Common practice, no source.
func TestReadingsAsLeftSendToNoHoldAbove(t *testing.T) {
	t.Parallel()
	line := map[string]string{"hold": "do: Show it to the engineer., hold: W1", "run-out": "do: Measure the run-out., measure: [D1]", "back": "do: Measure the run-out again., set: [D1]"}
	words := map[string]bool{
		", out: tell the engineer at W1": true, ", over: Tell the engineer at W1.": true,
		", over: tell the engineer at W1, found-out: tell the engineer at W1": true,
		", out: tell the engineer": false, ", over: tell the engineer, found-out: tell the engineer at W1": false,
		", out: renew what was chosen at W1": false, ", out: use the limit agreed with the engineer at W1": false, "": false,
	}
	var all []string
	for w := range words {
		all = append(all, w)
	}
	slices.Sort(all)
	toldWhere(t, "hold-past", func(t *rapid.T) (string, bool) {
		out := rapid.SampledFrom(all).Draw(t, "out")
		order := anyOrder(t, "hold", "run-out", "back")
		return heldText("Engineer says go on", out) + stepLines(order, line), words[out] && slices.Equal(order, []string{"run-out", "hold", "back"})
	})
}
