package templates_test

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates"
)

// With a second language what is done stands in both.
func TestSecondLanguage(t *testing.T) {
	load := func(lang string) *job.Job {
		j, problems := packs.Load(os.DirFS("../testdata/good"), packs.Inputs{Definition: "two-languages.yaml", Language: lang})
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		return j
	}
	pack, problems := templates.Compose(load("es"), templates.Options{Paper: layout.A4, Second: load("en")}, pdf.NewFaces(), nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var all strings.Builder
	for _, f := range pack.Pages.Pages {
		all.WriteString(strings.ReplaceAll(layout.Readable(f), "\n", " "))
	}
	text := strings.Join(strings.Fields(all.String()), " ")
	for _, want := range []string{"Mida cuánto sobresale", "Measure how far the nut stands out", "Lock nut stand-off", "La arandela está debajo.", "The washer lies under it."} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is not on paper", want)
		}
	}
}
