package reading

import (
	"strings"

	"matchmark/packs/units"
)

// toleranceNext reports whether a tolerance begins here.
func (c *cursor) toleranceNext() bool {
	return c.peek() == '±' || c.peek() == '+' && c.at(c.pos+1) == '/' || (c.peek() == '+' || c.peek() == '-' || c.peek() == '−') && c.tolerancePair()
}

// tolerance reads +/- 0.1 mm or +0.02/-0.00 mm if it stands here. The unit, if
// there is one, becomes that of the test.
func (c *cursor) tolerance(t *Test) bool {
	if !c.ok() {
		return false
	}
	from := c.pos
	switch {
	case c.peek() == '±':
		c.pos++
	case c.peek() == '+' && c.at(c.pos+1) == '/' && (c.at(c.pos+2) == '-' || c.at(c.pos+2) == '−'):
		c.pos += 3
	case c.toleranceNext() && c.peek() != '±' && c.at(c.pos+1) != '/':
		c.deviations(t)
		t.Unit = c.unit()
		return true
	default:
		return false
	}
	c.blanks()
	n := c.number()
	if !c.ok() {
		return true
	}
	t.Unit = c.unit()
	t.Even, t.Upper, t.Lower = true, n, n.Neg()
	counted := t.Unit.Counted() && n.Text() == "0" // notches and flats come back to the very number
	if n.Sign() <= 0 && !counted || n.Text()[0] == '+' {
		c.failFrom(from, "tolerance", "\"+/-\" and then "+n.Text()+": the number behind it has no sign and is more than 0", "+/- 0.1 mm", "as found +/- 0 notches, of what is counted")
	}
	return true
}

// deviations reads two deviations with a stroke between them, the larger first.
func (c *cursor) deviations(t *Test) {
	from := c.pos
	t.Upper = c.number()
	c.blanks()
	c.pos++ // the stroke; tolerancePair has seen it
	c.blanks()
	if r := c.peek(); c.ok() && r != '+' && r != '-' && r != '−' {
		c.pos += numberWidth(c.runes[c.pos:])
		c.failFrom(from, "tolerance", "the second deviation needs its sign: "+c.typed(from, c.pos), c.signedPair(from, t.Upper))
	}
	t.Lower = c.number()
	if !c.ok() {
		return
	}
	switch t.Upper.Cmp(t.Lower) {
	case 0:
		c.failFrom(from, "tolerance", "both deviations are the same: "+c.typed(from, c.pos), "+0.02/-0.00")
	case -1:
		good := signed(t.Lower) + "/" + signed(t.Upper)
		c.failFrom(from, "tolerance", "the larger deviation comes first: "+good, c.with(from, c.pos, good))
	}
}

// signedPair writes the line with a sign before the second deviation, which the cursor
// stands behind, and with the decimals of the first.
func (c *cursor) signedPair(from int, upper units.Number) string {
	pair := c.typed(from, c.pos)
	first, second, _ := strings.Cut(pair, "/")
	second = strings.TrimSpace(second)
	if strings.Trim(second, "0.") == "" {
		second = "0"
		if d := upper.Decimals(); d > 0 {
			second += "." + strings.Repeat("0", d)
		}
	}
	return c.with(from, c.pos, first+"/-"+second)
}

// noTolerance says what a value alone lacks to be a limit.
func (c *cursor) noTolerance(v *Value, from int) {
	to := c.pos
	text := c.typed(from, to)
	c.blanks()
	switch {
	case !c.ok():
	case v.plain() && (c.ahead("min") >= 0 || c.ahead("max") >= 0):
		word := map[bool]string{true: "at least ", false: "at most "}[c.ahead("min") >= 0]
		if v.Terms[0].Item.Size.Unit == units.None {
			text += " mm" // else what is proposed would be refused for its missing unit
		}
		c.failAt(from, c.pos+3-from, "word-order", "the word comes first: "+word+text, c.with(from, c.pos+3, word+text))
	case v.plain() && c.bracketFault(v, from):
	case !c.end() && c.ahead("and") < 0 && c.peek() != '(' && c.peek() != ')':
		c.unknown("a tolerance, or \"to\" and the other limit, is missing")
	case v.plain() && v.Terms[0].Item.Size.Unit == units.None && c.end():
		step := quantity(v.Terms[0].Item.Size.Number.Step(), units.Millimetre).Text()
		c.failAt(from, to-from, "no-unit", text+" alone is no limit: it has no unit, and does not say how near", "for example "+text+" +/- "+step, "or at least "+text+" mm", "or at most "+text+" mm")
	case v.plain() && v.Terms[0].Item.Size.Unit == units.None:
		c.noUnit(from, to)
	case v.plain():
		c.alone(v.Terms[0].Item.Size, from, to)
	case v.JustFound():
		c.howNear(from, to)
	default:
		near := " +/- 0.03 mm"
		if n := v.numbers(); len(n) > 0 {
			near = " +/- " + n[len(n)-1].Step().Text() + " mm"
		}
		c.failAt(from, to-from, "no-tolerance", "no tolerance: "+text+" says what it must be, not how near", text+near, "at most "+text, "about "+text+", if the source gives no tolerance")
	}
}

// alone is the fault of one size that is no limit.
func (c *cursor) alone(q units.Quantity, from, to int) {
	text := c.typed(from, to)
	if q.Unit.Counted() && q.Number.Rat().IsInt() {
		c.failAt(from, to-from, "no-tolerance", text+" alone is no limit: exactly, at least or at most?", "exactly "+text, "at least "+text)
		return
	}
	near := "+/- " + quantity(q.Number.Step(), q.Unit).Text()
	c.failAt(from, to-from, "no-tolerance", text+" alone is no limit: add "+near+", or at least / at most, or about "+text+" if the source gives no tolerance",
		c.with(from, to, q.Number.Text()+" "+near), c.with(from, to, "at most "+text), c.with(from, to, "about "+text))
}

// bracketFault reads the bracket behind a size that is no limit yet: what is
// wrong in it is told first. The cursor stands at the bracket, if there is one.
func (c *cursor) bracketFault(v *Value, from int) bool {
	if c.peek() != '(' || v.Terms[0].Item.Size.Unit == units.None {
		return false
	}
	at := c.pos
	t := Test{Rule: About, At: v, Unit: v.Terms[0].Item.Size.Unit}
	c.other(&t)
	if c.ok() && c.ahead("to") >= 0 {
		c.unitTwice(&t, from, at)
	}
	c.pos = at
	return !c.ok()
}
