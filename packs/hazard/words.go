package hazard

import "regexp"

// oldFibre and oldLagging are the names of parts that may be of fibre with asbestos.
var (
	oldFibre   = words(`gaskets?|packing|joint sheets?`)
	oldLagging = words(`lagging|insulation|heat shields?`)
)

// words makes the pattern of whole words, whatever their case.
func words(alternatives string) *regexp.Regexp {
	return regexp.MustCompile(`(?i)\b(?:` + alternatives + `)\b`)
}
