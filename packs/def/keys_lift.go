package def

import "matchmark/packs/source"

// The keys of lifts, of the gear that loads hang on, and of cranes.

// point makes a key with a place on a load: three lengths, x, y and z.
func point[T any](name, doc, example string, field func(*T) *[]source.Text) key[T] {
	return list(name, doc+" Three lengths: along x, y and z.", example, field)
}

var liftKind = &kind[Lift]{
	name:   "lift",
	doc:    "One load to be lifted: what it weighs, where its middle is, what it hangs on.",
	letter: "L",
	keys: append([]key[Lift]{
		text("what", "What is lifted.", "Upper casing", func(l *Lift) *source.Text { return &l.What }).must(),
		list("parts", "The parts that hang together.", "[casing]", func(l *Lift) *[]source.Text { return &l.Parts }),
		text("rig", "How the load hangs: slings to one hook, under a spreader, under a lifting beam, on two hooks, or in the hands of people.", "bridle",
			func(l *Lift) *source.Text { return &l.Rig }).oneOf("bridle", "spreader", "beam", "two hooks", "by hand").must(),
		text("origin", "The point from which x, y and z are measured, and which way they run; z runs up.",
			"middle of the four lugs; x toward the motor and y toward the discharge", func(l *Lift) *source.Text { return &l.Origin }).must(),
		text("mass", "The mass of what hangs, with all that stays in it.", "1480 kg", func(l *Lift) *source.Text { return &l.Mass }),
		text("mass-from", "How the mass is known.", "weighed", func(l *Lift) *source.Text { return &l.MassFrom }).oneOf("weighed", "drawing", "computed", "estimated"),
		text("mass-source", "The document or scale that the mass comes from.", "scale ticket 114", func(l *Lift) *source.Text { return &l.MassSource }),
		text("mass-within", "How far the mass may be off.", "3 %", func(l *Lift) *source.Text { return &l.MassWithin }).noneOrMore(),
		point("centre", "The centre of gravity.", "[60 mm, 185 mm, -250 mm]", func(l *Lift) *[]source.Text { return &l.Centre }).anySign(),
		list("centre-within", "How far the centre of gravity may be off: one length for all ways, or three.", "20 mm", func(l *Lift) *[]source.Text { return &l.CentreWithin }).noneOrMore(),
		items("sections", "Pieces of a body of revolution along x, from which mass and centre of gravity are worked out.",
			"[{what: shaft, shape: solid, from: 0 mm, length: 900 mm, outer: 80 mm, material: steel}]", massSectionKind, addMassSection),
		point("sections-from", "Where the end face stands from which the sections are measured.", "[-450 mm, 0 mm, 0 mm]", func(l *Lift) *[]source.Text { return &l.SectionsFrom }).anySign(),
		single("size", "The box that the load fills.", "{from: [-700 mm, -800 mm, -600 mm], to: [700 mm, 800 mm, 150 mm]}", sizeKind,
			func(l *Lift, at source.Pos) *LoadSize { l.Size.At = at; return &l.Size }),
		mapOf("ends", "The two points of the machine at which its level is looked at.",
			"{DE: {point: [-560 mm, 0 mm, 0 mm]}, NDE: {point: [560 mm, 0 mm, 0 mm]}}", endKind,
			func(l *Lift) *[]*LoadEnd { return &l.Ends }, func(e *LoadEnd) *source.Text { return &e.Name }),
		text("may-press", "The force that the load can take between its picks.", "4 kN", func(l *Lift) *source.Text { return &l.MayPress }).noneOrMore(),
		text("rated-by", "The family of standards by which the gear is rated; the two are never mixed.", "EN", func(l *Lift) *source.Text { return &l.RatedBy }).oneOf("EN", "US"),
		mapOf("lifting-points", "What the legs take hold of on the load, by the words that takes: uses, with what it may carry.",
			"{lug: {rated: 2 t, flattest: 45°, source: drawing 1180-7}}", liftingPointKind,
			func(l *Lift) *[]*LiftingPoint { return &l.Points }, func(p *LiftingPoint) *source.Text { return &p.Name }),
		mapOf("legs", "The legs, one for each pick; under a spreader or a beam its two drops.",
			"{front: {pick: [-560 mm, 0 mm, 0 mm], sling: round-3t, hitch: straight, length: 2 m}}", legKind,
			func(l *Lift) *[]*Leg { return &l.Legs }, func(g *Leg) *source.Text { return &g.Name }),
		mapOf("top-legs", "The two legs above a spreader; they have no pick.",
			"{front: {sling: round-3t, hitch: straight, length: 1.5 m}}", legKind,
			func(l *Lift) *[]*Leg { return &l.TopLegs }, func(g *Leg) *source.Text { return &g.Name }),
		text("bar", "The spreader or lifting beam, a piece of gear.", "beam-2t", func(l *Lift) *source.Text { return &l.Bar }),
		text("bail", "Where the bail of a lifting beam is set, along it from the end over the first pick; left out, where the load hangs level.",
			"560 mm", func(l *Lift) *source.Text { return &l.Bail }).noneOrMore(),
		list("top-gear", "Gear between the legs and the crane's hook.", "[ring-5t]", func(l *Lift) *[]source.Text { return &l.TopGear }),
		text("hook-height", "How high the legs meet above z = 0, where their lengths are to be chosen.", "1900 mm", func(l *Lift) *source.Text { return &l.HookHeight }).anySign(),
		text("aim", "The angle from horizontal that the flattest leg shall have, where the lengths are to be chosen.", "60°", func(l *Lift) *source.Text { return &l.Aim }),
		text("four-legs", "How four legs are counted; two carry unless a named person decides otherwise.", "two carry", func(l *Lift) *source.Text { return &l.FourLegs }).
			oneOf("two carry", "three of four", "matched slings"),
		one(decimalForm, "skew", "The skew factor of matched slings, 1.25 or more.", "1.25", func(l *Lift) *source.Text { return &l.Skew }),
		text("decided-by", "The person who decides on other than the usual figure.", "R. Ashdown, lift supervisor", func(l *Lift) *source.Text { return &l.DecidedBy }),
		text("because", "The reason for it.", "slings measured against each other on the day", func(l *Lift) *source.Text { return &l.Because }),
		one(decimalForm, "dynamic", "The factor for the hoist's own movement, 1 or more; left out, the published figure for its weight.", "1.1", func(l *Lift) *source.Text { return &l.Dynamic }),
		text("max-tilt", "How far the load may hang out of level; left out, 2°.", "2°", func(l *Lift) *source.Text { return &l.MaxTilt }).noneOrMore(),
		text("leg-error", "How far one leg may be off its length; left out, 10 mm.", "10 mm", func(l *Lift) *source.Text { return &l.LegError }).noneOrMore(),
		mapOf("grips", "Where each person takes hold, of a lift by hand.", "{gear side: {point: [-300 mm, 0 mm, 0 mm]}}", handholdKind,
			func(l *Lift) *[]*Handhold { return &l.Grips }, func(g *Handhold) *source.Text { return &g.Name }),
		text("crane", "The crane or hoist.", "station", func(l *Lift) *source.Text { return &l.Crane }),
		text("second-crane", "The hoist over the second pick, on two hooks.", "chain-hoist", func(l *Lift) *source.Text { return &l.SecondCrane }),
		text("upended-on", "The leg from which it hangs upright, where two hooks turn it between lying and upright, each by one leg, without a lifting bar; x, y and z are then those of the load as it lies.", "flange", func(l *Lift) *source.Text { return &l.UpendedOn }),
		single("tackle", "A tackle of blocks that hangs from the crane and carries the load.",
			"{parts: 4, sheaves: 4, hauled: down, rope: 900 kg, moving-block: 3 t, upper-block: 4 t, mass: 28 kg}", tackleKind,
			func(l *Lift, at source.Pos) *Tackle { l.Tackle.At = at; return &l.Tackle }),
		text("signed-plan", "The signed lift plan, which a critical lift needs.", "LP-12", func(l *Lift) *source.Text { return &l.SignedPlan }),
		text("pass-over", "How high the lowest point of the load has to be carried, margin counted in.", "1200 mm", func(l *Lift) *source.Text { return &l.PassOver }).noneOrMore(),
		text("stack", "How high the gear between the legs and the crane's hook is.", "350 mm", func(l *Lift) *source.Text { return &l.Stack }).noneOrMore(),
		text("temperatures", "The coldest and the hottest that slings and gear come to: of the air, and of what they touch. Chain with its hooks, links and rings counts with less of its rating above 200 °C; what else hangs in line does not go above it.", "5 to 40 C", func(l *Lift) *source.Text { return &l.Heat }),
		text("trial", "How high the trial lift goes; left out, 25 mm. A load that is drawn off hot has none, one that is put on hot has it cold.", "25 mm", func(l *Lift) *source.Text { return &l.Trial }),
		text("lay-down", "Where it is laid down.", "Y1", func(l *Lift) *source.Text { return &l.LayDown }).marks("Y"),
		single("footing", "What it stands on there, for the load on the floor.", "{pieces: 4, length: 1.2 m, width: 150 mm, most: 40 %}", footingKind,
			func(l *Lift, at source.Pos) *Footing { l.Footing.At = at; return &l.Footing }),
		list("supports", "What props or blocks are set while it is lifted.", "[two stands under the brackets]", func(l *Lift) *[]source.Text { return &l.Supports }),
		list("crew", "Who must be there. Each signs on the lift sheet of a lift by gear: name them one by one, or with their number, as two on tag lines; all count in the crew hours.", "[person in charge, crane driver, north tag line, south tag line]", func(l *Lift) *[]source.Text { return &l.Crew }),
		list("trial-stops", "What is looked at at the trial lift, besides the usual, while the load is still in its place.", "[joint open all round]",
			func(l *Lift) *[]source.Text { return &l.TrialStops }),
		list("stops", "Where the lift stops and is looked at going up out of its place, besides the usual places; where stops-in is left out, coming down too.",
			"[clear of the dowels]", func(l *Lift) *[]source.Text { return &l.Stops }),
		list("stops-in", "Where it stops coming down into its place, besides the usual places, in the order met.", "[dowels in line with their holes]",
			func(l *Lift) *[]source.Text { return &l.StopsIn }),
		text("note", "A remark for whoever rigs it.", "Sleeves on both slings.", func(l *Lift) *source.Text { return &l.Note }),
	}, applies(func(l *Lift) *Applies { return &l.Applies })...),
}

