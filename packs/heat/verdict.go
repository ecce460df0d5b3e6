package heat

import "matchmark/packs/units"

// Refusals of a whole pull, and what else gets a hub off; the warnings and
// assumptions of a plan. The words are for the planner and name what was given
// with its unit; a sheet in another language goes by Field and Code.

func errDiverged() error {
	return refuse("Source.Net", "check sizes, conductances and power for a slip of the unit",
		"the heating could not be computed: its heat balance does not close")
}

// otherWays names the ways that are left when heat within the limit does not
// do.
func (p *Pull) otherWays() saying {
	var ways []any
	if p.Shaft.Bore > 0 {
		ways = append(ways, say("cool the shaft from its bore"))
	}
	puller := say("draw it with a hydraulic or mechanical puller")
	if p.ColdPull > 0 {
		puller = say("draw it with a hydraulic or mechanical puller good for %v", up(p.ColdPull))
	}
	ways = append(ways, puller, say("cut it off"))
	if p.Fit.Basis == Greatest {
		ways = append(ways, say("measure the fit instead of counting with the greatest interference"))
	}
	return orElse(ways...)
}

// tooSlow refuses a power below the band.
func (p *Pull) tooSlow(t trial, b Band) error {
	return refuseAs("too-slow", "Source.Net", say("use at least %v net, or %v", up(b.Least), p.otherWays()),
		"%v net opens the hub by %v of the %v needed and no more, because the shaft grows as fast",
		Watt(t.power), down(fine(t.opening*1000)), up(fine(p.Fit.opening())))
}

// tooFast refuses a power above the band.
func (p *Pull) tooFast(t trial, b Band) error {
	if t.cracks > 0 {
		return p.tooBrittle(t.cracks)
	}
	return refuseAs("too-fast", "Source.Net", say("use at most %v net", down(b.Most)),
		"%v net bring the skin to %v in %v, when the hub has opened by %v of %v",
		Watt(t.power), p.stops(), Second(t.at), down(fine(t.opening*1000)), up(fine(p.Fit.opening())))
}

// warnings are what a person must look at before the plan is used.
func (p *Pull) warnings(plan *Plan) []Warning {
	var w []Warning
	for i := range plan.Neighbours {
		n := &plan.Neighbours[i]
		switch {
		case n.Greatest > n.Limit.At:
			w = append(w, warn("neighbour-hot", neighbourField(i), "%v gets %v even when the hub comes off at once, and may have %v: take it off first, or cool the shaft between",
				n.name(), up(n.Greatest), down(n.Limit.At)))
		case n.IfStuck > n.Limit.At:
			w = append(w, warn("neighbour-stuck", neighbourField(i), "if the hub does not move, %v gets %v after %v, and may have %v: have cooling for the shaft ready before the heat goes on",
				n.name(), up(n.IfStuck), up(minutes(n.IfStuckAt)), down(n.Limit.At)))
		}
	}
	if plan.Short() {
		w = append(w, p.shortWindow(plan))
	}
	if len(plan.Band.Pace) == 0 {
		w = append(w, warn("seconds", "Source.Net", "the hub is free within seconds, too quick to be told by the skin: use a probe at the bore, or less power"))
	}
	// A band narrower than a factor of one and a half cannot be hit with a
	// torch whose net power nobody knows; common practice, no source.
	if plan.Band.Most < plan.Band.Least*3/2 {
		w = append(w, warn("narrow", "Source.Net", "the net power must lie between %v and %v, too narrow for torches: have a puller ready",
			up(plan.Band.Least), down(plan.Band.Most)))
	}
	if u := plan.Wall.Use; u > 1 {
		w = append(w, warn("yields", "Yield", "heat and fit together bring the hub to %v %% of its yield stress after %v, so that it may keep a change of shape: less power, or a site limit for the skin that is lower",
			decimals(100*float64(u), 0, units.Up), plan.Wall.UsedAt))
	}
	if p.Hub.Material.Brittle {
		w = append(w, warn("thermal-shock", "Hub.Material", "%v cracks from quick or one-sided heat (thermal shock): induction alone, its power never above %v, no water, no draught",
			p.Hub.Material.Name, down(plan.Band.Most)))
	}
	return w
}

