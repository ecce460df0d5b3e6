package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// A cap is marked across its joint while its bolts are tight: marked when they are loose, or by a
// step below the one that loosens them, it stands otherwise already. Common practice, no source.
func TestMarksAreMadeWhileAllIsTight(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		verbs := rapid.Permutation([]string{"match-marks: [cap]", "loosen: [J1]", "remove: [bolt, cap]"}).Draw(t, "verbs")
		apart := rapid.IntRange(0, 2).Draw(t, "steps") // how many of them stand in a step of their own
		text := lawHead + `parts: {cap: {name: Cap, behind: [bolt]}, bolt: {name: Cap bolt, count: 4}}
containers: {C1: {name: All, kind: box, keep: dry}}
joints: {J1: {what: Cap bolts, parts: [bolt], torque: 45 N·m, source: sheet 1}}
steps:
`
		write := func(list []string) {
			for i, v := range list {
				if strings.HasPrefix(v, "remove") {
					list[i] += ", into: C1"
				}
			}
			text += "  - {step: s" + string(rune('a'+len(text)%26)) + ", do: Do it., " + strings.Join(list, ", ") + "}\n"
		}
		mark, loose := slices.Index(verbs, "match-marks: [cap]"), slices.Index(verbs, "loosen: [J1]")
		off := slices.Index(verbs, "remove: [bolt, cap]")
		for _, v := range verbs[:apart] {
			write([]string{v})
		}
		write(slices.Clone(verbs[apart:]))
		want := mark > loose || mark > off
		if got := toldOf(text, "marked-late"); (len(got) > 0) != want {
			t.Fatalf("told %v, want %v\n%s", got, want, text)
		}
	})
}

// What is renewed with its set when that is out comes off at some step.
func TestWhatASetRenewsComesOff(t *testing.T) {
	t.Parallel()
	for _, x := range []struct {
		off  string
		told bool
	}{{"remove: [wheel], into: C1", true}, {"remove: [ring, wheel], into: C1", false}} {
		text := lawHead + `parts: {wheel: {name: Wheel, set: S1, renew: as set}, ring: {name: Ring, set: S1, renew: as set}}
containers: {C1: {name: All, kind: box, keep: dry}}
sets: {S1: {what: Wheel and ring, judged-by: [D1]}}
dimensions: {D1: {what: Clearance, kind: clearance, from: {wheel: neck}, to: {ring: bore}, nominal: 0.50 mm, found: at most 0.70 mm, source: sheet 2}}
steps:
  - {step: off, do: Off., measure: [D1], ` + x.off + `, judge: [S1]}
`
		if got := toldOf(text, "never-renewed"); (len(got) > 0) != x.told {
			t.Errorf("%s: told %v", x.off, got)
		}
	}
}
