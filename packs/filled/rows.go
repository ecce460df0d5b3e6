package filled

import (
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"matchmark/packs/source"
)

// A table is a file cut into rows and cells, each with its place.
type table struct {
	name     string
	lines    []string
	at       map[string]int // the index of each column of ours
	rows     []cells
	problems source.Problems
}

// cells is one row: its number as a spreadsheet counts it, and its cells.
type cells struct {
	n    int
	text []string
	pos  []source.Pos
}

// readTable cuts a file: commas, semicolons or tabs between the cells, quotes about a
// cell that holds one (RFC 4180). Line ends are those of any system.
func readTable(name string, data []byte) *table {
	t := &table{name: name, lines: source.Lines(data), at: map[string]int{}}
	whole := source.Pos{File: name}
	if !utf8.Valid(data) {
		t.problems.Add(whole, "letters", "the file has letters that are not UTF-8: ° and ± would be lost", "save it once more as CSV UTF-8")
		return t
	}
	r := csv.NewReader(strings.NewReader(strings.Join(t.lines, "\n")))
	r.FieldsPerRecord = -1
	r.Comma = separator(t.lines)
	for n := 1; ; n++ {
		record, err := r.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.broken(err)
			break
		}
		row := cells{n: n, text: record}
		for i := range record {
			whole := strings.ReplaceAll(record[i], "\u00a0", " ")
			text := strings.TrimSpace(whole)
			at := t.place(r, i, text)
			if before := utf8.RuneCountInString(whole) - utf8.RuneCountInString(strings.TrimLeft(whole, " ")); at.Line > 0 && text != "" {
				at.Col = min(at.Col+before, utf8.RuneCountInString(t.lines[at.Line-1])+1)
			}
			row.pos, row.text[i] = append(row.pos, at), text
		}
		if len(t.at) == 0 && len(t.problems) == 0 {
			t.header(row)
			continue
		}
		if !row.empty() {
			t.rows = append(t.rows, row)
		}
	}
	if len(t.at) == 0 && len(t.problems) == 0 {
		t.problems.Add(whole, "no-header", "the file is empty", "give the file that print wrote, with the values in it")
	}
	return t
}

// separator is what stands between the cells: what follows the first heading.
func separator(lines []string) rune {
	for _, l := range lines {
		if l = strings.TrimSpace(l); l == "" {
			continue
		}
		for _, s := range []rune{';', '\t'} {
			if strings.Count(l, string(s)) > strings.Count(l, ",") {
				return s
			}
		}
		break
	}
	return ','
}

// place is where a cell stands in its file, columns counted in runes.
func (t *table) place(r *csv.Reader, i int, text string) source.Pos {
	line, col := r.FieldPos(i)
	p := source.Pos{File: t.name, Line: line, Col: 1, Width: max(utf8.RuneCountInString(text), 1)}
	if line < 1 || line > len(t.lines) {
		return p
	}
	l := t.lines[line-1]
	before := l[:min(max(col-1, 0), len(l))]
	p.Col = utf8.RuneCountInString(before) + 1
	if strings.HasPrefix(l[len(before):], `"`) && text != "" {
		p.Col++
	}
	p.Width = min(p.Width, max(utf8.RuneCountInString(l)-p.Col+1, 1))
	return p
}

// broken tells where the quotes of a file are wrong, behind which nothing can be read.
func (t *table) broken(err error) {
	at := source.Pos{File: t.name}
	var p *csv.ParseError
	if errors.As(err, &p) {
		at.Line = min(max(p.Line, 1), len(t.lines))
		l := t.lines[at.Line-1]
		at.Col, at.Width = utf8.RuneCountInString(l[:min(max(p.Column-1, 0), len(l))])+1, 1
	}
	t.problems.Add(at, "quote-mark", "a quote mark stands alone, so nothing behind it can be read", `a cell with a quote mark in it has quotes about it, and its own twice: "3 "" pipe"`)
}

// header finds the columns.
func (t *table) header(row cells) {
	for i, name := range row.text {
		name = strings.ToLower(untext(name))
		if !slices.Contains(columns, name) {
			continue
		}
		if _, twice := t.at[name]; twice {
			t.problems.Add(row.pos[i], "column-twice", "two columns are called "+source.Quote(name), "take one of them out")
			continue
		}
		t.at[name] = i
	}
	for _, name := range needed {
		if _, there := t.at[name]; !there {
			t.problems.Add(row.pos[0], "no-column", "the file has no column "+source.Quote(name)+" in its first row", "give the file that print wrote; columns may be added and moved, these stay: "+strings.Join(needed, ", "))
			return
		}
	}
}

func (c cells) empty() bool {
	for _, s := range c.text {
		if s != "" {
			return false
		}
	}
	return true
}

// get is the text of a cell without the mark of a text, and its place; that of the row
// where it has no such cell.
func (t *table) get(row cells, column string) (string, source.Pos) {
	i, there := t.at[column]
	if !there || i >= len(row.text) {
		return "", row.pos[0]
	}
	return untext(row.text[i]), row.pos[i]
}

// untext takes off the mark that keeps a spreadsheet from taking a text for a formula.
func untext(s string) string { return strings.TrimPrefix(s, "'") }

// said is how a message names a cell.
func (row cells) said(column string) string {
	return "row " + strconv.Itoa(row.n) + ", " + column + ": "
}
