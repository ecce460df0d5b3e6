package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

const deadPump = lawHead + `
parts:
  guard: {name: Coupling guard, guard: yes, mass: 8 kg}
  lid: {name: Terminal box cover, mass: 1 kg}
  screw: {name: Lid screw M6, count: 4}
containers:
  C1: {name: Small parts, kind: crate, keep: dry}
isolations:
  motor: {point: Breaker 12, energy: electric, state: racked out, proved: tester reads nothing}
holds:
  W1: {kind: hold, what: Isolated and earthed, releases: electrical supervisor}
steps:
  - section: All
    steps:
`

// The guard came off before the hold on the isolation, and before the tester had shown that the
// machine was dead, and nothing was said. In any order it is told just there.
func TestHandsBelowTheProof(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"lock": "do: Lock it., lock: [motor]", "see": "do: Try it., seen: [tester reads nothing]", "hold": "do: The supervisor looks., hold: W1",
		"lid": "do: Take the lid off., remove: [screw, lid], into: C1", "guard": "do: Take the guard off., remove: [guard], into: C1",
	}
	toldWhere(t, "proved-late", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "lock", "see", "hold", "lid", "guard")
		at := func(act string) int { return slices.Index(order, act) }
		return deadPump + stepLines(order, line), at("lock") < at("guard") && at("guard") < max(at("see"), at("hold"))
	})
}

// Whatever lies over the terminals may come off before the proof.
func TestLidsOverTerminalsComeOffFirst(t *testing.T) {
	t.Parallel()
	const steps = "      - {step: lock, do: Lock it., lock: [motor]}\n      - {step: guard, do: Take it off., remove: [guard], into: C1}\n      - {step: hold, do: Look at it., hold: W1}\n"
	for name, told := range map[string]bool{"Canopy": false, "Hood": false, "Enclosure": false, "Access plate": false, "Inspection plate": false, "Fuse": false, "Fuses": false, "Earthing link": false, "Coupling guard": true, "Name plate": true} {
		toldJust(t, "proved-late", strings.Replace(deadPump, "{name: Coupling guard, guard: yes,", "{name: "+name+",", 1)+"PUT", []warned{{steps, told}})
	}
}

// What holds and proofs say of other things is told of nowhere.
func TestHandsBelowTheProofByItsWords(t *testing.T) {
	t.Parallel()
	const steps = "      - {step: lock, do: Lock it., lock: [motor]}\n      - {step: guard, do: Take the guard off., remove: [guard], into: C1}\n      - {step: hold, do: Look at it., hold: W1}\n"
	for _, c := range []struct {
		what string
		told bool
	}{
		{"Isolated and earthed", true}, {"Motor isolated", true}, {"Isolation proved", true}, {"Isolations are in place", true}, {"Locked out and tried", true}, {"Proved dead", true}, {"Breaker earthed", true}, {"Isolation seen", true},
		{"Isolation verified", true}, {"LOTO verified", true}, {"Zero energy proved", true}, {"Zero voltage confirmed", true}, {"Dead test done", true}, {"Isolated and not to be touched", true},
		{"Frame earthed, strap tight", false}, {"Bearing housing isolated from the base, over 1 megohm", false}, {"Neutral point earthed through its resistor", false}, {"Shaft locked off at the turning gear", false}, {"Vibration pads isolated", false}, {"Oil cooler isolated and drained for cleaning", false},
		{"Isolation lifted", false}, {"Isolations off", false}, {"Earths removed", false}, {"Insulation read", false}, {"Insulation tested", false}, {"Still isolated", false}, {"Isolated again", false},
		{"Guard seen off", false}, {"Coupling seen", false}, {"Dead weight of the rotor agreed", false}, {"Bearing not isolated from the base", false}, {"Locked nut seen", false}, {"Isolating sheet seen", false},
		{"Isolation valve lapped", false}, {"Isolation joint seen", false}, {"Nut locked", false}, {"Tab washer locked over", false}, {"Dead centre marked", false}, {"Dead stop set", false}, {"Earth brush seen", false},
		{"Earthing strap cleaned", false}, {"Isolation ended", false}, {"Faces seen", false}, {"Tools counted", false}, {"Engineer has seen gaps", false}, {"Deadband read", false}, {"Isolator contacts seen", false},
		{"Unlocked", false}, {"Isolation list filed", false}, {"Earth fault relay tested", false}, {"Vibration isolators seen", false}, {"Lock nut tight", false}, {"Wait until it is isolated", false},
	} {
		toldJust(t, "proved-late", strings.Replace(deadPump, "Isolated and earthed", c.what, 1)+"PUT", []warned{{steps, c.told}})
	}
	for _, c := range []struct {
		proved, seen string
		told         bool
	}{
		{"tester reads nothing", "tester reads nothing", true}, {"start tried", "Start tried", true}, {"does not start", "does not start", true}, {"no voltage at the terminals", "no voltage at the terminals", true},
		{"zero volts", "zero volts at the terminals", true}, {"absence of voltage", "absence of voltage", true}, {"will not start", "will not start", true}, {"push button tried", "push button tried", true},
		{"tester reads nothing", "coupling turns freely", false}, {"gauge reads nothing", "gauge reads nothing", false}, {"drain runs dry", "drain runs dry", false},
	} {
		text := strings.Replace(deadPump, "tester reads nothing", c.proved, 1)
		toldJust(t, "proved-late", text+"PUT", []warned{{strings.Replace(steps, "hold: W1", "seen: [\""+c.seen+"\"]", 1), c.told}})
	}
}

