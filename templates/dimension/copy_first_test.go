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
	c := &block.Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), Job: jb, W: words.English, Span: 180, Kept: block.NewKept()}
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
