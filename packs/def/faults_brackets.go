package def

import (
	"fmt"
	"strings"

	"matchmark/packs/source"
)

// The faults of brackets, braces and the commas inside them.

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
			help:    s.withComma(line, before.col+1, word),
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

// questionInBraces finds a question without quotes inside braces, where YAML takes its
// mark for a sign of its own.
func (s *stop) questionInBraces() (fault, bool) {
	line, _ := s.lastSign()
	for l := line; l >= 0 && l >= line-1; l-- {
		for i := len(s.colons) - 1; i >= 0; i-- {
			c := s.colons[i]
			if c.line != l || !c.flow {
				continue
			}
			row := s.lines[l]
			mark := c.col + 1
			for mark < len(row) && !strings.ContainsRune("?\"'{}[]", row[mark]) {
				mark++
			}
			if mark == len(row) || row[mark] != '?' {
				continue
			}
			from := c.col + 1
			for row[from] == ' ' {
				from++
			}
			return fault{
				pos: s.at(l, from, mark+1-from), code: "question",
				message: "a question inside { } stands in quotes: there the question mark is a sign of YAML",
				help:    []string{"write: " + quote(string(row[from:mark+1]))},
				repair:  &repair{l, from, mark + 1, standIn(mark + 1 - from), from},
			}, true
		}
	}
	return fault{}, false
}

// withComma writes the two entries with the comma between them.
func (s *stop) withComma(line []rune, from, word int) []string {
	value := strings.TrimSpace(string(line[from:word]))
	if value == "" || word == len(line) {
		return []string{"a comma parts the entries inside { }, or put a text with a colon in quotes"}
	}
	end := word
	for end < len(line) && line[end] != ':' {
		end++
	}
	return []string{"a comma parts the entries: " + value + ", " + string(line[word:end]) + ": …", "or put a text with a colon in quotes"}
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
