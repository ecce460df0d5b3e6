package packs_test

import (
	"slices"
	"strings"
	"testing"
)

// A reading that is only looked up again stands at the row before the one that would do nothing
// else, and at the row after where none is before: it is never left out, and no row stands for it
// alone.
func TestWhatIsOnlyLookedUpStandsAtARow(t *testing.T) {
	t.Parallel()
	const text = lawHead + `parts:
  shaft: {name: Shaft}
  cover: {name: Cover}
containers:
  C1: {name: Cover, kind: box, keep: dry}
dimensions:
  D1: {what: Bore, kind: bore, of: {shaft: bore}, found: record to 0.01 mm, nominal: 20 mm, source: sheet}
  D2: {what: Gap, kind: gap, from: {shaft: end}, to: {cover: end}, found: record to 0.01 mm, nominal: 20 mm, source: sheet}
steps:
  - section: Open
    steps:
`
	line := map[string]string{"gap": "do: Measure the gap., measure: [D2]", "off cover": "do: Take the cover off., remove: [cover], into: C1", "bore": "do: Measure the bore., measure: [D1]"}
	for _, order := range [][]string{{"gap", "off cover", "bore"}, {"gap", "bore", "off cover"}} {
		jb, problems := loadLaw(text + stepLines(order, line))
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		var looked []string
		for _, st := range jb.Steps() {
			if !st.Back {
				continue
			}
			if len(st.Fit) == 0 {
				t.Errorf("%v: the row %s does nothing but look up", order, st.Name())
			}
			for _, d := range st.Recall {
				looked = append(looked, d.Mark)
			}
		}
		slices.Sort(looked)
		if !slices.Equal(looked, []string{"D1", "D2"}) {
			t.Errorf("%v: looked up in putting back: %v, want D1 and D2", order, looked)
		}
	}
}

// A limit that is worked out from another reading of its step wants that one above it in the
// list, as the boxes are filled from the top.
func TestWhatIsWorkedOutStandsBelowWhatItTakes(t *testing.T) {
	t.Parallel()
	const text = lawHead + `parts:
  shaft: {name: Shaft}
dimensions:
  D1: {what: Depth, kind: depth, of: {shaft: step}, LIMIT, nominal: 20 mm, source: sheet}
  D2: {what: Length, kind: length, of: {shaft: body}, formula: D1 + 1.00 mm, WORKED, source: sheet}
  D3: {what: Width, kind: length, of: {shaft: flat}, LIMIT, nominal: 20 mm, source: sheet}
steps:
  - {step: read, do: Measure them., VERB: [LIST]}
`
	for _, c := range []struct {
		verb, list string
		told       bool
	}{
		{"measure", "D1, D2, D3", false}, {"measure", "D1, D3, D2", false}, {"measure", "D2, D1, D3", true}, {"measure", "D3, D2, D1", true},
		{"set", "D1, D2, D3", false}, {"set", "D2, D1, D3", true}, {"set", "D2, D3, D1", true},
	} {
		_, codes := codesOf(readingsOf(text, c.verb, c.list))
		if got := slices.Contains(codes, "taken-later"); got != c.told {
			t.Errorf("%s: [%s]: told that D1 is taken later %v, want %v: %v", c.verb, c.list, got, c.told, codes)
		}
	}
}

// readingsOf is a definition whose readings are all measured, or all set.
func readingsOf(text, verb, list string) string {
	limit, worked := "found: record to 0.01 mm", "found: record to 0.01 mm"
	if verb == "set" {
		limit, worked = "found: not taken, left: 19.00 to 21.00 mm", "found: not taken, left: 20.00 to 22.00 mm"
	}
	return strings.NewReplacer("LIMIT", limit, "WORKED", worked, "VERB", verb, "LIST", list).Replace(text)
}
