package liftsheet

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

// The name of a sling at a far corner took two lines of its cell, beside a cell for the number
// on its tag that was wider than a hand needs for it.
func TestNameOfGearTakesALine(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "storm-pump.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	tested := 0
	for _, l := range jb.Lifts {
		grid, rows := gearRows(c, l)
		if w := grid.Table.Columns[1].Width; w < leastNumber || grid.Table.Columns[2].Width != gearDay {
			t.Errorf("%s: the cells of a tag are %.1f and %.1f mm wide", l.Mark, w, grid.Table.Columns[2].Width)
		}
		for _, r := range rows {
			for _, cell := range r.Cells {
				said := ""
				for _, it := range cell.Items() {
					if text, ok := it.Shape.(layout.Text); ok {
						said += "\n" + strings.ReplaceAll(text.S, "\u00a0", " ")
					}
				}
				if strings.Contains(said, "NDE") && strings.Contains(said, "Screw sling") {
					tested++
					if !strings.Contains(said, ", NDE-SUC\n") && !strings.Contains(said, ", NDE-DIS\n") {
						t.Errorf("%s: the name of a sling is parted:%s", l.Mark, said)
					}
				}
			}
		}
	}
	if tested != 2 {
		t.Errorf("%d slings of the non-drive end were looked at, want 2", tested)
	}
}
