package packs_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// hangingLift is the lift of a rotor, by a hook or by hand.
func hangingLift(hand bool) string {
	out := "lifts:\n  L1:\n    what: Rotor\n    parts: [rotor]\n    origin: middle\n    mass: 20 kg\n    mass-from: weighed\n    mass-source: scale\n    mass-within: 3 %\n" +
		"    centre: [0 mm, 0 mm, 0 mm]\n    centre-within: 1 mm\n    size: {from: [-500 mm, -200 mm, -200 mm], to: [500 mm, 200 mm, 200 mm]}\n    lay-down: Y1\n    crew: [rigger]\n"
	if hand {
		return out + "    rig: by hand\n    grips:\n      A: {point: [-400 mm, 0 mm, 0 mm]}\n      B: {point: [400 mm, 0 mm, 0 mm]}\n"
	}
	return out + "    rig: bridle\n    rated-by: EN\n    legs:\n      M: {pick: [0 mm, 0 mm, 60 mm], takes: shaft, sling: round, hitch: choker, choke: 120°, length: 1000 mm}\n" +
		"    crane: hoist\n    pass-over: 300 mm\n    stack: 100 mm\ngear:\n  round: {what: Sling, kind: round sling, rated: 2 t, mass: 1 kg}\ncranes:\n  hoist: {what: Hoist, rated: 1 t, high-hook: 4 m}\n"
}

// stages is a strip-down in which one lift is made by several steps, with parts that
// come off at the steps between.
type stages struct {
	lifts, setDown []bool // of each step
	at             []int  // the steps that lift
	out            bool   // the last of them takes the rotor out
	moved          bool   // something comes off between the first and the last
	bare           int    // the step that does not say what is put under the load, -1 for none
	hung           []bool // the load hangs before each step
	text           string
}

// last reports whether a step is the last that lifts.
func (s *stages) last(i int) bool { return len(s.at) > 0 && i == s.at[len(s.at)-1] }

// drawStages makes a strip-down at random; its text is empty where nothing is lifted
// or nothing comes off.
func drawStages(t *rapid.T) *stages {
	n := rapid.IntRange(2, 7).Draw(t, "steps")
	s := &stages{lifts: make([]bool, n), setDown: make([]bool, n), hung: make([]bool, n+1)}
	for i := range n {
		if s.lifts[i] = rapid.Bool().Draw(t, "lift"); s.lifts[i] {
			s.at = append(s.at, i)
		}
	}
	s.out = rapid.Bool().Draw(t, "out at the last stage")
	s.bare = rapid.IntRange(-1, n-1).Draw(t, "step without words")
	parts, steps := "", ""
	for i := range n {
		steps += fmt.Sprintf("      - step: s%d\n        do: Do it.\n", i)
		s.hung[i+1] = s.hung[i]
		if !s.lifts[i] {
			parts += fmt.Sprintf("  part-%d: {name: Part %d}\n", i, i)
			steps += fmt.Sprintf("        remove: [part-%d]\n        into: C1\n", i)
			if i != s.bare {
				steps += "        under-load: blocks\n"
			}
			s.moved = s.moved || len(s.at) > 0 && i > s.at[0] && i < s.at[len(s.at)-1]
			continue
		}
		steps += "        lift: [L1]\n"
		if s.setDown[i] = !s.last(i) && rapid.IntRange(0, 2).Draw(t, "set down") == 0; s.setDown[i] {
			steps += "        set-down: [L1]\n"
		}
		if s.last(i) && s.out {
			steps += "        remove: [rotor]\n        into: Y1\n"
		}
		s.hung[i+1] = !s.setDown[i] && !s.last(i)
	}
	if parts != "" && len(s.at) > 0 {
		s.text = lawHead + "parts:\n  rotor: {name: Rotor, mass: 20 kg}\n" + parts + "containers:\n  C1: {name: Box, kind: box}\nlay-down:\n  Y1: {what: Floor}\nbig:\n  B1: {part: rotor}\n" +
			hangingLift(false) + "steps:\n  - section: Off\n    steps:\n" + steps
	}
	return s
}

