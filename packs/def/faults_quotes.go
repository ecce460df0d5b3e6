package def

import (
	"fmt"
	"strings"

	"matchmark/packs/source"
)

// The faults of quotes: one that is missing, one too many, and what stands inside them.

// escape finds a backslash in double quotes that YAML does not know.
func (s *stop) escape() (fault, bool) {
	for i := len(s.quotes) - 1; i >= 0; i-- {
		q := s.quotes[i]
		if q.what != '"' || !s.reached(q.line, q.col) {
			continue
		}
		line, col := s.line, min(s.col, len(s.lines[s.line]))-1
		for col >= 0 && s.lines[line][col] != '\\' {
			col--
		}
		if col < 0 {
			return fault{}, false
		}
		f := fault{
			pos: s.at(line, col, 2), code: "escape",
			message: "a backslash in double quotes is the beginning of a sign of its own, and YAML does not know this one",
			help:    []string{"put the text in single quotes: there a backslash is a backslash"},
		}
		if q.line == line && q.endLine == line {
			f.repair = &repair{line, q.col, q.endCol + 1, standIn(q.endCol + 1 - q.col), q.col}
		}
		return f, true
	}
	return fault{}, false
}

// openQuote finds quotes without an end.
func (s *stop) openQuote() (fault, bool) {
	for _, q := range s.quotes {
		if q.endLine < 0 {
			return fault{
				pos: s.at(q.line, q.col, 1), code: "open-quote",
				message: "the quotes that begin here are never closed",
				help:    []string{"close them at the end of the text"},
				repair:  s.replace(q.spot),
			}, true
		}
	}
	return fault{}, false
}

// quotesAcross finds quotes that run over lines with keys of their own: they were
// forgotten at the end of their first line, and others far below close them.
func (s *stop) quotesAcross() (fault, bool) {
	for _, q := range s.quotes {
		if !s.reached(q.line, q.col) {
			break
		}
		for i := q.line + 1; i <= q.endLine; i++ {
			if !keyLine.MatchString(string(s.lines[i])) {
				continue
			}
			text := strings.TrimSpace(string(s.lines[q.line][q.col:]))
			return fault{
				pos: s.at(q.line, q.col, 1), code: "open-quote",
				message: fmt.Sprintf("the quotes that begin here are not closed on their line, and run on to line %d", q.endLine+1),
				help:    []string{"close them at the end of the text: " + text + string(q.what)},
				repair:  s.replace(q.spot),
			}, true
		}
	}
	return fault{}, false
}

// quotesGoOn finds a text that goes on behind its closing quote.
func (s *stop) quotesGoOn() (fault, bool) {
	for i := len(s.quotes) - 1; i >= 0; i-- {
		q := s.quotes[i]
		if q.endLine < 0 || !s.reached(q.endLine, q.endCol) {
			continue
		}
		if q.endLine < s.line-1 {
			break
		}
		line := s.lines[q.endLine]
		next := q.endCol + 1
		for next < len(line) && line[next] == ' ' {
			next++
		}
		if next == len(line) || strings.ContainsRune(":,]}", line[next]) || line[next] == '#' && line[next-1] == ' ' {
			continue
		}
		f := fault{code: "quotes", repair: s.replace(q.spot)}
		if q.endLine > q.line {
			f.pos = s.at(q.line, q.col, 1)
			f.message = fmt.Sprintf("the quotes that begin here are closed only on line %d, where other quotes begin", q.endLine+1)
			f.help = []string{"close them at the end of the text"}
			f.see = []source.Also{{Pos: s.at(q.endLine, q.endCol, 1), What: "closed here"}}
			return f, true
		}
		end := valueEnd(line, spot{line: q.line, col: next, flow: q.flow})
		f.repair = &repair{q.line, q.col, end, standIn(end - q.col), q.col}
		f.pos = s.at(q.line, next, end-next)
		f.message = "the text goes on behind its closing quote"
		whole := string(line[q.col:end])
		if q.what == '"' {
			f.help = []string{"put single quotes round the whole text: '" + strings.ReplaceAll(whole, "'", "''") + "'"}
		} else {
			f.help = []string{"a single quote inside single quotes is written twice, or put double quotes round the text"}
		}
		if q.flow {
			f.help = append(f.help, "or put the comma that is missing before it")
		}
		return f, true
	}
	return fault{}, false
}
