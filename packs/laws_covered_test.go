package packs_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// givesCode reports whether check gives a code, as an error or a warning.
func givesCode(text, code string) bool {
	_, problems := loadLaw(text)
	for _, p := range problems {
		if p.Code == code {
			return true
		}
	}
	return false
}

// toldWhere holds a law against many definitions: each is told under a code just where it is to be,
// and there are some of either kind.
func toldWhere(t *testing.T, code string, draw func(*rapid.T) (text string, want bool)) {
	t.Helper()
	toldElse(t, []string{code}, draw, func(*rapid.T, string) {})
}

// toldElse is toldWhere for a law that is told under one of some codes; of a definition of
// which it is not told something else holds.
func toldElse(t *testing.T, codes []string, draw func(*rapid.T) (text string, want bool), holds func(t *rapid.T, text string)) {
	t.Helper()
	told, untold := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		text, want := draw(t)
		if got := slices.ContainsFunc(codes, func(code string) bool { return givesCode(text, code) }); got != want {
			t.Fatalf("told %v, want %v:\n%s", got, want, text)
		}
		if want {
			told++
			return
		}
		untold++
		holds(t, text)
	})
	both(t, told, untold)
}

// both sees that a property met cases in which the law was told and in which it was not.
func both(t *testing.T, told, untold int) {
	t.Helper()
	if told == 0 || untold == 0 {
		t.Errorf("%d cases told and %d not: the property has seen one direction alone", told, untold)
	}
}

// TestReadingsAreSetWhileWhatCoversThemIsOff: of a face behind some covers, one behind the
// other, the reading is told as covered just where a cover that was off when it was found
// is back when it is set.
func TestReadingsAreSetWhileWhatCoversThemIsOff(t *testing.T) {
	t.Parallel()
	toldWhere(t, "covered", func(t *rapid.T) (string, bool) {
		n := rapid.IntRange(1, 4).Draw(t, "covers")
		off := rapid.IntRange(0, n).Draw(t, "covers off when it is found")
		back := rapid.IntRange(0, n).Draw(t, "covers back when it is set")
		text := lawHead + "parts:\n  shaft: {name: Shaft}\n  ring: {name: Ring, behind: [c1]}\n"
		for i := 1; i <= n; i++ {
			behind := ""
			if i < n {
				behind = fmt.Sprintf(", behind: [c%d]", i+1)
			}
			text += fmt.Sprintf("  c%d: {name: Shell %c%s}\n", i, 'A'+i, behind)
		}
		text += "instruments:\n  dial: {name: Dial, range: 0 to 10 mm, reads: 0.01 mm}\ncontainers:\n  C1: {name: Shells, kind: crate, keep: dry}\n" +
			"dimensions:\n  D1: {what: Gap, kind: gap, from: {ring: face}, to: {shaft: face}, by: dial, left: 0.10 to 0.20 mm, out: tell the engineer, source: sheet 1}\n" +
			"steps:\n  - section: Off\n    steps:\n"
		step := func(key, does string) { text += fmt.Sprintf("      - {step: %s, do: Do it., %s}\n", key, does) }
		for i := n; i >= 0; i-- {
			if n-i == off {
				step("found", "measure: [D1]")
			}
			if i > 0 {
				step(fmt.Sprintf("off%d", i), fmt.Sprintf("remove: [c%d], into: C1", i))
			}
		}
		text += "  - section: On\n    steps:\n"
		for i := 0; i <= n; i++ {
			if i > 0 {
				step(fmt.Sprintf("on%d", i), fmt.Sprintf("fit: [c%d]", i))
			}
			if i == back {
				step("set", "set: [D1]")
			}
		}
		want := off+back > n
		return text, want
	})
}

