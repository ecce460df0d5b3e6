package reading

import (
	"strings"
	"unicode"

	"matchmark/packs/units"
)

// An Ask is the sort of thing that a condition asks.
type Ask uint8

const (
	// AskPerson is a question that a person answers with yes or no.
	AskPerson Ask = iota
	// AskOver asks whether a reading is over Value.
	AskOver
	// AskUnder asks whether it is under Value.
	AskUnder
	// AskIn asks whether it is within its own limits.
	AskIn
	// AskOut asks whether it is out of them.
	AskOut
	// AskState asks whether the answer to a choice is State.
	AskState
)

// A Condition is what a step waits for, or depends on.
type Condition struct {
	Ask      Ask
	Question string // of AskPerson, with its question mark
	Mark     Mark   // of all others: the reading asked about
	Value    *Value // of AskOver and AskUnder
	State    string // of AskState
}

// ParseCondition reads a condition: a question that ends with "?", or a reading
// and how it is: D3 is over 0.50 mm, D7 is in limits, D5 is flush.
func ParseCondition(text string) (*Condition, *Fault) {
	c := newCursor(text)
	out := c.condition()
	c.blanks()
	if c.ok() && !c.end() {
		c.unknown("something stands behind the condition")
	}
	if c.fault != nil {
		return nil, c.fault
	}
	return out, nil
}

var conditionExamples = []string{"for example D3 is over 0.50 mm", "D7 is in limits", "does the rotor turn by hand?"}

func (c *cursor) condition() *Condition {
	from := c.pos
	if strings.HasSuffix(strings.TrimSpace(c.line), "?") {
		question := c.question(from)
		if strings.Trim(question, "? ") == "" {
			c.failFrom(from, "condition", "no question before the question mark", conditionExamples[2])
		}
		return &Condition{Question: question}
	}
	if c.ok() && c.markNext() < 0 {
		c.failAt(from, len(c.runes)-from, "condition", "a condition is a question, or begins with a reading: "+c.typed(from, len(c.runes)), conditionExamples...)
		return nil
	}
	out := &Condition{Mark: c.mark()}
	c.blanks()
	if c.ok() && !c.take("is") {
		c.failAt(from, len(c.runes)-from, "condition", "\"is\" is missing behind "+string(out.Mark), withIs(string(out.Mark), c.rest()))
		return nil
	}
	at := c.pos
	switch {
	case c.take("over"):
		out.Ask, out.Value = AskOver, c.bound(at)
	case c.take("under"):
		out.Ask, out.Value = AskUnder, c.bound(at)
	case c.take("in limits"):
		out.Ask = AskIn
	case c.take("out of limits"):
		out.Ask = AskOut
	case c.digitNext():
		c.failAt(at, len(c.runes)-at, "condition", "a reading is never exactly so: over or under?", string(out.Mark)+" is over "+c.rest(), string(out.Mark)+" is under "+c.rest())
	default:
		out.Ask, out.State = AskState, c.phrase(at, string(out.Mark)+" is what?", conditionExamples[1])
		c.stateTrap(at, out)
	}
	return out
}

// question reads the rest of the line as a question, which may have commas.
func (c *cursor) question(from int) string {
	text := strings.Join(strings.Fields(c.rest()), " ")
	c.pos = len(c.runes)
	for i := from; i < len(c.runes); i++ {
		if r := c.runes[i]; r == '#' || r == unicode.ReplacementChar || !unicode.IsPrint(r) && !isBlank(r) {
			c.phraseSigns(i)
		}
	}
	return text
}

// withIs writes a condition that lacks its "is", with the words for its signs.
func withIs(mark, rest string) string {
	rest = strings.TrimSpace(rest)
	for _, s := range []struct{ sign, word string }{{">", "over "}, {"<", "under "}} {
		if behind, ok := strings.CutPrefix(rest, s.sign); ok {
			rest = s.word + strings.TrimSpace(strings.TrimPrefix(behind, "="))
		}
	}
	if rest == "" {
		return "for example " + mark + " is in limits"
	}
	return mark + " is " + rest
}

// bound reads the value behind over and under.
func (c *cursor) bound(from int) *Value {
	v := c.value()
	c.settle(from, &Test{At: v, Rule: About})
	return v
}

// stateTrap finds the usual other words for over, under and in limits.
func (c *cursor) stateTrap(at int, out *Condition) {
	if !c.ok() {
		return
	}
	for _, t := range []struct{ typed, right string }{
		{"more than ", "over "}, {"above ", "over "}, {"greater than ", "over "}, {"larger than ", "over "}, {"> ", "over "}, {">", "over "},
		{"less than ", "under "}, {"below ", "under "}, {"smaller than ", "under "}, {"< ", "under "}, {"<", "under "},
		{"within limits", "in limits"}, {"in limit", "in limits"}, {"ok", "in limits"}, {"OK", "in limits"}, {"out of limit", "out of limits"}, {"outside limits", "out of limits"},
	} {
		rest, found := strings.CutPrefix(out.State, t.typed)
		if found && (strings.HasSuffix(t.typed, " ") || t.typed == ">" || t.typed == "<" || rest == "") {
			good := string(out.Mark) + " is " + t.right + rest
			c.failFrom(at, "condition", "\""+strings.TrimSpace(t.typed)+"\" is not a word of conditions: write "+good, good)
			return
		}
	}
}

// Text writes the condition as it is typed.
func (c *Condition) Text() string {
	switch c.Ask {
	case AskOver:
		return string(c.Mark) + " is over " + c.Value.Text()
	case AskUnder:
		return string(c.Mark) + " is under " + c.Value.Text()
	case AskIn:
		return string(c.Mark) + " is in limits"
	case AskOut:
		return string(c.Mark) + " is out of limits"
	case AskState:
		return string(c.Mark) + " is " + c.State
	}
	return c.Question
}

// Marks lists the readings that the condition needs, each once.
func (c *Condition) Marks() []Mark {
	if c.Ask == AskPerson {
		return nil
	}
	out := []Mark{c.Mark}
	if c.Value != nil {
		out = c.Value.appendMarks(out)
	}
	return out
}

// Words tells the condition for paper.
func (c *Condition) Words() []Part {
	switch c.Ask {
	case AskOver:
		return said(WordIsOver, []Part{lit(string(c.Mark))}, c.Value.words())
	case AskUnder:
		return said(WordIsUnder, []Part{lit(string(c.Mark))}, c.Value.words())
	case AskIn:
		return said(WordIsIn, []Part{lit(string(c.Mark))})
	case AskOut:
		return said(WordIsOut, []Part{lit(string(c.Mark))})
	case AskState:
		return said(WordIs, []Part{lit(string(c.Mark))}, []Part{lit(c.State)})
	}
	return []Part{lit(c.Question)}
}

// positive reports whether q is more than nothing.
func positive(q units.Quantity) bool { return q.Number.Sign() > 0 }
