package packs_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/source"
)

// A torque is told of exactly when no wrench holds it, the ends of the range included,
// in a step that is written and in one that is generated. Common practice, no source.
func TestWrenchesReachEveryTorque(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		torque := rapid.IntRange(1, 60).Draw(t, "torque")
		reached, tools := false, ""
		back, step := "  - reverse: [Strip]\n", "cover"
		if rapid.Bool().Draw(t, "written") {
			back, step = "  - section: Build\n    steps:\n      - {step: on, do: Fit the cover., fit: [cover, screw], tighten: [J1]}\n", "on"
		}
		for i := range rapid.IntRange(1, 3).Draw(t, "wrenches") {
			low := rapid.IntRange(1, 50).Draw(t, "low")
			high := low + rapid.IntRange(1, 20).Draw(t, "over")
			at := rapid.SampledFrom([]string{"", ", for: [" + step + "]", ", for: [look]"}).Draw(t, "for")
			tools += fmt.Sprintf("  w%d: {what: Torque wrench, size: %d to %d N·m%s}\n", i, low, high, at)
			reached = reached || low <= torque && torque <= high && at != ", for: [look]"
		}
		text := fmt.Sprintf(`pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, revision: A, issued: 2026-03-02, title: Cover}
parts:
  cover: {name: Cover, count: 1}
  screw: {name: Screw, count: 2}
joints:
  J1: {what: Screws, parts: [screw], torque: %d N·m, pattern: crosswise}
containers:
  C1: {name: Cover and screws, kind: box}
tools:
%ssteps:
  - section: Strip
    steps:
      - {step: look, do: Look.}
      - {step: cover, do: Take the cover off., loosen: [J1], remove: [screw, cover], into: C1}
`, torque, tools) + back
		_, problems := loadLaw(text)
		told := slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Code == "no-wrench" })
		if told == reached {
			t.Fatalf("told %t, reached %t:\n%s", told, reached, text)
		}
	})
}
