package packs_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/packs/source"
)

const lawHead = "pack: 1\nequipment: {tag: X-1, name: Machine}\njob: {number: \"1\", title: Law, revision: A, issued: 2026-03-02}\n"

// codesOf loads a definition and gives the codes of its errors, each once, in order.
func codesOf(text string) (*job.Job, []string) {
	jb, problems := packs.Load(fstest.MapFS{"law.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "law.yaml"})
	codes := map[string]bool{}
	for _, p := range problems {
		if p.Severity == source.Error {
			codes[p.Code] = true
		}
	}
	return jb, slices.Sorted(maps.Keys(codes))
}

// stepsOf lists the steps of a job in the order of work.
func stepsOf(jb *job.Job) []*job.Step {
	var out []*job.Step
	for _, s := range jb.Sections {
		out = append(out, s.Steps...)
	}
	return out
}

// hangingLift is the lift of a rotor, by a hook or by hand.
func hangingLift(hand bool) string {
	out := "lifts:\n  L1:\n    what: Rotor\n    parts: [rotor]\n    origin: middle\n    mass: 20 kg\n    mass-from: weighed\n    mass-source: scale\n    mass-within: 3 %\n" +
		"    centre: [0 mm, 0 mm, 0 mm]\n    centre-within: [1 mm, 0 mm, 0 mm]\n    size: {from: [-500 mm, -200 mm, -200 mm], to: [500 mm, 200 mm, 200 mm]}\n    lay-down: Y1\n    crew: [rigger]\n"
	if hand {
		return out + "    rig: by hand\n    grips:\n      A: {point: [-400 mm, 0 mm, 0 mm]}\n      B: {point: [400 mm, 0 mm, 0 mm]}\n"
	}
	return out + "    rig: bridle\n    rated-by: EN\n    legs:\n      M: {pick: [0 mm, 0 mm, 60 mm], takes: shaft, sling: round, hitch: choker, choke: 120°, length: 1000 mm}\n" +
		"    crane: hoist\n    pass-over: 300 mm\n    stack: 100 mm\ngear:\n  round: {what: Sling, kind: round sling, rated: 2 t, mass: 1 kg}\ncranes:\n  hoist: {what: Hoist, rated: 1 t, high-hook: 4 m}\n"
}

// TestLoadsHangBothWays: whatever the order of a strip-down in which one lift is made
// in stages, the load hangs at just the steps between its stages, and at their rows
// of the put-back, which comes down by the same stages; where a stage sets it down it
// stands until the next one.
func TestLoadsHangBothWays(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 7).Draw(t, "steps")
		lifts := make([]bool, n)
		var at []int
		for i := range n {
			if lifts[i] = rapid.Bool().Draw(t, "lift"); lifts[i] {
				at = append(at, i)
			}
		}
		out := rapid.Bool().Draw(t, "out at the last stage")
		bare := rapid.IntRange(-1, n-1).Draw(t, "step without words")
		setDown := make([]bool, n)
		text := lawHead + "parts:\n  rotor: {name: Rotor, mass: 20 kg}\n"
		steps := "steps:\n  - section: Off\n    steps:\n"
		moved := false // something between the first and the last stage
		for i := range n {
			steps += fmt.Sprintf("      - step: s%d\n        do: Do it.\n", i)
			last := len(at) > 0 && i == at[len(at)-1]
			switch {
			case lifts[i]:
				steps += "        lift: [L1]\n"
				if setDown[i] = !last && rapid.IntRange(0, 2).Draw(t, "set down") == 0; setDown[i] {
					steps += "        set-down: [L1]\n"
				}
				if last && out {
					steps += "        remove: [rotor]\n        into: Y1\n"
				}
			default:
				text += fmt.Sprintf("  part-%d: {name: Part %d}\n", i, i)
				steps += fmt.Sprintf("        remove: [part-%d]\n        into: C1\n", i)
				moved = moved || len(at) > 0 && i > at[0] && i < at[len(at)-1]
				if i != bare {
					steps += "        under-load: blocks\n"
				}
			}
		}
		if !slices.Contains(lifts, false) || len(at) == 0 {
			return // no container, or no lift
		}
		text += "containers:\n  C1: {name: Box, kind: box}\nlay-down:\n  Y1: {what: Floor}\nbig:\n  B1: {part: rotor}\n" + hangingLift(false) + steps

		hung := make([]bool, n+1) // before each step
		for i := range n {
			switch {
			case !lifts[i]:
				hung[i+1] = hung[i]
			default:
				hung[i+1] = !setDown[i] && i != at[len(at)-1]
			}
		}
		jb, codes := codesOf(text)
		var want []string
		if bare >= 0 && !lifts[bare] && hung[bare] {
			want = []string{"hands-under-load"}
		}
		if !slices.Equal(codes, want) {
			t.Fatalf("told %v, want %v\n%s", codes, want, text)
		}
		staged := len(at) > 1 && (out || moved)
		for _, st := range stepsOf(jb) {
			key, row := st.Key, st.Undoes != nil
			var i int
			if _, err := fmt.Sscanf(key, "s%d", &i); err != nil {
				t.Fatal(err)
			}
			if got, want := len(st.Hangs) > 0, hung[i] && !lifts[i]; got != want {
				t.Errorf("step %s (%s): the load hangs %t, want %t\n%s", st.No, key, got, want, text)
			}
			makes := lifts[i] && (!row || staged || out && i == at[len(at)-1])
			if got := len(st.Lifts) > 0; got != makes {
				t.Errorf("step %s (%s) makes the lift %t, want %t\n%s", st.No, key, got, makes, text)
			}
			// A stage leaves hanging what the stage after it goes on with; its row what
			// hung before it.
			left := hung[i+1]
			if row {
				left = hung[i]
			}
			if got, want := len(st.LeftHanging) > 0, lifts[i] && left; got != want {
				t.Errorf("step %s (%s) leaves the load hanging %t, want %t\n%s", st.No, key, got, want, text)
			}
			if got := slices.ContainsFunc(st.Cautions, func(c *job.Caution) bool { return c.Key == "hanging" }); got != (hung[i] && !lifts[i]) {
				t.Errorf("step %s (%s) carries the caution %t\n%s", st.No, key, got, text)
			}
		}
	})
}

