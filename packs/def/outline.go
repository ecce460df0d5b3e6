package def

import (
	"slices"

	"matchmark/packs/phrase"
)

// An outline is what can be told of a text without knowing whether it is right:
// where texts and lists begin, where colons part a key from its value, and which
// brackets and quotes are open. It is made only of files that YAML refuses, to
// find out why.
type outline struct {
	starts []spot // where a text, a quote or a bracket begins
	colons []spot // colons behind a key
	quotes []span
	stray  []spot // closing brackets that close nothing
	open   []spot // brackets never closed, the innermost last
	pairs  []span // brackets that are closed
}

// A spot is a place, line and column from 0. flow says that it lies inside
// brackets or braces.
type spot struct {
	line, col int
	what      rune
	flow      bool
}

// A span is a text in quotes or brackets from its first sign to its last;
// endLine is -1 if it has no end.
type span struct {
	spot
	endLine, endCol int
}

// blockHead is the sign of a text on the lines below it.
var blockHead = phrase.Of(`^[>|][-+1-9]{0,2}([ \t]+#|[ \t]*$)`)

// isBlockHead reports whether the rest of a line is such a sign. Only its first
// runes are looked at: a line may have millions.
func isBlockHead(rest []rune) bool {
	return len(rest) > 0 && (rest[0] == '>' || rest[0] == '|') && blockHead.MatchString(string(rest[:min(len(rest), 80)]))
}

// An outliner makes an outline line by line.
type outliner struct {
	outline
	quoted bool // inside quotes at the end of the line before
	start  bool // a text may begin here
	block  int  // lines deeper than this belong to a text on lines of its own; -1: none
}

// outlineOf makes the outline of a text.
func outlineOf(lines [][]rune) outline {
	o := &outliner{block: -1}
	for i, line := range lines {
		o.line(i, line)
	}
	return o.outline
}

// line goes through one line.
func (o *outliner) line(n int, line []rune) {
	i := 0
	for i < len(line) && (line[i] == ' ' || line[i] == '\t') {
		i++
	}
	switch {
	case o.quoted:
		i = o.endQuote(n, line, 0)
	case o.block >= 0 && (i == len(line) || i > o.block):
		return
	default:
		o.block = -1
		if len(o.open) == 0 {
			o.start = true
		}
	}
	indent := i // of the key that a block text would belong to
	for i < len(line) {
		c := line[i]
		blank := i+1 == len(line) || line[i+1] == ' ' || line[i+1] == '\t'
		flow := len(o.open) > 0
		switch {
		case c == ' ' || c == '\t':
			i++
		case c == '#' && (i == 0 || line[i-1] == ' ' || line[i-1] == '\t'):
			return
		case o.start && c == '-' && blank && !flow:
			i++
			indent = i + 1
		case o.start && (c == '"' || c == '\''):
			o.starts = append(o.starts, spot{n, i, c, flow})
			o.quotes = append(o.quotes, span{spot{n, i, c, flow}, -1, 0})
			o.start, o.quoted = false, true
			i = o.endQuote(n, line, i+1)
		case o.start && !flow && isBlockHead(line[i:]):
			o.starts = append(o.starts, spot{n, i, c, flow})
			o.block = indent
			return
		default:
			i = o.sign(n, line, i, blank)
		}
	}
}

// sign goes over one rune that is neither blank nor quote.
func (o *outliner) sign(n int, line []rune, i int, blank bool) int {
	c, flow := line[i], len(o.open) > 0
	here := spot{n, i, c, flow}
	if o.start && c != ',' && c != ':' {
		o.starts = append(o.starts, here)
	}
	began := o.start
	o.start = false
	switch {
	case c == ':' && (blank || flow && slices.Contains([]rune(",[]{}"), line[i+1])):
		o.colons = append(o.colons, here)
		o.start = true
	case (c == '[' || c == '{') && (began || flow):
		o.open = append(o.open, here)
		o.start = true
	case (c == ']' || c == '}') && flow:
		last := o.open[len(o.open)-1]
		o.open = o.open[:len(o.open)-1]
		o.pairs = append(o.pairs, span{last, n, i})
	case (c == ']' || c == '}') && (began || o.closedBefore(n, line, i)):
		o.stray = append(o.stray, here)
	case c == ',' && flow:
		o.start = true
	}
	return i + 1
}

// closedBefore reports whether a bracket was closed just before column i.
func (o *outliner) closedBefore(n int, line []rune, i int) bool {
	for i--; i >= 0 && line[i] == ' '; i-- {
	}
	return len(o.pairs) > 0 && o.pairs[len(o.pairs)-1].endLine == n && o.pairs[len(o.pairs)-1].endCol == i
}

// endQuote looks for the end of the quotes that are open, from column i on, and
// gives the column behind it.
func (o *outliner) endQuote(n int, line []rune, i int) int {
	q := &o.quotes[len(o.quotes)-1]
	for ; i < len(line); i++ {
		switch {
		case q.what == '"' && line[i] == '\\':
			i++
		case q.what == '\'' && line[i] == '\'' && i+1 < len(line) && line[i+1] == '\'':
			i++
		case line[i] == q.what:
			q.endLine, q.endCol = n, i
			o.quoted = false
			return i + 1
		}
	}
	return len(line)
}

// valueEnd is the column behind the text that begins at a spot: where a comma or
// bracket ends it inside brackets, else the end of its line or a comment.
func valueEnd(line []rune, s spot) int {
	end := s.col + 1
	for end < len(line) {
		c := line[end]
		if s.flow && (c == ',' || c == ']' || c == '}') || c == '#' && (line[end-1] == ' ' || line[end-1] == '\t') {
			break
		}
		end++
	}
	for end > s.col+1 && (line[end-1] == ' ' || line[end-1] == '\t') {
		end--
	}
	return end
}
