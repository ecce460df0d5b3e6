package step

import (
	"strings"
	"testing"
)

// A cap that was put on again for a reading, among steps that take apart, had no line for its
// marks: it stood turned round on paper as well as on the machine.
func TestMarksMeetWhereverAPartGoesOn(t *testing.T) {
	t.Parallel()
	const text = `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Fan, revision: A, issued: 2026-03-02}
parts: {cap: {name: Cap}, lid: {name: Lid}, plug: {name: Plug}, hub: {name: Hub}, half: {name: Half}, pin: {name: Pin}}
containers: {C1: {name: Cap, kind: box}}
steps:
  - section: Apart
    steps:
    - {step: off, do: "Mark cap and lid, take them off.", match-marks: [cap, lid], remove: [cap, lid, plug], into: C1}
    - {step: trial, do: "Put the cap on for a while.", fit-for-now: [cap], match-marks: [cap], take-out-again: [cap]}
    - {step: bare, do: "Put it on once more and take it off.", fit-for-now: [cap], take-out-again: [cap]}
    - {step: shut, do: "Put the lid back.", fit: [lid, plug], from: C1}
    - {step: plug, do: "Take the plug off.", remove: [plug], into: C1}
  - section: Coupling
    steps:
    - {step: pin, do: "Mark the half to what it drives, take the pin out.", match-marks: [half], remove: [pin], into: C1}
  - section: Hub
    steps:
    - {step: hub, do: "Mark the hub, take it off.", match-marks: [hub], remove: [hub], into: C1}
  - section: Together
    steps:
    - {step: hub-on, do: "Hub on, at the bench, and the cap.", fit: [hub, cap], from: C1}
    - {step: close, do: "Close the coupling.", match-marks: [hub], fit: [plug], from: C1}
  - reverse: [Coupling]
`
	c := composerOf(t, text)
	want := map[string]string{"off": "", "trial": "Cap", "bare": "", "shut": "Lid", "plug": "", "hub-on": "Cap", "close": "Hub", "row of pin": "Half"}
	for _, st := range c.Job.Steps() {
		key := st.Key
		if st.Undoes != nil {
			key = "row of " + key
		}
		all := printedOf(c, st)
		part := want[key]
		if got := strings.Count(all, "match marks of"); got > 1 || (got == 1) != (part != "") || part != "" && !strings.Contains(all, "match marks of "+part+" meet") {
			t.Errorf("%s: match marks of %q are to meet once, got\n%s", st.Name(), part, all)
		}
	}
}

// A new hub was to meet by the marks of the old one, which lies in scrap, and where its step asked
// for a mark on it there was no box for one.
func TestNewPiecesDoNotMeetByOldMarks(t *testing.T) {
	t.Parallel()
	const head = `
pack: 1
equipment: {tag: FN-11, name: Fan}
job: {number: WO-1, title: Fan, revision: A, issued: 2026-03-02}
containers: {C1: {name: Hub, kind: box}}
parts: {hub: {name: Hub, RENEW}, lid: {name: Lid}}
steps:
  - section: Apart
    steps:
    - {step: off, do: "Mark hub and lid, take them off.", match-marks: [hub, lid], remove: [lid, hub], into: {lid: C1, hub: INTO}}
`
	const written = head + `  - section: Together
    steps:
    - {step: on, do: "Put the hub on.", fit: [hub]MARK}
    - {step: lid, do: "Put the lid on.", fit: [lid]}
`
	const trial = head + `  - section: Together
    steps:
    - {step: on, do: "Put the hub on for a trial.", fit-for-now: [hub]MARK, take-out-again: [hub]}
    - {step: last, do: "Put hub and lid on.", fit: [hub, lid]}
`
	for _, c := range []struct {
		name, text, renew, into, mark string
		meet, box                     map[string]bool // by step; a row that undoes one is called back
	}{
		{"new, to scrap", written, "renew: always", "scrap", "", map[string]bool{"lid": true}, nil},
		{"new, old one kept", written, "renew: always", "C1", "", map[string]bool{"lid": true}, nil},
		{"new, by the place alone", written, "mass: 8 kg", "scrap", "", map[string]bool{"lid": true}, nil},
		{"new, marked", written, "renew: always", "scrap", ", match-marks: [hub]", map[string]bool{"lid": true}, map[string]bool{"on": true}},
		{"the same", written, "mass: 8 kg", "C1", "", map[string]bool{"on": true, "lid": true}, nil},
		{"the same, said", written, "mass: 8 kg", "C1", ", match-marks: [hub]", map[string]bool{"on": true, "lid": true}, nil},
		{"the same, for now", trial, "mass: 8 kg", "C1", ", match-marks: [hub]", map[string]bool{"on": true, "last": true}, nil},
		{"new, for now", trial, "renew: always", "scrap", ", match-marks: [hub]", map[string]bool{"last": true}, map[string]bool{"on": true}},
		{"new, put back by itself", head, "renew: always", "scrap", "", map[string]bool{"lid": true}, nil},
	} {
		text := strings.NewReplacer("RENEW", c.renew, "INTO", c.into, "MARK", c.mark).Replace(c.text)
		comp := composerOf(t, text)
		for _, st := range comp.Job.Steps() {
			all := printedOf(comp, st)
			key := st.Key
			if st.Undoes != nil {
				key = "lid" // the only row that undoes takes both
			}
			if key == "off" {
				continue
			}
			if got := strings.Contains(all, "match marks of"); got != c.meet[key] {
				t.Errorf("%s: %s meets by marks: %v, want %v:\n%s", c.name, st.Name(), got, c.meet[key], all)
			}
			if strings.Contains(all, "match marks of Hub") && strings.Contains(all, "new") {
				t.Errorf("%s: %s is new and meets:\n%s", c.name, st.Name(), all)
			}
			if got := strings.Contains(all, "match mark across the joint of Hub") && strings.Contains(all, "mark used"); got != c.box[key] {
				t.Errorf("%s: %s has boxes for a mark: %v, want %v:\n%s", c.name, st.Name(), got, c.box[key], all)
			}
		}
	}
}
