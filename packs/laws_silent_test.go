package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// A casing with its nuts, to be pressed apart by something that is no jacking screw.
const wedgedCasing = lawHead + `parts:
  casing: {name: Upper casing, mass: 20 kg, behind: [nut]}
  nut: {name: Joint nut, count: 4}
  aid: {name: PUT, aid: yes}
containers:
  C1: {name: Casing, kind: crate, keep: dry}
  C2: {name: Nuts, kind: box, keep: dry}
steps:
  - section: Open
    steps:
`

// Wedges, jacks and presses that go in to press a joint apart while its nuts are on were passed,
// as only jacking screws were known; those that hold, chock or carry are not told.
func TestPressedApartByAnyAid(t *testing.T) {
	t.Parallel()
	var cases []warned
	for _, c := range []struct {
		aid, words string
		told       bool
	}{
		{"Flange spreader", "Spread the joint by 3 mm", true},
		{"Wedge", "Drive the wedges in until the joint opens", true},
		{"Splitting wedges", "Wedge the casing off its spigot", true},
		{"Hydraulic jack", "Jack the halves apart", true},
		{"Bottle jack", "Jack the casing free of its seat", true},
		{"Arbor press", "Press the casing off", true},
		{"Crowbar", "Prise the casing loose", true},
		{"Toe jack", "Push the casing off the dowels", true},
		{"Wedge", "Chock the rotor with the wedge", false},
		{"Wedge", "Wedge the shaft so that it cannot turn", false},
		{"Hydraulic jack", "Set the jack under the casing and take the weight off the studs", false},
		{"Bottle jack", "Put the jack under the motor foot", false},
		{"Wedge", "Lay the wedges ready, and do not drive the casing off", false},
		{"Guide stud", "Push the casing off along the studs", false},
		{"Wedge", "Hold the coupling open with the wedge", false},
		{"Screw jack", "Jack up until it just carries", false},
		{"Screw jack", "Set the jack under the casing and take the nuts off the studs later", false},
		{"Wedge", "Drive the wedges under the casing so that its weight is off the studs", false},
		{"Bottle jack", "Jack under the casing until the slings come loose", false},
		{"Arbor press", "Set the press on to push the dowels loose", false},
		{"Wedge", "Set the wedges; drive the dowels free with a drift", false},
		{"Wedge", "Take the slings off, then wedge the casing off its spigot", true},
	} {
		steps := "      - {step: in, do: \"" + c.words + ".\", fit-for-now: [aid]}\n      - {step: nuts, do: Take the nuts off., remove: [nut], into: C2}\n" +
			"      - {step: away, do: Take the casing off., take-out-again: [aid], remove: [casing], into: C1}\n  - reverse: [Open]\n"
		cases = append(cases, warned{c.aid + ", aid: yes}\n" + strings.SplitN(wedgedCasing, "PUT, aid: yes}\n", 2)[1] + steps, c.told})
	}
	toldJust(t, "jacked-early", strings.SplitN(wedgedCasing, "PUT", 2)[0]+"PUT", cases)
}

// In any order it is told just where the wedge goes in with the nuts on.
func TestWedgedApartOnlyWhenNothingHolds(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"off nuts": "do: Take the nuts off., remove: [nut], into: C2",
		"wedge":    "do: Drive the wedge in until the joint opens., fit-for-now: [aid]",
		"look":     "do: Look at the joint.",
	}
	toldWhere(t, "jacked-early", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "off nuts", "wedge", "look")
		return strings.Replace(wedgedCasing, "PUT", "Wedge", 1) + stepLines(order, line) +
			"      - {step: away, do: Take the casing off., take-out-again: [aid], remove: [casing], into: C1}\n  - reverse: [Open]\n", slices.Index(order, "wedge") < slices.Index(order, "off nuts")
	})
}

