package lifting

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"matchmark/packs/def"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

var (
	rigs = map[string]lift.Rig{"bridle": lift.Bridle, "spreader": lift.Spreader, "beam": lift.Beam, "two hooks": lift.TwoHooks}

	massSources = map[string]lift.MassSource{"weighed": lift.Weighed, "drawing": lift.Drawing, "computed": lift.Computed, "estimated": lift.Estimated}

	sharings = map[string]lift.Sharing{"two carry": lift.TwoCarry, "three of four": lift.ThreeOfFour, "matched slings": lift.Skew}

	shapes = map[string]lift.Shape{"solid": lift.Solid, "hollow": lift.Hollow, "cone": lift.Cone, "disc": lift.Disc, "blades": lift.Blades}
)

// heat reads the temperatures that slings and gear come to.
func (r *liftReader) heat() {
	t := r.d.Heat
	if !t.Written() {
		r.l.Fahrenheit = r.l.PoundsUsed
		return
	}
	if band, in, ok := r.temperatures("temperatures", t); ok {
		r.l.Fahrenheit = in == units.Fahrenheit
		r.l.Plan.Temperatures = &band
	}
}

// temperatures reads the coldest and the hottest, with the unit that they are written in.
func (r *liftReader) temperatures(field string, t source.Text) (band lift.Temperatures, in units.Unit, ok bool) {
	r.at[field] = t.At
	low, high, err := units.ParseRange(t.Value)
	if err != nil {
		r.b.Fault(t, err, "write the coldest and the hottest in C or F")
		r.hole = true
		return band, in, false
	}
	if low.Unit.Dimension() != units.Temperature {
		r.b.Problems.Add(t.At, "wrong-quantity", source.Quote(t.Value)+" are no temperatures", "write the coldest and the hottest in C or F")
		r.hole = true
		return band, in, false
	}
	celsius := func(q units.Quantity) lift.Celsius {
		q, _ = q.Convert(units.Celsius) // of the same dimension
		x, _ := q.Number.Rat().Float64()
		return lift.Celsius(x)
	}
	return lift.Temperatures{Low: celsius(low), High: celsius(high)}, low.Unit, true
}

// allChain reports whether the legs right below the gear at the top are chain, every one.
func allChain(p *lift.Plan) bool {
	legs := p.TopLegs
	if len(legs) == 0 {
		legs = p.Legs
	}
	return len(legs) > 0 && !slices.ContainsFunc(legs, func(l lift.Leg) bool { return l.Sling.Fibre != lift.Chain })
}

// index is a path with a number, as legs[2].
func index(field string, i int) string { return field + "[" + strconv.Itoa(i) + "]" }

// sizeHelp says how the box that a load fills is written.
const sizeHelp = "size: {from: [least x, y, z], to: [largest x, y, z]}, from the origin"

// load reads mass, centre of gravity, size and ends.
func (r *liftReader) load() {
	d, in := r.d, &r.l.Plan.Load
	r.sections(in)
	if d.Mass.Written() {
		in.Mass = r.kg("load.mass", d.Mass)
		r.l.PoundsUsed = r.pounds
	}
	if d.MassFrom.Written() {
		r.at["load.source"] = d.MassFrom.At
		in.Source = massSources[d.MassFrom.Value]
	}
	if d.MassWithin.Written() {
		in.MassTolerance = r.within(in.Mass)
	}
	if len(d.Centre) > 0 {
		p := r.point("load.cog", d.Centre, "")
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
			A: r.point("load.span.a", d.Ends[0].Point, "the place of "+source.Quote(d.Ends[0].Name.Value)), B: r.point("load.span.b", d.Ends[1].Point, "the place of "+source.Quote(d.Ends[1].Name.Value))}
	} else if n > 0 {
		r.b.Problems.Add(d.Ends[0].Name.At, "ends", "the level of "+r.l.Mark+" is told between two ends, not "+strconv.Itoa(n), "for example ends: {DE: {point: …}, NDE: {point: …}}")
	}
}

// within reads the tolerance of the mass, a mass or a share of it.
func (r *liftReader) within(mass lift.Kg) lift.Kg {
	t := r.d.MassWithin
	if strings.HasSuffix(strings.TrimSpace(t.Value), "%") {
		return lift.Kg(r.share("load.masstolerance", t)) * mass
	}
	return r.kg("load.masstolerance", t)
}

