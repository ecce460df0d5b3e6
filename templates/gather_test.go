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