var sizeKind = &kind[LoadSize]{
	name: "size of a load",
	doc:  "The box that the load fills; its lowest z is the underside.",
	keys: []key[LoadSize]{
		point("from", "The corner of the least x, y and z.", "[-700 mm, -800 mm, -600 mm]", func(s *LoadSize) *[]source.Text { return &s.From }).anySign().must(),
		point("to", "The corner of the largest x, y and z.", "[700 mm, 800 mm, 150 mm]", func(s *LoadSize) *[]source.Text { return &s.To }).anySign().must(),
	},
}

var endKind = &kind[LoadEnd]{
	name: "end of a load",
	doc:  "A point at which the level of the load is looked at.",
	keys: []key[LoadEnd]{
		point("point", "Where it is.", "[-560 mm, 0 mm, 0 mm]", func(e *LoadEnd) *[]source.Text { return &e.Point }).anySign().must(),
	},
}

var handholdKind = &kind[Handhold]{
	name: "handhold",
	doc:  "Where one person takes hold.",
	keys: []key[Handhold]{
		point("point", "Where it is.", "[-300 mm, 0 mm, 0 mm]", func(g *Handhold) *[]source.Text { return &g.Pick }).anySign().must(),
	},
}

var legKind = &kind[Leg]{
	name: "leg",
	doc:  "One sling with the gear in its pull line.",
	keys: []key[Leg]{
		point("pick", "Where it takes hold of the load.", "[-560 mm, 0 mm, 0 mm]", func(g *Leg) *[]source.Text { return &g.Pick }).anySign(),
		text("takes", "What it takes hold of; its rating stands under lifting-points by the same words.", "lifting lug", func(g *Leg) *source.Text { return &g.Takes }),
		text("sling", "The sling, a piece of gear.", "round-3t", func(g *Leg) *source.Text { return &g.Sling }).must(),
		text("hitch", "How the sling takes hold.", "straight", func(g *Leg) *source.Text { return &g.Hitch }).oneOf("straight", "choker", "basket").must(),
		text("choke", "The angle in the choke, as it hangs or is measured.", "135°", func(g *Leg) *source.Text { return &g.Choke }),
		text("spread", "The angle between the two parts of a basket, or parallel; left out, it follows from the diameter and the length.", "30°", func(g *Leg) *source.Text { return &g.Spread }).noneOrMore(),
		text("around", "The diameter that a basket bears on.", "140 mm", func(g *Leg) *source.Text { return &g.Around }),
		text("heavier-part", "The share of its load that the part of a basket carries which carries more, half or over.", "60 %", func(g *Leg) *source.Text { return &g.Heavier }),
		flag("turns", "Whether the load is turned in its basket while it hangs.", "yes", func(g *Leg) *source.Text { return &g.Turns }),
		text("length", "Its length between bearing points, shackles and links counted in; a basket's to the axis of what it goes round.", "2007 mm", func(g *Leg) *source.Text { return &g.Length }),
		list("gear", "The gear in its pull line.", "[shackle-2t]", func(g *Leg) *[]source.Text { return &g.Gear }),
		text("off-line", "The angle at which its shackles are pulled off their own line.", "45°", func(g *Leg) *source.Text { return &g.OffLine }).noneOrMore(),
		list("axis", "The way its eyebolt points out of the load: up, or three numbers along x, y and z.", "up", func(g *Leg) *[]source.Text { return &g.Axis }),
	},
}

