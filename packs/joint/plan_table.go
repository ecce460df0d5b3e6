package joint

import "matchmark/packs/units"

// A Plan is a published way to go round a joint in stages, told in per cent of the last
// torque. It is chosen by its name, never by itself.
type Plan struct {
	Name   string
	Source string
	Stages []Stage
	// Above is the torque from which on the plan asks for its stages; nil from the first.
	Above *units.Quantity
}

// planRow is a plan with its stages as pairs of per cent.
type planRow struct {
	name, source string
	byHand       bool
	percent      [][2]int64
	lastRound    bool
	above        int64 // lb-ft
}

// planTable: "rounds" is the legacy pattern of ASME PCC-1 Table 2, from memory; "thirds"
// is read in two guides for flanges; "seventy" in the general limits of the manual named.
var planTable = []planRow{
	{"rounds", "ASME PCC-1, Table 2, legacy", true, [][2]int64{{20, 30}, {50, 70}, {100, 100}}, true, 0},
	{"thirds", "published guides for flanges", true, [][2]int64{{30, 30}, {60, 60}, {100, 100}}, true, 0},
	{"seventy", "US Army TB 9-2320-279-13&P-2, torque limits", false, [][2]int64{{70, 70}, {100, 100}}, false, 30},
}

// PlanNamed gives a plan by its name; ok is false for a name that is not known.
func PlanNamed(name string) (p Plan, ok bool) {
	for _, r := range planTable {
		if r.name != name {
			continue
		}
		p = Plan{Name: r.name, Source: r.source}
		if r.byHand {
			p.Stages = append(p.Stages, Stage{Kind: ByHand})
		}
		for _, s := range r.percent {
			set := Between(percent(s[0]), percent(s[1]))
			if s[0] == s[1] {
				set = Exactly(percent(s[0]))
			}
			p.Stages = append(p.Stages, Stage{Kind: Tighten, Setting: &set})
		}
		if r.lastRound {
			p.Stages = append(p.Stages, Stage{Kind: LastRound})
		}
		if r.above > 0 {
			p.Above = &units.Quantity{Number: units.Whole(r.above), Unit: units.PoundFoot}
		}
		return p, true
	}
	return Plan{}, false
}

// PlanNames lists the plans.
func PlanNames() []string {
	var out []string
	for _, r := range planTable {
		out = append(out, r.name)
	}
	return out
}

func percent(n int64) units.Quantity {
	return units.Quantity{Number: units.Whole(n), Unit: units.Percent}
}
