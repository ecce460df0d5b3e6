package main

import (
	"testing"

	"matchmark/layout"
	"matchmark/packs/def"
)

// overFrames are the texts of a page that begin within a frame and reach over its right edge.
func overFrames(f layout.Frame) []string {
	type frame struct{ left, top, right, bottom layout.Mm }
	var frames []frame
	for _, it := range f.Items {
		if r, ok := it.Shape.(layout.Rect); ok && it.Turn == 0 && r.Fill == 0 {
			left, top, right, bottom := it.Bounds()
			frames = append(frames, frame{left, top, right, bottom})
		}
	}
	var out []string
	for _, it := range f.Items {
		text, ok := it.Shape.(layout.Text)
		if !ok || it.Turn != 0 {
			continue
		}
		left, top, right, _ := it.Bounds()
		middle := (top + it.Y) / 2
		for _, x := range frames {
			if left > x.left && left < x.right-0.3 && middle > x.top && middle < x.bottom && right > x.right+0.1 {
				out = append(out, text.S)
				break
			}
		}
	}
	return out
}

// TestTextsStayInTheirFrames in every language: words are longer in others than in English,
// and a row whose width is set by hand tells no misfit. The papers take turns.
func TestTextsStayInTheirFrames(t *testing.T) {
	longTest(t)
	t.Parallel()
	for i, name := range []string{"exhaust-fan", "storm-pump", "triplex-pump", "bevel-gearbox"} {
		for k, code := range def.Tongues {
			paper := papers[(i+k)%len(papers)]
			_, pack := inTongue(t, name+".yaml", code, paper)
			for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
				for n, f := range doc.Pages {
					for _, text := range overFrames(f) {
						t.Errorf("%s in %s on %s, page %d: %q reaches over its frame", name, code, paper.Name, n+1, text)
					}
				}
			}
		}
	}
}
