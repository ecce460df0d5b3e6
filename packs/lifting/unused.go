package lifting

import (
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// checkGear sees that gear has its mass and is used, as cranes are, unless a lift
// that is not meant for this machine may use it.
func (b *reader) checkGear() {
	all := b.Chosen.EveryLift()
	for _, g := range b.Def.Gear {
		if !g.Mass.Written() {
			b.Problems.Warn(g.Key.At, "look-at-lift", "the mass of "+source.Quote(g.Key.Value)+" is not given, and counts as nothing on the hook", "mass: by its tag or the maker's sheet")
			b.Problems.Says(source.Fixed("", "the mass of \"%s\" is not given, and counts as nothing on the hook", g.Key.Value))
		}
		if g.LeftSource.Written() && len(g.LeftAt) == 0 {
			b.Problems.Add(g.LeftSource.At, "not-used", "a table is named for "+source.Quote(g.Key.Value)+", and nothing of it is written", "left-at: the shares of that table, each up to its angle")
		}
		if g.HeatSource.Written() && !g.Heat.Written() {
			b.Problems.Add(g.HeatSource.At, "not-used", "a tag or sheet is named for how hot "+source.Quote(g.Key.Value)+" may become, and nothing of it is written", "temperatures: the coldest and the hottest that it gives")
		}
		if g.Heat.Written() && (g.Kind.Value == "spreader" || g.Kind.Value == "beam") {
			b.Problems.Add(g.Heat.At, "not-used", "how hot a "+g.Kind.Value+" may become is not looked at", "take it out, or write it of the slings and gear that hang below it")
		}
		if !b.gearUsed[g.Key.Value] && all {
			b.Problems.Warn(g.Key.At, "never-used", "no lift uses the gear "+source.Quote(g.Key.Value), "name it in a lift, or take it out")
		}
	}
	for _, c := range b.Def.Cranes {
		if !b.gearUsed["crane "+c.Key.Value] && all {
			b.Problems.Warn(c.Key.At, "never-used", "no lift uses the crane "+source.Quote(c.Key.Value), "name it in a lift, or take it out")
		}
	}
}

// unusedPoints warns of what no leg takes hold of.
func (r *liftReader) unusedPoints() {
	for _, p := range r.d.Points {
		if !slices.ContainsFunc(r.d.Legs, func(g *def.Leg) bool { return g.Takes.Value == p.Name.Value }) {
			r.b.Problems.Warn(p.Name.At, "never-used", "no leg of "+r.l.Mark+" takes hold of the "+p.Name.Value, "write it behind takes: of the legs, or take it out")
		}
	}
}

// unusedKeys refuses what a rig would pass over in silence.
func (r *liftReader) unusedKeys() {
	d := r.d
	refuse := func(t source.Text, key string) {
		if t.Written() {
			r.b.Problems.Add(t.At, "not-used", key+" is not used in a lift "+d.Rig.Value, "take it out, or put the rig right")
		}
	}
	if !d.Rig.Written() {
		return
	}
	if !r.l.ByHand {
		r.unusedPoints()
		for _, g := range d.Grips {
			refuse(g.Name, "a grip")
		}
		return
	}
	for _, v := range []struct {
		t   source.Text
		key string
	}{
		{d.RatedBy, "rated-by:"}, {d.Bar, "bar:"}, {d.Bail, "bail:"}, {d.HookHeight, "hook-height:"}, {d.Aim, "aim:"}, {d.FourLegs, "four-legs:"}, {d.Skew, "skew:"},
		{d.Dynamic, "dynamic:"}, {d.MaxTilt, "max-tilt:"}, {d.LegError, "leg-error:"}, {d.Crane, "crane:"}, {d.SecondCrane, "second-crane:"},
		{d.UpendedOn, "upended-on:"}, {d.SignedPlan, "signed-plan:"}, {d.PassOver, "pass-over:"}, {d.Stack, "stack:"}, {d.Heat, "temperatures:"},
	} {
		refuse(v.t, v.key)
	}
	for _, g := range slices.Concat(d.Legs, d.TopLegs) {
		refuse(g.Name, "a leg")
	}
	for _, t := range d.TopGear {
		refuse(t, "top-gear:")
	}
	for _, p := range d.Points {
		refuse(p.Name, "a lifting point")
	}
	refuse(source.Text{Value: "tackle", At: d.Tackle.At}, "tackle:")
}