var liftingPointKind = &kind[LiftingPoint]{
	name: "lifting point",
	doc:  "What a leg takes hold of on the load: a lug, a trunnion, a welded eye.",
	keys: []key[LiftingPoint]{
		text("rated", "What one of them may carry along its leg.", "2 t", func(p *LiftingPoint) *source.Text { return &p.Rated }).must(),
		text("flattest", "The flattest leg for which that holds, from horizontal; 90° is a pull straight up only.", "45°", func(p *LiftingPoint) *source.Text { return &p.Flattest }).must(),
		text("source", "The drawing or the plate that says so.", "drawing 1180-7", func(p *LiftingPoint) *source.Text { return &p.Source }).must(),
		flag("turns", "Whether that holds for a pull all the way round, as on a trunnion or a swivel eye of a load that is turned.", "yes", func(p *LiftingPoint) *source.Text { return &p.Turns }),
	},
}

var tackleKind = &kind[Tackle]{
	name: "tackle",
	doc:  "A tackle of blocks; its upper block hangs from the crane.",
	keys: []key[Tackle]{
		number("parts", "How many parts of rope hold the moving block.", "4", func(t *Tackle) *source.Text { return &t.Parts }).must(),
		number("sheaves", "How many sheaves the rope turns over on its way to the hand or the winch, lead blocks counted in.", "4", func(t *Tackle) *source.Text { return &t.Sheaves }).must(),
		text("hauled", "Which way the line is hauled: down from the upper block, or up from the moving one.", "down", func(t *Tackle) *source.Text { return &t.Hauled }).oneOf("down", "up").must(),
		text("rope", "What one part of its rope may carry.", "900 kg", func(t *Tackle) *source.Text { return &t.Rope }).must(),
		text("moving-block", "What the moving block may carry.", "3 t", func(t *Tackle) *source.Text { return &t.MovingBlock }).must(),
		text("upper-block", "What the upper block may carry.", "4 t", func(t *Tackle) *source.Text { return &t.UpperBlock }).must(),
		text("mass", "The mass of both blocks and their rope.", "28 kg", func(t *Tackle) *source.Text { return &t.Mass }).must(),
	},
}

