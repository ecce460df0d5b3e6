package templates_test

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
	"matchmark/templates/words"
)

// Three steps that wait for the same hours had three lines with a box for the day on which they
// are due: three days were asked for where there is one.
func TestWhatWaitsForTheSameIsDueOnce(t *testing.T) {
	t.Parallel()
	jb, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: "bevel-gearbox.yaml"})
	whens := map[string]int{}
	for _, x := range jb.Deferred {
		whens[x.When]++
	}
	if len(jb.Deferred) < 3 || len(whens) != 1 {
		t.Fatalf("the gearbox has %d steps that wait, for %d times; want three or more that wait for one", len(jb.Deferred), len(whens))
	}
	pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems)
	due := 0
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet == "close-out" || len(f.Parts) > 0 && f.Parts[0].Sheet == "close-out" {
			due += strings.Count(layout.Readable(f), words.English.CloseOut.DueDate)
		}
	}
	if due != 1 {
		t.Errorf("%d boxes ask when the work is due, want one", due)
	}
}

// The last page of the pack began with the boxes of a step that waits, and did not say whose they
// were.
func TestAStepThatWaitsSaysWhereItGoesOn(t *testing.T) {
	t.Parallel()
	jb, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: "bevel-gearbox.yaml"})
	pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), problems)
	tested := 0
	for _, x := range jb.Deferred {
		if x.Step == nil || x.Step.Until == nil {
			continue
		}
		for _, f := range pack.Pages.Pages {
			text := layout.Readable(f)
			if f.Sheet != "close-out" || !strings.Contains(text, words.English.Step.Again) {
				continue
			}
			tested++
			if !strings.Contains(text, x.Step.No) {
				t.Errorf("page %d asks whether a step is done again and does not name %s", f.Number, x.Step.No)
			}
		}
	}
	if tested == 0 {
		t.Error("no step that waits is done again")
	}
}
