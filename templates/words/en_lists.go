package words

// englishHolds are the words of Holds in English.
var englishHolds = Holds{
	Title: "Holds",
	Rule:  "A hold stops the work until the one named has signed. A witness is called in time; the work may go on when nobody comes. The signature at the step counts; this is its copy.",
	Hold:  "HOLD", Witness: "WITNESS", ReleasedBy: "released by: name and signature", SeenBy: "seen by: name and signature", DateTime: "date, time",
	SeenAndReleased: "released, or seen, by: name, signature", Seen: "what must have been seen",
	Again: "%s again",
}

// englishOpenings are the words of Openings in English.
var englishOpenings = Openings{
	Title:   "Openings",
	Rule:    "Every opening is covered when nobody works at it. What falls in is written down and found before anything is closed.",
	Opening: "opening", CoveredWith: "covered with", OpenedBy: "opened: initials, time", ClosedBy: "closed: initials, time", SeenClean: "seen clean by",
	Enclosed: "big enough for a person: permit before entry", Tools: "Tools and rags taken to the openings", TakenTo: "opening",
}

// englishFound are the words of Found in English.
var englishFound = Found{
	Title: "Found on the day",
	Rule:  "What nobody planned gets a row here with a mark of its own. Containers for it have the tags and the lines X1 to X4 of the register.",
	What:  "what is measured, between which faces, in which state", Limit: "limit", By: "by", Row: "row", GoesBack: "what goes back, which way round",
}

// englishRegister are the words of Register in English.
var englishRegister = Register{
	Title:    "Register",
	Rule:     "Count in, when all is apart, and out, in lots if need be, dated. Out and scrap add up to the pieces, left over 0. Tick the square when stub is here or label seen; keep as tag says.",
	Expected: "pieces", CountedApart: "all apart",
	OutFirst: "out: number, date", OutRest: "rest: number, date", Missing: "missing", LeftOver: "left over (0)",
	ScrapLater: "later %s from %s, %s",
	Sets:       "Matched sets, never mixed",
}

// englishCounts are the words of Counts in English.
var englishCounts = Counts{
	Title: "Counts",
	Rule:  "Fasteners, and what comes off in twos or more, over all containers: when all is apart, and at the end. Pieces and new ones add up to back on and scrap; over or short is a deviation.",
	Kind:  "kind", BackOn: "back on", OverShort: "over, short", AtEnd: "at the end", OfThem: "%s of them scrap", NewOn: "%s new",
}

// englishStamps are the words of Stamps in English.
var englishStamps = Stamps{
	Title:  "Metal tags",
	Rule:   "Strike or etch these signs where paper does not last: parts that are washed, heated or blasted. Another person reads them back against this list. The last four letters stand for machine and job.",
	Strike: "strike", Signs: "signs", Struck: "struck", ReadBack: "read back by",
}

// englishSignatures are the words of Signatures in English.
var englishSignatures = Signatures{
	Title:       "Signatures",
	Rule:        "Everybody who writes in this pack signs here once, before the first entry.",
	PrintedName: "name in capitals", Signature: "signature", Mechanic: "mechanic", PermitHolder: "permit holder", FireWatch: "fire watch", Attendant: "attendant",
	EachSigns: "%s (each signs; the others on free rows)",
}

// englishDeviations are the words of Deviations in English.
var englishDeviations = Deviations{
	Title: "Deviations, handover",
	Rule:  "What was done otherwise than printed, and what is wrong in the paper. The lines at the foot of the sheets are carried on here.",
	Line:  "Deviation", Step: "step", What: "what was done otherwise, and why", Agreed: "agreed with", Effect: "what it changes in putting back",
	Sketch: "sketch, squares of 5 mm; photo no.",
}

// englishHandover are the words of Handover in English.
var englishHandover = Handover{
	Strip: "Handover", Reached: "step reached", HalfDone: "half done, loose or finger tight", Next: "next action", From: "from", To: "to", Time: "time",
	Shift: "shift, date", PartsLie: "parts and containers lie at", FromTo: "from, to: initials",
}

// englishCloseOut are the words of CloseOut in English.
var englishCloseOut = CloseOut{
	Title: "Close-out",
	Rule:  "Counted when all work is done, dashed and worked-out boxes too, ± not. An empty box has its reason beside it.",
	What:  "what", Printed: "printed", Counted: "counted", Complete: "The pack is complete and the work is closed", Pages: "pages of this pack",
	Tags: "tags and labels, tags with their stubs", SpareTags: "spare tags, used or returned", BoxesFound: "boxes for readings as found (traveler)",
	BoxesLeft: "boxes for readings on the reassembly sheets", InitialsOff: "boxes for initials on the traveler",
	InitialsBack: "boxes for initials on the reassembly sheets", Holds: "hold and witness points signed", Locks: "locks put on and taken off",
	Permits: "permits handed back", Openings: "openings seen clean and closed", Containers: "containers empty, SCRAP handed over",
	Instruments: "instruments returned", LeftOver: "parts left over", Deviations: "deviations written", Hours: "hours planned, steps in turn; hours taken", CrewHours: "crew hours planned (hours × people); taken",

	LaterHead: "Work that waits until the machine has run", DueDate: "due on", TightenAgain: "Tighten again: %s.",
}

// englishOrder are the words of Order in English.
var englishOrder = Order{
	Section: "%s  %s", Step: "%s: %s", After: "after %s", Below: "follows %s, no after: is written", Hold: "after %s: a hold stands at the end of one of the two",
	Part: "after %s: both move or measure %s", Joint: "after %s: both loosen, tighten or measure %s", Destroyed: "after %s: it destroys %s, measured there",
	Reading: "after %s: it needs the reading %s", Empty: "after %s: %s must be empty here", Nothing: "bound to nothing above it",
	Lock: "after %s: locks are put on or taken off at one of the two", Opening: "after %s: it opens %s", Free: "free: %s",
	Span: "%s to %s", Loop: "after %s: one after the other",
	Behind: "after %s: %s is behind %s", Back: "after %s: %s came off before it", Judged: "after %s: it is decided there about %s", Later: "after %s: this one waits until the machine has run",
	Hanging: "after %s: a load is left hanging, or let down, at one of the two", Tools: "after %s: the tools are counted at one of the two",
	Permit: "after %s: the permit %s ends at one of the two",
	Sum:    "%s steps, %s of them free to move", Because: "%s: %s",
}
