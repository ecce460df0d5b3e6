package reading

import (
	"strings"

	"matchmark/packs/units"
)

// operator steps over a plus or minus with a blank on both sides. It stands back
// from a tolerance.
func (c *cursor) operator(v *Value, from int) (minus, more bool) {
	at := c.pos
	c.blanks()
	sign := c.peek()
	switch sign {
	case '+', '-', '−':
	case '–', '—':
		c.dashOrBlanks(v, from)
		return false, false
	default:
		c.pos = at
		return false, false
	}
	next := c.at(c.pos + 1)
	switch {
	case c.tolerancePair() || next == '/' || sign == '+' && (next == '-' || next == '−'):
		c.pos = at
		return false, false
	case isBlank(next) && isBlank(c.at(c.pos-1)):
		if skip := c.pos + 1; c.blankSlash(skip) {
			c.pos = at
			return false, false
		}
		c.pos++
		c.blanks()
		return sign != '+', true
	}
	c.dashOrBlanks(v, from)
	return false, false
}

// blankSlash reports whether only blanks stand between a plus and a stroke, as
// in "+ / - 0.1".
func (c *cursor) blankSlash(i int) bool {
	for isBlank(c.at(i)) {
		i++
	}
	return c.at(i) == '/'
}

// tolerancePair reports whether two deviations with a stroke between them stand
// next: +0.02/-0.00.
func (c *cursor) tolerancePair() bool {
	i := c.pos + 1
	if r := c.at(i); r < '0' || r > '9' {
		return false
	}
	_, width, fault := units.LeadingNumber(string(c.runes[c.pos:]))
	if fault != nil {
		return false
	}
	i = c.pos + width
	for isBlank(c.at(i)) {
		i++
	}
	return c.at(i) == '/'
}

// dashOrBlanks tells apart 0.05-0.12, which can be a range, and D1 -0.2, which
// lacks a blank. The cursor stands at the sign.
func (c *cursor) dashOrBlanks(v *Value, from int) {
	to := c.pos + 1
	for to < len(c.runes) && (isBlank(c.runes[to]) || c.runes[to] == '.' || isWordRune(c.runes[to])) && !c.wordAt(to) {
		to++
	}
	if v.plain() && c.peek() != '+' {
		c.dash(from, to)
		return
	}
	if v.plain() && c.peek() == '+' {
		if first, second, two := strings.Cut(c.typed(c.pos, to), " -"); two {
			c.failAt(c.pos, to-c.pos, "one-deviation", "a stroke parts the two deviations: "+first+"/-"+second, c.with(c.pos, to, first+"/-"+second))
			return
		}
		c.failAt(c.pos, to-c.pos, "one-deviation", "only one deviation: "+c.typed(c.pos, to)+"; the other one belongs behind a stroke, 0 if it is none",
			c.with(c.pos, c.pos+2+numberWidth(c.runes[c.pos+1:])-1, c.deviationPair()))
		return
	}
	c.blankSigns(from)
}

// wordAt reports whether a word of the language begins here that ends a size.
func (c *cursor) wordAt(i int) bool {
	at := c.pos
	c.pos = i
	defer func() { c.pos = at }()
	return isBlank(c.at(i-1)) && c.ahead("and") >= 0
}

// numberWidth is the width of the number that the runes begin with, 0 if none.
func numberWidth(r []rune) int {
	_, width, fault := units.LeadingNumber(string(r))
	if fault != nil {
		return 0
	}
	return width
}

// deviationPair writes the deviation at the cursor with a zero one beside it.
func (c *cursor) deviationPair() string {
	n, _, fault := units.LeadingNumber(c.rest())
	if fault != nil {
		return "+0.02/-0.00"
	}
	return n.Text() + "/-" + n.Sub(n).Text()
}

// dash is the fault of two sizes with a dash between them.
func (c *cursor) dash(from, to int) {
	line := c.typed(from, to)
	r := []rune(line)
	for i := 1; i < len(r); i++ {
		if r[i] == '-' || r[i] == '–' || r[i] == '—' || r[i] == '−' {
			before, after := units.Number{}, 0
			if n, width, fault := units.LeadingNumber(line); fault == nil && width <= i {
				before, after = n, i+1
			}
			if after == 0 {
				continue
			}
			for isBlank(runeAt(r, after)) {
				after++
			}
			gap := before.Text()
			if u := spaceTrim(r[numberWidth(r):i]); u != "" {
				gap += " " + u
			}
			good := gap + " to " + string(r[after:])
			c.failAt(from, to-from, "dash", "a dash between two sizes can mean \"to\" or \"less\": for limits write "+good, c.with(from, to, good))
			return
		}
	}
	c.failAt(from, to-from, "dash", "a dash between two sizes can mean \"to\" or \"less\"", "0.05 to 0.12 mm")
}

func runeAt(r []rune, i int) rune {
	if i < len(r) {
		return r[i]
	}
	return 0
}
