package main

import (
	"os"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

const rodHead = `pack: 1
equipment: {tag: X-1, name: Engine}
job: {number: "2", title: Rod, revision: A, issued: 2026-03-02}
parts:
  stud: {name: Stud}
  rod: {name: Rod}
`

const rodSteps = `steps:
  - section: Measure
    steps:
      - step: gaps
        do: Measure the gaps.
        measure: [%s]
`

func rodSheets(t *testing.T, dims, marks string) map[string]string {
	return sheetsOf(t, rodHead+"dimensions:\n"+dims+strings.ReplaceAll(rodSteps, "%s", marks))
}

// threadSheets are those of a stud that is turned.
func threadSheets(t *testing.T, dims, marks string) map[string]string {
	head := strings.Replace(rodHead, "{name: Stud}", "{name: Stud, thread: 3/4-10 UNC, flats: 6, moves: 1 turn gives 0.100 in}", 1)
	return sheetsOf(t, head+"dimensions:\n"+dims+strings.ReplaceAll(rodSteps, "%s", marks))
}

// The critical sheet asked for one smallest and one largest of positions that have limits
// of their own, and one OK spoke for all of them.
func TestPositionsWithLimitsOfTheirOwnAreJudgedApart(t *testing.T) {
	sheets := rodSheets(t, "  D2: {what: Gap, from: {stud: end}, to: {rod: end}, at: [top, right, bottom, left], left: {top: 0.10 to 0.20 mm, others: 0.20 to 0.40 mm}, source: sheet 5}\n", "D2")
	for sheet, n := range map[string]int{"traveler": 2, "reassembly": 2} {
		if got := strings.Count(sheets[sheet], "[ ] not OK"); got != n {
			t.Errorf("%d verdicts on the %s for two limits:\n%s", got, sheet, sheets[sheet])
		}
	}
	wantAll(t, "the traveler", sheets["traveler"], "top: [ ] OK | [ ] not OK", "right, bottom, left: [ ] OK | [ ] not OK", "top: 0.10 – 0.20 mm · right, bottom, left: 0.20 – 0.40 mm")
	if got := strings.Count(sheets["critical"], "smallest"); got != 2 { // found and left, of the three alike
		t.Errorf("the critical sheet asks %d times for the smallest:\n%s", got, sheets["critical"])
	}
	wantAll(t, "the critical sheet", sheets["critical"], "right, bottom, left")
}

// The critical sheet said of a reading found out of limits what is done as left: who filled it
// in set anew what was only to be told.
func TestCriticalSheetTellsFoundFromLeft(t *testing.T) {
	dim := "  D2: {what: Gap, from: {stud: end}, to: {rod: end}, left: 0.10 to 0.20 mm, over: grind the stud, under: lay a leaf in, source: sheet 5%s}\n"
	both := rodSheets(t, strings.Replace(dim, "%s", ", found-out: tell the engineer", 1), "D2")["critical"]
	wantAll(t, "the critical sheet", both, "as found, out: tell the engineer · as left, over: grind the stud · under: lay a leaf in")
	alike := rodSheets(t, strings.Replace(dim, "%s", "", 1), "D2")["critical"]
	wantAll(t, "the critical sheet", alike, "over: grind the stud · under: lay a leaf in")
	wantNone(t, "the critical sheet", alike, "as left, over")
}

// A reading that is only recorded as found had the limit for closing and a verdict at
// its box.
func TestFoundRecordIsNotJudged(t *testing.T) {
	sheets := rodSheets(t, "  D3: {what: Width, of: {rod: land}, found: record to 0.01 mm, left: 10.00 to 10.05 mm, source: sheet 6}\n  D4: {what: Stand-off, from: {stud: end}, to: {rod: end}, left: 5.0 to 6.0 mm, source: sheet 7}\n", "D3, D4")
	block := between(sheets["traveler"], "Width", "Stand-off")
	wantAll(t, "the box found", block, "record", "to be left 10.00 – 10.05 mm (p. ")
	wantNone(t, "the box found", block, "OK")
	wantAll(t, "the box left", between(sheets["reassembly"], "Width", "Stand-off"), "10.00 – 10.05 mm", "not OK")
}

// A rise in brackets lost the word that tells it from a temperature.
func TestRiseKeepsItsWord(t *testing.T) {
	sheets := rodSheets(t, "  D1: {what: Temperature of the stud, of: {stud: end}, nominal: 100 °C, left: record to 1 °C}\n  D2: {what: Temperature of the rod, of: {rod: land}, nominal: 100 °C, left: record to 1 °C}\n"+
		"  D3: {what: How much warmer, formula: D1 - D2, left: at most 100 C rise (180 F rise), source: sheet 6}\n", "D1, D2, D3")
	wantAll(t, "the limit", sheets["traveler"], "180 °F above the part beside it as printed in the source")
}

// What one flat moves was told in millimetres beside a reading in inches that is worked
// out. 3/4-10 UNC has ten threads an inch: a sixth of 0.1 in is 0.017 in.
func TestFlatsInTheUnitOfTheReading(t *testing.T) {
	sheets := threadSheets(t, "  D4: {what: Stand-off, from: {stud: end}, to: {rod: end}, nominal: 2 in, left: record to 0.001 in}\n  D5: {what: Depth, from: {stud: back}, to: {rod: back}, nominal: 2 in, left: record to 0.001 in}\n"+
		"  D6: {what: Difference, formula: D4 - D5, left: 0.100 to 0.140 in, adjust: stud, back-off: 1/6 turn, source: sheet 7}\n", "D4, D5, D6")
	wantAll(t, "the adjuster", sheets["reassembly"], "one flat of the Stud (3/4-10 UNC) moves it 0.017 in", "turned back 1/6 turn after it touches (0.017 in)")
	wantNone(t, "the adjuster", sheets["reassembly"], "moves it 0.42 mm", " mm)")
}

// A rate of a sum read "at most 0.001 in in each in of worked out".
func TestRateOfASumNamesTheSum(t *testing.T) {
	sheets := rodSheets(t, "  D1: {what: Length, of: {stud: body}, nominal: 20.00 in, found: record to 0.01 in}\n  D2: {what: Head, of: {rod: head}, nominal: 2.00 in, found: record to 0.01 in}\n"+
		"  D3: {what: Bend, from: {stud: end}, to: {rod: end}, nominal: 0.0001 in, left: at most 0.001 in per in of (D1 - D2), source: sheet 6}\n", "D1, D2, D3")
	wantAll(t, "the limit", sheets["traveler"], "at most 0.001 in for each in of (D1 − D2)")
}

// Hooks, joints that are tightened again and headings had holes where a value was
// missing, or ran two numbers into one: "On the hook: crane. . No lift sheet", "Tighten
// again: J1 Rod bolts, .", "1 11.1 Rod".
func TestSentencesWithoutHoles(t *testing.T) {
	sheets := sheetsOf(t, strings.Replace(rodHead, "{name: Stud}\n  rod: {name: Rod}\n", "{name: Stud, mass: 5 kg}\n", 1)+`joints:
  J1: {what: Rod bolts, parts: [stud], stages: [30 N·m, again after 48 h], source: sheet 2}
containers:
  C1: {name: Studs, kind: bag}
steps:
  - section: 11.1 Rod
    steps:
      - step: off
        on-hook: workshop crane
        do: Take the stud out.
        loosen: [J1]
        remove: [stud]
        into: C1
      - step: rod
        do: Move the rod by hand, does it go?
  - reverse: [11.1 Rod]
`)
	wantAll(t, "the traveler", sheets["traveler"], "On the hook: workshop crane. No lift sheet:", "1 · 11.1 Rod")
	wantAll(t, "the close-out", sheets["close-out"], "Tighten again: J1 Rod bolts. In stages: 30 N·m · source: sheet 2 · ticks: p. ")
	wantAll(t, "the front sheet", sheets["front"], "A mark stays with its thing on every sheet and tag.")
	wantNone(t, "the front sheet", sheets["front"], "as DE", "After a slash")
}

// The page of a match mark was that of the head of its step; the boxes in which it was
// written had gone over to the next.
func TestMatchMarksAreFoundOnTheirPage(t *testing.T) {
	var dims, marks []string
	for _, m := range []string{"D1", "D2", "D3", "D4", "D5", "D6", "D7", "D8"} {
		dims = append(dims, "  "+m+": {what: Gap "+m+", kind: gap, from: {stud: end}, to: {rod: face "+m+"}, left: 1.0 to 2.0 mm, source: sheet 1}\n")
		marks = append(marks, m)
	}
	_, pack := fresh(t, rodHead+"dimensions:\n"+strings.Join(dims, "")+`containers:
  C1: {name: Studs, kind: bag}
steps:
  - section: Off
    steps:
      - step: off
        do: Mark the stud and take it out.
        measure: [`+strings.Join(marks, ", ")+`]
        match-marks: [stud]
        remove: [stud]
        into: C1
`)(layout.A4)
	page := pageThatReads(pack, "mark used")
	if step := pageThatReads(pack, "Mark the stud and take it out."); step == page {
		t.Fatalf("the boxes for the mark stand on the page of the head of the step, %s", page)
	}
	if p := pageThatReads(pack, "match marks of Stud meet (p. "+page+")"); p == "" {
		t.Errorf("no page sends to p. %s, where the mark is written down", page)
	}
}

// pageThatReads is the printed number of the first page on which a text is read, empty if none.
func pageThatReads(pack *templates.Pack, text string) string {
	for _, f := range pack.Pages.BySheet() {
		flat := strings.ReplaceAll(strings.Join(strings.Fields(layout.Readable(f)), " "), "\u00a0", " ")
		if strings.Contains(flat, text) {
			return strconv.Itoa(f.Number)
		}
	}
	return ""
}

// A tolerance of 0.04 in was rounded to a tenth of an inch and read ± 0.0 in.
func TestTolerancesKeepTheirDigits(t *testing.T) {
	data, err := os.ReadFile("../../testdata/good/lift-gearbox.yaml")
	if err != nil {
		t.Fatal(err)
	}
	sheets := sheetsOf(t, strings.Replace(string(data), "centre-within: [1/2 in, 1/8 in, 1/2 in]", "centre-within: [0.05 in, 0.04 in, 0.5 in]", 1))
	wantAll(t, "the lift sheet", sheets["lifts"], "x 3.5 in ± 0.05 in", "y 0 in ± 0.04 in", "y 0 in ± 0.005 in")
}
