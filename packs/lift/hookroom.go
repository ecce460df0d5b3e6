package lift

import "math"

// How high each of two hooks must go.
//
//	needed = to clear + highest of ((pick - low point) along the load's upright) + leg
//	         + legs off their length + stack
//
// While one hook is low by the tilt that is allowed, the load leans, and the other hook stands
// over the lowest point by all that lies between its pick and that point: the load turns about
// neither the centre of gravity nor its middle. Lowest is a point of the outline or an end of
// the span, down to the underside. Along the lean the height of a pick over a point at a before
// it and b below it is b cos x + a sin x, the most at x = atan(a/b) or at the end of the lean.
// A load that is turned does the same from lying to where all of it hangs from one leg.
// Source: plane geometry, derived.

// hookRooms are the rooms of the two hooks, in the order of their picks.
func (a *account) hookRooms(legs Mm) []HeadroomResult {
	h, st := a.p.Headroom, a.states[0]
	var out []HeadroomResult
	for i, high := range []Mm{h.HighHook, h.SecondHighHook} {
		l := st.lines[i]
		level := l.top.sub(a.s.g).dot(st.up) + a.s.g.z
		// Of what the lean takes, so much is a low end: the rest stands there at level.
		low := max(max(a.overLowest(l.bottom), a.overLowestTurned(l.bottom))+float64(a.p.Legs[i].Length)-level-float64(h.Underside), 0)
		needed := h.PassOver + h.Underside + Mm(low+level) + legs + h.Stack
		out = append(out, HeadroomResult{
			Over: a.p.Picks[i].Name, Needed: needed, Spare: high - needed, Above: Mm(level), LowEnd: Mm(low), Legs: legs})
	}
	return out
}

// overLowest is how high a pick stands over the lowest point of the load, the most with
// either hook low and the centre of gravity anywhere in its tolerance.
func (a *account) overLowest(pick vec) float64 {
	f := a.s.frame.(hooks)
	flat := f.b.sub(f.a)
	flat.z = 0
	flat = flat.unit()
	most := math.Inf(-1)
	lean := func(up vec, by Degree) {
		ahead := flat.across(up).unit()
		for _, e := range a.lowPoints() {
			d := pick.sub(e)
			most = max(most, mostOfLean(d.dot(up), d.dot(ahead), radians(by)))
		}
	}
	lean(zUp, f.tilt)
	for _, st := range a.states {
		lean(st.up, f.tilt)
	}
	for _, x := range a.turned {
		lean(x.up, max(f.tilt, x.extra))
	}
	return most
}

// mostOfLean is the most of b cos x + a sin x for x within the lean, both ways.
func mostOfLean(b, a, lean float64) float64 {
	if b > 0 && math.Abs(math.Atan2(a, b)) <= lean {
		return math.Hypot(a, b)
	}
	return b*math.Cos(lean) + math.Abs(a)*math.Sin(lean)
}

// lowPoints are the points that may be the lowest as the load leans: those of the outline and
// the ends of the span, each down to the underside.
func (a *account) lowPoints() []vec {
	all := a.p.Load.Outline
	if s := a.p.Load.Span; s != nil {
		all = append(all[:len(all):len(all)], s.A, s.B)
	}
	var out []vec
	for _, o := range all {
		v := vecOf(o)
		v.z = min(v.z, -float64(a.p.Headroom.Underside))
		out = append(out, v)
	}
	return out
}
