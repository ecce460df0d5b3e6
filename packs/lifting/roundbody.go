package lifting

import (
	"math"
	"slices"
	"strings"

	"matchmark/packs/lift"
)

// roundBody is what may be written of a round body that hangs in baskets round its axis, whose
// centre of gravity is given a tolerance across that axis, with which it would turn over: with
// the tolerance along the axis alone, and somebody who answers for the rest, it can be computed.
// Empty for any other load. That a turned body has its centre of gravity on its axis, and
// that a competent person says so of this one: common practice, no source.
func (r *liftReader) roundBody() string {
	axis := inBaskets(r.l.Plan)
	if axis < 0 || len(r.d.CentreWithin) == 0 {
		return ""
	}
	along := r.l.Plan
	tol := [3]lift.Mm{along.Load.CoGTolerance.X, along.Load.CoGTolerance.Y, along.Load.CoGTolerance.Z}
	for i := range tol {
		if i != axis {
			tol[i] = 0
		}
	}
	along.Load.CoGTolerance = lift.Point{X: tol[0], Y: tol[1], Z: tol[2]}
	along.DecidedBy, along.Reason = "named", "given"
	if _, err := lift.Compute(along); err != nil || tol[axis] == 0 {
		return ""
	}
	text := r.d.CentreWithin[min(axis, len(r.d.CentreWithin)-1)].Value
	words := strings.Fields(text)
	within := slices.Repeat([]string{"0 " + words[len(words)-1]}, 3)
	within[axis] = text
	return "of a turned body in baskets round its axis: centre-within: [" + strings.Join(within, ", ") + "], and both decided-by: … and because: turned body, its centre is on its axis"
}

// inBaskets gives the axis, 0 for x, that a load hangs by in baskets round it, its centre of
// gravity as given on that axis; -1 where it does not hang so.
func inBaskets(p lift.Plan) int {
	if len(p.Picks) != 2 || p.Load.CoG == nil || slices.ContainsFunc(p.Legs, func(l lift.Leg) bool { return l.Sling.Hitch != lift.Basket || l.Sling.Around <= 0 }) {
		return -1
	}
	at := func(q lift.Point) [3]float64 { return [3]float64{float64(q.X), float64(q.Y), float64(q.Z)} }
	a, b, g := at(p.Picks[0].At), at(p.Picks[1].At), at(*p.Load.CoG)
	axis := -1
	for i := range a {
		const same = 0.5 // mm
		switch {
		case math.Abs(a[i]-b[i]) <= same && math.Abs(a[i]-g[i]) <= same:
		case axis >= 0:
			return -1
		default:
			axis = i
		}
	}
	return axis
}
