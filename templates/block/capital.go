package block

import (
	"unicode"
	"unicode/utf8"
)

// Capital begins a sentence with a capital letter, of whatever alphabet.
func Capital(t string) string {
	first, size := utf8.DecodeRuneInString(t)
	if size == 0 {
		return t
	}
	return string(unicode.ToUpper(first)) + t[size:]
}
