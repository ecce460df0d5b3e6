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

// triedSums is a job up to what ends its tries.
const triedSums = `pack: 1
equipment: {tag: GV-4, name: Guide gates}
job: {number: WO-40, title: Gate links, revision: A, issued: 2026-03-02}
parts: {ring: {name: Operating ring}, stop: {name: Stop block}}
instruments: {feeler: {name: Feeler, range: 0.02 to 2.00 mm, reads: 0.01 mm}}
dimensions:
  D1: {what: Ring to stop block, kind: gap, from: {ring: edge}, to: {stop: face}, by: feeler, left: 0.40 to 0.80 mm, source: sheet 1}
  D2: {what: Step in the ring, kind: depth, of: {ring: rim}, by: feeler, left: 0.10 to 0.30 mm, source: sheet 1}
  D3: {what: Both together, formula: D1 + D2, left: 0.50 to 1.10 mm, source: sheet 1}
  D4: {what: Twice, formula: 2 x D3, left: 1.00 to 2.20 mm, source: sheet 1}
steps:
  - {step: gap, do: Measure., measure: [D1, D2, D3, D4]}
  - {step: back, do: Set the ring., set: [D1, D2, D3, D4], tries: 3, still-out: tell the engineer, `

// A step that is tried again had one box for what is worked out from its readings: the sum of
// the first try was rubbed out, or stood beside the readings of the last.
func TestEachTryHasItsSum(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		rest  string
		tries []bool // which of the tries have the two sums
	}{
		{"until: D1 is in limits, each-try: [file the block, D2]}", []bool{true, true, true}},
		{"until: D1 is in limits, each-try: [file the block]}", []bool{true, true, true}},
		{"until: 'is it right?', each-try: [file the block, D1, D2]}", []bool{true, true, false}}, // those of the last go into the boxes of the step
		{"until: 'is it right?', each-try: [file the block]}", []bool{false, false, false}},
		{"until: D3 is in limits, each-try: [file the block, D1, D2]}", []bool{true, true, true}},
	} {
		jb, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: []byte(triedSums + c.rest + "\n")}}, packs.Inputs{Definition: "x.yaml"})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		comp := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
		for _, st := range jb.Steps() {
			if st.Until == nil {
				continue
			}
			for no, want := range c.tries {
				text := said(tryBlock(comp, st, no, 160))
				for _, mark := range []string{"D3", "D4, worked out"} {
					if got := strings.Contains(text, mark); got != want {
						t.Errorf("%s try %d: %s %v, want %v: %s", c.rest, no+1, mark, got, want, text)
					}
				}
			}
		}
	}
}

// The box of what is worked out besides stood between the reading that ends the tries and its
// ticks, as if the sum were judged; what leads to that reading stands before its box.
func TestSumStandsBehindTheTicksOfItsTry(t *testing.T) {
	t.Parallel()
	for until, order := range map[string][]string{
		"D1": {"D2", "D1", "OK not OK", "D3, worked out", "D4, worked out"},
		"D3": {"D2", "D3", "OK not OK", "D4, worked out"},
		"D4": {"D2", "D3, worked out", "D4", "OK not OK"},
	} {
		c := composerOf(t, triedSums+"until: "+until+" is in limits, each-try: [file the block, D2]}\n")
		for _, st := range c.Job.Steps() {
			if st.Until == nil {
				continue
			}
			text := said(tryBlock(c, st, 1, 160))
			for _, word := range order {
				_, rest, found := strings.Cut(text, word)
				if !found {
					t.Errorf("until %s: %q does not follow in: %s", until, word, said(tryBlock(c, st, 1, 160)))
				}
				text = rest
			}
		}
	}
}

// A sum that is worked out at several places had one box without a name in each try.
func TestEachTryHasItsSumAtEachPlace(t *testing.T) {
	t.Parallel()
	const angles = "at: {turned to: [0°, 90°, 180°, 270°]}"
	text := strings.NewReplacer("by: feeler,", "by: feeler, "+angles+",", "formula: D1 + D2,", "formula: D1 + D2, "+angles+",", "formula: 2 x D3,", "formula: 2 x D3, "+angles+",").Replace(triedSums)
	jb, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: []byte(text + "until: 'is it right?', each-try: [file the block, D1, D2]}\n")}}, packs.Inputs{Definition: "x.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	comp := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	for _, st := range jb.Steps() {
		if st.Until == nil {
			continue
		}
		_, boxes := workedBoxes(comp, st)
		if len(boxes) != 8 {
			t.Errorf("%d boxes for two sums at four places", len(boxes))
		}
		printed := said(tryBlock(comp, st, 0, 160))
		for _, first := range []string{"D3, worked out, mm, 0", "D4, worked out, mm, 0"} {
			if !strings.Contains(printed, first) {
				t.Errorf("no %q: %s", first, printed)
			}
		}
		if n := strings.Count(printed, "270"); n != 4 {
			t.Errorf("270 stands at %d boxes of a try, want 4: %s", n, printed)
		}
	}
}
