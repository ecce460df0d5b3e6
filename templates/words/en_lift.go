package words

// englishLift are the words of Lift in English.
var englishLift = Lift{
	Title: "Lift sheet",

	OnHook: "On the hook: %s.", OnSheet: "Lift sheet %s, p.\u00a0%s: %s.", NoSheet: "No lift sheet: routine, by the site's lift rules.",
	StepLine:       "Lift sheet %s, p.\u00a0%s: %s, %s. Trial lift %s, look, wait, then go.",
	StepLineByHand: "Lift sheet %s, p.\u00a0%s: %s, %s people by hand.", StepLineRefused: "Lift sheet %s, p.\u00a0%s: CANNOT BE COMPUTED. Do not lift.",
	Level: "hangs level", Tilted: "hangs %s out of level, %s is %s low", TiltedSide: "hangs %s out of level, its %s side low",
	TiltedMost:      "%s, at\u00a0most %s out of level",
	TiltedWithin:    "Out of level: up to %s with the centre of gravity anywhere in its band; with a leg off by %s as well, up to %s.",
	StepLineStopped: "Lift sheet %s, p.\u00a0%s: MUST NOT BE MADE as it is written. Do not lift.",

	MadeAt: "made at %s", NotComputed: "%s cannot be computed, because", MustNot: "%s must not be made as it is written, because",
	NotWritten: "not written", TakesHold: "takes hold of", Sling: "sling", DoNotLift: "Do not lift by this sheet.", Mass: "Mass", MassTold: "%s (%s)",
	MassTolerance: "%s ± %s (%s)",
	MassFrom:      map[string]string{"weighed": "weighed", "drawing": "from a drawing", "computed": "computed", "estimated": "estimated"},
	Centre:        "Centre of gravity", CentreBand: "%s %s ± %s", MeasuredFrom: "x, y and z from: %s", HangsOn: "Hangs",
	Rig:    map[string]Sentence{"bridle": "on %s legs to one hook", "spreader": "under a spreader", "beam": "under a lifting beam", "two hooks": "on two hooks"},
	ByHand: "by hand, %s people, none carries over %s", RatedBy: "%s, gear rated by %s", CraneLine: "%s, may lift %s", LayDownAt: "Lay down at",
	FloorLine: "%s: presses %s on a floor for %s, %s used", Props: "Props and blocks", Crew: "Must be there",

	Weakest: "used most", CraneUsed: "crane", LevelHead: "level", Headroom: "headroom", HeadroomSpare: "%s spare, hook at %s", HeadroomOver: "%s spare, hook over %s at %s",
	NotLookedAt: "not looked at", HookLoad: "%s on the hook, times %s for its movement", SignedPlan: "signed lift plan %s is here",
	PressLine: "Between its picks the load is pressed with %s.", TeamLine: "the team may lift %s",

	SideView: "Side view, 1 : %s. %s to the right, z up. Lengths and angles written are the true ones.",
	PlanView: "Plan, 1 : %s. x to the right, y up.", Hook: "hook",
	CentreMark: "Quartered disc: centre of gravity.", BandMark: "Dashed box: where it may lie.",
	Leg: "leg", Length: "length", Angle: "from horizontal", Pulls: "pulls", MostPulls: "within the band", Design: "with factor %s",
	ChosenLength: "make it this long", InHand: "in hand", Shorten: "shorten by %s to hang level", HangsSlack: "hangs %s slack",
	EvenSplit: "Shared evenly by levers the legs would pull %s. A stiff load does not keep to it: one diagonal may carry all, so each leg is counted with the most that it can be given.",
	Bail:      "Bail of the beam at %s from its end over %s.", Carries: "carries", MostCarries: "at most",

	TurnedBy: "turned from lying", TurnCarries: "hook over %s, at most", TurnPull: "legs pull, from its own level", TurnHigher: "hook over %s higher by",
	TurnApart: "hooks apart in plan", Upended: "%s, which turn it between lying and upright, upright hanging from %s",
	HookReads:       "hook over %s reads, %s",
	StopHalfWay:     "Half way in the turn: stop, both hooks plumb over their picks, each load no more than its row of the table.",
	StopOneHook:     "Hanging from %s alone, or lying on both hooks: stop, nothing swings, the load on each hook as the table has it.",
	StopPlumb:       "Slack just out: hands off, legs lie straight, each hook plumb over its pick.",
	StopTakesHold:   "Leg %s takes hold, or is slack, at about %s from lying: its hook stops there, look at its leg and at both loads.",
	StopTrialTurned: "Trial lift %s: stop, it hangs as it stood, wait a minute, look at hoist brake and legs. It leans or swings: set down, bring the hook over it.",
	TurnNote:        "Read down to raise it, up to lay it down. The loads are those at rest, with slings and gear, without the block of the crane and without the factor for its movement.",
	TurnedLevel:     "upright from %s alone it leans up to %s; on both hooks it rolls up to %s",
	TurnReads:       "hooks read, %s: %s / %s",

	Rated: "rated", GearHead: "piece: load of what it may carry as rigged, share used", GearUse: "%s of %s, %s", GearRated: "rated %s: %s", GearNumber: "number on its tag",
	NoTag: "without a tag of its own", ColdAndHot: "Cold and hot",
	HoldsFrom: "slings and gear hold their rating from %s (%s) to %s (%s).", ComesTo: "They come to %s to %s.",
	RatedFor: "rated %s for legs of %s from horizontal and steeper, by %s.", RatedRound: "rated %s for legs of %s from horizontal and steeper and for a pull all the way round, by %s.", TackleRig: "On a tackle of %s parts of rope", TackleLine: "The line of the tackle is hauled with up to %s.",

	GearInspected: "inspected on", LookBefore: "No tag, no lift. Look at every piece before use.",

	Day: "on the day, at", Stops: "Stop and look",
	UsualStops: "At each stop of a lift the person in charge gives the word to go on.",
	InitialsAt: "initials, %s", TheDay: "On the day: lift at %s", LoadCell: "load cell reads, %s", TrialLevel: "trial lift %s: level",
	GapAt: "gap at %s, %s", Wind: "wind or draught", Yes: "yes", No: "no", SameGear: "gear changed since the list above: which, and its numbers",
	InCharge: "person in charge", Driver: "crane driver", Rigger: "rigger", NameSign: "%s: name and signature", NamesSign: "%s: names and signatures of all", CautionsHere: "To be minded",
	Symbols: []Mark{
		{"k", "factor for the movement of the hoist"}, {"V_A", "share of the weight at that pick"}, {"beta", "angle of a leg from the plumb line"},
		{"q", "share of the piece that carries most"}, {"g", "9.81 m/s²"}, {"rho", "density"},
	},
	HowWorked:   "How it was worked out, in kilograms and millimetres",
	Planning:    "These are planning figures. A competent person, the site's lift rules and the local code decide whether the lift is made.",
	StopSlack:   "Slack just out: hands off, legs lie straight, hook stands over the centre of gravity.",
	StopTrial:   "Trial lift %s: stop, measure the gap at both ends, wait a minute, look at hoist brake and legs. Not level: set down, change the legs.",
	StopPath:    "Before it travels: way clear, nobody under it, tag lines manned.",
	StopSeat:    "A hand's width above where it is set down: stop, turn it right, hands out.",
	StopUnhook:  "Set down and propped: legs slack, load stands by itself; then unhook.",
	StopLiftOff: "Clear of what it sat on, and of dowels and studs.",
	HandStops: []string{
		"One person gives the word. Way clear and set-down place ready.",
		"Lifted by a hand's width: anybody who carries too much says so, and it is set down.",
		"Set down on blocks, fingers out.",
	},
}
