package packs_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// anyOrder puts acts in any order in which each "back" stands below the "off" of its own.
func anyOrder(t *rapid.T, acts ...string) []string {
	var order []string
	for len(acts) > 0 {
		i := rapid.IntRange(0, len(acts)-1).Draw(t, "act")
		if verb, what, _ := strings.Cut(acts[i], " "); verb == "back" && slices.Contains(acts, "off "+what) {
			continue
		}
		order = append(order, acts[i])
		acts = slices.Delete(acts, i, i+1)
	}
	return order
}

// stepLines are the steps of an order, each by its line.
func stepLines(order []string, line map[string]string) string {
	var b strings.Builder
	for i, act := range order {
		fmt.Fprintf(&b, "      - {step: s%d, %s}\n", i, line[act])
	}
	return b.String()
}

// In any order of taking nuts and dowels off and putting jacking screws in, it is told just
// where one of them is still on when the screws go in.
func TestJackedOnlyWhenNothingHolds(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"off nuts":   "do: Take the nuts off., remove: [nut], into: C2",
		"off dowels": "do: Draw the dowels., remove: [dowel], into: C2",
		"off plug":   "do: Take the plug out., remove: [plug], into: C2",
		"jack":       "do: Push the casing up., fit-for-now: [jack]",
	}
	toldWhere(t, "jacked-early", func(t *rapid.T) (string, bool) {
		screw := rapid.SampledFrom([]string{"Jacking screw M12", "Forcing bolt", "Guide stud"}).Draw(t, "screw")
		order := anyOrder(t, "off nuts", "off dowels", "off plug", "jack")
		at := slices.Index(order, "jack")
		early := screw != "Guide stud" && (slices.Index(order, "off nuts") > at || slices.Index(order, "off dowels") > at)
		return lawHead + "parts:\n  casing: {name: Casing, mass: 20 kg, behind: [nut, dowel]}\n  nut: {name: Joint nut, count: 4}\n  dowel: {name: Dowel, count: 2}\n  plug: {name: Plug}\n" +
			"  jack: {name: " + screw + ", count: 2, aid: yes}\ncontainers:\n  C1: {name: Casing, kind: crate, keep: dry}\n  C2: {name: Nuts and dowels, kind: box, keep: dry}\n" +
			"steps:\n  - section: Open\n    steps:\n" + stepLines(order, line) +
			"      - {step: away, do: Take the casing off., take-out-again: [jack], remove: [casing], into: C1}\n  - reverse: [Open]\n", early
	})
}

// In any order of taking a spacer out and back and of a step that says it is still out, it is
// told just where the spacer is in.
func TestSaidOutOnlyWhereItIsIn(t *testing.T) {
	t.Parallel()
	toldWhere(t, "said-out", func(t *rapid.T) (string, bool) {
		words := rapid.SampledFrom([]string{"Spacer still out", "The spacer is still off", "Spacer out"}).Draw(t, "words")
		order := anyOrder(t, "off spacer", "back spacer", "say")
		at := slices.Index(order, "say")
		in := words != "Spacer out" && (at < slices.Index(order, "off spacer") || at > slices.Index(order, "back spacer"))
		return lawHead + "parts:\n  spacer: {name: Coupling spacer, mass: 9 kg}\ncontainers:\n  C1: {name: Spacer, kind: crate, keep: dry}\nsteps:\n  - section: Coupling\n    steps:\n" +
			stepLines(order, map[string]string{
				"off spacer":  "do: Lift the spacer out., remove: [spacer], into: C1",
				"back spacer": "do: Fit the spacer., fit: [spacer]",
				"say":         "do: \"" + words + ", turn the motor by hand.\"",
			}), in
	})
}

// In any order of locking, unlocking, starting and reading, it is told just where the machine
// is said to run with every lock on.
func TestNothingRunsLocked(t *testing.T) {
	t.Parallel()
	toldWhere(t, "runs-locked", func(t *rapid.T) (string, bool) {
		with := rapid.SampledFrom([]string{"while running", "while it runs", "after an hour of running"}).Draw(t, "read")
		words := rapid.SampledFrom([]string{"Everybody clear. Start the pump.", "Run the pump an hour.", "Start the nuts by hand.", "Run the nut up by hand."}).Draw(t, "start")
		order := anyOrder(t, "off motor", "back motor", "off heater", "back heater", "start", "read")
		told := false
		for _, act := range []string{"start", "read"} {
			at, locked := slices.Index(order, act), 0
			for _, x := range []string{"motor", "heater"} {
				if slices.Index(order, "off "+x) < at && at < slices.Index(order, "back "+x) {
					locked++
				}
			}
			told = told || locked == 2 && (act == "start" && strings.Contains(words, "pump") || act == "read" && strings.HasPrefix(with, "while"))
		}
		isolation := ": {point: Breaker, energy: electric, state: off, proved: tried}\n"
		return lawHead + "parts:\n  housing: {name: Housing}\nisolations:\n  motor" + isolation + "  heater" + isolation +
			"instruments:\n  meter: {name: Meter, range: 0 to 20 mm/s, reads: 0.1 mm/s}\ndimensions:\n  D1: {what: Vibration, kind: condition, of: {housing: top}, with: " + with +
			", by: meter, found: not taken, left: at most 4.5 mm/s, over: stop it, source: sheet}\nsteps:\n  - section: Run\n    steps:\n" +
			stepLines(order, map[string]string{
				"off motor": "do: Lock it., lock: [motor]", "back motor": "do: Lock off., unlock: [motor]",
				"off heater": "do: Lock it., lock: [heater]", "back heater": "do: Lock off., unlock: [heater]",
				"start": "do: " + words, "read": "do: Read the vibration., set: [D1]",
			}), told
	})
}

