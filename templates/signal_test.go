package templates_test

import (
	"os"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
	"matchmark/templates/words"
)

// No text stands on the plate of a signal word. The Polish word for DANGER was wider than
// the column of the signs, and the hazard was printed over it.
func TestSignalWordsHaveRoom(t *testing.T) {
	lang := "pl"
	w, err := words.In(lang)
	if err != nil {
		t.Fatal(err)
	}
	j, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: "storm-pump.yaml", Language: lang})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	pack, _ := templates.Compose(j, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	plates := 0
	for _, f := range pack.Pages.Pages {
		for i, word := range f.Items {
			text, ok := word.Shape.(layout.Text)
			if !ok || text.S != w.Cautions.Signal["danger"] {
				continue
			}
			plates++
			for k, other := range f.Items {
				beside, ok := other.Shape.(layout.Text)
				high := layout.Mm(4)
				if ok && k != i && other.X >= word.X && other.X < word.X+text.Width && other.Y > word.Y-high && other.Y < word.Y+high/2 {
					t.Errorf("page %d: %q stands on the plate of %s", f.Number, beside.S, text.S)
				}
			}
		}
	}
	if plates == 0 {
		t.Error("no plate was found")
	}
}
