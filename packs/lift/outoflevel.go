package lift

// What helps a load that hangs too far out of level, by the way that it turns. About the
// line of two picks, or below a single one, it swings until the centre of gravity is
// plumb under them: by atan(e/h), e to the side and h below, whatever the lengths of the
// legs. Along that line a bridle turns about its hook and a bar about its bail.
// Source: statics of a body that hangs from a line or a point.

import "math"

// A turning is the way in which a load hangs out of level.
type turning int

const (
	level turning = iota
	rolls         // about the line of two picks, or below one
	leans         // about the hook or the bail
)

// turns tells which way a load with its own upright up is turned for the most part.
func (a *account) turns(up vec) turning {
	if angleBetween(up, zUp) <= angleSlack {
		return level
	}
	switch len(a.p.Picks) {
	case 1:
		return rolls
	case 2:
		e := vecOf(a.p.Picks[1].At).sub(vecOf(a.p.Picks[0].At))
		e.z = 0
		if e.size() == 0 {
			return leans
		}
		e = e.unit()
		if side := zUp.cross(e); math.Abs(up.dot(side)) > math.Abs(up.dot(e)) {
			return rolls
		}
	}
	return leans
}

// planned is where the tilt that everything has as planned comes from, and what helps.
func (a *account) planned() (field, help string) {
	switch {
	case a.turns(a.states[0].up) == rolls && len(a.p.Picks) == 1:
		return "load.cog", "take the pick over the centre of gravity, or take more than one: no length of a leg levels it"
	case a.turns(a.states[0].up) == rolls:
		return "load.cog", "take picks in line with the centre of gravity, higher above it, or on both sides of it: no length of the legs stops a roll"
	case a.p.Rig == Beam:
		return "bar.bail", "set the bail where the load hangs level"
	}
	return "legs", "make the legs the lengths that hang it level"
}

// uncertain is what helps where the tolerance of the centre of gravity is the cause.
func (a *account) uncertain() string {
	worst := a.states[0].up
	for _, x := range a.turned {
		if !x.legs && angleBetween(x.up, zUp) > angleBetween(worst, zUp) {
			worst = x.up
		}
	}
	switch {
	case a.turns(worst) == rolls && len(a.p.Picks) == 1:
		return "take the pick higher above the centre of gravity, or take more than one; a longer leg does not help"
	case a.turns(worst) == rolls:
		return "find the centre of gravity better across the line of the picks, or take picks higher above it or on both sides of it; longer legs do not stop a roll"
	case a.p.Rig == Beam:
		return "weigh it at each pick to know the centre of gravity better, or take a beam whose bail stands higher"
	case a.p.Rig == Spreader:
		return "weigh it at each pick to know the centre of gravity better, or hang the spreader from longer legs"
	}
	return "weigh it at each pick to know the centre of gravity better, or hang it from longer legs"
}
