package step_test

import (
	"testing"
	"testing/fstest"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/step"
	"matchmark/templates/words"
)

const readAndLost = `
pack: 1
equipment: {tag: P-1, name: Pump}
job: {number: WO-1, title: Overhaul, revision: A, issued: 2026-03-02}
parts:
  rotor: {name: Rotor}
  cover: {name: Cover}
instruments:
  depth: {name: Depth gauge, range: 0 to 25 mm, reads: 0.01 mm}
dimensions:
  D1:
    what: Rotor from the cover
    kind: gap
    from: {rotor: face}
    to: {cover: stop}
    by: depth
    left: 6.0 to 8.0 mm
    source: maker's sheet 2
steps:
  - section: Apart
    steps:
      - step: cover
        do: Measure the rotor, then take the cover off.
        measure: [D1]
        way-round: [{part: cover, mark: arrow, faces: the drain}]
        remove: [cover]
        into: {cover: bench}
  - reverse: [Apart]
`

// Where which way round a part sits is written down between a reading and the line that
// takes the part off, the page could end below the reading: it was found when the cover was
// off.
func TestReadingStaysWithWhatEndsItsChance(t *testing.T) {
	t.Parallel()
	jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: []byte(readAndLost)}}, packs.Inputs{Definition: "a.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	c := &block.Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), Job: jb, W: words.English, Span: 190}
	ps := step.Pieces(c, jb.Steps()[0])
	boxes := func(p layout.Piece) (n int) {
		for _, it := range p.Block.Items() {
			if it.Role == layout.RoleValue {
				n++
			}
		}
		return n
	}
	for i, p := range ps {
		if boxes(p) == 0 {
			continue
		}
		for k, below := range ps[i : len(ps)-2] { // the last is the line that ends the step
			if !below.KeepNext || below.MayPart {
				t.Errorf("a page may end below piece %d of %d, and the reading is in piece %d", i+k, len(ps), i)
			}
		}
		return
	}
	t.Error("the step has no box for its reading")
}
