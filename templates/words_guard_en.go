package templates

import "matchmark/packs/job"

// englishGuards are the words of guardWords in English.
var englishGuards = guardWords{
	unlockNowLine: "lock off for now, for this test: %s (p. %s)",
	meanwhileLine: "open or off meanwhile, everybody clear of it: %s",
	lockAgainLine: "lock on again %s: %s, proved again: %s (p. %s)",
	handBackLine:  "permit handed back: %s",
	lockedAgainAt: "locked again at %s", unlockedNowAt: "off for a test at %s", lockNoAgain: "%s again",

	hangsLine:     "%s hangs on the hook since %s: %s",
	goesOnLine:    "%s goes on from %s, where it hangs. Lift sheet p. %s: %s. Each stop is looked at again.",
	underLoadLine: "before a hand goes in under it: %s",
	staysUpLine:   "%s stays on the hook: the load hangs when this step is done. Stops: %s",
	noStops:       "as on its sheet",
	lowerDefault:  "Go on with the lift of %s.",

	holdAgain: "%s again",
	without: map[job.Guard]string{
		job.GuardCaution: "The cautions of %s do not stand here: %s", job.GuardPermit: "The permit of %s is not asked for here: %s",
		job.GuardHold: "The hold of %s does not stand here: %s", job.GuardCheck: "Nobody checks here as at %s: %s",
	},
}
