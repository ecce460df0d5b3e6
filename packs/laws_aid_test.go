package packs_test

import (
	"slices"
	"strings"
	"testing"

	"matchmark/packs/source"
)

// A rotor on jacks that is lifted by a plate bolted to its shaft end; WITH is the state in which D1
// is read, BLANK and BOLTS a blank flange elsewhere and its joint.
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
BLANKinstruments:
  dial: {name: Dial, range: 0 to 10 mm, reads: 0.01 mm}
joints:
  J1: {what: Plate bolts, parts: bolt, torque: 300 N·m, source: maker's sheet 1}
BOLTSdimensions:
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
		"slack":   "do: Loosen its bolts to turn the plate., loosen: [J1]",
		"blank":   "do: Put the blank on the oil pipe., fit-for-now: [blank, gbolt]",
		"plucked": "do: Take plate and jacks away., take-out-again: [bolt, plate, jack], loosen: [J1]",
	}
	var b strings.Builder
	blank, bolts := "", ""
	if slices.Contains(keys, "blank") {
		blank = "  gbolt: {name: Blank bolt M12, count: 4, aid: yes}\n  blank: {name: Blank flange, count: 1, aid: yes}\n"
		bolts = "  J2: {what: Blank bolts, parts: gbolt, torque: 30 N·m, source: maker's sheet 1}\n"
	}
	b.WriteString(strings.NewReplacer("WITH", with, "BLANK", blank, "BOLTS", bolts).Replace(plateRotor))
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
		{"permit lock jacks read key plate slack out off", "lift-aid-loose"},
		{"permit lock jacks read key blank plate out off", ""},
	} {
		text := rotorJob("load: three jacks", strings.Fields(c.steps)...)
		if got := strings.Join(toldOf(text, codes...), " "); got != c.want {
			t.Errorf("%s: told %q, want %q", c.steps, got, c.want)
		}
	}
}

