package lifting

import (
	"matchmark/packs/def"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
	"strconv"
	"strings"
)

var (
	rigs = map[string]lift.Rig{"bridle": lift.Bridle, "spreader": lift.Spreader, "beam": lift.Beam, "two hooks": lift.TwoHooks}

	massSources = map[string]lift.MassSource{"weighed": lift.Weighed, "drawing": lift.Drawing, "computed": lift.Computed, "estimated": lift.Estimated}

	sharings = map[string]lift.Sharing{"two carry": lift.TwoCarry, "three of four": lift.ThreeOfFour, "matched slings": lift.Skew}

	shapes = map[string]lift.Shape{"solid": lift.Solid, "hollow": lift.Hollow, "cone": lift.Cone, "disc": lift.Disc, "blades": lift.Blades}
)

// index is a path with a number, as legs[2].
func index(field string, i int) string { return field + "[" + strconv.Itoa(i) + "]" }

// load reads mass, centre of gravity, size and ends.
func (r *liftReader) load() {
	d, in := r.d, &r.l.Plan.Load
	r.sections(in)
	if d.Mass.Written() {
		in.Mass = r.kg("load.mass", d.Mass, "1480 kg")
		r.l.PoundsUsed = strings.Contains(d.Mass.Value, "lb")
	}
	if d.MassFrom.Written() {
		r.at["load.source"] = d.MassFrom.At
		in.Source = massSources[d.MassFrom.Value]
	}
	if d.MassWithin.Written() {
		in.MassTolerance = r.within(in.Mass)
	}
	if len(d.Centre) > 0 {
		p := r.point("load.cog", d.Centre, true)
		if r.l.Body != nil {
			r.b.Problems.Add(d.Centre[0].At, "two-centres", r.l.Mark+" has a centre of gravity and sections that give one", "keep one of the two")
		}
		in.CoG = &p
	}
	if len(d.CentreWithin) > 0 {
		t := r.threeOrOne("load.cogtolerance", d.CentreWithin)
		t.X = max(t.X, in.CoGTolerance.X)
		in.CoGTolerance = t
	}
	in.MayPress = r.force("load.maypress", d.MayPress)
	r.size(in)
	if n := len(d.Ends); n == 2 {
		in.Span = &lift.Span{NameA: d.Ends[0].Name.Value, NameB: d.Ends[1].Name.Value,
			A: r.point("load.span.a", d.Ends[0].Point, true), B: r.point("load.span.b", d.Ends[1].Point, true)}
	} else if n > 0 {
		r.b.Problems.Add(d.Ends[0].Name.At, "ends", "the level of "+r.l.Mark+" is told between two ends, not "+strconv.Itoa(n), "ends: {DE: {point: …}, NDE: {point: …}}")
	}
}

// within reads the tolerance of the mass, a mass or a share of it.
func (r *liftReader) within(mass lift.Kg) lift.Kg {
	t := r.d.MassWithin
	if strings.HasSuffix(strings.TrimSpace(t.Value), "%") {
		return lift.Kg(r.share("load.masstolerance", t, "3 %")) * mass
	}
	return r.kg("load.masstolerance", t, "30 kg")
}

// size takes the corners of the load's box as its outline.
func (r *liftReader) size(in *lift.Load) {
	if r.d.Size.At.IsZero() || len(r.d.Size.From) == 0 || len(r.d.Size.To) == 0 {
		return
	}
	a, b := r.point("load.outline", r.d.Size.From, true), r.point("load.outline", r.d.Size.To, true)
	if !r.hole && (a.X >= b.X || a.Y >= b.Y || a.Z >= b.Z) {
		r.b.Problems.Add(r.d.Size.At, "size", "the size of "+r.l.Mark+" does not run from its least x, y and z to its largest", "size: {from: [-700 mm, -800 mm, -600 mm], to: [700 mm, 800 mm, 150 mm]}")
		r.hole = true
		return
	}
	for _, x := range []lift.Mm{a.X, b.X} {
		for _, y := range []lift.Mm{a.Y, b.Y} {
			for _, z := range []lift.Mm{a.Z, b.Z} {
				in.Outline = append(in.Outline, lift.Point{X: x, Y: y, Z: z})
			}
		}
	}
	r.l.Size = true
}

