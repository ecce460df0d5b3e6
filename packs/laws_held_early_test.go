package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// heldPump has a hold W1 for what PUT says, and readings of several kinds.
const heldPump = lawHead + `parts:
  shaft: {name: Shaft}
  ring: {name: Case ring}
instruments: {dial: {name: Dial gauge, range: 0 to 10 mm, reads: 0.01 mm}}
holds: {W1: {kind: hold, what: "WHAT", releases: engineer}}
dimensions:
  D1: {what: Run-out of the shaft, kind: runout, of: {shaft: end}, by: dial, left: at most 0.05 mm, source: sheet 2OUT}
  D2: {what: Clearance of the ring, kind: clearance, from: {ring: bore}, to: {shaft: neck}, nominal: 0.5 mm, left: 0.4 to 0.6 mm, source: sheet 2}
steps:
  - section: All
    steps:
`

func heldText(what, out string) string {
	return strings.NewReplacer("WHAT", what, "OUT", out).Replace(heldPump)
}

// A hold stands below one of the readings that it is for, in any order of them. Common practice,
// no source.
func TestHoldsStandBelowTheirReadings(t *testing.T) {
	t.Parallel()
	line := map[string]string{"hold": "do: Show it to the engineer., hold: W1", "run-out": "do: Measure the run-out., measure: [D1]", "clearance": "do: Measure the clearance., measure: [D2]", "back run-out": "do: Measure the run-out again., set: [D1]"}
	kinds := []struct {
		what, out string
		of        []string // the readings that it is for
	}{
		{"Engineer has seen D1", "", []string{"run-out", "back run-out"}},
		{"Engineer has seen the run-out", "", []string{"run-out", "back run-out"}},
		{"Engineer has seen the run-out as left", "", []string{"back run-out"}},
		{"Engineer has seen the run-out as found", "", []string{"run-out"}},
		{"Engineer has all readings", "", []string{"run-out", "clearance", "back run-out"}},
		{"Foreman has read every clearance and signs", "", []string{"clearance"}},
		{"All clearances are written down", "", []string{"clearance"}},
		{"Casing is clean inside and all clearances are written down; the casing may go on.", "", []string{"clearance"}},
		{"Engineer says go on", ", out: tell the engineer at W1", []string{"run-out", "back run-out"}},
		{"Engineer says go on", "", nil},
		{"Shaft seen by the engineer", "", nil},
		{"Engineer has seen the shaft and the ring", "", nil},
		{"Permit and the limits of the run-out are at the machine", "", nil},
	}
	toldWhere(t, "hold-early", func(t *rapid.T) (string, bool) {
		k := rapid.SampledFrom(kinds).Draw(t, "kind")
		order := anyOrder(t, "hold", "run-out", "clearance", "back run-out")
		at := func(act string) int { return slices.Index(order, act) }
		want := len(k.of) > 0 && !slices.ContainsFunc(k.of, func(act string) bool { return at(act) < at("hold") })
		return heldText(k.what, k.out) + stepLines(order, line), want
	})
}

