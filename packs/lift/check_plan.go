package lift

import "fmt"

// check gives everything that is wrong with the plan as written, before any
// statics. What only the statics can tell is refused there.
func (p *Plan) check() Refusals {
	c := &checker{p: p}
	c.load()
	c.lightly(named(p.DecidedBy, p.Reason))
	c.rig()
	c.legs("legs", p.Legs)
	c.legs("toplegs", p.TopLegs)
	for i, h := range p.TopGear {
		c.hardware(fmt.Sprintf("topgear[%d]", i), h)
	}
	c.sharing()
	c.turning()
	c.site()
	return c.rs
}

// checker gathers refusals of one plan.
type checker struct {
	p  *Plan
	rs Refusals
}

func (c *checker) refuse(field, help, message string, args ...any) {
	c.rs = append(c.rs, *refuse(field, help, message, args...))
}

// positive asks for an ordinary number above zero.
func (c *checker) positive(field, what, unit string, v float64) {
	switch {
	case v == 0:
		c.refuse(field, "write it above zero, with its source", "%s is not given (%v)", what, given(v, unit))
	case !finite(v) || v < 0:
		c.refuse(field, "write it above zero, with its source", "%s is %v", what, given(v, unit))
	}
}

// notBelow asks for an ordinary number not under zero.
func (c *checker) notBelow(field, what, unit string, v float64) {
	if !finite(v) || v < 0 {
		c.refuse(field, "write it as zero or above", "%s is %v", what, given(v, unit))
	}
}

// place asks for three ordinary numbers.
func (c *checker) place(field, what string, pt Point) {
	if !finite(float64(pt.X), float64(pt.Y), float64(pt.Z)) {
		c.refuse(field, "write x, y and z in millimetres", "%s has no place", what)
	}
}

func (c *checker) load() {
	l := c.p.Load
	if !finite(float64(l.Mass)) || l.Mass <= 0 {
		c.refuse("load.mass", "weigh it, take it from a drawing or compute it from sections", "the mass of the load is not given (%v)", l.Mass)
	}
	if l.Source < Weighed || l.Source > Estimated {
		c.refuse("load.source", "write weighed, drawing, computed or estimated", "the mass has no source")
	}
	c.notBelow("load.masstolerance", "the tolerance of the mass", "kg", float64(l.MassTolerance))
	if l.CoG == nil {
		c.refuse("load.cog", "write x, y and z from the same origin as the picks, or compute it from sections", "the centre of gravity is not known")
	} else {
		c.place("load.cog", "the centre of gravity", *l.CoG)
	}
	t := l.CoGTolerance
	for _, v := range []struct {
		axis string
		v    Mm
	}{{"x", t.X}, {"y", t.Y}, {"z", t.Z}} {
		c.notBelow("load.cogtolerance."+v.axis, "the tolerance of the centre of gravity along "+v.axis, "mm", float64(v.v))
	}
	c.notBelow("load.maypress", "the press the load can take", "kg", float64(l.MayPress))
	for _, o := range l.Outline {
		c.place("load.outline", "a point of the outline", o)
	}
	if s := l.Span; s != nil {
		c.place("load.span.a", "the near end of the span", s.A)
		c.place("load.span.b", "the far end of the span", s.B)
	}
}

