package packs_test

import "testing"

// housing is a machine of one part, lockedHousing one whose motor is locked out.
const (
	housing       = lawHead + "parts:\n  housing: {name: Housing}\n"
	lockedHousing = housing + `isolations:
  motor: {point: Breaker 12, energy: "electric, 400 V", state: racked out, proved: tried}
`
)

// The pump of a tensioner, a bearing in an oven, oil that runs and a tried start were told as a
// machine that runs behind its locks; a run in minutes or by another word was not.
func TestWhatRunsByItsWords(t *testing.T) {
	t.Parallel()
	toldJust(t, "runs-locked", lockedHousing+`
steps:
  - section: Run
    steps:
      - {step: lock, do: Lock the pump out., lock: [motor]}
      - {step: run, do: "PUT"}
      - {step: back, do: Take the lock off., unlock: [motor]}
`, []warned{
		{"Start the pump.", true},
		{"Start up the pump.", true},
		{"Now start the pump.", true},
		{"Start pump, look at the gland.", true},
		{"Everybody clear, start the pump.", true},
		{"Switch the motor on.", true},
		{"Switch on the motor.", true},
		{"Run the pump ten minutes.", true},
		{"Run the pump 30 min.", true},
		{"Run the pump for 2 h.", true},
		{"Run it for several hours.", true},
		{"Couple it and run the pump for half an hour.", true},
		{"Run one hour empty.", true},
		{"Run the machine empty, flush it, switch it off.", true},
		{"Run it empty for two hours.", true},
		{"Everybody clear, run the fan up to speed.", true},
		{"Couple it and run it at full speed.", true},
		{"Run the motor uncoupled, look which way it turns.", true},
		{"Never run the pump empty.", false},
		{"Do not run it unloaded.", false},
		{"Run the tank empty.", false},
		{"Run it up to the shoulder.", false},
		{"Run the mill file over the burr.", false},
		{"Run it empty-handed to the store.", false},
		{"Start the pump of the hydraulic tensioner.", false},
		{"Run it for one hour in the oven.", false},
		{"Let the wash oil run for 10 minutes.", false},
		{"Start the motor: it must not turn.", false},
		{"Start the motor bolts by hand.", false},
		{"Run the nut up by hand.", false},
		{"Ready to start the pump again tomorrow.", false},
		{"Run it up to speed on the balancing machine.", false},
		{"Run the pump empty with the hand pump.", false},
		{"Run it empty of water through the drain.", false},
		{"Run the machine idle wheel by hand.", false},
		{"Run it at low speed on the lathe.", false},
		{"Run the gearbox empty into the drum.", false},
		{"Run the pump empty through its drain.", false},
		{"Run it at half speed with the barring gear.", false},
		{"Run the motor idle on the test stand.", false},
		{"Run it empty of oil.", false},
		{"Run the mixer empty by hand.", false},
		{"Run it up to speed, look at the gland.", true},
		{"Run the pump empty.", true},
		{"Run it idle and listen.", true},
		{"Run the fan at low speed with the door shut.", true},
		{"Run the gearbox unloaded with the covers on.", true},
	})
}

// What runs was read above the line of the same step that takes the locks off, or below the one
// that puts them on again, and nothing was told.
func TestWhatRunsIsReadBetweenTheLocks(t *testing.T) {
	t.Parallel()
	toldJust(t, "runs-locked", lockedHousing+`
instruments:
  meter: {name: Meter, range: 0 to 20 mm/s, reads: 0.1 mm/s}
dimensions:
  D1: {what: Vibration at full speed, kind: condition, of: {housing: top}, by: meter, found: not taken, left: at most 4.5 mm/s, over: stop it, source: sheet}
  D2: {what: Lever to its stop at full speed, kind: condition, of: {housing: stop}, by: meter, found: not taken, left: at most 4.5 mm/s, over: set it, source: sheet}
steps:
  - section: Run
    steps:
      - {step: lock, do: Lock the pump out., lock: [motor]}
      - {step: run, do: Read it., PUT}
      - {step: back, do: Take the lock off., unlock: [motor]}
`, []warned{
		{"unlock-for-now: [motor], set: [D1], lock-again: [motor]", false},
		{"set: [D1], unlock-for-now: [motor], lock-again: [motor]", true},
		{"unlock-for-now: [motor], lock-again: [motor], set: [D1]", true},
		{"set: [D1]", true},
		{"set: [D2], unlock-for-now: [motor], lock-again: [motor]", false},
	})
}

// A number of people that there may be at most was told as wanted; fitters, technicians and a
// two-man job were not.
func TestPeopleWantedByWords(t *testing.T) {
	t.Parallel()
	toldJust(t, "people-in-words", housing+`
steps:
  - section: Turn
    steps:
      - {step: turn, do: "PUT"}
`, []warned{
		{"Two people turn the shaft.", true},
		{"Two fitters turn the shaft.", true},
		{"Three technicians hold it.", true},
		{"Two-man job: turn the shaft.", true},
		{"Never alone: two people turn the shaft.", true},
		{"Not more than four people in the pit.", false},
		{"At most three people on the stage.", false},
		{"Never let four people on the stage.", false},
		{"Up to six men fit on it.", false},
		{"A second man holds the shaft.", true},
		{"One of you at each end, turn the shaft.", true},
		{"A helper steadies the rod.", true},
		{"Turn it slowly. Two push the rod.", true},
		{"The third person chocks it.", true},
		{"A man on each side guides it.", true},
		{"One turns, one reads the run-out.", true},
		{"One bars it over and the other watches the dial.", true},
		{"One turns the shaft by hand, the other listens.", true},
		{"Two dials: one reads up, one reads down.", false},
		{"One turns left, one turns right.", false},
		{"One turn, one reading.", false},
		{"Ten bolts out, two hold the housing.", false},
		{"Wedges, one at each side.", false},
		{"One at each end.", false},
		{"Turn the second screw.", false},
		{"The second person reads the dial.", true},
		{"No helper holds it.", false},
		{"If a second man is there, all the better.", false},
		{"Two turns of the nut.", false},
		{"Take the two push rods out.", false},
		{"Mate the faces.", false},
		{"Two guide pins guide it.", false},
		{"Two push rods come off.", false},
		{"Two pull rods: take both off.", false},
		{"Two steady pins keep it.", false},
		{"Two push buttons: press both.", false},
		{"Three pull rods hold the cover.", false},
		{"The second mechanic signs.", false},
		{"Have a second mechanic check it.", false},
		{"A second man is not needed.", false},
		{"The helper stands clear.", false},
		{"The helper stands back.", false},
		{"Two guide studs stay in.", false},
		{"Three carry handles are on it.", false},
		{"The second person countersigns the sheet.", false},
		{"A second man who checks is at the desk.", false},
		{"Two steady rests under the shaft.", false},
		{"Two guide the rod.", true},
		{"Three carry it.", true},
		{"Two pull both ropes.", true},
		{"The helper stands at the far end.", true},
	})
}
