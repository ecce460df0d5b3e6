package words

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"matchmark/packs/codes"
)

// Every code of a problem has its sentence in each language, and no other has one: the
// front sheet of a German draft told its errors in English.
func TestEveryCodeIsTold(t *testing.T) {
	names := codes.Names()
	for _, lang := range Languages()[1:] {
		c, err := In(lang)
		if err != nil {
			t.Fatal(err)
		}
		for _, code := range names {
			e, _ := codes.Find(code)
			switch text := c.Cause(code); {
			case text == "":
				t.Errorf("%s: %s has no sentence: %s", lang, code, e.Cause)
			case text == e.Cause, !strings.HasSuffix(text, "."):
				t.Errorf("%s: %s is no sentence of the language: %q", lang, code, text)
			}
		}
		for _, code := range slices.Sorted(maps.Keys(c.Causes)) {
			if !slices.Contains(names, code) {
				t.Errorf("%s: there is no code %s", lang, code)
			}
		}
	}
}
