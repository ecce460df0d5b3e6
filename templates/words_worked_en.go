package templates

// englishWorked are the words of workedWords in English.
var englishWorked = workedWords{
	byHand: "by hand: %s", takenFrom: "%s %s, %s p. %s", target: "target", targetLess: "target − %s =", targetMore: "target + %s =",
	lowEnd: "at least", highEnd: "at most", stampedNumber: "number on the part", workedLater: "limit %s: worked out when %s is read (p. %s)",
	stampedOn: "number on the %s",

	leavesInHand: "%s: leaves of %s, at most %s in the pack", oneOfSet: "%s: one of %s",
	workedOutCol: "worked out", packCol: "pack", leavesCol: "leaves", outsideTable: "Outside the table: no pack, tell the engineer.",
	oldPackStays: "old pack stays: its sum is within the limits", leaf: "leaf %s", sumOfLeaves: "sum", material: "material, mark",

	oneThread: "one turn of the %s is one thread, %s", flats: "flats", turns: "turns", toGo: "to go",
	backOff: "turned back %s after it touches", leaveAlone: "LEAVE ALONE",
}
