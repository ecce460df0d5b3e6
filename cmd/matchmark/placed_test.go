package main

import (
	"os"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// TestAHoleIsToldAtItsPlace: whatever key or entry is left out, or stands there with nothing
// behind it, each problem has a place in the file and words. A heat with nothing behind its
// mark was told without a place how hot its hub may get.
func TestAHoleIsToldAtItsPlace(t *testing.T) {
	longTest(t)
	t.Parallel()
	files := ownWith(t, 40)
	for _, how := range []spoil{gone, emptied} {
		for i, x := range eachKey(t, how, 700, files) {
			if i%6 != int(how) && os.Getenv("ACID_FULL") != "1" {
				continue // a sixth of the kinds each way
			}
			on := fstest.MapFS{"x.yaml": {Data: []byte(x.text())}}
			_, problems := packs.Load(on, packs.Inputs{Definition: "x.yaml"})
			for _, p := range problems {
				if p.Pos.File != "x.yaml" || p.Pos.Line < 1 || p.Pos.Col < 1 || p.Message == "" || p.Code == "" {
					t.Errorf("%s: a problem without place or words: %+v", x.where, p)
				}
			}
		}
	}
}
