package def

import (
	"fmt"
	"unicode/utf8"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
)

// What word processors put in place of the signs that YAML reads by: wide or
// unbreakable blanks where lines are set in, a bullet or a long dash where an entry
// of a list begins. Each is told and then read as the sign that was meant; inside a
// text they stay as they are.

// A leading follows a text rune by rune and knows whether only blanks and dashes
// stand before on the line.
type leading struct {
	r      *reader
	inText bool // something else was met on this line
	colon  bool // the rune before was a colon
	dash   bool // a dash of a list was met before on this line

	blanks   source.Pos // where the first blank that was put right stands
	lines    int        // lines on which such blanks stand
	lastLine int
}

// listBegins is an entry of a list behind another sign than the dash: a key follows.
var listBegins = phrase.Of(`^[•–—·▪●‣*] +[\p{L}\p{N}_-]+ *:(?:\s|$)`)

// plain gives the sign that was meant for the rune that rest begins with, 0 where that
// rune is what it should be.
func (l *leading) plain(rest []byte) byte {
	c, _ := utf8.DecodeRune(rest)
	switch {
	case (!l.inText || l.colon) && wordBlank(c):
		return ' '
	case !l.inText && !l.dash && (listSign(c) || c == '*') && listBegins.MatchString(string(rest[:min(len(rest), 120)])):
		return '-'
	}
	return 0
}

// note keeps where a sign was put right.
func (l *leading) note(c rune, line, col int) {
	if !wordBlank(c) {
		l.r.add(l.r.at(line, col, 1), "list-dash", fmt.Sprintf("%q is no dash: an entry of a list begins with the dash of the keyboard", c), "write: - and a blank in its place")
		return
	}
	if l.blanks.IsZero() {
		l.blanks = l.r.at(line, col, 1)
	}
	if line != l.lastLine {
		l.lines, l.lastLine = l.lines+1, line
	}
}

// pass goes on behind a rune.
func (l *leading) pass(c rune) {
	switch {
	case c == '\n' || c == '\r':
		l.inText, l.colon, l.dash = false, false, false
		return
	case c == ' ' || c == '\t' || wordBlank(c):
		return
	case !l.inText && (c == '-' || listSign(c)):
		l.dash = true
	default:
		l.inText = true
	}
	l.colon = c == ':'
}

// tell reports the blanks that were put right, once for the whole file.
func (l *leading) tell() {
	if l.blanks.IsZero() {
		return
	}
	more := ""
	if l.lines > 1 {
		more = fmt.Sprintf("; such blanks stand on %d lines", l.lines)
	}
	l.r.add(l.blanks, "word-blank", "a blank of a word processor stands here where YAML needs an ordinary one"+more,
		"put an ordinary blank in its place; replacing all of them in the editor puts the whole file right")
}

func listSign(c rune) bool {
	return c == '•' || c == '–' || c == '—' || c == '·' || c == '▪' || c == '●' || c == '‣'
}

// wordBlank reports whether a rune is a blank that YAML takes for a letter: no-break
// spaces, the spaces of set width, the wide blank of East Asian scripts.
func wordBlank(c rune) bool {
	return c == '\u00a0' || c == '\u202f' || c == '\u3000' || c >= '\u2000' && c <= '\u200a'
}
