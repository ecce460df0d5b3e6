package layout

// decoPad is the room between a decoration's edge and its text, at both ends.
func decoPad(st Style) Mm { return st.CapHeight() * 0.5 }

// decoPlate is the plate or frame about a decorated run. It stays within the
// lead, so plates on neighbouring lines do not touch.
func decoPlate(r Run, x0, x1, base Mm, ref Ref) Item {
	half := (r.Style.Lead - r.Style.CapHeight()) / 2 * 0.95
	shape := Rect{
		W:      x1 - x0,
		H:      r.Style.CapHeight() + 2*half,
		Radius: 0.8,
	}
	if r.Deco == Inverse {
		shape.Fill = Black
	} else {
		shape.Weight = Outline
	}
	return Item{X: x0, Y: base - r.Style.CapHeight() - half, Ref: ref, Shape: shape}
}
