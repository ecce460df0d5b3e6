package revise_test

import (
	"fmt"
	"strings"
	"testing"

	"matchmark/packs/revise"
)

// bench is a machine with a little of all that stands on paper beside steps and readings.
const bench = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Seal, revision: A, issued: 2026-03-02}
places:
  end:
    DE: {name: drive end, viewed-from: the motor}
    NDE: {name: open end, viewed-from: the motor}
parts:
  shaft: {name: Shaft}
  cover: {name: Cover, each: end, mass: 6 kg, behind: [screw]}
  screw: {name: Screw, each: end, count: 4}
  nut: {name: Nut, each: end, thread: {DE: M90x2, NDE: M80x2}, hand: {DE: left, NDE: right}, flats: 6, renew: if its thread is torn, behind: [cover]}
instruments:
  gauge: {name: Depth gauge, range: 0 to 150 mm, reads: 0.01 mm}
dimensions:
  D1:
    what: Nut to shaft end
    each: end
    kind: stand-off
    from: {nut: outer face}
    to: {shaft: end face}
    with: {DE: shaft pushed home, NDE: shaft pulled}
    load: 200 N
    at: [top, bottom]
    by: gauge
    adjust: nut
    left: {top: 10.00 to 10.20 mm, bottom: 11.00 to 11.20 mm}
    source: sheet 4
    note: beside the keyway
containers:
  C1: {name: Small parts, kind: bag, each: end}
stacks:
  K1: {what: Cover and nut, each: end, from: the outside, order: [cover, nut]}
joints:
  J1: {what: Cover screws, parts: [screw], each: end, torque: {DE: 40 N·m, NDE: 60 N·m}, stages: [by hand, 50 %, 100 %], lubricant: oil, source: sheet 5, layout: {circle: 120 mm, order: crosswise, seen-from: the motor, clock: the rail}}
holds:
  W1: {kind: hold, what: Engineer has seen both nuts., releases: engineer}
cautions:
  slip: {signal: caution, hazard: The nut is oily., avoid: Wipe it first.}
openings:
  bore: {what: Bore of the housing, each: end, cover: taped sheet}
isolations:
  motor: {point: Breaker 5, energy: electric, state: racked out, proved: start button pressed}
permits:
  work: {what: Work permit, note: from the shift supervisor}
steps:
  - section: Off
    steps:
      - {step: safe, do: Lock out., permit: [work], lock: [motor]}
      - step: off
        each: end
        after: {safe: the shaft may turn}
        do: Take cover and nut off.
        caution: [slip]
        stacks: [K1]
        loosen: [J1]
        measure: [D1]
        remove: [screw, cover, nut]
        open: [bore]
        into: C1
        way-round: [{part: cover, mark: arrow, faces: up}]
        missed: {DE: left-hand thread, NDE: right-hand thread}
        hours: 2
      - {step: look, after: {off: both are off}, do: The engineer looks at both nuts., hold: W1}
  - reverse: [Off]
  - section: Run
    steps:
      - {step: run, do: Hand over., tool-count: yes, unlock: [motor], hand-back: [work]}
