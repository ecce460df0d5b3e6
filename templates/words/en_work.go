package words

// englishTraveler are the words of Traveler in English.
var englishTraveler = Traveler{
	Title: "Traveler", GoOn: "Go on with the traveler, section %s, p.\u00a0%s",
}

// englishReassembly are the words of Reassembly in English.
var englishReassembly = Reassembly{
	Title: "Reassembly", GoOn: "Go on with the reassembly sheet, section %s, p.\u00a0%s",
}

// englishStep are the words of Step in English.
var englishStep = Step{
	Continued: "goes on", Hours: "hours", SectionHours: "done by %s\u00a0h, %s\u00a0crew\u00a0h", HoursPlanned: "planned %s\u00a0h", HoursEach: "planned %s\u00a0h\u00a0each", EachOfThese: "%s each", Photo: "photo no.", NotTaken: "not taken: which, because", CheckedBy: "checked by %s",
	Undoes: "undoes %s, p.\u00a0%s", After: "after %s", AnyTimeBetween: "any time after %s, before %s", AnyTimeBefore: "any time before %s",
	AnyTimeAfter: "any time after %s", AnyTimeAtAll: "any time", Bench: "bench", FitNew: "new, from stores: %s; count the old against the new",
	FitNewOne: "new, from stores; count the old against the new", FitNewScrap: "new, from stores: %s; count the old against the new, then the old to SCRAP", OldPiece: "old %s",
	PutBack: "Put back: %s.", TightenAll: "Tighten: %s.", SetAgain: "Measure again and write as left: %s.", LookUp: "Look up what was recorded: %s.", Close: "Close: %s.",
	GoneAfterThis: "GONE IN THIS STEP, so written down before: %s", EmptyNow: "must be empty now:", EmptyHere: "must be empty now", EasilyMissed: "easily missed: %s", Place: "place",

	PermitLine: "permit is here: %s", LockLine: "lock on %s: %s (p.\u00a0%s)", UnlockLine: "take the lock off %s (p.\u00a0%s)",
	OpenLine: "open: %s; cover with %s (p.\u00a0%s)", CloseLine: "%s seen clean, tools and rags out, closed (p.\u00a0%s)",
	CleanLine: "%s seen clean, tools and rags out", ShutLine: "%s closed (p.\u00a0%s)",
	CountAllLine: "every container counted on the register (p.\u00a0%s), every kind on the counts sheet", ToolsIn: "tools in", ToolsOut: "tools out",

	Loosen: "loosen", Tighten: "tighten", ToTorque: "to %s", NoTorque: "no value: %s", TightForNow: "FOR A WHILE, at last %s", Stages: "in stages:", IsTight: "tight", IsLoose: "loose", IsIn: "in", IsOut: "out",
	Oiled: "threads: %s", InOrder: "order: %s", ForNow: "for a while", TakeOut: "take out again", LeftOut: "LEFT OUT for a while, goes in at %s",
	AtBench: "on the bench", People: "%s people", RenewAsSet: "if one is renewed, renew the set", RenewAdded: "added, the machine had none", RenewIf: "renew %s", Floor: "floor for %s", RenewLine: "%s: %s",

	LeftHand: "left-hand thread", RightHand: "right-hand thread", Clockwise: "clockwise", Counterclockwise: "counterclockwise", FacingIt: "looking at it",
	Turned: "%s: %s, %s, %s", TurnedOff: "off: %s", TurnedOn: "on: %s", BigTag: "tag", OldThenScrap: "old %s: kept until the new at %s, then scrap",

	AllGoBack: "all in: all %s go back", AllRenewed: "one or more out: all %s are renewed", WhichIsOut: "which are out",
	AsJudged: "old or new, all %s alike, as decided for %s at %s (p.\u00a0%s)",

	If: "IF", Again: "AGAIN", DoThis: "do this step", LeaveOut: "leave this step out", OnlyIfDone: "%s was done (p.\u00a0%s)",
	Until: "until: %s (%s tries at\u00a0most)", TryNo: "try %s", FurtherTry: "What else a further try reads or tightens: a line each on p.\u00a0%s.",
	BoxesLast: "The boxes above are for the last try.", EarlierTries: "The boxes above are for the last try; earlier ones: p.\u00a0%s",
	StillNoGood: "Still no good after the last try: %s.", Waits: "%s waits: %s, see p.\u00a0%s",

	MatchMarks: "match marks across the joints of:", MatchMark: "match mark across the joint of %s", BothParts: "%s and %s", MarkUsed: "mark used", WhereMarked: "where it stands", MarksMeet: "match marks of %s meet (p.\u00a0%s)",
	WayRound: "%s: %s faces %s", WayFound: "as found, %s faces", StackOrder: "order of %s, counted from %s outward", StackExpected: "expected: %s",
	StackPiece: "piece %s as found",
	StackBack:  "%s in the order from %s outward that was written down (p.\u00a0%s)",
}
