package templates

// englishWorked are the words of workedWords in English.
var englishWorked = workedWords{
	byHand: "by hand: %s", takenFrom: "%s %s, %s p. %s", target: "target", targetLess: "target − %s =", targetMore: "target + %s =",
	lowEnd: "at least", highEnd: "at most", stampedNumber: "number on the part", workedLater: "limit %s: worked out when %s is read (p. %s)",
	stampedOn: "number on the %s",
}
