package heat

import "math"

// moment reads the state of the bodies.
func (p *Pull) moment(b *bodies, heating bool) Moment {
	m := Moment{
		At: Second(b.clock), Heating: heating,
		Skin: Celsius(b.skin()), Bore: Celsius(b.bore()), Seat: Celsius(b.seat()),
		Opening: Mm(b.opening() * 1000),
	}
	x := p.Shaft.Behind
	if p.Neighbour != nil {
		x = p.Neighbour.Distance
	}
	m.Along = Celsius(b.along(x.metres()))
	return m
}

// coolsFor is how long the window is followed after the heat is off, in times
// R²/diffusivity; a joint that is open for longer is called endless.
const coolsFor = 4

// follow computes the pull with the chosen power: heating until free, then the
// window, and what becomes of the neighbour.
func (p *Pull) follow(plan *Plan, g grid) error {
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, g)
	plan.Course = append(plan.Course, p.moment(b, false))
	b.putPower(float64(plan.Net), p.depth())
	clock := newStepper(b, g)
	if err := p.heatUntilFree(plan, b, clock); err != nil {
		return err
	}
	if p.levelsApply() {
		plan.Levels = Mm(p.levelsPerWatt(true) * float64(plan.Net) * 1000)
	}
	if p.Neighbour != nil {
		if err := p.warmNeighbour(plan, g); err != nil {
			return err
		}
	}
	if err := p.window(plan, b, clock); err != nil {
		return err
	}
	for _, m := range plan.Course {
		plan.Hottest = max(plan.Hottest, m.Skin)
	}
	// The books must close, or nothing above can be trusted.
	if b.unbalanced() > 1e-6 {
		return errDiverged()
	}
	return nil
}

// heatUntilFree steps until the opening needed is reached and takes the last
// step back to that moment.
func (p *Pull) heatUntilFree(plan *Plan, b *bodies, clock *stepper) error {
	need, parts := p.Fit.opening(), p.Fit.Interference
	for {
		was := plan.Course[len(plan.Course)-1]
		if !clock.step() || b.clock > 2*float64(p.Longest) {
			return errDiverged()
		}
		now := p.moment(b, true)
		// A step that passes a mark is done again up to the mark itself.
		mark := need
		if plan.Parts == 0 && parts < need {
			mark = parts
		}
		if now.Opening >= mark {
			dt := float64(now.At-was.At) * share(float64(was.Opening), float64(now.Opening), float64(mark))
			b.undo()
			if dt > 0 && !b.step(dt, 1) {
				return errDiverged()
			}
			now = p.moment(b, true)
			if plan.Parts == 0 {
				plan.Parts = now.At
			}
			if mark == need {
				plan.Free = now.At
			}
		}
		// Two marks a hair apart are one moment.
		if now.At > was.At {
			plan.Course = append(plan.Course, now)
			p.wall(plan, b, now)
		}
		if plan.Free > 0 {
			plan.Skin, plan.Bore, plan.Seat = now.Skin, now.Bore, now.Seat
			plan.Into = Joule(b.in)
			return nil
		}
	}
}

// window switches the heat off and waits until the opening is back at the
// interference.
func (p *Pull) window(plan *Plan, b *bodies, clock *stepper) error {
	// Freed by a hair, the last digits may put it on either side.
	if plan.Course[len(plan.Course)-1].Opening <= p.Fit.Interference {
		return nil
	}
	b.putPower(0, 0)
	clock.restart()
	last := b.clock + coolsFor*clock.first/usualGrid.step
	for b.clock < last {
		was := plan.Course[len(plan.Course)-1]
		if !clock.step() {
			return errDiverged()
		}
		now := p.moment(b, false)
		plan.Course = append(plan.Course, now)
		if now.Opening <= p.Fit.Interference {
			f := share(float64(was.Opening), float64(now.Opening), float64(p.Fit.Interference))
			plan.Stays = was.At + Second(f)*(now.At-was.At) - plan.Free
			return nil
		}
	}
	plan.Stays, plan.Endless = Second(b.clock)-plan.Free, true
	return nil
}