// size takes the corners of the load's box as its outline.
func (r *liftReader) size(in *lift.Load) {
	if r.d.Size.At.IsZero() || len(r.d.Size.From) == 0 || len(r.d.Size.To) == 0 {
		return
	}
	a, b := r.point("load.outline", r.d.Size.From, ""), r.point("load.outline", r.d.Size.To, "")
	if !r.hole && (a.X >= b.X || a.Y >= b.Y || a.Z >= b.Z) {
		r.b.Problems.Add(r.d.Size.At, "size", "the size of "+r.l.Mark+" does not run from its least x, y and z to its largest", sizeHelp)
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
		r.b.Problems.Add(r.d.Sections[0].At, "no-end-face", "nothing says where the end face stands from which the sections of "+r.l.Mark+" are measured", "sections-from: [x, y, z] of that face from the origin")
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
	face := r.point("sectionsfrom", r.d.SectionsFrom, "")
	r.l.Body = &body
	r.at["load.cog"] = r.d.SectionsFrom[0].At
	in.Mass, in.MassTolerance, in.Source = body.Mass, body.MassTolerance, lift.Computed
	in.CoG = &lift.Point{X: face.X + body.CoG, Y: face.Y, Z: face.Z}
	in.CoGTolerance.X = max(body.CoGHigh-body.CoG, body.CoG-body.CoGLow)
}

func (r *liftReader) section(field string, s *def.MassSection) lift.Section {
	n, _ := names.WholeNumber(s.Count)
	out := lift.Section{
		Name: cmp.Or(s.What.Value, "…"), Shape: shapes[s.Shape.Value], Count: n, Cut: s.Cut.Value == "yes",
		At: r.mm(field+".at", s.From), Length: r.mm(field+".length", s.Length),
		Outer: r.mm(field+".outer", s.Outer), OuterFar: r.mm(field+".outerfar", s.OuterFar),
		Bore: r.mm(field+".bore", s.Bore), Each: r.kg(field+".each", s.Each),
		Tolerance: r.share(field+".tolerance", s.Within), Density: lift.Density(r.number(field+".density", s.Density)),
	}
	if !s.Material.Written() {
		return out
	}
	m, ok := lift.MaterialNamed(s.Material.Value)
	switch {
	case s.Density.Written():
		r.b.Problems.Add(s.Density.At, "two-densities", source.Quote(s.What.Value)+" has a material and a density", "keep one of the two")
	case !ok:
		r.b.Problems.Add(s.Material.At, "unknown-name", "no density of "+source.Quote(s.Material.Value)+" is at hand", "density: in kg/m3, by a table that mass-source: names")
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
			r.b.Problems.Add(g.Name.At, "no-pick", "leg "+source.Quote(g.Name.Value)+" of "+r.l.Mark+" has no pick", "pick: [x, y, z] from the origin")
			r.hole = true
		}
		p.Picks = append(p.Picks, lift.Pick{Name: g.Name.Value, At: r.point(field, g.Pick, ""), Point: r.lifting(field+".point", g)})
		p.Legs = append(p.Legs, r.leg(index("legs", i), g))
		r.l.Takes = append(r.l.Takes, g.Takes.Value)
	}
	for i, at := range map[string][]*def.Leg{"legs": d.Legs, "toplegs": d.TopLegs} {
		if len(at) > 0 {
			r.at[i] = at[0].Name.At
		}
	}
	for i, g := range d.TopLegs {
		p.TopLegs = append(p.TopLegs, r.leg(index("toplegs", i), g))
	}
	r.bar()
	for i, t := range d.TopGear {
		p.TopGear = append(p.TopGear, r.hardware(index("topgear", i), t, nil, allChain(p)))
	}
	p.HookHeight = r.mm("hookheight", d.HookHeight)
	p.Aim = r.angle("aim", d.Aim)
	r.at["sharing"], r.at["decidedby"], r.at["reason"] = d.FourLegs.At, d.DecidedBy.At, d.Because.At
	p.Sharing = sharings[d.FourLegs.Value]
	p.SkewFactor = lift.Ratio(r.number("skewfactor", d.Skew))
	p.DecidedBy, p.Reason = d.DecidedBy.Value, d.Because.Value
	p.Dynamic = lift.Ratio(r.number("dynamic", d.Dynamic))
	p.MaxTilt = r.angle("maxtilt", d.MaxTilt)
	p.LengthError = r.mm("lengtherror", d.LegError)
	r.heat()
	r.tackle()
	r.turn()
	p.CriticalAt = r.b.Job.Site.Critical
	crane := r.crane("crane", d.Crane, &p.Crane)
	r.headroom(crane, r.crane("secondcrane", d.SecondCrane, &p.SecondCrane))
}
