package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/packs/job"
)

// The dials are read, a motor comes off and goes back, the coupling is aligned: what they
// read as left stands at the last alignment or below it, and with the motor in its place,
// where the coupling is aligned too. The motor is named by its key or by its name.
func TestDialsAreReadOfWhatStands(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		set := rapid.IntRange(0, 5).Draw(t, "set at")
		twice, off := rapid.Bool().Draw(t, "aligned twice"), rapid.Bool().Draw(t, "aligned while it is off")
		movable := rapid.SampledFrom([]string{"motor", "Motor"}).Draw(t, "movable")
		text := alignHead(movable)
		for i, verbs := range []string{"align: [A1], measure: [D1, D2]", "remove: [motor], into: C1", "seen: [feet clean]", "fit: [motor]", "align: [A1]", "tool-count: yes"} {
			if i == set {
				verbs += ", set: [D1, D2]"
			}
			if twice && i == 5 || off && i == 2 {
				verbs += ", align: [A1]"
			}
			text += "  - {step: s" + string(rune('a'+i)) + ", do: Do it., " + verbs + "}\n"
		}
		last := 4
		if twice {
			last = 5
		}
		var want []string
		switch {
		case off || set == 1 || set == 2:
			want = []string{"not-as-told"}
		case set < last:
			want = []string{"too-early"}
		}
		if got := toldOf(text, "not-as-told", "too-early"); !slices.Equal(got, want) {
			t.Fatalf("set at %d, last aligned at %d: told %v, want %v\n%s", set, last, got, want, text)
		}
	})
}

// Whether the motor is named by its key or by its name, its removal is bound to what was read
// as found before it, and the alignment to the motor's return; neither is free to go past.
func TestDialsAreBoundToTheirMachines(t *testing.T) {
	t.Parallel()
	for _, movable := range []string{"motor", "Motor"} {
		jb, _ := codesOf(alignHead(movable) +
			"  - {step: look, do: Look., seen: [feet clean]}\n" +
			"  - {step: found, after: {look: the feet are clean then}, do: Read., measure: [D1, D2]}\n" +
			"  - {step: off, after: {look: the feet are clean then}, do: Off., remove: [motor], into: C1}\n  - {step: on, do: On., fit: [motor]}\n" +
			"  - {step: align, after: {look: the feet are clean then}, do: Align., align: [A1]}\n  - {step: left, do: Read., set: [D1, D2]}\n")
		for _, x := range [][2]string{{"off", "found"}, {"align", "on"}} {
			st, by := stepNamed(t, jb, x[0]), stepNamed(t, jb, x[1])
			if !slices.ContainsFunc(st.Binds, func(b job.Bind) bool { return b.Before == by }) {
				t.Errorf("movable: %s: nothing binds %s to %s", movable, st.Name(), by.Name())
			}
		}
	}
}

// alignHead is a pump with a motor, aligned by the dials D1 and D2, up to its steps.
func alignHead(movable string) string {
	dim := func(mark string) string {
		return "  " + mark + ": {what: Dial, kind: runout, from: {pump: rim}, to: {half: rim}, at: clock of 4, viewed-from: the " + movable + ", sign: yes, nominal: 0.10 mm, left: -0.10 to 0.10 mm, lost-by: nothing, source: sheet 3}\n"
	}
	return lawHead + "parts: {motor: {name: Motor}, half: {name: Coupling half}, pump: {name: Pump}}\ncontainers: {C1: {name: Motor, kind: crate, keep: dry}}\ndimensions:\n" + dim("D1") + dim("D2") +
		"alignments:\n  A1: {what: Motor to pump, movable: " + movable + ", stationary: pump, method: rim and face, reads: 0.01 mm, dials-on: stationary, face-diameter: 180 mm, sag: 0.03 mm, feet: [{name: front, at: 310 mm}, {name: rear, at: 720 mm}], read: {rim: D1, face: D2}}\nsteps:\n"
}

// Feet and large pipes are tight when the coupling is read last; small lines, and what is no
// foot, are left alone. Common practice, no source.
func TestCouplingsAreReadWhenNothingPulls(t *testing.T) {
	t.Parallel()
	names := map[string]bool{"Motor foot bolt": true, "Holding-down bolt": true, "Suction pipe flange bolt": true, "Bolt of the discharge flange": true, "Foundation bolt": true, "Base bolt": true,
		"Oil drain pipe bolt": false, "Flush pipe of the suction pipe": false, "Guard screw": false, "Coupling bolt": false, "Seal gland nut": false, "Cover bolt": false, "Fußschraube": false, "Vent pipe bolt": false,
		"Pump foot bolt": true, "Hold-down bolt of the motor": true, "Guard foot bolt": false, "Base cover screw": false, "Air intake pipe of the duct": false, "Base bolt of the grating": false, "Discharge pipe of the sump pump": false, "Foot bolt of the gland house": false, "Discharge flange of the feed pump": false}
	list := make([]string, 0, len(names))
	for n := range names {
		list = append(list, n)
	}
	slices.Sort(list)
	line := map[string]string{"slacken": "do: Slacken them., loosen: [J9]", "tighten": "do: Tighten them., tighten: [J9]", "read": "do: Read it., set: [D1, D2]", "align": "do: Align it., align: [A1], measure: [D1, D2]"}
	toldWhere(t, "pulled-out-of-line", func(t *rapid.T) (string, bool) {
		name := rapid.SampledFrom(list).Draw(t, "name")
		order := anyOrder(t, "slacken", "tighten", "read", "align")
		at := func(act string) int { return slices.Index(order, act) }
		if at("slacken") > at("tighten") {
			t.Skip("tightened before it is slackened")
		}
		head := strings.Replace(alignHead("motor"), "parts: {", "parts: {bolt: {name: "+name+", count: 4}, ", 1)
		head = strings.Replace(head, "alignments:", "joints: {J9: {what: Bolts, parts: [bolt], torque: 60 N·m, source: sheet 2}}\ntools: {wrench: {what: Torque wrench, size: 20 to 100 N·m}}\nalignments:", 1)
		return head + strings.ReplaceAll(stepLines(order, line), "      - ", "  - "), names[name] && at("slacken") < at("read") && at("read") < at("tighten") && at("align") < at("tighten")
	})
}