// sections weighs a load that is described piece by piece.
func (r *liftReader) sections(in *lift.Load) {
	if len(r.d.Sections) == 0 {
		return
	}
	var list []lift.Section
	for i, s := range r.d.Sections {
		field := index("sections", i)
		r.at[field] = s.At
		list = append(list, r.section(field, s))
	}
	if len(r.d.SectionsFrom) == 0 {
		r.b.Problems.Add(r.d.Sections[0].At, "no-end-face", "nothing says where the end face stands from which the sections of "+r.l.Mark+" are measured", "sections-from: [-450 mm, 0 mm, 0 mm]")
		r.hole = true
	}
	if r.hole {
		return
	}
	body, err := lift.Weigh(list)
	if r.refused(err) {
		r.hole = true
		return
	}
	face := r.point("sectionsfrom", r.d.SectionsFrom, true)
	r.l.Body = &body
	r.at["load.cog"] = r.d.SectionsFrom[0].At
	in.Mass, in.MassTolerance, in.Source = body.Mass, body.MassTolerance, lift.Computed
	in.CoG = &lift.Point{X: face.X + body.CoG, Y: face.Y, Z: face.Z}
	in.CoGTolerance.X = max(body.CoGHigh-body.CoG, body.CoG-body.CoGLow)
}

func (r *liftReader) section(field string, s *def.MassSection) lift.Section {
	n, _ := names.WholeNumber(s.Count)
	out := lift.Section{
		Name: s.What.Value, Shape: shapes[s.Shape.Value], Count: n, Cut: s.Cut.Value == "yes",
		At: r.mm(field+".at", s.From, "0 mm"), Length: r.mm(field+".length", s.Length, "900 mm"),
		Outer: r.mm(field+".outer", s.Outer, "80 mm"), OuterFar: r.mm(field+".outerfar", s.OuterFar, "60 mm"),
		Bore: r.mm(field+".bore", s.Bore, "40 mm"), Each: r.kg(field+".each", s.Each, "0.8 kg"),
		Tolerance: r.share(field+".tolerance", s.Within, "3 %"), Density: lift.Density(r.number(field+".density", s.Density)),
	}
	if !s.Material.Written() {
		return out
	}
	m, ok := lift.MaterialNamed(s.Material.Value)
	switch {
	case s.Density.Written():
		r.b.Problems.Add(s.Density.At, "two-densities", source.Quote(s.What.Value)+" has a material and a density", "keep one of the two")
	case !ok:
		r.b.Problems.Add(s.Material.At, "unknown-name", "no density of "+source.Quote(s.Material.Value)+" is at hand", "density: 7850, in kg/m3, with its source in mass-source")
		r.hole = true
	}
	out.Density = m.Density
	return out
}

// rig reads how the load hangs and what it hangs on.
func (r *liftReader) rig() {
	d, p := r.d, &r.l.Plan
	r.at["rig"], r.at["basis"] = d.Rig.At, d.RatedBy.At
	p.Rig = rigs[d.Rig.Value]
	switch d.RatedBy.Value {
	case "EN":
		p.Basis = lift.EN
	case "US":
		p.Basis = lift.US
	}
	for i, g := range d.Legs {
		field := index("picks", i)
		r.at[field] = g.Name.At
		if len(g.Pick) == 0 {
			r.b.Problems.Add(g.Name.At, "no-pick", "leg "+source.Quote(g.Name.Value)+" of "+r.l.Mark+" has no pick", "pick: [-560 mm, 0 mm, 0 mm]")
			r.hole = true
		}
		p.Picks = append(p.Picks, lift.Pick{Name: g.Name.Value, At: r.point(field, g.Pick, false)})
		p.Legs = append(p.Legs, r.leg(index("legs", i), g))
		r.l.Takes = append(r.l.Takes, g.Takes.Value)
	}
	for i, g := range d.TopLegs {
		p.TopLegs = append(p.TopLegs, r.leg(index("toplegs", i), g))
	}
	r.bar()
	for i, t := range d.TopGear {
		p.TopGear = append(p.TopGear, r.hardware(index("topgear", i), t, nil))
	}
	p.HookHeight = r.mm("hookheight", d.HookHeight, "1900 mm")
	p.Aim = r.angle("aim", d.Aim, "60°")
	r.at["sharing"], r.at["decidedby"], r.at["reason"] = d.FourLegs.At, d.DecidedBy.At, d.Because.At
	p.Sharing = sharings[d.FourLegs.Value]
	p.SkewFactor = lift.Ratio(r.number("skewfactor", d.Skew))
	p.DecidedBy, p.Reason = d.DecidedBy.Value, d.Because.Value
	p.Dynamic = lift.Ratio(r.number("dynamic", d.Dynamic))
	p.MaxTilt = r.angle("maxtilt", d.MaxTilt, "2°")
	p.LengthError = r.mm("lengtherror", d.LegError, "10 mm")
	p.CriticalAt = r.b.Job.Site.Critical
	crane := r.crane("crane", d.Crane, &p.Crane)
	r.crane("secondcrane", d.SecondCrane, &p.SecondCrane)
	r.headroom(crane)
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
	*to = lift.Crane{Name: c.What.Value, Rated: r.kg(field+".rated", c.Rated, "3.2 t"), Block: r.kg(field+".block", c.Block, "45 kg")}
	if to.Rated == 0 {
		r.hole = true
	}
	return c
}

