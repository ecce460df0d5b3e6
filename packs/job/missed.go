package job

import (
	"slices"
	"strings"
	"unicode"

	"matchmark/packs/phrase"
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
var saysLeft = phrase.Of(`(?i)^left[- ]?hand(ed)?( thread)?$`)

// missedIn is what of a sentence, between its commas, speaks of a part: of those of the
// machine the part that a clause names best, or by its left-hand thread. What names no part
// goes on with the part before it: seal ring, lip inward is said of the ring alone. At the
// head of a sentence it is said of no part.
func (p *Part) missedIn(sentence string, parts []*Part) string {
	var speaks []string
	of := false // the clause before is said of the part
	for _, clause := range strings.Split(sentence, ",") {
		words := strings.TrimSpace(clause)
		mine := p.named(words)
		if mine > 0 || of {
			best := mine
			for _, q := range parts {
				best = max(best, q.named(words))
			}
			of = best == mine // where none is named, 0, it goes on
		}
		if of {
			speaks = append(speaks, clause)
		}
	}
	return strings.TrimSpace(strings.Join(speaks, ","))
}

// named tells how well a clause names a part: by how many words of its name, and above all
// by the one that says what it is. LONG screw is the long screw of the baffle and no other
// screw, drain plug is not the ring of the drain plug. A pack of shims is named by its leaves.
// It is 0 for a clause that has no word of the name.
func (p *Part) named(clause string) int {
	if p.Left && saysLeft.MatchString(clause) {
		return 1
	}
	said := wordsOf(clause)
	if p.Shims != nil && (slices.Contains(said, "leaf") || slices.Contains(said, "leave")) {
		said = append(said, "shim")
	}
	score, kind := 0, ""
	for _, name := range wordsOf(p.Name) {
		if len(name) < leastWord || slices.Contains(smallWords, name) || !slices.Contains(said, name) {
			continue
		}
		if kind == "" {
			kind = kindOf(p.Name)
		}
		score += 2
		if name == kind {
			score++
		}
	}
	return score
}

// kindOf is the word of a name that says what it is; empty for none.
func kindOf(name string) (kind string) {
	for _, word := range wordsOf(fromSmall.ReplaceAllString(figures.ReplaceAllString(name, ""), "")) {
		kind = word
	}
	return kind
}

// fromSmall is the first small word of a name and all behind it: the screw of the cover is a
// screw.
var fromSmall = phrase.Of(`(?i) (of|in|on|at|to|the|and|for|with|from|behind|under|over) .*`)

// figures are the sizes in a name with their units: of Packing ring 12.5 mm the last word is
// ring, of Stud M16 x 90 it is stud.
var figures = phrase.Of(`(?i)[^\s\pL]*\pL{0,2}\d\S*(\s*(%|°[CF]?|(mm|cm|m|µm|in|inch|inches|ft|kg|g|lb|t|bar|kPa|MPa|psi|kW|W|V|A|Hz|N·m|Nm|x|×|DN|PN)\b))*`)

// wordsOf are the words of a text in small letters, without the s of the plural and without
// what has no letters, or one alone as the M of a thread.
func wordsOf(text string) []string {
	var out []string
	for _, w := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) }) {
		if len(w) > 1 {
			out = append(out, strings.TrimSuffix(strings.ToLower(w), "s"))
		}
	}
	return out
}

// leastWord is how long a word is at the least that names a part.
const leastWord = 3

// smallWords stand in names of parts, as in screw of the cover, and name none.
var smallWords = []string{"the", "and", "for", "with", "from", "behind", "under", "over"}
