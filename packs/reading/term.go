package reading

import "matchmark/packs/units"

// value reads a sum of terms.
func (c *cursor) value() *Value {
	from := c.pos
	v := &Value{Terms: []Term{c.term()}}
	for c.ok() {
		minus, more := c.operator(v, from)
		if !more {
			break
		}
		t := c.term()
		t.Minus = minus
		if minus && len(v.Terms) == 1 && v.plain() && t.By == ByNothing && t.Item.Kind == Size {
			c.dash(from, c.pos)
		}
		v.Terms = append(v.Terms, t)
	}
	return v
}

// term reads one summand.
func (c *cursor) term() Term {
	var t Term
	switch {
	case !c.ok():
	case c.take("half of"):
		t.By = ByHalf
		t.Item = c.item()
	case c.digitNext():
		t = c.numbered()
	default:
		t.Item = c.item()
	}
	return t
}

// numbered reads a term that begins with a number: a size, a factor, a percentage
// or a rate.
func (c *cursor) numbered() Term {
	from := c.pos
	n := c.number()
	if !c.ok() {
		return Term{}
	}
	end := c.pos
	c.blanks()
	switch {
	case c.take("x") || c.takeRune('×'):
		return Term{By: ByNumber, Number: n, Item: c.item()}
	case c.percentOf():
		return Term{By: ByPercent, Number: n, Item: c.item()}
	}
	c.pos = end
	return Term{Item: c.sized(from, n)}
}

// percentOf steps over "% of".
func (c *cursor) percentOf() bool {
	at := c.pos
	if c.takeRune('%') && c.take("of") {
		return true
	}
	c.pos = at
	return false
}

// sized reads what follows the number of a size: its unit, and perhaps the rate.
func (c *cursor) sized(from int, n units.Number) Item {
	it := Item{Kind: Size, Size: units.Quantity{Number: n, Unit: c.unit()}}
	if it.Size.Unit == units.None {
		return it
	}
	at := c.pos
	c.blanks()
	if !c.take("per") {
		c.pos = at
		return it
	}
	it.Kind = Rate
	if c.markNext() >= 0 {
		it.PerMark = c.mark()
	} else if it.PerUnit = c.unit(); it.PerUnit == units.None && c.peek() >= '0' && c.peek() <= '9' {
		c.number()
		c.failFrom(from, "per", c.typed(from, c.pos)+": a rate is written for one unit, so divide it: 1 mm per 50 mm is 0.02 mm per mm", "at most 0.02 mm per mm of D4")
	} else if it.PerUnit == units.None {
		c.failFrom(from, "per", "per what? "+c.typed(from, c.pos)+" needs a unit, or the mark of a reading", "0.5 mm per m of D4", "0.5 mm per D3 of D4")
	}
	c.blanks()
	if !c.take("of") {
		c.failFrom(from, "per", c.typed(from, c.pos)+" of what?", c.typed(from, c.pos)+" of D4")
	}
	of := c.item()
	it.Of = &of
	return it
}

// item reads what a factor can stand before.
func (c *cursor) item() Item {
	c.depth++
	defer func() { c.depth-- }()
	if c.depth > maxDepth {
		c.failAt(c.pos, 1, "too-deep", "brackets too deep", "(D1 - D2)")
	}
	if !c.ok() {
		return Item{}
	}
	from := c.pos
	switch {
	case c.takeRune('('):
		v := c.value()
		c.blanks()
		if c.ok() && !c.closing() {
			c.failFrom(from, "bracket", "a bracket is not closed: "+c.typed(from, c.pos), c.typed(from, c.pos)+")")
		}
		return Item{Kind: Bracket, Value: v}
	case c.take("as found"):
		c.unblank()
		return Item{Kind: Found}
	case c.markNext() >= 0:
		return Item{Kind: Reading, Marks: []Mark{c.mark()}}
	case c.digitNext():
		return c.sized(from, c.number())
	case c.ahead("half of") >= 0:
		c.take("half of")
		of := c.item()
		if c.ok() {
			c.failFrom(from, "bracket", "half of something that is taken a share of goes in brackets: ("+c.typed(from, c.pos)+")", "0.5 mm per m of (half of D4)", "70 % of (half of "+of.text()+")")
		}
		return of
	}
	for _, g := range manyWords {
		if c.take(g.word + " of") {
			return Item{Kind: g.kind, Marks: c.marks(g.word)}
		}
	}
	c.unknown("a size or the mark of a reading is missing")
	return Item{}
}

// closing steps over a closing bracket, leaving blanks behind it.
func (c *cursor) closing() bool {
	if c.peek() != ')' {
		return false
	}
	c.pos++
	return true
}

// unblank goes back over blanks, so that a place ends with its last letter.
func (c *cursor) unblank() {
	for isBlank(c.at(c.pos - 1)) {
		c.pos--
	}
}

// manyWords are the ways to take several readings together.
var manyWords = []struct {
	word string
	kind ItemKind
}{{"mean", MeanOf}, {"largest", LargestOf}, {"smallest", SmallestOf}, {"spread", SpreadOf}, {"sum", SumOf}}

// marks reads "D3 and D4 and D5": the list goes on while a mark follows "and".
func (c *cursor) marks(word string) []Mark {
	if c.markNext() < 0 {
		c.unknown(word + " of what? The mark of a reading is missing")
		return nil
	}
	out := []Mark{c.mark()}
	for c.ok() {
		at := c.pos
		c.blanks()
		if !c.take("and") || c.markNext() < 0 {
			c.pos = at
			break
		}
		out = append(out, c.mark())
	}
	return out
}
