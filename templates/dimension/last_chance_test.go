package dimension

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// good is a job of testdata/good with what its blocks are set by.
func good(t *testing.T, file string, width layout.Mm) (*job.Job, *block.Composer) {
	t.Helper()
	jb, problems := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: file})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return jb, block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, width)
}

// Eight vanes with three boxes each stood in eight frames with the words of all, because each is
// gone with a step of its own. Common practice, no source: a row a vane below one head.
func TestPlacesThatAreGoneOneByOneStandInOneBlock(t *testing.T) {
	t.Parallel()
	jb, c := good(t, "guide-vanes.yaml", 180)
	var ds []*job.Dim
	for _, d := range jb.Dims {
		if d.Base == "D1" {
			ds = append(ds, d)
		}
	}
	if len(ds) != 8 || ds[0].LastChance == ds[7].LastChance {
		t.Fatalf("%d places of D1, want 8 with a last chance of their own each", len(ds))
	}
	set, _ := Blocks(c, ds, Found, ds[0].At, true)
	if len(set) != 1 {
		t.Fatalf("D1 of the vanes stands in %d frames, want 1", len(set))
	}
	want := words.English.Dimension.GoneAfter.With(ds[0].LastChance.No + "–" + ds[7].LastChance.No)
	if told := spaced(text(set[0])); strings.Count(told, spaced(want)) != 1 {
		t.Errorf("the frame does not say once %q: %s", want, told)
	}
}

// The boxes for what the leaves of a pack are made of stood in rows below all leaves, where
// nobody could tell which belongs to which.
func TestMaterialStandsBelowItsLeaf(t *testing.T) {
	t.Parallel()
	jb, c := good(t, "guide-vanes.yaml", 88)
	for _, d := range jb.Dims {
		if d.Base != "D13" {
			continue
		}
		rows, below := leafRows(c, d, sidesOf(c, d, Found))
		if len(rows) != 1 || len(rows[0]) != d.Leaves()+1 || len(below) != 0 {
			t.Fatalf("%s: %d lists, of %d pieces, and %d below; want 1 of %d, 0 below", d.Mark, len(rows), len(rows[0]), len(below), d.Leaves()+1)
		}
		for i, b := range rows[0] {
			if has := strings.Contains(text(b), words.English.Shims.Material); has != (i < d.Leaves()) {
				t.Errorf("%s, piece %d of its list has the box for its material: %v", d.Mark, i+1, has)
			}
		}
	}
}

// spaced is a text with one plain space between its words.
func spaced(text string) string { return strings.Join(strings.Fields(text), " ") }
