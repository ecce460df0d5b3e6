package align

// What heat lifts, and where the cold shaft has to stand for it
//
//	rise = h α ΔT             h height from the foot to the shaft, ΔT how much warmer
//	up   = S(x) - m           S  the stationary shaft's rise, drawn on to the foot at x
//	                          m  the movable machine's rise at that foot
//
// A stationary machine that grows more is met by a movable one that is set high, and the
// other way round. Source: thermal expansion and two straight shafts. Valid for supports
// that warm evenly over their height. Refused: a rise told as a temperature, a stationary
// machine without its supports.

import (
	"fmt"

	"matchmark/packs/units"
)

// A Support is one support of the stationary machine: where it stands, from the dial's
// plane (negative, away from the movable machine), and what its shaft rises there.
type Support struct {
	At, Rise units.Quantity
}

// Growth is what the shafts rise from cold to running.
type Growth struct {
	Stationary []Support        // one if it rises evenly, else the two
	Movable    []units.Quantity // at each plane of feet, in the order of Setup.Feet
	Source     string
}

// RiseOf gives what a shaft of this height rises over its feet when they are so much
// warmer. Expansion is in millionths for each kelvin: about 12 for steel and 10.5 for grey
// cast iron, but name the figure and its source. The error is a Refusal.
func RiseOf(height units.Quantity, expansion units.Number, warmer units.Quantity) (units.Quantity, error) {
	k, err := warmer.Convert(units.KelvinRise)
	switch {
	case height.Unit.Dimension() != units.Length || height.Number.Sign() <= 0:
		return height, Refusal{Field: "height", Message: height.Text() + " is no height", Help: "measure from the foot to the middle of the shaft"}
	case err != nil:
		return height, Refusal{Field: "warmer", Message: err.Error(), Help: "write how much warmer, as 40 C rise"}
	case expansion.Sign() <= 0 || expansion.Cmp(units.Whole(40)) > 0:
		return height, Refusal{Field: "expansion", Message: "an expansion of " + expansion.Text() + " millionths for each kelvin", Help: "steel is about 12"}
	}
	n := height.Number.Mul(expansion).Mul(k.Number).Quo(units.Whole(1_000_000))
	return units.Quantity{Number: units.Exact(n.Rat(), 0), Unit: height.Unit}, nil
}

// Target gives where the cold shaft has to stand at each plane of feet, so that it is in
// line when both machines are warm. The error is Refusals.
func (g Growth) Target(s Setup) (*Target, error) {
	var rs reasons
	if g.Source == "" {
		rs.add("growth.source", "name the maker's sheet, or the temperatures it was worked out from", "the growth has no source")
	}
	if len(g.Movable) != len(s.Feet) {
		rs.add("growth.movable", "write one for each plane of feet", "%d rises for %d planes of feet", len(g.Movable), len(s.Feet))
	}
	at, rise := g.stationary(s, &rs)
	t := &Target{Source: g.Source}
	for i, foot := range s.Feet {
		x := rs.length(fmt.Sprintf("feet[%d].at", i), "distance to "+foot.Name, foot.At, s.Unit)
		if len(rs.Refusals) > 0 {
			continue
		}
		up := rise[0]
		if len(at) == 2 {
			up = up.Add(rise[1].Sub(rise[0]).Mul(x.Sub(at[0])).Quo(at[1].Sub(at[0])))
		}
		m := rs.length(fmt.Sprintf("growth.movable[%d]", i), "rise at "+foot.Name, &g.Movable[i], s.Unit)
		t.Up = append(t.Up, units.Quantity{Number: units.Exact(up.Sub(m).Rat(), 0), Unit: s.Unit})
	}
	if len(rs.Refusals) > 0 {
		return nil, rs.Err()
	}
	return t, nil
}

// stationary reads the supports of the stationary machine.
func (g Growth) stationary(s Setup, rs *reasons) (at, rise []units.Number) {
	if n := len(g.Stationary); n != 1 && n != 2 {
		rs.add("growth.stationary", "write one support if it rises evenly, else both", "%d supports of the stationary machine", n)
		return nil, nil
	}
	for i, sup := range g.Stationary {
		field := fmt.Sprintf("growth.stationary[%d]", i)
		at = append(at, rs.length(field+".at", "place of the support", &sup.At, s.Unit))
		rise = append(rise, rs.length(field+".rise", "rise of the support", &sup.Rise, s.Unit))
	}
	if len(at) == 2 && at[0].Cmp(at[1]) == 0 {
		rs.add("growth.stationary[1].at", "measure both again", "both supports stand at %s", g.Stationary[0].At.Text())
	}
	return at, rise
}
