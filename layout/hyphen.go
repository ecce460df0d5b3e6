package layout

import (
	"strings"
	"unicode"
)

// A word is only hyphenated when it is longer than a whole line, so no
// dictionary is kept. The rules are the common ones of English and German
// setting, without a source: leave at least hyphenEnd letters on either side,
// part before the consonant that opens the next syllable, and do not part
// letters that are read as one sound. Words with a figure in them are marks,
// sizes or units and are never parted.

// hyphenEnd is the least number of letters on either side of a hyphen.
const hyphenEnd = 3

// oneSound lists pairs of letters that stay together.
const oneSound = "ch sh th ph gh ck qu wh ng"

// isVowel tells a vowel of the Latin languages, accents counted in.
func isVowel(r rune) bool {
	return strings.ContainsRune("aeiouyäöüáéíóúàèìòùâêîôûåæø", unicode.ToLower(r))
}

// hyphenPlaces gives, for a word, the byte positions where it may be parted,
// best ones first: 1 for the start of a syllable, 0 for a place of need.
func hyphenPlaces(word string) (places []hyphenPlace) {
	rs := []rune(word)
	for _, r := range rs {
		if unicode.IsDigit(r) {
			return nil
		}
	}
	at := 0
	for i, r := range rs {
		if i > 0 && lettersBefore(rs, i) >= hyphenEnd && lettersAfter(rs, i) >= hyphenEnd && !together(rs[i-1], r) {
			good := !isVowel(r) && i+1 < len(rs) && isVowel(rs[i+1])
			places = append(places, hyphenPlace{at: at, good: good})
		}
		at += len(string(r))
	}
	return places
}

// hyphenPlace is a place to part a word, at a byte position.
type hyphenPlace struct {
	at   int
	good bool
}

func together(a, b rune) bool {
	return strings.Contains(oneSound, strings.ToLower(string([]rune{a, b})))
}

// lettersBefore counts the letters that directly precede position i.
func lettersBefore(rs []rune, i int) (n int) {
	for i--; i >= 0 && unicode.IsLetter(rs[i]); i-- {
		n++
	}
	return n
}

// lettersAfter counts the letters from position i on.
func lettersAfter(rs []rune, i int) (n int) {
	for ; i < len(rs) && unicode.IsLetter(rs[i]); i++ {
		n++
	}
	return n
}
