package lift

// What is computed: the same lift with the centre of gravity at every corner of
// its tolerance; and how far the load turns there with one leg long or short by
// what it may be off its length.
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

// offLengths lists the ways in which one of n legs may be off by e against the
// others: none, then each of them long and each of them short.
func offLengths(n int, e float64) [][]float64 {
	out := [][]float64{make([]float64, n)}
	if e == 0 || n < 2 {
		return out
	}
	for i := range n {
		for _, by := range []float64{e, -e} {
			off := make([]float64, n)
			off[i] = by
			out = append(out, off)
		}
	}
	return out
}

// A turned is the load's own upright in one position within the tolerances.
type turned struct {
	up vec
	// extra is what an upright drop off by e turns the load besides.
	extra Degree
	// centre and legs tell whether the centre of gravity and the lengths are off.
	centre, legs bool
}

// turns hangs the load with its centre of gravity at every corner of its tolerance
// and each leg in turn long or short by e, and gives how it then turns. A position that
// cannot be held is refused.
func (s settled) turns(tol Point, e float64) ([]turned, *Refusal) {
	var out []turned
	upright := s.uprightTilt(e)
	offs := offLengths(len(s.frame.sloping()), e)
	for i, g := range corners(s.g, tol) {
		for k, off := range offs {
			up, no := s.frame.lean(g, off)
			if no != nil {
				return nil, no
			}
			out = append(out, turned{up: up, centre: i > 0, legs: k > 0})
			if upright > 0 && k == 0 {
				out = append(out, turned{up: up, extra: upright, centre: i > 0, legs: true})
			}
		}
	}
	return out, nil
}

// uprightTilt is how far two upright legs or drops turn the load when one is off by
// e: the line of the picks turns by e over its length. A centre of gravity under that
// line swings back and takes some of it away again.
func (s settled) uprightTilt(e float64) Degree {
	switch f := s.frame.(type) {
	case spreader:
		return degrees(math.Asin(min(e/f.span(), 1)))
	case beam:
		return degrees(math.Asin(min(e/f.span(), 1)))
	case hooks:
		return degrees(math.Asin(min(e/f.span(), 1)))
	}
	return 0
}
