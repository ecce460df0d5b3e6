package reading

// test reads one test with what stands in brackets behind it, and settles its
// unit.
func (c *cursor) test() Test {
	from := c.pos
	t := Test{place: from}
	for _, g := range []struct {
		word  string
		group Group
	}{{"each", Each}, {"mean", Mean}, {"spread", Spread}, {"sum", Sum}} {
		// "mean of D3" is a value, "mean 1.10 to 1.40" a group.
		if c.ahead(g.word+" of") < 0 && c.take(g.word) {
			t.Group = g.group
			break
		}
	}
	c.rule(&t)
	c.unblank()
	t.width = c.pos - from
	c.settle(from, &t)
	c.blanks()
	if c.ok() && c.peek() == '(' {
		c.other(&t)
	}
	c.trailing(&t)
	return t
}

// rule reads the shape of a test and its values.
func (c *cursor) rule(t *Test) {
	from := c.pos
	switch {
	case !c.ok():
	case c.take("at least"), c.take("min"):
		t.Rule, t.Low = AtLeast, c.value()
		c.lone("at least")
	case c.take("at most"), c.take("max"):
		t.Rule, t.High = AtMost, c.value()
		c.lone("at most")
	case c.take("about"):
		t.Rule, t.At = About, c.value()
		c.lone("about")
	case c.take("exactly"):
		c.exactly(t, from)
	default:
		c.twoSided(t)
	}
}

// lone refuses a second end behind at least, at most or about.
func (c *cursor) lone(word string) {
	at := c.pos
	c.blanks()
	switch {
	case !c.ok():
		return
	case c.ahead("to") >= 0:
		c.failAt(c.pos, 2, "two-rules", "\""+word+"\" and \"to\" in one test: write one of them", "0.05 to 0.12 mm", "at most 0.12 mm")
	case c.toleranceNext():
		c.failAt(c.pos, len(c.runes)-c.pos, "two-rules", "\""+word+"\" with a tolerance: write one of them", "12.5 +/- 0.1 mm", word+" 12.5 mm")
	}
	c.pos = at
}

// exactly reads a count of pieces.
func (c *cursor) exactly(t *Test, from int) {
	n := c.number()
	u := c.unit()
	if !c.ok() {
		return
	}
	if !u.Counted() || n.Decimals() > 0 || n.Denominator() > 0 || n.Sign() < 0 {
		c.failFrom(from, "exactly", "only what is counted can be exact: "+c.typed(from, c.pos)+"; a size needs its tolerance", "exactly 8 pcs", "12.5 +/- 0.1 mm")
	}
	t.Rule, t.At = Exactly, one(n, u)
}

// twoSided reads "value to value" or "value tolerance".
func (c *cursor) twoSided(t *Test) {
	from := c.pos
	v := c.value()
	end := c.pos
	c.blanks()
	switch {
	case !c.ok():
	case c.take("to"):
		t.Rule, t.Low, t.High = Range, v, c.value()
	case c.tolerance(t):
		t.Rule, t.At = Nominal, v
	default:
		c.pos = end
		c.noTolerance(v, from)
	}
}

// unitTwice is the fault of "0.30 mm (0.012 in) to 0.40 mm (0.016 in)"; the
// cursor stands behind the first bracket.
func (c *cursor) unitTwice(t *Test, from, at int) {
	c.unblank()
	end := c.pos
	c.blanks()
	good := []string{"0.30 to 0.40 mm (0.012 to 0.016 in)"}
	c.take("to")
	high := Test{Rule: About, At: c.value()}
	c.settle(from, &high)
	c.blanks()
	if c.ok() && c.peek() == '(' {
		c.other(&high)
		if c.ok() {
			good[0] = t.At.numbers()[0].Text() + " to " + high.At.Text() + " (" + t.Other.At.numbers()[0].Text() + " to " + high.Other.At.Text() + ")"
		}
	}
	c.failAt(at, end-at, "brackets", "the other unit goes once to the end, in one bracket", good...)
}

// trailing finds a dash or min and max behind a test.
func (c *cursor) trailing(t *Test) {
	if !c.ok() || c.end() || c.ahead("and") >= 0 || c.peek() == ')' {
		return
	}
	if t.Rule == Range && (c.ahead("min") >= 0 || c.ahead("max") >= 0) {
		c.failAt(c.pos, 3, "word-order", "\""+c.typed(c.pos, c.pos+3)+"\" behind two limits", "0.05 to 0.12 mm")
		return
	}
	c.unknown("\"and\" with another test, or nothing, can follow")
}

// other reads the same limit in another unit from a bracket and compares.
func (c *cursor) other(t *Test) {
	from := c.pos
	c.takeRune('(')
	o := Test{Group: t.Group, Rule: t.Rule, place: c.pos}
	v := c.value()
	c.blanks()
	switch {
	case !c.ok():
		return
	case t.Rule == Range:
		if !c.take("to") {
			c.failFrom(from, "brackets", "the bracket needs both limits, as before it", "0.30 to 0.40 mm (0.012 to 0.016 in)")
		}
		o.Low, o.High = v, c.value()
	case t.Rule == Nominal:
		if !c.tolerance(&o) {
			c.failFrom(from, "brackets", "the bracket needs the tolerance too, as before it", "12.5 +/- 0.1 mm (0.492 +/- 0.004 in)")
		}
		o.At = v
		if t.Even != o.Even && c.ok() {
			c.failFrom(from, "brackets", "the bracket needs the same kind of tolerance as before it", "12.5 +/- 0.1 mm (0.492 +/- 0.004 in)")
		}
	case t.Rule == AtLeast:
		o.Low = v
	case t.Rule == AtMost:
		o.High = v
	default:
		o.At = v
	}
	c.unblank()
	o.width = c.pos - o.place
	c.settle(o.place, &o)
	c.blanks()
	if c.ok() && !c.closing() {
		c.unknown("the bracket is not closed")
	}
	if c.ok() {
		c.sameInBoth(from, t, &o)
		t.Other = &o
	}
	c.blanks()
}
