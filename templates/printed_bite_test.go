package templates_test

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates"
)

// valvesByPlace is a table and a block whose places all have limits and words of their
// own.
const valvesByPlace = `pack: 1
equipment: {tag: X-1, name: Engine}
job: {number: "1", title: Valves, revision: A, issued: 2026-03-02}
places:
  valve:
    IN: {name: intake valve, viewed-from: the top}
    EX: {name: exhaust valve, viewed-from: the front}
    PIL: {name: pilot valve, viewed-from: the rear}
parts:
  valve: {name: Valve, each: valve}
  seat: {name: Seat, each: valve}
  nut: {name: Nut, each: valve, count: 2, hand: {IN: right, EX: right, PIL: left}}
dimensions:
  D1:
    what: {IN: Stem of the intake, EX: Stem of the exhaust, PIL: Stem of the pilot}
    each: valve
    of: {valve: stem}
    with: {IN: cold, EX: warm from the oven, PIL: dry as bone}
    viewed-from: {IN: the piston, EX: the manifold, PIL: the panel}
    left: {IN: 9.96 to 9.98 mm, EX: 9.93 to 9.95 mm, PIL: 5.00 to 5.02 mm}
    reuse: {IN: at least 9.92 mm, EX: at least 9.91 mm, PIL: at least 4.98 mm}
    source: {IN: sheet 4, EX: sheet 5, PIL: sheet 6}
    over: {IN: grind the intake, EX: grind the exhaust, PIL: grind the pilot}
  D2:
    what: Lift
    each: valve
    from: {valve: head}
    to: {seat: face}
    at: [low, high]
    left: {low: 0.10 to 0.20 mm, high: 0.30 to 0.40 mm}
    source: sheet 7
containers:
  C1: {name: Valves, kind: crate, each: valve, keep: oiled}
steps:
  - section: Look
    steps:
      - step: look
        do: Measure the lifts.
        measure: [D2]
  - section: Off
    steps:
      - step: off
        each: valve
        as-table: yes
        do: {IN: Draw the intake valve., EX: Draw the exhaust valve., PIL: Draw the pilot.}
        missed: {EX: sodium filled, PIL: left-hand thread}
        measure: [D1]
        remove: [nut, valve]
        into: C1
`

// A bite is a slip of the paper: one text at one place printed as that of another place,
// or not at all. on names the words by which the law must speak of it.
type bite struct{ name, was, printed, on string }

var bites = []bite{
	{"limit of another place", "9.93 – 9.95 mm", "9.96 – 9.98 mm", "D1/EX"},
	{"one digit of a limit", "5.00 – 5.02 mm", "5.00 – 5.03 mm", "D1/PIL"},
	{"limit of old parts", "old part 9.91 – 9.95 mm", "old part 9.92 – 9.95 mm", "D1/EX"},
	{"what to do of another place", "over: grind the exhaust", "over: grind the intake", "D1/EX"},
	{"seen from the side of another place", "seen from the manifold", "seen from the piston", "D1/EX"},
	{"from where it is seen lost", "seen from the panel", "", "D1/PIL"},
	{"state lost", "warm from the oven", "", "D1/EX"},
	{"source of another place", "sheet 6", "sheet 5", "D1/PIL"},
	{"what is measured", "Stem of the pilot", "Stem of the intake", "D1/PIL"},
	{"what is done", "Draw the exhaust valve.", "Draw the intake valve.", "step 2.2"},
	{"easily missed lost", "easily missed: sodium filled", "", "step 2.2"},
	{"limits of two positions changed about", "low: 0.10 – 0.20 mm", "low: 0.30 – 0.40 mm", "D2"},
	{"container of another place", "C1/EX", "C1/IN", "C1/EX"},
	{"hand of the thread", "Nut: left-hand", "Nut: right-hand", "step 2.3"},
	{"how it is kept", "oiled", "dry", "the tag of C1/IN"},
}

