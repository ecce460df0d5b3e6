package templates_test

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates"
)

// Each row of the critical sheet kept the room of two rows of boxes between its box and what is
// measured, which stands above it in words: 17 mm of the storm-water pump. Boxes below boxes are
// as far apart as a pen needs.
func TestCriticalBoxesStandNearTheirWords(t *testing.T) {
	t.Parallel()
	near, below := 0, 0
	for _, name := range []string{"storm-pump.yaml", "triplex-pump.yaml", "bevel-gearbox.yaml", "exhaust-fan.yaml"} {
		jb, _ := packs.Load(os.DirFS("../packs/starters"), packs.Inputs{Definition: name})
		pack, _ := templates.Compose(jb, templates.Options{Paper: layout.A4}, pdf.NewFaces(), nil)
		for _, f := range pack.Pages.Pages {
			for _, part := range f.Parts {
				if part.Sheet != "critical" {
					continue
				}
				items := f.Items[part.From:part.To]
				for i, it := range items {
					if !strings.HasPrefix(it.Role, "box:") || it.Role == layout.RoleTick || it.Role == layout.RoleSign {
						continue
					}
					left, top, right, _ := it.Bounds()
					words, boxes := layout.Mm(-1), layout.Mm(-1) // the lowest above it
					for k, other := range items {
						l, _, r, b := other.Bounds()
						if k == i || b > top+0.2 || l > right || r < left {
							continue
						}
						switch {
						case strings.HasPrefix(other.Role, "box:") && other.Role != layout.RoleTick:
							boxes = max(boxes, b)
						case other.Role == "":
							if text, is := other.Shape.(layout.Text); is && text.Size > layout.Caption.Size {
								words = max(words, b)
							}
						}
					}
					if boxes >= 0 && top-boxes < layout.GapY-0.35 { // their outlines
						t.Errorf("%s page %d: a box at %.1f mm stands %.1f mm below another", name, f.Number, top, top-boxes)
					}
					switch {
					case words > boxes && top-words < 1.5:
						near++
					case boxes >= 0:
						below++
					}
				}
			}
		}
	}
	if near < 20 || below < 2 {
		t.Errorf("%d boxes stand near the words above them, %d below others; want 20 and 2 or more", near, below)
	}
}
