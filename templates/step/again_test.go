package step

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// The boxes that ask whether a bolt moved stood below the lines of the locks: who ticked no
// there went back to the disc with belt and breaker free.
func TestDoneAgainBeforeTheLocksAreOff(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "bevel-gearbox.yaml"})
	c := &block.Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), Job: jb, W: words.English, Span: 180, Kept: block.NewKept()}
	tested := 0
	for _, st := range jb.Steps() {
		if st.Until == nil || len(st.Unlock) == 0 {
			continue
		}
		tested++
		var said []string
		for _, p := range Pieces(c, st) {
			for _, item := range p.Block.Items() {
				if text, ok := item.Shape.(layout.Text); ok {
					said = append(said, text.S)
				}
			}
		}
		all := strings.ReplaceAll(strings.Join(said, " "), "\u00a0", " ")
		tight, again, off := strings.Index(all, "tighten"), strings.Index(all, words.English.Step.Again), strings.Index(all, "take the lock off")
		if tight < 0 || again < tight || off < again {
			t.Errorf("%s: tightened at %d, asked again at %d, locks off at %d of\n%s", st.Name(), tight, again, off, all)
		}
	}
	if tested == 0 {
		t.Error("no step is done again before locks come off")
	}
}
