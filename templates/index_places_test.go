package templates_test

import (
	"os"
	"strings"
	"testing"

	"matchmark/packs"
)

// Both ends of the bore of the casing ring, read at one step, had a line each with the same step and
// page; the gland studs, read at two steps, still have.
func TestPlacesReadTogetherShareALineOfTheIndex(t *testing.T) {
	t.Parallel()
	jb, problems := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: "storm-pump.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	index := strings.Join(strings.Fields(paperOf(jb).sheets["dimensions"]), " ")
	for _, want := range []string{"D27 DE, NDE", "D28 DE, NDE", "D6/DE", "D6/NDE"} {
		if !strings.Contains(index, want) {
			t.Errorf("the list of dimensions does not say %q: %s", want, index)
		}
	}
	for _, not := range []string{"D27/DE", "D27/NDE", "D6 DE"} {
		if strings.Contains(index, not) {
			t.Errorf("the list of dimensions says %q", not)
		}
	}
}
