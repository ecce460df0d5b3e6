package block

import (
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// The panels of the signal words differed with the length of their word and with the lines of
// their note: on one page a WARNING was larger than a DANGER.
func TestSignalPlatesOfAPageAreAlike(t *testing.T) {
	t.Parallel()
	var notes []*job.Caution
	for _, signal := range []string{"danger", "warning", "caution", "notice"} {
		for _, text := range []string{"Stand clear.", "Stand clear of the load and of the way that it takes. Nobody goes under it before it stands on its timbers and the one in charge has said so."} {
			notes = append(notes, &job.Caution{Key: signal + text, Signal: signal, Hazard: "Load on the hook.", Avoid: text, Signs: []string{"W015"}, Steps: []*job.Step{{}}})
		}
	}
	set := layout.NewSetter(pdf.NewFaces(), layout.Pen{})
	for _, code := range []string{"en", "de", "es", "fr", "pl"} {
		w, err := words.In(code)
		if err != nil {
			t.Fatal(err)
		}
		c := &Composer{Setter: set, Job: &job.Job{Notes: notes}, W: w, Span: 180}
		var plate layout.Rect
		for _, n := range notes {
			for _, b := range []layout.Block{c.Caution(n), c.CautionAgain(n), c.CautionsInRow([]*job.Caution{n})} {
				found := false
				for _, it := range b.Items() {
					r, ok := it.Shape.(layout.Rect)
					if !ok || r.Fill != layout.Black {
						continue
					}
					found = true
					if plate.W == 0 {
						plate = r
					}
					if off := max(r.W-plate.W, plate.W-r.W, r.H-plate.H, plate.H-r.H); off > 0.01 {
						t.Errorf("%s: the panel of %s is %.1f by %.1f mm, another one %.1f by %.1f", code, n.Signal, r.W, r.H, plate.W, plate.H)
					}
				}
				if !found {
					t.Errorf("%s: no panel of %s was found", code, n.Signal)
				}
			}
		}
	}
}
