package templates

// englishSheets are the words of sheetWords in English.
var englishSheets = sheetWords{
	cautions: "Cautions", isolations: "Isolations", gather: "Gather list", holds: "Holds", openings: "Openings",
	foundToday: "Found on the day", signatures: "Signatures", deviations: "Deviations, handover", closeOut: "Close-out", counts: "Counts",

	thisMachine: "This machine", fitted: "fitted", notFitted: "not fitted", buildSaid: "%s (%s)", buildBySerial: "%s (%s), told by serial %s",
	onlyThis: "The pack holds only what is meant for this machine. Compare with the plate and with the machine before the work.",

	signalMeans: map[string]string{
		"danger": "will kill or injure badly if it is not kept clear of", "warning": "can kill or injure badly",
		"caution": "can hurt", "notice": "harms the machine, nobody is in danger",
	},
	legendTitle: "What the words mean", permitsTitle: "Permits", cautionsTitle: "Cautions in full", sparedTitle: "Left out by the planner",
	permit: "permit", permitNumber: "number", permitUntil: "valid until", permitGiven: "given by: name, time",
	beforeSteps: "before %s", inFull: "see\u00a0p.\u00a0%s", sparedLine: "%s, at %s: %s",
	signalSource: "Words as in ANSI Z535.6, signs numbered as in ISO 7010. Where other papers use CAUTION for the machine, here it is NOTICE.",

	fireWatch: "Fire watch after", flameOut: "flame out: time", watchUntil: "watched until, %s or later: time", watchedBy: "watched by: name",

	point: "point", energyState: "energy, and how it stands when safe", provedBy: "proved by", lockNumber: "lock no.",
	lockedBy: "locked: initials, time", unlockedBy: "unlocked: initials, time",
	isolationsRule: "A lock is taken off by the one who put it on, and by nobody else. Proved means shown at the machine, after the lock is on.",
	lockedAt:       "locked at %s", unlockedAt: "unlocked at %s",

	instruments: "Instruments", tools: "Tools", spares: "Spares", consumables: "Consumables", howMuch: "how much",
	instrumentNo: "number", calDue: "calibration due", issued: "issued", used: "used", returned: "returned",
	alwaysRenewed: "always renewed", usedAt: "for %s",
	gatherRule: "Issued, used and returned are counts. What was issued is used or comes back: the last two make up the first.",

	opening: "opening", coveredWith: "covered with", openedBy: "opened: initials, time", closedBy: "closed: initials, time", seenClean: "seen clean by",
	toolsIn: "tools in", toolsOut: "tools out", countAllLine: "every container counted on the counts sheet (p. %s)",
	openingsRule: "Every opening is covered when nobody works at it. What falls in is written down and found before anything is closed.",
	enclosed:     "a person can go in", toolLog: "Tools and rags taken to the openings", toolPlace: "opening",
	stepGoesOn: "goes on",
	openLine:   "%s stands open: cover with %s (p. %s)", closeLine: "%s seen clean, tools and rags out, closed (p. %s)",
	lockLine: "lock on %s: %s (p. %s)", unlockLine: "lock off %s (p. %s)", permitLine: "permit is here: %s", closeDefault: "Close: %s.",

	stopsHere: "work stops until it is signed", mayGoOn: "call, then work may go on", holdsRule: "A hold stops the work until the one named has signed. A witness is called in time; the work may go on when nobody comes.",
	seenAndReleased: "released by: name, signature", holdWhat: "what must have been seen",

	// Found on the day, counts, signatures.
	spareWhat: "what is measured, between which faces, in which state", spareLimit: "limit", spareRow: "row", spareBack: "what goes back, which way round",
	foundRule: "What nobody planned gets a row here with a mark of its own. Containers for it have the tags and the lines X1 to X4 of the register.",
	expected:  "pieces", countMid: "counted, all apart", leftOver: "left over", offBack: "off at, back at",
	countsRule:  "Count every container when all is apart, before the first part goes back, and again at the end: out and scrapped make up the pieces, and left over is 0. Keep the stubs with this sheet; a tick says that the stub is here, or that the label of one without a stub was seen.",
	printedName: "name in capitals", signature: "signature",
	signaturesRule: "Everybody who writes in this pack signs here once, before the first entry.",

	// Tags.
	scrapBag: "Scrap bag", scrapKept: "keep until the new parts have been compared with these",
	scrapListed: "what belongs in it: register p. %s", sideFaces: "%s faces %s", massAtLeast: "mass at least %s",

	// Deviations and handover.
	deviationsRule:  "What was done otherwise than printed, and what is wrong in the paper. The lines at the foot of the sheets are carried on here.",
	deviationEffect: "what it changes in putting back", sketch: "sketch, squares of 5 mm; photo no.", shift: "shift, date",
	partsLie: "parts and containers lie at", fromTo: "from, to: initials",

	// Close-out.
	whatIsCounted: "what", printed: "printed", counted: "counted", complete: "The pack is complete and the work is closed",
	closeOutRule: "Everything in this pack is counted when it comes back. A box that holds no reading has its reason beside it.",
	countPages:   "pages of this pack", countTags: "tags and labels, tags with their stubs", countStubs: "spare tags, used or returned",
	countFound: "boxes for readings as found (traveler)", countLeft: "boxes for readings in putting back (reassembly)",
	countStepsOff: "boxes for initials on the traveler", countStepsBack: "boxes for initials on the reassembly sheets",
	countHolds: "hold and witness points signed", countLocks: "locks put on and taken off", countPermits: "permits handed back",
	countOpenings: "openings seen clean and closed", countContainers: "containers empty, or scrap handed over",
	countInstruments: "instruments returned", countLeftOver: "parts left over", countDeviations: "deviations written",
	hours: "hours", hoursPlanned: "planned %s\u00a0h, %s\u00a0h so far", hoursAll: "hours of work planned; hours taken",
}
