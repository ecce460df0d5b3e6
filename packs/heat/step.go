package heat

import "math"

// settled is the change of a Newton turn, in kelvin, that ends the step: with the
// matrix of the first guess the next turn would change a hundredth of it.
const settled = 1e-4

// step moves the bodies on by dt. It reports whether the equations settled,
// which they do in two or three turns unless a figure is absurd.
func (b *bodies) step(dt, theta float64) bool {
	b.was = books{b.clock, b.in, b.lost}
	b.begin(dt)
	b.closeJoints()
	skinLoss := b.closeSkin()
	b.assemble(dt, theta)
	for range 12 {
		if worst := b.turn(dt, theta); !(worst <= settled) {
			continue
		}
		b.end(dt)
		in, lost := b.gained(dt, theta)
		b.in += in + skinLoss*dt
		b.lost += lost + skinLoss*dt
		b.clock += dt
		return true
	}
	return false
}

// undo takes the last step back, once.
func (b *bodies) undo() {
	copy(b.t, b.before)
	b.forget()
	b.clock, b.in, b.lost = b.was.clock, b.was.in, b.was.lost
}

// closeSkin puts the skin into the net. It has no heat of its own: what the source
// brings and the air takes there is carried to the middle of the last ring. It
// returns the part of the source's heat that the air takes at once.
func (b *bodies) closeSkin() float64 {
	lost := 0.0
	for k, st := range b.stations[b.from:b.to] {
		ring := st.cell + b.nShaft + b.nHub - 1
		conducts := b.of[ring].Conducts.at((b.t[ring] + b.guess[ring]) / 2)
		mid := middle(b.r-(b.r-b.a)/float64(b.nHub), b.r)
		b.skinLink[k] = conducts * 2 * math.Pi * st.thick / math.Log(b.r/mid)
		toRing := b.skinLink[k] / (b.skinLink[k] + b.skinFilm[k])
		b.air[ring] = b.faceLoss[k] + b.skinFilm[k]*toRing
		b.put[ring] = b.skinPut[k] + b.skinPower[k]*toRing
		lost += b.skinPower[k] * (1 - toRing)
	}
	return lost
}

// closeJoints puts the joint into the net, in K/W at the middle of the step as the
// first guess puts it: iterating on it would let a joint that is just parting flip
// between open and closed. Beyond the opening at which contact is lost it is a
// film of still air half as thick as the clearance on the diameter, or the
// conductance given. The whole fit touches until it is open where it lags: a hub hangs
// and leans on its shaft, and ends that parted first would promise more.
// Conductivity of air 0.0243 W/m K at 0 °C, 0.0386 at 200 °C: handbook figures,
// from memory; heat carried by radiation across the gap is left out, it is a
// hundredth of that.
func (b *bodies) closeJoints() {
	if b.nShaft == 0 {
		return
	}
	lag := b.under(b.lags())
	gap := ((b.reckonedAt(b.t, lag)+b.reckonedAt(b.guess, lag))/2 - b.closes) / 2
	for i, k := range b.joints {
		if b.apart {
			b.links[k].extra = math.Inf(1)
			continue
		}
		st := b.under(i)
		perFace := 0.0
		if !b.contact.Perfect {
			perFace = 1 / float64(b.contact.Touching)
		}
		if gap > 0 {
			if b.contact.Open > 0 {
				perFace = 1 / float64(b.contact.Open)
			} else {
				perFace += gap / (0.0243 + 7.15e-5*b.t[b.links[k].b])
			}
		}
		b.links[k].extra = perFace / (2 * math.Pi * b.a * st.thick)
	}
}