// assumptions lists what the computation takes for granted, for the sheet.
func (p *Pull) assumptions() []Assumption {
	list := []Assumption{
		assume("ring", "the hub is a plain ring as long as the fit, on a straight seat, heated evenly all round and along its length"),
		assume("lags", "the hub is free when it is where the opening lags along the fit; %v %% of the growth of both parts is kept back for the error of the computation", 100*reserveOf(&p.Hub.Material, &p.Shaft.Material)),
		assume("net-power", "power is the heat that enters the hub, not what the burner or coil takes"),
	}
	add := func(code, says string, args ...any) { list = append(list, assume(code, says, args...)) }
	if p.Contact.Perfect {
		add("contact", "heat crosses the joint without hindrance while the parts touch: the shaft warms most, the cautious choice")
	} else {
		add("contact", "heat crosses the joint with %v while the parts touch; with better contact the hub frees later or not at all", p.Contact.Touching)
	}
	add("touch-until", "the parts are taken as touching until %v beyond the interference", fine(p.Contact.TouchUntil))
	if p.Contact.Open > 0 {
		add("gap", "heat crosses the open joint with %v", p.Contact.Open)
	} else {
		add("gap", "heat crosses the open joint through the still air in it")
	}
	add("growth", "each part grows as its mean temperature over the section; the fit is free of rust, paint, keys that bind and set screws")
	add("shaft", "the shaft runs on %v behind and %v in front with the diameter of the seat; its ends and the parts on it take no heat", p.Shaft.Behind, p.Shaft.Front)
	add("air", "hub and shaft lose %v to air of %v", p.Air.Film, p.Air.Air)
	if p.Source.Means == Induction && p.Source.Depth > 0 {
		add("depth", "induction heats to a depth of %v", p.Source.Depth)
	} else {
		add("depth", "all heat enters at the outer face")
	}
	add("shield", "the flame reaches neither shaft nor neighbour: a shield stands between")
	add("longest", "heating ends after %v at the latest", minutes(p.Longest))
	w := p.workable()
	add("workable", "from heat off to off the seat the crew takes %v: %v", w.Time, w.Reason)
	if p.Hub.Material.Brittle {
		add("brittle", "the hub may have %v in tension, a third of its strength", down(p.Hub.mayPull()))
	}
	add("interference", "the interference of %v is %v", fine(p.Fit.Interference), string(p.Fit.Basis))
	list = append(list, ofMaterials(&p.Hub.Material, &p.Shaft.Material)...)
	return append(list, assumePlanning())
}

func assumePlanning() Assumption {
	return assume("planning", "planning figures: a competent person decides at the machine")
}

// ofMaterials names what hub and shaft are made of, once where they are alike.
func ofMaterials(hub, shaft *Material) []Assumption {
	if *hub == *shaft {
		return []Assumption{assume("material", "hub and shaft: %v; %v", hub.Name, hub.Source)}
	}
	return []Assumption{
		assume("hub-material", "hub: %v; %v", hub.Name, hub.Source),
		assume("shaft-material", "shaft: %v; %v", shaft.Name, shaft.Source),
	}
}

// ceilingWorking shows what the chosen power levels off at.
func (p *Pull) ceilingWorking(plan *Plan) Working {
	mid := (p.Hub.Start + p.Skin.At) / 2
	m := &p.Hub.Material
	w := Working{
		Formula: "opening levels off = expansion x diameter x power / (8 pi x conductivity x length), and the joint's share",
		Source:  "quasi-steady heating of a solid shaft and its hub, derived; no losses counted",
		Terms: []Term{
			{"expansion, mean", Number(m.alpha(p.Hub.Start, p.Skin.At) * 1e6), "µm/m K", units.Nearest},
			{"diameter", Number(p.Fit.Diameter), "mm", units.Nearest},
			{"power", Number(plan.Net), "W", units.Nearest},
			{"conductivity", Number(m.Conducts.at(float64(mid))), "W/m K", units.Nearest},
			{"length", Number(p.Hub.Length), "mm", units.Nearest},
		},
	}
	// A perfect joint adds nothing, and a conductance of zero would read as none.
	if !p.Contact.Perfect {
		w.Terms = append(w.Terms, Term{"joint", Number(p.Contact.Touching), "W/m²K", units.Nearest})
	}
	w.Terms = append(w.Terms, Term{"levels off at", Number(plan.Levels), "mm", units.Down})
	return w
}
