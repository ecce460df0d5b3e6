package def

import "matchmark/packs/source"

// The keys of the work: steps and sections, and what guards them.

var holdKind = &kind[Hold]{
	name:   "hold",
	doc:    "A point where the work stops, or may stop, for a named person.",
	letter: "W",
	keys: []key[Hold]{
		text("kind", "Whether the work stops (hold) or the person is called and may come (witness).", "hold",
			func(h *Hold) *source.Text { return &h.Kind }).oneOf("hold", "witness").must(),
		text("what", "What must have been seen.", "Engineer has seen both bearings.", func(h *Hold) *source.Text { return &h.What }).must(),
		text("releases", "The role of who releases it.", "rotating equipment engineer", func(h *Hold) *source.Text { return &h.Releases }),
	},
}

var cautionKind = &kind[Caution]{
	name: "caution",
	doc:  "A hazard note, printed before each step that names it.",
	keys: []key[Caution]{
		text("signal", "The signal word: danger kills, warning may kill, caution hurts, notice harms the machine.", "warning",
			func(c *Caution) *source.Text { return &c.Signal }).oneOf("danger", "warning", "caution", "notice").must(),
		list("signs", "Signs by their ISO 7010 numbers.", "[W024, M004]", func(c *Caution) *[]source.Text { return &c.Signs }),
		text("hazard", "What the hazard is.", "Puller under load.", func(c *Caution) *source.Text { return &c.Hazard }).must(),
		text("result", "What it does to people or machine.", "A slipping claw throws the puller.", func(c *Caution) *source.Text { return &c.Result }),
		text("avoid", "How to keep clear of it.", "Tie the puller to the shaft.", func(c *Caution) *source.Text { return &c.Avoid }).must(),
		text("rule", "The rule it leans on.", "site procedure for pullers", func(c *Caution) *source.Text { return &c.Rule }),
	},
}

var openingKind = &kind[Opening]{
	name: "opening",
	doc:  "A hole that dirt or tools can fall into, from the step that opens it to the step that closes it.",
	keys: append([]key[Opening]{
		text("what", "What stands open.", "Bearing housing", func(o *Opening) *source.Text { return &o.What }).must(),
		each(func(o *Opening) *[]source.Text { return &o.Each }),
		text("cover", "What it is covered with while it is open.", "taped sheet", func(o *Opening) *source.Text { return &o.Cover }).must(),
		flag("enclosed", "Whether a person can go in, with body or head.", "yes", func(o *Opening) *source.Text { return &o.Enclosed }),
	}, applies(func(o *Opening) *Applies { return &o.Applies })...),
}

var sectionKind = &kind[Section]{
	name: "section",
	doc:  "A run of steps under one heading.",
	keys: append([]key[Section]{
		varying("section", "The heading.", "Bearings", func(s *Section) *Varying { return &s.Name }).must(),
		each(func(s *Section) *[]source.Text { return &s.Each }),
		items("steps", "The steps, in their order.", "[{step: open, do: Take the cover off.}]", stepKind, addStep).must(),
	}, applies(func(s *Section) *Applies { return &s.Applies })...),
}

var reverseKind = &kind[Section]{
	name: "put-back",
	doc:  "The place where the put-back rows of earlier sections are printed, in reverse order.",
	keys: []key[Section]{
		list("reverse", "The sections to be put back, by their headings, in the order of putting back.", "[Bearings, Coupling]",
			func(s *Section) *[]source.Text { return &s.Reverse }).must(),
	},
}

// addStep adds an empty step to a section.
func addStep(s *Section, at source.Pos) *Step {
	st := &Step{At: at}
	s.Steps = append(s.Steps, st)
	return st
}

