package main

import (
	"bytes"
	"encoding/csv"
	"math/big"
	"os"
	"path/filepath"
	"slices"
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

// TestFilledRoundTrip: each dashed box of the reassembly sheet carries the value of its own
// reading. Every box as found of every starter is given another value; then the boxes of
// each dimension, in the order of the pages, hold its readings in the order of its steps,
// places and positions: single ones, rows, clocks, grids as they are written or turned, and
// those of several places in one block.
func TestFilledRoundTrip(t *testing.T) {
	t.Parallel()
	held := 0
	for _, starter := range starters(t) {
		jb := loadedFile(t, filepath.Join(startersDir, starter))
		values, _ := filled.Merge([]*filled.File{filled.Read("x.csv", everyBox(t, jb), jb)})
		r := filled.Work(jb, values)
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4, Filled: r}, pdf.NewFaces(), nil)
		typed := typedOn(pack, "reassembly")
		turned := foundAgain(jb, r, true)
		for at, want := range foundAgain(jb, r, false) {
			held += len(want)
			if got := typed[at]; !slices.Equal(got, want) && !slices.Equal(got, turned[at]) {
				t.Errorf("%s: %v: the boxes hold %v, the readings are %v", starter, at, got, want)
			}
		}
	}
	if held < 110 {
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
	for _, f := range pack.Pages.BySheet() {
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
// the order of the steps, of like steps in that of the definition; those that are worked
// out, or have a mean beside them, left out. The positions of grids go down their columns where
// they are turned.
func foundAgain(jb *job.Job, r *filled.Result, turned bool) map[layout.Ref][]string {
	out, not := map[layout.Ref][]string{}, map[layout.Ref]bool{}
	for _, s := range jb.Sections {
		like := map[string][]*job.Dim{} // of like steps, as the definition has them
		for _, st := range s.Steps {
			like[st.Key] = append(append(like[st.Key], st.Set...), st.Recall...)
		}
		for _, st := range s.Steps {
			dims := like[st.Key]
			delete(like, st.Key)
			slices.SortFunc(dims, func(a, b *job.Dim) int { return slices.Index(jb.Dims, a) - slices.Index(jb.Dims, b) })
			for _, d := range dims {
				at := layout.Ref(d.At)
				if not[at] = not[at] || d.ByHand() || d.Sheet || d.Box.Form != reading.Digits || len(d.Groups()) > 0 || d.FoundAt == nil || !s.Back || st.If != nil || st.Table; not[at] {
					continue
				}
				for n := range d.Positions.Boxes() {
					one, i := d.Single(n)
					if rows, cols := len(one.Positions.Rows), len(one.Positions.Cols); turned && rows > 0 && cols > 0 {
						i = i%rows*cols + i/rows
					}
					out[at] = append(out[at], units.Pointed(r.Typed(job.BlankKey(one.Mark, job.AsFound, job.ReadingBlank, i))))
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

// TestDraftsHaveRows: a definition with problems has holes, and its file of readings is
// written all the same.
func TestDraftsHaveRows(t *testing.T) {
	t.Parallel()
	for _, name := range definitions(t, "bad") {
		jb, _ := packs.Load(os.DirFS(filepath.Join(testdata, "bad")), packs.Inputs{Definition: name})
		var out bytes.Buffer
		if err := filled.WriteBlank(&out, jb, nil); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		values, _ := filled.Merge([]*filled.File{filled.Read("x.csv", out.Bytes(), jb)})
		if r := filled.Work(jb, values); len(r.Problems) > 0 {
			t.Errorf("%s: an empty file says %v", name, r.Problems)
		}
	}
}
