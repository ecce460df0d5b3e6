package heat

import "math"

// moment reads the state of the bodies.
func (p *Pull) moment(b *bodies, heating bool) Moment {
	lag := b.lags()
	m := Moment{
		At: Second(b.clock), Heating: heating,
		Skin: Celsius(b.skin()), Bore: Celsius(b.boreAt(lag)), Seat: Celsius(b.seatAt(lag)),
		Opening: Mm(b.reckonedAt(b.t, b.under(lag)) * 1000),
	}
	x := p.Shaft.Behind
	if len(p.Neighbours) > 0 {
		x = p.Neighbours[0].Distance
	}
	m.Along = Celsius(b.along(x.metres()))
	return m
}

// coolsFor is how long the window is followed after the heat is off, in times
// R²/diffusivity, and coolsAtLeast in seconds; a joint that is open for longer is
// called endless. A small hub has cooled through in seconds, and what is called
// endless must be that for a crew as well.
const (
	coolsFor     = 4
	coolsAtLeast = 600
)

// follow computes the pull with the chosen power: heating until free, then the
// window, and what becomes of the neighbour. All runs begin alike, and part when the joint
// does or when the hub is free.
func (p *Pull) follow(plan *Plan, g grid) error {
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, g)
	plan.Course = append(plan.Course, p.moment(b, false))
	p.wall(plan, b, 0)
	b.putPower(float64(plan.Net), p.depth())
	clock := newStepper(b, g)
	parts, free, err := p.heatUntilFree(plan, b, clock)
	if err != nil {
		return err
	}
	if p.levelsApply() {
		plan.Levels = Mm(p.levelsPerWatt(true) * float64(plan.Net) * 1000)
	}
	if err := p.window(plan, b, clock); err != nil {
		return err
	}
	if len(p.Neighbours) > 0 {
		if err := p.warmNeighbours(plan, b, parts, free, g); err != nil {
			return err
		}
	}
	for _, m := range plan.Course {
		plan.Hottest = max(plan.Hottest, m.Skin)
	}
	return p.keepOn(plan, b, free)
}

// heatUntilFree steps until the opening needed is reached and takes the last
// step back to that moment. It keeps the moment at which contact is lost, and this one.
func (p *Pull) heatUntilFree(plan *Plan, b *bodies, clock *stepper) (parted, free kept, err error) {
	need, parts := p.Fit.opening(), p.Fit.Interference
	for {
		was := plan.Course[len(plan.Course)-1]
		if !clock.step() || b.clock > 2*float64(p.Longest) {
			return parted, free, errDiverged()
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
				return parted, free, errDiverged()
			}
			now = p.moment(b, true)
			if plan.Parts == 0 {
				plan.Parts, parted = now.At, b.keep(clock)
			}
			if mark == need {
				plan.Free = now.At
			}
		}
		// Two marks a hair apart are one moment.
		if now.At > was.At {
			plan.Course = append(plan.Course, now)
			p.wall(plan, b, now.At)
		}
		if plan.Free > 0 {
			plan.Skin, plan.Bore, plan.Seat = now.Skin, now.Bore, now.Seat
			plan.Into = Joule(b.in)
			return parted, b.keep(clock), nil
		}
	}
}

// window switches the heat off and waits until the opening is back at the
// interference. The books must close by then, or nothing can be trusted.
func (p *Pull) window(plan *Plan, b *bodies, clock *stepper) error {
	var ok bool
	plan.Stays, plan.Endless, ok = p.untilShut(b, clock, func(m Moment) { plan.Course = append(plan.Course, m) })
	if !ok || b.unbalanced() > 1e-6 {
		return errDiverged()
	}
	return nil
}

