package templates_test

import (
	"regexp"
	"strings"
	"testing"

	"matchmark/layout"
)

// glued is a colon or semicolon of the program that French sets without the no-break space
// before it: behind a word of the catalogue, where the text of a definition cannot stand.
var glued = regexp.MustCompile(`(Masse|Centre de gravité|Élingage|Déposer à|Présents obligatoires|Froid et chaud|Filets et faces d’appui|Ordre du travail|Jeux appariés, jamais mélangés|tension)[:;]`)

// "Masse: 1480 kg" and "faces d'appui: oil" stood on French paper: the colon between a name and
// what is said of it was written by the program for every language.
func TestFrenchColonBehindANameHasItsSpace(t *testing.T) {
	t.Parallel()
	said := 0
	_, pack, _ := composeIn(t, setting{starter: "storm-pump.yaml", lang: "fr", paper: layout.A4})
	for _, f := range pack.Pages.Pages {
		for _, it := range f.Items {
			text, ok := it.Shape.(layout.Text)
			if !ok {
				continue
			}
			if m := glued.FindString(text.S); m != "" {
				t.Errorf("page %d: %q in %q", f.Number, m, text.S)
			}
			if strings.Contains(text.S, "Masse\u00a0:") {
				said++
			}
		}
	}
	if said == 0 {
		t.Error("no mass is told")
	}
}
