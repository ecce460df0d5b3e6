package packs_test

import (
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/packs"
)

// toldCodes loads a definition in a language and gives the codes of its problems in order.
func toldCodes(t *testing.T, text, language string) []string {
	t.Helper()
	_, problems := packs.Load(fstest.MapFS{"law.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "law.yaml", Language: language})
	var out []string
	for _, p := range problems {
		out = append(out, p.Code)
	}
	return out
}

// A nut that is locked with its washer, a key on the rack and tags off the parts were told of
// as locks of the machine that have no key.
func TestWordsThatMeanNoLock(t *testing.T) {
	const text = lawHead + `
parts:
  nut: {name: Shaft nut, mass: 1 kg}
containers:
  C1: {name: Nuts, kind: box, keep: dry}
isolations:
  motor: {energy: "electric, 400 V", point: breaker 4, state: open and racked out, proved: press start}
steps:
  - section: Out
    steps:
      - {step: safe, do: Lock the motor out., lock: [motor]}
      - {step: nut, do: Take the nut off., remove: [nut], into: C1}
  - section: In
    steps:
      - {step: back, do: "WORDS", fit: [nut]}
      - {step: run, do: Take the locks off by name., unlock: [motor]}
`
	for words, want := range map[string]bool{
		"Nut on. Lock the nut with its tab washer.":    false,
		"Nut on, from the rack.":                       false,
		"Nut on, the tags off the parts into the bag.": false,
		"Nut on. Lock the motor out again.":            true,
		"Nut on. Rack the breaker out.":                true,
		"Nut on. Take locks and tags off.":             true,
	} {
		if got := slices.Contains(toldCodes(t, strings.Replace(text, "WORDS", words, 1), ""), "said-not-done"); got != want {
			t.Errorf("%q: told of a lock without its key: %t, want %t", words, got, want)
		}
	}
}

// What a German author wrote was looked through for English words: his permit was none, and
// his hatch opened by nothing.
func TestWordsOfAnotherLanguage(t *testing.T) {
	const text = lawHead + `
parts:
  cover: {name: Deckel, mass: 20 kg}
containers:
  C1: {name: Deckel, kind: crate, keep: dry}
openings:
  casing: {what: Gehäuse, cover: Holzdeckel, enclosed: true}
permits:
  ein: {what: Befahrerlaubnis}
steps:
  - section: Auf
    steps:
      - {step: klappe, do: Klappe zum Gehäuse aufmachen., open: [casing], permit: [ein]}
      - {step: deckel, do: Deckel abnehmen., remove: [cover], into: C1, permit: [ein]}
  - section: Zu
    steps:
      - {step: zu, do: Deckel auf., tool-count: yes, close: [casing], fit: [cover]}
`
	for _, code := range []string{"no-permit", "opened-elsewhere"} {
		if codes := toldCodes(t, text, "de"); slices.Contains(codes, code) {
			t.Errorf("in German: %s of good work", code)
		}
		if codes := toldCodes(t, text, ""); !slices.Contains(codes, code) {
			t.Errorf("taken for English: no %s", code)
		}
	}
}

// An entry permit was asked for at all other lifts, because both steps that had it lift.
func TestPermitBesideALift(t *testing.T) {
	data, err := os.ReadFile("../testdata/bad/no-lift-permit.yaml")
	if err != nil {
		t.Fatal(err)
	}
	lift := string(data)
	entry := strings.NewReplacer("lift: {what: Lift permit}", "entry: {what: Entry permit for the pit}", "permit: [lift]", "permit: [entry]").Replace(lift)
	for text, want := range map[string]bool{lift: true, entry: false} {
		if got := slices.Contains(toldCodes(t, text, ""), "no-lift-permit"); got != want {
			t.Errorf("no-lift-permit: told %t, want %t", got, want)
		}
	}
}

// A permit for all work that names hot work or entry as well is a permit for a lift; one for these
// alone is none. Common practice, no source.
func TestPermitForAllWork(t *testing.T) {
	for what, want := range map[string]bool{
		"Work permit, hot work included": false, "General permit for dismantling, with flame cutting": false,
		"Permit to work, entry and cranage by site rules": false, "PTW with entry": false, "Work permit": false,
		"Hot work permit": true, "Entry permit": true, "Permit for work in confined spaces": true, "Confined space work": true, "Flame cutting permit": true,
	} {
		text := strings.NewReplacer("permits:\n  work: {what: Work permit}", "permits:\n  other: {what: \""+what+"\"}\n  lift: {what: Lifting permit}",
			"permit: [work]", "permit: [other]", "lift: [L1], remove", "permit: [other], lift: [L1], remove", "lift: [L1], fit", "permit: [lift], lift: [L1], fit").
			Replace(rotorJob("load: three jacks", "permit", "lock", "jacks", "read", "key", "plate", "out", "off"))
		if got := slices.Contains(toldCodes(t, text, ""), "no-lift-permit"); got != want {
			t.Errorf("%s: told %t, want %t", what, got, want)
		}
	}
}

// One part is judged at the end of putting back, and the words name it; every part that was
// back by then was told of.
func TestDecidedOfOnePart(t *testing.T) {
	const text = lawHead + `
parts:
  cover: {name: Casing cover, mass: 6 kg}
  cap: {name: Bearing cap, mass: 4 kg}
containers:
  C1: {name: Cover and cap, kind: crate, keep: dry}
steps:
  - section: Open
    steps:
      - {step: cover, do: Take the cover off., remove: [cover], into: C1}
      - {step: cap, do: Take the cap off., remove: [cap], into: C1}
  - section: Close
    steps:
      - {step: cap-on, do: Put the cap on., fit: [cap]}
      - {step: decide, do: "WORDS"}
      - {step: cover-on, do: Put the cover on., fit: [cover]}
`
	for words, want := range map[string]bool{
		"The engineer says of the cover: reuse or scrap.":     false,
		"The engineer says of the cap: reuse or scrap.":       true,
		"Tick every tag reuse, repair or scrap.":              true,
		"Reuse, repair or scrap each part, the cover as well": true,
	} {
		if got := slices.Contains(toldCodes(t, strings.Replace(text, "WORDS", words, 1), ""), "decided-late"); got != want {
			t.Errorf("%q: told %t, want %t", words, got, want)
		}
	}
}
