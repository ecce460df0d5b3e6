package packs

import (
	"matchmark/packs/job"
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/source"
)

// checkGear sees that gear has its mass and is used, as cranes are, unless a lift
// that is not meant for this machine may use it.
func (b *builder) checkGear() {
	all := b.chosen.EveryLift()
	for _, g := range b.def.Gear {
		if !g.Mass.Written() {
			b.problems.Warn(g.Key.At, "look-at-lift", "the mass of "+source.Quote(g.Key.Value)+" is not given, and counts as nothing on the hook", "mass: 4 kg")
		}
		if g.LeftSource.Written() && len(g.LeftAt) == 0 {
			b.problems.Add(g.LeftSource.At, "not-used", "a table is named for "+source.Quote(g.Key.Value)+", and nothing of it is written", "left-at: [100 % to 5°, 70 % to 45°]")
		}
		if !b.gearUsed[g.Key.Value] && all {
			b.problems.Warn(g.Key.At, "never-used", "no lift uses the gear "+source.Quote(g.Key.Value), "name it in a lift, or take it out")
		}
	}
	for _, c := range b.def.Cranes {
		if !b.gearUsed["crane "+c.Key.Value] && all {
			b.problems.Warn(c.Key.At, "never-used", "no lift uses the crane "+source.Quote(c.Key.Value), "name it in a lift, or take it out")
		}
	}
}

// resolveLifts ties a step to the lifts that it makes.
func (b *builder) resolveLifts(st *job.Step, ds *def.Step) {
	for _, t := range ds.Lift {
		l, ok := b.lifts[t.Value]
		if !ok {
			b.unknown(t, "lift", mapKeys(b.lifts), "lifts")
			continue
		}
		st.Makes(l)
	}
	for _, t := range ds.SetDown {
		if l, ok := b.lifts[t.Value]; ok {
			st.SetDown = append(st.SetDown, l)
		} else {
			b.unknown(t, "lift", mapKeys(b.lifts), "lifts")
		}
	}
	st.UnderLoad = ds.UnderLoad
}

// unusedKeys refuses what a rig would pass over in silence.
func (r *liftReader) unusedKeys() {
	d := r.d
	refuse := func(t source.Text, key string) {
		if t.Written() {
			r.b.problems.Add(t.At, "not-used", key+" is not used in a lift "+d.Rig.Value, "take it out, or put the rig right")
		}
	}
	if !d.Rig.Written() {
		return
	}
	if !r.l.ByHand {
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
		{d.SignedPlan, "signed-plan:"}, {d.PassOver, "pass-over:"}, {d.Stack, "stack:"},
	} {
		refuse(v.t, v.key)
	}
	for _, g := range slices.Concat(d.Legs, d.TopLegs) {
		refuse(g.Name, "a leg")
	}
	for _, t := range d.TopGear {
		refuse(t, "top-gear:")
	}
}
