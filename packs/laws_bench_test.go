package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// TestBenchReadingsAreOfWhatIsOff: what is read on the bench is told where it is in the
// machine then, as found and as left, by itself or with the assembly that it belongs to;
// read without where: bench it is not.
func TestBenchReadingsAreOfWhatIsOff(t *testing.T) {
	t.Parallel()
	toldWhere(t, "read-in-machine", func(t *rapid.T) (string, bool) {
		of := rapid.SampledFrom([]string{"block", "liner", "rotor", "sleeve"}).Draw(t, "read of")
		found := rapid.IntRange(0, 1).Draw(t, "found after so many steps")
		left := rapid.IntRange(0, 1).Draw(t, "left after so many steps")
		bench := rapid.SampledFrom([]string{"", "where: bench, "}).Draw(t, "where it is read")
		off := []string{"      - {step: off, do: Take it off., remove: [liner, rotor], into: C1}\n"}
		on := []string{"      - {step: on, do: Put it on., fit: [rotor, liner]}\n"}
		off = slices.Insert(off, found, "      - {step: found, "+bench+"do: Measure it., measure: [D1]}\n")
		on = slices.Insert(on, left, "      - {step: left, "+bench+"do: Measure it., set: [D1]}\n")
		text := lawHead + "parts:\n  block: {name: Block}\n  liner: {name: Liner}\n  rotor: {name: Rotor}\n  sleeve: {name: Sleeve, of: rotor}\n" +
			"instruments:\n  gauge: {name: Gauge, range: 0 to 100 mm, reads: 0.01 mm}\ncontainers:\n  C1: {name: Parts, kind: crate, keep: dry}\n" +
			"dimensions:\n  D1: {what: Size, kind: diameter, of: {" + of + ": track}, with: 20 °C, by: gauge, left: 60.00 to 60.20 mm, out: tell the engineer, source: sheet 1}\n" +
			"steps:\n  - section: Off\n    steps:\n" + off[0] + off[1] + "  - section: On\n    steps:\n" + on[0] + on[1]
		want := bench != "" && (of == "block" || found == 0 || left == 1)
		return text, want
	})
}

// TestWhatIsRenewedIsAmongTheSpares: a limit that tells to renew what it is taken of is told
// where spares are listed and that part is neither one of them nor always renewed.
func TestWhatIsRenewedIsAmongTheSpares(t *testing.T) {
	t.Parallel()
	const other = "spares:\n  ring: {part: ring}\n"
	toldWhere(t, "no-spare", func(t *rapid.T) (string, bool) {
		cure := rapid.SampledFrom([]string{"renew the sleeve", "renew both sleeves", "tell the engineer", "renew the ring", "measure again, then renew the worn sleeve",
			"renew the ring of the sleeve", "renew the ring on its sleeve", "renew the ring with the sleeve in place", "do not renew the sleeve", "not renew the sleeve, renew the ring"}).Draw(t, "under")
		listed := rapid.SampledFrom([]string{"", other, "spares:\n  sleeve: {part: sleeve}\n"}).Draw(t, "spares")
		always := rapid.Bool().Draw(t, "always renewed")
		renew, into := "", "C1"
		if always {
			renew, into = ", renew: always", "scrap"
		}
		text := lawHead + "parts:\n  shaft: {name: Shaft}\n  sleeve: {name: Shaft sleeve" + renew + "}\n  ring: {name: Ring}\n" +
			"instruments:\n  gauge: {name: Gauge, range: 0 to 100 mm, reads: 0.01 mm}\n" + listed + "containers:\n  C1: {name: Parts, kind: crate, keep: dry}\n" +
			"dimensions:\n  D1: {what: Size, kind: diameter, of: {sleeve: track}, with: 20 °C, by: gauge, found: at least 60.00 mm, under: \"" + cure + "\", source: sheet 1}\n" +
			"steps:\n  - section: Off\n    steps:\n      - {step: off, do: Measure it and take it off., measure: [D1], remove: [sleeve, ring], into: {sleeve: " + into + ", ring: C1}}\n" +
			"  - section: On\n    steps:\n      - {step: on, do: Put it on., fit: [sleeve, ring]}\n"
		named := slices.Contains([]string{"renew the sleeve", "renew both sleeves", "measure again, then renew the worn sleeve"}, cure)
		want := named && listed == other && !always
		return text, want
	})
}