// TestLoadsHangBothWays: whatever the order of a strip-down in which one lift is made
// in stages, the load hangs at just the steps between its stages, and at their rows
// of the put-back, which comes down by the same stages; where a stage sets it down it
// stands until the next one.
func TestLoadsHangBothWays(t *testing.T) {
	t.Parallel()
	hanging := 0
	rapid.Check(t, func(t *rapid.T) {
		s := drawStages(t)
		if s.text == "" {
			return
		}
		jb, codes := codesOf(s.text)
		var want []string
		if s.bare >= 0 && !s.lifts[s.bare] && s.hung[s.bare] {
			want = []string{"hands-under-load"}
		}
		if !slices.Equal(codes, want) {
			t.Fatalf("told %v, want %v\n%s", codes, want, s.text)
		}
		for _, st := range stepsOf(jb) {
			hanging += len(st.Hangs)
			s.check(t, st)
		}
	})
	if hanging < 15 {
		t.Errorf("a load hung at %d steps only", hanging)
	}
}

// check sees that one step or row has what the reckoning says.
func (s *stages) check(t *rapid.T, st *job.Step) {
	var i int
	if _, err := fmt.Sscanf(st.Key, "s%d", &i); err != nil {
		t.Fatal(err)
	}
	row := st.Undoes != nil
	staged := len(s.at) > 1 && (s.out || s.moved)
	// A stage leaves hanging what the stage after it goes on with; its row what hung
	// before it.
	left := s.hung[i+1]
	if row {
		left = s.hung[i]
	}
	warned := slices.ContainsFunc(st.Cautions, func(c *job.Caution) bool {
		return c.Key == "hanging" && st.UnderLoad.Value == "" || c.Key == "hanging-propped" && st.UnderLoad.Value != ""
	})
	for _, c := range []struct {
		what      string
		got, want bool
	}{
		{"has a load that hangs", len(st.Hangs) > 0, s.hung[i] && !s.lifts[i]},
		{"carries the caution", warned, s.hung[i] && !s.lifts[i]},
		{"makes the lift", len(st.Lifts) > 0, s.lifts[i] && (!row || staged || s.out && s.last(i))},
		{"leaves the load hanging", len(st.LeftHanging) > 0, s.lifts[i] && left},
	} {
		if c.got != c.want {
			t.Errorf("step %s (%s) %s: %t, want %t\n%s", st.No, st.Key, c.what, c.got, c.want, s.text)
		}
	}
}

// TestNothingIsPulledFromUnderALoad: in the same jobs, both ways, what stands under a load that
// hangs is in until it comes out, once: at a step that leaves nothing of it under the hook it comes
// out last where the rotor is carried away, and above the lift where the load is let down.
func TestNothingIsPulledFromUnderALoad(t *testing.T) {
	t.Parallel()
	first, last := 0, 0
	law := func(t *rapid.T) {
		s := drawStages(t)
		if s.text == "" {
			return
		}
		jb, _ := codesOf(s.text)
		under := false
		for _, st := range stepsOf(jb) {
			var i int
			if _, err := fmt.Sscanf(st.Key, "s%d", &i); err != nil {
				t.Fatal(err)
			}
			switch {
			case len(st.Hangs) > 0:
				under = under || st.UnderLoad.Value != ""
			case len(st.GoesOn) == 0:
				under = false
			}
			// It is carried away by the step that takes the rotor out, and taken up toward it by each
			// that comes before that one and is not a row.
			up := st.Undoes == nil && s.out && s.leadsOut(i)
			for _, c := range []struct {
				what string
				got  bool
				want bool
			}{
				{"out before the lift goes on", len(st.FromUnder) > 0, under && len(st.GoesOn) > 0 && !up},
				{"out when the load stands elsewhere", len(st.LeftBehind) > 0, under && len(st.GoesOn) > 0 && up && s.last(i)},
			} {
				if c.got != c.want {
					t.Fatalf("step %s (%s): %s: %t, want %t\n%s", st.No, st.Key, c.what, c.got, c.want, s.text)
				}
			}
			if len(st.FromUnder)+len(st.LeftBehind) > 0 {
				under = false
			}
			first, last = first+len(st.FromUnder), last+len(st.LeftBehind)
		}
	}
	for range 3 { // few jobs carry the load away over what stands under it
		rapid.Check(t, law)
	}
	if first < 15 || last < 5 {
		t.Errorf("came out first %d times, last %d times only", first, last)
	}
}