var footingKind = &kind[Footing]{
	name: "footing",
	doc:  "The pieces that a load stands on where it is laid down, all alike.",
	keys: []key[Footing]{
		number("pieces", "How many pieces there are.", "4", func(f *Footing) *source.Text { return &f.Pieces }).must(),
		text("length", "The length of one on the floor.", "1.2 m", func(f *Footing) *source.Text { return &f.Length }).must(),
		text("width", "The width of one on the floor.", "150 mm", func(f *Footing) *source.Text { return &f.Width }).must(),
		text("most", "The share of the load on the piece that carries most.", "40 %", func(f *Footing) *source.Text { return &f.Most }),
	},
}

var massSectionKind = &kind[MassSection]{
	name: "section of a body",
	doc:  "One piece of a body of revolution along x.",
	keys: []key[MassSection]{
		text("what", "What it is.", "shaft", func(s *MassSection) *source.Text { return &s.What }).must(),
		text("shape", "Its shape.", "solid", func(s *MassSection) *source.Text { return &s.Shape }).oneOf("solid", "hollow", "cone", "disc", "blades").must(),
		text("from", "How far its near face is from the end face; of a disc and of blades the middle.", "0 mm", func(s *MassSection) *source.Text { return &s.From }).anySign().must(),
		text("length", "Its length.", "900 mm", func(s *MassSection) *source.Text { return &s.Length }),
		text("outer", "Its outside diameter; of a cone that of the near face.", "80 mm", func(s *MassSection) *source.Text { return &s.Outer }),
		text("outer-far", "The outside diameter of a cone at its far face.", "60 mm", func(s *MassSection) *source.Text { return &s.OuterFar }),
		text("bore", "Its bore.", "40 mm", func(s *MassSection) *source.Text { return &s.Bore }).noneOrMore(),
		number("count", "How many blades there are.", "24", func(s *MassSection) *source.Text { return &s.Count }),
		text("each", "The mass of one blade.", "0.8 kg", func(s *MassSection) *source.Text { return &s.Each }),
		text("material", "What it is made of, by which the density is looked up.", "steel", func(s *MassSection) *source.Text { return &s.Material }),
		one(decimalForm, "density", "Its density in kg/m³, where the material is not in the table.", "7850", func(s *MassSection) *source.Text { return &s.Density }),
		text("within", "How far its mass may be off.", "3 %", func(s *MassSection) *source.Text { return &s.Within }).noneOrMore(),
		flag("cut", "Whether it is taken away: a hole, a keyway.", "yes", func(s *MassSection) *source.Text { return &s.Cut }),
	},
}

