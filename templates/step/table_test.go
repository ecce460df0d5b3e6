package step

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// The row of a place said "1" and below it "vane 1", so that eight rows took two pages. The words
// of all stand above the first row: no page need begin with a row.
func TestRowOfAPlaceNamesItOnce(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../testdata/good"), packs.Inputs{Definition: "guide-vanes.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	for _, s := range jb.Sections {
		if s.No != "9" {
			continue
		}
		ps := Table(c, s.Steps)
		rows := ps[len(ps)-len(s.Steps):]
		for i, p := range rows {
			said := " "
			for _, it := range p.Block.Items() {
				if text, ok := it.Shape.(layout.Text); ok {
					said += text.S + " "
				}
			}
			label := s.Steps[i].Place.Label
			if !strings.Contains(said, " vane "+label+" ") || strings.Contains(strings.Replace(said, "vane "+label, "", 1), " "+label+" ") {
				t.Errorf("the row of vane %s says: %s", label, said)
			}
			if p.Led != (i > 0) {
				t.Errorf("row %d is led by what stands above it: %v", i+1, p.Led)
			}
		}
		return
	}
	t.Error("no section of vanes")
}
