package main

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// loaded reads and composes a definition that is in order.
func loaded(t *testing.T, text string) (*job.Job, *templates.Pack) {
	t.Helper()
	return fresh(t, text)(layout.A4)
}

// tagText is what is read on the label of a mark.
func tagText(pack *templates.Pack, jb *job.Job, mark string) string {
	for _, tag := range jb.Tags {
		if tag.Mark != mark {
			continue
		}
		for _, f := range pack.Tags.Pages {
			for _, a := range labels(f) {
				if codeIn(f, a) == tag.Code {
					only := layout.Frame{}
					for _, it := range f.Items {
						if a.holds(it) {
							only.Items = append(only.Items, it)
						}
					}
					return layout.Readable(only)
				}
			}
		}
	}
	return ""
}

// sheetsOf composes a definition that is in order, and gives what is read on each sheet.
func sheetsOf(t *testing.T, text string) map[string]string {
	t.Helper()
	_, pack := loaded(t, text)
	out := map[string]string{}
	for _, f := range pack.Pages.BySheet() {
		out[f.Sheet] += layout.Readable(f)
	}
	return out
}

// between is the part of a text from one word on to the next one of another; to the end
// where that one does not come.
func between(text, from, to string) string {
	_, after, _ := strings.Cut(text, from)
	before, _, _ := strings.Cut(after, to)
	return before
}

// wantAll tells which texts are not in a piece of paper.
func wantAll(t *testing.T, where, text string, want ...string) {
	t.Helper()
	flat := strings.ReplaceAll(strings.Join(strings.Fields(text), " "), "- ", "-") // a line may end at a hyphen
	for _, w := range want {
		if !strings.Contains(flat, w) {
			t.Errorf("%s does not say %q:\n%s", where, w, text)
		}
	}
}

// wantNone tells which texts are in a piece of paper and must not be.
func wantNone(t *testing.T, where, text string, bad ...string) {
	t.Helper()
	flat := strings.Join(strings.Fields(text), " ")
	for _, w := range bad {
		if strings.Contains(flat, w) {
			t.Errorf("%s says %q:\n%s", where, w, text)
		}
	}
}

const valvesHead = `pack: 1
equipment: {tag: X-1, name: Engine}
job: {number: "1", title: Valves, revision: A, issued: 2026-03-02}
places:
  valve:
    IN: {name: intake valve, viewed-from: top}
    EX: {name: exhaust valve, viewed-from: top}
    PIL: {name: pilot valve, viewed-from: top}
`

// A table of steps printed limit, words, action and source of its first row for all: the
// intake limit stood over the exhaust valves. Parts that are always renewed came "from
// SCRAP", and the limit for old parts was on no row.
func TestTableTellsEachPlaceItsOwn(t *testing.T) {
	sheets := sheetsOf(t, valvesHead+`parts:
  valve: {name: Valve, each: valve}
  keeper: {name: Keeper, each: valve, count: 2, renew: always}
dimensions:
  D1:
    what: {IN: Stem of the intake valve, EX: Stem of the exhaust valve, PIL: Stem of the pilot}
    each: valve
    of: {valve: stem}
    with: {IN: cold, EX: warm from the oven, others: dry}
    left: {IN: 9.96 to 9.98 mm, EX: 9.94 to 9.96 mm, PIL: 5.00 to 5.02 mm}
    reuse: {IN: at least 9.93 mm, EX: at least 9.91 mm, PIL: at least 4.98 mm}
    source: {IN: sheet 4, EX: sheet 5, PIL: sheet 6}
    over: {IN: grind the intake, EX: grind the exhaust, PIL: grind the pilot}
    out: {IN: ask Anna, EX: ask Bert, PIL: ask Carl}
    note: two places
containers:
  C1: {name: Valves, kind: bag, each: valve}
steps:
  - section: Off
    steps:
      - step: off
        each: valve
        as-table: yes
        do: {IN: Take out the intake valve., EX: Take out the exhaust valve., PIL: Take out the pilot.}
        missed: {EX: sodium filled}
        measure: [D1]
        remove: [valve, keeper]
        into: {valve: C1, keeper: scrap}
`)
	exhaust := []string{"9.94 – 9.96 mm", "9.91 – 9.96 mm", "Stem of the exhaust valve", "warm from the oven", "over: grind the exhaust", "out: ask Bert", "source: sheet 5", "easily missed: sodium filled"}
	intake := []string{"9.96 – 9.98 mm", "9.93 – 9.98 mm", "Stem of the intake valve", "with: cold", "over: grind the intake", "out: ask Anna", "source: sheet 4"}
	off, back := sheets["traveler"], sheets["reassembly"]
	row := between(off, "\n1.2", "\n1.3")
	wantAll(t, "the row of the exhaust valve", row, append(exhaust, "Take out the exhaust valve.", "goes back", "renewed")...)
	wantNone(t, "the row of the exhaust valve", row, append(intake, "Take out the intake valve.")...)
	row = between(back, "\nR1.2", "\nR1.3")
	wantAll(t, "the row that puts the exhaust valve back", row, append(exhaust, "old part OK", "new, from stores; count the old", "copy from p. 3")...)
	wantNone(t, "the row that puts the exhaust valve back", row, append(intake, "SCRAP", "D1/PIL")...)
	if n := strings.Count(off, "two places"); n != 1 {
		t.Errorf("a note that all rows have stands %d times", n)
	}
}

