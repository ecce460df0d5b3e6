package templates_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// The number of the very instrument was dropped where several of its kind are used at once.
func TestNumberOfOneOfSeveralInstruments(t *testing.T) {
	t.Parallel()
	const text = `
pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Overhaul, revision: A, issued: 2026-03-02}
parts:
  hub: {name: Hub}
instruments:
  dial: {name: Dial indicator, range: 0 to 10 mm, reads: 0.01 mm, number: DI-04, count: 3}
dimensions:
  D1: {what: Runout of the hub, kind: runout, of: {hub: rim}, by: dial, left: at most 0.05 mm, source: sheet 2}
steps:
  - {step: look, do: Measure the runout., measure: [D1]}
`
	jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "a.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	n := 0
	for _, f := range pack.Pages.Pages {
		for _, line := range strings.Split(layout.Readable(f), "\n") {
			if strings.TrimSpace(line) == "DI-04" { // a cell of its own, as only the gather list has
				n++
			}
		}
	}
	if n != 1 {
		t.Errorf("DI-04 stands %d times on the gather list, want once", n)
	}
}

// Readings by a numbered one of several instruments alike and by any of them stood in one
// list beside the first, as if all were its own.
func TestReadingsOfAnyOfSeveralInstruments(t *testing.T) {
	t.Parallel()
	const text = `
pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Overhaul, revision: A, issued: 2026-03-02}
parts:
  hub: {name: Hub}
instruments:
  dial: {name: Dial indicator, range: 0 to 10 mm, reads: 0.01 mm, count: 2}
dimensions:
  D1: {what: Runout of the rim, kind: runout, of: {hub: rim}, by: dial/1, left: at most 0.05 mm, source: sheet 2}
  D2: {what: Runout of the face, kind: runout, of: {hub: face}, by: dial/2, left: at most 0.05 mm, source: sheet 2}
  D3: {what: Runout of the bore, kind: runout, of: {hub: bore}, by: dial, left: at most 0.05 mm, source: sheet 2}
steps:
  - {step: look, do: Measure rim and face., measure: [D1, D2]}
  - {step: bore, do: Measure the bore., measure: [D3]}
`
	jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "a.yaml"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	said := ""
	for _, f := range pack.Pages.Pages {
		said += strings.Join(strings.Fields(layout.Readable(f)), " ") + " "
	}
	for _, want := range []string{"any of them: D3 · D1", "Dial indicator, 2 of 2 D2"} {
		if !strings.Contains(said, want) {
			t.Errorf("the gather list does not say %q", want)
		}
	}
}
