package templates

// sheetWords are the words of the sheets that guard and count the work: locks,
// permits, lists, openings, holds, signatures, deviations, close-out.
type sheetWords struct {
	// Names of sheets.
	cautions, isolations, gather, holds, openings, foundToday string
	signatures, deviations, closeOut, counts                  string

	// What this machine has.
	thisMachine, fitted, notFitted, buildSaid, buildBySerial, onlyThis string

	// Cautions and permits.
	signalMeans                                           map[string]string
	legendTitle, permitsTitle, cautionsTitle, sparedTitle string
	permit, permitNumber, permitUntil, permitGiven        string
	beforeSteps, inFull, sparedLine, signalSource         string

	fireWatch, flameOut, watchUntil, watchedBy string

	// Isolations.
	point, energyState, provedBy, lockNumber, lockedBy, unlockedBy string
	isolationsRule, lockedAt, unlockedAt                           string

	// Gather list.
	instruments, tools, spares, consumables, howMuch, instrumentNo, calDue string
	issued, used, returned, alwaysRenewed, usedAt, gatherRule              string

	// Openings.
	opening, coveredWith, openedBy, closedBy, seenClean, toolsIn, toolsOut, countAllLine string
	openingsRule, enclosed, toolLog, toolPlace                                           string
	stepGoesOn                                                                           string
	openLine, closeLine, lockLine, unlockLine, permitLine, closeDefault                  string

	// Holds.
	stopsHere, mayGoOn, holdsRule, seenAndReleased, holdWhat string

	// Found on the day, counts, signatures.
	spareWhat, spareLimit, spareRow, spareBack, foundRule string
	expected, countMid, leftOver, countsRule, offBack     string
	printedName, signature, signaturesRule                string

	// Tags.
	scrapBag, scrapKept, scrapListed, sideFaces, massAtLeast string

	// Deviations and handover.
	deviationsRule, deviationEffect, sketch, shift, partsLie, fromTo string

	// Close-out.
	whatIsCounted, printed, counted, complete, closeOutRule  string
	countPages, countTags, countStubs, countFound, countLeft string
	countStepsOff, countStepsBack, countHolds, countLocks    string
	countPermits, countOpenings, countContainers             string
	countInstruments, countLeftOver, countDeviations         string
	hours, hoursPlanned, hoursAll                            string
}
