package lift

import "math"

// How high the hook must go.
//
//	needed = to clear + underside + low end + hook above the load + legs + stack
//
// On two hooks that is of each its own, see hookRooms.
// The low end hangs below what is measured at level, with the centre of gravity and the legs
// off as far as they may be: an end of the span, or the lowest corner of the outline where no
// span is given, which lies as far out as the load does or farther. A leg that is long by e stands
// e L/h higher at most, L its length and h its rise (the height over the length is
// concave, so that its slope at L bounds it); legs above and below a bar add. Source:
// geometry, derived.

func (a *account) headroom() {
	h := a.p.Headroom
	if h == nil {
		return
	}
	legs := a.longLegs()
	if a.p.Rig == TwoHooks {
		rooms := a.hookRooms(legs)
		a.rooms, a.r.Headroom, a.r.OtherHeadroom = rooms, &rooms[0], &rooms[1]
		if rooms[1].Spare < rooms[0].Spare {
			a.r.Headroom, a.r.OtherHeadroom = &rooms[1], &rooms[0]
		}
		return
	}
	low, above := a.lowEnd(), a.r.HookHeight
	needed := h.PassOver + h.Underside + low + above + legs + h.Stack
	a.r.Headroom = &HeadroomResult{Needed: needed, Spare: h.HighHook - needed, Above: above, LowEnd: low, Legs: legs}
}

// lowEnd is how far an end of the span, or where no span is given a lower corner of the
// outline, hangs below its place at level, at most.
func (a *account) lowEnd() Mm {
	ends := a.lowPoints()
	if s := a.p.Load.Span; s != nil {
		ends = []vec{vecOf(s.A), vecOf(s.B)}
	}
	low := 0.0
	for _, e := range ends {
		d := e.sub(a.s.g)
		for _, st := range a.states {
			low = max(low, d.z-d.dot(st.up))
		}
		for _, x := range a.turned {
			low = max(low, d.z-d.dot(x.up)+d.size()*math.Sin(radians(x.extra)))
		}
	}
	return Mm(low)
}

// longLegs is how much higher the hook stands over the load with legs that are long by
// their error.
func (a *account) longLegs() Mm {
	st := a.states[0]
	var above, below float64
	for i, l := range st.lines {
		arm := l.top.sub(l.bottom)
		rise := arm.dot(st.up)
		if rise <= 0 {
			continue
		}
		more := float64(a.p.lengthError()) * arm.size() / rise
		if _, _, _, top := a.leg(i); top {
			above = max(above, more)
		} else {
			below = max(below, more)
		}
	}
	return Mm(above + below)
}