// TestNobodyHoldsALoad: a lift by hand in stages is told unless nothing is done
// between them or each stage sets it down.
func TestNobodyHoldsALoad(t *testing.T) {
	t.Parallel()
	pin := "      - {step: pin, do: Take the pin., remove: [pin], into: C1}\n"
	for _, c := range []struct{ before, between, setDown, want string }{
		{pin, "", "", ""},
		{"", pin, "", "held-by-hand"},
		{"", pin, ", set-down: [L1]", ""},
	} {
		text := lawHead + "parts: {rotor: {name: Rotor, mass: 20 kg}, pin: {name: Pin}}\ncontainers: {C1: {name: Box, kind: box}}\nlay-down: {Y1: {what: Floor}}\nbig: {B1: {part: rotor}}\n" + hangingLift(true) +
			"steps:\n  - section: Off\n    steps:\n" + c.before + "      - {step: up, do: Lift it., lift: [L1]" + c.setDown + "}\n" + c.between + "      - {step: out, do: Lift it out., lift: [L1], remove: [rotor], into: Y1}\n"
		if _, codes := codesOf(text); strings.Join(codes, " ") != c.want {
			t.Errorf("%v told, want %q\n%s", codes, c.want, text)
		}
	}
}

// TestLocksComeOffWhenAllIsClosed: in any order of taking off and putting on a guard
// and covers, opening and closing, counting and moving, a lock that comes off is told
// of just what a second reckoning finds open, off or uncounted.
func TestLocksComeOffWhenAllIsClosed(t *testing.T) {
	t.Parallel()
	silent, spoken := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		// Pairs in any order: each opened before it is closed, anything between.
		acts := []string{"open a", "close a", "open b", "close b", "off guard", "on guard", "off pin", "on pin", "count"}
		var order []string
		for len(acts) > 0 {
			i := rapid.IntRange(0, len(acts)-1).Draw(t, "act")
			verb, what, _ := strings.Cut(acts[i], " ")
			if first := map[string]string{"close": "open ", "on": "off "}[verb]; first != "" && slices.Contains(acts, first+what) {
				continue
			}
			order = append(order, acts[i])
			acts = slices.Delete(acts, i, i+1)
		}
		off := rapid.IntRange(0, len(order)).Draw(t, "lock off before")
		order = slices.Insert(order, off, "unlock")
		open, guard, uncounted := map[string]bool{}, false, false
		var want []string
		steps := "steps:\n  - section: All\n    steps:\n      - {step: lock, do: Lock it., lock: [x]}\n"
		for i, act := range order {
			verb, what, _ := strings.Cut(act, " ")
			key := map[string]string{
				"open": "open: [" + what + "]", "close": "close: [" + what + "]", "off": "remove: [" + what + "], into: C1", "on": "fit: [" + what + "]",
				"count": "tool-count: yes", "unlock": "unlock: [x]",
			}[verb]
			steps += fmt.Sprintf("      - {step: s%d, do: Do it., %s}\n", i, key)
			switch verb {
			case "open":
				open[what], uncounted = true, true
			case "close":
				delete(open, what)
			case "off", "on":
				uncounted = uncounted || len(open) > 0
				if what == "guard" {
					guard = verb == "off"
				}
			case "count":
				uncounted = false
			case "unlock":
				if guard {
					want = append(want, "guard-off")
				}
				if len(open) > 0 {
					want = append(want, "open-at-unlock")
				}
				if uncounted {
					want = append(want, "tools-uncounted")
				}
			}
		}
		text := lawHead + "parts: {guard: {name: Belt guard, guard: yes}, pin: {name: Pin}}\ncontainers: {C1: {name: Box, kind: box}}\n" +
			"isolations: {x: {point: P, energy: water, state: shut, proved: dry}}\nopenings: {a: {what: Hole A, cover: rag}, b: {what: Hole B, cover: rag}}\n" + steps
		if _, codes := codesOf(text); !slices.Equal(codes, want) {
			t.Fatalf("told %v, want %v\n%s", codes, want, text)
		}
		if len(want) == 0 {
			silent++
		} else {
			spoken++
		}
	})
	if silent < 3 || spoken < 20 {
		t.Errorf("%d orders were in order and %d not: too few", silent, spoken)
	}
}

