package packs_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

const nutHead = lawHead + `parts:
  casing: {name: Casing}
  wheel: {name: Impeller, mass: 8 kg, behind: [nut]}
  nut: {name: Impeller nut, thread: M24x2%s}
  cover: {name: Suction cover, mass: 12 kg}
containers: {C1: {name: Cover and nut, kind: crate, keep: dry}}
dimensions:
  D1: {what: Lift, kind: gap, from: {wheel: back face}, to: {casing: face}, nominal: 1.00 mm, left: 0.80 to 1.20 mm, adjust: nut, source: sheet 2%s}
`

// A reading was set by a nut that nobody could get at: the cover in front of it was back. It is
// told wherever the cover goes back in a step above the one that sets, if the nut is behind
// the cover by its own words or by those of the step that takes it off; one that was read as
// found through the cover is read so again. Common practice, no source.
func TestTheNutThatSetsIsWithinReach(t *testing.T) {
	t.Parallel()
	draw := func(t *rapid.T) (string, bool) {
		behind, after := rapid.Bool().Draw(t, "behind"), rapid.Bool().Draw(t, "after")
		found := rapid.SampledFrom([]string{"not taken", "cover off", "cover on"}).Draw(t, "found")
		back := rapid.Permutation([]string{"cover", "set"}).Draw(t, "order")
		one := rapid.Bool().Draw(t, "one step")
		says := map[bool]string{true: ", behind: [cover]"}[behind]
		taken := map[string]string{"not taken": ", found: not taken"}[found]
		text := fmt.Sprintf(nutHead, says, taken) + "steps:\n  - section: Open\n    steps:\n"
		step := func(no int, verbs string) {
			text += fmt.Sprintf("      - {step: s%d, do: Do it., %s}\n", no, verbs)
		}
		measure := func(when string) string {
			return map[bool]string{true: "measure: [D1], "}[when == found]
		}
		step(1, measure("cover on")+"remove: [cover], into: C1, after: {}")
		reach := "after: {}"
		if after {
			reach = "after: {s1: the nut is behind it}"
		}
		step(2, measure("cover off")+"remove: [nut, wheel], into: C1, "+reach)
		text += "  - section: Close\n    steps:\n"
		step(3, "fit: [wheel, nut]")
		switch {
		case one && back[0] == "cover":
			step(4, "fit: [cover], set: [D1]")
		case one:
			step(4, "set: [D1], fit: [cover]")
		default:
			for i, what := range back {
				step(4+i, map[string]string{"cover": "fit: [cover]", "set": "set: [D1]"}[what])
			}
		}
		late := !one && back[0] == "cover"
		if found == "cover on" {
			return text, false
		}
		// Said by after: alone, and read as found behind it, it is told by the same law as
		// before; read by no step, it was told by none.
		return text, late && (behind || after)
	}
	toldElse(t, []string{"nut-shut-in", "back-order"}, draw, func(t *rapid.T, text string) {
		if slices.Contains(toldOf(text, "in-the-way"), "in-the-way") {
			t.Fatalf("the nut is in the way\n%s", text)
		}
	})
}
