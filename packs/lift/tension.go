package lift

// What is computed: the tensions of two or three straight legs that meet at one
// hook, from the balance of forces alone, in three dimensions.
// Symbols: u unit vector of a leg from its pick to the hook; v the vertical, from
// the centre of gravity to the hook; T tension; W weight.
//
//	sum(T u) = W v
//
// The legs and the weight all pass through the hook, so moments balance by
// themselves. Two legs: the sine rule, T_A = W sin(beta_B)/sin(beta_A + beta_B),
// written with cross products. Three legs: Cramer's rule.
// Source: exact statics.
// Validity: two legs need v in their plane; rest and level see to that.
// Refused by the callers: a tension that is not above zero (a leg pushes or hangs
// slack).

// weightless is the share of the weight below which a leg counts as carrying
// nothing: far above rounding, far below anything a rigger could feel.
const weightless = 1e-9

// directions gives the unit vectors from the picks to the hook.
func directions(picks []vec, hook vec) []vec {
	us := make([]vec, len(picks))
	for i, p := range picks {
		us[i] = hook.sub(p).unit()
	}
	return us
}

// carry gives the share of a unit weight in the legs named by idx (one to three
// of them), the others at zero. ok is false where these legs span no angle.
func carry(us []vec, up vec, idx []int) (shares []float64, ok bool) {
	shares = make([]float64, len(us))
	switch len(idx) {
	case 1:
		shares[idx[0]] = 1
	case 2:
		a, b := us[idx[0]], us[idx[1]]
		n := a.cross(b)
		d := n.dot(n)
		if d < 1e-20 {
			return nil, false
		}
		shares[idx[0]] = up.cross(b).dot(n) / d
		shares[idx[1]] = a.cross(up).dot(n) / d
	case 3:
		a, b, c := us[idx[0]], us[idx[1]], us[idx[2]]
		d := det(a, b, c)
		if d < 1e-12 && d > -1e-12 {
			return nil, false
		}
		shares[idx[0]] = det(up, b, c) / d
		shares[idx[1]] = det(a, up, c) / d
		shares[idx[2]] = det(a, b, up) / d
	}
	return shares, true
}
