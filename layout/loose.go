package layout

import (
	"strings"
	"unicode"
)

// Loose gives a text that was typed by somebody in which a line may end within any word:
// one with signs or figures in it, as the name of a file, is never hyphenated, and would
// reach over where it is longer than its line. No more than n runes of such a word stay
// together. Words of letters alone are left to be hyphenated.
func Loose(text string, n int) string {
	fields := strings.Split(text, " ")
	for i, f := range fields {
		if len(f) > n && strings.ContainsFunc(f, func(r rune) bool { return !unicode.IsLetter(r) }) {
			fields[i] = loosened(f, max(n, 1))
		}
	}
	return strings.Join(fields, " ")
}

// loosened lets a line end behind each sign of a word and behind n runes without one.
func loosened(word string, n int) string {
	var out strings.Builder
	run := 0
	for _, r := range word {
		if run == n {
			out.WriteRune('\u200b')
			run = 0
		}
		out.WriteRune(r)
		if run++; !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			out.WriteRune('\u200b')
			run = 0
		}
	}
	return out.String()
}
