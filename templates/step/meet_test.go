package step

import (
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/words"
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
	jb, problems := packs.Load(fstest.MapFS{"fan.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "fan.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	c := &block.Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), Job: jb, W: words.English, Span: 180, Kept: block.NewKept()}
	want := map[string]string{"off": "", "trial": "Cap", "bare": "", "shut": "Lid", "plug": "", "hub-on": "Cap", "close": "Hub", "row of pin": "Half"}
	for _, st := range jb.Steps() {
		key := st.Key
		if st.Undoes != nil {
			key = "row of " + key
		}
		var said []string
		for _, p := range Pieces(c, st) {
			for _, item := range p.Block.Items() {
				if text, ok := item.Shape.(layout.Text); ok {
					said = append(said, text.S)
				}
			}
		}
		all := strings.ReplaceAll(strings.Join(said, " "), "\u00a0", " ")
		part := want[key]
		if got := strings.Count(all, "match marks of"); got > 1 || (got == 1) != (part != "") || part != "" && !strings.Contains(all, "match marks of "+part+" meet") {
			t.Errorf("%s: match marks of %q are to meet once, got\n%s", st.Name(), part, all)
		}
	}
}
