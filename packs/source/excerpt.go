package source

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// The window of a long source line: so many columns are shown in all, and so
// many of them at most before the place. 100 columns and two blanks fit the
// usual terminal and an A4 page in 9 pt type.
const (
	windowColumns = 100
	windowBefore  = 40
	tabColumns    = 8
	// windowRunes is how many runes on either side of the place are looked at to
	// find the window: a line may have millions, and some take no column.
	windowRunes = 500
)

// A cell is one rune as shown, and how many columns it takes on a terminal.
type cell struct {
	shown   string
	columns int
}

// cells turns a line into what is shown for each of its runes.
func cells(line string) []cell {
	list := make([]cell, 0, len(line))
	for i, r := range line {
		switch {
		case r == '\t':
			list = append(list, cell{"\t", tabColumns})
		case r == utf8.RuneError && !strings.HasPrefix(line[i:], "\uFFFD"):
			s := fmt.Sprintf(`\x%02x`, line[i])
			list = append(list, cell{s, len(s)})
		case Invisible(r):
			s := escape(r)
			list = append(list, cell{s, len(s)})
		default:
			list = append(list, cell{string(r), columns(r)})
		}
	}
	return list
}

// around cuts a line to windowRunes on either side of rune at (from 0). It gives
// the part, the place of the rune in it, and whether something was cut off.
func around(line string, at int) (part string, in int, cutFront, cutBack bool) {
	offset := 0 // bytes before the part
	for skip := at - windowRunes; skip > 0 && offset < len(line); skip-- {
		_, size := utf8.DecodeRuneInString(line[offset:])
		offset += size
		at--
	}
	end := offset
	for n := at + windowRunes; n > 0 && end < len(line); n-- {
		_, size := utf8.DecodeRuneInString(line[end:])
		end += size
	}
	return line[offset:end], at, offset > 0, end < len(line)
}

// excerpt gives the part of a line around rune col (from 1) as it can be shown
// safely, and the line of marks that goes below it: ^ under the first of width
// runes, ~ under the others. Tabs are kept in both so that they line up
// whatever the tab stops of the reader are.
func excerpt(line string, col, width int) (shown, mark string) {
	near, at, cutFront, cutBack := around(line, max(col-1, 0))
	all := cells(near)
	at = min(at, len(all))
	end := min(at+max(width, 1), len(all))

	first, before := at, 0
	for first > 0 && before+all[first-1].columns <= windowBefore {
		first--
		before += all[first].columns
	}
	last, total := first, 0
	for last < len(all) && total+all[last].columns <= windowColumns {
		total += all[last].columns
		last++
	}
	if first > 0 && last == len(all) { // room left over: show more of what is before
		for first > 0 && total+all[first-1].columns <= windowColumns {
			first--
			total += all[first].columns
		}
	}

	var text, under strings.Builder
	if first > 0 || cutFront {
		text.WriteString("…")
		under.WriteString(" ")
	}
	for i := first; i < last; i++ {
		text.WriteString(all[i].shown)
		if i >= at {
			continue
		}
		if all[i].shown == "\t" {
			under.WriteString("\t")
		} else {
			under.WriteString(strings.Repeat(" ", all[i].columns))
		}
	}
	if last < len(all) || cutBack {
		text.WriteString("…")
	}
	wide := 0
	for i := at; i < min(end, last); i++ {
		if all[i].shown == "\t" {
			wide++ // how wide it is depends on the reader: mark its start
		} else {
			wide += all[i].columns
		}
	}
	under.WriteString("^" + strings.Repeat("~", max(wide-1, 0)))
	return text.String(), under.String()
}

// printable escapes what could break a line or steer a terminal.
func printable(s string) string {
	var b strings.Builder
	for _, c := range cells(s) {
		if c.shown == "\t" {
			c.shown = `\t`
		}
		b.WriteString(c.shown)
	}
	return b.String()
}

// escape spells a rune as \x1b or \u202e.
func escape(r rune) string {
	if r < 0x100 {
		return fmt.Sprintf(`\x%02x`, r)
	}
	return fmt.Sprintf(`\u%04x`, r)
}

// wide are the ranges of runes that take two columns: the East Asian Wide and
// Fullwidth characters and the pictures of Unicode Standard Annex 11, put
// together into few ranges (from memory; unassigned code points between them
// count as wide as the annex says).
var wide = &unicode.RangeTable{
	R16: []unicode.Range16{
		{0x1100, 0x115F, 1}, {0x2E80, 0x303E, 1}, {0x3041, 0x33FF, 1}, {0x3400, 0x4DBF, 1},
		{0x4E00, 0x9FFF, 1}, {0xA000, 0xA4CF, 1}, {0xA960, 0xA97F, 1}, {0xAC00, 0xD7A3, 1},
		{0xF900, 0xFAFF, 1}, {0xFE10, 0xFE19, 1}, {0xFE30, 0xFE6F, 1}, {0xFF01, 0xFF60, 1},
		{0xFFE0, 0xFFE6, 1},
	},
	R32: []unicode.Range32{
		{0x16FE0, 0x18DFF, 1}, {0x1AFF0, 0x1B2FF, 1}, {0x1F300, 0x1F64F, 1}, {0x1F680, 0x1F6FF, 1},
		{0x1F900, 0x1FAFF, 1}, {0x20000, 0x2FFFD, 1}, {0x30000, 0x3FFFD, 1},
	},
}

// columns is how many columns of a terminal a rune takes: none for a mark that
// combines with the rune before it, two for a wide one.
func columns(r rune) int {
	switch {
	case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		return 0
	case unicode.Is(wide, r):
		return 2
	}
	return 1
}

// quotedRunes is how much of a line is quoted on paper.
const quotedRunes = 48

// Quoted gives what is written at a place, for paper: the line without its indent, of a
// long one the part from the place on. It is empty where there is none, and where the
// line has signs that nobody sees.
func Quoted(data []byte, at Pos) string {
	lines := Lines(data)
	if at.Line < 1 || at.Line > len(lines) {
		return ""
	}
	line := []rune(strings.TrimRight(lines[at.Line-1], " \t\r"))
	if from := min(max(at.Col-1, 0), len(line)); len(line) > quotedRunes && from > 0 {
		line = append([]rune("…"), line[from:]...)
	}
	if len(line) > quotedRunes {
		line = append(line[:quotedRunes-1], '…')
	}
	text := strings.TrimLeft(string(line), " ")
	if !utf8.ValidString(lines[at.Line-1]) || strings.ContainsFunc(text, func(r rune) bool { return Invisible(r) || r == '\t' }) {
		return ""
	}
	return text
}