// wall keeps the greatest difference through the wall. Stress at a free face of
// a ring with a temperature along its radius alone, ends free, away from them:
//
//	sigma = E (mean of e - e at the face)/(1 - nu)
//
// e free elongation. Source: Timoshenko and Goodier, Theory of Elasticity, long
// circular cylinder with a central hole, from memory. The stress of the fit
// itself comes on top at the bore, and falls to nothing as the joint opens.
func (p *Pull) wall(plan *Plan, b *bodies, now Moment) {
	difference := now.Skin.over(now.Bore)
	if difference <= plan.Wall.Difference {
		return
	}
	m := &p.Hub.Material
	mean := b.meanStrain(b.rings.t, b.nShaft, len(b.rings.t))
	face := func(t Celsius) MPa {
		return m.Young * MPa((mean-m.strain(float64(t)))/(1-float64(m.Poisson)))
	}
	plan.Wall = Wall{At: now.At, Difference: difference, AtBore: face(now.Bore), AtSkin: face(now.Skin)}
}

// longestSoak ends the search for the warmest moment of a neighbour: the heat
// in a shaft spreads for hours.
const longestSoak = 6 * 3600

// warmNeighbour follows the heat along the shaft, once with the hub drawn off
// the moment it is free and once with a hub that never moved. Both count the
// hub as carrying heat along, so that the neighbour is rather too warm.
func (p *Pull) warmNeighbour(plan *Plan, g grid) error {
	w := Warmed{Neighbour: *p.Neighbour}
	freed, ok := p.heatFor(float64(plan.Net), float64(plan.Free), math.Inf(1), p.Fit.Interference+p.Contact.TouchUntil, g)
	if !ok {
		return errDiverged()
	}
	freed.drawOff()
	if w.Greatest, w.At, ok = p.soaks(freed, g); !ok {
		return errDiverged()
	}
	stuck, ok := p.heatFor(float64(plan.Net), float64(p.Longest), float64(p.Skin.At), Mm(math.Inf(1)), g)
	if !ok {
		return errDiverged()
	}
	if w.IfStuck, w.IfStuckAt, ok = p.soaks(stuck, g); !ok {
		return errDiverged()
	}
	plan.Neighbour = &w
	return nil
}

// heatFor heats for so long or until the skin is so hot, with the joint closed
// up to an opening, then takes the heat away.
func (p *Pull) heatFor(power, seconds, skin float64, closes Mm, g grid) (*bodies, bool) {
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, g)
	b.closes = closes.metres()
	b.hubCarriesAlong()
	b.putPower(power, p.depth())
	clock := newStepper(b, g)
	for b.clock < seconds {
		was, from := b.skin(), b.clock
		if !clock.step() {
			return nil, false
		}
		// The last step is done again up to the mark it has passed.
		back := share(from, b.clock, seconds)
		if now := b.skin(); now >= skin {
			back = min(back, share(was, now, skin))
		}
		if back >= 1 {
			continue
		}
		dt := back * (b.clock - from)
		b.undo()
		if dt > 0 && !b.step(dt, 1) {
			return nil, false
		}
		break
	}
	b.putPower(0, 0)
	return b, true
}

// soaks waits until the shaft at the neighbour stops getting warmer. The steps
// grow without a cap, since a day's end is not needed to the second.
func (p *Pull) soaks(b *bodies, g grid) (Celsius, Second, bool) {
	clock := newStepper(b, g)
	clock.cap = longestSoak
	clock.growth = 1.1
	x := p.Neighbour.Distance.metres()
	worst, at := b.along(x), b.clock
	for b.clock < longestSoak {
		clock.smooth = 1
		if !clock.step() {
			return 0, 0, false
		}
		t := b.along(x)
		if t > worst {
			worst, at = t, b.clock
		}
		// Falling by a fifth of its rise: the peak is past.
		if t < worst-0.2*(worst-float64(p.Shaft.Start)) {
			break
		}
	}
	return Celsius(worst), Second(at), true
}
