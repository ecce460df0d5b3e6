package packs_test

import "testing"

// boltedCover is a cover behind its nuts, with a reading on it and a lock.
const boltedCover = lawHead + `parts:
  shaft: {name: Shaft}
  cover: {name: Bearing cover, behind: [nut]}
  nut: {name: Cover nut, count: 4}
containers: {C1: {name: Cover, kind: crate, keep: dry}}
joints: {J1: {what: Cover nuts, parts: [nut], torque: 60 N·m, source: sheet 2}}
tools: {wrench: {what: Torque wrench, size: 20 to 100 N·m}}
isolations: {motor: {point: Breaker 12, energy: electric, state: racked out, proved: no answer}}
dimensions:
  D1: {what: Gap, kind: gap, from: {cover: face}, to: {shaft: face}, nominal: 5.0 mm, left: 4.0 to 6.0 mm, source: sheet 2}
steps:
  - section: All
    steps:
`

// The words of a step are done from the first to the last; what they say is done first, already
// or at another time is done then. Common practice, no source.
func TestWordsTellWhatIsDoneFirstFirst(t *testing.T) {
	t.Parallel()
	const back = "      - {step: back, do: Close it., fit: [cover, nut], tighten: [J1], set: [D1]}\n"
	var cases []warned
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"Lift the cover off. Slacken the nuts.", true}, {"Take the cover off, take the nuts out.", true}, {"Pull the cover off. Undo all nuts. Wipe it.", true}, {"Remove the nuts last. Take the cover off.", false},
		{"Lift the cover off with a lever. Loosen its nuts.", true}, {"No lever on the joint. Lift the cover off. Slacken the nuts.", true},
		{"Slacken the nuts. Lift the cover off.", false}, {"Nuts off, cover off.", false}, {"Take the nuts off, lift the cover off.", false}, {"Take the cover off; its nuts come out first.", false},
		{"Take the cover off with its nuts.", false}, {"Take the cover off, keep the nuts.", false}, {"Take the cover off. When the nuts are slack it comes by itself.", false}, {"Cover off.", false},
		{"Take the cover off: four nuts.", false}, {"Nuts already slack: take the cover off, take the nuts out of the box.", false}, {"Deckel abnehmen, Muttern lösen.", false}, {"Take the cover off, nuts into its box.", false},
		{"Lift the cover off. Do not loosen the nuts of the pipe.", false},
		{"To take the cover off, slacken the nuts crosswise.", false}, {"Take the cover off: slacken the nuts crosswise, lift it.", false}, {"Take the cover off as follows: Slacken the nuts. Lift it.", false}, {"The cover comes off: slacken its nuts, and lift.", false},
		{"Take the cover off like this: slacken the nuts, lift.", false}, {"Get ready to lift the cover off. Slacken the nuts.", false}, {"Take the dust off the cover. Slacken the nuts.", false}, {"Draw the pipe out from under the cover. Slacken the nuts.", false}, {"Lift the hose off the cover, slacken the nuts, cover off.", false},
		{"Take the washers and the cover off. Slacken the nuts.", true}, {"Take hold of the cover. Take the nuts out. Lift it off.", false}, {"Take the weight of the cover on the hoist. Take the nuts out. Lift it off.", false},
		{"Lift the cover by 1 mm. Take the nuts out. Lift it off.", false}, {"Carry the hoist to the cover. Loosen its nuts. Lift it off.", false}, {"Lift the lamp over the cover. Slacken the nuts. Cover off.", false},
	} {
		cases = append(cases, warned{"      - {step: act, do: \"" + c.words + "\", loosen: [J1], remove: [nut, cover], into: C1}\n" + back, c.told})
	}
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"Tighten the nuts. Put the cover on.", true}, {"Torque all nuts, then push the cover home.", true}, {"Put the cover on. Tighten the nuts.", false}, {"Cover on, nuts tight.", false},
		{"Tighten the nuts when the cover is on.", false}, {"Cover on and nuts tight.", false}, {"Tighten the nuts of the pipe first. Put the cover on.", false}, {"Nuts by hand, cover on.", false},
	} {
		cases = append(cases, warned{"      - {step: off, do: Take it off., loosen: [J1], remove: [nut, cover], into: C1}\n      - {step: act, do: \"" + c.words + "\", fit: [cover, nut], tighten: [J1]}\n", c.told})
	}
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"Take the cover off. Measure the gap.", true}, {"Lift the cover off, measure the gap to the shaft.", true}, {"Nuts and cover: take the cover off, feel the gap.", true},
		{"Measure the gap. Take the cover off.", false}, {"Take the cover off when the gap has been measured.", false}, {"Take the cover off. The gap is measured before.", false},
		{"Measure the gap, take the cover off, measure again.", false}, {"Read the gap, then cover off.", false}, {"Cover off.", false}, {"Push the rotor until it stands. Take the cover off. Measure the gap.", true}, {"Take the cover off the hook, measure the gap first.", false},
		{"Pull the cover back against its stop, out of its float. Measure.", false}, {"Take the dirt off the cover, then measure.", false}, {"Push the cover out against its stop, measure, lift it away.", false}, {"Screw the plug in the cover out, measure.", false},
		{"Pull the cover to and fro and measure.", false}, {"Take the paint off the rim of the cover, measure.", false}, {"Take the bolts out of the cover, measure.", false}, {"To take the cover off you need a measure of the gap.", false}, {"Push a feeler in behind the cover, measure.", false}, {"Take the cover out of its seat. Measure the gap.", true},
	} {
		cases = append(cases, warned{"      - {step: act, do: \"" + c.words + "\", measure: [D1], loosen: [J1], remove: [nut, cover], into: C1}\n" + back, c.told})
	}
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"Press the start button. Lock the breaker.", true}, {"Try to start, then rack the breaker out.", true}, {"Press start, shut the valve, lock both.", true},
		{"Lock the breaker. Press the start button.", false}, {"Press the start button again after the lock is on.", false}, {"Press the start button, lock the breaker, press the start button.", false},
		{"Lock it out, try to start.", false}, {"Try to start. Wait until the rotor stands. Lock the breaker.", true}, {"Press the start button (no answer). Lock the breaker.", true}, {"Shut the valve. Press the start button. Lock the breaker.", false},
		{"Press the start button only when it is locked. Rack it out.", false}, {"Never press start here. Lock the breaker.", false}, {"Isolated by the shift: try to start, put your own lock on.", false}, {"Stop it with the stop button, lock it.", false}, {"Before the start is tried: lock the breaker.", false}, {"Start button marked. Lock the breaker.", false},
		{"Open the breaker. Press start, nothing turns. Hang the lock on.", false}, {"Open the breaker, try the start, then lock it.", false}, {"Try it with the stop button. Lock it out.", false}, {"Switch it off, press start, lock it.", false}, {"Pull the fuses. Press start: nothing happens. Lock the box.", false},
		{"Press start, nothing turns. Lock the breaker.", true}, {"Open the cabinet. Press start. Lock the breaker.", true}, {"Switch the pump off. Try to start, rack it out.", false}, {"Open both isolators, try to start, lock both.", false},
		{"Put the switch to off, try to start, hang the lock on.", false}, {"Take the fuses out, try to start, lock.", false}, {"Try it for size: lock through the hasp.", false},
	} {
		cases = append(cases, warned{"      - {step: act, do: \"" + c.words + "\", lock: [motor]}\n", c.told})
	}
	toldJust(t, "said-backwards", boltedCover+"PUT", cases)
}
