package dimension

import (
	"os"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// setBack are the texts of the readings that each step of a starter sets again, a list a step.
func setBack(t *testing.T, starter string, of func(*job.Dim) bool) (dims [][]*job.Dim, texts [][]string) {
	t.Helper()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: starter})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	for _, st := range jb.Steps() {
		ds := slices.DeleteFunc(slices.Clone(st.Set), func(d *job.Dim) bool { return !of(d) })
		if len(ds) == 0 {
			continue
		}
		blocks, _ := Blocks(c, ds, Left, st.At, true)
		var said []string
		for _, b := range blocks {
			for _, it := range b.Items() {
				if text, ok := it.Shape.(layout.Text); ok {
					said = append(said, strings.ReplaceAll(text.S, "\u00a0", " "))
				}
			}
		}
		dims, texts = append(dims, ds), append(texts, said)
	}
	if len(dims) == 0 {
		t.Fatalf("%s has no such reading", starter)
	}
	return dims, texts
}

// The ends of a limit stood before the value found from which they are worked out: who went
// through the boxes in their order reckoned with an empty one. Common practice, no source.
func TestValueFoundStandsBeforeItsEnds(t *testing.T) {
	t.Parallel()
	for _, starter := range []string{"storm-pump.yaml", "exhaust-fan.yaml"} {
		dims, texts := setBack(t, starter, func(d *job.Dim) bool {
			return needsFound(d) && d.Positions.Kind == job.Single && d.FoundAt != nil && d.Leaves() == 0
		})
		for i, said := range texts {
			copied := slices.IndexFunc(said, func(s string) bool { return strings.HasPrefix(s, "as found, copy") })
			least := slices.IndexFunc(said, func(s string) bool { return strings.HasPrefix(s, words.English.Ladder.LowEnd) })
			if copied < 0 || least < 0 || copied > least {
				t.Errorf("%s: %s: the value found is copied at %d, its lower end worked out at %d of %q", starter, dims[i][0].Mark, copied, least, said)
			}
		}
	}
}

// The row of a pack as found had a page for its name, and nothing said what to do with it.
func TestPackFoundSaysCopy(t *testing.T) {
	t.Parallel()
	dims, texts := setBack(t, "storm-pump.yaml", func(d *job.Dim) bool { return d.Leaves() > 0 && d.FoundAt != nil })
	for i, said := range texts {
		copies := 0
		for _, s := range said {
			if strings.HasPrefix(s, "as found, copy") {
				copies++
			}
			if strings.HasPrefix(s, "p. ") {
				t.Errorf("%s: a row is named %q alone", dims[i][0].Mark, s)
			}
		}
		if copies < len(dims[i]) {
			t.Errorf("%s: %d of %d packs say that they are copied: %q", dims[i][0].Mark, copies, len(dims[i]), said)
		}
	}
}

// The drive end is put back after the other one, and its row stood below that from which the
// sheet of the reading found has it above.
func TestLikePlacesInOneOrder(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "storm-pump.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	var ends []*job.Dim
	for _, d := range jb.Dims {
		if d.Base == "D35" {
			ends = append(ends, d)
		}
	}
	if len(ends) != 2 {
		t.Fatalf("D35 has %d ends, want 2", len(ends))
	}
	for _, kind := range []Kind{Found, Left} {
		all := membersOf(c, setOf{[]*job.Dim{ends[1], ends[0]}, kind, nil, true})
		if len(all) != 1 || len(all[0].entries) != 2 {
			t.Fatalf("the ends of D35 do not stand in one frame")
		}
		if got := all[0].entries[0].d; got != ends[0] {
			t.Errorf("use %d: %s stands first, want %s as defined", kind, got.Mark, ends[0].Mark)
		}
	}
}

// A box at the left side that is read as left said "as left, left".
func TestPlaceStandsBeforeItsUse(t *testing.T) {
	t.Parallel()
	_, texts := setBack(t, "bevel-gearbox.yaml", func(d *job.Dim) bool { return d.Base == "D15" })
	for _, said := range texts {
		for _, want := range []string{"top, as left, mm", "right, as left", "left, as left"} {
			if !slices.Contains(said, want) {
				t.Errorf("no box says %q: %q", want, said)
			}
		}
	}
}

// A line of boxes ended between the two angles of a plane.
func TestNoPlaneIsCutInTwo(t *testing.T) {
	t.Parallel()
	planes := job.Positions{Kind: job.Grid, Rows: []string{"A", "B", "C"}, Cols: []string{"0°", "90°"}}
	for _, x := range []struct {
		p       job.Positions
		n, want int
	}{{planes, 3, 4}, {planes, 2, 2}, {planes, 6, 6}, {job.Positions{Kind: job.Row, Cols: planes.Cols}, 1, 1}, {job.Positions{Kind: job.Grid, Rows: planes.Rows}, 2, 2}} {
		if got := inGroups(x.p, x.n); got != x.want {
			t.Errorf("%d positions of %v by %v on a line: %d go on it, want %d", x.n, x.p.Rows, x.p.Cols, got, x.want)
		}
	}
}

// Boxes to tick that say which readings were not taken stood beside "not taken, because" and did
// not say that they are ticked for that.
func TestTickedReadingsAreThoseNotTaken(t *testing.T) {
	t.Parallel()
	c := block.New(pdf.NewFaces(), layout.Pen{}, nil, words.English, 180)
	says := func(ds ...*job.Dim) (which bool) {
		for _, it := range notTaken(c, ds, nil, 170).Items() {
			text, ok := it.Shape.(layout.Text)
			which = which || ok && text.S == words.English.Step.NotTaken
		}
		return which
	}
	if d := (&job.Dim{Mark: "D1/DE"}); says(d) || !says(d, &job.Dim{Mark: "D1/NDE"}) {
		t.Error("two readings are to be told apart in the box for the reason, and one is not")
	}
}