// TestReadingsAreTakenInTheirState: a bore that is read with its cap bolted down is told
// where the cap is off, or is put on for it and not tightened; a cap that is on, or put on
// and tightened, is as told.
func TestReadingsAreTakenInTheirState(t *testing.T) {
	t.Parallel()
	toldWhere(t, "not-as-told", func(t *rapid.T) (string, bool) {
		how := rapid.SampledFrom([]string{"on", "off", "for now", "for now and tight"}).Draw(t, "the cap")
		words := rapid.SampledFrom([]string{"cap bolted down, 20 °C", "at 20 °C, the cap is tight", "20 °C"}).Draw(t, "with")
		cap, bore := "      - {step: cap, do: Take the cap off., remove: [bolt, cap], into: C1}\n", "      - {step: bore, do: Read it., %smeasure: [D1]%s}\n"
		var steps string
		switch how {
		case "on":
			steps = fmt.Sprintf(bore, "", "") + cap
		case "off":
			steps = cap + fmt.Sprintf(bore, "", "")
		case "for now":
			steps = cap + fmt.Sprintf(bore, "fit-for-now: [cap, bolt], ", ", take-out-again: [bolt, cap]")
		default:
			steps = cap + fmt.Sprintf(bore, "fit-for-now: [cap, bolt], tighten: [J1], ", ", take-out-again: [bolt, cap]")
		}
		text := lawHead + "parts:\n  housing: {name: Housing}\n  cap: {name: Bearing cap, behind: [bolt]}\n  bolt: {name: Cap bolt M16, count: 4}\n" +
			"instruments:\n  gauge: {name: Bore gauge, range: 100 to 200 mm, reads: 0.001 mm}\ncontainers:\n  C1: {name: Cap, kind: crate, keep: dry}\n" +
			"joints:\n  J1: {what: Cap bolts, parts: [bolt], torque: 190 N·m, lubricant: oil, source: sheet 7}\n" +
			"dimensions:\n  D1: {what: Bore, kind: bore, of: {housing: bore}, with: \"" + words + "\", by: gauge, nominal: 160.000 mm, found: record to 0.001 mm}\n" +
			"steps:\n  - section: Open\n    steps:\n" + steps
		want := strings.Contains(words, "cap") && (how == "off" || how == "for now")
		return text, want
	})
}

// TestLoadsAreBookedWhereTheyAreTakenUp: of a load that comes down in two steps, the opening
// below it is seen clean, and the load counted out of its spot, at the first of them or
// above, never at the second.
func TestLoadsAreBookedWhereTheyAreTakenUp(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("../testdata/bad/closed-unseen.yaml")
	if err != nil {
		t.Fatal(err)
	}
	head, _, _ := strings.Cut(string(data), "  - section: In\n")
	for _, closeAt := range []string{"before", "near", "in"} {
		for _, fitAt := range []string{"near", "in"} {
			text := head + "  - section: In\n    steps:\n"
			for _, step := range []string{"before", "near", "in"} {
				keys := []string{"step: " + step, "do: Do it."}
				if step == closeAt {
					keys = append(keys, "close: [casing]")
				}
				if step != "before" {
					keys = append(keys, "lift: [L1]")
				}
				if step == fitAt {
					keys = append(keys, "fit: [rotor]")
				}
				text += "      - {" + strings.Join(keys, ", ") + "}\n"
			}
			if got, want := givesCode(text, "closed-unseen"), closeAt == "in"; got != want {
				t.Errorf("closed at %s, fitted at %s: closed-unseen is %v, want %v", closeAt, fitAt, got, want)
			}
			if got, want := givesCode(text, "booked-late"), fitAt == "in"; got != want {
				t.Errorf("closed at %s, fitted at %s: booked-late is %v, want %v", closeAt, fitAt, got, want)
			}
			if givesCode(text, "other-part") {
				t.Errorf("closed at %s, fitted at %s: the step that lets the load down must move it as well", closeAt, fitAt)
			}
		}
	}
}

// TestPermitIsThatOfTheWork: hot work and entry are asked for on a permit that is one for
// them, by its key or its words, whatever other permits stand beside it.
func TestPermitIsThatOfTheWork(t *testing.T) {
	t.Parallel()
	toldWhere(t, "no-permit", func(t *rapid.T) (string, bool) {
		work := rapid.SampledFrom([]string{"hot-work", "confined-space"}).Draw(t, "work")
		own := map[string][]string{"hot-work": {"Hot work permit", "Permit for fire and flame"}, "confined-space": {"Entry permit", "Permit for confined spaces"}}
		var permits, keys []string
		want := true
		for i, what := range rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"Permit to work", "Lift permit", "Hot work permit", "Permit for fire and flame", "Entry permit", "Permit for confined spaces"}), 0, 3, rapid.ID[string]).Draw(t, "permits") {
			keys = append(keys, fmt.Sprintf("p%d", i))
			permits = append(permits, fmt.Sprintf("p%d: {what: %s}", i, what))
			want = want && !slices.Contains(own[work], what)
		}
		text := lawHead + "permits: {" + strings.Join(permits, ", ") + "}\nsteps:\n  - {step: a, do: Do it., caution: [" + work + "], permit: [" + strings.Join(keys, ", ") + "]}\n"
		if len(keys) == 0 {
			text = lawHead + "steps:\n  - {step: a, do: Do it., caution: [" + work + "]}\n"
		}
		return text, want
	})
}
