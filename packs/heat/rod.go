package heat

import "math"

// A rod is the shaft beyond a face of the hub, cut in slices that grow away
// from it. Its far end loses nothing: what is bolted there is warm as well.
type rod struct {
	*chain
	half  float64   // half of the first slice over its area, 1/m
	place []float64 // middles of the slices from the face of the hub, m
}

// sliceGrowth is how much thicker each slice is than the one before it.
const sliceGrowth = 1.25

// newRod cuts the shaft of that length; nil when there is none.
func newRod(s *Shaft, long Mm, radius, area, first float64, air Surroundings) *rod {
	if long == 0 {
		return nil
	}
	var thick []float64
	sum := 0.0
	for dx := first; sum < long.metres(); dx *= sliceGrowth {
		thick = append(thick, dx)
		sum += dx
	}
	r := &rod{chain: newChain(len(thick), float64(air.Air)), place: make([]float64, len(thick))}
	at := 0.0
	for i := range thick {
		dx := thick[i] * long.metres() / sum
		r.of[i] = &s.Material
		r.rhoV[i] = float64(s.Material.Density) * area * dx
		r.in[i] = dx / 2 / area
		if i > 0 {
			r.out[i-1] = dx / 2 / area
		}
		r.air[i] = float64(air.Film) * 2 * math.Pi * radius * dx
		r.t[i], r.before[i] = float64(s.Start), float64(s.Start)
		r.place[i] = at + dx/2
		at += dx
	}
	r.share[0] = -1 // the flow comes in at the first slice
	r.half = r.in[0]
	return r
}

// at is the temperature at a distance from the face of the hub, between the
// middles of the slices; before the first middle it is that of the face.
func (r *rod) at(x, face float64) float64 {
	lastX, lastT := 0.0, face
	for i, p := range r.place {
		if x <= p {
			return lastT + (r.t[i]-lastT)*(x-lastX)/(p-lastX)
		}
		lastX, lastT = p, r.t[i]
	}
	return lastT
}
