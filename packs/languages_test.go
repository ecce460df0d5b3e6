package packs_test

import (
	"os"
	"testing"

	"matchmark/packs"
	"matchmark/packs/job"
)

// A definition with its texts in two languages gives the same job in either, but for
// the texts; without a word of language it is English.
func TestTextsInTwoLanguages(t *testing.T) {
	want := map[string][2]string{
		"":   {"Kiln exhaust fan", "Run the nut up to its found stand-off."},
		"en": {"Kiln exhaust fan", "Run the nut up to its found stand-off."},
		"es": {"Extractor del horno", "Enrosque la tuerca hasta el saliente hallado."},
	}
	digests := map[string]string{}
	for lang, texts := range want {
		j, problems := packs.Load(os.DirFS("../testdata/good"), packs.Inputs{Definition: "two-languages.yaml", Language: lang})
		if len(problems) > 0 {
			t.Fatalf("%q: %v", lang, problems)
		}
		if got := [2]string{j.Equipment.Name, lastStep(j)}; got != texts {
			t.Errorf("%q: got %q, want %q", lang, got, texts)
		}
		digests[lang] = j.Digest
	}
	if digests[""] != digests["en"] || digests["en"] == digests["es"] {
		t.Errorf("digests %v: paper in another language is other paper", digests)
	}
	if _, problems := packs.Load(os.DirFS("../testdata/good"), packs.Inputs{Definition: "two-languages.yaml", Language: "pl"}); problems.Errors() == 0 {
		t.Error("a language that is not written is not told")
	}
}

// lastStep is the text of the last step, which is in putting back.
func lastStep(j *job.Job) string {
	steps := j.Sections[len(j.Sections)-1].Steps
	return steps[len(steps)-1].Do
}