const coveredSeat = lawHead + `parts:
  bearing: {name: Roller bearing}
  cover: {name: Bearing cover, behind: [screw]}
  screw: {name: Cover screw, count: 4}
  shaft: {name: Shaft}
containers:
  C1: {name: Bearing, kind: crate, keep: dry}
  C2: {name: Cover and screws, kind: box, keep: dry}
steps:
  - section: Bearing
    steps:
`

// What is seen clean, by its words, once the part lies on it.
func TestSeenCleanBeforeItIsCovered(t *testing.T) {
	t.Parallel()
	const off = "      - {step: off, do: Take cover and bearing off., remove: [screw, cover, bearing], into: {screw: C2, cover: C2, bearing: C1}}\n"
	const on = "      - {step: on, do: Put the bearing on., fit: [bearing]}\n      - {step: shut, do: Put the cover on., fit: [cover, screw]}\n"
	var cases []warned
	for _, c := range []struct {
		seen string
		late bool // told where it stands below
	}{
		{"bearing seat clean", true}, {"cover face clean and dry", true}, {"roller bearing seat clean", true}, {"seat of the bearing clean", true},
		{"clean cover face", true}, {"bearing cover faces clean", true}, {"groove under the cover clean and whole", true},
		{"floor clean", false}, {"shaft clean", false}, {"machine clean outside", false}, {"cover on, all screws in", false}, {"bearing turns freely", false},
		{"shaft seat clean", false}, {"cover clean outside", false}, {"no oil on the cover", false}, {"coupling seat clean", false}, {"seal faces clean", false},
		{"cover face wiped clean outside", false}, {"'cover face clean, no sealant squeezed out'", false}, {"'seal ring seated, cover faces clean and flush'", false}, {"bearing seat was clean when it went on", false},
	} {
		seen := "      - {step: look, do: Look., seen: [" + c.seen + "]}\n"
		cases = append(cases, warned{off + on + seen, c.late}, warned{off + seen + on, false})
	}
	toldJust(t, "seen-covered", coveredSeat+"PUT", cases)
	line := map[string]string{
		"off bearing": "do: Take the bearing off., remove: [bearing], into: C1", "back bearing": "do: Put the bearing on., fit: [bearing]",
		"look": "do: Look., seen: [bearing seat clean]", "other": "do: Wipe the bench.",
	}
	toldWhere(t, "seen-covered", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "off bearing", "back bearing", "look", "other")
		return strings.Replace(coveredSeat, "behind: [screw]", "note: stays off", 1) + stepLines(order, line), slices.Index(order, "look") > slices.Index(order, "back bearing")
	})
}

const pressedRing = lawHead + `parts:
  shaft: {name: Shaft}
  ring: {name: Seal ring}
  cover: {name: Cover}
containers:
  C1: {name: Ring, kind: box, keep: dry}
dimensions:
  D1: {what: Ring stand-off, kind: stand-off, from: {ring: face}, to: {shaft: end face}, nominal: 5.0 mm, left: as found +/- 0.10 mm, source: sheet}
steps:
  - section: Ring
    steps:
      - {step: off, do: Measure and take the ring off., measure: [D1], remove: [ring], into: C1}
`

