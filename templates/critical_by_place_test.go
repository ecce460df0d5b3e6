package templates_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/templates"
)

// Positions with limits of their own, judged as found, had one box for the smallest of all and
// one for the largest, though what is large at one is small at the other. However the limits of
// three positions are alike, and on whichever side they stand, the critical sheet has a box for
// each of a limit of its own, and the two extremes of those alone that share one.
func TestCriticalSheetJudgesEachPositionByItsLimit(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		side := rapid.SampledFrom([]string{"found", "left"}).Draw(t, "side")
		same := map[int]int{} // how many positions have which limit
		var limits []string
		for _, name := range []string{"north", "south", "west"} {
			l := rapid.IntRange(20, 22).Draw(t, name)
			same[l]++
			limits = append(limits, fmt.Sprintf("%s: %d.00 to %d.20 mm", name, l, l))
		}
		text := `pack: 1
equipment: {tag: X-1, name: Machine}
job: {number: "1", title: Law, revision: A, issued: 2026-03-02}
parts: {body: {name: Body}, cover: {name: Cover}}
dimensions:
  D1: {what: Bore, of: {body: bore}, at: [north, south, west], nominal: 20.00 mm, critical: yes, source: sheet 1, ` + side + ": {" + strings.Join(limits, ", ") + "}}\n" + `containers: {C1: {name: Cover, kind: box}}
steps:
  - {step: read, do: Read it., measure: [D1]}
  - {step: off, do: Take it off., remove: [cover], into: C1}
`
		jb, err := loadText(text)
		if err != nil {
			t.Fatalf("%v\n%s", err, text)
		}
		extremes := 0
		for _, n := range same {
			if n > 1 {
				extremes++
			}
		}
		if side == "left" {
			extremes *= 2 // as found and as left
		}
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		smallest, largest := 0, 0
		for _, f := range pack.Pages.Pages {
			for _, part := range f.Parts {
				if part.Sheet != "critical" {
					continue
				}
				for _, it := range f.Items[part.From:part.To] {
					if s, is := it.Shape.(layout.Text); is {
						smallest += strings.Count(s.S, "smallest")
						largest += strings.Count(s.S, "largest")
					}
				}
			}
		}
		if smallest != extremes || largest != extremes {
			t.Fatalf("%d boxes for a smallest and %d for a largest, want %d of each\n%s", smallest, largest, extremes, text)
		}
	})
}