// A run up to speed for an hour, and a bearing read after it, stood behind the locks in silence.
func TestRunUpToSpeedIsUnlocked(t *testing.T) {
	t.Parallel()
	const head = lawHead + "parts:\n  cap: {name: Cap}\nisolations:\n  motor: {point: Q1, energy: electric, state: locked, proved: start tried}\ninstruments:\n  meter: {name: Thermometer, range: 0 to 200 °C, reads: 1 °C}\n"
	const steps = "steps:\n  - {step: lock, do: Lock the motor out., lock: [motor]}\n  - {step: test, do: \"WORDS\"READ}\n  - {step: unlock, do: Take the lock off., unlock: [motor]}\n"
	var cases []warned
	for words, told := range map[string]bool{
		"Run the set up to speed for 1 h.": true, "Run the set up to speed for 1 h and read the bearing.": true, "Run the pump at rated speed for 30 min.": true, "Run the fan empty for an hour.": true, "Run the unit for 2 hours.": true, "Run the machine 10 minutes.": true,
		"Switch on the generator heater.": false, "Switch on the exciter space heater.": false, "Switch on the unit heater.": false, "Start the unit on its jacks.": false, "Start the exciter hub moving with a wedge.": false, "Switch on the generator.": true,
		"Run the set of taps in.": false, "Run the nut up for a turn.": false, "Run the drive belt through by hand for 5 minutes.": false, "Run the pump at full speed for an hour on the test bench.": false, "Set the unit down for 1 h.": false, "Run the exciter leads along the wall.": false,
		"Let the oil run for 1 h.": false, "Lay the set out.": false, "Wait for 1 h.": false, "Run the generator cable in.": false, "Run the tape round the unit.": false, "Start the drift by hand.": false,
	} {
		cases = append(cases, warned{strings.NewReplacer("WORDS", words, "READ", "").Replace(steps), told})
	}
	toldJust(t, "runs-locked", head+"PUT", cases)
	for what, told := range map[string]bool{
		"Bearing temperature after 1 h": false, "Bearing temperature after 1 h at speed": true, "Oil temperature after 30 min of running": true, "Drive end bearing temperature at the end of 2 hours of running": true,
		"Temperature of the hub after 1 h": false, "Bearing temperature": false, "Oven temperature after 1 h": false, "Bearing temperature after 1 h in the bath": false, "Bearing temperature after cooling": false,
	} {
		dim := "dimensions:\n  D1: {what: " + what + ", kind: temperature, of: {cap: top}, by: meter, found: not taken, left: at most 75 °C, source: sheet, over: stop it}\n"
		toldJust(t, "runs-locked", head+dim+"PUT", []warned{{strings.NewReplacer("WORDS", "Read it.", "READ", ", set: [D1]").Replace(steps), told}})
	}
	for _, x := range []struct {
		does, what string
		told       bool
	}{
		{"Heat the bearing on the induction heater.", "Bearing temperature after 20 minutes", false}, {"Flush the oil through the heater skid.", "Oil temperature after 30 minutes", false},
		{"Dry the winding with the space heaters.", "Winding temperature after 6 hours", false}, {"Read it under full load.", "Bearing temperature after 20 minutes", true}, {"Read it as it runs.", "Oil temperature after 30 minutes", true},
	} {
		dim := "dimensions:\n  D1: {what: " + x.what + ", kind: temperature, of: {cap: top}, by: meter, found: not taken, left: at most 75 °C, source: sheet, over: stop it}\n"
		toldJust(t, "runs-locked", head+dim+"PUT", []warned{{strings.NewReplacer("WORDS", x.does, "READ", ", set: [D1]").Replace(steps), x.told}})
	}
}

// A place of the job that is none of the repeat was told as no place, to be described under places.
func TestPlaceOfAnotherRepeat(t *testing.T) {
	t.Parallel()
	text := lawHead + "places:\n  end:\n    A: {name: end A, viewed-from: motor}\n    B: {name: end B, viewed-from: fan}\nparts:\n  nut: {name: Nut, each: A, thread: M20, hand: {B: left, others: right}}\nsteps:\n  - {step: look, do: Look.}\n"
	_, problems := loadLaw(text)
	for _, p := range problems {
		if p.Code == "unknown-name" && strings.Contains(p.Message, "none of this repeat") && !strings.Contains(strings.Join(p.Help, " "), "describe") {
			return
		}
	}
	t.Errorf("not told of B: %v", problems)
}
