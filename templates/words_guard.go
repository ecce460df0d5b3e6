package templates

import "matchmark/packs/job"

// guardWords are the words of what guards a step: locks that come off for a test,
// loads that hang, and the guards of put-back rows.
type guardWords struct {
	unlockNowLine, meanwhileLine, lockAgainLine, handBackLine string
	lockedAgainAt, unlockedNowAt, lockNoAgain                 string

	hangsLine, goesOnLine, underLoadLine, staysUpLine, noStops, lowerDefault string

	holdAgain string
	without   map[job.Guard]string
}