`

// A new revision had another torque, another hand of a thread, another state to measure in,
// and neither compare nor the bars in the margin said so.
func TestWhatStandsAtAStepIsTold(t *testing.T) {
	t.Parallel()
	old, ok := load(bench)
	if !ok {
		t.Fatal("the definition has problems")
	}
	for _, x := range []struct {
		was, is string
		steps   string // those told, of all rows
		read    string
	}{
		{"NDE: 60 N·m", "NDE: 65 N·m", "back off/NDE", ""},
		{"stages: [by hand, 50 %, 100 %]", "stages: [by hand, 70 %, 100 %]", "back off/DE back off/NDE", ""},
		{"lubricant: oil", "lubricant: dry", "back off/DE back off/NDE", ""},
		{"order: crosswise", "order: in turn", "back off/DE back off/NDE", ""},
		{"NDE: right}", "NDE: left}", "off/NDE back off/NDE", "D1/NDE"},
		{"NDE: M80x2", "NDE: M80x1.5", "off/NDE back off/NDE", "D1/NDE"},
		{"renew: if its thread is torn", "renew: if its collar is torn", "back off/DE back off/NDE", ""},
		{"NDE: shaft pulled", "NDE: shaft let go", "", "D1/NDE"},
		{"load: 200 N", "load: 300 N", "", "D1/DE D1/NDE"},
		{"at: [top, bottom]\n    by: gauge\n    adjust: nut\n    left: {top:", "at: [upper, bottom]\n    by: gauge\n    adjust: nut\n    left: {upper:", "", "D1/DE D1/NDE"},
		{"bottom: 11.00 to 11.20 mm", "bottom: 11.00 to 11.30 mm", "", "D1/DE D1/NDE"},
		{"beside the keyway", "away from the keyway", "", "D1/DE D1/NDE"},
		{"reads: 0.01 mm", "reads: 0.02 mm", "", "D1/DE D1/NDE"},
		{"        loosen: [J1]\n        measure: [D1]\n", "        measure: [D1]\n        loosen: [J1]\n", "off/DE off/NDE", ""},
		{"order: [cover, nut]", "order: [nut, cover]", "off/DE off/NDE", ""},
		{"seen both nuts.", "seen all nuts.", "look", ""},
		{"releases: engineer", "releases: foreman", "look", ""},
		{"Wipe it first.", "Wipe it last.", "off/DE off/NDE back off/DE back off/NDE", ""},
		{"cover: taped sheet", "cover: wooden lid", "off/DE off/NDE back off/DE back off/NDE", ""},
		{"state: racked out", "state: switched off", "safe run", ""},
		{"from the shift supervisor", "from the plant manager", "safe run", ""},
		{"the shaft may turn", "the shaft does turn", "off/DE off/NDE", ""},
		{"faces: up", "faces: down", "off/DE off/NDE back off/DE back off/NDE", ""},
		{"hours: 2", "hours: 3", "off/DE off/NDE", ""},
		{"name: drive end, viewed-from: the motor", "name: drive end, viewed-from: the pump", "off/DE back off/DE", "D1/DE"},
	} {
		edited := strings.Replace(bench, x.was, x.is, 1)
		now, ok := load(edited)
		if !ok || edited == bench {
			t.Errorf("with %q the definition has problems, or is as it was", x.is)
			continue
		}
		since := revise.Since(old, now)
		var steps, read []string
		for _, s := range now.Sections {
			for _, st := range s.Steps {
				if !since.Steps[st] {
					continue
				}
				key := st.Place.Mark(st.Key)
				if st.Undoes != nil {
					key = "back " + st.Place.Mark(st.Undoes.Key)
				}
				steps = append(steps, key)
			}
		}
		for _, d := range now.Dims {
			if since.Dims[d] {
				read = append(read, d.Mark)
			}
		}
		for _, k := range strings.Split(strings.ReplaceAll(x.steps, "back ", "back_"), " ") {
			if k = strings.ReplaceAll(k, "_", " "); k != "" && !strings.Contains(","+strings.Join(steps, ",")+",", ","+k+",") {
				t.Errorf("%q in place of %q is not told at %s, only at %v", x.is, x.was, k, steps)
			}
		}
		if strings.HasPrefix(x.was, "renew: ") && len(steps) != 2 {
			t.Errorf("%q in place of %q is told at %v, and is printed where the nuts go back", x.is, x.was, steps)
		}
		if x.steps == "" && len(steps) > 0 {
			t.Errorf("%q in place of %q is told at %v", x.is, x.was, steps)
		}
		if got := strings.Join(read, " "); got != x.read {
			t.Errorf("%q in place of %q is told of %q, and not of %q", x.is, x.was, got, x.read)
		}
	}
	if c := revise.Compare(old, old); len(c.Steps)+len(c.Readings) > 0 {
		t.Error("the same job is told as another:", fmt.Sprint(c))
	}
}

// A tag named a spot by words that had changed, or was a label for a bag that had become a
// box, and was told to stay.
func TestTagsOfAnotherSpotAndKind(t *testing.T) {
	t.Parallel()
	const text = `pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Seal, revision: A, issued: 2026-03-02}
parts: {case: {name: Case, mass: 20 kg}, key: {name: Key}}
containers: {C1: {name: Key, kind: bag}}
big: {B1: {part: case, keep: dry}}
lay-down: {Y1: {what: Timbers at the wall}}
steps:
  - {step: case, do: Take the case off., remove: [case], into: Y1}
  - {step: key, do: Take the key out., remove: [key], into: C1}
`
	old, ok := load(text)
	if !ok {
		t.Fatal("the definition has problems")
	}
	for _, x := range []struct{ was, is, mark string }{{"Timbers at the wall", "Timbers at the gate", "B1"}, {"kind: bag", "kind: box", "C1"}} {
		now, ok := load(strings.Replace(text, x.was, x.is, 1))
		if !ok {
			t.Fatalf("with %s the definition has problems", x.is)
		}
		for _, v := range revise.Compare(old, now).Tags {
			if (v.Mark == x.mark) != (v.Fate == revise.Reissue) {
				t.Errorf("with %s in place of %s %s is told %d", x.is, x.was, v.Mark, v.Fate)
			}
		}
	}
}
