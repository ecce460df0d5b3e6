package step_test

import (
	"strings"
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

// readCountedAndLost has a count of tools between the reading and the lines of what takes it away.
var readCountedAndLost = strings.NewReplacer(
	"  cover: {name: Cover}\n", "  cover: {name: Upper half of the cover with its lifting lugs and its two sight glasses, mass: 12 kg}\n  gasket: {name: Flat gasket between the cover and its seat, renew: always}\ncontainers:\n  C1: {name: Parts of the cover, kind: crate, keep: dry}\n",
	"        way-round: [{part: cover, mark: arrow, faces: the drain}]\n", "        tool-count: true\n",
	"remove: [cover]", "remove: [cover, gasket]",
	"into: {cover: bench}", "into: {cover: C1, gasket: scrap}",
).Replace(readAndLost)

// Where which way round a part sits is written down between a reading and the line that
// takes the part off, or the tools are counted there, the page could end below the reading: it
// was found when the cover was off.
func TestReadingStaysWithWhatEndsItsChance(t *testing.T) {
	t.Parallel()
	for name, text := range map[string]string{"way round": readAndLost, "tool count": readCountedAndLost} {
		t.Run(name, func(t *testing.T) { readingStays(t, text) })
	}
}

func readingStays(t *testing.T, text string) {
	t.Helper()
	jb, problems := packs.Load(fstest.MapFS{"a.yaml": {Data: []byte(text)}}, packs.Inputs{Definition: "a.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 190)
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
