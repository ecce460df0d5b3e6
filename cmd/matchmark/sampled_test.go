package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// keyExample is the example in a row of KEYS.md: it stands last.
var keyExample = regexp.MustCompile("(?m)^\\| \\**`[^`]+`\\** \\|.*\\| `([^`]+)` \\|$")

// inventedWords are words of examples that name a thing or a person of one machine.
var inventedWords = regexp.MustCompile(`FN-11|WO-5512|Bearing change|2026-03-02|spanner|wet cloth|tell the engineer|drive end|person in charge|the motor|workshop crane|trial of|the cover goes`)

// notInvented are examples that are the fixed words of a key, or say where to look.
var notInvented = []string{"plain carbon steel hub", "sheet of the tensioner"}

// TestSamplesSayForExample: what help gives to be copied is made of the author's own
// words, or says that it is an example: a title that nobody had written was found on
// paper. No example of the table of keys stands in a help without that word.
func TestSamplesSayForExample(t *testing.T) {
	t.Parallel()
	keys, err := os.ReadFile(filepath.Join("..", "..", "packs", "def", "KEYS.md"))
	if err != nil {
		t.Fatal(err)
	}
	var examples []string
	for _, m := range keyExample.FindAllStringSubmatch(string(keys), -1) {
		if len(m[1]) > 12 && !slices.Contains(notInvented, m[1]) {
			examples = append(examples, m[1])
		}
	}
	files, err := filepath.Glob(filepath.Join(testdata, "bad", "*.yaml"))
	if err != nil || len(files) < 150 || len(examples) < 150 {
		t.Fatalf("%d definitions, %d examples, %v", len(files), len(examples), err)
	}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range fileOnce(f).problems {
			for _, h := range p.Help {
				if strings.Contains(h, "for example") || slices.Contains(forms, p.Code) {
					continue // or a form made of the author's own figures
				}
				for _, x := range append(examples, inventedWords.FindAllString(h, -1)...) {
					if strings.Contains(h, x) && !strings.Contains(string(data), x) && !strings.Contains(p.Message, x) {
						t.Errorf("%s [%s] %s: %q is nobody's but the table's", filepath.Base(f), p.Code, h, x)
					}
				}
			}
		}
	}
}
