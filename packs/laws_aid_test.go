package packs_test

import (
	"strings"
	"testing"
)

// A rotor on jacks that is lifted by a plate bolted to its shaft end; WITH is the state in which D1
// is read.
const plateRotor = `pack: 1
equipment: {tag: VM-9, name: Well motor}
job: {number: WO-77, title: Rotor out, revision: A, issued: 2026-03-02}
parts:
  rotor: {name: Rotor, mass: 480 kg}
  housing: {name: Housing}
  key: {name: Shaft key, count: 1}
  plate: {name: Lifting plate, count: 1, aid: yes, mass: 20 kg}
  bolt: {name: Plate bolt M24, count: 4, aid: yes}
  jack: {name: Rotor jack, count: 3, aid: yes}
instruments:
  dial: {name: Dial, range: 0 to 10 mm, reads: 0.01 mm}
joints:
  J1: {what: Plate bolts, parts: bolt, torque: 300 N·m, source: maker's sheet 1}
dimensions:
  D1: {what: Rotor lifted off its pads, kind: float, from: {rotor: pads}, to: {housing: seat}, by: dial, lost-by: [key], WITH, found: record to 0.01 mm}
containers:
  C1: {name: Key, kind: bag, keep: oiled}
lay-down:
  Y1: {what: Stand}
big:
  B1: {part: rotor, support: stand, keep: covered}
isolations:
  motor: {point: Breaker 3-1, energy: electric, state: racked out, proved: tested dead}
permits:
  work: {what: Work permit}
gear:
  chain: {what: Chain leg 2 t, kind: chain, rated: 2 t, mass: 6 kg}
  shackle: {what: Shackle 2 t, kind: shackle, rated: 2 t, mass: 1 kg}
cranes:
  house: {what: House crane, rated: 3 t, high-hook: 6 m}
lifts:
  L1:
    what: Rotor
    parts: [rotor, plate]
    rig: bridle
    origin: eye of the plate, x to the north
    mass: 500 kg
    mass-from: weighed
    mass-source: ticket 3
    mass-within: 2 %
    centre: [0 mm, 0 mm, -800 mm]
    centre-within: 3 mm
    size: {from: [-300 mm, -300 mm, -1600 mm], to: [300 mm, 300 mm, 50 mm]}
    rated-by: EN
    lifting-points: {eye: {rated: 1 t, flattest: 45°, source: drawing 4}}
    legs:
      north: {pick: [200 mm, 0 mm, 0 mm], takes: eye, sling: chain, hitch: straight, gear: shackle}
      south: {pick: [-200 mm, 0 mm, 0 mm], takes: eye, sling: chain, hitch: straight, gear: shackle}
    hook-height: 700 mm
    leg-error: 3 mm
    crane: house
    pass-over: 500 mm
    stack: 200 mm
    temperatures: 5 to 40 C
    lay-down: Y1
    crew: [person in charge, crane driver]
steps:
  - section: Rotor
    steps:
`

// rotorJob writes steps by their keys, and the put-back.
func rotorJob(with string, keys ...string) string {
	line := map[string]string{
		"permit":  "do: Bring the permit., permit: [work]",
		"signed":  "do: Sign the permit off., permit: [work], hand-back: [work]",
		"lock":    "do: Make it safe., lock: [motor]",
		"jacks":   "do: Set the jacks., fit-for-now: [jack]",
		"read":    "do: Read how far it lifts., measure: [D1]",
		"key":     "do: Take the key out., remove: [key], into: C1",
		"plate":   "do: Bolt the plate on., fit-for-now: [plate, bolt], tighten: [J1]",
		"hand":    "do: Put the plate on., fit-for-now: [plate, bolt]",
		"tight":   "do: Tighten its bolts., tighten: [J1]",
		"early":   "do: Bolt the plate on., tighten: [J1], fit-for-now: [plate, bolt]",
		"out":     "do: Lift the rotor out., lift: [L1], remove: [rotor], into: Y1",
		"off":     "do: Take plate and jacks away., loosen: [J1], take-out-again: [bolt, plate, jack]",
		"plucked": "do: Take plate and jacks away., take-out-again: [bolt, plate, jack], loosen: [J1]",
	}
	var b strings.Builder
	b.WriteString(strings.Replace(plateRotor, "WITH", with, 1))
	for _, k := range keys {
		b.WriteString("      - {step: " + k + ", " + line[k] + "}\n")
	}
	return b.String() + `  - section: Back
    steps:
      - {step: plate-back, do: Bolt the plate on., fit-for-now: [plate, bolt], tighten: [J1]}
      - {step: in, do: Lower the rotor in., lift: [L1], fit: [rotor], from: Y1}
      - {step: plate-away, do: Take the plate off., loosen: [J1], take-out-again: [bolt, plate]}
      - {step: key-back, do: Put the key in., fit: [key], from: C1}
      - {step: run, do: Take the lock off., unlock: [motor]}
`
}

