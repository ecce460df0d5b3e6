package reading

import (
	"strings"
	"unicode"

	"matchmark/packs/units"
)

// maxLine is the longest line that is read, in runes: longer ones are prose.
const maxLine = 300

// maxDepth is how deep brackets and rates may stand inside each other.
const maxDepth = 8

// A cursor steps through a line. The first fault found ends the reading.
type cursor struct {
	line  string
	runes []rune
	pos   int
	depth int
	fault *Fault
}

func newCursor(line string) *cursor {
	c := &cursor{line: line, runes: []rune(line)}
	if len(c.runes) > maxLine {
		c.failAt(0, len(c.runes), "too-long", "the line is longer than a limit can be", "0.05 to 0.12 mm")
	}
	c.blanks()
	if c.fault == nil && c.end() {
		c.failAt(0, len(c.runes), "empty", "nothing is written", "0.05 to 0.12 mm", "record to 0.01 mm")
	}
	return c
}

// failAt keeps the first fault, over width runes from offset.
func (c *cursor) failAt(offset, width int, code, message string, help ...string) {
	if c.fault == nil {
		offset = min(offset, len(c.runes))
		c.fault = &Fault{Offset: offset, Width: min(width, len(c.runes)-offset), Code: code, Message: message, Help: help}
	}
}

// failFrom keeps a fault from offset up to where the cursor stands.
func (c *cursor) failFrom(offset int, code, message string, help ...string) {
	c.failAt(offset, c.pos-offset, code, message, help...)
}

// at gives the rune at a place, 0 outside the line.
func (c *cursor) at(i int) rune {
	if i >= 0 && i < len(c.runes) {
		return c.runes[i]
	}
	return 0
}

func (c *cursor) peek() rune { return c.at(c.pos) }

func (c *cursor) end() bool { return c.pos >= len(c.runes) }

// ok reports whether there is still something to read rightly.
func (c *cursor) ok() bool { return c.fault == nil }

func (c *cursor) rest() string { return string(c.runes[min(c.pos, len(c.runes)):]) }

// typed gives the line from one place to another, without blanks at its ends.
func (c *cursor) typed(from, to int) string {
	return strings.TrimSpace(string(c.runes[from:min(to, len(c.runes))]))
}

// with gives the line with the runes from one place to another put right.
func (c *cursor) with(from, to int, text string) string {
	return strings.TrimSpace(string(c.runes[:from]) + text + string(c.runes[min(to, len(c.runes)):]))
}

func isBlank(r rune) bool { return unicode.IsSpace(r) }

func (c *cursor) blanks() {
	for isBlank(c.peek()) {
		c.pos++
	}
}

func isWordRune(r rune) bool {
	return unicode.IsLetter(r) || unicode.IsDigit(r) || r == '-' || r == '_'
}

// ahead gives the place behind the words if they stand next, else -1. Between
// words any number of blanks may stand, and no letter may follow the last.
func (c *cursor) ahead(words string) int {
	i := c.pos
	for _, r := range words {
		if r == ' ' {
			if !isBlank(c.at(i)) {
				return -1
			}
			i = c.skip(i)
			continue
		}
		if c.at(i) != r {
			return -1
		}
		i++
	}
	if isWordRune(c.at(i)) {
		return -1
	}
	return i
}

// take steps over the words, and blanks behind them, if they stand next.
func (c *cursor) take(words string) bool {
	i := c.ahead(words)
	if i < 0 || !c.ok() {
		return false
	}
	c.pos = i
	c.blanks()
	return true
}

// takeRune steps over one sign, and blanks behind it.
func (c *cursor) takeRune(r rune) bool {
	if c.peek() != r || !c.ok() {
		return false
	}
	c.pos++
	c.blanks()
	return true
}

// number reads a number that has to stand here.
func (c *cursor) number() units.Number {
	if !c.ok() {
		return units.Number{}
	}
	n, width, fault := units.LeadingNumber(c.rest())
	if fault != nil {
		c.numberFault(fault)
		return n
	}
	c.pos += width
	return n
}

