package templates

// workedWords are the words of what is worked out, shimmed, turned, done again or
// later.
type workedWords struct {
	// Ladders.
	byHand, takenFrom, target, targetLess, targetMore, lowEnd, highEnd, stampedNumber, workedLater, stampedOn string

	// Shims.
	leavesInHand, oneOfSet, workedOutCol, packCol, leavesCol, outsideTable string
	oldPackStays, fromPage, leaf, sumOfLeaves, material                    string

	// Branches, loops, what waits.
	branchIf, branchAgain, doThis, leaveOut, onlyIfDone string
	untilHead, tryNo, lastTry, stillOut                 string
	waits, laterHead, dueDate, tightenAgain, placeCol   string

	// Adjusters.
	oneThread, flats, turns, toGo, shimsMove, moreShims, backOff, leaveAlone string
}
