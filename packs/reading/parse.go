package reading

import (
	"strings"
	"unicode"

	"matchmark/packs/units"
)

// Parse reads a limit. Exactly one of the two results is nil.
func Parse(text string) (*Limit, *Fault) {
	c := newCursor(text)
	l := c.limit()
	if c.ok() && !c.end() {
		c.unknown("something stands behind the limit")
	}
	if c.fault != nil {
		return nil, c.fault
	}
	return l, nil
}

// ParseFormula reads how a reading is worked out from others: D1 - D2, mean of D3
// and D4. It needs at least one other reading, and has no verdict.
func ParseFormula(text string) (*Value, *Fault) {
	c := newCursor(text)
	from := c.pos
	v := c.value()
	c.blanks()
	if c.ok() && !c.end() {
		if c.tolerance(&Test{}) {
			c.failFrom(from, "formula", "a tolerance in a formula: the limit goes to left:", c.typed(from, c.pos))
		}
		c.unknown("something stands behind the formula")
	}
	if c.ok() && len(v.Marks()) == 0 {
		c.failFrom(from, "formula", "no reading in the formula: "+c.typed(from, c.pos), "D1 - D2 + 0.20 mm")
	}
	if c.ok() {
		c.settle(from, &Test{At: v, Rule: About})
	}
	if c.fault != nil {
		return nil, c.fault
	}
	return v, nil
}

// limit reads a whole line.
func (c *cursor) limit() *Limit {
	for _, w := range []struct {
		word string
		kind Kind
	}{{"words", Words}, {"sketch", Sketch}, {"tick", Tick}, {"none", NoneAllowed}, {"yes or no", YesOrNo}} {
		if c.take(w.word) {
			return &Limit{Kind: w.kind}
		}
	}
	from := c.pos
	switch {
	case c.take("record"):
		return c.record(from)
	case c.take("must be"):
		return &Limit{Kind: MustBe, Phrases: []string{c.phrase(from, "must be what?", "must be free")}}
	case c.take("choose"):
		return c.choose(from)
	case c.ahead("as found") >= 0 && c.skip(c.ahead("as found")) == len(c.runes):
		c.pos = len(c.runes)
		return &Limit{Kind: SameAsFound}
	}
	l := &Limit{Tests: []Test{c.test()}}
	for c.ok() {
		c.blanks()
		if !c.take("and") {
			break
		}
		l.Tests = append(l.Tests, c.test())
	}
	if c.ok() {
		c.oneUnit(l)
	}
	return l
}

// record reads what follows "record".
func (c *cursor) record(from int) *Limit {
	l := &Limit{Kind: Record}
	if !c.take("to") {
		return l
	}
	n := c.number()
	u := c.unit()
	switch {
	case !c.ok():
	case u == units.None:
		c.noUnit(from, c.pos)
	case n.Sign() <= 0:
		c.failFrom(from, "record", "record to "+n.Text()+": the step of the last digit is more than nothing", "record to 0.01 mm")
	case u.Counted():
		c.wholeOnly(from, quantity(n, u))
	}
	c.blanks()
	l.Step = &units.Quantity{Number: n, Unit: u}
	return l
}

// phrase reads the rest of the line as words to be printed as they are.
func (c *cursor) phrase(from int, missing, good string) string {
	start := c.pos
	text := strings.Join(strings.Fields(c.rest()), " ")
	c.pos = len(c.runes)
	if text == "" {
		c.failFrom(from, "phrase", missing, good)
	}
	c.phraseSigns(start)
	return text
}

// phraseSigns sees that a phrase has no sign that the file or the paper cannot
// hold.
func (c *cursor) phraseSigns(start int) {
	for i := start; i < len(c.runes); i++ {
		r := c.runes[i]
		if r == ',' {
			c.failAt(i, 1, "sign", "a comma cannot stand in a limit: the file can be cut there", c.with(i, i+1, " and"))
		}
		if r == '#' {
			c.failAt(i, 1, "sign", "\"#\" cannot stand in a limit: what follows it is a comment of the file", c.with(i, len(c.runes), ""))
		}
		if r == unicode.ReplacementChar || !unicode.IsPrint(r) && !isBlank(r) {
			c.failAt(i, 1, "sign", "a sign that cannot be printed", "must be free")
		}
	}
}

// choose reads "A or B or C".
func (c *cursor) choose(from int) *Limit {
	l := &Limit{Kind: Choose}
	start := c.pos
	text := c.phrase(from, "choose between what?", "choose A or B")
	for _, p := range strings.Split(" "+text+" ", " or ") {
		p = strings.TrimSpace(p)
		if p == "" {
			c.failAt(start, len(c.runes)-start, "choose", "a choice is missing beside \"or\"", "choose A or B")
		}
		for _, q := range l.Phrases {
			if p == q {
				c.failAt(start, len(c.runes)-start, "choose", "the choice "+p+" stands twice", "choose A or B")
			}
		}
		l.Phrases = append(l.Phrases, p)
	}
	if len(l.Phrases) < 2 {
		c.failFrom(from, "choose", "one choice is none: "+text, "choose "+text+" or B", "must be "+text)
	}
	return l
}