// Each act of the plate, the jacks and the permit at its place is told of nothing; at another, of
// what would go wrong there. Common practice, no source.
func TestAnAidIsThereWhenItIsNeeded(t *testing.T) {
	t.Parallel()
	codes := []string{"lift-aid-off", "lift-aid-loose", "not-as-told", "permit-vain", "off-still", "off-already", "never-tightened", "not-in"}
	for _, c := range []struct{ steps, want string }{
		{"permit lock jacks read key plate out off", ""},
		{"lock permit jacks read key hand tight out off", ""},
		{"permit lock jacks read key out plate off", "lift-aid-off"},
		{"permit lock jacks read key hand out tight off", "lift-aid-loose"},
		{"permit lock jacks read key hand out off", "lift-aid-loose"},
		{"permit lock jacks read key early out off", "lift-aid-loose off-still"},
		{"permit lock jacks read key plate out plucked", "off-already"},
		{"permit lock read jacks key plate out off", "not-as-told"},
		{"lock jacks read key plate out off signed", "permit-vain"},
		{"permit lock jacks read key plate out off signed", ""},
	} {
		text := rotorJob("load: three jacks", strings.Fields(c.steps)...)
		if got := strings.Join(toldOf(text, codes...), " "); got != c.want {
			t.Errorf("%s: told %q, want %q", c.steps, got, c.want)
		}
	}
}

// Words of the state in which D1 is read, of another thing than the aid that ends with the same
// word: any word was let stand before it.
func TestAnotherThingThanTheAid(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		aid, with string
		told      bool
	}{
		{"Test weight", "load: own weight", false}, {"Test weight", "load: by the dead weight", false}, {"Test weight", "load: rotor weight", false}, {"Test weight", "load: its own weight", false},
		{"Blank flange", "with: suction flange on", false}, {"Dummy coupling", "with: coupling up", false}, {"Side load", "load: axial load", false}, {"Side load", "load: full load", false},
		{"Test weight", "load: the test weight", true}, {"Test weight", "load: weight on", true}, {"Blank flange", "with: blank flange on", true}, {"Dummy coupling", "with: the dummy coupling on", true},
		{"Side load", "load: side load", true}, {"Rotor jack", "with: housing cold, three rotor jacks up", true}, {"Rotor jack", "with: on its jacks", true},
	} {
		text := strings.Replace(rotorJob(c.with, "permit", "lock", "read", "jacks", "key", "plate", "out", "off"), "name: Rotor jack", "name: "+c.aid, 1)
		if strings.Contains(c.with, "cold") {
			text = strings.Replace(text, c.with, `with: "`+strings.TrimPrefix(c.with, "with: ")+`"`, 1)
		}
		if got := len(toldOf(text, "not-as-told")) > 0; got != c.told {
			t.Errorf("%s, %s: told %v, want %v", c.aid, c.with, got, c.told)
		}
	}
}

// Words of the state in which D1 is read, the jacks put in below it.
func TestAnAidThatAReadingWants(t *testing.T) {
	t.Parallel()
	for with, told := range map[string]bool{
		"load: three jacks": true, "load: jacks": true, "with: the jacks in": true, "with: on its jacks": true, "with: on the three jacks": true, "with: all jacks set": true,
		"with: jacks under": true, "load: \"four jacks, evenly\"": true, "with: rotor jacks tight": true, "with: \"housing cold, jacks up\"": true,
		"with: jacks out": false, "with: no jacks in": false, "with: without the jacks": false, "with: before the jacks": false, "with: jacks taken out": false,
		"with: jacks slack": false, "with: jacks away": false, "with: jacks removed": false, "with: not on its jacks": false, "with: after the jacks": false,
		"with: jack oil on": false, "with: jacking pump off": false, "with: rotor on its pads": false, "with: shaft pushed up": false, "load: 500 N each way": false,
		"with: weight off the jacks": false, "with: jacks clear": false, "with: a car jack handy": false, "with: rotor free": false, "with: jacks in as found": false,
		"with: housing open": false, "plane: jacks": false,
	} {
		text := rotorJob(with, "permit", "lock", "read", "jacks", "key", "plate", "out", "off")
		if got := len(toldOf(text, "not-as-told")) > 0; got != told {
			t.Errorf("%s: told %v, want %v", with, got, told)
		}
	}
}
