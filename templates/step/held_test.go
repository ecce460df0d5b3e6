package step

import (
	"strings"
	"testing"
)

// A joint without a value whose screws are held with one for now printed "to 15 N·m … no value:
// hard up", and beside the 15 N·m the source of what it has at last.
func TestHeldForNowWithoutAValueAtLast(t *testing.T) {
	t.Parallel()
	const text = `
pack: 1
equipment: {tag: PU-2, name: Rinse pump}
job: {number: WO-31, revision: A, issued: 2026-03-02, title: Seal change}
parts: {cover: {name: Cover}, screw: {name: Cover screw, count: 6, thread: M10}}
containers: {C1: {name: Cover and screws, kind: box}}
joints: {J1: {what: Cover screws, parts: [screw], no-value: hard up, for-now: 15 N·m, lubricant: oil, source: sheet 9}}
steps:
  - {step: off, do: Take the cover off., loosen: [J1], remove: [screw, cover], into: C1}
  - {step: try, do: Try the cover., fit-for-now: [cover, screw], tighten: [J1]}
  - {step: out, do: Take it off again., loosen: [J1], take-out-again: [screw, cover]}
  - {step: "on", do: Put the cover on., fit: [cover, screw], from: [C1], tighten: [J1]}
`
	c := composerOf(t, text)
	line := map[string]string{}
	for _, st := range c.Job.Steps() {
		for _, p := range Pieces(c, st) {
			line[st.Key] += " " + said(p.Block)
		}
	}
	for _, x := range []struct {
		step, text string
		is         bool
	}{
		{"try", "to 15 N·m", true},
		{"try", "at last J1, no value: hard up", true},
		{"try", "· no value: hard up", false},
		{"try", "sheet 9", false},
		{"on", "no value: hard up", true},
		{"on", "15 N·m", false},
		{"on", "sheet 9", true},
	} {
		if got := strings.Contains(line[x.step], x.text); got != x.is {
			t.Errorf("step %s: %q stands there: %v, want %v, in\n%s", x.step, x.text, got, x.is, line[x.step])
		}
	}
}
