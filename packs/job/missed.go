package job

import (
	"strings"
	"unicode"
)

// MissedBack is what is easily missed in putting back what a move takes off: what the
// step that puts it back says of it, else what is said where it comes off, if that
// is not for taking off alone. It is empty where it speaks of another part.
func (m *Move) MissedBack() string {
	if back := m.PutBack(); back != nil && back.Step != nil && namesPart(back.Step.Missed, m.Part.Name) {
		return back.Step.Missed
	}
	if s := m.Step.MissedBack(); namesPart(s, m.Part.Name) {
		return s
	}
	return ""
}

// namesPart reports whether a sentence has a word of the name of a part, in the
// singular or the plural.
func namesPart(sentence, name string) bool {
	stem := func(word string) string { return strings.TrimSuffix(strings.ToLower(word), "s") }
	word := func(r rune) bool { return !unicode.IsLetter(r) }
	for _, a := range strings.FieldsFunc(name, word) {
		if len(a) < leastWord {
			continue
		}
		for _, b := range strings.FieldsFunc(sentence, word) {
			if stem(a) == stem(b) {
				return true
			}
		}
	}
	return false
}

// leastWord is how long a word is at the least that names a part.
const leastWord = 3
