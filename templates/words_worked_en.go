package templates

// englishWorked are the words of workedWords in English.
var englishWorked = workedWords{
	byHand: "by hand: %s", takenFrom: "%s %s, %s p. %s", target: "target", targetLess: "target − %s =", targetMore: "target + %s =",
	lowEnd: "at least", highEnd: "at most", stampedNumber: "number on the part", workedLater: "limit %s: worked out when %s is read (p. %s)",
	stampedOn: "number on the %s",

	leavesInHand: "%s: leaves of %s, at most %s in the pack", oneOfSet: "%s: one of %s",
	workedOutCol: "worked out", packCol: "pack", leavesCol: "leaves", outsideTable: "Outside the table: no pack, tell the engineer.",
	oldPackStays: "old pack stays, its sum is in", fromPage: "p. %s", leaf: "leaf %s", sumOfLeaves: "sum", material: "material, mark",

	branchIf: "IF", branchAgain: "AGAIN", doThis: "do this step", leaveOut: "leave this step out", onlyIfDone: "%s was done (p. %s)",
	untilHead: "until: %s (%s tries at most)", tryNo: "try %s", lastTry: "The last reading is the one for the box of %s.", stillOut: "Still no good after the last try: %s.",
	waits: "%s waits: %s, see p. %s", laterHead: "Work that waits until the machine has run", dueDate: "due on", tightenAgain: "Tighten again: %s, %s.",
	placeCol: "place",

	oneThread: "one turn of the %s is one thread, %s", flats: "flats", turns: "turns", toGo: "to go", shimsMove: "%s of %s moves it %s", moreShims: "shims to add",
	backOff: "turned back %s after it touches", leaveAlone: "LEAVE ALONE",
}
