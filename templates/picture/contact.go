package picture

import (
	"matchmark/layout"
	"matchmark/layout/draw"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// Contact is the kind of a dimension that is the print of one tooth on another.
const Contact = "contact"

// The field for the print of the contact on one flank of a tooth, in millimetres:
// a sketch field with the outline of the flank in it.
const (
	flankW, flankH   layout.Mm = 85, 60
	flankX0, flankX1           = 10.0, 75.0
	flankRoot                  = 12.0
	toeTop, heelTop            = 38.0, 48.0
)

// Flank is a sketch field on which the outline of a tooth flank is drawn, so that
// everybody draws the contact the same way round: the toe, the thin inner end of
// the tooth, on the left, the heel on the right, the tip of the tooth above. The
// thin lines part its length into quarters, for judging how much of it bears.
func Flank(set *layout.Setter, w *words.Catalogue, caption string, d *job.Dim) layout.Block {
	s := draw.NewScene(draw.View{X1: float64(flankW), Y1: float64(flankH)}, flankW, flankH, d.At)
	s.Shape(draw.Thick, layout.Usual, draw.XY{X: flankX0, Y: flankRoot}, draw.XY{X: flankX1, Y: flankRoot}, draw.XY{X: flankX1, Y: heelTop}, draw.XY{X: flankX0, Y: toeTop})
	for i := 1; i < 4; i++ {
		x := flankX0 + (flankX1-flankX0)*float64(i)/4
		s.Lines(draw.Hidden, draw.XY{X: x, Y: flankRoot}, draw.XY{X: x, Y: toeTop + (heelTop-toeTop)*float64(i)/4})
	}
	word := func(text string, x, y, ax, ay float64) {
		s.Label(draw.XY{X: x, Y: y}, set.Words(layout.Sub, text), ax, ay)
	}
	middle := (flankX0 + flankX1) / 2
	word(w.Dimension.ToothToe, flankX0-1, (flankRoot+toeTop)/2, 1, 0.5)
	word(w.Dimension.ToothHeel, flankX1+1, (flankRoot+heelTop)/2, 0, 0.5)
	word(w.Dimension.ToothTip, middle, (toeTop+heelTop)/2+2, 0.5, 1)
	word(w.Dimension.ToothRoot, middle, flankRoot-1, 0.5, 0)
	field := set.Sketch(flankW, flankH, "", d.At)
	return layout.Above(0.3, set.Words(layout.Caption, caption), layout.Overlay(field, s.Block().Drawing(d.Mark+" "+d.What)))
}