// One block of boxes for several places told what is measured, in which state and what
// to do when it is out of its first place only.
func TestOneBlockTellsEachPlaceItsOwn(t *testing.T) {
	sheets := sheetsOf(t, valvesHead+`parts:
  valve: {name: Valve, each: valve}
  seat: {name: Seat, each: valve}
dimensions:
  D1:
    what: {IN: Lift of the intake valve, EX: Lift of the exhaust valve, PIL: Lift of the pilot}
    each: valve
    from: {valve: head}
    to: {seat: face}
    with: {IN: cold, others: warm}
    left: 9.0 to 9.5 mm
    source: {IN: sheet 4, EX: sheet 5, PIL: sheet 6}
    over: {IN: grind the intake, EX: grind the exhaust, PIL: grind the pilot}
    out: {EX: ask Bert}
steps:
  - section: Measure
    steps:
      - step: lift
        do: Measure the lifts.
        measure: [D1]
`)
	block := sheets["traveler"]
	wantAll(t, "the block", block, "IN: Lift of the intake valve; EX: Lift of the exhaust valve; PIL: Lift of the pilot", "with: IN: cold; EX, PIL: warm",
		"over: IN: grind the intake; EX: grind the exhaust; PIL: grind the pilot", "out: EX: ask Bert", "source: IN: sheet 4; EX: sheet 5; PIL: sheet 6")
}

// What one place says to do as found stood over the boxes of all: it was told of the first
// place alone.
func TestOneBlockTellsWhatEachPlaceDoesAsFound(t *testing.T) {
	sheets := sheetsOf(t, strings.Replace(valvesHead, "  valve:\n", "  end: {DE: {name: drive end}, MID: {name: middle}, NDE: {name: other end}}\n  valve:\n", 1)+`parts:
  pad: {name: Pad, each: end}
  seat: {name: Seat, each: end}
dimensions:
  D1:
    what: Gap
    each: end
    from: {pad: face}
    to: {seat: face}
    left: 0.40 to 0.80 mm
    source: sheet 4
    out: set it anew
    found-out: {DE: renew the pad, NDE: call Anna, MID: leave it alone}
steps:
  - section: Measure
    steps:
      - step: gaps
        do: Measure the gaps.
        measure: [D1]
`)
	all := "DE: renew the pad; MID: leave it alone; NDE: call Anna"
	wantAll(t, "the block as found", sheets["traveler"], "out: "+all)
	wantNone(t, "the block as left", sheets["reassembly"], "renew the pad")
	wantAll(t, "the block as left", sheets["reassembly"], "out: set it anew")
}