// rig counts picks and legs and looks at the bar.
func (c *checker) rig() {
	p := c.p
	least, most := 2, 2
	switch p.Rig {
	case Bridle:
		least, most = 1, 4
	case Spreader, Beam, TwoHooks:
	default:
		c.refuse("rig", "write bridle, spreader, beam or two hooks", "the plan does not say how the load hangs")
		return
	}
	if c.threePoints() {
		return
	}
	if n := len(p.Picks); n < least || n > most {
		c.refuse("picks", fmt.Sprintf("give %d to %d", least, most), "there are %d picks", n)
	}
	for i, k := range p.Picks {
		c.place(fmt.Sprintf("picks[%d]", i), "pick "+k.Name, k.At)
		if k.Point != nil {
			k.Point.check(c, fmt.Sprintf("picks[%d].point", i), k.Name)
		}
		for j := range i {
			if vecOf(k.At).sub(vecOf(p.Picks[j].At)).size() < 1 {
				c.refuse(fmt.Sprintf("picks[%d]", i), "give each pick its own place", "picks %q and %q are at the same place", p.Picks[j].Name, k.Name)
			}
		}
	}
	if len(p.Legs) != len(p.Picks) {
		c.refuse("legs", "give each pick one leg", "there are %d legs for %d picks", len(p.Legs), len(p.Picks))
	}
	top := 0
	if p.Rig == Spreader {
		top = 2
	}
	if len(p.TopLegs) != top {
		c.refuse("toplegs", fmt.Sprintf("give %d", top), "there are %d legs above the spreader", len(p.TopLegs))
	}
	if p.Rig == Spreader || p.Rig == Beam {
		c.bar()
	}
	c.unused()
	if p.Rig == TwoHooks && len(p.TopGear) > 0 {
		c.refuse("topgear", "put the gear in the leg under its own hook", "with two hooks no gear carries the whole load")
	}
}

// unused refuses what the rig would pass over in silence.
func (c *checker) unused() {
	p := c.p
	if (p.Rig == Beam || p.Rig == TwoHooks) && p.HookHeight != 0 {
		c.refuse("hookheight", "leave it out; the lengths of the upright legs set it", "a hook height of %v is given for upright legs", p.HookHeight)
	}
	if (p.Rig == Beam || p.Rig == TwoHooks) && p.Aim != 0 {
		c.refuse("aim", "leave it out", "an angle of %v is aimed at and the legs hang upright", p.Aim)
	}
	if (p.Rig == Bridle || p.Rig == TwoHooks) && p.Bar != (Bar{}) {
		c.refuse("bar", "leave it out, or call the rig a spreader or a beam", "a bar is given and the load hangs without one")
	}
	if p.Rig == Spreader && (p.Bar.Bail != 0 || p.Bar.Rise != 0) {
		c.refuse("bar.bail", "leave bail and rise out, or call the rig a beam", "a spreader hangs from its ends and has no bail")
	}
	if p.Rig != TwoHooks && p.SecondCrane != (Crane{}) {
		c.refuse("secondcrane", "leave it out, or call the rig two hooks", "a second crane is given and one hook lifts")
	}
	if p.Rig == TwoHooks && p.Tackle != nil {
		c.refuse("tackle", "hang the load on one hook, or leave the tackle out", "a tackle is given and two hooks lift")
	}
	if p.Sharing != Skew && p.SkewFactor != 0 {
		c.refuse("skewfactor", "leave it out, or name matched slings with a skew factor", "a skew factor of %g is given and not used", float64(p.SkewFactor))
	}
}

func (c *checker) bar() {
	p := c.p
	c.positive("bar.length", "the length of the bar", "mm", float64(p.Bar.Length))
	c.positive("bar.rated", "the rated load of the bar", "kg", float64(p.Bar.Rated))
	c.basis("bar.basis", p.Bar.Name, p.Bar.Basis)
	c.notBelow("bar.mass", "the mass of the bar", "kg", float64(p.Bar.Mass))
	c.notBelow("bar.rise", "the rise of the bail", "mm", float64(p.Bar.Rise))
	p.Bar.check(c)
	if !finite(float64(p.Bar.Bail)) || p.Bar.Bail < 0 || p.Bar.Bail > 0 && p.Bar.Bail >= p.Bar.Length {
		c.refuse("bar.bail", "measure it along the beam from the end over the first pick", "the bail stands at %v of a beam of %v", p.Bar.Bail, p.Bar.Length)
	}
}

