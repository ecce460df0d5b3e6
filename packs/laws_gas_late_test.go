package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// airVessel is a vessel that is entered on a permit, with a hold for what PUT says.
const airVessel = lawHead + `parts:
  manway: {name: Manway cover, mass: 12 kg}
  plate: {name: Wear plate}
instruments:
  gauge: {name: Thickness gauge, range: 2 to 50 mm, reads: 0.1 mm}
dimensions:
  D1: {what: Thickness of the plate, kind: thickness, of: {plate: middle}, by: gauge, found: at least 6.0 mm, under: renew the plate, source: sheet 2}
  D2: {what: Oxygen at three heights, kind: condition, of: {plate: beside it}, nominal: 20.9 %, found: record to 0.1 %}
containers: {C1: {name: Manway cover, kind: crate, keep: dry}}
openings: {vessel: {what: Manway of the vessel, cover: bar with chain, enclosed: yes}}
permits: {entry: {what: Entry permit, for: entry}}
`

var airLine = map[string]string{
	"manway": "do: Take the manway cover off., permit: [entry], remove: [manway], into: C1, open: [vessel]",
	"air":    "do: Read it., hold: W1", "plate": "do: Measure the plate from inside., permit: [entry], measure: [D1]",
	"oxygen": "do: Read the oxygen., permit: [entry], measure: [D2]", "again": "do: Read it again., hold: W2",
	"shut": "do: Put the manway cover on., fit: [manway], from: C1, close: [vessel]",
}

func airText(what string) string {
	return airVessel + "holds:\n  W1: {kind: hold, what: \"" + what + "\", releases: entry supervisor}\n  W2: {kind: hold, what: Gas read again, releases: entry supervisor}\nsteps:\n  - section: All\n    steps:\n"
}

// The air within is read before anybody works inside, in any order of the steps; a reading of the
// air is taken from outside. Common practice, no source.
func TestTheAirIsReadBeforeAnybodyWorksInside(t *testing.T) {
	t.Parallel()
	toldWhere(t, "gas-late", func(t *rapid.T) (string, bool) {
		order := []string{"manway", "oxygen", "plate", "shut"}
		at := rapid.IntRange(0, len(order)).Draw(t, "hold stands at")
		order = slices.Insert(order, at, "air")
		return airText("Gas and oxygen read at three heights") + stepLines(order, airLine), at > 2
	})
	toldJust(t, "gas-late", airText("Gas and oxygen read at three heights")+"PUT", []warned{
		{stepLines([]string{"manway", "air", "plate", "again", "shut"}, airLine), false}, // for a later entry
		{stepLines([]string{"manway", "plate", "air", "again", "shut"}, airLine), true},
		{strings.Replace(stepLines([]string{"manway", "plate", "shut"}, airLine), "measure: [D1]", "measure: [D1], hold: W1", 1), true}, // the hold of a step is printed below its work
		{strings.Replace(stepLines([]string{"manway", "oxygen", "plate", "shut"}, airLine), "measure: [D2]", "measure: [D2], hold: W1", 1), false},
		{stepLines([]string{"plate", "air", "manway", "shut"}, airLine), false}, // nothing open: another law tells
	})
}

// Ordinary words of holds, released when the plate has been measured inside.
func TestWordsOfHoldsForTheAir(t *testing.T) {
	t.Parallel()
	late := stepLines([]string{"manway", "plate", "air", "shut"}, airLine)
	for what, told := range map[string]bool{
		"Gas read at three heights, air blown in, attendant at the manway": true, "Air tested and good": true, "Gas tested": true, "Gas test signed": true, "Atmosphere is safe to breathe": true,
		"The vessel is gas-free": true, "Vessel may be entered": true, "Spiral drained, gas tested": true, "Oxygen has been measured": true, "Ready for entry": true, "Air proved good by the meter": true, "Tank is ready to enter": true,
		"Nobody and nothing left in the vessel, tools counted": false, "Engineer has seen the plate": false, "Air gap measured at eight places": false, "Air filters measured and accepted": false, "Instrument air tested": false,
		"Starting air pressure tested": false, "Gas side clearance read": false, "Air cooler pressure tested": false, "Gas seal tested on the bench": false, "Gas cylinders clear of the bay": false, "Engineer may enter the hall": false,
		"Air line blown clear": false, "Fuel gas proved shut": false, "Locks on, drain open and dry": false, "Lift plan read": false, "Compressed air tested and off": false, "Gas engine read at rest": false, "Forms of both gas cylinders read": false,
		"Supervisor has seen the permit": false,
		"Air heater seals measured":      false, "Air preheater sector plate clearances have been read": false, "Air inlet vanes measured": false, "Gas compressor clearances read": false, "Gas turbine blade clearances have been measured": false,
		"Gas cooler pressure tested": false, "Air ducts clear": false, "Air nozzles clear and counted": false, "Gas detector tested": false, "Tubes tested with air, tight and good": false,
		"Tubes tested with air and good": false, "Tubes filled with air are checked": false, "Oxygen measured with the gas meter": true, "Air bottles checked": false, "Gas meter checked": false, "Gas inlet flange clear": false, "Air gap within limits": false, "Gas temperature within limits": false, "Flue gas measured": false, "Tubes tested for gas leaks": false,
		"Air test of the cooler tubes signed": false, "Gas proved shut": false, "Air vent clear": false, "Readings may be entered in the log": false, "Gas burner tested, flame good": false, "Gas tester is named": false, "Breathing air checked": false,
		"O2 and LEL within limits": true, "LEL checked": true, "Oxygen within limits": true, "Tested for gas": true, "Atmosphere checked by the gas tester": true, "Air checked inside": true, "Cleared for entry": true, "Safe for entry": true,
		"Safe to enter": true, "Fit for entry": true, "Entry released": true, "Confined space free of gas": true, "Air in the vessel tested": true, "Oxygen 20.9 %": true, "LEL below 10 %": true, "Gas, oxygen and vapours measured": true,
		"Instrument air tested, gas tested": true, "Air filters measured; the gas is tested": true, "Vessel clear to enter": true, "Gas inside the tank has been read": true, "Atmosphere at three levels checked": true, "Tank checked for gas by the supervisor": true, "Entry is allowed": true, "Luft gemessen und gut": false,
	} {
		toldJust(t, "gas-late", airText("PUT")+late, []warned{{what, told}})
	}
}

// A part with air in its name that is seen before hides no hold of the air that comes late.
func TestOtherAirHidesNoLateHold(t *testing.T) {
	t.Parallel()
	text := strings.Replace(airText("Air heater seals measured"), "Gas read again", "Gas tested at three heights", 1) + "PUT"
	toldJust(t, "gas-late", text, []warned{
		{stepLines([]string{"air", "manway", "plate", "again", "shut"}, airLine), true},
		{stepLines([]string{"air", "manway", "again", "plate", "shut"}, airLine), false},
	})
}
