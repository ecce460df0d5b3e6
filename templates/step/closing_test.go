package step

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// composerOf loads a definition that is free of errors and gives what sets its steps: in
// English, 180 mm wide.
func composerOf(t *testing.T, text string) *block.Composer {
	t.Helper()
	jb, problems := packs.Load(fstest.MapFS{"machine.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "machine.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	return block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
}

// saidIn is what is printed of each step of a definition, from the top down, by its name.
func saidIn(t *testing.T, text string) map[string]string {
	t.Helper()
	c := composerOf(t, text)
	out := map[string]string{}
	for _, st := range c.Job.Steps() {
		key := st.Key
		if st.Undoes != nil {
			key = "row of " + key
		}
		out[key] = printedOf(c, st)
	}
	return out
}

// printedOf is the text that is printed of a step, from the top down.
func printedOf(c *block.Composer, st *job.Step) string {
	var out []string
	for _, p := range Pieces(c, st) {
		out = append(out, said(p.Block))
	}
	return strings.ReplaceAll(strings.Join(out, " "), "\u00a0", " ")
}

// inTurn fails where texts do not stand in a step one after the other.
func inTurn(t *testing.T, step, said string, texts ...string) {
	t.Helper()
	rest := said
	for _, x := range texts {
		_, after, found := strings.Cut(rest, x)
		if !found {
			t.Errorf("%s: %q is not printed, or not below those before it of %q, in\n%s", step, x, texts, said)
			return
		}
		rest = after
	}
}

// "seen clean, tools and rags out, closed" was one box: ticked before the cover went on it was
// not true yet, below the cover nobody could see any more.
func TestSeenCleanBeforeTheCoverAndClosedAfterIt(t *testing.T) {
	t.Parallel()
	said := saidIn(t, `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Fan, revision: A, issued: 2026-03-02}
parts: {cover: {name: Cover}, lid: {name: Lid}, screw: {name: Screw, count: 4}}
containers: {C1: {name: Cover, kind: box}}
joints: {J1: {what: Cover screws, parts: [screw], torque: 40 N·m, source: sheet 4}}
openings: {housing: {what: Housing, cover: taped sheet}, case: {what: Case, cover: taped sheet}, hole: {what: Hand hole, cover: its lid}}
steps:
  - section: Apart
    steps:
    - {step: off, do: "Take the cover off.", open: [housing], loosen: [J1], remove: [cover, screw], into: C1}
    - {step: lid, do: "Take the lid off.", open: [case], remove: [lid], into: C1}
    - {step: look, do: "Look through the hand hole.", open: [hole], tool-count: yes, close: [hole]}
    - {step: on, do: "Put the cover back.", tool-count: yes, close: [housing], fit: [cover, screw], from: C1, tighten: [J1]}
`)
	inTurn(t, "on", said["on"], "Housing seen clean, tools and rags out", "4 Screw", "00 tight", "Housing closed")
	inTurn(t, "row of lid", said["row of lid"], "Case seen clean, tools and rags out", "1 Lid", "Case closed")
	inTurn(t, "look", said["look"], "Hand hole seen clean, tools and rags out, closed")
	for step, said := range said {
		if strings.Contains(said, "rags out, closed") != (step == "look") || strings.Count(said, "seen clean") > 1 {
			t.Errorf("%s: what is seen clean and what is closed are ticked apart where a cover goes on alone, got\n%s", step, said)
		}
	}
}

// A casing that hung over its joint at 20 mm was ticked closed, and its match marks as meeting.
func TestWhatHangsIsClosedWhereItStands(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("../../packs/starters/storm-pump.yaml")
	if err != nil {
		t.Fatal(err)
	}
	said := saidIn(t, string(text))
	inTurn(t, "casing-near", said["casing-near"], "Casing with impeller space seen clean, tools and rags out", "L1 stays on the hook")
	inTurn(t, "casing-on", said["casing-on"], "2 Taper dowel", "match marks of Upper casing and Lower casing meet", "Casing with impeller space closed", "permit handed back: Entry permit")
	for step, said := range said {
		for _, x := range []string{"space closed", "match marks of Upper casing"} {
			if strings.Contains(said, x) != (step == "casing-on") {
				t.Errorf("%s: %q belongs where the casing stands, got\n%s", step, x, said)
			}
		}
	}
}

// A permit is suspended while a lock is off for a trial; that it was given again had no box.
func TestPermitIsGivenAgainAfterATrial(t *testing.T) {
	t.Parallel()
	said := saidIn(t, `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Fan, revision: A, issued: 2026-03-02}
isolations: {motor: {point: Breaker 4, energy: "electric, 400 V", state: off and locked, proved: tester dead}}
permits: {work: {what: Permit to work}}
steps:
  - section: Work
    steps:
    - {step: isolate, after: {}, do: Lock the motor out., permit: [work], lock: [motor]}
    - {step: trial, do: Let the motor turn., permit: [work], unlock-for-now: [motor], seen: [it turned right], lock-again: [motor]}
    - {step: off, do: Take the lock off., hand-back: [work], unlock: [motor]}
`)
	inTurn(t, "trial", said["trial"], "permit is here: Permit to work", "take the lock off", "it turned right", "lock on again", "permit given again: Permit to work")
	for step, said := range said {
		if strings.Contains(said, "given again") != (step == "trial") {
			t.Errorf("%s: a permit is given again after a trial alone, got\n%s", step, said)
		}
	}
}
