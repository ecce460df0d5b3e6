package lift

// What is computed: what each of four legs on a rigid load may carry.
// Statics leave one unknown: a pattern n of leg forces balances itself, so every
// T0 + k n with no leg pushing is possible, and a few millimetres of leg length
// decide which. Symbols: T0 one balanced set, n the pattern, k any number.
//
//	two carry      T_i = the most that T0_i + k n_i can be; on a rectangle with
//	               level picks W × the smaller of its two side shares, W/2 when centred
//	even           weights of the corner-to-corner lever rule both ways, (1-u)(1-v) …,
//	               u and v found for any four-cornered layout
//	three of four  even × 4/3: the load counted as if three legs shared it
//	skew           even × the factor, at least 1.25, with matched slings
//
// Sources: two carry: exact statics, and US Navy training manuals 14080 p. 3-24
// and 14251 p. 6-36 (two legs counted, also of three and four). Three of four: US
// alloy chain tables rate a quad like a triple, Ohio Administrative Code
// 4123:1-3-08. Skew: 1.25 for four matched slings, GL Noble Denton 0027/ND rev 11,
// 5.6.12.
// Legs of the lengths stated may leave one of the four slack. Statics then have one
// answer for the others, T0, and a convention is counted with no less:
//
//	T_i = max(convention, T0_i) where a leg hangs slack
//
// Refused: a convention without a person and a reason; a skew factor below 1.25;
// a convention on picks that are no four-cornered layout around the centre.

import "math"

// A Sharing says how four legs are taken to share a rigid load.
type Sharing int

const (
	// TwoCarry is the default: the worst that statics allow with legs not exactly
	// matched.
	TwoCarry Sharing = iota
	// ThreeOfFour is a convention, not statics. It lowers no load under what legs of
	// the stated lengths carry.
	ThreeOfFour
	// Skew is an even share times a skew factor, for matched slings, with the same
	// bound.
	Skew
)

// leastSkew: 0027/ND rev 11, 5.6.12, indeterminate lift on four matched slings.
const leastSkew = 1.25

// selfBalanced gives the pattern of forces in four legs that needs no load.
func selfBalanced(us []vec) [4]float64 {
	return [4]float64{
		det(us[1], us[2], us[3]), -det(us[0], us[2], us[3]),
		det(us[0], us[1], us[3]), -det(us[0], us[1], us[2]),
	}
}

// extremes gives the two ends of all balanced sets of four legs, from one of them.
func extremes(t0 []float64, us []vec) (low, high []float64) {
	n := selfBalanced(us)
	kLow, kHigh := math.Inf(-1), math.Inf(1)
	for i, ni := range n {
		switch {
		case ni > 1e-12:
			kLow = max(kLow, -t0[i]/ni)
		case ni < -1e-12:
			kHigh = min(kHigh, -t0[i]/ni)
		}
	}
	if math.IsInf(kLow, 0) || math.IsInf(kHigh, 0) {
		return t0, t0
	}
	low, high = make([]float64, 4), make([]float64, 4)
	for i, ni := range n {
		low[i], high[i] = t0[i]+kLow*ni, t0[i]+kHigh*ni
	}
	return low, high
}

// evenShares gives the both-ways lever split in the hung position. ok is false
// where the picks, seen along the plumb line, are no convex layout around it.
func evenShares(picks []vec, r resting) (t []float64, ok bool) {
	e1 := vec{1, 0, 0}.across(r.up).unit()
	e2 := r.up.cross(e1)
	order := roundTheHook(picks, r.hook, e1, e2)
	var xs, ys [4]float64
	for i, k := range order {
		d := picks[k].sub(r.hook)
		xs[i], ys[i] = d.dot(e1), d.dot(e2)
	}
	u, v, ok := cornerFractions(xs, ys)
	if !ok {
		return nil, false
	}
	w := [4]float64{(1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v}
	// The weights balance sideways pulls as pull per length of leg; the heights
	// then scale them to lift the weight.
	sum := 0.0
	for i, k := range order {
		sum += w[i] * r.hook.sub(picks[k]).dot(r.up)
	}
	t = make([]float64, 4)
	for i, k := range order {
		t[k] = w[i] / sum * r.hook.sub(picks[k]).size()
	}
	return t, true
}

// roundTheHook orders the four picks by their bearing from the middle of the
// picks, so that corners follow each other.
func roundTheHook(picks []vec, hook, e1, e2 vec) [4]int {
	var mid vec
	for _, p := range picks {
		mid = mid.add(p.by(0.25))
	}
	order := [4]int{0, 1, 2, 3}
	bearing := func(i int) float64 {
		d := picks[i].sub(mid)
		return math.Atan2(d.dot(e2), d.dot(e1))
	}
	for i := 1; i < 4; i++ {
		for j := i; j > 0 && bearing(order[j]) < bearing(order[j-1]); j-- {
			order[j], order[j-1] = order[j-1], order[j]
		}
	}
	return order
}

// cornerFractions finds u and v of the origin in the corners 0, 1, 2, 3:
// (1-u)(1-v) P0 + u(1-v) P1 + u v P2 + (1-u) v P3 = 0.
func cornerFractions(xs, ys [4]float64) (u, v float64, ok bool) {
	cross := func(ax, ay, bx, by float64) float64 { return ax*by - ay*bx }
	for i := range 4 { // convex: each corner turns the same way
		j, k := (i+1)%4, (i+2)%4
		if cross(xs[j]-xs[i], ys[j]-ys[i], xs[k]-xs[j], ys[k]-ys[j]) <= 1e-6 {
			return 0, 0, false
		}
	}
	ex, ey := xs[1]-xs[0], ys[1]-ys[0]
	fx, fy := xs[3]-xs[0], ys[3]-ys[0]
	gx, gy := xs[0]-xs[1]+xs[2]-xs[3], ys[0]-ys[1]+ys[2]-ys[3]
	hx, hy := -xs[0], -ys[0]
	k2 := cross(gx, gy, fx, fy)
	k1 := cross(ex, ey, fx, fy) + cross(hx, hy, gx, gy)
	k0 := cross(hx, hy, ex, ey)
	for _, v := range roots(k2, k1, k0) {
		// Of the two ways to write u, take the one with the larger divisor.
		dx, dy := ex+gx*v, ey+gy*v
		u := (hx - fx*v) / dx
		if math.Abs(dy) > math.Abs(dx) {
			u = (hy - fy*v) / dy
		}
		if u >= 0 && u <= 1 && v >= 0 && v <= 1 {
			return u, v, true
		}
	}
	return 0, 0, false
}

// roots solves a x² + b x + c = 0, also where a is nothing but rounding.
func roots(a, b, c float64) []float64 {
	if math.Abs(a) < 1e-12*math.Abs(b) {
		return []float64{-c / b}
	}
	disc := b*b - 4*a*c
	if disc < 0 {
		return nil
	}
	q := -(b + math.Copysign(math.Sqrt(disc), b)) / 2
	if q == 0 {
		return []float64{0}
	}
	return []float64{q / a, c / q}
}