// headroom is looked at where one of its heights is written, and then needs all.
func (r *liftReader) headroom(c *def.Crane) {
	d := r.d
	if c == nil || !d.PassOver.Written() && !d.Stack.Written() {
		return
	}
	high := c.HighHook
	for _, v := range []struct {
		missing    bool
		what, help string
	}{
		{!high.Written(), "how high the hook goes", "high-hook: 6.2 m at the crane"},
		{!d.PassOver.Written(), "how high the load is carried", "pass-over: 1200 mm"},
		{!d.Stack.Written(), "how high the gear above the legs is", "stack: 350 mm"},
		{!r.l.Size, "how far down the load reaches", "size: {from: [-700 mm, -800 mm, -600 mm], to: [700 mm, 800 mm, 150 mm]}"},
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
		HighHook: r.mm("headroom.highhook", high, "6.2 m"), PassOver: r.mm("headroom.passover", d.PassOver, "1200 mm"),
		Stack: r.mm("headroom.stack", d.Stack, "350 mm"), Underside: -low,
	}
}

// amount reads a quantity of one dimension in a unit; what is not written is 0.
func (r *liftReader) amount(field string, t source.Text, dim units.Dimension, u units.Unit, example string) float64 {
	if !t.Written() {
		return 0
	}
	r.at[field] = t.At
	q, ok := r.b.Quantity(t, example)
	if !ok {
		r.hole = true
		return 0
	}
	if q.Unit.Dimension() != dim {
		r.b.Problems.Add(t.At, "wrong-quantity", source.Quote(t.Value)+" is no "+dim.String(), "write it as "+example)
		r.hole = true
		return 0
	}
	if dim == units.Length && (q.Unit == units.Inch || q.Unit == units.Foot) {
		r.l.InchesUsed = true
	}
	converted, err := q.Convert(u)
	if err != nil {
		r.hole = true
		return 0
	}
	x, _ := converted.Number.Rat().Float64()
	return x
}

func (r *liftReader) kg(field string, t source.Text, example string) lift.Kg {
	return lift.Kg(r.amount(field, t, units.Mass, units.Kilogram, example))
}

func (r *liftReader) mm(field string, t source.Text, example string) lift.Mm {
	return lift.Mm(r.amount(field, t, units.Length, units.Millimetre, example))
}

func (r *liftReader) angle(field string, t source.Text, example string) lift.Degree {
	return lift.Degree(r.amount(field, t, units.Angle, units.Degree, example))
}

func (r *liftReader) share(field string, t source.Text, example string) lift.Ratio {
	return lift.Ratio(r.amount(field, t, units.Ratio, units.Percent, example) / 100)
}

// force reads a force, as the mass whose weight it is.
func (r *liftReader) force(field string, t source.Text) lift.Kg {
	return lift.Kg(r.amount(field, t, units.Force, units.Newton, "4 kN")) / lift.Kg(lift.Kg(1).Newton())
}

// number reads a bare number; what is not written is 0.
func (r *liftReader) number(field string, t source.Text) float64 {
	if !t.Written() {
		return 0
	}
	r.at[field] = t.At
	n, err := units.ParseNumber(t.Value)
	if err != nil {
		r.b.Fault(t, err)
		r.hole = true
		return 0
	}
	x, _ := n.Rat().Float64()
	return x
}

// point reads three lengths; need says that they have to be there.
func (r *liftReader) point(field string, list []source.Text, need bool) lift.Point {
	if len(list) > 0 {
		if _, known := r.at[field]; !known {
			r.at[field] = list[0].At
		}
	}
	if len(list) != 3 {
		if len(list) > 0 {
			r.b.Problems.Add(list[0].At, "three-lengths", "a point takes three lengths, along x, y and z; here stand "+strconv.Itoa(len(list)), "write it as [60 mm, 185 mm, -250 mm]")
		}
		r.hole = r.hole || need || len(list) > 0
		return lift.Point{}
	}
	return lift.Point{
		X: r.mm(field+".x", list[0], "60 mm"), Y: r.mm(field+".y", list[1], "185 mm"), Z: r.mm(field+".z", list[2], "-250 mm"),
	}
}

// threeOrOne reads three lengths, or one that stands for all.
func (r *liftReader) threeOrOne(field string, list []source.Text) lift.Point {
	if len(list) == 1 {
		x := r.mm(field, list[0], "20 mm")
		return lift.Point{X: x, Y: x, Z: x}
	}
	return r.point(field, list, true)
}
