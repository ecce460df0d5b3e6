package packs_test

import (
	"fmt"
	"testing"
)

// A gap between the same face of two pieces of one part, and the backlash of two pieces that
// mesh, are readings between two things; of one piece they are none. Common practice, no
// source.
func TestTwoPiecesOfOnePartHaveTwoFaces(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		count          int
		kind, from, to string
		told           bool
	}{
		{1, "gap", "{disc: face}", "{disc: face}", true},
		{2, "gap", "{disc: face}", "{disc: face}", false},
		{3, "gap", "{disc: face}", "{disc: face}", false},
		{1, "gap", "{disc: face}", "{disc: back}", false},
		{1, "clearance", "{wheel/M: tooth}", "{wheel/M: gap}", true},
		{2, "clearance", "{wheel/M: tooth}", "{wheel/M: gap}", false},
	} {
		text := lawHead + fmt.Sprintf("places: {gear: {M: {name: driving}, G: {name: driven}}}\nparts: {disc: {name: Disc, count: %d}, wheel: {name: Wheel, each: gear, count: %d}}\n", x.count, x.count) +
			"dimensions: {D1: {what: Gap, kind: " + x.kind + ", from: " + x.from + ", to: " + x.to + ", nominal: 5.0 mm, left: 4.0 to 6.0 mm, source: sheet 2}}\nsteps:\n  - {step: a, do: Read it., measure: [D1]}\n  - {step: b, do: Read it., set: [D1]}\n"
		if told := len(toldOf(text, "one-face")) > 0; told != x.told {
			t.Errorf("%d pieces, %s from %s to %s: told %v\n%s", x.count, x.kind, x.from, x.to, told, text)
		}
	}
}