// addMassSection adds an empty section to a lift.
func addMassSection(l *Lift, at source.Pos) *MassSection {
	s := &MassSection{At: at}
	l.Sections = append(l.Sections, s)
	return s
}

var gearKind = &kind[Gear]{
	name: "piece of gear",
	doc:  "One kind of piece that loads hang on.",
	keys: []key[Gear]{
		text("what", "What it is called.", "Round sling 3 t", func(g *Gear) *source.Text { return &g.What }).must(),
		text("kind", "What sort of piece it is; a link is anything pulled in line.", "round sling", func(g *Gear) *source.Text { return &g.Kind }).
			oneOf("wire rope", "chain", "web sling", "round sling", "fibre rope", "shackle", "shoulder eyebolt", "plain eyebolt", "hook", "link", "spreader", "beam").must(),
		text("rated", "Its rated load, used straight.", "3 t", func(g *Gear) *source.Text { return &g.Rated }).must(),
		text("rated-by", "The family of standards on its tag, where it is not that of the lift.", "EN", func(g *Gear) *source.Text { return &g.RatedBy }).oneOf("EN", "US"),
		text("mass", "Its mass.", "4 kg", func(g *Gear) *source.Text { return &g.Mass }),
		text("rope", "The diameter of a wire rope.", "16 mm", func(g *Gear) *source.Text { return &g.Rope }),
		text("fibre", "What a web or round sling is woven of; it decides how hot it may become.", "polyester", func(g *Gear) *source.Text { return &g.Fibre }).oneOf("polyester", "polyamide", "polypropylene"),
		text("seat", "Where in a hook the load sits; out of its saddle nothing is lifted.", "saddle", func(g *Gear) *source.Text { return &g.Seat }).
			oneOf("saddle", "quarter out", "half out", "three quarters out", "tip"),
		text("thread", "The diameter of the thread of an eyebolt.", "24 mm", func(g *Gear) *source.Text { return &g.Thread }),
		flag("tucked", "Whether a wire rope is spliced by hand.", "yes", func(g *Gear) *source.Text { return &g.Tucked }),
		list("left-at", "The maker's own shares of the rating by the angle of pull.", "[100 % to 5°, 70 % to 45°]", func(g *Gear) *[]source.Text { return &g.LeftAt }),
		text("left-source", "The maker's table that they come from.", "maker's sheet 12", func(g *Gear) *source.Text { return &g.LeftSource }),
		text("temperatures", "The coldest and the hottest at which its maker lets it carry its whole rating, in place of those of its kind; hotter or colder nothing is lifted with it.", "-20 to 300 C", func(g *Gear) *source.Text { return &g.Heat }),
		text("temperatures-source", "The tag or the maker's sheet that says so.", "maker's tag", func(g *Gear) *source.Text { return &g.HeatSource }),
		text("length", "The length of a bar between its end pins.", "1120 mm", func(g *Gear) *source.Text { return &g.Length }),
		text("rise", "How far the bail of a lifting beam stands above its end pins.", "180 mm", func(g *Gear) *source.Text { return &g.Rise }).noneOrMore(),
		list("ends", "What each end of a bar may carry, over the first pick and over the second; left out, half its rating.", "[1 t, 800 kg]", func(g *Gear) *[]source.Text { return &g.Ends }),
		text("flattest", "The flattest legs above a spreader for which it is rated, from horizontal.", "60°", func(g *Gear) *source.Text { return &g.Flattest }),
		text("top-lugs", "What each lug on top of a spreader may carry along its leg.", "1.5 t", func(g *Gear) *source.Text { return &g.TopLugs }),
		text("may-press", "The force that a spreader may be pressed with along its length.", "8 kN", func(g *Gear) *source.Text { return &g.MayPress }).noneOrMore(),
		text("lug-rise", "How far the lugs on top of a spreader stand above its middle line.", "60 mm", func(g *Gear) *source.Text { return &g.LugRise }).noneOrMore(),
		text("may-bend", "The bending that a bar may take.", "3000 N·m", func(g *Gear) *source.Text { return &g.MayBend }),
	},
}

