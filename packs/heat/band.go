package heat

import "math"

// The band of net power that frees a hub.
//
// With too little power the difference of hub and shaft levels off before the
// fit is open, and heating on only brings the skin to its limit. With too much
// the skin reaches its limit while the metal below is still cold. Each edge is
// found between a power that works and one that does not; a power
// works when the opening needed is reached before the skin is where the heat goes off and within
// the longest time. The opening reached by then first grows and then falls with
// power, so there are no more than two edges.
//
// Quasi-steady ceiling, both parts of one steel, no losses:
//
//	opening = a D P / (8 pi k L) + a D P (D/D_o)² / (pi D L h)
//
// a expansion, P net power, k conductivity, L fit length, h conductance of the
// joint (second term none for perfect contact), D_o hub outside. Derived by
// integrating the quasi-steady temperatures of a heated solid cylinder; 90 % of
// it is reached at k t/(rho c R²) = 0.17. Validity: solid shaft, no losses.

// A Band is the range of net power that frees the hub within the skin limit.
// Nobody knows the net power of a torch at the machine, so Pace tells the least
// of it as what a mechanic sees. Opening and pace are those of the places that decide:
// the opening where it lags along the fit, the skin where it is hottest.
type Band struct {
	Least, Most Watt
	// LeastFree and MostFree are when the hub is free with either.
	LeastFree, MostFree Second
	// Pace is what the skin must have passed, taken from the least power: slower
	// means stop, more heat or another way. Round up for the paper.
	Pace []Pace
}

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

type search struct {
	pull *Pull
	grid grid
}

// An edge is looked for on a ladder of powers: each factor edgeFactor has edgeRungs of
// them, so that two beside each other are four thousandths apart.
const (
	edgeFactor = 1.6
	edgeRungs  = 128
)

func (s *search) band() (Band, error) {
	mid, best := s.firstThatFrees()
	if !mid.frees {
		return Band{}, s.pull.noPower(s, best)
	}
	least := s.edgeFrom(mid, 1/edgeFactor)
	most := s.edgeFrom(mid, edgeFactor)
	if least.diverged || most.diverged {
		return Band{}, errDiverged()
	}
	b := Band{
		Least: Watt(least.power), Most: Watt(most.power),
		LeastFree: Second(least.at), MostFree: Second(most.at),
	}
	b.Pace = s.pace(least)
	return b, nil
}

// firstThatFrees looks for any power that works, from the quasi-steady formula
// outward: first at the formula and a half more, then for the power with the greatest
// opening. It returns the best trial when none works.
func (s *search) firstThatFrees() (found, best trial) {
	start := s.pull.quasiSteadyPower()
	first := s.try(1.5 * start)
	if first.frees {
		return first, first
	}
	// 18 cuts narrow the ratio 3000 to one and a half thousandths.
	best = s.best(start/30, start*100, 18)
	if !best.frees && first.opening > best.opening {
		best = first
	}
	return best, best
}

// best looks between two powers for the one with the greatest opening, by golden
// section, and ends at the first that frees.
func (s *search) best(from, to float64, cuts int) trial {
	const golden = 0.6180339887498949
	low, high := math.Log(from), math.Log(to)
	x1, x2 := high-golden*(high-low), low+golden*(high-low)
	t1, t2 := s.try(math.Exp(x1)), s.try(math.Exp(x2))
	var best trial
	for range cuts {
		for _, t := range []trial{t1, t2} {
			if t.frees {
				return t
			}
			if t.opening > best.opening || best.power == 0 {
				best = t
			}
		}
		if t1.opening > t2.opening {
			high, x2, t2 = x2, x1, t1
			x1 = high - golden*(high-low)
			t1 = s.try(math.Exp(x1))
		} else {
			low, x1, t1 = x1, x2, t2
			x2 = low + golden*(high-low)
			t2 = s.try(math.Exp(x2))
		}
	}
	return best
}

// edgeFrom walks from a power that works by a factor until one does not, and looks
// between the two for the last rung that works, first where the margins of both meet. It
// returns that.
func (s *search) edgeFrom(works trial, factor float64) trial {
	start, low, high := works.power, 0, edgeRungs
	rung := func(n int) trial { return s.try(start * math.Pow(factor, float64(n)/edgeRungs)) }
	fails := rung(high)
	for ; fails.frees; fails = rung(high) {
		works, low, high = fails, high, high+edgeRungs
	}
	over, lacks, freed := works.margin, -fails.margin, false
	for high-low > 1 && !fails.diverged {
		n := low + int(float64(high-low)*over/(over+lacks))
		n = min(max(n, low+1), high-1)
		t := rung(n)
		// The end that stays for the second time counts for half, or the other one creeps.
		switch {
		case t.frees && freed:
			lacks /= 2
		case !t.frees && !freed:
			over /= 2
		}
		if freed = t.frees; freed {
			works, low, over = t, n, t.margin
		} else {
			fails, high, lacks = t, n, -t.margin
		}
	}
	works.diverged = fails.diverged
	return works
}

// try runs one power.
func (s *search) try(power float64) trial {
	p := s.pull
	b := newBodies(&p.Hub, &p.Shaft, p.Fit, p.Contact, p.Air, s.grid)
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

// quasiSteadyPower is the net power whose opening levels off at the one needed,
// by the formula above with perfect contact.
func (p *Pull) quasiSteadyPower() float64 {
	return p.Fit.opening().metres() / p.levelsPerWatt(false)
}

// levelsApply tells whether the formula holds: solid shaft, one material.
func (p *Pull) levelsApply() bool {
	h, s := &p.Hub.Material, &p.Shaft.Material
	return p.Shaft.Bore == 0 && h.Elongation == s.Elongation && h.Conducts == s.Conducts &&
		h.Specific == s.Specific && h.Density == s.Density
}

// levelsPerWatt is the quasi-steady opening in metres for each watt.
func (p *Pull) levelsPerWatt(joint bool) float64 {
	m := &p.Hub.Material
	mid := (p.Hub.Start + p.Skin.At) / 2
	k := m.Conducts.at(float64(mid))
	d, l := p.Fit.Diameter.metres(), p.Hub.Length.metres()
	alpha := m.alpha(p.Hub.Start, p.Skin.At)
	level := alpha * d / (8 * math.Pi * k * l)
	if joint && !p.Contact.Perfect {
		c := d / p.Hub.Outside.metres()
		level += alpha * d * c * c / (math.Pi * d * l * float64(p.Contact.Touching))
	}
	return level
}

// depth is how deep the source heats, in metres; a torch heats the face.
func (p *Pull) depth() float64 {
	if p.Source.Means != Induction {
		return 0
	}
	return p.Source.Depth.metres()
}
