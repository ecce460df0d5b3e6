package lift

// What is checked: what a leg takes hold of on the load itself, such as a lug, a
// welded eye, a trunnion or a ring bolt.
// The rating of a lug holds for pulls from straight up down to one angle from
// horizontal, in its own plane; it stands on the drawing or on a plate beside it.
//
//	used = pull of the leg by design / rating
//
// Source: the rating as given; 29 CFR 1910.184(b): within 5° of upright counts as
// upright. No rating is worked out here from the size of a lug.
// Asked for: a point that is not known, see Result.Unanswered. Not needed for a
// sling that is choked or slung round the load, nor for a leg with an eyebolt in its
// gear, which is the point.

import "fmt"

// A LiftingPoint is what a leg takes hold of on the load.
type LiftingPoint struct {
	// What it is: lug, trunnion.
	What string
	// Rated along the leg, for any leg from upright down to LeastAngle.
	Rated Kg
	// LeastAngle from horizontal, over 0 and to 90: the flattest leg that the rating is
	// for; 90 is a pull straight up only.
	LeastAngle Degree
	// Turns tells that it is rated all the way round while the load is turned, as a trunnion.
	Turns bool
	// Source names the drawing or the plate.
	Source string
}

// check refuses a point whose rating is told by half.
func (k LiftingPoint) check(c *checker, field, name string) {
	c.positive(field+".rated", fmt.Sprintf("what the lifting point at %q may carry", name), "kg", float64(k.Rated))
	if !finite(float64(k.LeastAngle)) || k.LeastAngle <= 0 || k.LeastAngle > 90 {
		c.refuse(field+".leastangle", "take it from the drawing or the plate; 90° is a pull straight up only",
			"the flattest leg that the lifting point at %q is rated for is %g° from horizontal", name, float64(k.LeastAngle))
	}
	if k.Source == "" {
		c.refuse(field+".source", "name the drawing or the plate", "the rating of the lifting point at %q has no source", name)
	}
}

// pulls words for which pulls a point is rated.
func (k LiftingPoint) pulls() phrase {
	if 90-k.LeastAngle <= upright {
		return say("a pull straight up only")
	}
	return say("legs of %s and steeper", k.LeastAngle.Up())
}

// bears tells whether the leg goes round the load, or ends in an eyebolt that is
// rated by itself.
func (l Leg) bears() bool {
	if l.Sling.Hitch != Straight {
		return true
	}
	for _, h := range l.Gear {
		if h.Kind == ShoulderEyebolt || h.Kind == PlainEyebolt {
			return true
		}
	}
	return false
}

// points books the lifting points of the load, and asks for those not known.
func (a *account) points() {
	top := len(a.p.TopLegs)
	for i, k := range a.p.Picks {
		field, leg := fmt.Sprintf("picks[%d].point", i), a.r.Legs[top+i]
		if k.Point == nil {
			if !a.p.Legs[i].bears() {
				a.ask(field, "take the rating and its angle from the drawing or the plate, or have the point proved by a competent person",
					"nothing says what the lifting point at %q may carry; the leg pulls %s at %s from horizontal", k.Name, leg.Design.Up(), leg.Flattest.Down())
			}
			continue
		}
		what := k.Point.What
		if what == "" {
			what = "lifting point"
		}
		a.componentCalled(field, say("%s, %s", what, k.Name), float64(leg.Design), float64(k.Point.Rated), nil)
		least := k.Point.LeastAngle
		if 90-least <= upright {
			least = 90 - upright
		}
		if pull := a.flattestPull(); !k.Point.Turns && pull < least-angleSlack {
			a.r.Cautions = append(a.r.Cautions, warn(PointTooFlat, field, "take a trunnion or a swivel eye, with turns: yes under lifting-points: where its drawing says so", true,
				say("the %s at %q is pulled %s from the load's own level as it is turned, and is rated for %s", what, k.Name, pull.Down(), k.Point.pulls())))
		}
		if leg.Flattest < least-angleSlack {
			a.r.Cautions = append(a.r.Cautions, warn(PointTooFlat, field, "use longer legs, or a bar so that the legs pull upright", true,
				say("the %s at %q is pulled at %s from horizontal and is rated for %s", what, k.Name, leg.Flattest.Down(), k.Point.pulls())))
		}
	}
}
