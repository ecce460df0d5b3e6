package job

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
)

// MissedBack is what is easily missed in putting back what a move takes off: what the
// step that puts it back says of it, else what is said where it comes off, if that
// is not for taking off alone. It is empty where it speaks of other parts: the tag of a
// grub screw does not tell of the left-hand nut beside it.
func (m *Move) MissedBack() string {
	if back := m.PutBack(); back != nil && back.Step != nil {
		if s := m.Part.missedIn(back.Step.Missed); s != "" {
			return s
		}
	}
	return m.Part.missedIn(m.Step.MissedBack())
}

// saysLeft finds a left-hand thread in what is easily missed, where no part is named
// beside it.
var saysLeft = regexp.MustCompile(`(?i)^left[- ]?hand(ed)?( thread)?$`)

// missedIn is what of a sentence, between its commas, speaks of a part: by a word of its
// name, or by its left-hand thread.
func (p *Part) missedIn(sentence string) string {
	clauses := strings.Split(sentence, ",")
	speaks := slices.DeleteFunc(clauses, func(clause string) bool {
		clause = strings.TrimSpace(clause)
		return !namesPart(clause, p.Name) && !(p.Left && saysLeft.MatchString(clause))
	})
	return strings.TrimSpace(strings.Join(speaks, ","))
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
