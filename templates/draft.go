package templates

import (
	"math"

	"matchmark/layout"
)

// stamp draws the word for a draft across every page, behind what stands on it.
func (c *composer) stamp(frames []layout.Frame) {
	for i := range frames {
		f := &frames[i]
		diagonal := math.Hypot(float64(f.W), float64(f.H))
		st := layout.Style{Face: layout.Bold, Size: 100, Lead: 50, Ink: layout.Pale}
		st.Size *= layout.Pt(0.6 * diagonal / float64(c.Width(st, c.W.Frame.Draft)))
		word := c.Words(st, c.W.Frame.Draft).Items()[0]
		slope := math.Atan2(float64(f.H), float64(f.W))
		sin, cos := math.Sincos(slope)
		half, down := float64(c.Width(st, c.W.Frame.Draft))/2, float64(st.CapHeight())/2
		// From the middle of the page back along the text, and down across it.
		word.X = f.W/2 - layout.Mm(half*cos-down*sin)
		word.Y = f.H/2 + layout.Mm(half*sin+down*cos)
		word.Turn = slope * 180 / math.Pi
		word.Role = "draft"
		f.Items = append([]layout.Item{word}, f.Items...)
		for k := range f.Parts {
			f.Parts[k].From++
			f.Parts[k].To++
		}
	}
}
