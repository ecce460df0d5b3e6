package lift

// What is computed: the same lift with the centre of gravity at every corner of
// its tolerance, with the legs as they are; and with one leg off its length.
// A leg's load and the tilt run one way along each axis for the small moves in
// question, so the corners bound them.
// Source: exact statics at each corner.
// Refused: a tolerance within which the centre of gravity leaves the picks, a leg
// goes slack or becomes too flat.

import "math"

// corners lists the places the centre of gravity may have, the given one first.
func corners(g vec, tol Point) []vec {
	gs := []vec{g}
	axes := []struct {
		by  float64
		dir vec
	}{{float64(tol.X), vec{1, 0, 0}}, {float64(tol.Y), vec{0, 1, 0}}, {float64(tol.Z), vec{0, 0, 1}}}
	box := []vec{g}
	for _, a := range axes {
		if a.by == 0 {
			continue
		}
		var wider []vec
		for _, c := range box {
			wider = append(wider, c.add(a.dir.by(-a.by)), c.add(a.dir.by(a.by)))
		}
		box = wider
	}
	if len(box) > 1 {
		gs = append(gs, box...)
	}
	return gs
}

// states settles the rig for every corner; the given centre is the first.
func (s settled) states(tol Point) ([]state, *Refusal) {
	var out []state
	for i, g := range corners(s.g, tol) {
		st, no := s.frame.at(g, nil)
		if no != nil && i > 0 {
			return nil, refuse("load.cogtolerance", "narrow it by weighing at each pick, or change the picks: "+no.Help,
				"with the centre of gravity at x %v, y %v, z %v, within its tolerance, %s", Mm(g.x), Mm(g.y), Mm(g.z), no.Message)
		}
		if no != nil {
			return nil, no
		}
		out = append(out, st)
	}
	return out, nil
}

// lengthTilt gives how far the load turns out of the position up when one leg is
// off by e, either way; it is refused when the load cannot hang so.
func (s settled) lengthTilt(e float64, up vec) (worst Degree, no *Refusal) {
	n := len(s.frame.sloping())
	for i := range n {
		for _, by := range []float64{-e, e} {
			if n < 2 {
				continue
			}
			longer := make([]float64, n)
			longer[i] = by
			st, no := s.frame.at(s.g, longer)
			if no != nil {
				return worst, no
			}
			worst = max(worst, angleBetween(st.up, up))
		}
	}
	// An upright leg off by e turns the line of the two picks by e over its length.
	span := 0.0
	switch f := s.frame.(type) {
	case spreader:
		span = f.span()
	case beam:
		span = f.span()
	case hooks:
		span = f.span()
	}
	if span > 0 {
		worst = max(worst, degrees(math.Atan(e/span)))
	}
	return worst, nil
}
