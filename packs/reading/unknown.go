package reading

import (
	"strings"
	"unicode/utf8"

	"matchmark/packs/nearest"
	"matchmark/packs/phrase"
	"matchmark/packs/units"
)

// words are those of the language, for naming the nearest one.
var words = []string{
	"at least", "at most", "to", "min", "max", "about", "exactly", "as found", "and", "each", "mean", "spread", "sum",
	"mean of", "largest of", "smallest of", "spread of", "sum of", "half of", "of", "per", "x",
	"record", "record to", "words", "sketch", "tick", "none", "yes or no", "must be", "choose", "or",
}

// traps are spellings that mean one thing only, but are not words here.
var traps = []struct{ typed, write string }{
	{">=", "at least"}, {"≥", "at least"}, {"<=", "at most"}, {"≤", "at most"}, {"=>", "at least"}, {"=<", "at most"},
	{">", "at least"}, {"<", "at most"}, {"minimum", "at least"}, {"maximum", "at most"},
	{"not less than", "at least"}, {"not more than", "at most"}, {"no less than", "at least"}, {"no more than", "at most"},
	{"not under", "at least"}, {"not over", "at most"}, {"up to", "at most"}, {"less than", "at most"}, {"more than", "at least"},
	{"min.", "at least"}, {"max.", "at most"}, {"same as found", "as found"}, {"as before", "as found"}, {"as removed", "as found"}, {"same as before", "as found"}, {"unchanged", "as found"}, {"as-found", "as found"}, {"as left", "as found"}, {"average", "mean"}, {"total", "sum"},
	{"approx.", "about"}, {"approx", "about"}, {"approximately", "about"}, {"~", "about"}, {"≈", "about"}, {"ca.", "about"},
	{"+-", "+/-"}, {"-/+", "+/-"}, {"+ / -", "+/-"}, {"+/ -", "+/-"}, {"+ /-", "+/-"}, {"plus or minus", "+/-"}, {"plus minus", "+/-"},
	{"ø", ""}, {"Ø", ""}, {"⌀", ""}, {"dia.", ""}, {"dia", ""},
	{"between", ""}, {"from", ""}, {"..", "to"}, {"...", "to"}, {"…", "to"}, {"*", "x"}, {"&", "and"}, {";", "and"}, {"till", "to"}, {"until", "to"},
}

// unknown is the fault of a word that is not of the language, where missing is
// what should stand there.
func (c *cursor) unknown(missing string) {
	if !c.ok() {
		return
	}
	c.blanks()
	if c.end() {
		c.failAt(len(c.runes), 0, "unfinished", missing+" at the end", examples...)
		return
	}
	if c.peek() == ',' {
		c.failAt(c.pos, 1, "comma", "a comma ends an entry of the file; join with \"and\"", c.with(c.pos, c.pos+1, " and"))
		return
	}
	if c.peek() == '#' {
		c.phraseSigns(c.pos)
		return
	}
	if c.whichReading() || c.changeOf() || c.abbreviated() || c.trap() || c.smallMark() || c.aroundZero() || c.notYet() || c.goesIn() {
		return
	}
	from, to := c.pos, c.wordEnd(c.pos)
	word := c.typed(from, to)
	if write, say := units.UnitHint(word); write != "" {
		c.failAt(from, to-from, "unknown-unit", "\""+word+"\" is not a unit known here: "+say, c.with(from, to, write))
		return
	}
	if known := units.Multiples(word); known != nil {
		c.failAt(from, to-from, "unknown-unit", "\""+word+"\" is not a unit known here", "one of: "+strings.Join(known, ", "))
		return
	}
	// Two words together may be a slip of one ("at-most", "as  fount").
	two := c.wordEnd(c.skip(to))
	if near := nearest.Word(c.typed(from, two), words); near != "" && two > to && strings.Contains(near, " ") {
		c.failAt(from, two-from, "unknown-word", "\""+c.typed(from, two)+"\" is not known here", c.with(from, two, near))
		return
	}
	if near := nearest.Word(word, c.near(word)); near != "" && near != word {
		c.failAt(from, to-from, "unknown-word", "\""+word+"\" is not known here", c.with(from, to, near))
		return
	}
	c.failAt(from, to-from, "unknown-word", "\""+word+"\" is not known here: "+missing, examples...)
}

// near lists what a word may be a slip of. Of three letters and fewer no unit is offered: one letter
// off is a prefix, a thousand times as much, or a unit of another kind.
func (c *cursor) near(word string) []string {
	if r := []rune(word); len(r) <= 3 && (len(r) < 2 || r[0] != r[1]) {
		return words
	}
	return append(units.UnitWords(), words...)
}

// examples are shown where no single word can be put right.
var examples = []string{"for example 0.05 to 0.12 mm", "at most 0.15 mm", "12.5 +/- 0.1 mm"}

// trap names the right word for one that is often typed; it reports whether one
// stands here.
func (c *cursor) trap() bool {
	best, end := -1, 0
	for i, t := range traps {
		if e := c.trapEnd(t.typed); e > end {
			best, end = i, e
		}
	}
	if best < 0 {
		return false
	}
	t := traps[best]
	rest := end
	for isBlank(c.at(rest)) {
		rest++
	}
	good := t.write + " "
	if t.write == "" {
		good = ""
	}
	if c.at(c.pos-1) != 0 && !isBlank(c.at(c.pos-1)) {
		good = " " + good
	}
	line := c.with(c.pos, rest, good)
	if t.typed == "between" {
		line = strings.Replace(line, " and ", " to ", 1)
	}
	if t.write == "as found" && c.typed(rest, len(c.runes)) == "" {
		c.howNear(c.pos, end)
		return true
	}
	c.failAt(c.pos, end-c.pos, "unknown-word", "\""+c.typed(c.pos, end)+"\" is not a word of limits: write "+line, line)
	return true
}

