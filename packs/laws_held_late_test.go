package packs_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// latePump has a sleeve that is judged off the shaft, a run-out that is set, and two holds that
// PUT and OUT send to.
const latePump = lawHead + `parts:
  shaft: {name: Shaft}
  sleeve: {name: Shaft sleeveRENEW}
instruments:
  dial: {name: Dial gauge, range: 0 to 10 mm, reads: 0.01 mm}
  micrometer: {name: Micrometer, range: 50 to 75 mm, reads: 0.001 mm}
dimensions:
  D1: {what: Outside of the sleeve, kind: diameter, of: {sleeve: neck}, by: micrometer, found: at least 59.900 mm, under: "UNDER", source: sheet 2}
  D2: {what: Run-out of the shaft, kind: runout, of: {shaft: end}, by: dial, found: not taken, left: at most 0.05 mm, over: "OVER", source: sheet 2}
containers: {C1: {name: Sleeve, kind: box, keep: oiled}}
isolations:
  motor: {point: Breaker 4-2, energy: "electric, 400 V", state: open and locked, proved: start button pressed}
holds:
  W1: {kind: hold, what: Engineer says go on, releases: engineer}
  W2: {kind: hold, what: Engineer says go on, releases: engineer}
steps:
  - section: All
    steps:
`

var lateLine = map[string]string{
	"lock": "do: Lock the motor., lock: [motor]", "off": "do: Take the sleeve off and measure it., remove: [sleeve], into: C1, measure: [D1]", "on": "do: Put the sleeve on., fit: [sleeve], from: C1",
	"hold": "do: Ask the engineer., hold: W1", "read": "do: Read the run-out., set: [D2]", "unlock": "do: Take the lock off., unlock: [motor]", "second": "do: Ask him again., hold: W2",
}

func lateText(under, over, renew string) string {
	return strings.NewReplacer("UNDER", under, "OVER", over, "RENEW", renew).Replace(latePump)
}

// A hold at which a worn part is judged stands above the step that puts it back, and one for what
// was left out above the step that lets the machine run. Common practice, no source.
func TestHoldsStandAboveWhatTheyDecide(t *testing.T) {
	t.Parallel()
	toldWhere(t, "hold-late", func(t *rapid.T) (string, bool) {
		order := []string{"lock", "off", "on", "read", "unlock"}
		at := rapid.IntRange(2, 5).Draw(t, "hold stands at")
		order = append(order[:at:at], append([]string{"hold"}, order[at:]...)...)
		if rapid.Bool().Draw(t, "of the part as found") {
			return lateText("tell the engineer at W1", "polish it", "") + stepLines(order, lateLine), at > 2
		}
		return lateText("do not fit", "tell the engineer at W1", "") + stepLines(order, lateLine), at > 4
	})
}

// Ordinary words of what is done when a reading is out, with the hold below the part and the
// unlocking.
func TestWordsThatDecideAtAHold(t *testing.T) {
	t.Parallel()
	late := stepLines([]string{"lock", "off", "on", "read", "unlock", "hold"}, lateLine)
	for _, c := range []struct {
		words string
		told  bool
	}{
		{"tell the engineer at W1", true}, {"stop, tell the engineer at W1", true}, {"renew it, or ask at W1", true}, {"engineer decides at W1", true}, {"hold at W1", true},
		{"the engineer says at W1 whether it goes back", true}, {"do not fit before it is released at W1", true}, {"call the shift engineer, who signs at W1", true},
		{"do not fit", false}, {"tell the engineer", false}, {"renew the sleeve", false}, {"polish it and read again", false}, {"metal-spray it", false}, {"tell the foreman", false},
		{"order a new one, tell the engineer at W1", false}, {"it goes back as it is; for the next outage tell the engineer at W1", false}, {"note it for the next overhaul, tell the engineer at W1", false},
		{"tell the engineer at W1 for the record", false}, {"write it down for the report, show it at W1", false}, {"renew it at the next shutdown, tell the planner at W1", false},
		{"tell the engineer at W1 or at W2", false}, {"tell the engineer at W2 if it is scored, at W1 if not", false},
		{"dem Ingenieur melden, W1", false}, {"avisar al ingeniero en W1", false}, {"see W1", false}, {"as W1 says", false}, {"renew it; W1 is for that", false},
		{"look at the packing as well", false}, {"fit the spare sleeve", false}, {"put it aside", false},
		{"renew the sleeve; report at W1", false}, {"fit a new sleeve and say so at W1", false}, {"write it down, shown at W1", false}, {"renew it, tell the engineer at W1", false}, {"polish it, then show it at W1", false},
		{"replace the sleeve and report it at W1", false}, {"note it and report it at W1", false}, {"grind it to size; it is seen at W1", false}, {"fit the spare sleeve, say so at W1", false}, {"write it down and show it at W1", false},
		{"clean it and read again; report both at W1", false}, {"use a new sleeve. Report at W1", false}, {"exchange it, the engineer hears of it at W1", false},
		{"renew it if the engineer says so at W1", true}, {"polish it, then ask at W1 whether it goes back", true}, {"write it down and ask the engineer at W1", true}, {"renew the sleeve after the engineer decides at W1", true}, {"note it, the engineer decides at W1", true}, {"ask for a new one at the stores", false}, {"turn it end for end", false},
	} {
		text := lateText(c.words, "polish it", "") + "PUT" + strings.ReplaceAll(late, "W9", "")
		toldJust(t, "hold-late", text+"      - {step: second, do: Ask him again., hold: W2}\n", []warned{{"", c.told}})
	}
}