// TestHeldReadingsBindWhatHoldsThem: a reading between parts and the steps that loosen and
// tighten what holds them keep their order, though the author lets all of them start at any
// time: changed over, the reading is told as loose.
func TestHeldReadingsBindWhatHoldsThem(t *testing.T) {
	t.Parallel()
	toldElse(t, []string{"read-loose", "too-early"}, func(t *rapid.T) (string, bool) {
		found := rapid.Bool().Draw(t, "found above loosening")
		left := rapid.Bool().Draw(t, "left below tightening")
		pair := func(first, then string, so bool) string {
			if so {
				return first + then
			}
			return then + first
		}
		step := func(key, does string) string {
			return fmt.Sprintf("      - {step: %s, after: {}, do: Do it., %s}\n", key, does)
		}
		text := lawHead + "parts:\n  case: {name: Case}\n  cover: {name: Cover, behind: [screw]}\n  screw: {name: Cover screw M8, count: 4}\n" +
			"instruments:\n  gauge: {name: Gauge, range: 0 to 100 mm, reads: 0.01 mm}\njoints:\n  J1: {what: Cover screws, parts: [screw], torque: 20 N·m, lubricant: oil, source: sheet 1}\n" +
			"dimensions:\n  D1: {what: Gap, kind: gap, from: {cover: face}, to: {case: face}, by: gauge, left: 1.00 to 1.20 mm, out: tell the engineer, source: sheet 1}\n" +
			"steps:\n  - section: Off\n    steps:\n" + pair(step("found", "measure: [D1]"), step("loose", "loosen: [J1]"), found) +
			"  - section: On\n    steps:\n" + pair(step("tight", "tighten: [J1]"), step("left", "set: [D1]"), left)
		return text, !found || !left
	}, func(t *rapid.T, text string) {
		steps := map[string]*job.Step{}
		for _, st := range loadedSteps(text) {
			steps[st.Key] = st
		}
		bound(t, text, steps["found"], steps["loose"])
		bound(t, text, steps["tight"], steps["left"])
	})
}

// loadedSteps are the steps of a definition that may have problems.
func loadedSteps(text string) []*job.Step {
	jb, _ := load(text)
	return stepsOf(jb)
}

// bound sees that a step keeps its place after another.
func bound(t *rapid.T, text string, first, then *job.Step) {
	t.Helper()
	if !slices.ContainsFunc(then.Binds, func(b job.Bind) bool { return b.Before == first }) {
		t.Fatalf("%s is not bound to %s:\n%s", then.Key, first.Key, text)
	}
}

// TestStatesBindWhatTheyTellOf: a reading that is taken with something off, or bolted down,
// and the steps that move that keep their order, though the author lets all of them start at
// any time. Without, a reading with the lid off was printed as free to be taken with it on.
func TestStatesBindWhatTheyTellOf(t *testing.T) {
	t.Parallel()
	toldElse(t, []string{"not-as-told"}, func(t *rapid.T) (string, bool) {
		lid := rapid.SampledFrom([]string{"off", "bolted down"}).Draw(t, "lid is to be")
		first := rapid.Bool().Draw(t, "read above taking it off")
		read := "      - {step: read, after: {}, do: Measure it., measure: [D1]}\n"
		off := "      - {step: off, after: {}, do: Take the lid off., remove: [lid], into: bench}\n"
		order := off + read
		if first {
			order = read + off
		}
		text := lawHead + "parts:\n  case: {name: Case}\n  lid: {name: Case lid}\ninstruments:\n  gauge: {name: Gauge, range: 0 to 100 mm, reads: 0.01 mm}\n" +
			"dimensions:\n  D1: {what: Bore, kind: bore, of: {case: bore}, with: \"lid " + lid + ", 20 °C\", by: gauge, found: at least 60.00 mm, under: tell the engineer, source: sheet 1}\n" +
			"steps:\n  - section: Off\n    steps:\n" + order + "  - section: On\n    steps:\n      - {step: on, do: Put the lid on., fit: [lid]}\n"
		return text, first == (lid == "off")
	}, func(t *rapid.T, text string) {
		steps := loadedSteps(text)
		bound(t, text, steps[0], steps[1])
	})
}

// TestFreeReadingsStandAboveTightening: a reading whose words want a joint loose is told
// where its step tightens that above it, whatever the words call it by.
func TestFreeReadingsStandAboveTightening(t *testing.T) {
	t.Parallel()
	toldWhere(t, "read-tight", func(t *rapid.T) (string, bool) {
		with := rapid.SampledFrom([]string{"joints loose", "screws half a turn slack", "cover free", "cover screws still loose", "screws tight", "shaft turned twice", "case free"}).Draw(t, "with")
		joint := rapid.SampledFrom([]string{"tighten: [J1]", "tighten: [J2]"}).Draw(t, "tightens")
		above := rapid.Bool().Draw(t, "reading above")
		acts := joint + ", set: [D1]"
		if above {
			acts = "set: [D1], " + joint
		}
		text := lawHead + "parts:\n  case: {name: Case}\n  cover: {name: Cover, behind: [screw]}\n  screw: {name: Cover screw M8, count: 4}\n  nut: {name: Stud nut M8}\n" +
			"instruments:\n  gauge: {name: Gauge, range: 0 to 100 mm, reads: 0.01 mm}\njoints:\n  J1: {what: Cover screws, parts: [screw], torque: 20 N·m, lubricant: oil, source: sheet 1}\n  J2: {what: Stud nut, parts: [nut], torque: 20 N·m, lubricant: oil, source: sheet 1}\n" +
			"dimensions:\n  D1: {what: Bore, kind: bore, of: {case: bore}, with: \"" + with + "\", by: gauge, left: 60.00 to 60.20 mm, out: tell the engineer, source: sheet 1}\n" +
			"steps:\n  - section: Off\n    steps:\n      - {step: loose, do: Loosen them., loosen: [J1, J2]}\n  - section: On\n    steps:\n      - {step: left, do: Measure and tighten., " + acts + "}\n"
		of := map[string]string{"joints loose": "J1 J2", "screws half a turn slack": "J1", "cover free": "J1", "cover screws still loose": "J1"}[with]
		want := !above && strings.Contains(of, joint[len(joint)-3:len(joint)-1])
		return text, want
	})
}