// trapEnd gives the place behind typed if it stands at the cursor, else 0.
func (c *cursor) trapEnd(typed string) int {
	i := c.pos
	for _, r := range typed {
		if c.at(i) != r {
			return 0
		}
		i++
	}
	last := c.at(i - 1)
	if isWordRune(last) && isWordRune(c.at(i)) && last != '-' && !strings.ContainsRune("øØ⌀", last) {
		return 0
	}
	return i
}

func (c *cursor) skip(i int) int {
	for isBlank(c.at(i)) {
		i++
	}
	return i
}

// wordEnd gives the place behind the run of runes without a blank.
func (c *cursor) wordEnd(i int) int {
	for i < len(c.runes) && !isBlank(c.runes[i]) {
		i++
	}
	return i
}

// howNear is the fault of "as found" without a tolerance where one is needed.
func (c *cursor) howNear(from, to int) {
	c.failAt(from, to-from, "how-near", "as found: how near? Write as found +/- 0.10 mm (or about as found)", "as found +/- 0.10 mm", "about as found")
}

// smallMark is the fault of a mark with a small d.
func (c *cursor) smallMark() bool {
	if r := c.at(c.pos + 1); c.peek() != 'd' || r < '0' || r > '9' {
		return false
	}
	to := c.wordEnd(c.pos)
	good := "D" + string(c.runes[c.pos+1:to])
	c.failAt(c.pos, to-c.pos, "mark", "the mark of a reading has a capital: "+good, c.with(c.pos, to, good))
	return true
}

func spaceTrim(r []rune) string { return strings.TrimSpace(string(r)) }

// whichReading is the fault of "as found" or "as left" behind the mark of a reading: the mark
// alone names it, and as found alone is what the dimension itself was found as.
func (c *cursor) whichReading() bool {
	m := markBefore.FindStringSubmatch(c.typed(0, c.pos))
	w := saysWhich.FindString(c.typed(c.pos, len(c.runes)))
	if m == nil || w == "" {
		return false
	}
	end := c.pos + utf8.RuneCountInString(w)
	c.failAt(c.pos, end-c.pos, "unknown-word", "\""+w+"\" cannot stand behind the mark of a reading: "+m[1]+" alone names it", c.with(c.pos, c.skip(end), ""),
		"or, of this dimension's own reading, as found alone: as found "+spaceTrim(c.runes[end:]))
	return true
}

var (
	markBefore = phrase.Of(`(D[1-9][0-9]*(?:/\S+)?)\s*$`)
	saysChange = phrase.Of(`^(?i:(?:the )?(?:change|difference) of D[1-9][0-9]*)`)
	saysWhich  = phrase.Of(`^(?i:as[ -]found|as[ -]left|found|left)\b`)
)

// changeOf is the fault of the change of a reading: what came out and what goes in are two
// readings, and each is written down in a box of its own.
func (c *cursor) changeOf() bool {
	w := saysChange.FindString(c.typed(c.pos, len(c.runes)))
	if w == "" {
		return false
	}
	c.failAt(c.pos, utf8.RuneCountInString(w), "unknown-word", "\""+w+"\": what came out and what goes in are two readings, each with a mark of its own",
		"as found - D12 + D11 +/- 0.05 mm", "where D11 is measured as it came out, and D12, with found: not taken, is set")
	return true
}

// aroundZero is the fault of a tolerance alone, which can only lie round nothing:
// +/- 0.04 mm for a reading that is best when it is zero.
func (c *cursor) aroundZero() bool {
	m := bareTolerance.FindStringSubmatch(c.line)
	if m == nil || c.pos > 0 {
		return false
	}
	good := "-" + m[1] + " to +" + m[1] + " " + m[2]
	c.failAt(0, len(c.runes), "unknown-word", "a tolerance alone says not of what: if of nothing, write "+good, good)
	return true
}

var bareTolerance = phrase.Of(`^(?:\+/-|±|\+-) *(\d+(?:\.\d+)?) *([^\s\d]+)$`)

// notYet is the fault of a limit that nobody has looked up yet.
func (c *cursor) notYet() bool {
	switch strings.ToLower(strings.TrimRight(strings.TrimSpace(c.line), ".?!")) {
	case "tbd", "tba", "tbc", "n/a", "na", "see manual", "see drawing", "as per manual", "per manual", "", "??", "xx", "xxx":
		c.failAt(0, len(c.runes), "unknown-word", "\""+strings.TrimSpace(c.line)+"\" is no limit: look it up, or have the reading only written down", "record to 0.01 mm")
		return true
	}
	return false
}

// abbreviated is the fault of min or max with the point of an abbreviation.
func (c *cursor) abbreviated() bool {
	if c.peek() != '.' || c.pos < 3 {
		return false
	}
	word := map[string]string{"min": "at least", "max": "at most"}[strings.ToLower(c.typed(c.pos-3, c.pos))]
	if word == "" {
		return false
	}
	line := c.with(c.pos-3, c.skip(c.pos+1), word+" ")
	c.failAt(c.pos-3, 4, "unknown-word", "\""+c.typed(c.pos-3, c.pos+1)+"\" is not a word of limits: write "+line, line)
	return true
}