// A reading that a step is said to destroy is in time in that step just above what ends it: where
// a machine that is read while it runs is locked, where what its faces hang on or a fastener of
// that comes off, and where it is loosened, unless the reading wants it slack. Beside a lock, an
// aid that comes out or another cover it is in time anywhere in that step.
func TestLostByAStepEndsWithinIt(t *testing.T) {
	t.Parallel()
	const gap, slack, runs, stands = "kind: gap, from: {cover: rim}, to: {housing: joint}", "kind: gap, from: {cover: rim}, to: {housing: joint}, with: bolts slack",
		"kind: condition, of: {housing: top}, with: after an hour of running", "kind: depth, from: {housing: rim}, to: {housing: oil}"
	endedBy := map[string][]string{
		"remove: [bolt, cover], into: C1": {gap, slack}, "remove: [bolt], into: C1": {gap, slack}, "remove: [plug], into: C1": nil, "lock: [motor]": {runs},
		"loosen: [bolt]": {gap}, "loosen: [plug]": nil, "take-out-again: [clamp]": nil, "seen: [all dry]": nil,
	}
	acts := slices.Sorted(maps.Keys(endedBy))
	toldWhere(t, "too-late", func(t *rapid.T) (string, bool) {
		act, reading := rapid.SampledFrom(acts).Draw(t, "act"), rapid.SampledFrom([]string{gap, slack, runs, stands}).Draw(t, "reading")
		above, same := rapid.Bool().Draw(t, "read above it"), rapid.Bool().Draw(t, "in its step")
		read := "measure: [D1]"
		steps := "      - {step: before, do: Look.}\n      - {step: ends, do: Do it., " + act + ", " + read + "}\n"
		late := slices.Contains(endedBy[act], reading)
		switch {
		case same && above:
			steps, late = "      - {step: before, do: Look.}\n      - {step: ends, do: Do it., "+read+", "+act+"}\n", false
		case above:
			steps, late = "      - {step: before, do: Read it., "+read+"}\n      - {step: ends, do: Do it., "+act+"}\n", false
		case !same:
			steps, late = "      - {step: ends, do: Do it., "+act+"}\n      - {step: after, do: Read it., "+read+"}\n", true
		}
		return lawHead + "parts:\n  housing: {name: Housing}\n  cover: {name: Cover, behind: [bolt]}\n  bolt: {name: Cover bolt}\n  plug: {name: Plug}\n  clamp: {name: Shaft clamp, aid: yes}\n" +
			"isolations:\n  motor: {point: Breaker, energy: electric, state: off, proved: tried}\ncontainers:\n  C1: {name: Cover, kind: bag, keep: dry}\n" +
			"dimensions:\n  D1: {what: Reading, " + reading + ", nominal: 5.00 mm, found: record to 0.01 mm, lost-by: [ends]}\n" +
			"steps:\n  - section: Off\n    steps:\n      - {step: first, do: Clamp it., fit-for-now: [clamp]}\n" + steps, late
	})
}

// In any order of taking a guard off and back and of reading a gap behind it, it is told just
// where the guard is on; a temperature is read with it on.
func TestNoGaugeBehindAGuard(t *testing.T) {
	t.Parallel()
	toldWhere(t, "behind-guard", func(t *rapid.T) (string, bool) {
		kind := rapid.SampledFrom([]string{"gap", "stand-off", "temperature"}).Draw(t, "kind")
		guard := rapid.Bool().Draw(t, "a guard")
		order := anyOrder(t, "off guard", "back guard", "read")
		at := slices.Index(order, "read")
		on := at < slices.Index(order, "off guard") || at > slices.Index(order, "back guard")
		unit, lies := "mm", "from: {bolt: head}, to: {hub: face}"
		if kind == "temperature" {
			unit, lies = "°C", "of: {hub: rim}"
		}
		return lawHead + "parts:\n  hub: {name: Hub, mass: 8 kg, behind: [bolt]}\n  bolt: {name: Bolt, behind: [guard]}\n  guard: {name: Cowl, mass: 6 kg" +
				map[bool]string{true: ", guard: yes", false: ""}[guard] + "}\ncontainers:\n  C1: {name: Cowl, kind: crate, keep: dry}\ndimensions:\n  D1: {what: Reading, kind: " + kind + ", " + lies +
				", nominal: 50 " + unit + ", found: record to 1 " + unit + "}\nsteps:\n  - section: Read\n    steps:\n" +
				stepLines(order, map[string]string{
					"off guard": "do: Take the cowl off., remove: [guard], into: C1", "back guard": "do: Fit the cowl., fit: [guard]", "read": "do: Read it., measure: [D1]",
				}),
			guard && on && kind != "temperature"
	})
}
