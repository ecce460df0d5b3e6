package filled_test

import (
	"matchmark/packs/align"
	"matchmark/packs/units"
)

// dialsOf are the readings of the alignment of the filled storm pump, typed in once more:
// the rim from 0° clockwise as D1, the face as D2.
func dialsOf() map[align.Reading]units.Quantity {
	out := map[align.Reading]units.Quantity{}
	for dial, texts := range map[align.Dial][4]string{
		align.Rim: {"0.00 mm", "0.04 mm", "0.10 mm", "0.06 mm"}, align.Face: {"0.000 mm", "0.010 mm", "0.024 mm", "0.014 mm"},
	} {
		for i, at := range []align.Clock{align.Top, align.Right, align.Bottom, align.Left} {
			out[align.Reading{Dial: dial, At: at}], _ = units.ParseQuantity(texts[i])
		}
	}
	return out
}