// A ring that the words of a step press home below its reading: what presses it has no verb.
func TestNothingIsPressedOnWhenItsReadingIsSet(t *testing.T) {
	t.Parallel()
	const on, set = "      - {step: on, do: Put the ring on., fit: [ring]}\n", "      - {step: set, do: Measure how far it stands., set: [D1]}\n"
	var cases []warned
	for _, c := range []struct {
		words string
		moves bool
	}{
		{"Press the ring home", true}, {"Tap the seal ring up to the shoulder", true}, {"Drive the ring home with the brass drift", true},
		{"Tap the ring home", true}, {"Hammer the ring on", true}, {"Draw the ring up to its shoulder", true}, {"Oil the seat, then press the ring hard against the shoulder", true},
		{"Press the ring down", true},
		{"Oil the ring", false}, {"Look at the ring", false}, {"Push the shaft toward the motor", false}, {"Turn the shaft by hand", false},
		{"Press the test button", false}, {"Tap the cover to hear that it sits", false}, {"Drive the truck up", false}, {"Screw the gauge in", false}, {"Do not tap the ring", false}, {"Tap the ring on its rim and listen", false}, {"Press the ring in turn at four places with the gauge", false},
		{"Drive the ring on with the sleeve", true}, {"Press the ring in", true}, {"Draw the line on the ring against the rule", false},
	} {
		act := "      - {step: act, do: \"" + c.words + ".\"}\n"
		cases = append(cases, warned{on + set + act, c.moves}, warned{on + act + set, false}, warned{act + on + set, false})
	}
	toldJust(t, "pressed-after", pressedRing+"PUT", cases)
	line := map[string]string{"on": "do: Put the ring on., fit: [ring]", "press": "do: Press the ring home.", "set": "do: Measure it., set: [D1]", "wipe": "do: Wipe the shaft."}
	toldWhere(t, "pressed-after", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "on", "press", "set", "wipe")
		at := func(act string) int { return slices.Index(order, act) }
		return pressedRing + stepLines(order, line), at("on") < at("set") && at("set") < at("press")
	})
}

const shutCasing = lawHead + `parts:
  wheel: {name: Wheel, behind: [casing]}
  ring: {name: Wear ring}
  casing: {name: Casing, mass: 9 kg}
  plug: {name: Plug}
containers:
  C1: {name: Casing, kind: crate, keep: dry}
openings:
  box: {what: Casing, cover: boards, enclosed: yes}
permits:
  entry: {what: Entry permit}
dimensions:
  D1: {what: Ring clearance, kind: clearance, from: {wheel: neck}, to: {ring: bore}, nominal: 0.5 mm, left: 0.4 to 0.6 mm, source: sheetWITH}
steps:
  - section: Casing
    steps:
`

// In any order of opening, measuring and closing it is told just where the first reading stands
// above the opening and the last within it; how it is read with the casing on, if it says so.
func TestFirstReadingsAreTakenWithTheMachineOpen(t *testing.T) {
	t.Parallel()
	line := map[string]string{
		"off casing": "do: Lift the casing off by hand., remove: [casing], into: C1, open: [box], people: 2", "measure": "do: Measure the clearance., measure: [D1]",
		"set": "do: Measure it again., set: [D1]", "back casing": "do: Put the casing on., fit: [casing], close: [box], people: 2",
	}
	toldWhere(t, "read-shut", func(t *rapid.T) (string, bool) {
		with := rapid.SampledFrom([]string{"", ", with: read through the plug of the casing"}).Draw(t, "with")
		order := anyOrder(t, "off casing", "measure", "set", "back casing")
		at := func(act string) int { return slices.Index(order, act) }
		if at("set") < at("measure") {
			t.Skip("set before it is measured")
		}
		return strings.Replace(shutCasing, "WITH", with, 1) + stepLines(order, line),
			with == "" && at("measure") < at("off casing") && at("set") > at("off casing") && at("set") < at("back casing")
	})
}

