package proofread

import "testing"

// What a mechanic does with a pack of shims by the words for a reading out of its limit.
// Common practice, no source.
func TestWhichWayWordsChangeShims(t *testing.T) {
	for _, x := range []struct {
		words string
		want  int
	}{
		{"lay leaves in", 1},
		{"put a leaf in", 1},
		{"put in a 0.10 mm shim", 1},
		{"add shims until it is in", 1},
		{"add one thin leaf", 1},
		{"fit a thicker shim", 1},
		{"use a thicker pack of shims", 1},
		{"slip more leaves under it", 1},
		{"take leaves out", -1},
		{"take out a leaf and measure again", -1},
		{"take more leaves out", -1},
		{"take one of the leaves out", -1},
		{"remove 0.10 mm shims", -1},
		{"fit a thinner shim", -1},
		{"put a thinner leaf in", -1},
		{"put fewer leaves in", -1},
		{"put the next size down in", 0},
		{"put it in the log and tell the engineer", 0},
		{"add no leaf", 0},
		{"add thinner leaf", 0},
		{"take the pack out, add 0.10 mm", 0},
		{"take the shims out and measure them", 0},
		{"pull the pads out and shim them up", 0},
		{"draw the shaft out, tell the engineer", 0},
		{"take a leaf out, put a thicker leaf in", 0},
		{"do not take leaves out", 0},
		{"change the shims", 0},
	} {
		if got := shimsSaid(x.words); got != x.want {
			t.Errorf("%q: %d, want %d", x.words, got, x.want)
		}
	}
}
