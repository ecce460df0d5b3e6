package packs_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/source"
)

// A pack of shims is told of exactly when it is measured after it is back, in a step that
// is written and in one that is generated, where what is written first is undone last.
// Common practice, no source.
func TestPacksAreMeasuredBeforeTheyGoBack(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		first := rapid.Bool().Draw(t, "measured first") // in putting back
		off := "remove: [cover, shims], into: C1, measure: [D1]"
		back := "  - reverse: [Strip]\n"
		switch {
		case rapid.Bool().Draw(t, "written") && first:
			back = "  - section: Build\n    steps:\n      - {step: on, do: Fit the cover., set: [D1], fit: [shims, cover]}\n"
		case !first && rapid.Bool().Draw(t, "a step later"):
			back = "  - section: Build\n    steps:\n      - {step: on, do: Fit the cover., fit: [shims, cover]}\n      - {step: after, do: Measure the leaves., set: [D1]}\n"
		case !first:
			off = "measure: [D1], remove: [cover, shims], into: C1"
		}
		text := `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, revision: A, issued: 2026-03-02, title: Cover}
parts:
  cover: {name: Cover, count: 1}
  shims: {name: Shims, shims: {leaves: 0.05 and 0.10 and 0.20 mm, most: 3}}
instruments:
  micrometer: {name: Micrometer, range: 0 to 25 mm, reads: 0.01 mm}
dimensions:
  D1: {what: Shims, kind: thickness, of: {shims: whole pack}, shims: shims, by: micrometer, nominal: 0.40 mm, left: as found +/- 0.05 mm, source: sheet 2}
containers:
  C1: {name: Cover and shims, kind: box}
steps:
  - section: Strip
    steps:
      - {step: off, do: Take the cover off., ` + off + "}\n" + back
		_, problems := loadLaw(text)
		told := slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Code == "pack-closed" })
		if told == first {
			t.Fatalf("told %t:\n%s\n%v", told, text, problems)
		}
	})
}
