package main

import (
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/packs/source"
	"matchmark/templates"
	"matchmark/templates/dimension"
)

// TestMatrixHeadsStandOnEachPage sees that a matrix over several pages repeats its
// mark and the names of its columns.
func TestMatrixHeadsStandOnEachPage(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := goodPack(t, "every-arrangement.yaml", paper, false)
		at := atOf(t, jb, "D6")
		pages := 0
		for _, f := range pack.Pages.BySheet() {
			one := &templates.Pack{Pages: &layout.Doc{Pages: []layout.Frame{f}}}
			if len(boxesOf(one, "readings", layout.RoleValue, at, 4)) == 0 {
				continue
			}
			pages++
			got := textsOf(one, "readings", at)
			for _, w := range []string{"D6", "Gap of the gate", "top", "upper third", "middle", "lower third", "bottom", "sill", "side"} {
				if !strings.Contains(got, w) {
					t.Errorf("%s page %d: no %q over the boxes of D6", paper.Name, f.Number, w)
				}
			}
			if f.W > f.H {
				t.Errorf("%s page %d is a wide page; a wide sheet is drawn turned on the upright one", paper.Name, f.Number)
			}
		}
		if pages < 2 {
			t.Errorf("%s: D6 stands on %d pages, want several", paper.Name, pages)
		}
	}
}

// TestStacksAndMarks sees the boxes for the order of a stack, for match marks and
// for the way round, and their ticks in putting back.
func TestStacksAndMarks(t *testing.T) {
	t.Parallel()
	jb, pack := goodPack(t, "every-arrangement.yaml", layout.A4, false)
	step := map[string]source.Pos{}
	for _, s := range jb.Sections {
		for _, st := range s.Steps {
			step[st.Key] = st.At
		}
	}
	// Six pieces at each of two ends.
	if n := len(boxesOf(pack, "traveler", layout.RoleWords, step["gland"], 0)); n != 2*6 {
		t.Errorf("%d boxes for the order of the gland, want %d", n, 2*6)
	}
	// At each end: mark used, where it stands, which way the lip faced.
	if n := len(boxesOf(pack, "traveler", layout.RoleWords, step["cover"], 0)); n != 2*3 {
		t.Errorf("%d boxes for match mark and way round of the cover, want %d", n, 2*3)
	}
	found := textsOf(pack, "traveler", step["gland"])
	for _, w := range []string{"K1/DE", "K1/NDE", "counted from the bearing outward", "lantern", "piece 6 as found"} {
		if !strings.Contains(found, w) {
			t.Errorf("the order of the gland does not say %q: %q", w, found)
		}
	}
	back := textsOf(pack, "reassembly", step["cover"]) + textsOf(pack, "reassembly", step["gland"])
	for _, w := range []string{"match marks of End cover meet", "Lip seal: lip faces the oil", "in the order from the bearing outward"} {
		if !strings.Contains(back, w) {
			t.Errorf("putting back does not say %q: %q", w, back)
		}
	}
}

// TestDimensionSheets sees every dimension in the index, and those with a limit on
// the critical sheet with their traps, with the page numbers that the boxes have.
func TestDimensionSheets(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"every-arrangement.yaml", "inch-blower.yaml"} {
		jb, pack := goodPack(t, name, layout.Letter, false)
		for _, d := range jb.Dims {
			index := textsOf(pack, "dimensions", d.At)
			if !strings.Contains(index, d.What) || !strings.Contains(index, d.Base) {
				t.Errorf("%s: %s is not in the index: %q", name, d.Mark, index)
			}
			critical := textsOf(pack, "critical", d.At)
			if d.Critical != strings.Contains(critical, d.Base) {
				t.Errorf("%s: %s critical %v, but the sheet says %q", name, d.Mark, d.Critical, critical)
			}
			if d.FoundAt == nil {
				continue
			}
			p := pageWith(pack, d)
			if p == 0 || !strings.Contains(index, d.FoundAt.No+" p. "+strconv.Itoa(p)) {
				t.Errorf("%s: %s is read at %s on page %d, the index says %q", name, d.Mark, d.FoundAt.No, p, index)
			}
		}
	}
	_, pack := goodPack(t, "every-arrangement.yaml", layout.A4, false)
	if got := sheetTexts(t, pack.Pages)["critical"]; !strings.Contains(got, "left-hand screw behind the plug") {
		t.Errorf("the trap at the NDE is not told on the critical sheet: %q", got)
	}
}

// pageWith is the first page that has a box of a dimension to be written in while

// TestNotTakenOnceAStep sees that a step of the traveler that takes several readings has
// one box for why some were not taken, and of four the mark of each to tick, unless that box
// asks for the mark.
func TestNotTakenOnceAStep(t *testing.T) {
	t.Parallel()
	for _, paper := range papers {
		jb, pack := goodPack(t, "every-arrangement.yaml", paper, false)
		want, got := map[layout.Ref]int{}, map[layout.Ref]int{} // boxes for the reason, by step
		ticked := map[string]int{}                              // boxes to tick, by mark
		asks := map[layout.Ref]bool{}                           // the box for the reason asks for the mark
		for _, f := range pack.Pages.BySheet() {
			for _, it := range f.Items {
				if f.Sheet != "traveler" || !ofNotTaken(f, it) {
					continue
				}
				if it.Role == layout.RoleWords {
					got[it.Ref]++
					asks[it.Ref] = asksMark(f, it)
					continue
				}
				_, top, right, bottom := it.Bounds()
				for _, x := range f.Items {
					if s, ok := x.Shape.(layout.Text); ok && x.Y >= top && x.Y <= bottom && x.X > right && x.X < right+2 {
						ticked[s.S]++
					}
				}
			}
		}
		fours := 0
		for _, s := range jb.Sections {
			for _, st := range s.Steps {
				written := dimension.Written(st.Measure, dimension.Found)
				if st.Undoes != nil || len(written) < 2 {
					continue
				}
				want[layout.Ref(st.At)]++
				ticks := 0
				if len(written) == 4 && !asks[layout.Ref(st.At)] {
					ticks = 1
				}
				for _, d := range written {
					if n := ticked[d.Mark]; n != ticks && len(written) >= 4 {
						t.Errorf("%s: step %s with %d readings has %d boxes to tick for %s", paper.Name, st.No, len(written), n, d.Mark)
					}
				}
				if len(written) == 4 {
					fours++
				}
			}
		}
		if fours == 0 {
			t.Errorf("%s: no step takes four readings", paper.Name)
		}
		for at, n := range want {
			if got[at] != n {
				t.Errorf("%s: %v: %d boxes for why readings were not taken, want %d", paper.Name, at, got[at], n)
			}
		}
	}
}
