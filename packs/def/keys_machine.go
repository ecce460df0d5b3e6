package def

import "matchmark/packs/source"

// The keys of a definition as a whole, of the machine, the job, the places and
// the options.

var definitionKind = &kind[Definition]{
	name: "definition",
	doc:  "One machine and the work on it.",
	keys: []key[Definition]{
		text("pack", "The number of this language of keys: 1.", "1",
			func(d *Definition) *source.Text { return &d.Pack }).oneOf("1").must(),
		single("equipment", "The machine.", "{tag: FN-11, name: Kiln exhaust fan}", equipmentKind,
			func(d *Definition, at source.Pos) *Equipment { d.Equipment.At = at; return &d.Equipment }).must(),
		single("job", "The job that the pack is printed for; may stand in a job file instead.",
			"{number: WO-5512, title: Bearing change, revision: A, issued: 2026-03-02}", orderKind,
			func(d *Definition, at source.Pos) *Order { d.Job.At = at; return &d.Job }),
		list("include", "Files beside this one whose things belong to the definition as well: common cautions, joints, instruments.", "[cautions.yaml, instruments.yaml]",
			func(d *Definition) *[]source.Text { return &d.Include }),
		mapOf("places", "Groups of places that things repeat over, as the two ends of a shaft.",
			"{end: {DE: {name: drive end}, NDE: {name: non-drive end}}}", groupKind,
			func(d *Definition) *[]*Group { return &d.Places }, func(g *Group) *source.Text { return &g.Name }),
		mapOf("options", "What a machine of this type may have or lack.", "{probes: {what: Vibration probes, fitted: yes}}", optionKind,
			func(d *Definition) *[]*Option { return &d.Options }, func(o *Option) *source.Text { return &o.Key }),
		mapOf("parts", "Everything that is moved, counted or measured against.", "{bearing: {name: Roller bearing}}", partKind,
			func(d *Definition) *[]*Part { return &d.Parts }, func(p *Part) *source.Text { return &p.Key }),
		mapOf("instruments", "What readings are taken with.", "{depth-gauge: {name: Depth gauge}}", instrumentKind,
			func(d *Definition) *[]*Instrument { return &d.Instruments }, func(i *Instrument) *source.Text { return &i.Key }),
		mapOf("dimensions", "What is measured, by its mark.", "{D7: {what: Lock nut stand-off}}", dimensionKind,
			func(d *Definition) *[]*Dimension { return &d.Dimensions }, func(m *Dimension) *source.Text { return &m.Mark }),
		mapOf("containers", "What parts are kept in, by its mark.", "{C2: {name: Lock nuts and washers, kind: bag}}", containerKind,
			func(d *Definition) *[]*Container { return &d.Containers }, func(c *Container) *source.Text { return &c.Mark }),
		mapOf("big", "Parts too big for a container, by the mark of their tag.", "{B1: {part: cap}}", bigKind,
			func(d *Definition) *[]*BigPart { return &d.BigParts }, func(b *BigPart) *source.Text { return &b.Mark }),
		mapOf("lay-down", "Places on the floor for big parts, by their mark.", "{Y1: {what: Timbers beside the housing}}", spotKind,
			func(d *Definition) *[]*Spot { return &d.LayDown }, func(s *Spot) *source.Text { return &s.Mark }),
		mapOf("sets", "Matched sets, by their mark.", "{S1: {what: Housing and its cap}}", setKind,
			func(d *Definition) *[]*Set { return &d.Sets }, func(s *Set) *source.Text { return &s.Mark }),
		mapOf("stacks", "Orders of parts from one side outward, by their mark.",
			"{K1: {what: Packing, from: the shaft end, order: three rings and the lantern}}", stackKind,
			func(d *Definition) *[]*Stack { return &d.Stacks }, func(s *Stack) *source.Text { return &s.Mark }),
		mapOf("joints", "Fasteners that are tightened together, by their mark.", "{J1: {what: Cap bolts}}", jointKind,
			func(d *Definition) *[]*Joint { return &d.Joints }, func(j *Joint) *source.Text { return &j.Mark }),
		mapOf("alignments", "Couplings that are aligned, by their mark.", "{A1: {what: Motor to pump, movable: motor, stationary: pump, method: rim and face, reads: 0.01 mm, feet: [{name: front, at: 420 mm}, {name: rear, at: 1250 mm}]}}", alignmentKind,
			func(d *Definition) *[]*Alignment { return &d.Alignments }, func(a *Alignment) *source.Text { return &a.Mark }),
		mapOf("heats", "What is heated to come off or to go on, by its mark.", "{H1: {what: Hub, hub: {part: hub, material: carbon steel, outside: 210 mm, length: 150 mm}, shaft: {part: shaft, material: carbon steel, behind: 600 mm}}}", heatKind,
			func(d *Definition) *[]*Heat { return &d.Heats }, func(h *Heat) *source.Text { return &h.Mark }),
		mapOf("holds", "Points where the work stops for a named person, by their mark.",
			"{W1: {kind: hold, what: Engineer has seen both bearings}}", holdKind,
			func(d *Definition) *[]*Hold { return &d.Holds }, func(h *Hold) *source.Text { return &h.Mark }),
		mapOf("cautions", "Hazard notes, printed before the steps that name them.",
			"{puller: {signal: warning, hazard: Puller under load., avoid: Stand to the side.}}", cautionKind,
			func(d *Definition) *[]*Caution { return &d.Cautions }, func(c *Caution) *source.Text { return &c.Key }),
		mapOf("openings", "Holes that dirt or tools can fall into.", "{housing: {what: Bearing housing, cover: taped sheet}}", openingKind,
			func(d *Definition) *[]*Opening { return &d.Openings }, func(o *Opening) *source.Text { return &o.Key }),
		mapOf("isolations", "Points where the machine is cut off from its energy.",
			"{motor: {point: Breaker 52-3, energy: electric, state: racked out, proved: start button pressed}}", isolationKind,
			func(d *Definition) *[]*Isolation { return &d.Isolations }, func(i *Isolation) *source.Text { return &i.Key }),
		mapOf("permits", "Papers of the site without which a step is not begun.", "{hot-work: {what: Hot work permit}}", permitKind,
			func(d *Definition) *[]*Permit { return &d.Permits }, func(p *Permit) *source.Text { return &p.Key }),
		mapOf("tools", "Tools to gather before the work.", "{puller: {what: Two-leg puller}}", supplyKind,
			func(d *Definition) *[]*Supply { return &d.Tools }, func(s *Supply) *source.Text { return &s.Key }),
		mapOf("spares", "Spares to gather; parts that are always renewed are on the list without being named here.",
			"{bearing: {part: bearing}}", supplyKind,
			func(d *Definition) *[]*Supply { return &d.Spares }, func(s *Supply) *source.Text { return &s.Key }),
		mapOf("consumables", "Oil, rags and the like.", "{oil: {what: Oil VG 68, count: 5 l}}", supplyKind,
			func(d *Definition) *[]*Supply { return &d.Consumables }, func(s *Supply) *source.Text { return &s.Key }),
		mapOf("lifts", "Loads that are lifted, by their mark.",
			"{L1: {what: Upper casing, rig: bridle, origin: middle of the lugs}}", liftKind,
			func(d *Definition) *[]*Lift { return &d.Lifts }, func(l *Lift) *source.Text { return &l.Mark }),
		gearKey(func(d *Definition) *[]*Gear { return &d.Gear }),
		craneKey(func(d *Definition) *[]*Crane { return &d.Cranes }),
		sections("steps", "The work in its order: sections of steps, and where earlier sections are put back.",
			"[{section: Covers, steps: [{step: open, do: Take the cover off.}]}]").must(),
	},
}