// leadsOut reports whether the load that hangs at a step is still on the hook when the last one
// takes it out: no stage sets it down from here on.
func (s *stages) leadsOut(i int) bool { return !slices.Contains(s.setDown[i:], true) }

// TestNobodyHoldsALoad: a lift by hand in stages is told unless nothing is done
// between them or each stage sets it down.
func TestNobodyHoldsALoad(t *testing.T) {
	t.Parallel()
	pin := "      - {step: pin, do: Take the pin., remove: [pin], into: C1}\n"
	for _, c := range []struct{ before, between, setDown, want string }{
		{pin, "", "", ""},
		{"", pin, "", "held-by-hand"},
		{"", pin, ", set-down: [L1]", ""},
		{pin, "      - {step: down, do: Lay it on the blocks., set-down: [L1]}\n", "", ""},
		{"", "      - {step: down, do: Lay it on the blocks., remove: [pin], into: C1, set-down: [L1]}\n", "", "held-by-hand"},
	} {
		text := lawHead + "parts: {rotor: {name: Rotor, mass: 20 kg}, pin: {name: Pin}}\ncontainers: {C1: {name: Box, kind: box}}\nlay-down: {Y1: {what: Floor}}\nbig: {B1: {part: rotor}}\n" + hangingLift(true) +
			"steps:\n  - section: Off\n    steps:\n" + c.before + "      - {step: up, do: Lift it., lift: [L1]" + c.setDown + "}\n" + c.between + "      - {step: out, do: Lift it out., lift: [L1], remove: [rotor], into: Y1}\n"
		if _, codes := codesOf(text); strings.Join(codes, " ") != c.want {
			t.Errorf("%v told, want %q\n%s", codes, c.want, text)
		}
	}
}

// What a step raises and a later one sets down hangs between the two, whatever stands there, and
// what is set down where nothing is up is told. Common practice, no source.
func TestSetDownBelowItsLift(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"lift": "do: Lift it clear., lift: [L1]", "down": "do: Let it down., set-down: [L1]", "out": "do: Lift it out., lift: [L1], remove: [rotor], into: Y1",
		"look": "do: Walk round it.", "pin": "do: Take the pin., remove: [pin], into: C1",
	}
	told, hands, clear := 0, 0, 0
	rapid.Check(t, func(t *rapid.T) {
		order := anyOrder(t, "lift", "down", "look", "pin")
		switch rapid.IntRange(0, 3).Draw(t, "out") {
		case 0:
			order = append(order, "out")
		case 1:
			order = append(order, "out", "down")
		}
		lift, down, pin := slices.Index(order, "lift"), slices.Index(order, "down"), slices.Index(order, "pin")
		last := len(order) - 1
		hung := lift < down && lift < pin && pin < down || lift > down && slices.Contains(order, "out") && lift < pin
		wrong := down < lift || last > down && order[last] == "down"
		_, codes := codesOf(lawHead + "parts: {rotor: {name: Rotor, mass: 20 kg}, pin: {name: Pin}}\ncontainers: {C1: {name: Box, kind: box}}\nlay-down: {Y1: {what: Floor}}\nbig: {B1: {part: rotor}}\n" +
			hangingLift(false) + "steps:\n  - section: Off\n    steps:\n" + stepLines(order, line))
		if got := slices.Contains(codes, "nothing-hangs"); got != wrong {
			t.Fatalf("%v: told %v, want nothing-hangs %t", order, codes, wrong)
		}
		if got := slices.Contains(codes, "hands-under-load"); got != hung {
			t.Fatalf("%v: told %v, want hands-under-load %t", order, codes, hung)
		}
		if wrong {
			told++
		} else if hung {
			hands++
		} else {
			clear++
		}
	})
	if told == 0 || hands == 0 || clear == 0 {
		t.Errorf("%d told, %d with hands under it, %d of neither", told, hands, clear)
	}
}
