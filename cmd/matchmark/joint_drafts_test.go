package main

import (
	"testing"

	"matchmark/layout"
)

// TestDraftsOfJointsWithAnyKeyLeftOut takes away one key after another of joints and
// alignments and composes what is left: a draft has holes where nothing is written, and
// every sheet walks round them. What cannot be worked out prints no figure.
func TestDraftsOfJointsWithAnyKeyLeftOut(t *testing.T) {
	longTest(t)
	t.Parallel()
	for _, x := range eachKeyLeftOut(t, 95, ownWith(t, 20, "joints", "alignments"), "joints", "alignments") {
		d := drafted(x.text(), layout.A4) // a panic fails the test by itself
		for _, j := range d.jb.Joints {
			if j.Result != nil && j.Hole {
				t.Errorf("%s: %s has figures, and something of it could not be read", x.where, j.Mark)
			}
		}
	}
}