var jobFileKind = &kind[JobFile]{
	name: "job file",
	doc:  "What one job says otherwise than the definition.",
	keys: []key[JobFile]{
		single("job", "The job.", "{number: WO-5513, revision: A, issued: 2026-04-01}", orderKind,
			func(j *JobFile, at source.Pos) *Order { j.Job.At = at; return &j.Job }),
		single("equipment", "The machine on which this job is done.", "{tag: FN-12, serial: \"7732\"}", equipmentKind,
			func(j *JobFile, at source.Pos) *Equipment { j.Equipment.At = at; return &j.Equipment }),
		choices("options", "Which options this machine has, and which builds.", "{probes: no, casing: late}",
			func(j *JobFile) *[]Named { return &j.Options }),
		gearKey(func(j *JobFile) *[]*Gear { return &j.Gear }),
		craneKey(func(j *JobFile) *[]*Crane { return &j.Cranes }),
	},
}

var equipmentKind = &kind[Equipment]{
	name: "equipment",
	doc:  "The machine on the bench.",
	keys: []key[Equipment]{
		text("tag", "The number that hangs on the machine.", "FN-11", func(e *Equipment) *source.Text { return &e.Tag }),
		text("name", "What the machine is called.", "Kiln exhaust fan", func(e *Equipment) *source.Text { return &e.Name }),
		text("serial", "The maker's serial number.", "\"7731\"", func(e *Equipment) *source.Text { return &e.Serial }),
		text("maker", "Who made it.", "Tarnholt", func(e *Equipment) *source.Text { return &e.Maker }),
		text("type", "The maker's type.", "TH-600", func(e *Equipment) *source.Text { return &e.Type }),
		text("location", "Where it stands.", "Bay 4", func(e *Equipment) *source.Text { return &e.Location }),
	},
}

