package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// codesTold lists the codes of all that check says of a definition, warnings too, one a problem.
func codesTold(text string) []string {
	_, problems := loadLaw(text)
	var out []string
	for _, p := range problems {
		out = append(out, p.Code)
	}
	return out
}

// TestBoresAreReadEmpty: a ring comes off a shaft and goes on again, and its bore and the
// seat below it are read at any place in between, or before, or after, as found or as left.
func TestBoresAreReadEmpty(t *testing.T) {
	t.Parallel()
	seen := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		between := rapid.SampledFrom([]string{
			"kind: clearance, formula: D1 - D2, found: at most 0.30 mm",
			"kind: clearance, from: {ring: bore}, to: {shaft: seat}, found: record to 0.01 mm",
			"formula: D1 - D2, found: at most 0.30 mm", // a formula needs no kind
			"formula: mean of D1 - mean of D2 + 0.02 mm, found: at most 0.30 mm",
			"formula: D2 - D1, found: at most 0.30 mm", // an interference
			"formula: half of (D1 - D2), found: at most 0.30 mm",
			"formula: D1 + D2, found: at most 200.00 mm", // belongs to nothing
		}).Draw(t, "between them")
		acts := rapid.Permutation([]string{"measure: [D1]", "measure: [D2]", "off"}).Draw(t, "strip-down")
		back := rapid.Permutation([]string{"set: [D1]", "set: [D2]", "on"}).Draw(t, "put-back")
		if rapid.Bool().Draw(t, "read empty") { // few orders do so by chance
			acts, back = []string{"off", "measure: [D2]", "measure: [D1]"}, []string{"set: [D1]", "set: [D2]", "on"}
		}
		filled, on := false, true
		var steps strings.Builder
		for i, a := range append(slices.Clone(acts), back...) {
			switch a {
			case "off":
				on, a = false, "remove: [ring], into: C1"
			case "on":
				on, a = true, "fit: [ring]"
			default:
				filled = filled || on
			}
			fmt.Fprintf(&steps, "      - {step: s-%d, do: Do it., %s}\n", i, a)
		}
		filled = filled && !strings.Contains(between, "D1 + D2")
		text := lawHead + "parts: {shaft: {name: Shaft}, ring: {name: Ring}}\ncontainers: {C1: {name: Ring, kind: box}}\ndimensions:\n" +
			"  D1: {what: Bore, kind: bore, of: {ring: bore}, nominal: 60.10 mm, left: 60.00 to 60.20 mm, source: s}\n" +
			"  D2: {what: Seat, kind: diameter, of: {shaft: seat}, nominal: 59.90 mm, left: 59.80 to 60.00 mm, source: s}\n" +
			"  D3: {what: Clearance, " + between + ", source: s}\nsteps:\n  - section: Work\n    steps:\n" + steps.String()
		if got := slices.Contains(codesTold(text), "filled"); got != filled {
			t.Fatalf("filled is told: %v, by hand %v\n%s", got, filled, text)
		}
		seen[filled]++
	})
	if seen[true] < 10 || seen[false] < 10 {
		t.Errorf("read empty and filled so often: %v", seen)
	}
}

// TestAdjustersThatAreTurnedAgain: readings that one nut sets, each written down as left at a
// step of its own or at one with others: all but those of the last step are told, or a reading
// that only lies at the nut.
func TestAdjustersThatAreTurnedAgain(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 4).Draw(t, "readings")
		var dims, found, steps strings.Builder
		adjusts, at := make([]bool, n), make([]int, n)
		for i := range n {
			adjusts[i] = rapid.Bool().Draw(t, "adjusts")
			at[i] = rapid.IntRange(0, 2).Draw(t, "step")
			adjust := ""
			if adjusts[i] {
				adjust = ", adjust: nut"
			}
			fmt.Fprintf(&dims, "  D%d: {what: Gap %d, kind: gap, from: {nut: face}, to: {base: face %d}, nominal: 5.0 mm, left: 4.0 to 6.0 mm, source: s%s}\n", i+1, i, i, adjust)
			fmt.Fprintf(&found, "%sD%d", map[bool]string{true: ", "}[i > 0], i+1)
		}
		want := 0
		for s := range 3 {
			var set []string
			later := false
			for k := range n {
				later = later || at[k] > s && adjusts[k]
			}
			for i := range n {
				if at[i] == s {
					set = append(set, fmt.Sprintf("D%d", i+1))
					if later {
						want++
					}
				}
			}
			if len(set) > 0 {
				fmt.Fprintf(&steps, "      - {step: s-%d, do: Set it., set: [%s]}\n", s, strings.Join(set, ", "))
			}
		}
		text := lawHead + "parts: {base: {name: Base}, nut: {name: Nut, thread: M60x2}}\ndimensions:\n" + dims.String() +
			"steps:\n  - section: Work\n    steps:\n      - {step: found, do: Measure it., measure: [" + found.String() + "]}\n" + steps.String()
		got := 0
		for _, c := range codesTold(text) {
			if c == "turned-again" {
				got++
			}
		}
		if got != want {
			t.Fatalf("turned-again is told %d times, by hand %d\n%s", got, want, text)
		}
	})
}

// TestLimitsBetweenFlats: limits nearer together than the pitch divided by the flats.
func TestLimitsBetweenFlats(t *testing.T) {
	t.Parallel()
	seen := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		pitch := rapid.SampledFrom([]int{100, 150, 200, 300}).Draw(t, "pitch in hundredths")
		flats := rapid.SampledFrom([]int{2, 4, 5, 10}).Draw(t, "flats")
		band := rapid.IntRange(1, 120).Draw(t, "band in hundredths")
		text := lawHead + fmt.Sprintf("parts: {base: {name: Base}, disc: {name: Disc}, nut: {name: Nut, thread: M60x%d.%02d, flats: %d}}\n", pitch/100, pitch%100, flats) +
			fmt.Sprintf("dimensions:\n  D1: {what: Gap, kind: gap, from: {nut: face}, to: {base: face}, nominal: 3.00 mm, left: 3.00 to %d.%02d mm, adjust: nut, source: s}\n", 3+band/100, band%100) +
			"steps:\n  - section: Work\n    steps:\n      - {step: a, do: Measure it., measure: [D1]}\n      - {step: b, do: Set it., set: [D1]}\n"
		codes := codesTold(text)
		got, want := slices.Contains(codes, "between-flats"), float64(band) < float64(pitch)/float64(flats)-1e-9
		if got != want {
			t.Fatalf("between-flats is told: %v, a flat moves %g and the band is %d: %v\n%s", got, float64(pitch)/float64(flats), band, codes, text)
		}
		seen[want]++
	})
	if seen[true] < 10 || seen[false] < 10 {
		t.Errorf("between two flats and wide enough so often: %v", seen)
	}
}