var stepKind = &kind[Step]{
	name: "step",
	doc:  "One act at the machine.",
	keys: append([]key[Step]{
		text("step", "The name that other steps know it by.", "nut", func(s *Step) *source.Text { return &s.Key }).must(),
		after("after", "The steps that must come before, each with its reason; {} says that none has to. A repeated step that names one of its own places (sleeve/DE) is done there first.",
			"{marks: the chalk line must be there first}", func(s *Step) *After { return &s.After }),
		varying("do", "What is done, as the mechanic reads it.", "Take the lock nut off.", func(s *Step) *Varying { return &s.Do }).must(),
		text("where", "Where it is done, if not at the machine.", "bench", func(s *Step) *source.Text { return &s.Where }).oneOf("bench", "machine"),
		each(func(s *Step) *[]source.Text { return &s.Each }),
		list("measure", "The dimensions read as found.", "[D7]", func(s *Step) *[]source.Text { return &s.Measure }).marks("D"),
		list("set", "The dimensions set and read as left.", "[D7]", func(s *Step) *[]source.Text { return &s.Set }).marks("D"),
		counts("remove", "The parts that come off, with a number when not all pieces do.", "[lock-nut, {screw: 6}]", func(s *Step) *[]Count { return &s.Remove }),
		counts("fit", "The parts that go on, with a number when not all pieces do.", "[screw]", func(s *Step) *[]Count { return &s.Fit }),
		into("into", "Where the removed parts go: a container, a lay-down spot, bench or scrap. A group of places behind a container (C1/valve) is its pocket of the same name as the part's place.", "{cover: C6, screw: C3}", func(s *Step) *Into { return &s.Into }).
			oneOf("bench", "scrap").marks("CY"),
		list("from", "Where the fitted parts come from. A group of places behind a container (C1/valve) is its pockets of the places that the parts have.", "[C3]", func(s *Step) *[]source.Text { return &s.From }).oneOf("bench").marks("CY"),
		counts("fit-for-now", "The parts that are put on for a while, to be taken out again.", "[{guide-stud: 2}]", func(s *Step) *[]Count { return &s.ForNow }),
		counts("take-out-again", "The parts fitted for now that come out again.", "[{guide-stud: 2}]", func(s *Step) *[]Count { return &s.TakeOut }),
		list("leave-out", "The parts that are left out here and go on later.", "[dowel]", func(s *Step) *[]source.Text { return &s.LeftOut }),
		list("loosen", "The joints or parts that are loosened.", "[J1]", func(s *Step) *[]source.Text { return &s.Loosen }).marks("J").orName(),
		list("tighten", "The joints or parts that are tightened.", "[J1]", func(s *Step) *[]source.Text { return &s.Tighten }).marks("J").orName(),
		list("open", "The openings that this step makes.", "[housing]", func(s *Step) *[]source.Text { return &s.Open }),
		list("close", "The openings that this step closes; one that it opens as well, as a hand hole looked through, below what is seen or read through it.", "[housing]", func(s *Step) *[]source.Text { return &s.Close }),
		list("empty", "The containers that must be empty after it.", "[C3]", func(s *Step) *[]source.Text { return &s.Empty }).marks("C"),
		list("heat", "The heats: what is drawn off or put on hot here.", "[H1]", func(s *Step) *[]source.Text { return &s.Heat }).marks("H"),
		list("align", "The couplings that are aligned, or whose alignment is read.", "[A1]", func(s *Step) *[]source.Text { return &s.Align }).marks("A"),
		list("lift", "The lifts that are made.", "[L1]", func(s *Step) *[]source.Text { return &s.Lift }).marks("L"),
		list("set-down", "The lifts whose load stands on its supports again when the step is done, though no part of it comes off or goes back here.", "[L1]", func(s *Step) *[]source.Text { return &s.SetDown }).marks("L"),
		list("seen", "What is looked at and found so, a box to tick each, printed at its place among the other keys; it stands for the step as written, not for its put-back row, which has back-seen:.",
			"[gauge at zero, drain open and dry]", func(s *Step) *[]source.Text { return &s.Seen }),
		text("under-load", "What is put under a load that hangs on the hook of a lift, or of on-hook: at the same step, before a hand goes in; it is ticked out again where the lift lets the load down, or when the load stands elsewhere.", "two blocks under each journal", func(s *Step) *source.Text { return &s.UnderLoad }),
		text("hold", "The hold or witness point at its end.", "W1", func(s *Step) *source.Text { return &s.Hold }).marks("W"),
		list("caution", "The hazard notes printed before it: those under cautions, and by their names the usual ones that do not come by themselves: lockout, unlocking, confined-space, hot-work, hanging, lifting, rotor-lift, hand-lift, heating, induction, cold, springs, pressure, weight, propped, asbestos, lagging, solvent, sharp, pinch, eyes, foreign-material.", "[puller, springs]", func(s *Step) *[]source.Text { return &s.Caution }),
		marked("match-marks", "The parts that get a mark across their joint before they are parted, each with the part on the other side of it: [{motor-hub: fan-hub}]; without one it is taken from a matched set of two where one is behind the other, one joint holds both or the step names both as it marks, else the paper names the one alone; at a step that puts one of them on again, or at one below it, that its marks meet, and where that is a new one, that it gets its own. Those of what stays on meet at the row that undoes the step.", "[{cap: housing}]", func(s *Step) *[]MatchMark { return &s.MatchMarks }),
		list("stacks", "The stacks whose order is written down before they come apart; at a step that puts one together again, that it lies in that order.", "[K1]", func(s *Step) *[]source.Text { return &s.Stacks }).marks("K"),
		list("judge", "The matched sets for which it is decided here, by all their readings, whether all pieces go back or all are renewed.", "[S2]", func(s *Step) *[]source.Text { return &s.Judge }).marks("S"),
		varying("missed", "What is easily missed here; it stands at the generated put-back row as well, unless back-missed: is written.", "{NDE: left-hand thread}", func(s *Step) *Varying { return &s.Missed }),
		varying("back", "What the generated put-back row says.", "Run the nut up to its found stand-off.", func(s *Step) *Varying { return &s.Back }),
		list("back-seen", "What is done on the way back without a reading, as a strap that goes on again or a plug that goes in: a box to tick each: written below back:, or without one, at the end of the put-back row, below its readings; written above back:, before anything goes back, as a housing that is seen empty.",
			"[strap on again]", func(s *Step) *[]source.Text { return &s.BackSeen }),
		varying("back-missed", "What is easily missed in putting back, in place of what missed: says, which else stands at the put-back row and on tags as well; none: what missed: says is for taking off alone.", "{NDE: left-hand thread, DE: none}", func(s *Step) *Varying { return &s.BackMissed }),
		list("back-caution", "The hazard notes printed before the generated put-back row besides those of caution:, which stand there as well; or why those do not: none, because ….", "[puller]", func(s *Step) *[]source.Text { return &s.BackCaution }),
		list("back-permit", "The permits that the generated put-back row asks for besides those of permit:, which it asks for as well; or why it does not: none, because …. With both in the list it asks for those named alone: [lifting, \"none, because it is shut from outside\"].", "none, because it goes on cold", func(s *Step) *[]source.Text { return &s.BackPermit }),
		text("back-hold", "A hold or witness point of the generated put-back row, in place of that of the step, which else is released there again; or why there is none: none, because ….", "W4", func(s *Step) *source.Text { return &s.BackHold }),
		text("back-check", "Who checks the generated put-back row as well, where it is somebody else than for the step; or why nobody does: none, because ….", "none, because it is seen from outside", func(s *Step) *source.Text { return &s.BackCheck }),
		one(decimalForm, "back-hours", "How long the generated put-back row takes.", "1", func(s *Step) *source.Text { return &s.BackHours }).noneOrMore(),
		number("back-people", "How many people the generated put-back row takes; unless it is written, so many as people: says where the row puts a part back or lifts.", "2", func(s *Step) *source.Text { return &s.BackPeople }),
		namedTexts("no-caution", "Hazard notes that would stand before it by themselves and are left out, each with the reason; the reason is printed.",
			"{asbestos: sheets renewed in 2019}", func(s *Step) *[]Named { return &s.NoCaution }),
		items("way-round", "Which side of a part faces what.", "[{part: seal, mark: lip, faces: oil}]", wayRoundKind, addWayRound),
		flag("photo", "Whether a photograph is taken.", "yes", func(s *Step) *source.Text { return &s.Photo }),
		text("check", "Who checks as well.", "supervisor", func(s *Step) *source.Text { return &s.Check }),
		one(decimalForm, "hours", "How long it takes; 0 where no time is planned, as for a signature alone.", "1.5", func(s *Step) *source.Text { return &s.Hours }).noneOrMore(),
		number("people", "How many people it takes. By hand two lift at most two thirds of what each may in sum, three the half; more than three no more than three.", "2", func(s *Step) *source.Text { return &s.People }),
		text("on-hook", "What a heavy part hangs on where no lift sheet is made: a routine lift by the site's rules; or, where it only hangs in the gear of a lift of the job, that lift by its mark: the slings of L2, only taut.", "workshop crane", func(s *Step) *source.Text { return &s.OnHook }),
		varying("note", "A remark printed below it.", "The washer is under the nut.", func(s *Step) *Varying { return &s.Note }),
		list("lock", "The isolations that are put on.", "[motor]", func(s *Step) *[]source.Text { return &s.Lock }),
		list("unlock", "The isolations that are taken off.", "[motor]", func(s *Step) *[]source.Text { return &s.Unlock }),
		list("unlock-for-now", "The isolations that are taken off for a while, for a test or until a later tightening, to be put on again.", "[motor]", func(s *Step) *[]source.Text { return &s.UnlockForNow }),
		list("lock-again", "The isolations that are put on again after a test.", "[motor]", func(s *Step) *[]source.Text { return &s.LockAgain }),
		list("permit", "The permits that must be there before it is begun.", "[hot-work]", func(s *Step) *[]source.Text { return &s.Permit }),
		list("hand-back", "The permits that end here.", "[work]", func(s *Step) *[]source.Text { return &s.HandBack }),
		varying("otherwise", "What is done instead where the step is not meant for the machine, or its if: says no.", "Check that the plug is tight.", func(s *Step) *Varying { return &s.Otherwise }),
		flag("tool-count", "Whether the tools are counted.", "yes", func(s *Step) *source.Text { return &s.ToolCount }),
		flag("count-all", "Whether every container is counted now, on the sheet of counts.", "yes", func(s *Step) *source.Text { return &s.CountAll }),
	}, append(branching(), applies(func(s *Step) *Applies { return &s.Applies })...)...),
}

var wayRoundKind = &kind[WayRound]{
	name: "way round",
	doc:  "Which side of a part faces what.",
	keys: []key[WayRound]{
		text("part", "The part.", "seal", func(w *WayRound) *source.Text { return &w.Part }).must(),
		text("mark", "The side or mark on it.", "lip", func(w *WayRound) *source.Text { return &w.Mark }).must(),
		text("faces", "What that side faces.", "oil", func(w *WayRound) *source.Text { return &w.Faces }).must(),
	},
}

// addWayRound adds an empty orientation to a step.
func addWayRound(s *Step, _ source.Pos) *WayRound {
	s.WayRound = append(s.WayRound, WayRound{})
	return &s.WayRound[len(s.WayRound)-1]
}
