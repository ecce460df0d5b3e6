package packs_test

import (
	"strings"
	"testing"
)

// TestWorkedIsNotGoneBeforeItsInputs: a difference that shims set was told to be gone once the
// shims come out, though one of its two readings is taken after that. The reading that lies
// between parts keeps its own last chance. Nor is it gone with the shims where both readings are
// taken before, nor with what ends it before the last of them: it is with what ends it after them.
func TestWorkedIsNotGoneBeforeItsInputs(t *testing.T) {
	t.Parallel()
	const shims, stop, rotor = "      - {step: shims-out, do: Take them out., remove: [shims], into: C1}\n",
		"      - {step: stop, do: Read it., measure: [D2, D3]}\n", "      - {step: rotor, do: Take it out., remove: [rotor], into: C1}\n"
	for _, c := range []struct{ how, steps, d3 string }{
		{"adjust: shims", shims + stop + rotor, ""},
		{"adjust: shims", stop + shims + rotor, ""},
		{"lost-by: [shims]", shims + stop + rotor, ""},
		{"lost-by: [shims]", stop + shims + rotor, "shims-out"},
		{"lost-by: [shims-out]", shims + stop + rotor, ""},
		{"lost-by: [shims-out]", stop + shims + rotor, "shims-out"},
	} {
		workedChance(t, c.how, c.steps, c.d3)
	}
}

// workedChance looks at the last chances of two readings between parts and of their difference.
func workedChance(t *testing.T, how, steps, d3 string) {
	t.Helper()
	text := lawHead + "parts: {frame: {name: Frame}, shims: {name: Shims}, rotor: {name: Rotor}}\ncontainers: {C1: {name: Shims and rotor, kind: box}}\n" +
		"dimensions:\n" +
		"  D1: {what: Place by the pads, kind: stand-off, from: {rotor: end}, to: {frame: face}, nominal: 42.00 mm, left: record to 0.01 mm}\n" +
		"  D2: {what: Place at the stop, kind: stand-off, from: {rotor: end}, to: {frame: face}, with: pads out, nominal: 38.00 mm, left: record to 0.01 mm}\n" +
		"  D3: {what: Place, formula: D1 - D2, left: 3.00 to 5.00 mm, " + how + ", source: s}\n" +
		"steps:\n  - section: Work\n    steps:\n" +
		"      - {step: pads, do: Read it., measure: [D1]}\n" +
		steps + "  - reverse\n"
	jb, _ := codesOf(text)
	got := map[string]string{}
	for _, d := range jb.Dims {
		if d.LastChance != nil {
			got[d.Mark] = d.LastChance.Key
		}
	}
	if got["D1"] != "rotor" || got["D2"] != "rotor" || got["D3"] != d3 {
		t.Errorf("last chances %v, want those of D1 and D2 at rotor and that of D3 at %q\n%s", got, d3, strings.TrimPrefix(text, lawHead))
	}
}
