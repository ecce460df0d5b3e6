package reading

import (
	"strings"

	"matchmark/packs/units"
)

// Text writes the limit as it is typed, in its shortest right form: at least for
// min, +/- for ±, the unit once at the end. Reading it gives the same limit.
func (l *Limit) Text() string {
	switch l.Kind {
	case Record:
		if l.Step != nil {
			return "record to " + l.Step.Text()
		}
		return "record"
	case MustBe:
		return "must be " + l.Phrases[0]
	case Choose:
		return "choose " + strings.Join(l.Phrases, " or ")
	case Measured:
		var tests []string
		for i := range l.Tests {
			text := l.Tests[i].Text()
			if i > 0 && text[0] == 'D' {
				// "mean of D3 and D4 …" would take the mark into its list.
				text = "each " + text
			}
			tests = append(tests, text)
		}
		return strings.Join(tests, " and ")
	}
	return [...]string{Words: "words", Sketch: "sketch", Tick: "tick", NoneAllowed: "none", YesOrNo: "yes or no", SameAsFound: "as found"}[l.Kind]
}

// groupText is the word of a group with a blank, "" for Each.
func groupText(g Group) string { return [...]string{"", "mean ", "spread ", "sum "}[g] }

// Text writes one test as it is typed.
func (t *Test) Text() string {
	s := groupText(t.Group) + t.ruleText()
	if t.Other != nil {
		bracket := t.Other.bareText()
		if t.Other.Rule != t.Rule { // of one end of a range alone
			bracket = t.Other.ruleText()
		}
		s += " (" + bracket + ")"
	}
	return s
}

func (t *Test) ruleText() string {
	switch t.Rule {
	case AtLeast:
		return "at least " + t.Low.Text()
	case AtMost:
		return "at most " + t.High.Text()
	case About:
		return "about " + t.At.Text()
	case Exactly:
		return "exactly " + t.At.Text()
	}
	return t.bareText()
}

// bareText writes the numbers of a test without its words.
func (t *Test) bareText() string {
	switch t.Rule {
	case Range:
		if t.Low.plain() && t.High.plain() {
			return t.Low.numbers()[0].Text() + " to " + t.High.Text()
		}
		return t.Low.Text() + " to " + t.High.Text()
	case Nominal:
		at := t.At.Text()
		if t.At.plain() && t.At.Terms[0].Item.Size.Unit == t.Unit {
			at = t.At.numbers()[0].Text()
		}
		if t.Even {
			return at + " +/- " + quantity(t.Upper, t.Unit).Text()
		}
		unit := t.Unit.Text()
		if unit != "°" {
			unit = " " + unit
		}
		return at + " " + signed(t.Upper) + "/" + signed(t.Lower) + unit
	}
	return t.values()[0].Text()
}

// signed writes a deviation with its sign.
func signed(n units.Number) string {
	text := n.Text()
	if text[0] == '+' || text[0] == '-' {
		return text
	}
	return "+" + text
}

// Text writes the value as it is typed.
func (v *Value) Text() string {
	var b strings.Builder
	for i := range v.Terms {
		t := &v.Terms[i]
		switch {
		case i > 0 && t.Minus:
			b.WriteString(" - ")
		case i > 0:
			b.WriteString(" + ")
		}
		switch t.By {
		case ByNumber:
			b.WriteString(t.Number.Text() + " x ")
		case ByPercent:
			b.WriteString(t.Number.Text() + " % of ")
		case ByHalf:
			b.WriteString("half of ")
		}
		b.WriteString(t.Item.text())
	}
	return b.String()
}

func (it *Item) text() string {
	switch it.Kind {
	case Size:
		return it.Size.Text()
	case Reading:
		return string(it.Marks[0])
	case Found:
		return "as found"
	case Bracket:
		return "(" + it.Value.Text() + ")"
	case Rate:
		per := string(it.PerMark)
		if per == "" {
			per = it.PerUnit.Text()
		}
		return it.Size.Text() + " per " + per + " of " + it.Of.text()
	}
	for _, g := range manyWords {
		if g.kind == it.Kind {
			return g.word + " of " + joinMarks(it.Marks, " and ")
		}
	}
	return ""
}

func joinMarks(marks []Mark, between string) string {
	var out []string
	for _, m := range marks {
		out = append(out, string(m))
	}
	return strings.Join(out, between)
}
