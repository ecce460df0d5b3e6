package heat

import "math"

// What can be read off the bodies at the end of a step.

// opening is the free bore less the free seat, on the diameter, in metres:
// each part's free growth is that of its mean over the section, exactly so for
// any temperature along the radius in plane stress.
// Source: Timoshenko and Goodier, Theory of Elasticity, thin circular disk with
// temperature symmetrical about the centre, from memory.
func (b *bodies) opening() float64 { return b.openingOf(b.rings.t) }

// openingAhead is the opening half a step on, by the first guess of the step.
func (b *bodies) openingAhead() float64 {
	return (b.openingOf(b.rings.t) + b.openingOf(b.rings.guess)) / 2
}

func (b *bodies) openingOf(t []float64) float64 {
	return b.need * (b.meanStrain(t, b.nShaft, len(t)) - b.meanStrain(t, 0, b.nShaft))
}

// meanStrain is the mean free elongation of rings first to before last.
func (b *bodies) meanStrain(t []float64, first, last int) float64 {
	sum, mass := 0.0, 0.0
	for i := first; i < last; i++ {
		sum += b.rings.rhoV[i] * b.rings.of[i].strain(t[i])
		mass += b.rings.rhoV[i]
	}
	if mass == 0 {
		return 0
	}
	return sum / mass
}

// skin is the temperature of the outer face.
func (b *bodies) skin() float64 {
	last := len(b.rings.t) - 1
	return (b.rings.t[last]*b.skinLink + b.skinPower + b.skinFilm*b.rings.airAt) / (b.skinLink + b.skinFilm)
}

// bore is the temperature of the hub at the joint.
func (b *bodies) bore() float64 {
	ch, i := b.rings, b.nShaft
	if i == 0 {
		return ch.t[0]
	}
	flow := (ch.t[i] - ch.t[i-1]) * ch.g[i-1]
	return ch.t[i] - flow*ch.out[i-1]/ch.of[i].Conducts.at(ch.t[i])
}

// seat is the mean temperature of the shaft under the hub.
func (b *bodies) seat() float64 {
	sum := 0.0
	for i := range b.nShaft {
		sum += b.rings.share[i] * b.rings.t[i]
	}
	return sum
}

// along is the shaft temperature behind the hub, x metres from its face.
func (b *bodies) along(x float64) float64 {
	if b.behind == nil {
		return b.seat()
	}
	k := b.behind.of[0].Conducts.at(b.behind.t[0])
	return b.behind.at(x, b.behind.t[0]+b.drawn.behind*b.behind.half/k)
}

// unbalanced is the heat that the books do not account for, as a share of what
// went in and came out.
func (b *bodies) unbalanced() float64 {
	moved := math.Abs(b.in) + math.Abs(b.lost)
	if moved == 0 {
		return 0
	}
	return math.Abs(b.started+b.in-b.lost-b.heat()) / moved
}
