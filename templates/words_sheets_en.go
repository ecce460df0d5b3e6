package templates

// englishSheets are the words of sheetWords in English.
var englishSheets = sheetWords{
	cautions: "Cautions", isolations: "Isolations", gather: "Gather list", holds: "Holds", openings: "Openings",
	foundToday: "Found on the day", signatures: "Signatures", deviations: "Deviations", closeOut: "Close-out",

	thisMachine: "This machine", fitted: "fitted", notFitted: "not fitted", buildSaid: "%s (%s)", buildBySerial: "%s (%s), told by serial %s",
	onlyThis: "The pack holds only what is meant for this machine. Compare with the plate and with the machine before the work.",

	signalMeans: map[string]string{
		"danger": "will kill or injure badly if it is not kept clear of", "warning": "can kill or injure badly",
		"caution": "can hurt", "notice": "harms the machine, nobody is in danger",
	},
	legendTitle: "What the words mean", permitsTitle: "Permits", cautionsTitle: "Cautions in full", sparedTitle: "Left out by the planner",
	permit: "permit", permitNumber: "number", permitUntil: "valid until", permitGiven: "given by: name, time",
	beforeSteps: "before %s", inFull: "in full p. %s", sparedLine: "%s, at %s: %s",
	signalSource: "Words as in ANSI Z535.6, signs numbered as in ISO 7010. Where other papers use CAUTION for the machine, here it is NOTICE.",

	point: "point", energyState: "energy, and how it stands when safe", provedBy: "proved by", lockNumber: "lock no.",
	lockedBy: "locked: initials, time", unlockedBy: "unlocked: initials, time",
	isolationsRule: "A lock is taken off by the one who put it on, and by nobody else. Proved means shown at the machine, after the lock is on.",
	lockedAt:       "locked at %s", unlockedAt: "unlocked at %s",

	instruments: "Instruments", tools: "Tools", spares: "Spares", consumables: "Consumables", howMuch: "how much",
	instrumentNo: "number", calDue: "calibration due", issued: "issued", used: "used", returned: "returned",
	alwaysRenewed: "always renewed", usedAt: "for %s",
	gatherRule: "Issued, used and returned are counts. What was issued is used or comes back: the last two make up the first.",

	opening: "opening", coveredWith: "covered with", openedBy: "opened: initials, time", closedBy: "closed: initials, time", seenClean: "seen clean by",
	toolsIn: "tools in", toolsOut: "tools out",
	openingsRule: "Every opening is covered when nobody works at it. What falls in is written down and found before anything is closed.",
	enclosed:     "a person can go in", toolLog: "Tools and rags taken to the openings", toolPlace: "opening",
	openLine: "%s stands open: cover with %s (p. %s)", closeLine: "%s seen clean, tools and rags out, closed (p. %s)",
	lockLine: "lock on %s: %s (p. %s)", unlockLine: "lock off %s (p. %s)", permitLine: "permit is here: %s", closeDefault: "Close: %s.",

	stopsHere: "work stops until it is signed", mayGoOn: "call, then work may go on", holdsRule: "A hold stops the work until the one named has signed. A witness is called in time; the work may go on when nobody comes.",
	seenAndReleased: "released by: name, signature", holdWhat: "what must have been seen",
}
