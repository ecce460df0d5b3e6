package packs_test

import (
	"strings"
	"testing"
)

// twoPumps is two like pumps, each with its motor, and one alignment for each, up to its steps.
func twoPumps(movable1, movable2 string) string {
	dim := func(mark, kind, n string) string {
		return "  " + mark + ": {what: " + kind + " " + n + ", kind: runout, from: {body/P" + n + ": rim}, to: {motor/P" + n + ": hub rim}, at: clock of 4, viewed-from: the motor/P" + n + ", sign: yes, nominal: 0.10 mm, left: -0.10 to 0.10 mm, found: not taken, lost-by: nothing, source: sheet 3}\n"
	}
	align := func(mark, movable, n, dials string) string {
		return "  " + mark + ": {what: Motor to pump " + n + ", movable: " + movable + ", stationary: body/P" + n + ", method: rim and face, reads: 0.01 mm, dials-on: stationary, face-diameter: 180 mm, sag: 0.03 mm, feet: [{name: front, at: 310 mm}, {name: rear, at: 720 mm}], limits: {speed: 1480, at: 0 mm, over: 180 mm, rows: [{up-to: 1800, offset: 0.06 mm, angle: 0.06 mm}], source: sheet 3}, read: " + dials + "}\n"
	}
	return lawHead + "places: {pump: {names: [P1, P2]}}\nparts: {motor: {name: Motor, each: pump}, body: {name: Pump, each: pump}}\ncontainers: {C1: {name: Motor, kind: crate, each: pump, keep: dry}}\ndimensions:\n" +
		dim("D1", "Rim", "1") + dim("D2", "Face", "1") + dim("D3", "Rim", "2") + dim("D4", "Face", "2") +
		"alignments:\n" + align("A1", movable1, "1", "{rim: D1, face: D2}") + align("A2", movable2, "2", "{rim: D3, face: D4}") + "steps:\n"
}

// The motor of one pump was told as never aligned again, since that of the other goes back below
// its alignment. Each motor is one part: the paper tells which.
func TestLikeMachinesAreAlignedEachForItself(t *testing.T) {
	t.Parallel()
	step := func(n, align string) string {
		return strings.NewReplacer("N", n, "ALIGN", align).Replace("  - {step: offN, do: Lift the motor off., remove: [motor/PN], into: C1}\n  - {step: onN, do: Put the motor on., fit: [motor/PN], from: [C1/PN]}\n  - {step: moveN, do: \"Move the motor, read the coupling.\", ALIGN}\n")
	}
	one, two := step("1", "align: [A1], set: [D1, D2]"), step("2", "align: [A2], set: [D3, D4]")
	early := strings.Replace(two, "  - {step: on2", "  - {step: early, do: Align it., align: [A2]}\n  - {step: on2", 1)
	for _, c := range []struct {
		movable [2]string
		steps   string
		want    string
	}{
		{[2]string{"motor/P1", "motor/P2"}, one + two, ""},
		{[2]string{"motor/P1", "motor/P2"}, two + one, ""},
		{[2]string{"motor", "motor"}, one + two, ""}, // by the dials
		{[2]string{"motor/P1", "motor/P2"}, one + early, "not-as-told"},
		{[2]string{"motor", "motor"}, one + early, "not-as-told"},
		{[2]string{"motor/P1", "motor/P2"}, one + "  - {step: first, do: \"Align it, read it.\", align: [A2], set: [D3, D4]}\n" + strings.Replace(two, "align: [A2], set: [D3, D4]", "seen: [feet clean]", 1), "never-aligned"},
	} {
		if got := strings.Join(toldOf(twoPumps(c.movable[0], c.movable[1])+c.steps, "never-aligned", "not-as-told"), " "); got != c.want {
			t.Errorf("%v: told %q, want %q\n%s", c.movable, got, c.want, c.steps)
		}
	}
	jb, err := load(twoPumps("motor/P1", "motor/P2") + one + two)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []string{"motor/P1", "motor/P2"} {
		a := jb.Alignments[i]
		if a.Movable != want || len(a.Machines) != 2 || a.Machines[0].Place.Mark(a.Machines[0].Key) != want {
			t.Errorf("%s moves %q and is of %v, want %s", a.Mark, a.Movable, a.Machines, want)
		}
	}
}

// Of a train with two couplings the feet at one were told to pull the other out of line.
func TestFeetPullTheirOwnCoupling(t *testing.T) {
	t.Parallel()
	const head = lawHead + `parts:
  motor: {name: Motor}
  gearbox: {name: Gearbox}
  fan: {name: Fan}
  foot: {name: Foot bolt of the motor, count: 4}
  fanfoot: {name: Fan foot bolt, count: 4}
  gearfoot: {name: Gearbox foot bolt, count: 4}
dimensions:
DIMS
joints:
  J1: {what: Motor feet, parts: [foot], torque: 60 N·m, lubricant: oil, source: sheet 3}
  J2: {what: Fan feet, parts: [fanfoot], torque: 60 N·m, lubricant: oil, source: sheet 3}
  J3: {what: Gearbox feet, parts: [gearfoot], torque: 60 N·m, lubricant: oil, source: sheet 3}
tools: {wrench: {what: Torque wrench, size: 20 to 100 N·m}}
alignments:
  A1: {what: Motor to gearbox, movable: motor, stationary: gearbox, method: rim and face, reads: 0.01 mm, dials-on: stationary, face-diameter: 180 mm, sag: 0.03 mm, feet: [{name: front, at: 310 mm}, {name: rear, at: 720 mm}], read: {rim: D1, face: D2}}
  A2: {what: Fan to gearbox, movable: fan, stationary: gearbox, method: rim and face, reads: 0.01 mm, dials-on: stationary, face-diameter: 180 mm, sag: 0.03 mm, feet: [{name: front, at: 310 mm}, {name: rear, at: 720 mm}], read: {rim: D3, face: D4}}
steps:
  - {step: found, do: Read both couplings., measure: [D1, D2, D3, D4], align: [A1, A2]}
  - {step: slack, do: Slacken the feet., loosen: [J1, J2, J3]}
`
	var dims []string
	for mark, of := range map[string]string{"D1": "motor", "D2": "motor", "D3": "fan", "D4": "fan"} {
		dims = append(dims, "  "+mark+": {what: Dial, kind: runout, from: {gearbox: rim}, to: {"+of+": hub rim}, at: clock of 4, viewed-from: the "+of+", sign: yes, nominal: 0.10 mm, left: -0.10 to 0.10 mm, lost-by: nothing, source: sheet 3}")
	}
	toldJust(t, "pulled-out-of-line", strings.Replace(head, "DIMS", strings.Join(dims, "\n"), 1)+"PUT", []warned{
		{"  - {step: m1, do: Move the motor., align: [A1], tighten: [J3, J1], set: [D1, D2]}\n  - {step: m2, do: Move the fan., align: [A2], tighten: [J2], set: [D3, D4]}\n", false},
		{"  - {step: m1, do: Move the motor., align: [A1], tighten: [J3], set: [D1, D2]}\n  - {step: m2, do: Move the fan., align: [A2], tighten: [J2, J1], set: [D3, D4]}\n", true},
		{"  - {step: m1, do: Move the motor., align: [A1], tighten: [J1], set: [D1, D2]}\n  - {step: m2, do: Move the fan., align: [A2], tighten: [J2, J3], set: [D3, D4]}\n", true},
		{"  - {step: m1, do: Move both., align: [A1, A2], tighten: [J1, J3], set: [D1, D2, D3, D4]}\n  - {step: m2, do: Tighten the feet of the fan., tighten: [J2]}\n", true},
	})
}
