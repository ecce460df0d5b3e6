package main

import (
	"slices"
	"testing"

	"matchmark/layout"
	"matchmark/templates"
)

// Bag labels and the log of tools and rags had the words of a verdict, "OK" and "not
// OK", above the boxes for what is counted in and out.
func TestPiecesAreCountedInAndOut(t *testing.T) {
	t.Parallel()
	const in, out = "counted in", "counted out"
	for _, starter := range starters(t) {
		_, pack := composed(t, starter, templates.Options{Paper: layout.A4})
		tags, openings := textsOn(pack.Tags, "tags"), textsOn(pack.Pages, "openings")
		for sheet, texts := range map[string][]string{"tags": tags, "openings": openings} {
			if len(texts) == 0 {
				continue // nothing is opened in this job
			}
			for _, word := range []string{"OK", "not OK"} {
				if slices.Contains(texts, word) {
					t.Errorf("%s: the sheet %s judges, %q", starter, sheet, word)
				}
			}
			for _, word := range []string{in, out} {
				if !slices.Contains(texts, word) {
					t.Errorf("%s: the sheet %s does not say %q", starter, sheet, word)
				}
			}
		}
		// Every label has its two boxes, whatever its size.
		count := func(word string) (n int) {
			for _, s := range tags {
				if s == word {
					n++
				}
			}
			return n
		}
		if ins, outs := count(in), count(out); ins != pack.TagCount || outs != pack.TagCount {
			t.Errorf("%s: %d boxes for counting in and %d for counting out on %d tags", starter, ins, outs, pack.TagCount)
		}
	}
}

// textsOn lists the texts of a sheet.
func textsOn(d *layout.Doc, sheet string) []string {
	var out []string
	for _, f := range d.BySheet() {
		for _, it := range f.Items {
			if s, ok := it.Shape.(layout.Text); ok && f.Sheet == sheet {
				out = append(out, s.S)
			}
		}
	}
	return out
}
