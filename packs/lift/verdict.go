package lift

// What is computed: how far each component is used, the weakest, the crane, the
// headroom.
//
//	used = load × dynamic factor / (rating × every reduction)
//	hook load = gross + gear above the legs + block
//	EN bridle as a whole: rating × 1.4 to 45° from vertical, × 1.0 to 60°, of two
//	legs; × 2.1 and × 1.5 of three and four; of four with two carrying, or with
//	one slack, as of two
//	hook height needed = height to clear + underside + hook height + stack
//
// Sources: EN 13414-1:2003 table 4 and EN 1492 mode factors for the bands; the
// reductions as in hitch.go and hardware.go.
// The load is the worst within the tolerance of the centre of gravity; so is each
// reduction that depends on an angle.

import (
	"fmt"
	"math"
	"slices"
)

func product(rs []Reduction) float64 {
	k := 1.0
	for _, r := range rs {
		k *= float64(r.Factor)
	}
	return k
}

// component books one piece of the chain. load is by design.
func (a *account) component(field, name string, load, rated float64, rs []Reduction) {
	a.componentCalled(field, say("%s", name), load, rated, rs)
}

// componentCalled is component with a name that has words around it.
func (a *account) componentCalled(field string, name phrase, load, rated float64, rs []Reduction) {
	allowed := rated * product(rs)
	a.r.Components = append(a.r.Components, Component{Field: field, Name: name.String(), name: name, Load: Kg(load), Rated: Kg(rated),
		Allowed: Kg(allowed), Reductions: rs, Used: Ratio(load / allowed)})
}

// worst gives the reductions of line i where they leave least: in a state, or as the load is turned.
func (a *account) worst(i int, of func(l line) ([]Reduction, *Refusal)) ([]Reduction, *Refusal) {
	var worst []Reduction
	lines := a.turnedLines(a.states[0].lines[i])
	for _, st := range a.states {
		lines = append(lines, st.lines[i])
	}
	for k, l := range lines {
		rs, no := of(l)
		if no != nil {
			return nil, no
		}
		if k == 0 || product(rs) < product(worst) {
			worst = rs
		}
	}
	return worst, nil
}

// components books slings, their gear, the bridle as a whole, the bar, the gear
// above and the load itself.
func (a *account) components() *Refusal {
	for i, leg := range a.r.Legs {
		in, part, k, _ := a.leg(i)
		field := fmt.Sprintf("%s[%d]", part, k)
		rs, no := a.worst(i, func(l line) ([]Reduction, *Refusal) {
			return in.Sling.reductions(field+".sling", a.p.Basis, l.top.sub(l.bottom).size(), 90-l.angle)
		})
		if no != nil {
			return no
		}
		a.component(field+".sling", in.Sling.Name, float64(leg.Design), float64(in.Sling.Rated), append(rs, a.heated(in.Sling.holds())...))
		for j, h := range in.Gear {
			at := fmt.Sprintf("%s.gear[%d]", field, j)
			rs, no := a.worst(i, func(l line) ([]Reduction, *Refusal) { return h.reductions(at, l.u()) })
			if no != nil {
				return no
			}
			a.component(at, h.Name, float64(leg.Design), float64(h.Rated), append(rs, a.heated(h.holds())...))
		}
	}
	dyn := float64(a.r.Dynamic)
	if a.p.Basis == EN {
		a.whole(dyn)
	}
	a.points()
	a.bar()
	for i, h := range a.p.TopGear {
		field := fmt.Sprintf("topgear[%d]", i)
		rs, no := h.reductions(field, a.states[0].up)
		if no != nil {
			return no
		}
		a.component(field, h.Name, (a.states[0].hooks[0]+massOf(nil, a.p.TopGear))*dyn, float64(h.Rated), append(rs, a.heated(h.holds())...))
	}
	if m := a.p.Load.MayPress; m > 0 && a.p.Rig == Bridle {
		a.component("load.maypress", "load between its picks", float64(a.r.Press)*dyn, float64(m), nil)
	}
	return nil
}

// whole books an EN bridle of two or more sloping legs as one sling.
func (a *account) whole(dyn float64) {
	n := len(a.s.frame.sloping())
	if n < 2 {
		return
	}
	least, rated, flat := math.Inf(1), math.Inf(1), Degree(90)
	for i := range n {
		// The slings were booked first of each leg, so they are found by field.
		_, part, k, _ := a.leg(i)
		for _, c := range a.r.Components {
			if c.Field == fmt.Sprintf("%s[%d].sling", part, k) {
				least, rated = min(least, float64(c.Allowed)), min(rated, float64(c.Rated))
			}
		}
		flat = min(flat, a.r.Legs[i].Flattest)
	}
	sharing := a.p.Sharing
	if a.uneven() {
		sharing = TwoCarry
	}
	factor, why := bandFactor(n, sharing, flat)
	_, part, _, _ := a.leg(0)
	rs := []Reduction{{say(why), Ratio(factor), enRope}}
	if least != rated {
		rs = append([]Reduction{{say("hitch of the weakest leg"), Ratio(least / rated), "as for that leg"}}, rs...)
	}
	a.component(part, "bridle as a whole", a.s.gross*dyn, rated, rs)
}

// uneven reports whether the named sharing fails anywhere within the tolerances.
func (a *account) uneven() bool {
	return slices.ContainsFunc(a.states, func(s state) bool { return s.uneven })
}

// bandFactor is the EN factor on one leg's rating for the whole bridle; it is not
// multiplied by the sine of the angle.
func bandFactor(n int, sharing Sharing, flat Degree) (float64, string) {
	steep := flat >= 45-angleSlack
	switch {
	case n == 2 || n == 4 && sharing == TwoCarry:
		if steep {
			return 1.4, "two legs to 45° from vertical"
		}
		return 1.0, "two legs over 45° to 60° from vertical"
	case steep:
		return 2.1, "three or four legs to 45° from vertical"
	default:
		return 1.5, "three or four legs over 45° to 60° from vertical"
	}
}

// cranes books the hooks, and a tackle under one.
func (a *account) cranes() *Refusal {
	cranes := []Crane{a.p.Crane}
	fields := []string{"crane"}
	if a.p.Rig == TwoHooks {
		cranes, fields = append(cranes, a.p.SecondCrane), append(fields, "secondcrane")
	}
	for i, c := range cranes {
		load := 0.0
		for _, st := range a.states {
			load = max(load, st.hooks[i])
		}
		load += massOf(nil, a.p.TopGear)
		if a.p.Tackle != nil {
			var no *Refusal
			if load, no = a.tackle(load); no != nil {
				return no
			}
		}
		load += float64(c.Block)
		used := Ratio(load * float64(a.r.Dynamic) / float64(c.Rated))
		if used > a.r.CraneShare {
			a.r.CraneShare, a.r.HookLoad, a.r.CraneName = used, Kg(load), c.Name
		}
		a.component(fields[i], c.Name, load*float64(a.r.Dynamic), float64(c.Rated), nil)
	}
	a.r.Critical = a.r.CraneShare >= a.p.CriticalAt || a.p.Rig == TwoHooks
	return nil
}

func (a *account) weakest() {
	for i, c := range a.r.Components {
		if c.Used > a.r.Components[a.r.Weakest].Used {
			a.r.Weakest = i
		}
	}
}
