package lifting

import (
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// usualTrial is how high a trial lift goes: an inch, common practice, no source.
const usualTrial lift.Mm = 25

// usualTilt is the published guide for how far a load may hang out of level
// (GL Noble Denton 0027/ND rev 11, 5.3.2).
const usualTilt lift.Degree = 2

// A reader holds the gear and the cranes while lifts are read.
type reader struct {
	*names.Index
	gear     map[string]*def.Gear
	cranes   map[string]*def.Crane
	gearUsed map[string]bool // keys of gear, and of cranes with "crane " before them
}

// Read takes over gear, cranes and lifts, and works every lift out.
func Read(ix *names.Index) {
	b := &reader{Index: ix}
	b.gear, b.cranes, b.Lifts = map[string]*def.Gear{}, map[string]*def.Crane{}, map[string]*job.Lift{}
	for _, g := range b.Def.Gear {
		b.gear[g.Key.Value] = g
	}
	for _, c := range b.Def.Cranes {
		b.cranes[c.Key.Value] = c
	}
	b.gearUsed = map[string]bool{}
	for _, dl := range b.Def.Lifts {
		l := &job.Lift{
			At: dl.Mark.At, Mark: dl.Mark.Value, What: dl.What.Value, ByHand: dl.Rig.Value == "by hand",
			Origin: dl.Origin.Value, MassSource: dl.MassSource.Value, SignedPlan: dl.SignedPlan.Value, Note: dl.Note.Value,
			Supports: names.Texts(dl.Supports), Crew: names.Texts(dl.Crew), Trial: usualTrial,
			TrialStops: names.Texts(dl.TrialStops), Stops: names.Texts(dl.Stops), StopsIn: names.Texts(dl.StopsIn),
		}
		for _, t := range dl.Parts {
			l.Parts = append(l.Parts, b.PartsAt(t, job.Place{})...)
		}
		r := &liftReader{b: b, d: dl, l: l, at: map[string]source.Pos{}}
		r.read()
		b.Lifts[l.Mark] = l
		b.Job.Lifts = append(b.Job.Lifts, l)
	}
	b.checkGear()
}

// A liftReader makes the plan of one lift from what is written, and keeps where
// each of its inputs stands.
type liftReader struct {
	b      *reader
	d      *def.Lift
	l      *job.Lift
	at     map[string]source.Pos // by the path of the input, as in lift.Refusal
	hole   bool                  // something is missing that has been told already
	pounds bool                  // a mass is written in pounds
}

// read makes the plan and works it out.
func (r *liftReader) read() {
	before := len(r.b.Problems)
	r.unusedKeys()
	r.load()
	if r.d.Trial.Written() {
		r.l.Trial = r.mm("trial", r.d.Trial)
	}
	r.layDown()
	if r.l.ByHand {
		r.hands()
	} else {
		r.rig()
	}
	r.notSaid()
	if !r.d.Mass.Written() {
		r.l.PoundsUsed = r.pounds
	}
	if r.hole {
		r.tellHoles(before)
		return
	}
	if r.l.ByHand {
		res, err := lift.Carry(r.l.HandPlan)
		if r.refused(err) {
			return
		}
		r.l.HandResult = res
		r.cautions(res.Cautions)
		return
	}
	res, err := lift.Compute(r.l.Plan)
	if r.refused(err) {
		return
	}
	r.l.Result = res
	r.unanswered(res.Unanswered)
	r.cautions(res.Cautions)
	r.floor(res.Dynamic)
}

// hands makes the plan of a lift by hand.
func (r *liftReader) hands() {
	p := &r.l.HandPlan
	p.Load, p.MayCarry = r.l.Plan.Load, lift.Kg(job.Kilograms(r.b.Job.Site.Heavy))
	p.DecidedBy, p.Reason = r.d.DecidedBy.Value, r.d.Because.Value
	for i, g := range r.d.Grips {
		field := index("grips", i)
		r.at[field] = g.Name.At
		p.Grips = append(p.Grips, lift.Pick{Name: g.Name.Value, At: r.point(field, g.Pick, "where "+source.Quote(g.Name.Value)+" takes hold")})
	}
}

// footingHelp says how what a load stands on is written.
const footingHelp = "footing: {pieces: how many, length: of one, width: of one, most: the share of the one that carries most}"

// layDown finds the spot where the load is laid down, and sees that its floor and
// what the load stands on are both known or both left out.
func (r *liftReader) layDown() {
	t, f := r.d.LayDown, r.d.Footing
	var floor source.Text
	if t.Written() {
		if spot, ok := r.b.Spots[t.Value]; ok {
			r.l.LayDown = spot
			floor = r.floorOf(spot)
		} else {
			r.b.Unknown(t, "lay-down spot", names.Keys(r.b.Spots), "lay-down")
			return
		}
	}
	switch {
	case !f.At.IsZero() && !floor.Written():
		r.b.Problems.Add(f.At, "no-floor", r.l.Mark+" has a footing, and nothing says what the floor carries", "lay-down: the spot, and at the spot floor: what its floor may carry")
	case f.At.IsZero() && floor.Written() && !r.l.ByHand:
		r.b.Problems.Warn(t.At, "look-at-lift", r.l.Mark+": the floor of "+t.Value+" carries "+floor.Value+", and nothing says what the load stands on there",
			footingHelp)
		r.b.Problems.Says(source.Fixed(r.l.Mark, "the floor of %s carries %s, and nothing says what the load stands on there", t.Value, floor.Value))
	}
}

// notSaid warns of what the lift can be computed without, and a person who signs
// for it asks for.
func (r *liftReader) notSaid() {
	d := r.d
	unsaid := func(missing bool, what, help string) {
		if missing {
			r.b.Problems.Warn(r.l.At, "look-at-lift", r.l.Mark+": "+what, help)
			r.b.Problems.Says(source.Fixed(r.l.Mark, what))
		}
	}
	known := d.Mass.Written() || len(d.Sections) > 0
	unsaid(known && !d.MassSource.Written() && d.MassFrom.Value != "estimated", "no scale or document is named for the mass", "mass-source: the scale ticket, the drawing or the sheet that says so")
	unsaid(d.Mass.Written() && !d.MassWithin.Written() && d.MassFrom.Value != "estimated", "the mass has no tolerance", "mass-within: by the scale, the drawing or the sheet")
	named := d.DecidedBy.Written() && d.Because.Written()
	unsaid(r.l.Plan.MaxTilt > usualTilt && !named, "a tilt over 2° is allowed, and nobody is named who decides on it", "decided-by: R. Ashdown, lift supervisor, and because: …")
	unsaid(len(d.Crew) == 0, "nothing says who must be there", "for example crew: [person in charge, crane driver, rigger]")
}

// floorOf is what is written of the floor of a spot.
func (r *liftReader) floorOf(s *job.Spot) source.Text {
	for _, ds := range r.b.Def.LayDown {
		if ds.Mark.Value == s.Mark {
			return ds.Floor
		}
	}
	return source.Text{}
}

// floor works out what the load does to the floor of its lay-down spot.
func (r *liftReader) floor(dynamic lift.Ratio) {
	spot, f := r.l.LayDown, r.d.Footing
	if spot == nil || f.At.IsZero() || !r.floorOf(spot).Written() {
		return
	}
	rated := r.floorOf(spot)
	n, _ := names.WholeNumber(f.Pieces)
	r.at["pieces"], r.at["mass"], r.at["most"] = f.Pieces.At, r.d.Mass.At, f.At
	in := lift.Floor{
		Rated:  lift.Kilopascal(r.amount("rated", rated, units.Pressure, units.Kilopascal)),
		Pieces: n,
		Length: r.mm("length", f.Length), Width: r.mm("width", f.Width), Most: r.share("most", f.Most),
	}
	if r.hole {
		return
	}
	load := r.l.Plan.Load
	res, err := lift.LayDown(load.Mass+load.MassTolerance, dynamic, in)
	if r.refused(err) {
		return
	}
	r.l.Floor = &res
	if res.Used > 1 {
		r.b.Problems.Add(f.At, "floor-overloaded", r.l.Mark+" presses "+res.Pressure.Up().In(r.l.Units())+" on the floor of "+spot.Mark+", which carries "+rated.Value,
			"spread it over longer or more pieces")
	}
}
