package packs

import (
	"matchmark/packs/job"
	"slices"

	"matchmark/packs/def"
	"matchmark/packs/lift"
	"matchmark/packs/source"
)

// checkLifts sees that every lift is made, that it is as heavy as its parts, and
// that the steps that make it move what is on it.
func (b *builder) checkLifts() {
	for _, l := range b.job.Lifts {
		if len(l.Steps) == 0 {
			b.problems.Add(l.At, "never-lifted", l.Mark+" is made at no step", "lift: ["+l.Mark+"] at the step that makes it")
		}
		b.checkParts(l)
		b.checkSpot(l)
		for _, st := range l.Steps {
			b.checkLifted(l, st)
		}
	}
}

// checkParts sees that a lift is no lighter than the parts that hang on it.
func (b *builder) checkParts(l *job.Lift) {
	load := l.Plan.Load
	sum := lift.Kg(0)
	for _, p := range l.Parts {
		if p.Mass != nil {
			sum += lift.Kg(kilograms(*p.Mass)) * lift.Kg(p.Count)
		}
	}
	if load.Mass > 0 && sum > load.Mass+load.MassTolerance {
		b.problems.Add(l.At, "lighter-than-its-parts", l.Mark+" is "+l.Weight(load.Mass)+", and its parts come to "+l.Weight(sum), "put the mass right, or take the part out that does not hang on it")
	}
}

// checkSpot sees that a lift names the spot on which its parts are laid.
func (b *builder) checkSpot(l *job.Lift) {
	for _, p := range l.Parts {
		for _, m := range p.Off {
			spot := m.To.Spot
			switch {
			case spot == nil || spot == l.LayDown || m.Step == nil || !slices.Contains(m.Step.Lifts, l):
			case l.LayDown == nil:
				b.problems.Warn(l.At, "look-at-lift", l.Mark+" does not say where it is laid down, and "+m.Step.Name()+" lays "+p.Name+" on "+spot.Mark, "lay-down: "+spot.Mark)
				return
			default:
				b.problems = append(b.problems, source.Problem{
					Pos: l.At, Severity: source.Error, Code: "other-spot",
					Message: l.Mark + " is laid down on " + l.LayDown.Mark + ", and " + m.Step.Name() + " lays " + p.Name + " on " + spot.Mark,
					Help:    []string{"put one of the two right"},
					See:     []source.Also{{Pos: m.At, What: "laid on " + spot.Mark + " here"}},
				})
				return
			}
		}
	}
}

// checkLifted sees that a step that makes a lift moves what is on it.
func (b *builder) checkLifted(l *job.Lift, st *job.Step) {
	moved := slices.Concat(st.Remove, st.Fit)
	if len(l.Parts) == 0 {
		if len(moved) > 0 {
			b.problems.Warn(l.At, "look-at-lift", l.Mark+" names no parts, and "+st.Name()+" makes it and moves some", "parts: ["+moved[0].Part.Key+"]")
		}
		return
	}
	for _, m := range moved {
		if slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || within(m.Part, p) }) {
			return
		}
	}
	if len(moved) > 0 {
		b.problems.Add(st.At, "other-part", "step "+st.Name()+" makes lift "+l.Mark+" and moves none of its parts", "parts: at "+l.Mark+", or lift: at the step that moves them")
	}
}

// within reports whether p belongs to the assembly q.
func within(p, q *job.Part) bool {
	for up := p.Of; up != nil; up = up.Of {
		if up == q {
			return true
		}
	}
	return false
}

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
}

// liftBack lets a put-back row make the lifts again with which its step took off
// what the row puts back.
func liftBack(st, row *job.Step) {
	for _, l := range st.Lifts {
		if slices.ContainsFunc(row.Fit, func(m *job.Move) bool {
			return len(l.Parts) == 0 || slices.ContainsFunc(l.Parts, func(p *job.Part) bool { return p == m.Part || within(m.Part, p) })
		}) {
			row.Makes(l)
		}
	}
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