var orderKind = &kind[Order]{
	name: "job",
	doc:  "The job that the pack is printed for.",
	keys: []key[Order]{
		text("number", "The number of the work order; it names the files.", "WO-5512", func(o *Order) *source.Text { return &o.Number }),
		text("title", "What the job is.", "Bearing change, both ends", func(o *Order) *source.Text { return &o.Title }),
		text("revision", "The revision of the pack.", "B", func(o *Order) *source.Text { return &o.Revision }),
		one(dateForm, "issued", "The day of issue, year-month-day.", "2026-03-02", func(o *Order) *source.Text { return &o.Issued }),
		text("scope", "What is done and what is left alone.", "Both bearings out; the rotor stays in.", func(o *Order) *source.Text { return &o.Scope }),
		one(dateForm, "starts", "The day on which the work begins, for the dates of holds in the index of an outage.", "2026-04-13", func(o *Order) *source.Text { return &o.Starts }),
		number("hours-a-day", "How many hours are worked on each day from then, 24 at most; without it holds are told by hours.", "10", func(o *Order) *source.Text { return &o.HoursADay }),
		text("planner", "Who planned it.", "R. Ashdown", func(o *Order) *source.Text { return &o.Planner }),
	},
}

// groupKind reads either places of their own, one map each, or names: with
// numbers or letters that stand for all of them.
var groupKind = &kind[Group]{
	name: "group of places",
	doc:  "Places that a thing repeats over: one map for each, or names: for many alike.",
	keys: []key[Group]{
		names("names", "The places when they have no more than a name: a range of numbers, also with letters before them (M1 to M7), or a list; no name stands twice in the file.", "1 to 16", addPlaces),
		text("counted-from", "Where the counting starts.", "the inlet side", func(g *Group) *source.Text { return &g.CountedFrom }),
		text("viewed-from", "Where one stands to look at all of them.", "the motor", func(g *Group) *source.Text { return &g.ViewedFrom }),
	},
	rest: func(r *reader, g *Group, p pair) {
		pl := &Place{Key: r.ownKey(p.key, "place", "")}
		placeKind.fill(r, pl, p.value, p.key.At)
		g.Places = append(g.Places, pl)
	},
	restShape: placeKind,
}

// addPlaces adds places that have no more than a name.
func addPlaces(g *Group, keys []source.Text) {
	for _, k := range keys {
		g.Places = append(g.Places, &Place{Key: k})
	}
}

var placeKind = &kind[Place]{
	name: "place",
	doc:  "One of the places of a group; its key is printed after the slash of a mark.",
	keys: []key[Place]{
		text("name", "What the place is called.", "drive end", func(p *Place) *source.Text { return &p.Name }),
		text("viewed-from", "Where one stands to look at it; clock positions go by it.", "the motor", func(p *Place) *source.Text { return &p.ViewedFrom }),
	},
}

var optionKind = &kind[Option]{
	name: "option",
	doc:  "Something that a machine of this type may have or lack (fitted), or of which there are several builds.",
	keys: []key[Option]{
		text("what", "What it is.", "Vibration probes", func(o *Option) *source.Text { return &o.What }).must(),
		flag("fitted", "Whether the machine has it.", "yes", func(o *Option) *source.Text { return &o.Fitted }),
		namedTexts("builds", "The builds that there are, each with the machines that have it; serials are compared with that of the machine.",
			"{early: serials up to 880, late: serials from 881}", func(o *Option) *[]Named { return &o.Builds }),
		text("chosen", "The build of this machine, where no serial number tells it.", "late", func(o *Option) *source.Text { return &o.Chosen }),
	},
}

var instrumentKind = &kind[Instrument]{
	name: "instrument",
	doc:  "What a reading is taken with.",
	keys: []key[Instrument]{
		text("name", "What it is called.", "Depth gauge", func(i *Instrument) *source.Text { return &i.Name }).must(),
		text("range", "From where to where it reads.", "0 to 150 mm", func(i *Instrument) *source.Text { return &i.Range }),
		text("reads", "Its smallest step.", "0.02 mm", func(i *Instrument) *source.Text { return &i.Reads }),
		text("number", "The number of the very instrument, if one is meant; of several, that of the first.", "DG-04", func(i *Instrument) *source.Text { return &i.Number }),
		number("count", "How many of them are used at once, 20 at the most; 1 if not said. Each gets a line for its number; by: dial/1 and by: dial/2 tell which of them takes which reading.", "3", func(i *Instrument) *source.Text { return &i.Count }),
	},
}
