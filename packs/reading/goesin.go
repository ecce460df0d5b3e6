package reading

import "matchmark/packs/phrase"

// A feeler that must or must not go into a gap is a limit in the trade's own words: the one is
// a thing to see, yes or no; the other has a size.
var (
	saysFeeler = phrase.Of(`(?i)\b(?:feelers?|lea(?:f|ves)|shims?)\b|\b(?:go|goes|going|enters?) in(?:to)?\b|\bto enter\b`)
	feelerSize = phrase.Of(`\d+(?:\.\d+)? *(?:mm|in|mil|µm|")`)
	keptOut    = phrase.Of(`(?i)\b(?:no|not|never|cannot|can't|won't|without)\b`)
)

// goesIn is the fault of a feeler that must, or must not, go in.
func (c *cursor) goesIn() bool {
	if !saysFeeler.MatchString(c.line) {
		return false
	}
	size := feelerSize.FindString(c.line)
	out := keptOut.MatchString(c.line)
	switch {
	case size == "":
		size = "…"
	case !out:
		c.failAt(0, len(c.runes), "unknown-word", "that a feeler goes in is a size: at least "+size, "at least "+size)
		return true
	}
	c.failAt(0, len(c.runes), "unknown-word", "whether a feeler goes in is to be seen, not to be read: a tick for yes and one for no", MustBeTight(size))
	return true
}

// MustBeTight is the limit of a gap into which the feeler of a size, with its unit, must not go.
func MustBeTight(size string) string { return "must be tight to the " + size + " feeler" }
