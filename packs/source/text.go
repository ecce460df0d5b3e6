package source

import (
	"strings"
	"unicode/utf8"
)

// Text is one scalar as it was typed, without the quotes round it, with its
// place. Of the keys that take yes or no the Value is "yes" or "no" however it
// was typed. A Text whose At is zero was not written, or stands where a problem
// has been reported.
//
// At is the place of the first letter of the text, inside its quotes, and its
// Width that of the text in the file. What stands behind an anchor has the place
// where it was typed, not where an alias repeats it: there it is put right.
type Text struct {
	Value string
	At    Pos
}

// Written reports whether the key stood in the file.
func (t Text) Written() bool { return !t.At.IsZero() }

// Part gives the place of width runes of the text from rune offset (from 0) on.
// Where the text in the file is not the value letter by letter (it runs over
// several lines, or has escapes in quotes), and where the part lies outside the
// text, it gives the place of the whole.
func (t Text) Part(offset, width int) Pos {
	n := utf8.RuneCountInString(t.Value)
	if t.At.Width != n || offset < 0 || width < 0 || offset+width > n {
		return t.At
	}
	at := t.At
	at.Col += offset
	at.Width = max(width, 1)
	return at
}

// PlaceOf gives the place of a word within the text, or that of the whole where the
// word is not in it.
func (t Text) PlaceOf(word string) Pos {
	i := strings.Index(t.Value, word)
	if i < 0 {
		return t.At
	}
	return t.Part(utf8.RuneCountInString(t.Value[:i]), utf8.RuneCountInString(word))
}
