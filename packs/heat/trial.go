package heat

import "math"

// A trial is one power heated until it frees, meets a limit or runs out of time.
type trial struct {
	power    float64
	frees    bool
	at       float64 // s, when it ended
	opening  float64 // m, greatest
	tooHot   bool    // ended at the skin limit
	cracks   MPa     // ended at this tension at the bore of a brittle hub
	diverged bool
	skin     []Moment // of each step
	// margin is about how much more than needed would have opened by the end of a power
	// that frees, as a share of it; of one that does not, less than zero, how much lacks.
	margin float64
}

// try runs one power.
func (s *search) try(power float64) trial {
	p := s.pull
	b := s.atStart()
	b.putPower(power, p.depth())
	clock := newStepper(b, s.grid)
	t := trial{power: power}
	was := s.seen(b, false)
	for b.clock < float64(p.Longest) {
		if !clock.step() {
			t.diverged = true
			return t
		}
		now := s.seen(b, true)
		t.look(p, was, now)
		if !t.frees {
			t.margin = t.opening/p.Fit.opening().metres() - 1
		}
		t.skin = append(t.skin, now.Moment)
		if t.frees || t.tooHot || t.cracks > 0 {
			return t
		}
		was = now
	}
	t.at = float64(p.Longest)
	return t
}

// atStart gives the bodies before they are heated.
func (s *search) atStart() *bodies {
	if b := s.bodies; b != nil {
		b.back(s.start)
		return b
	}
	p := s.pull
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, s.grid)
	s.bodies, s.start = b, b.keep(newStepper(b, s.grid))
	return b
}

// A seen is a moment with the tension at the bore of a brittle hub.
type seen struct {
	Moment
	tension MPa
}

func (s *search) seen(b *bodies, heating bool) seen {
	m := seen{Moment: s.pull.moment(b, heating)}
	if s.pull.Hub.Material.Brittle {
		m.tension = b.tension(s.pull.Fit.Interference, s.pull.ColdHoop)
	}
	return m
}

// look tells whether a step has ended the trial, and by what: which came first within
// it is read off the straight line between its ends.
func (t *trial) look(p *Pull, was, now seen) {
	const never = 2
	first := func(from, to, mark float64) float64 {
		if to < mark {
			return never
		}
		return max(0, share(from, to, mark))
	}
	frees := first(float64(was.Opening), float64(now.Opening), float64(p.Fit.opening()))
	hot := first(float64(was.Skin), float64(now.Skin), float64(p.stop()))
	cracks := float64(never)
	if p.Hub.Material.Brittle {
		cracks = first(float64(was.tension), float64(now.tension), float64(p.Hub.mayPull()))
	}
	late := first(float64(was.At), float64(now.At), float64(p.Longest))
	end := min(frees, hot, cracks, late, 1)
	t.opening = math.Max(t.opening, (was.Opening + Mm(end)*(now.Opening-was.Opening)).metres())
	if now.At > p.Longest && end == late && late < min(frees, hot, cracks) {
		return
	}
	switch end {
	case frees:
		t.frees = true
		t.margin = p.beyond(was, now, end)
	case hot:
		t.tooHot = true
	case cracks:
		t.cracks = max(now.tension, p.Hub.mayPull())
	default:
		return
	}
	t.at = float64(was.At) + end*float64(now.At-was.At)
}

// beyond is how much more would open, as a share of what is needed, if all went on as in the
// step in which the hub was freed until skin, bore or clock ends the heat.
func (p *Pull) beyond(was, now seen, freed float64) float64 {
	steps := share(float64(was.At), float64(now.At), float64(p.Longest))
	if now.Skin > was.Skin {
		steps = min(steps, share(float64(was.Skin), float64(now.Skin), float64(p.stop())))
	}
	if now.tension > was.tension {
		steps = min(steps, share(float64(was.tension), float64(now.tension), float64(p.Hub.mayPull())))
	}
	return max(0, (steps-freed)*float64((now.Opening-was.Opening)/p.Fit.opening()))
}

// share is how far between two values a third lies.
func share(from, to, at float64) float64 {
	if to == from {
		return 0
	}
	return (at - from) / (to - from)
}
