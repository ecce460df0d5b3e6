package packs_test

import (
	"slices"
	"strings"
	"testing"
)

// Which of several instruments is a number in figures; +1 and 02 were taken as one, and blanks
// at the slash gave two errors.
func TestWhichInstrumentIsANumber(t *testing.T) {
	t.Parallel()
	const text = lawHead + `
parts: {hub: {name: Hub}}
instruments: {dial: {name: Dial gauge, range: 0 to 10 mm, reads: 0.01 mm, count: 2}}
dimensions: {D1: {what: Rim of the hub, kind: runout, of: {hub: rim}, by: "BY", found: at most 0.20 mm, source: sheet 4}}
steps: [{step: read, do: Measure., measure: [D1]}]
`
	for by, want := range map[string][]string{
		"dial/1": nil, "dial/2": nil, "dial / 1": nil, "dial/ 2": nil, "dial": nil,
		"dial/+1": {"which-instrument"}, "dial/02": {"which-instrument"}, "dial/3": {"which-instrument"}, "dial/0": {"which-instrument"},
		"dial/": {"which-instrument"}, "dial / one": {"which-instrument"}, "gauge / 1": {"unknown-name"},
	} {
		jb, got := codesOf(strings.Replace(text, "BY", by, 1))
		if !slices.Equal(got, want) {
			t.Errorf("by: %s: told %v, want %v", by, got, want)
		}
		if want == nil && by != "dial" && jb.Dims[0].ByPiece != int(by[len(by)-1]-'0') {
			t.Errorf("by: %s: is %d", by, jb.Dims[0].ByPiece)
		}
	}
}
