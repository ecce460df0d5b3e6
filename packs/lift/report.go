package lift

import "math"

// workOf books one working of a leg.
func (a *account) workOf(name, what, formula, source string, figures ...Figure) {
	a.work(what, formula, source, figures...)
	a.r.Working[len(a.r.Working)-1].Of = name
}

// work books one working.
func (a *account) work(what, formula, source string, figures ...Figure) {
	a.r.Working = append(a.r.Working, Working{What: what, Formula: formula, Source: source, Figures: figures})
}

// working writes down how the results came about, in the order of the reckoning.
func (a *account) working(dynamicFrom string) {
	l := a.p.Load
	gear := massOf(a.p.Legs, nil) + massOf(a.p.TopLegs, nil)
	a.work("gross weight on the legs", "W = mass + tolerance + slings and gear + bar", statics,
		figUp("mass", float64(l.Mass), "kg"), figUp("tolerance", float64(l.MassTolerance), "kg"), figUp("gear", gear, "kg"),
		figUp("bar", float64(a.p.Bar.Mass), "kg"), figUp("W", a.s.gross, "kg"))
	a.work("dynamic factor", "every design load = static load × k", dynamicFrom, figUp("k", float64(a.r.Dynamic), ""))
	for i, leg := range a.r.Legs {
		a.legWorking(i, leg)
	}
	if b, ok := a.s.frame.(beam); ok {
		share := a.states[0].lines[0].tension
		a.work("bending of the beam at its bail", "M = V_A p + (w/s) p²/2", statics,
			figUp("V_A", share, "kg"), fig("p", b.bail, "mm"), figUp("w", b.bar, "kg"), fig("s", b.barLen, "mm"),
			figUp("M", b.bending(share)/1000*standardGravity, "N m"))
	}
	t := a.r.Tilt
	a.work("tilt", "between the load's own upright and the line from centre of gravity to hook", statics,
		fig("along x, +x end down", float64(t.AlongX), "°"), fig("along y, +y end down", float64(t.AlongY), "°"),
		figUp("tilt", float64(t.Total), "°"), figUp("most within tolerance", float64(t.Within), "°"), figUp("most with one leg off", float64(t.Most), "°").told(), figUp("drop", float64(t.Drop), "mm"))
	a.work("tilt by a wrong leg length", "the same with one leg long or short by e", statics,
		figUp("e", float64(a.r.LengthError), "mm"), figUp("tilt", float64(a.r.ErrorTilt), "°"))
	a.turnWorking()
	if a.r.Press > 0 {
		a.work("press between the picks", "C = T cos(angle from horizontal), the largest leg", statics,
			figUp("C", float64(a.r.Press), "kg").told(), figUp("C", float64(a.r.Press.Newton()), "N"))
	}
	onHook := "gross + gear above the legs + block"
	if a.r.Tackle != nil {
		onHook += " + the tackle and the pull on its line"
		a.r.Working = append(a.r.Working, a.r.Tackle.Working...)
	}
	a.work("hook load", onHook, statics,
		figUp("gear above", massOf(nil, a.p.TopGear), "kg"), figUp("hook load", float64(a.r.HookLoad), "kg").told(),
		figUp("used", 100*float64(a.r.CraneShare), "%"))
	if h := a.r.Headroom; h != nil {
		in, what, low := a.p.Headroom, "hook height needed", "low end"
		if a.p.Load.Span == nil {
			low = "low corner of its size"
		}
		if h.Over != "" {
			what = "hook height needed over %s"
		}
		a.workOf(h.Over, what, "to clear + underside + low end + hook above the load + legs off their length + stack", statics,
			figUp("to clear", float64(in.PassOver), "mm"), figUp("underside", float64(in.Underside), "mm"),
			figUp(low, float64(h.LowEnd), "mm"),
			figUp("hook above the load", float64(h.Above), "mm"), figUp("legs off", float64(h.Legs), "mm"), figUp("stack", float64(in.Stack), "mm"),
			figUp("needed", float64(h.Needed), "mm"), figDown("spare", float64(h.Spare), "mm"))
	}
}

// legWorking writes down one leg: its place against the plumb line, then its load.
func (a *account) legWorking(i int, leg LegResult) {
	st := a.states[0]
	line := st.lines[i]
	arm := line.top.sub(line.bottom)
	d, h := arm.across(st.up).size(), arm.dot(st.up)
	a.workOf(leg.Name, "leg %s: length and angle", "L = sqrt(d² + h²), sin(angle) = h/L, factor = L/h", statics,
		fig("d", d, "mm"), fig("h", h, "mm"), fig("L", math.Hypot(d, h), "mm"),
		figDown("angle from horizontal", float64(leg.Angle), "°"), figUp("factor", float64(leg.Factor), ""))
	formula, source := "sum(T u) = W v, u from pick to hook, v plumb", statics
	switch {
	case a.p.Rig == TwoHooks:
		formula = "V_A = W b/s, the worst with one hook low by the tilt allowed"
		if t := a.p.Turn; t != nil && t.Upper == i {
			formula = "all of W at the end of the turn"
		}
	case a.p.Rig != Bridle && !leg.Above:
		formula = "V_A = W b/s, b and s square to the plumb line"
	case a.p.Rig == Bridle && len(a.p.Picks) == 4:
		formula, source = a.sharingFormula()
	case a.p.Rig == Bridle && len(a.p.Picks) == 1:
		formula = "T = W"
	case len(a.s.frame.sloping()) == 2:
		formula = "T = W sin(beta of the other) / sin(both betas), beta from the plumb line"
	}
	weight := a.s.gross
	if a.p.Rig != Bridle && !leg.Above {
		weight = a.p.underBar()
	}
	a.workOf(leg.Name, "leg %s: tension", formula, source,
		figUp("W", weight, "kg"), figUp("T", float64(leg.Tension), "kg").told(), figUp("T", float64(leg.Tension.Newton()), "N"),
		figUp("upright share", float64(leg.Vertical), "kg"), figDown("low", float64(leg.Low), "kg"), figUp("high", float64(leg.High), "kg"),
		figUp("design", float64(leg.Design), "kg"))
}

// sharingFormula names how four legs were counted.
func (a *account) sharingFormula() (formula, source string) {
	slack := ""
	if a.uneven() {
		slack = ", not less than by the stated lengths, with which one leg hangs slack"
	}
	switch a.p.Sharing {
	case ThreeOfFour:
		return "T = even share × 4/3" + slack, "convention, as US alloy chain tables rate a quad like a triple, Ohio Administrative Code 4123:1-3-08"
	case Skew:
		return "T = even share × skew factor" + slack, "convention, GL Noble Denton 0027/ND rev 11, 5.6.12, matched slings"
	default:
		return "T = the most of all balanced sets of four legs, two carrying", statics + "; two legs counted also by US Navy training manuals 14080 and 14251"
	}
}
