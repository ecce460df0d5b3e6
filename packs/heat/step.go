package heat

import "math"

// settled is the change of a Newton turn, in kelvin, that ends the step: the
// next turn would change the square of it.
const settled = 1e-3

// step moves the bodies on by dt. It reports whether the equations settled,
// which they do in two or three turns unless a figure is absurd.
func (b *bodies) step(dt, theta float64) bool {
	b.prior = b.drawn
	b.was = books{b.clock, b.in, b.lost}
	for _, ch := range b.chains() {
		ch.begin(dt)
	}
	joint := b.jointResistance()
	for range 12 {
		skinLoss := b.closeEnds(joint)
		worst := b.turn(dt, theta)
		if worst > settled {
			continue
		}
		for _, ch := range b.chains() {
			ch.end(dt)
			in, lost := ch.gained(dt, theta)
			b.in += in
			b.lost += lost
		}
		b.in += skinLoss * dt
		b.lost += skinLoss * dt
		b.clock += dt
		return true
	}
	return false
}

// undo takes the last step back, once.
func (b *bodies) undo() {
	for _, ch := range b.chains() {
		copy(ch.t, ch.before)
		ch.forget()
	}
	b.drawn = b.prior
	b.clock, b.in, b.lost = b.was.clock, b.was.in, b.was.lost
}

// chains lists what stands in the grid.
func (b *bodies) chains() []*chain {
	list := b.rows[:0]
	list = append(list, b.rings)
	for _, r := range []*rod{b.behind, b.front} {
		if r != nil {
			list = append(list, r.chain)
		}
	}
	return list
}

// closeEnds puts the joint and the skin into the rows. The skin has no heat of
// its own: what the source brings and the air takes there is carried to the
// middle of the last ring. It returns the part of the source's heat that the
// air takes at once.
func (b *bodies) closeEnds(joint float64) float64 {
	ch := b.rings
	if b.nShaft > 0 {
		ch.extra[b.nShaft-1] = joint
	}
	last := len(ch.t) - 1
	k := ch.of[last].Conducts.at((ch.t[last] + ch.guess[last]) / 2)
	b.skinLink = k / ch.in[last]
	toRing := b.skinLink / (b.skinLink + b.skinFilm)
	ch.air[last] = b.faceLoss + b.skinFilm*toRing
	ch.put[last] = b.lastPut + b.skinPower*toRing
	return b.skinPower * (1 - toRing)
}

// turn does one turn of Newton's method on all rows and the flows between them.
func (b *bodies) turn(dt, theta float64) float64 {
	for _, ch := range b.chains() {
		ch.assemble(dt, theta)
		ch.solve(theta)
	}
	if b.nShaft > 0 {
		b.drawn = b.runOff(theta)
	}
	part := func(now, old float64) float64 { return theta*now + (1-theta)*old }
	qb, qf := part(b.drawn.behind, b.prior.behind), part(b.drawn.front, b.prior.front)
	worst := b.rings.accept(qb + qf)
	if b.behind != nil {
		worst = max(worst, b.behind.accept(qb))
	}
	if b.front != nil {
		worst = max(worst, b.front.accept(qf))
	}
	return worst
}

// runOff solves for the heat that leaves the shaft under the hub at either end,
// so that the parabola under the hub meets the first slice on each side.
func (b *bodies) runOff(theta float64) flows {
	meanP, meanQ, kMean := 0.0, 0.0, 0.0
	for i := range b.nShaft {
		w := b.rings.share[i]
		meanP += w * b.rings.p[i]
		meanQ += w * b.rings.q[i]
		kMean += w * b.rings.guess[i]
	}
	r := b.through / b.rings.of[0].Conducts.at(kMean)
	old := meanQ * (1 - theta) * (b.prior.behind + b.prior.front)
	// side gives the factor of the own flow and the right side of an end.
	side := func(ro *rod, was float64) (own, right float64) {
		half := ro.half / ro.of[0].Conducts.at(ro.guess[0])
		// q of a rod is negative: a flow comes in.
		own = theta*meanQ - theta*ro.q[0] + half + 2*r
		return own, meanP - old - ro.p[0] + ro.q[0]*(1-theta)*was
	}
	switch {
	case b.behind == nil && b.front == nil:
		return flows{}
	case b.front == nil:
		own, right := side(b.behind, b.prior.behind)
		return flows{behind: right / own}
	case b.behind == nil:
		own, right := side(b.front, b.prior.front)
		return flows{front: right / own}
	}
	a11, r1 := side(b.behind, b.prior.behind)
	a22, r2 := side(b.front, b.prior.front)
	a12 := theta*meanQ - r
	det := a11*a22 - a12*a12
	return flows{behind: (r1*a22 - r2*a12) / det, front: (a11*r2 - a12*r1) / det}
}

// jointResistance is that of the joint in K/W at the middle of the step, as the
// first guess puts it: iterating on it would let a joint that is just parting
// flip between open and closed. Beyond the opening at which contact is lost it is a film of still
// air half as thick as the clearance on the diameter, or the conductance given.
// Conductivity of air 0.0243 W/m K at 0 °C, 0.0386 at 200 °C: handbook figures,
// from memory; heat carried by radiation across the gap is left out, it is a
// hundredth of that.
func (b *bodies) jointResistance() float64 {
	if b.nShaft == 0 {
		return 0
	}
	perFace := 0.0
	if !b.contact.Perfect {
		perFace = 1 / float64(b.contact.Touching)
	}
	if b.apart {
		return math.Inf(1)
	}
	if gap := (b.openingAhead() - b.closes) / 2; gap > 0 {
		if b.contact.Open > 0 {
			perFace = 1 / float64(b.contact.Open)
		} else {
			perFace += gap / (0.0243 + 7.15e-5*b.rings.t[b.nShaft])
		}
	}
	return perFace / (2 * math.Pi * b.a * b.length)
}
