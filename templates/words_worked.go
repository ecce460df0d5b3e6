package templates

// workedWords are the words of what is worked out, shimmed, turned, done again or
// later.
type workedWords struct {
	// Ladders.
	byHand, takenFrom, target, targetLess, targetMore, lowEnd, highEnd, stampedNumber, workedLater, stampedOn string
}
