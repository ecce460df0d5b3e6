package main

import (
	"bytes"
	"encoding/csv"
	"math/big"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/filled"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates"
)

// filledPump is the storm pump with the readings of testdata, on a paper: the job, what
// came back, and the pack as fill prints it.
func filledPump(t *testing.T, paper layout.Paper) (*job.Job, *filled.Result, *templates.Pack) {
	t.Helper()
	jb, problems := packs.Load(os.DirFS(startersDir), packs.Inputs{Definition: "storm-pump.yaml"})
	if problems.Errors() > 0 {
		t.Fatal(problems)
	}
	data, err := os.ReadFile(filepath.Join(testdata, "filled", "storm-pump.csv"))
	if err != nil {
		t.Fatal(err)
	}
	values, _ := filled.Merge([]*filled.File{filled.Read("storm-pump.csv", data, jb)})
	o := templates.Options{Paper: paper}
	blank, _ := templates.Compose(jb, o, pdf.NewFaces(), nil)
	o.Filled, o.Boxes = filled.Work(jb, values), blank.Boxes()
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
			value := r.Typed(b.Key())
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
		if sought < 60 {
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

// TestFilledRoundTrip: each dashed box of the reassembly sheet carries the value of its own
// reading. Every box as found of every starter is given another value; then the boxes of
// each dimension, in the order of the pages, hold its readings in the order of its steps
// and positions: single ones, rows, clocks, grids, and those of several places in one
// block.
func TestFilledRoundTrip(t *testing.T) {
	t.Parallel()
	held := 0
	for _, starter := range starters(t) {
		jb, problems := packs.Load(os.DirFS(startersDir), packs.Inputs{Definition: starter})
		if problems.Errors() > 0 {
			t.Fatal(problems)
		}
		values, _ := filled.Merge([]*filled.File{filled.Read("x.csv", everyBox(t, jb), jb)})
		r := filled.Work(jb, values)
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4, Filled: r}, pdf.NewFaces(), nil)
		typed := typedOn(pack, "reassembly")
		for at, want := range foundAgain(jb, r) {
			held += len(want)
			if got := typed[at]; strings.Join(got, " ") != strings.Join(want, " ") {
				t.Errorf("%s: %v: the boxes hold %v, the readings are %v", starter, at, got, want)
			}
		}
	}
	if held < 120 {
		t.Errorf("only %d values are held against their readings", held)
	}
}

// everyBox is a file with another value for every box of digits as found, each looked at
// again, for most are far from what is expected.
func everyBox(t *testing.T, jb *job.Job) []byte {
	t.Helper()
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	w.Write([]string{"mark", "position", "side", "value", "looked again"})
	w.Write([]string{"typed by", "", "", "A. Penn", ""})
	w.Write([]string{"typed on", "", "", "2026-03-14", ""})
	for i, b := range jb.Blanks() {
		if b.When != job.AsFound || b.Kind != job.ReadingBlank || b.Box.Form != reading.Digits {
			continue
		}
		room := 9
		for range min(b.Box.Before+b.Box.After-1, 2) {
			room *= 10
		}
		n := units.Exact(big.NewRat(int64(1+i%room), 1), 0)
		for range b.Box.After {
			n = n.Quo(units.Whole(10))
		}
		q := units.Quantity{Number: n.Round(b.Box.After, units.Nearest), Unit: b.Box.Unit}
		w.Write([]string{b.Dim.Mark, filled.Position(b), "found", q.Text(), "B. Hale"})
	}
	w.Flush()
	return out.Bytes()
}

// typedOn are the texts in the dashed boxes of a sheet, by the dimension they belong to,
// in the order of the pages.
func typedOn(pack *templates.Pack, sheet string) map[layout.Ref][]string {
	out := map[layout.Ref][]string{}
	for _, f := range pack.Pages.Pages {
		if f.Sheet != sheet {
			continue
		}
		for i, it := range f.Items {
			if rect, isBox := it.Shape.(layout.Rect); it.Role == layout.RoleTyped && isBox && rect.Dash > 0 && i+1 < len(f.Items) {
				if s, ok := f.Items[i+1].Shape.(layout.Text); ok {
					out[it.Ref] = append(out[it.Ref], s.S)
				}
			}
		}
	}
	return out
}

// foundAgain are the readings as found that the put-back rows copy, by the dimension, in
// the order of the steps; those that are worked out, or have a mean beside them, left out.
func foundAgain(jb *job.Job, r *filled.Result) map[layout.Ref][]string {
	out, not := map[layout.Ref][]string{}, map[layout.Ref]bool{}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			for _, d := range append(append([]*job.Dim{}, st.Set...), st.Recall...) {
				at := layout.Ref(d.At)
				if not[at] = not[at] || d.ByHand() || d.Sheet || d.Box.Form != reading.Digits || len(d.Groups()) > 0 || d.FoundAt == nil || !s.Back || st.If != nil || st.Table; not[at] {
					continue
				}
				for n := range d.Positions.Boxes() {
					one, i := d.Single(n)
					out[at] = append(out[at], r.Typed(job.BlankKey(one.Mark, job.AsFound, job.ReadingBlank, i)))
				}
			}
		}
	}
	for at := range not {
		if not[at] {
			delete(out, at)
		}
	}
	return out
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
			"D20/NDE 1.1200 mm", "D14 0.0500 mm", "D4 2.40 mm", "D12/DE-DIS 0.85 mm", "lower 0.02 mm", "raise 0.09 mm", "D3 no. 4: 270°", "X51 found: crack", "the blue ran out",
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
