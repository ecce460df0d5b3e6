package words

// englishGuard are the words of Guard in English.
var englishGuard = Guard{
	UnlockForNow: "take the lock off until it is locked again: %s (p.\u00a0%s)",
	Meanwhile:    "open or off meanwhile, everybody clear of it: %s",
	PermitAgain:  "permit given again: %s",
	LockAgain:    "lock on again %s: %s, proved again: %s (p.\u00a0%s)",
	HandBack:     "permit handed back: %s",
	Seen:         "seen: %s",

	Hangs:     "%s hangs on the hook since %s: %s",
	GoesOn:    "%s goes on from %s, where it hangs. Lift sheet p.\u00a0%s: %s. Look at the stops open for this step.",
	UnderLoad: "before a hand goes in under it: %s",
	FromUnder: "out again: %s.",
	StaysUp:   "%s stays on the hook: the load hangs when this step is done. Stops: %s",
	NoStops:   "as on its sheet",
	Lower:     "Go on with the lift of %s.",

	NoCaution: "Caution of %s left out here: %s. Why: %s", NoPermit: "Permit of %s not asked for here: %s. Why: %s",
	NoHold: "The hold of %s does not stand here: %s", NoCheck: "Nobody checks here as at %s: %s",
}