var craneKind = &kind[Crane]{
	name: "crane",
	doc:  "A crane or hoist.",
	keys: []key[Crane]{
		text("what", "What it is called.", "Station crane", func(c *Crane) *source.Text { return &c.What }).must(),
		text("rated", "What it may lift at the reach of the lift, all deductions made.", "3.2 t", func(c *Crane) *source.Text { return &c.Rated }).must(),
		text("block", "The mass of its hook block, where its chart counts it.", "45 kg", func(c *Crane) *source.Text { return &c.Block }).noneOrMore(),
		text("high-hook", "How high its hook goes above the floor.", "6.2 m", func(c *Crane) *source.Text { return &c.HighHook }),
	},
}

// gearKey and craneKey stand in a definition and, to say otherwise, in a job file.
func gearKey[T any](field func(*T) *[]*Gear) key[T] {
	return mapOf("gear", "The pieces that loads hang on.", "{round-3t: {what: Round sling 3 t, kind: round sling, rated: 3 t}}", gearKind,
		field, func(g *Gear) *source.Text { return &g.Key })
}

func craneKey[T any](field func(*T) *[]*Crane) key[T] {
	return mapOf("cranes", "The cranes and hoists.", "{station: {what: Station crane, rated: 3.2 t}}", craneKind,
		field, func(c *Crane) *source.Text { return &c.Key })
}