// A step without a verb may be the work that its permit is for; only the paper alone is told of.
// Common practice, no source.
func TestAPermitAskedForInVain(t *testing.T) {
	t.Parallel()
	const asked = ", permit: [work], hand-back: [work]"
	for steps, want := range map[string]bool{
		"do: Sign the permit off." + asked:                                                 true,
		"do: Return the work permit to the control room." + asked:                          true,
		"do: Sign the permit and hand it back." + asked:                                    true,
		"do: The permit is signed off." + asked:                                            true,
		"do: Fetch the permit., permit: [work]}\n      - {do: Sign it." + asked:            true,
		"do: Fetch the permit., permit: [work]}\n      - {do: Sign it., hand-back: [work]": true,
		"do: Run the motor for an hour at full load and watch it." + asked:                 false,
		"do: Weld the guard bracket on." + asked:                                           false,
		"do: Weld the guard bracket on and hand the permit back." + asked:                  false,
		"do: Pump the jacket up to 10 bar and watch it for 30 minutes." + asked:            false,
		"do: Close the oil pit and return the permit." + asked:                             false,
		"do: Paint the housing., hours: 3" + asked:                                         false,
		"do: Sign the permit off., hours: 1" + asked:                                       false,
		"do: Sign the permit off., people: 2" + asked:                                      false,
		"do: Sign the permit off., check: supervisor" + asked:                              false,
		"do: Sign the permit off., photo: yes" + asked:                                     false,
		"do: Sign the permit off., caution: [eyes]" + asked:                                false,
		"do: Fetch the permit., permit: [work]}\n      - {do: Weld the bracket on., hours: 1}\n      - {do: Sign the permit., hand-back: [work]": false,
	} {
		text := rotorJob("load: three jacks", "lock", "jacks", "read", "key", "plate", "out", "off") + "      - {" + steps + "}\n"
		if got := len(toldOf(text, "permit-vain")) > 0; got != want {
			t.Errorf("%s: told %v, want %v", steps, got, want)
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

// A keyway that is jogged to the top is a warning, a rotor that cools until it is right is none; how
// a limit as found alone is asked about is told in its own unit. Common practice, no source.
func TestWhatIsSetAboveTheLocks(t *testing.T) {
	t.Parallel()
	const (
		angle = "{what: Angle of the keyway, kind: angle, of: {rotor: keyway}, found: not taken, left: 0 to 5 °, source: maker's sheet 2}"
		warm  = "{what: Rotor temperature, kind: temperature, of: {rotor: core}, nominal: 40 °C, LIMIT, source: maker's sheet 2}"
		tries = ", tries: 4, still-out: Tell the supervisor."
	)
	left, found := strings.Replace(warm, "LIMIT", "found: not taken, left: at most 80 °C", 1), strings.Replace(warm, "LIMIT", "found: at most 80 °C", 1)
	for _, c := range []struct{ dim, step, want string }{
		{angle, "do: Jog the rotor until its keyway is at the top., set: [D2]", "left-before warning"},
		{left, "do: Let it cool on turning gear., set: [D2]", "left-before warning"},
		{left, "do: Let it cool on turning gear., set: [D2], until: D2 is in limits" + tries, ""},
		{found, "do: Let it cool on turning gear., measure: [D2], until: D2 is under 80 °C" + tries, ""},
		{found, "do: Let it cool on turning gear., measure: [D2], until: D2 is in limits" + tries, "no-verdict D2 is over … °C; D2 is under … °C"},
	} {
		text := rotorJob("load: three jacks", "permit", "lock", "jacks", "read", "key", "plate", "out", "off")
		text = strings.Replace(text, "\ncontainers:", "\n  D2: "+c.dim+"\ncontainers:", 1)
		text = strings.Replace(text, "    steps:\n", "    steps:\n      - {step: first, "+c.step+"}\n", 1)
		_, problems := loadLaw(text)
		var told []string
		for _, p := range problems {
			switch {
			case p.Severity == source.Warning:
				told = append(told, p.Code+" warning")
			default:
				told = append(told, p.Code+" "+strings.Join(p.Help, "; "))
			}
		}
		if got := strings.Join(told, " | "); got != c.want {
			t.Errorf("%s: told %q, want %q", c.step, got, c.want)
		}
	}
}

// An aid that hangs alone is the load: a puller goes to the shaft and away from it. Bolts are those
// of a plate at its own place. Common practice, no source.
func TestAnAidThatIsTheLoad(t *testing.T) {
	t.Parallel()
	at := strings.Index(plateRotor, "  L1:\n")
	lift := plateRotor[at:strings.Index(plateRotor, "steps:\n")]
	puller := strings.NewReplacer("L1:", "L3:", "what: Rotor", "what: Puller", "[rotor, plate]", "[puller]").Replace(lift)
	text := rotorJob("load: three jacks", "permit", "lock", "jacks", "read", "key", "plate", "out", "off")
	text = strings.Replace(text, "\ninstruments:", "\n  puller: {name: Puller, count: 1, aid: yes, mass: 500 kg}\ninstruments:", 1)
	text = strings.Replace(text, lift, lift+puller, 1)
	text = strings.Replace(text, "      - {step: key, ", "      - {do: Lift the puller to the shaft., lift: [L3]}\n      - {do: Put it on., fit-for-now: [puller]}\n"+
		"      - {do: Take it off., take-out-again: [puller]}\n      - {do: Lift the puller away., lift: [L3]}\n      - {step: key, ", 1)
	if got := toldOf(text, "lift-aid-off", "lift-aid-loose"); len(got) > 0 {
		t.Errorf("told %v of a puller that is the load", got)
	}
	if got := toldOf(strings.Replace(text, "parts: [puller]", "parts: [rotor, puller]", 1), "lift-aid-off"); len(got) == 0 {
		t.Error("not told of a puller that hangs with the rotor and is not on")
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