// Ordinary words of holds that stand where they are wanted.
func TestSoundHoldsAreNotTold(t *testing.T) {
	t.Parallel()
	const hold, read = "      - {step: hold, do: Show it., hold: W1}\n", "      - {step: read, do: Measure., measure: [D1, D2]}\n"
	for _, c := range []struct {
		what string
		told bool // with the hold above all readings
	}{
		{"Engineer has seen run-out and clearance", true}, {"Foreman has all readings", true}, {"Engineer has every reading", true}, {"Clearances are written down and accepted", true},
		{"Engineer has signed the readings as found", true}, {"Readings are taken and signed", true},
		{"Engineer is told before anything is measured", false}, {"Gauges for the readings have been checked for their date", false}, {"Rotor on its stands", false},
		{"Engineer has named the limits in writing", false}, {"Permit signed, locks on", false}, {"Lift supervisor has seen the slings", false}, {"Machine stands still", false},
		{"The engineer has chosen the source for D1", false}, {"Rotor set on its stands, gaps in the timbers closed", false}, {"Crane driver has seen the clearances under the load", false}, {"Engineer has read the manual; readings follow", false},
		{"Safety has seen the clearance certificate", false}, {"Supervisor has signed the clearance to work", false}, {"Clearance to start is given; the permit office has signed the clearance", false}, {"Operations has accepted the clearance", false},
		{"Safety officer has signed the clearances", false}, {"The safety engineer has signed all clearances", false}, {"Clearances are signed by the safety officer", false}, {"Permit office has accepted both clearances", false},
		{"Operations has signed all the clearances", false}, {"Shift supervisor has signed the clearances", false}, {"Control room has accepted the clearances", false}, {"Clearances to work are signed and read", false},
		{"Engineer has signed the clearances for hot work", false}, {"Foreman has all clearance papers", false}, {"Foreman has the clearances from operations", false}, {"Foreman has seen the entry clearances", false},
		{"Safety has checked all clearances", false}, {"The issuing authority has signed the clearances", false}, {"Area authority signs the clearances", false}, {"Clearances have been issued and read out", false},
		{"Electrician has checked the clearances to live parts", false}, {"Clearances to the live line are measured", false}, {"Gas tester has signed the readings", false}, {"Oxygen readings are taken", false}, {"Fire watch has checked the gaps in the floor", false},
		{"Engineer has accepted the figures of the lift", false}, {"Safety officer has seen the measurements in the pit", false}, {"The electrical clearances have been taken and signed", false}, {"Site security has signed the clearances", false},
		{"Engineer has seen the isolation clearances", false}, {"Foreman has read the clearance certificates", false}, {"Gauge readings are written down", false}, {"HSE adviser has accepted the clearances", false}, {"Noise measurements are taken", false},
		{"Engineer has signed the clearances", true}, {"Safety officer has signed, the engineer has signed the clearances", true}, {"Engineer and safety officer have signed the clearances", true}, {"Inspector has accepted both clearances", true}, {"All clearances are taken and signed", true},
		{"Foreman has checked each clearance", true}, {"Clearances are measured and written down", true}, {"Shift engineer and fitter have seen the clearances", true},
		{"Gas readings are taken", false}, {"Shift leader has seen the readings of the gas test", false}, {"The oil readings have been taken in service", false}, {"Engineer has seen the figures of the earlier outage", false},
		{"Engineer has read the last readings of 2024", false}, {"Engineer has seen the vibration readings of the last run", false}, {"Engineer has seen the isolation, readings may start", false}, {"Engineer signs the permit, readings follow", false},
		{"Engineer has accepted the list of readings", false}, {"Planner has checked all figures of the order", false}, {"Engineer has seen that no oil has run out", false},
		{"Engineer accepts the clearances", true}, {"Engineer signs the readings", true}, {"Engineer has checked the run out", true}, {"Engineer has seen the run-outs", true}, {"Readings are taken and the pump may start", true}, {"Engineer sees all of the readings", true},
		{"Ingenieur hat die Spiele gesehen", false}, {"Shield on, thermometers on, puller loaded", false}, {"Nobody and nothing left in the vessel, tools counted", false},
	} {
		toldJust(t, "hold-early", heldText(c.what, "")+"PUT", []warned{{hold + read, c.told}, {read + hold, false}})
	}
}

// guardedPump is a coupling, its guard and the belt of a pump beside it.
const guardedPump = lawHead + `parts:
  guard: {name: Coupling guard, guard: yes}
  spacer: {name: PART}
  plug: {name: Plug}
containers: {C1: {name: Parts, kind: crate, keep: dry}}
steps:
  - section: All
    steps:
`

