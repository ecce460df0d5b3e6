package words

// Guard are the words of what guards a step: locks that come off for a test, loads
// that hang, and the guards of put-back rows.
type Guard struct {
	UnlockForNow, Meanwhile, LockAgain, HandBack, PermitAgain Sentence
	Seen                                                      Sentence // what is looked at and found so

	// A load that hangs.
	NoStops                                             string
	Hangs, GoesOn, UnderLoad, FromUnder, StaysUp, Lower Sentence

	// What a put-back row has not of its step, and why.
	NoCaution, NoPermit, NoHold, NoCheck Sentence
}
