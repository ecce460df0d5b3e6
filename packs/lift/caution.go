package lift

import "fmt"

func (a *account) caution(code CautionCode, field string, stop bool, message string, args ...any) {
	a.r.Cautions = append(a.r.Cautions, warn(code, field, "", stop, say(message, args...)))
}

// looseMass: near the rating the weight has to be known within 10 %,
// WAC 296-24-24517(1)(b), derricks.
const looseMass = 0.10

// nearlySlackShare is the share of the gross weight under which a leg counts as
// nearly slack: common practice, no source.
const nearlySlackShare = 0.05

// ask books what has to be known before the lift may be made.
func (a *account) ask(field, help, message string, args ...any) {
	a.r.Unanswered = append(a.r.Unanswered, *refuse(field, help, message, args...))
}

// because names what takes most off a rating, empty where nothing does.
func (c Component) because() phrase {
	least := Reduction{Factor: 1}
	for _, r := range c.Reductions {
		if r.Factor < least.Factor {
			least = r
		}
	}
	if least.Factor == 1 {
		return phrase{}
	}
	return say(": rated %s, %s × %s", c.Rated.Down(), least.why, least.Factor.Factor())
}

func (a *account) cautions() {
	for _, c := range a.r.Components {
		if c.Used > 1 {
			a.caution(Overloaded, c.Field, true, "%s carries %s and may carry %s%s", c.name, c.Load.Up(), c.Allowed.Down(), c.because())
		}
	}
	a.reach()
	a.hanging()
	a.turnCautions()
	a.known()
	a.seats()
	if a.r.Critical {
		if a.p.Rig == TwoHooks {
			a.caution(CriticalLift, "criticalat", false, "critical lift: two hooks lift one load")
		}
		if a.r.CraneShare >= a.p.CriticalAt {
			a.caution(CriticalLift, "criticalat", false, "critical lift: the hook is used %s, and the site's threshold is %s", a.r.CraneShare.Percent(), a.p.CriticalAt.PercentDown())
		}
	}
	if a.p.Sharing != TwoCarry {
		a.caution(NamedSharing, "sharing", false, "four legs are counted otherwise than two carrying, by %s: %s", a.p.DecidedBy, a.p.Reason)
		if a.uneven() {
			a.caution(UnevenLegs, "sharing", false, "with these lengths one of the four legs hangs slack, so the way of sharing that was named does not hold, and the legs that carry are counted with what they do carry")
		}
	}
}

// reach stops a lift of which a hook does not go high enough, and says which of two.
func (a *account) reach() {
	h := a.r.Headroom
	switch {
	case h == nil:
		a.caution(NoHeadroom, "headroom", false, "the headroom is not looked at")
	case h.Over == "" && h.Spare < 0:
		a.caution(NoReach, "headroom", true, "the hook would have to go %s high, %s more than it does", h.Needed.Up(), (-h.Spare).Up())
	}
	for _, h := range a.rooms {
		if h.Spare < 0 {
			a.caution(NoReach, "headroom", true, "the hook over %q would have to go %s high, %s more than it does", h.Over, h.Needed.Up(), (-h.Spare).Up())
		}
	}
}

// seats stops a lift of which a hook is not loaded in its saddle.
func (a *account) seats() {
	a.p.pieces(func(string, Sling) {}, func(field string, h Hardware) {
		if h.Kind == Hook && h.Seat != Saddle {
			a.caution(OffSaddle, field, true, "hook %q is loaded out of its saddle", h.Name)
		}
	})
}

// hanging looks at the position: level, angles, slack.
func (a *account) hanging() {
	a.level()
	if t := a.r.Tilt; a.r.ErrorTilt > t.Allowed/2 {
		a.caution(TouchyLength, "legs", false, "one leg long or short by %s turns the load %s", a.r.LengthError.Up().Fine(), a.r.ErrorTilt.Up())
	}
	for i, l := range a.r.Legs {
		_, part, k, _ := a.leg(i)
		field := fmt.Sprintf("%s[%d]", part, k)
		a.flat(field, l)
		if l.Slack > lengthSlack {
			a.caution(SlackLeg, field, false, "leg %q hangs %s slack; the others carry it all", l.Name, l.Slack.Up())
		}
		if len(a.p.Picks) < 4 && float64(l.Low) < nearlySlackShare*a.s.gross {
			a.caution(NearlySlack, field, false, "leg %q carries only %s", l.Name, l.Low.Down())
		}
	}
	for _, k := range a.p.Picks {
		if a.p.Load.CoG.Z > k.At.Z {
			a.caution(HighCentre, "load.cog", false, "the centre of gravity lies above pick %q", k.Name)
		}
	}
}

