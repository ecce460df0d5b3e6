package lift

// What is computed: the leg lengths that hang a load level, and from slings in
// hand the least shortening that does so.
// Symbols: d plan distance of a pick from the centre of gravity, h height of the
// hook above it, L leg length (mm).
//
//	L = sqrt(d² + h²), the hook straight above the centre of gravity
//	from a leg in hand: h = sqrt(L² - d²)
//	shortening: the lowest h that any leg in hand allows, then L - sqrt(d² + h²)
//
// Source: exact statics.
// Validity: legs from bearing point to bearing point, shackles, links and hook
// bowl counted in.
// Refused: a leg no longer than its plan distance; a hook not above every pick.
// Two picks cannot hold a centre of gravity that lies to the side of their line;
// the lengths are then those with the least roll, and the tilt shows it.

import "math"

// plumb gives the direction from the centre of gravity to the hook for a load
// hung as level as its picks allow. ok is false when there is none.
func plumb(picks []vec, g vec) (vec, bool) {
	switch len(picks) {
	case 1:
		d := picks[0].sub(g)
		if d.z <= 0 {
			return vec{}, false
		}
		return d.unit(), true
	case 2:
		m := picks[0].sub(g).cross(picks[1].sub(g))
		span := picks[1].sub(picks[0]).size()
		if m.size() < lengthSlack*span {
			return zUp, true
		}
		v := zUp.across(m.unit())
		if v.size() < 1e-6 {
			return vec{}, false
		}
		return v.unit(), true
	default:
		return zUp, true
	}
}

// levelHook gives the hook at height z of the level load.
func levelHook(picks []vec, g vec, z float64) (vec, bool) {
	v, ok := plumb(picks, g)
	if !ok || v.z <= 0 || z <= g.z {
		return vec{}, false
	}
	return g.add(v.by((z - g.z) / v.z)), true
}

// levelLengths gives the legs for that hook.
func levelLengths(picks []vec, hook vec) []float64 {
	ls := make([]float64, len(picks))
	for i, p := range picks {
		ls[i] = hook.sub(p).size()
	}
	return ls
}

// heightFrom gives the height z at which a leg of length l reaches from pick p
// to the plumb line through g. ok is false when the leg is too short to reach it.
func heightFrom(p, g, v vec, l float64) (float64, bool) {
	// |g + k v - p| = l, the larger k.
	d := g.sub(p)
	b := d.dot(v)
	disc := b*b - d.dot(d) + l*l
	if disc <= 0 {
		return 0, false
	}
	return g.z + (math.Sqrt(disc)-b)*v.z, true
}

// shorten gives by how much each leg in hand must be shortened so that the load
// hangs level, none of them lengthened. short is the leg that is too short to
// reach, or -1.
func shorten(picks []vec, lengths []float64, g vec) (by []float64, short int) {
	v, ok := plumb(picks, g)
	if !ok {
		return nil, 0
	}
	lowest := math.Inf(1)
	for i, p := range picks {
		z, ok := heightFrom(p, g, v, lengths[i])
		if !ok {
			return nil, i
		}
		lowest = min(lowest, z)
	}
	hook, ok := levelHook(picks, g, lowest)
	if !ok {
		return nil, 0
	}
	by = levelLengths(picks, hook)
	for i := range by {
		by[i] = max(lengths[i]-by[i], 0)
	}
	return by, -1
}

// aimHeight gives the lowest hook height at which no leg is flatter than the
// angle: the longest plan distance governs, with the level of its pick.
func aimHeight(picks []vec, g vec, angle Degree) float64 {
	z := math.Inf(-1)
	for _, p := range picks {
		z = max(z, p.z+math.Hypot(p.x-g.x, p.y-g.y)*math.Tan(radians(angle)))
	}
	return z
}
