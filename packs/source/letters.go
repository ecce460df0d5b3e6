package source

import (
	"fmt"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/runenames"
)

// RuneName names a character for a person who cannot see it, or takes it for
// another one: U+200B zero width space. Control characters have no name.
func RuneName(r rune) string {
	name := strings.ToLower(runenames.Name(r))
	if name == "" || name[0] == '<' {
		return fmt.Sprintf("U+%04X", r)
	}
	return fmt.Sprintf("U+%04X %s", r, name)
}

// Invisible reports whether a character prints nothing and is no blank: control
// characters, line separators, code points that are no characters, and what the
// Unicode Standard calls format characters and default ignorable (chapter 23.2
// and the property Default_Ignorable_Code_Point): zero width spaces and joiners,
// soft hyphens, signs that turn the direction of writing, selectors and fillers.
// Two texts that differ in one of them look the same on paper.
func Invisible(r rune) bool {
	switch {
	case r < ' ', r == '\u2028', r == '\u2029', r == '\u2800', r&0xFFFE == 0xFFFE:
		return true
	case r < 0x7f:
		return false
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Other_Default_Ignorable_Code_Point, unicode.Variation_Selector)
}

// OddBlank reports whether a character is a blank other than that of the blank
// key: in running text it prints as a blank, in a name it makes two that look alike.
func OddBlank(r rune) bool { return r != ' ' && unicode.Is(unicode.Zs, r) }

// twins are the letters of other alphabets that look like a Latin one in the usual
// typefaces (from memory of the confusables of Unicode Technical Standard 39; only
// those that differ in nothing a reader would see).
var twins = func() map[rune]rune {
	m := map[rune]rune{}
	const (
		others = "АВЕЅІЈКМНОРСТУХаеѕіјорсухһԁԛԝ" + "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧο"
		latin  = "ABESIJKMHOPCTYXaesijopcyxhdqw" + "ABEZHIKMNOPTYXo"
	)
	of := []rune(latin)
	for i, r := range []rune(others) {
		m[r] = of[i]
	}
	for r := '!'; r <= '~'; r++ {
		m[r+0xFEE0] = r // the full-width forms
	}
	return m
}()

// Twin gives the Latin letter, digit or sign that a character of another alphabet
// looks like.
func Twin(r rune) (rune, bool) {
	l, ok := twins[r]
	return l, ok
}

// Plain writes a text with its look-alikes replaced by what they look like.
func Plain(s string) string {
	return strings.Map(func(r rune) rune {
		if l, ok := twins[r]; ok {
			return l
		}
		return r
	}, s)
}

// MixedLetter finds a word of Latin letters with a look-alike of another alphabet
// among them, which nobody types on purpose: the look-alike, and the word. The
// rune is 0 when there is none. A whole word of another alphabet is what it is.
func MixedLetter(s string) (r rune, word string) {
	plain := true
	for i := 0; plain && i < len(s); i++ {
		plain = s[i] < 0x80
	}
	if plain {
		return 0, ""
	}
	for _, w := range strings.FieldsFunc(s, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }) {
		latin, twin := false, rune(0)
		for _, r := range w {
			if r < 0x80 && unicode.IsLetter(r) {
				latin = true
			} else if _, ok := twins[r]; ok && twin == 0 {
				twin = r
			}
		}
		if latin && twin != 0 {
			return twin, w
		}
	}
	return 0, ""
}
