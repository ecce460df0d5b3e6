package lift

// What is checked: a spreader or a lifting beam at each of its ends, and the bar
// itself against pressing and bending.
// Symbols: V pull of the drop at an end; R rated load of the bar, half of it for an
// end where no rating by end is given; theta angle of the top legs from horizontal,
// theta0 the flattest that the bar is rated for; H force along the bar; w mass of
// the bar, s its length, o height of the top lugs over the middle of the bar; p the
// bail from the end over the first pick.
//
//	end         V k / (R/2)
//	top lugs    T k / their rating, or theta >= theta0 with T k / (R/2 / sin theta0)
//	spreader    H k / the force it may be pressed with, or theta >= theta0 with
//	            H k / (R/2 / tan theta0)
//	            M = H o + w s/8
//	beam        M = max(V_A p, V_B (s-p)) + w s/8, held against what it may be bent
//	            with, or its load part against R s/4
//
// Bending is booked as the load in the middle of the bar that bends it as much: 4 M/s.
// Source: exact statics; a beam on two drops with a load in its middle, M = W s/4, any
// handbook of strength of materials. That half the rating is meant for each end is
// common practice, no source.
// Validity: drops upright, the top lugs of a spreader at its pins.
// Asked for: a spreader of which neither the flattest legs nor the force and the
// lugs are known, see Result.Unanswered.

import (
	"fmt"
	"math"
)

// check refuses ratings of a bar that contradict each other.
func (b Bar) check(c *checker) {
	for i, k := range b.Ends {
		c.notBelow(fmt.Sprintf("bar.ends[%d]", i), "the rating of an end of the bar", "kg", float64(k))
	}
	c.notBelow("bar.toplugs", "the rating of the lugs on top of the bar", "kg", float64(b.TopLugs))
	c.notBelow("bar.maypress", "what the bar may be pressed with", "kg", float64(b.MayPress))
	c.notBelow("bar.maybend", "what the bar may be bent with", "N m", float64(b.MayBend))
	c.notBelow("bar.lugrise", "the height of the lugs over the middle of the bar", "mm", float64(b.LugRise))
	if !finite(float64(b.LeastAngle)) || b.LeastAngle < 0 || b.LeastAngle >= 90 {
		c.refuse("bar.leastangle", "take it from the plate of the bar", "the flattest top legs of the bar are %g° from horizontal", float64(b.LeastAngle))
	}
}

// end is what one end of the bar may carry.
func (b Bar) end(i int) (rated Kg, how string) {
	if b.Ends[i] > 0 {
		return b.Ends[i], ""
	}
	return b.Rated / 2, ", half its rating"
}

// bar books the bar: as a whole, at its ends, and in itself.
func (a *account) bar() {
	if a.p.Rig != Spreader && a.p.Rig != Beam {
		return
	}
	b, dyn, top := a.p.Bar, float64(a.r.Dynamic), len(a.p.TopLegs)
	a.component("bar", b.Name, a.p.underBar()*dyn, float64(b.Rated), nil)
	for i := range b.Ends {
		rated, how := b.end(i)
		a.componentCalled(fmt.Sprintf("bar.ends[%d]", i), say("%s, end over %s%s", b.Name, a.p.Picks[i].Name, how), float64(a.r.Legs[top+i].Design), float64(rated), nil)
	}
	if a.p.Rig == Spreader {
		a.spreader()
		return
	}
	most, own := 0.0, float64(b.Mass)*float64(b.Length)/8
	f := a.s.frame.(beam)
	for _, st := range a.states {
		most = max(most, st.lines[0].tension*f.bail, st.lines[1].tension*(f.barLen-f.bail))
	}
	a.bent(most, own)
}

// spreader books the lugs on top, the press along the bar and its bending.
func (a *account) spreader() {
	b, dyn := a.p.Bar, float64(a.r.Dynamic)
	press := float64(a.r.Press)
	flattest := min(a.r.Legs[0].Flattest, a.r.Legs[1].Flattest)
	sin, cos := math.Sincos(radians(b.LeastAngle))
	lugs, mayPress := float64(b.TopLugs), float64(b.MayPress)
	if b.LeastAngle > 0 {
		least := min(b.half(0), b.half(1))
		if lugs == 0 {
			lugs = least / sin
		}
		if mayPress == 0 {
			mayPress = least * cos / sin
		}
		if flattest < b.LeastAngle-angleSlack {
			a.r.Cautions = append(a.r.Cautions, warn(BarTooFlat, "bar.leastangle", "use longer top legs", true,
				say("the legs above %s stand %s from horizontal and it is rated for %s and steeper", b.Name, flattest.Down(), b.LeastAngle)))
		}
	}
	if lugs == 0 || mayPress == 0 {
		a.ask("bar.leastangle", "take from its plate the flattest legs that it is rated for, or the force it may be pressed with and the rating of its lugs",
			"nothing says for which legs above it %s is rated; they stand %s from horizontal and press it with %s", b.Name, flattest.Down(), (a.r.Press * Kg(dyn)).Up())
	}
	if lugs > 0 {
		for i := range a.p.TopLegs {
			a.componentCalled(fmt.Sprintf("bar.toplugs[%d]", i), say("%s, top lug of %s", b.Name, a.r.Legs[i].Name), float64(a.r.Legs[i].Design), lugs, nil)
		}
	}
	if mayPress > 0 {
		a.componentCalled("bar.maypress", say("%s, pressed lengthwise", b.Name), press*dyn, mayPress, nil)
	}
	if b.LugRise > 0 && b.MayBend == 0 {
		a.ask("bar.maybend", "take it from the reckoning of the bar, or use one whose lugs stand in its middle line",
			"the lugs of %s stand %v over its middle line and bend it, and nothing says what it may be bent with", b.Name, b.LugRise)
	}
	if b.MayBend > 0 {
		a.bent(press*float64(b.LugRise), float64(b.Mass)*float64(b.Length)/8)
	}
}

func (b Bar) half(i int) float64 {
	k, _ := b.end(i)
	return float64(k)
}

// bent books a moment of the load and one of the bar itself, kg mm, as the load in
// the middle that bends the bar as much.
func (a *account) bent(load, own float64) {
	b := a.p.Bar
	asLoad := func(m float64) float64 { return 4 * m / float64(b.Length) }
	if b.MayBend > 0 {
		a.componentCalled("bar.maybend", say("%s, bent, as a load in its middle", b.Name), asLoad(load+own)*float64(a.r.Dynamic),
			asLoad(float64(b.MayBend)/standardGravity*1000), nil)
		return
	}
	a.componentCalled("bar.maybend", say("%s, bent, as a load in its middle", b.Name), asLoad(load)*float64(a.r.Dynamic), float64(b.Rated), nil)
}
