package liftsheet

import (
	"os"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// The verdict of a lift stood alone at the foot of a page, its masses, legs and gear on the next:
// the heading, the verdict and what is to be minded stay with what follows them.
func TestTheHeadOfALiftStaysWithItsFirstTable(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "bevel-gearbox.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	for _, l := range jb.Lifts {
		kept, head := 0, 2+len(cautionLines(c, l)) // heading, verdict, lines
		for _, p := range pieces(c, l) {
			if !p.KeepNext {
				break
			}
			kept++
		}
		if kept < head {
			t.Errorf("%s: %d pieces stay with the next, want %d", l.Mark, kept, head)
		}
	}
	if len(jb.Lifts) == 0 {
		t.Fatal("no lift")
	}
}
