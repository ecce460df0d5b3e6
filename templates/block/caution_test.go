package block

import (
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// A hazard that is longer than a line ran over the edge of the paper on each page that its
// step goes on to.
func TestLongHazardsStayOnThePaper(t *testing.T) {
	t.Parallel()
	c := &Composer{Setter: layout.NewSetter(pdf.NewFaces(), layout.Pen{}), Job: &job.Job{}, W: words.English, Span: 190}
	long := strings.Repeat("A load hangs over the way of the crane. ", 6)
	b := c.CautionsInRow([]*job.Caution{{Key: "short", Signal: "warning", Hazard: "Puller under load."}, {Key: "long", Signal: "danger", Hazard: long, Signs: []string{"W015"}}})
	for _, it := range b.Items {
		if left, _, right, _ := it.Bounds(); left < -0.2 || right > c.Span+0.2 {
			t.Errorf("%v reaches from %.1f to %.1f mm, and the paper has %.0f", it.Shape, left, right, c.Span)
		}
	}
	if b.W > c.Span || len(b.Misfits) > 0 {
		t.Errorf("the notes are %.1f mm wide, with %v", b.W, b.Misfits)
	}
}
