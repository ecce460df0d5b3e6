package heat

import (
	"fmt"
	"strings"
)

// Refusals of a whole pull, and what else gets a hub off; the warnings and
// assumptions of a plan. The words are for the planner and name what was given
// with its unit; a sheet in another language goes by Field and Code.

func errDiverged() error {
	return refuse("Source.Net", "check sizes, conductances and power for a slip of the unit",
		"the heating could not be computed: its heat balance does not close")
}

// otherWays names the ways that are left when heat within the limit does not
// do.
func (p *Pull) otherWays() string {
	ways := []string{"cool the shaft from its bore"}
	if p.Shaft.Bore == 0 {
		ways = ways[:0]
	}
	puller := "draw it with a hydraulic or mechanical puller"
	if p.ColdPull > 0 {
		puller += fmt.Sprintf(" good for %.0f kN", float64(p.ColdPull)/1000)
	}
	ways = append(ways, puller, "cut it off")
	if p.Fit.Basis == Greatest {
		ways = append(ways, "measure the fit instead of counting with the greatest interference")
	}
	return strings.Join(ways, ", or ")
}

// tooTight refuses a fit that would need a hub hotter than its limit even if
// the shaft stayed cold.
func (p *Pull) tooTight(hub float64) error {
	return refuse("Fit.Interference", p.otherWays(),
		"%.3f mm and %.3f mm of clearance need a hub of %.0f °C even on a shaft that stays cold, and its skin may have %.0f °C (%s)",
		float64(p.Fit.Interference), float64(p.Fit.Clearance), hub, float64(p.Skin.At), p.Skin.Source)
}

// noPower refuses a fit that no power frees.
func (p *Pull) noPower(best trial) error {
	end := fmt.Sprintf("before the skin passes %.0f °C (%s)", float64(p.Skin.At), p.Skin.Source)
	if !best.tooHot {
		end = fmt.Sprintf("in %.0f s", float64(p.Longest))
	}
	return refuse("Fit.Interference", p.otherWays(),
		"no heat opens the hub by the %.3f mm needed, the most is %.3f mm with %.1f kW net %s",
		float64(p.Fit.opening()), best.opening*1000, best.power/1000, end)
}

// tooSlow refuses a power below the band.
func (p *Pull) tooSlow(t trial, b Band) error {
	return refuse("Source.Net", fmt.Sprintf("use at least %.1f kW net, or %s", float64(b.Least)/1000, p.otherWays()),
		"%.1f kW net opens the hub by %.3f of the %.3f mm needed and no more, because the shaft grows as fast",
		t.power/1000, t.opening*1000, float64(p.Fit.opening()))
}

// tooFast refuses a power above the band.
func (p *Pull) tooFast(t trial, b Band) error {
	return refuse("Source.Net", fmt.Sprintf("use at most %.1f kW net", float64(b.Most)/1000),
		"%.1f kW net bring the skin to %.0f °C (%s) in %.0f s, when the hub has opened by %.3f of %.3f mm",
		t.power/1000, float64(p.Skin.At), p.Skin.Source, t.at, t.opening*1000, float64(p.Fit.opening()))
}

// warnings are what a person must look at before the plan is used.
func (p *Pull) warnings(plan *Plan) []Warning {
	var w []Warning
	warn := func(code, field, says string, args ...any) {
		w = append(w, Warning{code, field, fmt.Sprintf(says, args...)})
	}
	for i := range plan.Neighbours {
		n := &plan.Neighbours[i]
		switch {
		case n.Greatest > n.Limit.At:
			warn("neighbour-hot", neighbourField(i), "%s gets %.0f °C even when the hub comes off at once, and may have %.0f °C: take it off first, or cool the shaft between",
				n.name(), float64(n.Greatest), float64(n.Limit.At))
		case n.IfStuck > n.Limit.At:
			warn("neighbour-stuck", neighbourField(i), "if the hub does not move, %s gets %.0f °C after %.0f min, and may have %.0f °C: have cooling for the shaft ready before the heat goes on",
				n.name(), float64(n.IfStuck), float64(n.IfStuckAt)/60, float64(n.Limit.At))
		}
	}
	// Half a minute is what two people need to draw a hub that a loaded puller
	// holds under tension; common practice, no source.
	if plan.Stays < 30 && !plan.Endless {
		warn("window", "Fit.Clearance", "the hub stays free for less than half a minute: puller loaded before the heat goes on, and keep heating while it is drawn")
	}
	if len(plan.Band.Pace) == 0 {
		warn("seconds", "Source.Net", "the hub is free within seconds, too quick to be told by the skin: use a probe at the bore, or less power")
	}
	// A band narrower than a factor of one and a half cannot be hit with a
	// torch whose net power nobody knows; common practice, no source.
	if plan.Band.Most < plan.Band.Least*3/2 {
		warn("narrow", "Source.Net", "the net power must lie between %.1f and %.1f kW, too narrow for torches: have a puller ready",
			float64(plan.Band.Least)/1000, float64(plan.Band.Most)/1000)
	}
	if u := plan.Wall.Use; u > 1 {
		warn("yields", "Yield", "heat and fit together bring the hub to %.0f %% of its yield stress after %.0f s, so that it may keep a change of shape: less power, or a site limit for the skin that is lower",
			100*float64(u), float64(plan.Wall.UsedAt))
	}
	return w
}

