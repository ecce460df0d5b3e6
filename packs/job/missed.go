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
// grub screw does not tell of the left-hand nut beside it. Parts are those of the machine,
// of which the sentence may speak.
func (m *Move) MissedBack(parts []*Part) string {
	if back := m.PutBack(); back != nil && back.Step != nil {
		if s := m.Part.missedIn(back.Step.Missed, parts); s != "" {
			return s
		}
	}
	return m.Part.missedIn(m.Step.MissedBack(), parts)
}

// saysLeft finds a left-hand thread in what is easily missed, where no part is named
// beside it.
var saysLeft = regexp.MustCompile(`(?i)^left[- ]?hand(ed)?( thread)?$`)

// missedIn is what of a sentence, between its commas, speaks of a part: by a word of its
// name, or by its left-hand thread. What names no part of the machine goes on with the part
// before it: seal ring, lip inward is said of the ring alone. At the head of a sentence it
// is said of no part.
func (p *Part) missedIn(sentence string, parts []*Part) string {
	var speaks []string
	of := false // the clause before is said of the part
	for _, clause := range strings.Split(sentence, ",") {
		words := strings.TrimSpace(clause)
		switch {
		case namesPart(words, p.Name), p.Left && saysLeft.MatchString(words):
			of = true
		case of && slices.ContainsFunc(parts, func(q *Part) bool { return namesPart(words, q.Name) || q.Left && saysLeft.MatchString(words) }):
			of = false
		}
		if of {
			speaks = append(speaks, clause)
		}
	}
	return strings.TrimSpace(strings.Join(speaks, ","))
}

// namesPart reports whether a sentence has a word of the name of a part, in the
// singular or the plural.
func namesPart(sentence, name string) bool {
	stem := func(word string) string { return strings.TrimSuffix(strings.ToLower(word), "s") }
	word := func(r rune) bool { return !unicode.IsLetter(r) }
	for _, a := range strings.FieldsFunc(name, word) {
		if len(a) < leastWord || slices.Contains(smallWords, strings.ToLower(a)) {
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

// smallWords stand in names of parts, as in screw of the cover, and name none.
var smallWords = []string{"the", "and", "for", "with", "from", "behind", "under", "over"}
