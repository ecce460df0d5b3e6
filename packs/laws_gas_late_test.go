package packs_test

import (
	"slices"
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
		"Supervisor has seen the permit": false, "Luft gemessen und gut": false,
	} {
		toldJust(t, "gas-late", airText(what)+"PUT", []warned{{late, told}})
	}
}