// TestLocksTakeTurns: a lock that comes off for tests and goes on again, any number
// of times, is told just where it comes off twice, goes on twice, or stays off after
// a test; each time that it is on has a row.
func TestLocksTakeTurns(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		acts := rapid.SliceOfN(rapid.SampledFrom([]string{"unlock-for-now", "lock-again"}), 0, 5).Draw(t, "acts")
		acts = append(append([]string{"lock"}, acts...), "unlock")
		on, rows := false, 0
		want := map[string]bool{}
		steps := "steps:\n  - section: All\n    steps:\n"
		for i, a := range acts {
			steps += fmt.Sprintf("      - {step: s%d, do: Do it., %s: [x]}\n", i, a)
			switch puts := a == "lock" || a == "lock-again"; {
			case puts && on:
				want["locked-already"] = true
			case !puts && !on:
				want["unlocked-already"] = true
			case puts:
				rows++
			}
			on = a == "lock" || a == "lock-again"
		}
		text := lawHead + "isolations: {x: {point: P, energy: water, state: shut, proved: dry}}\n" + steps
		jb, codes := codesOf(text)
		if !slices.Equal(codes, slices.Sorted(maps.Keys(want))) {
			t.Fatalf("told %v, want %v\n%s", codes, want, text)
		}
		if len(want) == 0 && len(jb.Isolations[0].Periods) != rows {
			t.Errorf("%d rows, want %d\n%s", len(jb.Isolations[0].Periods), rows, text)
		}
	})
}

