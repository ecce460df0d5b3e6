package lift

// What is computed: how a rigid load comes to rest on legs of given length that
// meet at one hook. The hook's place is sought in the load's own frame; the
// direction from the centre of gravity to it is then the vertical.
// Symbols: P pick, L leg length, G centre of gravity, H hook.
//
// Two legs A and B at a distance s on the line e from A to B:
//
//	x0 = (LA² - LB² + s²)/(2 s)     y0 = sqrt(LA² - x0²)
//	H = A + x0 e + y0 n, n square to e, in the plane of A, B and G, away from G
//
// Three legs: the point at three given distances, on the upper side.
// Of all positions that the lengths allow (no leg longer than itself, slack
// allowed) the load takes the one in which it hangs deepest under the hook. That
// position holds itself by one, two or three tight legs, so these are tried.
// Source: exact statics; least potential energy.
// Refused: lengths that cannot meet; a centre of gravity above the line of two
// picks, where the load would turn over; nothing left in balance.

import (
	"math"
	"slices"
)

// resting is a position of balance in the load's own frame.
type resting struct {
	hook vec
	up   vec       // unit, from the centre of gravity to the hook
	us   []vec     // unit, pick to hook
	t    []float64 // shares of a unit weight in this position
	// slack is by how much a leg is longer than the way from pick to hook.
	slack []float64
}

// slackest gives by how much the loosest leg hangs slack.
func (r resting) slackest() float64 { return slices.Max(r.slack) }

// lengthSlack is the rounding allowed when leg ends are compared, mm.
const lengthSlack = 1e-6

// rest finds the position of balance. The second value is false when there is
// none; the callers then say why in the trade's words.
func rest(picks []vec, lengths []float64, g vec) (resting, bool) {
	var best resting
	found, deepest := false, 0.0
	for _, idx := range setsOfFour {
		if idx[len(idx)-1] >= len(picks) {
			continue
		}
		hook, ok := apex(picks, lengths, g, idx)
		if !ok {
			continue
		}
		r, ok := settle(picks, lengths, g, hook, idx)
		if !ok {
			continue
		}
		// A later set has to hang deeper by more than rounding: so a leg that just
		// touches does not displace the set that carries.
		if d := hook.sub(g).size(); !found || d > deepest+lengthSlack || len(idx) > tight(best) && d > deepest-lengthSlack {
			best, deepest, found = r, d, true
		}
	}
	return best, found
}

// tight counts the legs that carry.
func tight(r resting) int {
	n := 0
	for _, t := range r.t {
		if t > weightless {
			n++
		}
	}
	return n
}

// setsOfFour are the sets of one, two and three legs out of four, fewest first.
var setsOfFour = [][]int{
	{0}, {1}, {2}, {3}, {0, 1}, {0, 2}, {0, 3}, {1, 2}, {1, 3}, {2, 3}, {0, 1, 2}, {0, 1, 3}, {0, 2, 3}, {1, 2, 3},
}

// settle reports whether the load is in balance with the hook there and the
// legs of idx tight.
func settle(picks []vec, lengths []float64, g, hook vec, idx []int) (resting, bool) {
	gh := hook.sub(g)
	if gh.size() < 1e-9 || gh.z <= 0 {
		return resting{}, false
	}
	for i, p := range picks {
		// Most places that are tried are out of a leg's reach, and are dropped here.
		if d := hook.sub(p).size(); d < 1e-9 || lengths[i]-d < -lengthSlack {
			return resting{}, false
		}
	}
	r := resting{hook: hook, up: gh.unit(), slack: make([]float64, len(picks))}
	for i, p := range picks {
		r.slack[i] = max(lengths[i]-hook.sub(p).size(), 0)
	}
	r.us = directions(picks, hook)
	t, ok := carry(r.us, r.up, idx)
	if !ok {
		return resting{}, false
	}
	for _, share := range t {
		if share < -weightless {
			return resting{}, false
		}
	}
	r.t = t
	return r, true
}

// apex gives the place of the hook with the legs of idx tight.
func apex(picks []vec, lengths []float64, g vec, idx []int) (vec, bool) {
	switch len(idx) {
	case 1:
		p := picks[idx[0]]
		d := p.sub(g)
		if d.size() < 1e-9 {
			return vec{}, false
		}
		return p.add(d.unit().by(lengths[idx[0]])), true
	case 2:
		return apexTwo(picks[idx[0]], picks[idx[1]], lengths[idx[0]], lengths[idx[1]], g)
	default:
		return apexThree(picks[idx[0]], picks[idx[1]], picks[idx[2]], lengths[idx[0]], lengths[idx[1]], lengths[idx[2]])
	}
}

func apexTwo(a, b vec, la, lb float64, g vec) (vec, bool) {
	s := b.sub(a).size()
	e := b.sub(a).by(1 / s)
	n, depth, ok := hangLine(a, e, g)
	if !ok || depth < -lengthSlack {
		return vec{}, false
	}
	x0 := (la*la - lb*lb + s*s) / (2 * s)
	y2 := la*la - x0*x0
	if y2 <= 0 {
		return vec{}, false
	}
	return a.add(e.by(x0)).add(n.by(math.Sqrt(y2))), true
}

// hangLine gives the direction, square to the line through a along e, in which
// the hook stands from that line when g hangs freely below it, and how deep g
// lies below the line in the level load (negative: above). ok is false for a line
// that stands upright.
func hangLine(a, e, g vec) (n vec, depth float64, ok bool) {
	up := zUp.across(e)
	if up.size() < 1e-6 {
		return vec{}, 0, false
	}
	up = up.unit()
	off := a.sub(g).across(e)
	depth = off.dot(up)
	if off.size() < lengthSlack {
		// The centre of gravity lies on the line: the load may be turned about it
		// freely, and the rigger sets it upright.
		return up, depth, true
	}
	return off.unit(), depth, true
}

func apexThree(p1, p2, p3 vec, r1, r2, r3 float64) (vec, bool) {
	d := p2.sub(p1).size()
	ex := p2.sub(p1).by(1 / d)
	to3 := p3.sub(p1)
	rest3 := to3.across(ex)
	if rest3.size() < 1e-9 {
		return vec{}, false
	}
	ey := rest3.unit()
	ez := ex.cross(ey)
	if ez.z < 0 {
		ez = ez.by(-1)
	}
	i, j := to3.dot(ex), to3.dot(ey)
	x := (r1*r1 - r2*r2 + d*d) / (2 * d)
	y := (r1*r1-r3*r3+i*i+j*j)/(2*j) - i/j*x
	z2 := r1*r1 - x*x - y*y
	if z2 <= 0 {
		return vec{}, false
	}
	return p1.add(ex.by(x)).add(ey.by(y)).add(ez.by(math.Sqrt(z2))), true
}
