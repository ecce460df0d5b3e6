package packs_test

import (
	"slices"
	"strings"
	"testing"

	"matchmark/packs/source"
)

// A limit as found beside one for closing is told unless it is the same limit, however that is
// written; what is offered hangs on whether a limit for old parts is there. By arithmetic alone.
func TestFoundBesideLeftIsToldOfAnotherLimit(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		found, reuse, help string // help is how the first line of it begins, empty if nothing is told
	}{
		{"0.25 to 0.35 mm", "", ""},
		{"0.25 mm to 0.35 mm", "", ""},
		{"0.30 mm +/- 0.05 mm", "", ""},
		{"0.25 to 0.36 mm", "", "reuse: 0.25 to 0.36 mm"},
		{"0.25 to 0.36 mm", "reuse: 0.20 to 0.50 mm, ", "take found: out"},
	} {
		text := lawHead + `parts: {shaft: {name: Shaft}, ring: {name: Ring}}
dimensions: {D1: {what: Clearance, kind: clearance, from: {ring: bore}, to: {shaft: neck}, nominal: 0.30 mm, found: FOUND, REUSEleft: 0.25 to 0.35 mm, source: sheet 2}}
steps:
  - {step: read, do: Read it., measure: [D1]}
  - {step: left, do: Read it again., set: [D1]}
`
		_, problems := loadLaw(strings.NewReplacer("FOUND", x.found, "REUSE", x.reuse).Replace(text))
		i := slices.IndexFunc(problems, func(p source.Problem) bool { return p.Code == "found-beside-left" })
		switch {
		case i >= 0 != (x.help != ""):
			t.Errorf("found: %s, %s told %t:\n%v", x.found, x.reuse, i >= 0, problems)
		case i >= 0 && !strings.HasPrefix(problems[i].Help[0], x.help):
			t.Errorf("found: %s, %s offers %q, want %q first", x.found, x.reuse, problems[i].Help, x.help)
		}
	}
}
