package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates"
)

// filledPump is the storm pump with the readings of testdata, on a paper: the job, what
// came back, and the pack as fill prints it.
func filledPump(t *testing.T, paper layout.Paper) (*job.Job, *filled.Result, *templates.Pack) {
	t.Helper()
	o := templates.Options{Paper: paper}
	jb, blank := composed(t, "storm-pump.yaml", o)
	data, err := os.ReadFile(filepath.Join(testdata, "filled", "storm-pump.csv"))
	if err != nil {
		t.Fatal(err)
	}
	values, _ := filled.Merge([]*filled.File{filled.Read("storm-pump.csv", data, jb)})
	o.Filled = filled.Work(jb, values)
	o.Printed, _ = blank.Printed(nil)
	pack, problems := templates.Compose(jb, o, pdf.NewFaces(), nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	pack.KeepFilled()
	return jb, o.Filled, pack
}

// TestFilledSheetHasTheValues: every value as found that has a dashed box on the
// reassembly sheet stands in it on paper as it was typed, read from the painted file; and
// the boxes of what is left stay blank.
func TestFilledSheetHasTheValues(t *testing.T) {
	longTest(t)
	for _, paper := range papers {
		jb, r, pack := filledPump(t, paper)
		var text strings.Builder
		for i, page := range words(t, painted(t, pack.Pages), len(pack.Pages.Pages)) {
			if pack.Pages.Pages[i].Sheet == "reassembly" {
				text.WriteString(page + "\n")
			}
		}
		sought, all := 0, text.String()
		for _, b := range jb.Blanks() {
			value := strings.ReplaceAll(r.Typed(b.Key()), string(layout.DecimalMark), ".")
			d := b.Dim
			if b.Kind == job.GroupBlank && !slices.Contains(d.Groups(), reading.Group(b.N)) {
				continue // a sum that a ladder takes is not copied to where it is left
			}
			if b.When != job.AsFound || value == "" || d.LeftAt == nil || d.Sheet || d.In != nil && d.In.Sheet {
				continue
			}
			sought++
			if !regexp.MustCompile(`(^|[\s])` + regexp.QuoteMeta(value) + `($|[\s])`).MatchString(all) {
				t.Errorf("%s: %s, %s, is not on the reassembly sheet", paper.Name, b.Key(), value)
			}
		}
		if sought < 55 {
			t.Errorf("%s: only %d values are looked for", paper.Name, sought)
		}
		for _, f := range pack.Pages.Pages {
			for _, it := range f.Items {
				if it.Key != "" && strings.Contains(it.Key, " left ") && it.Role == layout.RoleTyped && r.Values != nil && !workedLeft(jb, it.Key) {
					t.Errorf("%s: the box %s is to be written by hand and is filled", paper.Name, it.Key)
				}
			}
		}
	}
}

// workedLeft reports whether a box as left holds what a ladder works out.
func workedLeft(jb *job.Job, key string) bool {
	for _, b := range jb.Blanks() {
		if b.Key() == key {
			return b.Whole()
		}
	}
	return false
}

// TestVerdictsOnPaper: the verdicts of the demonstration's filled sheet stand on the
// sheet of what came back, with what to do and the tag to tick.
func TestVerdictsOnPaper(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		_, _, pack := filledPump(t, paper)
		var front, back strings.Builder
		for _, f := range pack.Pages.Pages {
			switch f.Sheet {
			case "filled":
				front.WriteString(layout.Readable(f) + "\n")
			case "reassembly":
				back.WriteString(layout.Readable(f) + "\n")
			}
		}
		if pack.Pages.Pages[0].Sheet != "filled" {
			t.Errorf("%s: the pack begins with %s", paper.Name, pack.Pages.Pages[0].Sheet)
		}
		for _, want := range []string{
			"typed from paper by A. Penn, 2026-03-14", "58.9 mm", "renew all six", "240.058 mm", "tick HOLD", "B5/NDE", "1.4600 mm", "renew the casing ring",
			"D20/NDE 1.1200 mm", "D14 0.0500 mm", "D4 2.40 mm", "D12/DE-DIS 0.85 mm", "lower 0.03 mm", "raise 0.06 mm", "D3 no. 4: 270°", "X51 found: crack", "the blue ran out",
		} {
			if !strings.Contains(strings.ReplaceAll(front.String(), "\n", " "), want) {
				t.Errorf("%s: %q is not on the sheet of what came back", paper.Name, want)
			}
		}
		for _, want := range []string{"pack 0.20 + 0.15 = 0.35 mm", "target 3.55 mm", "FOUND OUT OF LIMITS: renew the casing ring", "target 2.35 mm, 2.15 mm to 2.55 mm", "[=37.290]", "[0.3500]"} {
			if !strings.Contains(strings.ReplaceAll(back.String(), "\n", " "), want) {
				t.Errorf("%s: %q is not on the reassembly sheet", paper.Name, want)
			}
		}
	}
}
