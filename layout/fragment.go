package layout

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// ending says what may happen after a fragment.
type ending uint8

const (
	glued   ending = iota // the next fragment follows at once, on the same line
	atSpace               // one space, or a new line in its stead
	atJoint               // nothing, or a new line: after a hyphen between words
	atSoft                // nothing, or a hyphen and a new line
	atFeed                // a new line
)

// fragment is a bit of a run that is never broken, with what follows it. Its
// text is run[lo:hi] of the cleaned run, or a drawn sign.
type fragment struct {
	text   string
	sign   *sign
	w      Mm
	left   Mm // the room before the text, inside w, for a decoration
	space  Mm
	run    int32
	lo, hi int32
	whole  bool // never hyphenated: decorated, or a mark, size or unit
	point  bool // the point between two facts
	end    ending
}

// replacement stands on the page where a sign cannot be set, so that a draft can
// still be printed and shows the place.
const replacement = '\uFFFD'

// cutter turns cleaned runs into fragments.
type cutter struct {
	s     *Setter
	frags []fragment
	run   int32
	r     Run
	text  string
	lo    int
	// wordEnd is the end of the text up to the next space, and figures tells
	// whether there is one in it.
	wordEnd int
	figures bool
}

// cut adds the fragments of one run, whose text does not begin with what only parts.
func (c *cutter) cut(r Run, text string) {
	c.r, c.text = r, text
	if r.Deco != Plain {
		c.cutDecorated()
		return
	}
	for i, x := range text {
		n := utf8.RuneLen(x)
		switch {
		case onlyParts(x):
			c.flush(i, glued)
			c.close(parting(x))
			c.lo = i + n
		case x == '\u2011' || x == '\u2010':
			if !c.s.m.Has(r.Style.Face, x) {
				c.flush(i, glued)
				c.put(fragment{text: "-", run: c.run, lo: int32(i), hi: int32(i)})
				c.lo = i + n
			}
			if x == '\u2010' && c.jointAt(i, n) {
				c.flush(i+n, glued)
				c.close(atJoint)
			}
		case x > '~' && signs[x] != nil && !c.s.m.Has(r.Style.Face, x):
			c.flush(i, glued)
			c.put(fragment{text: string(x), run: c.run, lo: int32(i), hi: int32(i), sign: signs[x]})
			c.lo = i + n
		case isJoint(x) && c.jointAt(i, n):
			c.flush(i+n, atJoint)
			c.lo = i + n
		}
	}
	c.flush(len(text), glued)
}

// unbroken puts signs at which no line ends in the place of those at which one may.
var unbroken = strings.NewReplacer(" ", "\u00a0", "\n", "\u00a0", "\u2010", "-", "\u2011", "-")

// cutDecorated makes the whole run one unbreakable chain with room at both ends.
func (c *cutter) cutDecorated() {
	from := len(c.frags)
	c.text = strings.TrimSpace(strings.ReplaceAll(strings.ReplaceAll(c.text, "\u00ad", ""), "\u200b", ""))
	c.text = unbroken.Replace(c.text)
	for i, x := range c.text {
		if x > '~' && signs[x] != nil && !c.s.m.Has(c.r.Style.Face, x) {
			c.flush(i, glued)
			c.put(fragment{text: string(x), run: c.run, lo: int32(i), hi: int32(i), sign: signs[x]})
			c.lo = i + utf8.RuneLen(x)
		}
	}
	c.flush(len(c.text), glued)
	if len(c.frags) > from {
		pad := decoPad(c.r.Style)
		c.frags[from].left = pad
		c.frags[from].w += pad
		c.frags[len(c.frags)-1].w += pad
	}
}

// flush ends the fragment that runs from lo to hi, if there is any text in it.
func (c *cutter) flush(hi int, end ending) {
	if hi > c.lo {
		c.put(fragment{text: c.text[c.lo:hi], run: c.run, lo: int32(c.lo), hi: int32(hi), end: end})
	} else if end != glued {
		c.close(end)
	}
	c.lo = hi
}

// put measures the fragment and adds it.
func (c *cutter) put(f fragment) {
	if f.sign != nil {
		f.w = Mm(f.sign.advance) * c.r.Style.CapHeight()
	} else {
		f.w = c.s.width(c.r.Style, f.text)
		f.whole = c.r.Deco != Plain || strings.IndexFunc(f.text, isDigit) >= 0
	}
	f.point = f.text == "·"
	c.frags = append(c.frags, f)
}

// close sets what follows the last fragment. Spaces fold into one and give way
// to a feed; a feed on an empty line makes an empty fragment.
func (c *cutter) close(end ending) {
	n := len(c.frags)
	fresh := n == 0 || c.frags[n-1].end == atFeed
	switch {
	case end == atFeed && fresh:
		c.frags = append(c.frags, fragment{run: c.run, end: atFeed})
	case fresh:
		// A space at the start of a line is not set.
	case end == atSpace:
		c.frags[n-1].end = atSpace
		c.frags[n-1].space = c.s.m.Width(c.r.Style.Face, c.r.Style.Size, " ")
	case end == atFeed || c.frags[n-1].end == glued:
		c.frags[n-1].end = end
	}
}

// join adds the fragments of a run that was cut by itself.
func (c *cutter) join(run int, r Run, k cutRun) {
	c.run, c.r = int32(run), r
	for _, x := range k.lead {
		c.close(parting(x))
	}
	from := len(c.frags)
	c.frags = append(c.frags, k.frags...)
	for i := from; i < len(c.frags); i++ {
		c.frags[i].run = c.run
	}
}

// onlyParts tells the signs that part a text and are not set themselves.
func onlyParts(x rune) bool { return x == ' ' || x == '\n' || x == '\u00ad' || x == '\u200b' }

// parting is what a sign that only parts does to the fragment before it.
func parting(x rune) ending {
	switch x {
	case '\n':
		return atFeed
	case '\u00ad':
		return atSoft
	case '\u200b':
		return atJoint
	}
	return atSpace
}

// isJoint tells the signs after which a line may end between words.
func isJoint(x rune) bool { return x == '-' || x == '/' || x == '–' || x == '—' }

// jointAt tells whether the n bytes at i part two words of a text: two letters on
// either side, and no figure in the whole of it up to the spaces about it. So
// "and/or" may part, and "C4/DE/springs", "M12-6g" and "130–140" may not.
func (c *cutter) jointAt(i, n int) bool {
	if i >= c.wordEnd {
		// The words of a run are looked at from left to right, each once.
		from := c.wordEnd + strings.LastIndexAny(c.text[c.wordEnd:i], " \n") + 1
		c.wordEnd = len(c.text)
		if k := strings.IndexAny(c.text[i:], " \n"); k >= 0 {
			c.wordEnd = i + k
		}
		c.figures = strings.IndexFunc(c.text[from:c.wordEnd], isDigit) >= 0
	}
	if c.figures {
		return false
	}
	a, size := utf8.DecodeLastRuneInString(c.text[:i])
	b, _ := utf8.DecodeLastRuneInString(c.text[:i-size])
	d, size := utf8.DecodeRuneInString(c.text[i+n:])
	e, _ := utf8.DecodeRuneInString(c.text[i+n+size:])
	return unicode.IsLetter(a) && unicode.IsLetter(b) && unicode.IsLetter(d) && unicode.IsLetter(e)
}
