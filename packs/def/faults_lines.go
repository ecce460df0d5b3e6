package def

import (
	"fmt"
	"regexp"
	"strings"

	"matchmark/packs/source"
)

// The faults of how lines, colons, commas and brackets stand to one another.

// keyLine is a line that begins with a key, and gluedKey one whose key has no
// blank behind its colon.
var (
	keyLine  = regexp.MustCompile(`^\s*(?:- +)*[\p{L}\p{N}_-]+ *:(?:\s|$)`)
	gluedKey = regexp.MustCompile(`^(\s*(?:- +)*)([\p{L}\p{N}_-]+):([^\s:/]\S?.*)$`)
)

// indent counts the blanks before the text of a line.
func (s *stop) indent(line int) int {
	l := s.lines[line]
	return len(l) - len([]rune(strings.TrimLeft(string(l), " \t")))
}

// above is the last line before line with something on it that is no comment,
// -1 if there is none.
func (s *stop) above(line int) int {
	for line--; line >= 0; line-- {
		if bare := strings.TrimSpace(string(s.lines[line])); bare != "" && bare[0] != '#' {
			return line
		}
	}
	return -1
}

// below is the next line with something on it that is no comment, -1 if there is
// none.
func (s *stop) below(line int) int {
	for line++; line < len(s.lines); line++ {
		if bare := strings.TrimSpace(string(s.lines[line])); bare != "" && bare[0] != '#' {
			return line
		}
	}
	return -1
}

// whole is the place of all that stands on a line.
func (s *stop) whole(line int) source.Pos {
	text := strings.TrimSpace(string(s.lines[line]))
	return s.at(line, s.indent(line), len([]rune(text)))
}

// secondColon finds a text with a colon and a blank in it.
func (s *stop) secondColon() (fault, bool) {
	for i := len(s.colons) - 1; i > 0; i-- {
		c := s.colons[i]
		if !s.reached(c.line, c.col) {
			continue
		}
		first := i
		for first > 0 && s.colons[first-1].line == c.line && !s.colons[first-1].flow {
			first--
		}
		if first == i || c.flow {
			return fault{}, false
		}
		line := s.lines[c.line]
		from := s.colons[first].col + 1
		for from < len(line) && line[from] == ' ' {
			from++
		}
		f := fault{
			pos: s.at(c.line, c.col, 1), code: "second-colon",
			message: "a second colon with a blank behind it stands in this line",
			repair:  s.replace(spot{line: c.line, col: from}),
		}
		f.help = []string{"put the text in quotes: " + quote(string(line[from:f.repair.to])), "or is a comma or a new line missing before the second key?"}
		return f, true
	}
	return fault{}, false
}

// noColon finds a line that should be a key and a value and is not.
func (s *stop) noColon() (fault, bool) {
	return s.noColonOn(s.named)
}

// noColonAbove finds it above the line where YAML stumbled.
func (s *stop) noColonAbove() (fault, bool) {
	line, _ := s.lastSign()
	if above := s.above(line); above >= 0 {
		return s.noColonOn(above)
	}
	return fault{}, false
}

func (s *stop) noColonOn(line int) (fault, bool) {
	text := string(s.lines[line])
	if m := gluedKey.FindStringSubmatch(text); m != nil {
		colon := len([]rune(m[1] + m[2]))
		end := valueEnd(s.lines[line], spot{line: line, col: colon})
		f := fault{
			pos: s.at(line, colon, 1), code: "no-blank",
			message: "a blank is missing behind the colon of " + quote(m[2]),
			help:    []string{"write: " + m[2] + ": " + strings.TrimSpace(string(s.lines[line][colon+1:end]))},
		}
		// Nothing behind it may move, so the first letter of the value makes room.
		if end > colon+2 {
			f.repair = &repair{line, colon + 1, end, " " + standIn(end-colon-2), colon + 2}
		}
		return f, true
	}
	bare := strings.TrimSpace(text)
	if bare == "" || keyLine.MatchString(text) || strings.Contains(bare, ": ") || strings.HasSuffix(bare, ":") {
		return fault{}, false
	}
	f := fault{
		pos: s.whole(line), code: "no-colon",
		message: "no colon stands in this line, and it is neither an entry of a list nor the end of a text above it",
		help:    []string{"write: key: value; an entry of a list begins with a dash and a blank"},
	}
	in, end := s.indent(line), len(s.lines[line])
	switch next := s.below(line); {
	case next > 0 && s.indent(next) > in && !strings.ContainsAny(bare, " \t"):
		f.repair = &repair{line, end, end, ":", -1} // the key of the lines below
	case end > in: // as a comment it is out of the way
		f.repair = &repair{line, in, end, "#" + strings.Repeat("x", end-in-1), -1}
	}
	return f, true
}

