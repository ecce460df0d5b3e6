package lifting

import (
	"errors"
	"matchmark/packs/def"
	"matchmark/packs/job"
	"matchmark/packs/lift"
	"matchmark/packs/names"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// stopHelp and lookHelp say what to do about a caution.
var (
	stopHelp = map[lift.CautionCode]string{
		lift.Overloaded: "take a larger piece, steeper legs or another hitch",
		lift.NoReach:    "use shorter legs or a flatter rig, or carry the load less high",
		lift.OutOfLevel: "make the legs the lengths that hang it level, or write max-tilt: with the site's agreement",
		lift.OverTeam:   "take another person or a hoist, or write decided-by: and because:",
	}
	lookHelp = map[lift.CautionCode]string{
		lift.FlatLeg:      "use longer legs; 60° is the aim",
		lift.TouchyLength: "measure the legs against each other, or use longer ones",
		lift.NearlySlack:  "look at the centre of gravity and the lengths",
		lift.SlackLeg:     "shorten it, or count the load without it",
		lift.HighCentre:   "take picks above the centre of gravity where there are any",
		lift.LooseMass:    "mass-within: 5 %, or weigh it",
		lift.LooseCentre:  "centre-within: 20 mm",
		lift.NoHeadroom:   "write size:, pass-over: and stack:, and high-hook: at the crane",
		lift.CriticalLift: "signed-plan: LP-12, the lift plan that a competent person has signed",
	}
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
			Supports: names.Texts(dl.Supports), Crew: names.Texts(dl.Crew), Stops: names.Texts(dl.Stops), Trial: usualTrial,
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
	b    *reader
	d    *def.Lift
	l    *job.Lift
	at   map[string]source.Pos // by the path of the input, as in lift.Refusal
	hole bool                  // something is missing that has been told already
}

// read makes the plan and works it out.
func (r *liftReader) read() {
	before := len(r.b.Problems)
	r.unusedKeys()
	r.load()
	if r.d.Trial.Written() {
		r.l.Trial = r.mm("trial", r.d.Trial, "25 mm")
	}
	r.layDown()
	if r.l.ByHand {
		r.hands()
	} else {
		r.rig()
	}
	r.notSaid()
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
	r.cautions(res.Cautions)
	r.floor(res.Dynamic)
}

// tellHoles takes the problems of what is written of the lift, those from number
// before on, as the reasons on paper why it cannot be computed.
func (r *liftReader) tellHoles(before int) {
	for _, p := range r.b.Problems[before:] {
		if p.Severity == source.Error && p.Code != "not-computed" {
			r.l.Because = append(r.l.Because, p.Message)
		}
	}
	if len(r.l.Because) == 0 {
		// The reader has told of a key that is missing.
		r.l.Because = append(r.l.Because, "a key that it needs is not written")
	}
}

// refused turns the reasons why a lift cannot be computed into problems.
func (r *liftReader) refused(err error) bool {
	var rs lift.Refusals
	if !errors.As(err, &rs) {
		return false
	}
	for _, no := range rs {
		r.l.Because = append(r.l.Because, no.Message)
		r.b.Problems.Add(r.place(no.Field), "not-computed", r.l.Mark+" cannot be computed: "+no.Message, no.Help)
	}
	return true
}

// place is where the input of a path stands: itself, or what it belongs to.
func (r *liftReader) place(field string) source.Pos {
	for field != "" {
		if at, ok := r.at[field]; ok && !at.IsZero() {
			return at
		}
		field = parentField(field)
	}
	return r.l.At
}

// parentField drops the last step of a path: legs[2].sling.rated, legs[2].sling,
// legs[2], legs.
func parentField(field string) string {
	for i := len(field) - 1; i > 0; i-- {
		if field[i] == '.' || field[i] == '[' {
			return field[:i]
		}
	}
	return ""
}

// quiet are the cautions that the sheet prints and the check is silent about:
// they ask for nothing more than what the sheet says, stand there with the name of
// who decided, or have been told of at the gear itself.
var quiet = map[lift.CautionCode]bool{lift.BelowAim: true, lift.NamedSharing: true, lift.OverTeam: true, lift.NoGearWeight: true}

// cautions turns what the calculation has to say into problems: errors where the
// lift must not be made.
func (r *liftReader) cautions(cs []lift.Caution) {
	for _, c := range cs {
		message := r.l.Mark + ": " + c.Message
		switch {
		case c.Stop:
			r.b.Problems.Add(r.place(c.Field), "must-not-lift", message, stopHelp[c.Code])
		case c.Code == lift.CriticalLift && r.l.SignedPlan != "":
		case !quiet[c.Code]:
			r.b.Problems.Warn(r.place(c.Field), "look-at-lift", message, lookHelp[c.Code])
		}
	}
}

// hands makes the plan of a lift by hand.
func (r *liftReader) hands() {
	p := &r.l.HandPlan
	p.Load, p.MayCarry = r.l.Plan.Load, lift.Kg(job.Kilograms(r.b.Job.Site.Heavy))
	p.DecidedBy, p.Reason = r.d.DecidedBy.Value, r.d.Because.Value
	for i, g := range r.d.Grips {
		field := index("grips", i)
		r.at[field] = g.Name.At
		p.Grips = append(p.Grips, lift.Pick{Name: g.Name.Value, At: r.point(field, g.Pick, true)})
	}
}

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
		r.b.Problems.Add(f.At, "no-floor", r.l.Mark+" has a footing, and nothing says what the floor carries", "lay-down: Y1, and at Y1 floor: 20 kN/m2")
	case f.At.IsZero() && floor.Written() && !r.l.ByHand:
		r.b.Problems.Warn(t.At, "look-at-lift", r.l.Mark+": the floor of "+t.Value+" carries "+floor.Value+", and nothing says what the load stands on there",
			"footing: {pieces: 4, length: 1.2 m, width: 150 mm, most: 40 %}")
	}
}

// notSaid warns of what the lift can be computed without, and a person who signs
// for it asks for.
func (r *liftReader) notSaid() {
	d := r.d
	warn := func(missing bool, what, help string) {
		if missing {
			r.b.Problems.Warn(r.l.At, "look-at-lift", r.l.Mark+": "+what, help)
		}
	}
	known := d.Mass.Written() || len(d.Sections) > 0
	warn(known && !d.MassSource.Written() && d.MassFrom.Value != "estimated", "no scale or document is named for the mass", "mass-source: scale ticket 114")
	warn(d.Mass.Written() && !d.MassWithin.Written() && d.MassFrom.Value != "estimated", "the mass has no tolerance", "mass-within: 3 %")
	named := d.DecidedBy.Written() && d.Because.Written()
	warn(r.l.Plan.MaxTilt > usualTilt && !named, "a tilt over 2° is allowed, and nobody is named who decides on it", "decided-by: R. Ashdown, lift supervisor, and because: …")
	warn(len(d.Crew) == 0, "nothing says who must be there", "crew: [person in charge, crane driver, rigger]")
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
		Rated:  lift.Kilopascal(r.amount("rated", rated, units.Pressure, units.Kilopascal, "20 kN/m2")),
		Pieces: n,
		Length: r.mm("length", f.Length, "1.2 m"), Width: r.mm("width", f.Width, "150 mm"), Most: r.share("most", f.Most, "40 %"),
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
		r.b.Problems.Add(f.At, "floor-overloaded", r.l.Mark+" presses "+r.l.PressureText()+" on the floor of "+spot.Mark+", which carries "+rated.Value,
			"spread it over longer or more pieces")
	}
}
