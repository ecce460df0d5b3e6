package lift

// What is asked: a person and a reason for what is easily taken too lightly.
//
//	an estimated mass without a tolerance
//	a centre of gravity that is said to be known exactly
//	a dynamic factor under the published one for the weight
//	a tilt over the published one
//
// Without a person and a reason each is refused, a tilt told by check; with both it is computed as written
// and told as a caution with the name. Source of the factor: see dynamic.go; that a
// mass or a centre of gravity is never known exactly is common practice, no source.

import (
	"strings"
)

// lightly refuses an estimate without a tolerance and a centre of gravity without
// one, unless a named person decides on them.
func (c *checker) lightly(named bool) {
	l := c.p.Load
	if named {
		return
	}
	if l.Source == Estimated && l.MassTolerance == 0 {
		c.refuse("load.masstolerance", "write how far the estimate may be off, weigh it, or name the person who decides and the reason",
			"the mass of %v is estimated, and nothing says how far it may be off", l.Mass)
	}
	if l.CoG != nil && l.CoGTolerance == (Point{}) {
		c.refuse("load.cogtolerance", "write how far it may be off along x, y and z, or name the person who decides and the reason",
			"nothing says how far the centre of gravity may be off")
	}
}

// named tells whether a person and a reason are given.
func named(by, reason string) bool {
	return strings.TrimSpace(by) != "" && strings.TrimSpace(reason) != ""
}

// tooCalm refuses a dynamic factor under the published one without a person and a
// reason.
func (p *Plan) tooCalm(gross float64) *Refusal {
	published := Ratio(onshoreDynamic(gross))
	if p.Dynamic == 0 || p.Dynamic >= published || named(p.DecidedBy, p.Reason) {
		return nil
	}
	return refuse("dynamic", "leave it out for the published factor, write a larger one, or name the person who decides and the reason",
		"the dynamic factor of %g is under the published one for %s", float64(p.Dynamic), Kg(gross).Up())
}

// decisions tells what a named person has decided, and asks for each single way in
// which the centre of gravity is said to be exact.
func (a *account) decisions() {
	p, l := a.p, a.p.Load
	decided := func(code CautionCode, field string, what any) {
		a.caution(code, field, false, "%s, by %s: %s", what, p.DecidedBy, p.Reason)
	}
	if l.Source == Estimated && l.MassTolerance == 0 {
		decided(LooseMass, "load.masstolerance", "the estimated mass is taken as exact")
	}
	if published := Ratio(onshoreDynamic(a.s.gross)); a.r.Dynamic < published {
		decided(Decided, "dynamic", say("the factor for the hoist's movement is %s and not the published %s", a.r.Dynamic.FactorUp(), published.FactorUp()))
	}
	if p.MaxTilt > publishedTilt && named(p.DecidedBy, p.Reason) {
		decided(Decided, "maxtilt", say("it may hang up to %s out of level and not the published %s", p.MaxTilt.Down(), publishedTilt.Down()))
	}
	if l.CoGTolerance == (Point{}) {
		decided(LooseCentre, "load.cogtolerance", "the centre of gravity is taken as exact")
		return
	}
	for _, v := range []struct {
		axis string
		by   Mm
	}{{"x", l.CoGTolerance.X}, {"y", l.CoGTolerance.Y}, {"z", l.CoGTolerance.Z}} {
		if v.by > 0 {
			continue
		}
		field := "load.cogtolerance." + v.axis
		if named(p.DecidedBy, p.Reason) {
			decided(Decided, field, say("the centre of gravity is taken as exact along %s", v.axis))
			continue
		}
		a.ask(field, "write how far it may be off along "+v.axis+", or name the person who decides and the reason", "as written the centre of gravity is exact along %s, and nothing shows that it is", v.axis)
	}
}

// decisions tells what a named person has decided on a lift by hand.
func (p HandPlan) decisions(r *HandResult) {
	l := p.Load
	tell := func(code CautionCode, field, what string) {
		r.Cautions = append(r.Cautions, warn(code, field, "", false, say("%s, by %s: %s", what, p.DecidedBy, p.Reason)))
	}
	if l.Source == Estimated && l.MassTolerance == 0 {
		tell(LooseMass, "load.masstolerance", "the estimated mass is taken as exact")
	}
	if l.CoGTolerance == (Point{}) {
		tell(LooseCentre, "load.cogtolerance", "the centre of gravity is taken as exact")
	}
}
