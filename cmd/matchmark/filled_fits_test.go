package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"maps"
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
	"matchmark/templates"
)

// photoName stands for whoever types a lot: a photograph by the name of its file.
const photoName = "photo-2026-03-14-0017-crown-wheel-drive-flank-seen-from-the-motor.jpeg"

// worstReadings is the file of a pack filled at its worst: of a box with digits the
// smallest or the largest number that goes in, of one that is ticked the last answer, of
// one for words the name of a file; looked at again, for much of it is doubted.
func worstReadings(t *testing.T, jb *job.Job, high bool, by string) []byte {
	t.Helper()
	var blank, out bytes.Buffer
	if err := filled.WriteBlank(&blank, jb, map[string]int{}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(blank.String(), "\ufeff"))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	at := func(name string) int { return slices.Index(rows[0], name) }
	for _, row := range rows[1:] {
		digits := strings.TrimPrefix(strings.TrimPrefix(row[at("digits")], "'"), "±")
		answers := strings.Split(digits, " or ")
		figure := "0"
		if high {
			figure = "9"
		}
		switch position := row[at("position")]; {
		case row[0] == "typed by":
			row[at("value")] = by
		case row[0] == "typed on":
			row[at("value")] = "2026-03-14"
		case row[at("side")] == "" || strings.HasPrefix(position, "(leaf") || position == "(number on the part)":
		case strings.Contains(digits, "/"):
			row[at("value")] = figure + " in"
		case strings.HasPrefix(digits, "_"):
			row[at("value")] = strings.TrimSpace(strings.ReplaceAll(digits, "_", figure) + " " + row[at("unit")])
		case len(answers) > 1 && !strings.Contains(digits, "photo"):
			row[at("value")] = answers[len(answers)-1]
		default:
			row[at("value")] = photoName
		}
		row[at("looked again")] = "L. Again"
	}
	w := csv.NewWriter(&out)
	w.WriteAll(rows)
	return out.Bytes()
}

// pageTold is where a sheet of work sends to another page of the paper.
var pageTold = regexp.MustCompile(`(?:copy from|whole text|Lift sheet L\w+,|Heat sheet H\w+,) p\.\s*\d+`)

// toldPages are these places of the reassembly sheets, each once.
func toldPages(d *layout.Doc) []string {
	told := map[string]bool{}
	for _, f := range d.BySheet() {
		if f.Sheet == "reassembly" {
			for _, m := range pageTold.FindAllString(strings.Join(strings.Fields(layout.Readable(f)), " "), -1) {
				told[m] = true
			}
		}
	}
	return slices.Sorted(maps.Keys(told))
}

// TestWorstReadingsFit: whatever was read, the filled sheets and the report can be printed.
// What is to be done about a reading that is out, the mark of a long tag, the names of two
// who typed and the name of a photograph were each too wide, and nothing was printed on the
// day it was needed. The filled sheets name themselves, and send to the pages of the paper.
func TestWorstReadingsFit(t *testing.T) {
	longTest(t)
	for _, name := range []string{"exhaust-fan", "storm-pump", "triplex-pump", "bevel-gearbox"} {
		for i, paper := range papers {
			t.Run(name+" on "+paper.Name, func(t *testing.T) {
				o := templates.Options{Paper: paper}
				jb, blank := composedFile(t, filepath.Join(startersDir, name+".yaml"), o)
				var files []*filled.File
				for k, by := range []string{"Bartholomew Featherstonehaugh-Cholmondeley", "Aleksandra Brzęczyszczykiewicz"} {
					if f := filled.Read(fmt.Sprintf("%d.csv", k), worstReadings(t, jb, i == 1, by), jb); k == 0 {
						files = append(files, f)
					} else {
						files = append(files, &filled.File{Name: f.Name, By: f.By, On: f.On})
					}
				}
				if len(files[0].Entries) < 20 {
					t.Fatalf("only %d values are taken: %v", len(files[0].Entries), files[0].Told)
				}
				values, _ := filled.Merge(files)
				o.Filled = filled.Work(jb, values)
				o.Printed, _ = blank.Printed(nil)
				out := 0
				for _, v := range o.Filled.Verdicts {
					if v.Bad() {
						out++
					}
				}
				if out < 5 {
					t.Errorf("only %d readings are out of limits", out)
				}
				if _, misfits := templates.ComposeReport(jb, o, pdf.NewFaces()); len(misfits) > 0 {
					t.Errorf("the report does not fit: %v", misfits)
				}
				pack, misfits := templates.Compose(jb, o, pdf.NewFaces(), nil)
				if len(misfits) > 0 {
					t.Fatalf("the filled sheets do not fit: %v", misfits)
				}
				pack.KeepFilled()
				if text := layout.Readable(pack.Pages.Pages[0]); !strings.Contains(text, "What came back") {
					t.Errorf("the first sheet does not name itself:\n%.200s", text)
				}
				paperTold := toldPages(blank.Pages)
				for _, told := range toldPages(pack.Pages) {
					if !slices.Contains(paperTold, told) {
						t.Errorf("the filled sheets say %q, the paper %q", told, paperTold)
					}
				}
				if len(paperTold) == 0 {
					t.Error("the paper sends to no page")
				}
			})
		}
	}
}

// TestFilledAsPrinted: the filled sheets are set as the pack was that came back, on its paper,
// both sides and with its second language; the pages that they tell were those of another
// printing. How it was printed is read from its digest.
func TestFilledAsPrinted(t *testing.T) {
	definition, dir := filepath.Join(startersDir, "exhaust-fan.yaml"), t.TempDir()
	for _, x := range []struct {
		print, fill []string
		paper       layout.Paper
		duplex      bool
		second      string
	}{
		{nil, nil, layout.A4, false, ""},
		{[]string{"--paper", "letter", "--second", "de"}, nil, layout.Letter, false, "de"},
		{[]string{"--duplex", "--second", "pl"}, nil, layout.A4, true, "pl"},
		{[]string{"--duplex", "--second", "pl"}, []string{"letter"}, layout.Letter, true, "pl"},
	} {
		var said, talk bytes.Buffer
		if code := run(append([]string{"print", definition, "--replace", "--out", dir}, x.print...), nil, &said, &talk); code != exitDone {
			t.Fatal(talk.String())
		}
		p := cameBackFlags{readings: []string{filepath.Join(dir, "WO-5512-B-readings.csv")}, paper: strings.Join(x.fill, "")}
		c, _ := comeBack([]string{definition}, p, "fill", streams{out: &said, err: &talk})
		if c == nil {
			t.Fatal(talk.String())
		}
		second := ""
		if c.second != nil {
			second = c.second.Language
		}
		again := p // with what was read last, which did not stand on the paper
		last := filepath.Join(t.TempDir(), "last.csv")
		if text, err := os.ReadFile(p.readings[0]); err != nil || os.WriteFile(last, text, 0o600) != nil {
			t.Fatal(err)
		}
		again.last = []string{last}
		if c, _ := comeBack([]string{definition}, again, "report", streams{out: &said, err: &talk}); c == nil || !c.bare {
			t.Errorf("printed with %v it is not known beside what was read last; %s", x.print, talk.String())
		}
		if c.paper != x.paper || c.duplex != x.duplex || second != x.second || talk.Len() > 0 {
			t.Errorf("printed with %v and filled with %v it is on %s, both sides %v, second language %q; %s", x.print, x.fill, c.paper.Name, c.duplex, second, talk.String())
		}
	}
}
