package lifting

import (
	"strconv"

	"matchmark/packs/def"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
)

// bar reads the spreader or the lifting beam.
func (r *liftReader) bar() {
	d := r.d
	kind := d.Rig.Value
	if !d.Bar.Written() {
		if kind == "spreader" || kind == "beam" {
			r.b.Problems.Add(d.Rig.At, "no-bar", r.l.Mark+" hangs under a "+kind+" and names none", "bar: the name of a spreader or a beam under gear:")
			r.hole = true
		}
		return
	}
	r.at["bar"] = d.Bar.At
	p := r.piece(d.Bar, "a bar", r.l.Mark, []string{"beam", "spreader"})
	if p == nil {
		return
	}
	if p.Kind.Value != kind && (kind == "spreader" || kind == "beam") {
		r.b.Problems.Add(d.Bar.At, "wrong-gear", source.Quote(d.Bar.Value)+" is a "+p.Kind.Value+" and the rig is a "+kind, "put the rig or the bar right")
		r.hole = true
	}
	r.at["bar.basis"] = p.RatedBy.At
	b := lift.Bar{
		Name: p.What.Value, Basis: bases[p.RatedBy.Value], Length: r.mm("bar.length", p.Length), Mass: r.kg("bar.mass", p.Mass),
		Rated: r.kg("bar.rated", p.Rated), Bail: r.mm("bar.bail", d.Bail), Rise: r.mm("bar.rise", p.Rise),
		LeastAngle: r.angle("bar.leastangle", p.Flattest), TopLugs: r.kg("bar.toplugs", p.TopLugs), MayPress: r.force("bar.maypress", p.MayPress),
		LugRise: r.mm("bar.lugrise", p.LugRise), MayBend: r.moment("bar.maybend", p.MayBend),
	}
	if n := len(p.Ends); n == 2 {
		b.Ends = [2]lift.Kg{r.kg("bar.ends[0]", p.Ends[0]), r.kg("bar.ends[1]", p.Ends[1])}
	} else if n > 0 {
		r.b.Problems.Add(p.Ends[0].At, "bar-ends", "a bar has two ends; what is written of "+source.Quote(d.Bar.Value)+" is for "+strconv.Itoa(n), "ends: [what the end over the first pick carries, what the other does]")
		r.hole = true
	}
	r.l.Plan.Bar = b
}

// lifting finds what a leg takes hold of among the lifting points of the lift, and says
// what has been found.
func (r *liftReader) lifting(field string, g *def.Leg) *lift.LiftingPoint {
	r.at[field] = g.Name.At
	if !g.Takes.Written() {
		return nil
	}
	r.at[field] = g.Takes.At
	for _, p := range r.d.Points {
		if p.Name.Value != g.Takes.Value {
			continue
		}
		r.at[field+".leastangle"], r.at[field+".source"] = p.Flattest.At, p.Source.At
		for _, v := range []struct {
			t    source.Text
			what string
		}{{p.Rated, "what"}, {p.Flattest, "for which legs"}, {p.Source, "by which drawing or plate"}} {
			if !v.t.Written() {
				r.lacks(v.what + " the " + p.Name.Value + " is rated")
			}
		}
		return &lift.LiftingPoint{What: p.Name.Value, Rated: r.kg(field+".rated", p.Rated), LeastAngle: r.angle(field+".leastangle", p.Flattest), Source: p.Source.Value, Turns: p.Turns.Value == "yes"}
	}
	return nil
}

// tackle reads the tackle under the crane.
func (r *liftReader) tackle() {
	t := r.d.Tackle
	if t.At.IsZero() {
		return
	}
	r.at["tackle"] = t.At
	for _, v := range []struct {
		t    source.Text
		what string
	}{
		{t.Parts, "how many parts of rope hold the moving block"}, {t.Sheaves, "how many sheaves the rope turns over"}, {t.Hauled, "which way the line is hauled"},
		{t.Rope, "what the rope of the tackle may carry"}, {t.MovingBlock, "what the moving block may carry"}, {t.UpperBlock, "what the upper block may carry"},
		{t.Mass, "the mass of the tackle"},
	} {
		if !v.t.Written() {
			r.lacks(v.what)
		}
	}
	parts, _ := names.WholeNumber(t.Parts)
	sheaves, _ := names.WholeNumber(t.Sheaves)
	r.at["tackle.parts"], r.at["tackle.sheaves"] = t.Parts.At, t.Sheaves.At
	r.l.Plan.Tackle = &lift.Tackle{
		Parts: parts, Sheaves: sheaves, HauledUp: t.Hauled.Value == "up", Block: r.kg("tackle.block", t.Mass),
		Rope: r.kg("tackle.rope", t.Rope), MovingBlock: r.kg("tackle.movingblock", t.MovingBlock), UpperBlock: r.kg("tackle.upperblock", t.UpperBlock),
	}
}

// crane reads a crane into the plan, and gives what is written of it.
func (r *liftReader) crane(field string, t source.Text, to *lift.Crane) *def.Crane {
	if !t.Written() {
		return nil
	}
	c, ok := r.b.cranes[t.Value]
	if !ok {
		r.b.Unknown(t, "crane", names.Keys(r.b.cranes), "cranes")
		r.hole = true
		return nil
	}
	r.b.gearUsed["crane "+t.Value] = true
	r.at[field] = t.At
	*to = lift.Crane{Name: c.What.Value, Rated: r.kg(field+".rated", c.Rated), Block: r.kg(field+".block", c.Block)}
	if !c.Rated.Written() {
		r.lacks("what the crane " + source.Quote(t.Value) + " may lift")
	}
	return c
}

// headroom is looked at where one of its heights is written or the load is turned, and then needs all.
func (r *liftReader) headroom(c, second *def.Crane) {
	d := r.d
	if c == nil || !d.PassOver.Written() && !d.Stack.Written() && !d.UpendedOn.Written() {
		return
	}
	high, both := c.HighHook, r.d.Rig.Value == "two hooks" && second != nil
	for _, v := range []struct {
		missing    bool
		what, help string
	}{
		{!high.Written(), "how high the hook goes", "high-hook: at the crane, measured from the floor"},
		{both && !second.HighHook.Written(), "how high the second hook goes", "high-hook: at the second crane, measured from the floor"},
		{!d.PassOver.Written(), "how high the load is carried", "pass-over: how high its lowest point is carried, margin counted in"},
		{!d.Stack.Written(), "how high the gear above the legs is", "stack: the height of what hangs between the legs and the hook"},
		{!r.l.Size, "how far down the load reaches", sizeHelp},
	} {
		if v.missing {
			r.b.Problems.Add(r.l.At, "no-headroom", "the headroom of "+r.l.Mark+" cannot be computed: nothing says "+v.what, v.help)
			r.hole = true
		}
	}
	if r.hole {
		return
	}
	low := r.l.Plan.Load.Outline[0].Z
	r.at["headroom"] = d.PassOver.At
	r.l.Plan.Headroom = &lift.Headroom{
		HighHook: r.mm("headroom.highhook", high), PassOver: r.mm("headroom.passover", d.PassOver),
		Stack: r.mm("headroom.stack", d.Stack), Underside: -low,
	}
	if both {
		r.l.Plan.Headroom.SecondHighHook = r.mm("headroom.secondhighhook", second.HighHook)
	}
}
