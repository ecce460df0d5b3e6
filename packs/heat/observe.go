package heat

import "math"

// What can be read off the bodies at the end of a step.

// opening is the free bore less the free seat, on the diameter, in metres, at the
// station where it is least: each part's free growth is that of its mean over the
// section, exactly so for any temperature along the radius in plane stress.
// Source: Timoshenko and Goodier, Theory of Elasticity, thin circular disk with
// temperature symmetrical about the centre, from memory.
func (b *bodies) opening() float64 { return b.openingAt(b.t, b.under(b.lags())) }

// reserve is what the opening is counted less, as a share of the growth of hub and
// shaft: the error of the grid against a fine mesh, in any joint of one metal. The
// opening of two metals is the difference of growths that are far apart, and the error
// up to twice as much.
const (
	reserve       = 0.006
	reserveUnlike = 0.012
)

// reserveOf is the reserve of a hub on a shaft.
func reserveOf(hub, shaft *Material) float64 {
	if *hub == *shaft {
		return reserve
	}
	return reserveUnlike
}

// reckonedAt is the opening of one station less the reserve: what freeing is judged by.
func (b *bodies) reckonedAt(t []float64, st station) float64 {
	hub, shaft := b.meanStrain(t, st.cell+b.nShaft, b.nHub), b.meanStrain(t, st.cell, b.nShaft)
	return b.need * (hub - shaft - b.reserve*(math.Abs(hub)+math.Abs(shaft)))
}

// lags is which of the stations under the hub has the least opening.
func (b *bodies) lags() int {
	lag, least := 0, math.Inf(1)
	for k := range b.to - b.from {
		if o := b.openingAt(b.t, b.under(k)); o < least {
			lag, least = k, o
		}
	}
	return lag
}

// under is a station under the hub.
func (b *bodies) under(k int) station { return b.stations[b.from+k] }

// openingAt is the opening of one station.
func (b *bodies) openingAt(t []float64, st station) float64 {
	return b.need * (b.meanStrain(t, st.cell+b.nShaft, b.nHub) - b.meanStrain(t, st.cell, b.nShaft))
}

// meanStrain is the mean free elongation of n cells.
func (b *bodies) meanStrain(t []float64, first, n int) float64 {
	sum, mass := 0.0, 0.0
	for i := first; i < first+n; i++ {
		sum += b.rhoV[i] * b.of[i].strain(t[i])
		mass += b.rhoV[i]
	}
	if mass == 0 {
		return 0
	}
	return sum / mass
}

// mean is the mean temperature of n cells.
func (b *bodies) mean(first, n int) float64 {
	sum, mass := 0.0, 0.0
	for i := first; i < first+n; i++ {
		sum += b.rhoV[i] * b.t[i]
		mass += b.rhoV[i]
	}
	return sum / mass
}

// skin is the temperature of the outer face where it is hottest along the hub.
func (b *bodies) skin() float64 {
	hottest := math.Inf(-1)
	for k := range b.skinLink {
		hottest = max(hottest, b.skinAt(k))
	}
	return hottest
}

// skinAt is the temperature of the outer face at one station under the hub.
func (b *bodies) skinAt(k int) float64 {
	ring := b.under(k).cell + b.nShaft + b.nHub - 1
	return (b.t[ring]*b.skinLink[k] + b.skinPower[k] + b.skinFilm[k]*b.airAt) / (b.skinLink[k] + b.skinFilm[k])
}

// boreAt is the temperature of the hub at the joint, at one station under it.
func (b *bodies) boreAt(k int) float64 {
	ring := b.under(k).cell + b.nShaft
	if b.nShaft == 0 {
		return b.t[ring]
	}
	l := b.links[b.joints[k]]
	k1, k2 := b.of[l.a].Conducts.at(b.t[l.a]), b.of[l.b].Conducts.at(b.t[l.b])
	flow := (b.t[l.b] - b.t[l.a]) / (l.in/k1 + l.extra + l.out/k2)
	return b.t[l.b] - flow*l.out/k2
}

// seatAt is the mean temperature of the shaft at one station under the hub.
func (b *bodies) seatAt(k int) float64 {
	if b.nShaft == 0 {
		return b.boreAt(k)
	}
	return b.mean(b.under(k).cell, b.nShaft)
}

// along is the mean temperature of the shaft's section x metres behind the hub.
func (b *bodies) along(x float64) float64 {
	if b.nShaft == 0 {
		return b.boreAt(b.lags())
	}
	list := b.stations[b.to-1:]
	for i := 1; i < len(list); i++ {
		if p, q := list[i-1], list[i]; x <= q.place {
			t := b.mean(p.cell, b.nShaft)
			return t + (b.mean(q.cell, b.nShaft)-t)*(x-p.place)/(q.place-p.place)
		}
	}
	return b.mean(list[len(list)-1].cell, b.nShaft)
}

// coldest is the lowest temperature there is.
func (b *bodies) coldest() float64 {
	least := b.t[0]
	for _, t := range b.t {
		least = min(least, t)
	}
	return least
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
