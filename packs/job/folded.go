package job

import (
	"crypto/sha256"
	"strings"
	"unicode"
)

// The longest field of a code, and how many signs stay of a longer one, its last, behind
// letters that stand for all of it.
const mostField, lastSigns = 8, 6

// none stands in a code for a field of which no sign is left.
const none = "0"

// checkLetters are consonants that lie on the same key of the keyboards of English, German
// and French, so no A, M, Q, W, Y and Z; no vowels, so that they make no words; none that
// is read as a figure.
const checkLetters = "BCDFGHJKLNPRSTVX"

// Folded leaves of a text the capitals and figures, its letters made capitals; "0" where
// nothing is left. Of one of more than eight signs the last six stay, behind two check
// letters of the whole: WO-5512 is WO5512, MAINT-2026-000123456 ends in 123456.
func Folded(text string) string {
	out := strings.Map(func(r rune) rune {
		r = unicode.ToUpper(r)
		if r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' {
			return r
		}
		return -1
	}, text)
	switch {
	case out == "":
		return none
	case len(out) > mostField:
		return CheckLetters(text, mostField-lastSigns) + out[len(out)-lastSigns:]
	}
	return out
}

// CheckLetters are so many letters that stand for a text, 16 at the most: four bits of its
// SHA-256 each.
func CheckLetters(text string, n int) string {
	sum := sha256.Sum256([]byte(text))
	var b strings.Builder
	for i := range n {
		b.WriteByte(checkLetters[sum[i/2]>>(4*(1-i%2))&15])
	}
	return b.String()
}

// IsCheck reports whether a text is made of check letters alone.
func IsCheck(text string) bool { return text != "" && strings.Trim(text, checkLetters) == "" }