// sharing asks for a name and a reason where the planner departs from the default.
func (c *checker) sharing() {
	p := c.p
	switch p.Sharing {
	case TwoCarry:
		return
	case ThreeOfFour, Skew:
	default:
		c.refuse("sharing", "let two legs carry, or name three of four or matched slings with a skew factor", "how the four legs share is not known")
		return
	}
	if p.Rig != Bridle || len(p.Picks) != 4 {
		c.refuse("sharing", "leave it out", "a sharing is given and the load does not hang on four legs")
	}
	if p.DecidedBy == "" {
		c.refuse("decidedby", "name the competent person who decides it", "four legs are counted otherwise than two carrying, and no person is named")
	}
	if p.Reason == "" {
		c.refuse("reason", "write why, such as matched slings measured on the day", "four legs are counted otherwise than two carrying, and no reason is given")
	}
	if p.Sharing == Skew && (!finite(float64(p.SkewFactor)) || p.SkewFactor < leastSkew) {
		c.refuse("skewfactor", "write the factor found for these slings; the least that is published is 1.25", "the skew factor is %g", float64(p.SkewFactor))
	}
}

// site checks basis, factors, crane and heights.
func (c *checker) site() {
	p := c.p
	if p.Basis != US && p.Basis != EN {
		c.refuse("basis", "write US or EN, by what stands on the gear", "the plan does not say by which basis the gear is rated")
	}
	if !finite(float64(p.Dynamic)) || p.Dynamic != 0 && p.Dynamic < 1 {
		c.refuse("dynamic", "leave it out for the published factor, or write that of the hoist's own rules", "the dynamic factor is %g", float64(p.Dynamic))
	}
	if !finite(float64(p.MaxTilt)) || p.MaxTilt < 0 || p.MaxTilt > 15 {
		c.refuse("maxtilt", "write what the site allows; over 15° nothing is computed", "the tilt allowed is %g°", float64(p.MaxTilt))
	}
	c.notBelow("lengtherror", "the error of a leg's length", "mm", float64(p.LengthError))
	if !finite(float64(p.CriticalAt)) || p.CriticalAt <= 0 || p.CriticalAt > 1 {
		c.refuse("criticalat", "write the threshold of the site's lift rules", "the threshold of a critical lift is %g", float64(p.CriticalAt))
	}
	if p.Temperatures != nil {
		p.Temperatures.check(c)
	}
	c.crane("crane", p.Crane)
	if p.Rig == TwoHooks {
		c.crane("secondcrane", p.SecondCrane)
	}
	if h := p.Headroom; h != nil {
		c.positive("headroom.highhook", "the highest place of the hook", "mm", float64(h.HighHook))
		if p.Rig == TwoHooks && p.SecondCrane.Rated > 0 {
			c.positive("headroom.secondhighhook", "the highest place of the second hook", "mm", float64(h.SecondHighHook))
		}
		if len(p.Load.Outline) == 0 && p.Load.Span == nil {
			c.refuse("load.outline", "write size:, or where its ends are", "nothing says where the ends of the load are, and the one that hangs low is lowest")
		}
		c.notBelow("headroom.passover", "the height to clear", "mm", float64(h.PassOver))
		c.notBelow("headroom.stack", "the gear above the legs", "mm", float64(h.Stack))
		if !finite(float64(h.Underside)) {
			c.refuse("headroom.underside", "measure from z = 0 of the load down to its lowest point", "the underside of the load has no place")
		}
	}
	if !finite(float64(p.HookHeight)) {
		c.refuse("hookheight", "write it in millimetres above z = 0 of the load", "the hook height is not a number")
	}
	if !finite(float64(p.Aim)) || p.Aim != 0 && (p.Aim < flattest || p.Aim >= 90) {
		c.refuse("aim", "write 30° to under 90°", "the leg angle aimed at is %g° from horizontal", float64(p.Aim))
	}
}

func (c *checker) crane(field string, k Crane) {
	c.positive(field+".rated", "what the crane may lift", "kg", float64(k.Rated))
	c.notBelow(field+".block", "the mass of the hook block", "kg", float64(k.Block))
}
