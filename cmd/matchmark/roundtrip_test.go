package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math/big"
	"os"
	"path/filepath"
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

// TestFilledRoundTrip: each dashed box of the reassembly sheet carries the value of its own
// reading. Every box as found of every starter is given another value; then the boxes of
// each dimension, in the order of the pages, hold its readings in the order of its steps,
// places and positions: single ones, rows, clocks, those of several places in one block, and
// grids, as they are written or turned, by the heads of their tables.
func TestFilledRoundTrip(t *testing.T) {
	t.Parallel()
	held, grids := 0, 0
	for _, starter := range starters(t) {
		jb := loadedFile(t, filepath.Join(startersDir, starter))
		values, _ := filled.Merge([]*filled.File{filled.Read("x.csv", everyBox(t, jb), jb)})
		r := filled.Work(jb, values)
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4, Filled: r}, pdf.NewFaces(), nil)
		typed := typedOn(pack, "reassembly")
		for at, want := range foundAgain(jb, r) {
			held += len(want)
			if len(typed[at]) != len(want) {
				t.Errorf("%s: %v: %d boxes for %d readings", starter, at, len(typed[at]), len(want))
				continue
			}
			for i, box := range typed[at] {
				one, err := ownReading(want, i, box)
				if err != nil {
					t.Errorf("%s: %v: %v", starter, at, err)
				} else if box.text != one.value {
					t.Errorf("%s: %v: the box %d, below %q and beside %q, holds %s, its reading is %s", starter, at, i+1, box.above, box.beside, box.text, one.value)
				}
				if one.row != "" {
					grids++
				}
			}
		}
	}
	if held < 110 {
		t.Errorf("only %d values are held against their readings", held)
	}
	if grids < 18 {
		t.Errorf("only %d values of grids are held against the heads of their tables", grids)
	}
}

// A typedBox is a box with what stands above and beside it in its table.
type typedBox struct{ text, above, beside string }

// An again is a reading that is copied, of a grid with the names of its row and its column.
type again struct {
	value    string
	row, col string
	from, to int // the readings of its grid
}

// ownReading is the reading that a box is for: the next one, in a grid that which is named above and
// beside the box, as the grid is written or turned.
func ownReading(all []again, i int, box typedBox) (again, error) {
	if all[i].row == "" {
		return all[i], nil
	}
	var named []again
	for _, x := range all[all[i].from:all[i].to] {
		written := strings.Contains(box.above, x.col) && strings.Contains(box.beside, x.row)
		turned := strings.Contains(box.above, x.row) && strings.Contains(box.beside, x.col)
		if written || turned {
			named = append(named, x)
		}
	}
	if len(named) != 1 {
		return again{}, fmt.Errorf("%d readings are named above (%q) and beside (%q) the box of %s", len(named), box.above, box.beside, box.text)
	}
	return named[0], nil
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
func typedOn(pack *templates.Pack, sheet string) map[layout.Ref][]typedBox {
	out := map[layout.Ref][]typedBox{}
	for _, f := range pack.Pages.BySheet() {
		if f.Sheet != sheet {
			continue
		}
		words := wordsOutside(f.Items)
		for i, it := range f.Items {
			if rect, isBox := dashed(it); isBox && i+1 < len(f.Items) {
				if s, ok := f.Items[i+1].Shape.(layout.Text); ok {
					above, beside := headsOf(it, rect, words)
					out[it.Ref] = append(out[it.Ref], typedBox{s.S, above, beside})
				}
			}
		}
	}
	return out
}

// dashed is the frame of a box that holds what was copied.
func dashed(it layout.Item) (layout.Rect, bool) {
	rect, isBox := it.Shape.(layout.Rect)
	return rect, isBox && it.Role == layout.RoleTyped && rect.Dash > 0
}

// wordsOutside are the texts of a page that are not typed into a box.
func wordsOutside(items []layout.Item) []layout.Item {
	var out []layout.Item
	for i, it := range items {
		if _, ok := it.Shape.(layout.Text); !ok {
			continue
		}
		if i > 0 {
			if _, typed := dashed(items[i-1]); typed {
				continue
			}
		}
		out = append(out, it)
	}
	return out
}

// headsOf are the words that stand nearest above a box, in its width, and nearest before it, at its
// height: the heads of its column and of its row.
func headsOf(box layout.Item, rect layout.Rect, words []layout.Item) (above, beside string) {
	top, left := layout.Mm(0), layout.Mm(0)
	for _, it := range words {
		text := " " + it.Shape.(layout.Text).S
		switch {
		case it.Ref != box.Ref:
		case it.Y <= box.Y && it.X > box.X-0.5 && it.X < box.X+rect.W:
			if it.Y > top {
				top, above = it.Y, ""
			}
			if it.Y == top {
				above += text
			}
		case it.Y > box.Y && it.Y <= box.Y+rect.H && it.X < box.X:
			if it.X > left {
				left, beside = it.X, ""
			}
			if it.X == left {
				beside += text
			}
		}
	}
	return plainSpaces(above), plainSpaces(beside)
}

func plainSpaces(s string) string { return strings.ReplaceAll(s, "\u00a0", " ") }

// foundAgain are the readings as found that the put-back rows copy, by the dimension, in
// the order of the steps, of like steps in that of the definition; those that are worked
// out, or have a mean beside them, left out.
func foundAgain(jb *job.Job, r *filled.Result) map[layout.Ref][]again {
	out, not := map[layout.Ref][]again{}, map[layout.Ref]bool{}
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
				from := len(out[at])
				for n := range d.Positions.Boxes() {
					one, i := d.Single(n)
					x := again{value: units.Pointed(r.Typed(job.BlankKey(one.Mark, job.AsFound, job.ReadingBlank, i))), from: from, to: from + d.Positions.Boxes()}
					if rows, cols := one.Positions.Rows, one.Positions.Cols; len(rows) > 0 && len(cols) > 0 {
						x.row, x.col = plainSpaces(rows[i/len(cols)]), plainSpaces(cols[i%len(cols)])
					}
					out[at] = append(out[at], x)
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