// What goes back new is no longer judged; a trial behind which the lock goes on again is no
// running for good.
func TestHoldsThatComeInTime(t *testing.T) {
	t.Parallel()
	at := func(words string, order ...string) string { return words + stepLines(order, lateLine) }
	const tell = "tell the engineer at W1"
	toldJust(t, "hold-late", "PUT", []warned{
		{at(lateText(tell, "polish it", ", renew: always"), "lock", "off", "on", "read", "hold", "unlock"), false},
		{at(lateText(tell, "polish it", ""), "lock", "off", "on", "read", "hold", "unlock"), true},
		{at(lateText(tell, "polish it", ""), "lock", "off", "hold", "on", "read", "unlock"), false},
		{at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "hold", "unlock"), false},
		{at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "unlock", "hold"), true},
		{at(lateText("do not fit", tell, ""), "lock", "off", "on", "unlock", "read", "hold"), false},
		{twoLocks(at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "unlock", "hold")), false},
		{twoLocks(at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "hold", "unlock")), false},
		{twoLocks(at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "unlock")) + "      - {step: last, do: Take the other lock off., unlock: [valve]}\n" + stepLines([]string{"hold"}, lateLine), true},
		{twoLocks(at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "unlock", "hold")) + "      - {step: last, do: Take the other lock off., unlock: [valve]}\n", false},
		{strings.Replace(at(lateText("do not fit", tell, ""), "lock", "off", "on", "read", "unlock", "hold"), "unlock: [motor]}", "unlock-for-now: [motor], lock-again: [motor]}", 1), false},
	})
}

// twoLocks locks the suction valve as well, which stays locked.
func twoLocks(text string) string {
	return strings.NewReplacer("holds:\n", "  valve: {point: Suction valve, energy: \"water, 4 bar\", state: shut and locked, proved: drain open and dry}\nholds:\n", ", lock: [motor]}", ", lock: [motor, valve]}").Replace(text)
}

// In one step the verbs count in their order: what is read before the lock comes off is told too
// late below it, what is read behind it is not. A hold that a state of the limit names is sent to as
// one that is named when it is out.
func TestHoldsCountByTheOrderOfVerbs(t *testing.T) {
	t.Parallel()
	toldWhere(t, "hold-late", func(t *rapid.T) (string, bool) {
		limit := rapid.SampledFrom([]string{"must be accepted by the engineer at W1", "choose good or tell the engineer at W1", "choose good or worn"}).Draw(t, "limit")
		verbs := rapid.Permutation([]string{"set: [D2]", "unlock: [motor]", "hold: W1"}).Draw(t, "verbs")
		steps := stepLines([]string{"lock", "off", "on"}, lateLine)
		one := rapid.Bool().Draw(t, "in one step") // which is released at its end, wherever hold: is written
		if one {
			steps += "      - {step: all, do: Do it., " + strings.Join(verbs, ", ") + "}\n"
		} else {
			for _, v := range verbs {
				steps += "      - {step: " + v[:3] + ", do: Do it., " + v + "}\n"
			}
		}
		text := lateText("do not fit", "", "")
		text = strings.Replace(text, `kind: runout, of: {shaft: end}, by: dial, found: not taken, left: at most 0.05 mm, over: ""`, "kind: condition, of: {shaft: end}, found: not taken, left: "+limit, 1)
		at := func(v string) int {
			return slices.IndexFunc(verbs, func(x string) bool { return strings.HasPrefix(x, v) })
		}
		return text + steps, limit != "choose good or worn" && at("set") < at("unlock") && (one || at("unlock") < at("hold"))
	})
}

// A state that is agreed at a hold is read behind it; one that sends somebody there is not.
func TestStatesThatSendToAHold(t *testing.T) {
	t.Parallel()
	var cases []warned
	for limit, early := range map[string]bool{"must be accepted by the engineer at W1": false, "choose good or tell the engineer at W1": true, "choose good or worn": false} {
		text := strings.Replace(lateText("do not fit", "", ""), `kind: runout, of: {shaft: end}, by: dial, found: not taken, left: at most 0.05 mm, over: ""`, "kind: condition, of: {shaft: end}, found: not taken, left: "+limit, 1)
		cases = append(cases, warned{text + stepLines([]string{"lock", "off", "on", "hold", "read", "unlock"}, lateLine), early})
	}
	toldJust(t, "hold-early", "PUT", cases)
}
