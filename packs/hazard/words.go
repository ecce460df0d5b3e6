package hazard

import "regexp"

// oldFibre and oldLagging are the names of parts that may be of fibre with asbestos; entry are
// the words by which a permit for going in is known.
var (
	oldFibre   = words(`gaskets?|packing|joint sheets?`)
	oldLagging = words(`lagging|insulation|heat shields?`)
	entry      = words(`entry|enter|entering|confined|confined-space`)
)

// words makes the pattern of whole words, whatever their case.
func words(alternatives string) *regexp.Regexp {
	return regexp.MustCompile(`(?i)\b(?:` + alternatives + `)\b`)
}
