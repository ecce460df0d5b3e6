package units

// A Tongue gives the fixed sentences that calculations bring along in the language of
// the paper. A sentence is known by its English text, with its holes; of one that it
// does not know, as a name that a person gave, it gives the text itself.
type Tongue interface {
	Said(english string) string
}

// Said is a sentence in a tongue; without a tongue it stays English.
func Said(t Tongue, english string) string {
	if t == nil {
		return english
	}
	return t.Said(english)
}