// Whoever goes in on a permit goes in while something is open; a permit that is asked for in
// time, from outside, is left alone.
func TestNobodyGoesInWhereNothingIsOpen(t *testing.T) {
	t.Parallel()
	const open, shut = "      - {step: open, do: \"Lift the casing off by hand, two people.\", remove: [casing], into: C1, open: [box], people: 2}\n", "      - {step: shut, do: Put the casing on., fit: [casing], close: [box], people: 2}\n"
	text := strings.Replace(shutCasing, "WITH", "", 1)
	var cases []warned
	for _, c := range []struct {
		line string
		in   bool
	}{
		{"do: \"Go in, look at the welds.\"", true}, {"do: Climb into the casing., seen: [welds whole]", true}, {"do: Enter the casing and wipe it.", true},
		{"do: Crawl inside., seen: [nothing left inside]", true}, {"do: Measure the plates from inside.", true}, {"do: Look., seen: [nobody in the casing]", true},
		{"do: Hang the permit on the board.", false}, {"do: Test the air at the plug.", false}, {"do: Ventilate the casing through the plug.", false},
		{"do: Look at the casing from outside.", false}, {"do: Set the lamp and the rescue line ready.", false}, {"do: Brief the watch at the hatch.", false}, {"do: Test the air before anybody goes in.", false}, {"do: \"Nobody goes in, look from the rail.\"", false},
		{"do: Hang the lamp ready for whoever climbs in.", false}, {"do: \"If the air is bad, nobody gets in.\"", false}, {"do: \"Air tested, climb in and look.\"", true}, {"do: Slacken the casing bolts.", false},
		{"do: Measure oxygen inside the casing at the plug.", false}, {"do: Test the air from inside through the hose.", false}, {"do: \"Two go in later, one stays outside.\"", false},
		{"do: Get into the harness and check it.", false}, {"do: Go into the control room and sign the permit.", false}, {"do: Write what was found inside the casing on the permit.", false}, {"do: \"Person in charge, sign the permit.\"", false},
		{"do: \"Man in, look.\"", true}, {"do: Climb through the hole and look.", true}, {"do: Climb through the rail and look.", false}, {"do: \"Go down into it, look.\"", true}, {"do: \"Test the air, measure the plates from inside.\"", true},
		{"do: Take the plug out., remove: [plug], into: C1", false},
	} {
		act := "      - {step: act, " + c.line + ", permit: [entry]}\n"
		cases = append(cases, warned{act + open + shut, c.in}, warned{open + shut + act, c.in}, warned{open + act + shut, false})
	}
	for _, c := range []struct {
		do string
		in bool
	}{
		{"Crawl through the casing, look for tools.", true}, {"Climb into the casing and wipe it.", true}, {"One crawls inside the casing.", true}, {"Crawl into the casing, count the lamps.", true},
		{"Climb into the basket.", false}, {"Climb through the rail.", false}, {"Crawl through the gallery below the floor.", false}, {"Climb onto the casing.", false}, {"Crawl under the casing.", false},
		{"Nobody climbs into the casing.", false}, {"Climb in, look.", false}, {"Before anybody crawls into the casing, test the air.", false}, {"Look through the casing.", false}, {"Look into the casing from the rail.", false},
		{"Climb the ladder beside the casing.", false}, {"Drop the cover into the casing.", false}, {"The hose goes into the casing.", false}, {"Step back from the casing.", false},
		{"Climb through the casing and look.", true}, {"Crawl along the casing with the lamp.", true}, {"Climb into the casing from the platform.", true}, {"Climb down into the casing.", true}, {"Climb inside the casing by the ladder.", true},
		{"Two crawl through the casing to the far end.", true}, {"Crawl in the casing and sweep it.", true},
		{"Climb into the casing cage platform.", false}, {"Climb into the basket beside the casing.", false}, {"Crawl along the gallery below the casing.", false}, {"Climb through the railing at the casing.", false}, {"Climb into the casing scaffold.", false},
		{"Climb down the casing ladder.", false}, {"Crawl along the casing roof.", false}, {"Climb along the casing walkway.", false},
	} {
		act := "      - {step: act, do: \"" + c.do + "\"}\n"
		cases = append(cases, warned{act + open + shut, c.in}, warned{open + shut + act, c.in}, warned{open + act + shut, false})
	}
	toldJust(t, "entry-shut", text+"PUT", cases)
	line := map[string]string{
		"off casing": "do: Lift the casing off by hand., remove: [casing], into: C1, open: [box], people: 2", "in": "do: Climb into it., permit: [entry]",
		"back casing": "do: Put the casing on., fit: [casing], close: [box], people: 2", "other": "do: Sweep the floor.",
	}
	toldWhere(t, "entry-shut", func(t *rapid.T) (string, bool) {
		order := anyOrder(t, "off casing", "in", "back casing", "other")
		at := func(act string) int { return slices.Index(order, act) }
		return text + stepLines(order, line), at("in") < at("off casing") || at("in") > at("back casing")
	})
}
