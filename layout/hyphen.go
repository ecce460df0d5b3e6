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

// hyphenAt tells whether the word, as a list of signs, may be parted before sign
// i, and whether a syllable starts there.
func hyphenAt(rs []rune, i int) (ok, syllable bool) {
	if i < hyphenEnd || i+hyphenEnd > len(rs) {
		return false, false
	}
	for _, r := range rs[i-hyphenEnd : i+hyphenEnd] {
		if !unicode.IsLetter(r) {
			return false, false
		}
	}
	if strings.Contains(oneSound, strings.ToLower(string(rs[i-1:i+1]))) {
		return false, false
	}
	return true, !isVowel(rs[i]) && isVowel(rs[i+1])
}
