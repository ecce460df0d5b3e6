package dimension

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// held is a limit whose figures stay together on a line: a number with the word before it,
// the two ends of a range, a value with its deviations. "0.30 –" at the end of a line reads
// as a limit of its own, "at least" as none, and so does one of its two words.
func held(text string) string {
	var out strings.Builder
	out.Grow(len(text) + 8) // for most of its spaces
	word := 0               // where the word before begins
	for i, x := range text {
		if x == ' ' && holds(text[word:i], text[i+1:]) {
			out.WriteString(layout.NoBreak)
		} else {
			out.WriteRune(x)
		}
		if unicode.IsSpace(x) {
			word = i + utf8.RuneLen(x)
		}
	}
	return out.String()
}

// holds reports whether no line ends between a word and the text behind it.
func holds(word, behind string) bool {
	last, _ := utf8.DecodeLastRuneInString(word)
	next, n := utf8.DecodeRuneInString(behind)
	digit := func(x rune) bool { return '0' <= x && x <= '9' }
	switch {
	case word == "" || behind == "" || strings.ContainsRune(",;:·", last):
		return false
	case strings.Trim(word, signs) == "", digit(next), strings.ContainsRune("±–…/×=", next):
		return true
	}
	if utf8.RuneCountInString(word) <= shortWord && !strings.ContainsFunc(word, notLetter) {
		if between, figures, ok := strings.Cut(behind, " "); ok && figures != "" && digit(rune(figures[0])) && !strings.ContainsFunc(between, notLetter) {
			return true
		}
	}
	after, _ := utf8.DecodeRuneInString(behind[n:])
	return strings.ContainsRune("+−", next) && digit(after)
}

// shortWord is the length of a word that says nothing without the next: at most, au plus,
// como máximo, co najmniej.
const shortWord = 4

func notLetter(x rune) bool { return !unicode.IsLetter(x) }

// signs are those that stand between the figures of a limit.
const signs = "+−±–…/×="

// zone is the size of a limit by letter and grade, on one line: Ø90 m6.
func zone(d *job.Dim, l *reading.Limit) string {
	return strings.ReplaceAll(d.Zone(l), " ", layout.NoBreak)
}