// flat looks at the angle of a leg: the flattest that the band of the centre of gravity
// lets it be, told beside the one that is drawn where they differ.
func (a *account) flat(field string, l LegResult) {
	band := l.Angle > l.Flattest+angleSlack
	switch low := l.Flattest; {
	case low < cautionAngle-angleSlack && band:
		a.caution(FlatLeg, field, false, "leg %q stands %s from horizontal, and %s with the centre of gravity at an end of its band, under 45°; 60° is the aim", l.Name, l.Angle.Down(), low.Down())
	case low < cautionAngle-angleSlack:
		a.caution(FlatLeg, field, false, "leg %q stands %s from horizontal, under 45°; 60° is the aim", l.Name, low.Down())
	case low < aimAngle-angleSlack && band:
		a.caution(BelowAim, field, false, "leg %q stands %s from horizontal, and %s with the centre of gravity at an end of its band; 60° is the aim", l.Name, l.Angle.Down(), low.Down())
	case low < aimAngle-angleSlack:
		a.caution(BelowAim, field, false, "leg %q stands %s from horizontal; 60° is the aim", l.Name, low.Down())
	}
}

// level says whether the load may hang too far out of level, and which of the three
// is the cause: the legs or the bail as planned, the tolerance of the centre of
// gravity, or the legs that are not of their lengths.
func (a *account) level() {
	t := a.r.Tilt
	if t.Most <= t.Allowed+angleSlack {
		return
	}
	most := say("the load may hang %s out of level, and %v is allowed", t.Most.Up(), t.Allowed)
	tol := a.p.Load.CoGTolerance
	centre := func(makes string) phrase {
		return say("the tolerance of its centre of gravity, ± %s along x, %s along y and %s along z, %s it %s", tol.X.Up().Fine(), tol.Y.Up().Fine(), tol.Z.Up().Fine(), makes, t.Within.Up())
	}
	off := func(makes string) phrase {
		return say("one leg long or short by %s%s it %s", a.r.LengthError.Up().Fine(), makes, t.Most.Up())
	}
	tell := func(field, help string, what phrase) {
		a.r.Cautions = append(a.r.Cautions, warn(OutOfLevel, field, help, true, what))
	}
	switch {
	case t.Total > t.Allowed+angleSlack:
		field, help := a.planned()
		tell(field, help, say("%s: with everything as planned it hangs %s; %s; %s", most, t.Total.Up(), centre("makes"), off(" makes")))
	case t.Within > t.Allowed+angleSlack:
		tell("load.cogtolerance", a.uncertain(),
			say("%s: as planned it hangs %s; the cause is %s", most, t.Total.Up(), centre("which makes")))
	case t.Within-t.Total > t.Most-t.Within: // the legs only add to it
		tell("load.cogtolerance", a.uncertain(),
			say("%s: as planned it hangs %s; the cause is %s; %s", most, t.Total.Up(), centre("which makes"), off(" makes")))
	default:
		tell("lengtherror", "measure the legs against each other and write what was found, or take picks farther apart",
			say("%s: as planned it hangs %s; %s; the cause is %s", most, t.Total.Up(), centre("makes"), off(", which makes")))
	}
}

// known looks at what the figures rest on.
func (a *account) known() {
	l := a.p.Load
	loose := float64(l.MassTolerance) / float64(l.Mass)
	if loose > looseMass && a.r.CraneShare >= a.p.CriticalAt {
		a.caution(LooseMass, "load.masstolerance", false, "the mass is known within %s; so near what the crane may lift it has to be within %s", Ratio(loose).Percent(), Ratio(looseMass).PercentDown())
	}
	a.decisions()
	if massOf(a.p.Legs, nil)+massOf(a.p.TopLegs, a.p.TopGear)+float64(a.p.Bar.Mass) == 0 {
		a.caution(NoGearWeight, "legs", false, "the slings and gear are counted as weighing nothing")
	}
}
