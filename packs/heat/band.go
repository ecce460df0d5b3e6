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

// A search tries powers on one pull.
type search struct {
	pull *Pull
	grid grid

	bodies *bodies // those of all trials, and how they start
	start  kept
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
