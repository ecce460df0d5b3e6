package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// The bracket of a dial stands on the other hub: whichever hub or machine goes first ends what
// the dials read as found, in any order. Their own hub alone was told. Common practice, no source.
func TestDialsAreLostWithEitherHub(t *testing.T) {
	t.Parallel()
	const head = lawHead + `parts:
  motor: {name: Motor, mass: 9 kg}
  motor-hub: {name: Motor hub}
  pump: {name: Pump}
  pump-hub: {name: Pump hub}
  drain: {name: Drain plug}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
dimensions:
  D1: {what: Rim, kind: runout, of: {motor-hub: rim}, at: clock of 4, viewed-from: the motor, sign: yes, nominal: 0.10 mm, left: -0.10 to 0.10 mm, source: sheet 3}
  D2: {what: Face, kind: runout, of: {motor-hub: face}, at: clock of 4, viewed-from: the motor, sign: yes, nominal: 0.10 mm, left: -0.10 to 0.10 mm, source: sheet 3}
  D3: {what: Rim, kind: runout, of: {pump-hub: rim}, at: clock of 4, viewed-from: the motor, sign: yes, nominal: 0.10 mm, left: -0.10 to 0.10 mm, source: sheet 3}
  D4: {what: Bore of the pump, kind: runout, of: {pump: bore}, nominal: 0.10 mm, left: at most 0.10 mm, source: sheet 3}
alignments:
  A1: {what: Motor to pump, movable: motor, stationary: pump, method: METHOD, reads: 0.01 mm, feet: [{name: front, at: 310 mm}, {name: rear, at: 720 mm}]}
steps:
  - section: All
    steps:
      - {step: read, do: Read., measure: [D1, D2, D3, D4]}
`
	methods := map[string]struct {
		says  string
		dials []string
	}{
		"rim and face":  {"rim and face, dials-on: movable, face-diameter: 180 mm, sag: 0.03 mm, read: {rim: D1, face: D2}", []string{"D1", "D2"}},
		"reverse dials": {"reverse dials, span: 240 mm, sag: 0.03 mm, sag-other: 0.03 mm, read: {movable: D1, stationary: D3}", []string{"D1", "D3"}},
	}
	rapid.Check(t, func(t *rapid.T) {
		m := methods[rapid.SampledFrom([]string{"rim and face", "reverse dials"}).Draw(t, "method")]
		order := anyOrder(t, "motor", "motor-hub", "pump-hub", "pump", "drain")
		text := strings.Replace(head, "METHOD", m.says, 1)
		for _, p := range order {
			text += "      - {step: off-" + p + ", do: Off., remove: [" + p + "], into: C1}\n"
		}
		first := order[0]
		if first == "drain" {
			first = order[1]
		}
		// Of rim and face no dial names the other hub, so that taking it off ends nothing by itself.
		if m.dials[1] == "D2" {
			first = slices.DeleteFunc(slices.Clone(order), func(p string) bool { return p == "drain" || p == "pump-hub" })[0]
		}
		jb, _ := codesOf(text)
		for _, d := range jb.Dims {
			if !slices.Contains(m.dials, d.Mark) {
				continue
			}
			if d.LastChance == nil || d.LastChance.Key != "off-"+first {
				t.Fatalf("the last chance of %s is %v, want off-%s\n%s", d.Mark, d.LastChance, first, text)
			}
		}
	})
}