// Nothing of a coupling is moved under its guard, in any order. Common practice, no source.
func TestCouplingsAreWorkedOnWithTheGuardOff(t *testing.T) {
	t.Parallel()
	line := map[string]string{"off guard": "do: Guard off., remove: [guard], into: C1", "back guard": "do: Guard on., fit: [guard]", "off spacer": "do: Take it out., remove: [spacer], into: C1", "back spacer": "do: Put it in., fit: [spacer]"}
	names := map[string]bool{"Coupling spacer": true, "Coupling bolt": true, "Pump hub of the coupling": true, "Coupling half": true, "Coupling element": true, "Coupling bolt M14": true, "Flexible coupling sleeve": true,
		"Spacer": false, "Spacer of the impeller": false, "Cap bolt": false, "Pump half": false, "Coupling guard support": false, "Hose coupling": false, "Bearing nut": false, "Belt": false, "Kupplungsbolzen": false, "Half coupling": false,
		"Oil pump coupling bolt": true, "Load side coupling bolt": true, "Coupling guard bolt": false, "Bolt of the coupling guard, half": false, "Hose coupling nut": false, "Pipe coupling half": false, "Quick coupling nut": false, "Quick-release coupling pin": false, "Coupling oil pipe nut": false}
	list := make([]string, 0, len(names))
	for n := range names {
		list = append(list, n)
	}
	slices.Sort(list)
	toldWhere(t, "guard-on", func(t *rapid.T) (string, bool) {
		name := rapid.SampledFrom(list).Draw(t, "name")
		order := anyOrder(t, "off guard", "back guard", "off spacer", "back spacer")
		at := func(act string) int { return slices.Index(order, act) }
		under := func(act string) bool { return at(act) < at("off guard") || at(act) > at("back guard") }
		return strings.Replace(guardedPump, "PART", name, 1) + stepLines(order, line), names[name] && (under("off spacer") || under("back spacer"))
	})
}

// Two couplings with a guard each, a part that says what it is behind, and a guard that stays
// are left to their author.
func TestGuardsThatAreNotKnownApart(t *testing.T) {
	t.Parallel()
	const steps = "steps:\n  - section: All\n    steps:\n      - {step: a, do: Take it out., remove: [spacer], into: C1}\n      - {step: b, do: Guard off., remove: [guard], into: C1}\n"
	const rest = "containers: {C1: {name: Parts, kind: crate, keep: dry}}\n"
	part := func(lines string) string { return "parts:\n" + lines + rest + steps }
	toldJust(t, "guard-on", lawHead+"PUT", []warned{
		{part("  guard: {name: Coupling guard, guard: yes}\n  spacer: {name: Coupling spacer}\n"), true},
		{part("  guard: {name: Guard over the coupling, guard: yes}\n  spacer: {name: Coupling spacer}\n"), true},
		{part("  guard: {name: Belt guard, guard: yes}\n  spacer: {name: V-belt}\n"), true},
		{part("  guard: {name: Chain guard, guard: yes}\n  spacer: {name: Drive chain}\n"), true},
		{part("  guard: {name: Coupling guard, guard: yes}\n  spacer: {name: Coupling spacer, behind: [pin]}\n  pin: {name: Pin}\n"), false},
		{part("  guard: {name: Coupling guard of the motor, guard: yes}\n  other: {name: Coupling guard of the gear, guard: yes}\n  spacer: {name: Coupling spacer}\n") + "      - {step: c, do: Guard off., remove: [other], into: C1}\n", false},
		{part("  guard: {name: Chain guard, guard: yes}\n  spacer: {name: Lifting chain}\n"), false},
		{part("  guard: {name: Chain guard, guard: yes}\n  spacer: {name: Load chain}\n"), false},
		{part("  guard: {name: Chain guard, guard: yes}\n  spacer: {name: Hoist chain}\n"), false},
		{part("  guard: {name: Belt guard, guard: yes}\n  spacer: {name: Conveyor belt}\n"), false},
		{part("  guard: {name: Belt guard, guard: yes}\n  spacer: {name: Safety belt}\n"), false},
		{part("  guard: {name: Belt guard, guard: yes}\n  spacer: {name: Fan belt}\n"), true},
		{part("  guard: {name: Coupling guard, guard: yes, behind: [spacer]}\n  spacer: {name: Coupling cover}\n"), false},
		{part("  guard: {name: Coupling guard, guard: yes}\n  spacer: {name: Coupling cover}\n"), true},
		{part("  guard: {name: Coupling guard, guard: yes}\n  spacer: {name: Coupling cover, of: guard}\n"), false},
		{part("  guard: {name: Fan guard, guard: yes}\n  spacer: {name: Coupling spacer}\n"), false},
		{part("  guard: {name: Coupling cover}\n  spacer: {name: Coupling spacer}\n"), false},
		{part("  guard: {name: Coupling guard, guard: yes}\n  spacer: {name: Coupling drawing holder}\n"), false},
		{part("  guard: {name: Belt guard, guard: yes}\n  spacer: {name: Coupling spacer}\n"), false},
	})
}