// numberFault takes over the fault of a number; its help becomes the whole line
// with the number put right.
func (c *cursor) numberFault(f *Fault) {
	if f.Code == "not-a-number" {
		c.unknown("a number is missing")
		return
	}
	from, to := c.pos+f.Offset, c.pos+f.Offset+f.Width
	var help []string
	for _, h := range f.Help {
		help = append(help, c.with(from, to, h))
	}
	message := f.Message
	if f.Code == "decimal-comma" {
		for i := range help {
			help[i] = points(help[i])
		}
		if len(help) == 1 {
			message = "decimal comma: write " + help[0]
		}
	}
	c.failAt(from, f.Width, f.Code, message, help...)
}

// points turns the other decimal commas of a line into points as well.
func points(line string) string {
	r := []rune(line)
	for i := 1; i+1 < len(r); i++ {
		if r[i] == ',' && unicode.IsDigit(r[i-1]) && unicode.IsDigit(r[i+1]) {
			r[i] = '.'
		}
	}
	return string(r)
}

// unit reads a unit if one stands next, None if not.
func (c *cursor) unit() units.Unit {
	if !c.ok() {
		return units.None
	}
	at := c.pos
	c.blanks()
	u, width := units.LeadingUnit(c.rest())
	if width == 0 {
		c.pos = at
		return units.None
	}
	c.pos += width
	return u
}

// digitNext reports whether a number begins here, with a sign or without.
func (c *cursor) digitNext() bool {
	r := c.peek()
	if r == '+' || r == '-' || r == '−' {
		r = c.at(c.pos + 1)
	}
	return r >= '0' && r <= '9' || r == '.' && c.at(c.pos+1) >= '0' && c.at(c.pos+1) <= '9'
}

// markNext gives the place behind the mark that stands next, -1 if none does.
func (c *cursor) markNext() int {
	i := c.pos
	if c.at(i) != 'D' || c.at(i+1) < '0' || c.at(i+1) > '9' {
		return -1
	}
	for i++; c.at(i) >= '0' && c.at(i) <= '9'; i++ {
	}
	for c.at(i) == '/' && isWordRune(c.at(i+1)) {
		for i++; isWordRune(c.at(i)) || c.at(i) == '.'; i++ {
		}
	}
	return i
}

// mark reads a mark that stands next.
func (c *cursor) mark() Mark {
	i := c.markNext()
	if i < 0 || !c.ok() {
		return ""
	}
	from := c.pos
	c.pos = i
	m := string(c.runes[from:i])
	switch next := c.peek(); {
	case next == '-' || next == '+' || next == '–' || next == '−':
		c.blankSigns(from)
	case isWordRune(next):
		for isWordRune(c.peek()) {
			c.pos++
		}
		c.failFrom(from, "mark", "\""+c.typed(from, c.pos)+"\" is not the mark of a reading", c.with(i, c.pos, ""))
	case c.at(from+1) == '0':
		c.failFrom(from, "mark", m+": the number of a mark does not begin with 0", c.with(from, i, "D7"))
	}
	return Mark(m)
}

// blankSigns is the fault of a plus or minus without a blank on both sides.
func (c *cursor) blankSigns(from int) {
	sign, name := "-", "minus"
	if c.peek() == '+' {
		sign, name = "+", "plus"
	}
	at := c.pos
	left := c.typed(from, at)
	i := at + 1
	for i < len(c.runes) && !isBlank(c.runes[i]) {
		i++
	}
	whole := c.typed(from, i)
	c.failAt(from, i-from, "blanks", "a blank on both sides of the "+name+": "+left+" "+sign+" "+strings.TrimSpace(string(c.runes[at+1:i]))+" ("+whole+" could be a name)",
		c.with(at, at+1, blankBefore(c.at(at-1))+sign+" "))
}

func blankBefore(r rune) string {
	if isBlank(r) {
		return ""
	}
	return " "
}
