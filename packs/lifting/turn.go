package lifting

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/lift"
)

// turn reads from which leg a load hangs upright that two hooks turn.
func (r *liftReader) turn() {
	t := r.d.UpendedOn
	if !t.Written() {
		return
	}
	r.at["turn"] = t.At
	var legs []string
	for _, g := range r.d.Legs {
		legs = append(legs, g.Name.Value)
	}
	upper := slices.IndexFunc(r.d.Legs, func(g *def.Leg) bool { return g.Name.Value == t.Value })
	if upper < 0 && len(legs) > 0 {
		r.b.Unknown(t, "leg", legs, "legs")
		r.hole = true
		return
	}
	r.l.Plan.Turn = &lift.Turn{Upper: upper}
}
