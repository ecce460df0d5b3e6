package dimension_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/dimension"
	"matchmark/templates/words"
)

const readLater = `
pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Overhaul, revision: A, issued: 2026-03-02}
places:
  end:
    DE: {name: drive end, viewed-from: the motor}
    NDE: {name: thrust end, viewed-from: the open end}
parts:
  rotor: {name: Rotor}
  cover: {name: Cover, each: end}
instruments:
  rule: {name: Steel rule, range: 0 to 300 mm, reads: 0.1 mm}
dimensions:
  D1:
    what: Axial travel of the rotor
    kind: float
    of: {rotor: impeller}
    by: rule
    left: 6.0 to 8.0 mm
    source: maker's sheet 2
  D2:
    what: Rotor from its stop
    each: end
    kind: gap
    of: {cover: stop}
    by: rule
    nominal: 3.5 mm
    left: half of D1 +/- 0.5 mm
    source: maker's sheet 2
steps:
  - section: Measure
    steps:
      - step: gap
        do: Measure the rotor from its stops.
        measure: [D2]
      - step: travel
        do: Push the rotor from stop to stop.
        measure: [D1]
      - step: off
        do: Take the covers off.
        remove: [cover]
        into: {cover: bench}
  - reverse: [Measure]
`

// A limit that is worked out from one reading for two ends told the page of the first end
// alone, and the other end is set on another page.
func TestLimitWorkedLaterTellsAllPages(t *testing.T) {
	t.Parallel()
	jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: []byte(readLater)}}, packs.Inputs{Definition: "a.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	var ends []*job.Dim
	for _, d := range jb.Dims {
		if d.Base == "D2" {
			ends = append(ends, d)
		}
	}
	if len(ends) != 2 {
		t.Fatalf("%d ends, want 2", len(ends))
	}
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 190)
	c.Pages = map[string]int{"left D2/DE": 40, "left D2/NDE": 44}
	blocks, _ := dimension.Blocks(c, ends, dimension.Found, nil, true)
	if len(blocks) != 1 {
		t.Fatalf("%d blocks, want one for both ends", len(blocks))
	}
	var text []string
	for _, it := range blocks[0].Items() {
		if s, ok := it.Shape.(layout.Text); ok {
			text = append(text, s.S)
		}
	}
	if all := strings.Join(text, " "); !strings.Contains(strings.ReplaceAll(all, "\u00a0", " "), "(p. 40, 44)") {
		t.Errorf("the pages 40 and 44 are not both told: %s", all)
	}
}