// assumptions lists what the computation takes for granted, for the sheet.
func (p *Pull) assumptions() []Assumption {
	var list []Assumption
	add := func(code, says string, args ...any) {
		list = append(list, Assumption{code, fmt.Sprintf(says, args...)})
	}
	add("ring", "the hub is a plain ring as long as the fit, heated evenly all round and along its length")
	add("net-power", "power is the heat that enters the hub, not what the burner or coil takes")
	if p.Contact.Perfect {
		add("contact", "heat crosses the joint without hindrance while the parts touch: the shaft warms most, the cautious choice")
	} else {
		add("contact", "heat crosses the joint with %.0f W/m²K while the parts touch; with better contact the hub frees later or not at all",
			float64(p.Contact.Touching))
	}
	add("touch-until", "the parts are taken as touching until %.3f mm beyond the interference", float64(p.Contact.TouchUntil))
	if p.Contact.Open > 0 {
		add("gap", "heat crosses the open joint with %.0f W/m²K", float64(p.Contact.Open))
	} else {
		add("gap", "heat crosses the open joint through the still air in it")
	}
	add("growth", "each part grows as its mean temperature over the section; the fit is free of rust, paint, keys that bind and set screws")
	add("shaft", "the shaft runs on %.0f mm behind and %.0f mm in front with the diameter of the seat; its ends and the parts on it take no heat",
		float64(p.Shaft.Behind), float64(p.Shaft.Front))
	add("air", "hub and shaft lose %.0f W/m²K to air of %.0f °C", float64(p.Air.Film), float64(p.Air.Air))
	if p.Source.Means == Induction && p.Source.Depth > 0 {
		add("depth", "induction heats to a depth of %.1f mm", float64(p.Source.Depth))
	} else {
		add("depth", "all heat enters at the outer face")
	}
	add("shield", "the flame reaches neither shaft nor neighbour: a shield stands between")
	add("longest", "heating ends after %.0f min at the latest", float64(p.Longest)/60)
	add("interference", "the interference of %.3f mm is %s", float64(p.Fit.Interference), p.Fit.Basis)
	list = append(list, ofMaterials(&p.Hub.Material, &p.Shaft.Material)...)
	add("planning", "planning figures: a competent person decides at the machine")
	return list
}

// ofMaterials names what hub and shaft are made of, once where they are alike.
func ofMaterials(hub, shaft *Material) []Assumption {
	if *hub == *shaft {
		return []Assumption{{"material", "hub and shaft: " + hub.Name + "; " + hub.Source}}
	}
	return []Assumption{
		{"hub-material", "hub: " + hub.Name + "; " + hub.Source},
		{"shaft-material", "shaft: " + shaft.Name + "; " + shaft.Source},
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
			{"expansion, mean", Number(m.alpha(p.Hub.Start, p.Skin.At) * 1e6), "µm/m K"},
			{"diameter", Number(p.Fit.Diameter), "mm"},
			{"power", Number(plan.Net), "W"},
			{"conductivity", Number(m.Conducts.at(float64(mid))), "W/m K"},
			{"length", Number(p.Hub.Length), "mm"},
		},
	}
	// A perfect joint adds nothing, and a conductance of zero would read as none.
	if !p.Contact.Perfect {
		w.Terms = append(w.Terms, Term{"joint", Number(p.Contact.Touching), "W/m²K"})
	}
	w.Terms = append(w.Terms, Term{"levels off at", Number(plan.Levels), "mm"})
	return w
}