// untilShut takes the heat away and tells how long the opening stays above the
// interference; endless when it still does at the end of the computation.
func (p *Pull) untilShut(b *bodies, clock *stepper, see func(Moment)) (stays Second, endless, ok bool) {
	was := p.moment(b, true)
	// Freed by a hair, the last digits may put it on either side.
	if was.Opening <= p.Fit.Interference {
		return 0, false, true
	}
	off := was.At
	b.putPower(0, 0)
	clock.restart()
	last := b.clock + max(coolsFor*clock.first/usualGrid.step, coolsAtLeast)
	for b.clock < last {
		if !clock.step() {
			return 0, false, false
		}
		now := p.moment(b, false)
		see(now)
		if now.Opening <= p.Fit.Interference {
			f := share(float64(was.Opening), float64(now.Opening), float64(p.Fit.Interference))
			return was.At + Second(f)*(now.At-was.At) - off, false, true
		}
		was = now
	}
	return Second(b.clock) - off, true, true
}

// keepOn is what is gained when the heat stays on after the hub is free, until the
// crayon on its skin melts or the longest time is over.
func (p *Pull) keepOn(plan *Plan, b *bodies, free kept) error {
	clock := b.back(free)
	if !p.goesOn(b, clock, float64(p.Longest), float64(p.stop())) {
		return errDiverged()
	}
	plan.HeatOn = Second(b.clock) - plan.Free
	stays, endless, ok := p.untilShut(b, clock, func(Moment) {})
	plan.Loose, plan.LooseEndless = plan.HeatOn+stays, endless
	if !ok {
		return errDiverged()
	}
	return nil
}

// longestSoak ends the search for the warmest moment of a neighbour: the heat
// in a shaft spreads for hours.
const longestSoak = 6 * 3600

// warmNeighbours follows the heat along the shaft, once with the hub drawn off
// the moment it is free and once with a hub that never moved.
func (p *Pull) warmNeighbours(plan *Plan, b *bodies, parted, free kept, g grid) error {
	b.back(free)
	b.putPower(0, 0)
	b.drawOff()
	drawn, ok := p.soaks(b, g)
	clock := b.back(parted)
	b.closes = math.Inf(1)
	if !p.goesOn(b, clock, float64(p.Longest), float64(p.stop())) {
		return errDiverged()
	}
	left, also := p.soaks(b, g)
	if !ok || !also {
		return errDiverged()
	}
	for i, n := range p.Neighbours {
		plan.Neighbours = append(plan.Neighbours, Warmed{
			Neighbour: n, Greatest: drawn[i].at, At: drawn[i].when, IfStuck: left[i].at, IfStuckAt: left[i].when,
		})
	}
	return nil
}

// heatFor heats for so long or until the skin is so hot, then takes the heat away.
func (p *Pull) heatFor(b *bodies, power, seconds, skin float64, g grid) bool {
	b.putPower(power, p.depth())
	return p.goesOn(b, newStepper(b, g), seconds, skin)
}

// goesOn is heatFor of bodies whose heat is on already; the seconds are those of the clock.
func (p *Pull) goesOn(b *bodies, clock *stepper, seconds, skin float64) bool {
	for b.clock < seconds {
		was, from := b.skin(), b.clock
		if !clock.step() {
			return false
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
			return false
		}
		break
	}
	b.putPower(0, 0)
	return true
}

// A peak is the highest temperature of one place, and when it has it.
type peak struct {
	at   Celsius
	when Second
}

// soaks waits until the shaft stops getting warmer at every neighbour. The steps
// grow without a cap, since a day's end is not needed to the second.
func (p *Pull) soaks(b *bodies, g grid) ([]peak, bool) {
	clock := newStepper(b, g)
	clock.cap = longestSoak
	clock.growth = 1.1
	peaks := make([]peak, len(p.Neighbours))
	look := func() (rising bool) {
		for i, n := range p.Neighbours {
			t := Celsius(b.along(n.Distance.metres()))
			if t > peaks[i].at || peaks[i].when == 0 {
				peaks[i] = peak{t, Second(b.clock)}
			}
			// Fallen by a fifth of its rise: the peak is past.
			rising = rising || t >= peaks[i].at-0.2*(peaks[i].at-p.Shaft.Start)
		}
		return rising
	}
	for rising := look(); rising && b.clock < longestSoak; rising = look() {
		clock.smooth = 1
		if !clock.step() {
			return nil, false
		}
	}
	return peaks, true
}