// TestGuardsMirror: the put-back row of any step has the cautions, the permits, the
// second check and the hold of the step, each released or signed again, but for those
// that its author leaves out with a reason, which the row prints.
func TestGuardsMirror(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 5).Draw(t, "steps")
		text := lawHead + "parts:\n"
		holds, steps := "holds:\n", "steps:\n  - section: Off\n    steps:\n"
		guards := [4]string{"caution", "permit", "hold", "check"}
		has, out := make([][4]bool, n), make([][4]bool, n)
		for i := range n {
			text += fmt.Sprintf("  part-%d: {name: Part %d}\n", i, i)
			holds += fmt.Sprintf("  W%d: {kind: hold, what: Seen., releases: foreman}\n", i+1)
			steps += fmt.Sprintf("      - step: s%d\n        do: Do it.\n        remove: [part-%d]\n        into: C1\n", i, i)
			value := [4]string{"[puller]", "[work]", fmt.Sprintf("W%d", i+1), "foreman"}
			for g, key := range guards {
				if has[i][g] = key == "hold" || rapid.Bool().Draw(t, key); !has[i][g] {
					continue
				}
				steps += "        " + key + ": " + value[g] + "\n"
				if out[i][g] = rapid.Bool().Draw(t, "left out"); out[i][g] {
					steps += "        back-" + key + ": none, because so it is\n"
				}
			}
		}
		text += "containers: {C1: {name: Box, kind: box}}\ncautions: {puller: {signal: warning, hazard: Puller., avoid: Stand aside.}}\npermits: {work: {what: Permit}}\n" + holds + steps
		jb, codes := codesOf(text)
		for _, c := range codes {
			if c != "never-asked" {
				t.Fatalf("told %v\n%s", codes, text)
			}
		}
		rows := 0
		for _, st := range stepsOf(jb) {
			if st.Undoes == nil {
				continue
			}
			rows++
			var i int
			if _, err := fmt.Sscanf(st.Key, "s%d", &i); err != nil {
				t.Fatal(err)
			}
			missing := 0
			for g := range guards {
				if got, want := st.HasGuard(job.Guard(g)), has[i][g] && !out[i][g]; got != want {
					t.Errorf("row %s has a %s: %t, want %t\n%s", st.No, guards[g], got, want, text)
				}
				if out[i][g] {
					missing++
				}
			}
			if len(st.Without) != missing {
				t.Errorf("row %s says %d reasons, want %d\n%s", st.No, len(st.Without), missing, text)
			}
			if st.Hold != nil && (st.Hold.Again != st || st.Hold.Step != st.Undoes) {
				t.Errorf("hold %s is not released again at %s", st.Hold.Mark, st.No)
			}
		}
		if rows != n {
			t.Errorf("%d rows, want %d", rows, n)
		}
	})
}

// TestMissedWords: what is easily missed in taking off stands at the put-back row
// unless the author says otherwise there.
func TestMissedWords(t *testing.T) {
	t.Parallel()
	for back, want := range map[string]string{"": "leaf on the case", "none": "", "stamped side out": "stamped side out"} {
		text := lawHead + "parts: {shim: {name: Shim}}\ncontainers: {C1: {name: Box, kind: box}}\nsteps:\n  - section: Off\n    steps:\n      - step: s\n        do: Do it.\n        remove: [shim]\n        into: C1\n        missed: leaf on the case\n"
		if back != "" {
			text += "        back-missed: " + back + "\n"
		}
		jb, codes := codesOf(text)
		all := stepsOf(jb)
		if len(codes) > 0 || len(all) != 2 || all[0].Missed != "leaf on the case" || all[1].Missed != want {
			t.Errorf("back-missed: %q gives %v %q", back, codes, all[len(all)-1].Missed)
		}
	}
}
