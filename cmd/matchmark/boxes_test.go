package main

import (
	"path/filepath"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates"
)

// TestEveryBoxHasOneRow: each printed box of a dimension has one row of the file in
// which the readings come back, and each row its box, on both papers.
func TestEveryBoxHasOneRow(t *testing.T) {
	t.Parallel()
	for _, path := range ownWith(t, 40) {
		for _, paper := range papers {
			jb, pack := composedFile(t, path, templates.Options{Paper: paper})
			boxesAndRows(t, filepath.Base(path)+" on "+paper.Name, jb, pack)
		}
	}
}

func boxesAndRows(t *testing.T, name string, jb *job.Job, pack *templates.Pack) {
	t.Helper()
	drawn := map[string]int{}
	plain := map[layout.Ref]string{} // dimensions of which nothing is worked out where they are found
	for _, d := range jb.Dims {
		if !d.ByHand() && d.Warm == nil {
			plain[layout.Ref(d.At)] = d.Base
		}
	}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			for _, d := range st.Set {
				if !s.Back { // set on the traveler: the difference has no row
					delete(plain, layout.Ref(d.At))
				}
			}
		}
	}
	for _, f := range pack.Pages.BySheet() {
		for _, it := range f.Items {
			solid, isBox := it.Shape.(layout.Rect)
			if base := plain[it.Ref]; f.Sheet == "traveler" && base != "" && isBox && solid.Dash == 0 && it.Role == layout.RoleValue && it.Key == "" {
				t.Errorf("%s: a box of %s on the traveler has no row", name, base)
			}
			if it.Key != "" {
				drawn[it.Key]++
				if !strings.HasPrefix(it.Role, "box:") {
					t.Errorf("%s: %s is no box but %q", name, it.Key, it.Role)
				}
			}
		}
	}
	rows := map[string]int{}
	for _, b := range jb.Blanks() {
		rows[b.Key()]++
	}
	for key, n := range drawn {
		if n != 1 || rows[key] != 1 {
			t.Errorf("%s: the box %s is drawn %d times and has %d rows", name, key, n, rows[key])
		}
	}
	for key, n := range rows {
		if drawn[key] != 1 || n != 1 {
			t.Errorf("%s: the row %s stands %d times and its box is drawn %d times", name, key, n, drawn[key])
		}
	}
}
