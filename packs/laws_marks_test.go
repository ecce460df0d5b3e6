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

// Chalk and pencil come off: what is washed, or lies in oil, before it goes back by them.
func TestChalkIsReadBeforeItIsWashedOff(t *testing.T) {
	t.Parallel()
	const head = lawHead + "parts:\n  half: {name: Coupling half}\n  spacer: {name: Spacer}\ncontainers:\n  C1: {name: Half, kind: box, keep: dry}\n  C2: {name: Half in oil, kind: box, keep: oiled}\nsteps:\n  - section: Open\n    steps:\n"
	step := func(mark, key, in, between, back string) string {
		return "      - {step: off, do: \"" + mark + " draw the half off.\"" + key + ", remove: [half], into: " + in + ", back: \"" + back + "\"}\n" + between + "  - reverse: [Open]\n"
	}
	wash := func(words string) string { return "      - {step: wash, do: \"" + words + "\", where: bench}\n" }
	const key, back = ", match-marks: [half]", "Push the half on, marks in line."
	toldJust(t, "mark-lost", head+"PUT", []warned{
		{step("Chalk the half,", key, "C1", wash("Wash the half."), back), true},
		{step("Chalk the half,", "", "C1", wash("Degrease the half."), back), true},
		{step("Mark the half in pencil,", key, "C1", wash("Clean the half with solvent."), back), true},
		{step("Mark the half with a wax crayon,", key, "C1", wash("Steam-clean the half."), "Push the half on."), true},
		{step("Chalk the half,", key, "C2", "", back), true},
		{step("Chalk the half,", "", "C1", wash("Boil the half in oil."), back), true},
		{step("Punch the half,", key, "C1", wash("Wash the half."), back), false},
		{step("Chalk the half and punch it,", key, "C1", wash("Wash the half."), back), false},
		{step("Match mark the half,", key, "C2", wash("Wash the half."), back), false},
		{step("Chalk the half,", key, "C1", "", back), false},
		{step("Chalk the half,", key, "C1", wash("Wipe the half with a dry cloth."), back), false},
		{step("Chalk the half,", key, "C1", wash("Wash the spacer."), back), false},
		{step("Chalk the half,", key, "C1", wash("Wash your hands."), back), false},
		{step("Chalk the half,", key, "C1", wash("Wash hands before the half is touched."), back), false},
		{step("Chalk the half,", key, "C1", wash("Clean the half but not its mark with solvent."), back), false},
		{step("Chalk the half, centre-pop it,", key, "C1", wash("Wash the half."), back), false},
		{step("Chalk the floor under the half,", "", "C1", wash("Wash the half."), back), false},
		{step("Chalk the half,", key, "C1", wash("Shut the steam to the half casing."), back), false},
		{step("Chalk the half,", "", "C1", wash("Wash the half."), "Push the half on."), false},
		{step("Paint a line on the half,", key, "C2", "", back), false},
		{step("Write the lock numbers in pencil,", "", "C2", wash("Wash the half."), "Push the half on."), false},
	})
	line := map[string]string{"chalk": "do: Chalk the half., match-marks: [half]", "off half": "do: Draw the half off., remove: [half], into: C1", "wash": "do: Wash the half.",
		"back half": "do: \"Push the half on, marks in line.\", fit: [half]"}
	toldWhere(t, "mark-lost", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "chalk", "off half", "wash", "back half")
		at := func(act string) int { return slices.Index(order, act) }
		return head + stepLines(order, line), at("chalk") < at("wash") && at("wash") < at("back half")
	})
}

// A part that stands only behind a match mark, on the other side of its joint, is named.
func TestTheOtherSideOfAMarkIsNamed(t *testing.T) {
	t.Parallel()
	toldJust(t, "never-used", lawHead+"parts:\n  cap: {name: Cap}\n  casing: {name: Casing}\ncontainers:\n  C1: {name: Cap, kind: box, keep: dry}\nsteps:\n  - section: Open\n    steps:\nPUT", []warned{
		{"      - {step: off, do: Punch the cap and lift it off., match-marks: [{cap: casing}], remove: [cap], into: C1}\n  - reverse: [Open]\n", false},
		{"      - {step: off, do: Punch the cap and lift it off., match-marks: [cap], remove: [cap], into: C1}\n  - reverse: [Open]\n", true},
	})
}