// tooFarIn finds a key that stands deeper than a line that has its value already.
func (s *stop) tooFarIn() (fault, bool) {
	line, _ := s.lastSign()
	above := s.above(line)
	if above < 0 || s.indent(line) <= s.indent(above) {
		return fault{}, false
	}
	return fault{
		pos: s.whole(line), code: "indent",
		message: "this line stands further in than the line above, which has its value already",
		help:    []string{fmt.Sprintf("keys of one map begin under one another: the line above begins %s in", blanks(s.indent(above)))},
		see:     []source.Also{{Pos: s.whole(above), What: "the line above"}},
	}, true
}

// badIndent finds a line that begins under no line it could belong to.
func (s *stop) badIndent() (fault, bool) {
	line, _ := s.lastSign()
	if !keyLine.MatchString(string(s.lines[line])) && !strings.HasPrefix(strings.TrimSpace(string(s.lines[line])), "-") {
		return fault{}, false
	}
	above := s.above(line)
	if above < 0 {
		return fault{}, false
	}
	dash := strings.HasPrefix(strings.TrimSpace(string(s.lines[line])), "-")
	if s.indent(line) == s.indent(above) && dash != strings.HasPrefix(strings.TrimSpace(string(s.lines[above])), "-") {
		return fault{
			pos: s.whole(line), code: "indent",
			message: "a key and the dash of a list stand under one another",
			help:    []string{"the entries of a list all begin with a dash, the keys of a map never do; one of the lines is set in wrongly"},
			see:     []source.Also{{Pos: s.whole(above), What: "the line above"}},
		}, true
	}
	return fault{
		pos: s.whole(line), code: "indent",
		message: fmt.Sprintf("this line begins %s in and belongs to nothing above it", blanks(s.indent(line))),
		help: []string{
			fmt.Sprintf("keys of one map begin under one another, and so do the dashes of one list: the line above begins %s in", blanks(s.indent(above))),
		},
	}, true
}

func blanks(n int) string {
	switch n {
	case 0:
		return "no blanks"
	case 1:
		return "1 blank"
	}
	return fmt.Sprintf("%d blanks", n)
}

// listOnKeyLine finds a list that begins behind a key.
func (s *stop) listOnKeyLine() (fault, bool) {
	for i := len(s.colons) - 1; i >= 0; i-- {
		c := s.colons[i]
		if !s.reached(c.line, c.col) {
			continue
		}
		line := s.lines[c.line]
		dash := c.col + 1
		for dash < len(line) && line[dash] == ' ' {
			dash++
		}
		if dash+1 >= len(line) || line[dash] != '-' || line[dash+1] != ' ' {
			break
		}
		return fault{
			pos: s.at(c.line, dash, 1), code: "list-behind-key",
			message: "a list with dashes begins on a line of its own, not behind its key",
			help:    []string{"write: [one, two], or begin a new line with the dash"},
			repair:  s.replace(spot{line: c.line, col: dash}),
		}, true
	}
	return fault{}, false
}

// neverClosed finds a bracket that is open where the next key begins or the file
// ends.
func (s *stop) neverClosed() (fault, bool) {
	line, col := s.lastSign()
	o := outlineOf(append(append([][]rune{}, s.lines[:line]...), s.lines[line][:min(col+1, len(s.lines[line]))]))
	for i := len(o.open) - 1; i >= 0; i-- {
		b := o.open[i]
		next := s.keyBelow(b, line)
		if next < 0 {
			continue
		}
		f := fault{
			pos: s.at(b.line, b.col, 1), code: "open-bracket",
			message: fmt.Sprintf("the %c that begins here is not closed before the next key", b.what),
			help:    []string{fmt.Sprintf("put the closing %c where the entry ends", closing(b.what))},
			see:     []source.Also{{Pos: s.whole(next), What: "the next key"}},
		}
		if i == 0 && next == b.line+1 {
			f.repair = s.replace(spot{line: b.line, col: b.col})
		}
		return f, true
	}
	if n := len(o.open); n > 0 && s.below(line) < 0 {
		b := o.open[n-1]
		return fault{
			pos: s.at(b.line, b.col, 1), code: "open-bracket",
			message: fmt.Sprintf("the %c that begins here is not closed before the end of the file", b.what),
			help:    []string{fmt.Sprintf("put the closing %c where the entry ends", closing(b.what))},
		}, true
	}
	return fault{}, false
}

