package draw

import (
	"testing"

	"pgregory.net/rapid"

	"matchmark/layout"
)

// TestLabelsStayInTheDrawing puts labels of any size at any place: none reaches out of
// the drawing, and one that is larger than the drawing is told. A long name ran off the
// page beside the section of a hub.
func TestLabelsStayInTheDrawing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const w, h = 80.0, 40.0
		s := NewScene(View{X1: w, Y1: h}, w, h, "ref")
		bw, bh := layout.Mm(rapid.Float64Range(0.1, 120).Draw(t, "width")), layout.Mm(rapid.Float64Range(0.1, 60).Draw(t, "height"))
		at := XY{X: rapid.Float64Range(-50, 150).Draw(t, "x"), Y: rapid.Float64Range(-50, 100).Draw(t, "y")}
		label := layout.Drawn(bw, bh, layout.Item{Shape: layout.Rect{W: bw, H: bh}})
		s.Label(at, label, rapid.Float64Range(0, 1).Draw(t, "across"), rapid.Float64Range(0, 1).Draw(t, "down"))
		b := s.Block()
		l, top, r, bottom := b.Items()[0].Bounds()
		fits := bw <= w && bh <= h
		if fits != (len(b.Misfits()) == 0) {
			t.Fatalf("%v by %v: misfits %v", bw, bh, b.Misfits())
		}
		if fits && (l < -0.01 || top < -0.01 || r > w+0.01 || bottom > h+0.01) {
			t.Fatalf("%v to %v, %v to %v", l, r, top, bottom)
		}
	})
}