// frameBites are slips in a frame that the feet of a machine share.
var frameBites = []bite{
	{"head of a frame", "Shims under the foot", "Leaves", "D4/DE-SUC at 1.4"},
	{"limit of a frame", "as found ± 0.05 mm", "as found ± 0.06 mm", "D4/NDE-DIS at 1.4"},
	{"row of a like place", "D4/DE-SUC", "D4/DE-DIS", "D4/DE-SUC at 1.4"},
}

// The law bites: with one text of one place changed on the paper it speaks, and of that
// place; with none changed it is silent.
func TestPaperLawBites(t *testing.T) {
	jb, err := loadText(valvesByPlace)
	if err != nil {
		t.Fatal(err)
	}
	mustBite(t, jb, bites)
	mustBite(t, loadFile(t, "../testdata/good/shims.yaml"), frameBites)
}

func mustBite(t *testing.T, jb *job.Job, bites []bite) {
	t.Helper()
	for _, m := range misses(jb, "", "") {
		t.Errorf("of paper that is right: %s", m)
	}
	for _, b := range bites {
		found := misses(jb, b.was, b.printed)
		spoken := false
		for _, m := range found {
			spoken = spoken || strings.Contains(m, b.on)
		}
		if !spoken {
			t.Errorf("%s: %q printed as %q is not told of %s, only %q", b.name, b.was, b.printed, b.on, found)
		}
	}
}

// A hazard above a table is that of its steps: lost there it is told of, wherever else it stands.
// The law once looked for it anywhere on the sheets of work.
func TestHazardsStandAboveTheirTable(t *testing.T) {
	t.Parallel()
	const hazard = "Spring under load."
	text := strings.Replace(valvesByPlace, "steps:\n", "cautions:\n  spring: {signal: caution, hazard: "+hazard+", avoid: Nobody in line with it.}\nsteps:\n", 1)
	text = strings.Replace(text, "measure: [D2]\n", "measure: [D2]\n        caution: [spring]\n", 1)
	text = strings.Replace(text, "as-table: yes\n", "as-table: yes\n        caution: [spring]\n", 1)
	jb, err := loadText(text)
	if err != nil {
		t.Fatal(err)
	}
	for _, lost := range []bool{false, true} {
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		if lost && !loseBefore(pack.Pages, hazard, "2.1–2.3") {
			t.Fatal("no hazard stands above the table")
		}
		told := map[string]bool{}
		for _, w := range allWants(jb, readPaper(jb, pack)) {
			if w.miss() != "" {
				told[w.where] = true
			}
		}
		for where, want := range map[string]bool{"step 1.1": false, "step 2.1": lost, "step 2.2": lost, "step 2.3": lost} {
			if told[where] != want {
				t.Errorf("hazard lost %t: told of %s %t, want %t", lost, where, told[where], want)
			}
		}
	}
}

// loseBefore takes a text out where it stands last before a head.
func loseBefore(doc *layout.Doc, text, head string) bool {
	last := -1
	for _, f := range doc.Pages {
		for i, it := range f.Items {
			x, ok := it.Shape.(layout.Text)
			switch {
			case ok && strings.Contains(x.S, text):
				last = i
			case ok && x.S == head && last >= 0:
				lost := f.Items[last].Shape.(layout.Text)
				lost.S = strings.ReplaceAll(lost.S, text, "")
				f.Items[last].Shape = lost
				return true
			}
		}
		last = -1
	}
	return false
}

// misses is what the law says of a job when one text is printed as another.
func misses(jb *job.Job, was, printed string) []string {
	pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
	if was != "" {
		for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
			for _, f := range doc.Pages {
				misprint(f.Items, was, printed)
			}
		}
	}
	var out []string
	for _, w := range allWants(jb, readPaper(jb, pack)) {
		if m := w.miss(); m != "" {
			out = append(out, m)
		}
	}
	return out
}

// misprint changes a text wherever it stands in one line of a page, blanks that hold
// together counted as blanks.
func misprint(items []layout.Item, was, printed string) {
	for i, it := range items {
		if x, ok := it.Shape.(layout.Text); ok {
			x.S = strings.ReplaceAll(strings.ReplaceAll(x.S, "\u00a0", " "), was, printed)
			items[i].Shape = x
		}
	}
}