// keyBelow is the first line below a bracket, down to last, that begins with a
// key no further in than the line of the bracket; -1 if there is none.
func (s *stop) keyBelow(b spot, last int) int {
	for i := b.line + 1; i <= last; i++ {
		if keyLine.MatchString(string(s.lines[i])) && s.indent(i) <= s.indent(b.line) {
			return i
		}
	}
	return -1
}

// closing is the sign that closes a bracket.
func closing(bracket rune) rune {
	if bracket == '[' {
		return ']'
	}
	return '}'
}

// noComma finds two entries in brackets with no comma between them.
func (s *stop) noComma() (fault, bool) {
	for i := len(s.colons) - 1; i > 0; i-- {
		c, before := s.colons[i], s.colons[i-1]
		if !s.reached(c.line, c.col) || !c.flow {
			continue
		}
		line := s.lines[c.line]
		word := c.col
		for word > 0 && !strings.ContainsRune(" ,{[", line[word-1]) {
			word--
		}
		if before.line != c.line || before.col >= word || strings.ContainsAny(string(line[before.col:word]), ",{}[]") {
			break
		}
		key := string(line[word:c.col])
		return fault{
			pos: s.at(c.line, word, c.col-word), code: "no-comma",
			message: "no comma stands before " + quote(key),
			help:    []string{"a comma parts the entries inside { }, or put a text with a colon in quotes"},
			repair:  s.commaRepair(before, c),
		}, true
	}
	line, col := s.lastSign()
	return fault{
		pos: s.at(line, col, 1), code: "no-comma",
		message: "a comma or a closing bracket is missing here or before",
		help:    []string{"a comma parts the entries inside { } and [ ]"},
	}, true
}

// commaRepair puts a stand-in for both entries that lack a comma between them.
func (s *stop) commaRepair(before, c spot) *repair {
	line := s.lines[c.line]
	from := before.col + 1
	for from < len(line) && line[from] == ' ' {
		from++
	}
	end := valueEnd(line, spot{line: c.line, col: c.col, flow: true})
	if strings.ContainsAny(string(line[from:end]), "[{") {
		return nil
	}
	return &repair{c.line, from, end, standIn(end - from), from}
}

// strayBracket finds a closing bracket that closes nothing.
func (s *stop) strayBracket() (fault, bool) {
	for i := len(s.stray) - 1; i >= 0; i-- {
		b := s.stray[i]
		if !s.reached(b.line, b.col) || b.line < s.line-1 {
			continue
		}
		return fault{
			pos: s.at(b.line, b.col, 1), code: "stray-bracket",
			message: fmt.Sprintf("this %c closes nothing", b.what),
			help:    []string{"take it out, or open it where the entry begins"},
			repair:  &repair{b.line, b.col, b.col + 1, " ", -1},
		}, true
	}
	return fault{}, false
}

// emptyEntry finds a comma with nothing before it.
func (s *stop) emptyEntry() (fault, bool) {
	line, col := s.lastSign()
	for ; line >= 0 && line >= s.line-1; line-- {
		l := s.lines[line]
		for i := min(col, len(l)-1); i >= 0; i-- {
			before := strings.TrimRight(string(l[:i]), " ")
			if l[i] == ',' && (strings.HasSuffix(before, ",") || strings.HasSuffix(before, "[") || strings.HasSuffix(before, "{")) {
				return fault{
					pos: s.at(line, i, 1), code: "empty-entry",
					message: "nothing stands before this comma",
					help:    []string{"take the comma out, or write the entry that is missing"},
					repair:  &repair{line, i, i + 1, " ", -1},
				}, true
			}
		}
		if line > 0 {
			col = len(s.lines[line-1]) - 1
		}
	}
	return fault{}, false
}

// dashInBrackets finds a list with dashes inside brackets.
func (s *stop) dashInBrackets() (fault, bool) {
	for i := len(s.starts) - 1; i >= 0; i-- {
		at := s.starts[i]
		if !at.flow || at.what != '-' || !s.reached(at.line, at.col) || at.line < s.line-1 {
			continue
		}
		return fault{
			pos: s.at(at.line, at.col, 1), code: "list-behind-key",
			message: "inside brackets a list has no dashes",
			help:    []string{"write: [one, two], or put a text that begins with a dash in quotes"},
			repair:  s.replace(at),
		}, true
	}
	return fault{}, false
}
