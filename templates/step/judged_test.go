package step

import (
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// The two boxes to tick for a set of six stood beside each other in every language, and in
// French ran 4 mm over the edge of the paper; no misfit was told.
func TestTheBoxesOfASetStayInTheirFrame(t *testing.T) {
	t.Parallel()
	for _, code := range def.Tongues {
		w, err := words.In(code)
		if err != nil {
			t.Fatal(err)
		}
		for _, count := range []int{2, 6, 18, 144} {
			for _, span := range []layout.Mm{180, 190, 196} {
				c := block.New(pdf.NewFaces(), layout.Pen{}, &job.Job{}, w, span)
				st := &job.Step{No: "9.6", Judge: []*job.Set{{Mark: "S2", What: "All springs", Members: []*job.Part{{Count: count}}}}}
				for _, b := range judged(c, st) {
					for _, it := range b.Items() {
						if _, _, right, _ := it.Bounds(); right > span+0.2 {
							t.Errorf("%s, %d pieces: %v reaches to %.1f mm, and the paper has %.0f", code, count, it.Shape, right, span)
						}
					}
					if len(b.Misfits()) > 0 {
						t.Errorf("%s, %d pieces: %v", code, count, b.Misfits())
					}
				}
			}
		}
	}
}
