// Package bom makes a first definition of a bill of materials: a table of parts, as a
// maker or a stores system gives it out, in a CSV file. Its columns are told by their
// heads, in whatever order they stand. What it makes passes check, and says at each
// place what a planner has still to put in.
package bom

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"matchmark/packs/phrase"
	"matchmark/packs/source"
	"matchmark/packs/units"
)

// A Part is one row of the table.
type Part struct {
	Key    string // its name in the definition
	Name   string
	Count  string         // a whole number; empty for one
	Mass   units.Quantity // the zero Quantity where none is given
	Thread string
	Renew  bool
	Note   string
}

// mostParts is the most rows that one definition takes over.
const mostParts = 400

// A column is what the head of a column stands for.
type column int

const (
	other column = iota
	nameColumn
	countColumn
	massColumn
	threadColumn
	renewColumn
	noteColumn
)

// heads are the heads of columns as stores and makers write them, in small letters
// without what stands in brackets. Common practice, no source.
var heads = map[string]column{
	"name": nameColumn, "description": nameColumn, "part name": nameColumn, "designation": nameColumn, "part": nameColumn, "component": nameColumn,
	"item name": nameColumn, "title": nameColumn, "benennung": nameColumn, "bezeichnung": nameColumn, "désignation": nameColumn,
	"count": countColumn, "qty": countColumn, "quantity": countColumn, "pcs": countColumn, "pieces": countColumn, "number off": countColumn, "no off": countColumn,
	"off": countColumn, "menge": countColumn, "stück": countColumn, "anzahl": countColumn, "qté": countColumn, "quantité": countColumn,
	"mass": massColumn, "weight": massColumn, "kg": massColumn, "lb": massColumn, "masse": massColumn, "gewicht": massColumn, "unit weight": massColumn, "unit mass": massColumn,
	"thread": threadColumn, "gewinde": threadColumn,
	"renew": renewColumn, "replace": renewColumn, "wear part": renewColumn, "always replace": renewColumn, "renew always": renewColumn,
	"note": noteColumn, "notes": noteColumn, "remark": noteColumn, "remarks": noteColumn, "comment": noteColumn, "bemerkung": noteColumn,
}

// unitIn finds the unit in the head of a column: Weight (lb), Mass [kg].
var unitIn = phrase.Of(`^(.*?)\s*[(\[/,]?\s*\b(kg|g|lb|lbs|t)\b[)\]]?\s*$`)

// Read reads the table in data, which problems call by name. A problem says in which
// row and column it lies; rows count with the head as the first. Without an error the
// parts are whole.
func Read(name string, data []byte) ([]Part, source.Problems) {
	var ps source.Problems
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	if !utf8.Valid(data) {
		ps.Add(source.Pos{File: name}, "not-utf-8", "the table is saved in an older encoding, or is no CSV file", "save it as CSV UTF-8 in the spreadsheet")
		return nil, ps
	}
	r := csv.NewReader(bytes.NewReader(data))
	r.Comma = separator(data)
	r.FieldsPerRecord = -1
	r.LazyQuotes = true
	r.TrimLeadingSpace = r.Comma != '\t' // it would take empty fields for blanks
	t := &table{file: name, csv: r, problems: &ps, keys: map[string]bool{}}
	if !t.head() {
		return nil, ps
	}
	for t.row() {
	}
	if len(t.parts) == 0 && ps.Errors() == 0 {
		ps.Add(source.Pos{File: name}, "empty-file", "no part stands below the heads of the columns")
	}
	return t.parts, ps
}

// separator is what parts the columns: the one that stands most often in the first line.
func separator(data []byte) rune {
	line, _, _ := bytes.Cut(data, []byte("\n"))
	best := ','
	for _, c := range ";\t|" {
		if bytes.Count(line, []byte(string(c))) > bytes.Count(line, []byte(string(best))) {
			best = c
		}
	}
	return best
}

// A table is a bill of materials while it is read.
type table struct {
	file     string
	csv      *csv.Reader
	problems *source.Problems
	columns  []column
	titles   []string
	unit     string // of masses, by the head of their column
	rows     int
	parts    []Part
	keys     map[string]bool
}

// at is the place of a field of the row last read.
func (t *table) at(field int) source.Pos {
	line, col := t.csv.FieldPos(field)
	return source.Pos{File: t.file, Line: line, Col: col, Width: 1}
}

// head reads the first row and tells what its columns are.
func (t *table) head() bool {
	row, err := t.csv.Read()
	if err != nil {
		t.problems.Add(source.Pos{File: t.file}, "empty-file", "nothing is written in this table", "the first row names the columns: name, count, mass")
		return false
	}
	t.rows = 1
	named := false
	for i, title := range row {
		plain := strings.ToLower(strings.TrimSpace(title))
		c := heads[strings.TrimSpace(strings.TrimRight(bracket.ReplaceAllString(plain, ""), ".:"))]
		if m := unitIn.FindStringSubmatch(plain); m != nil && (heads[strings.TrimSpace(m[1])] == massColumn || c == massColumn) {
			c, t.unit = massColumn, strings.TrimSuffix(m[2], "s")
		}
		if c != other && t.has(c) {
			t.problems.Warn(t.at(i), "twice", fmt.Sprintf("column %s: there is one of this sort already; this one is not read", source.Quote(title)))
			c = other
		}
		named = named || c == nameColumn
		t.columns, t.titles = append(t.columns, c), append(t.titles, strings.TrimSpace(title))
	}
	if !named {
		t.problems.Add(source.Pos{File: t.file, Line: 1, Col: 1, Width: 1}, "missing", "no column has the names of the parts; the heads are "+strings.Join(t.titles, ", "),
			"call the column name, or description")
	}
	return named
}

var bracket = phrase.Of(`\s*[(\[][^)\]]*[)\]]`)

func (t *table) has(c column) bool {
	for _, have := range t.columns {
		if have == c {
			return true
		}
	}
	return false
}

// row reads one row, and reports whether there may be more.
func (t *table) row() bool {
	row, err := t.csv.Read()
	if errors.Is(err, io.EOF) {
		return false
	}
	t.rows++
	if err != nil {
		t.problems.Add(source.Pos{File: t.file, Line: t.rows}, "wrong-form", fmt.Sprintf("row %d cannot be read as a row of this table", t.rows), "look for quotes that are not closed")
		return false
	}
	if strings.TrimSpace(strings.Join(row, "")) == "" {
		return true
	}
	if len(t.parts) == mostParts {
		t.problems.Add(t.at(0), "too-many", fmt.Sprintf("the table has over %d parts, more than one definition should have", mostParts), "take out what this work does not touch")
		return false
	}
	var p Part
	for i, text := range row {
		if text = strings.Join(strings.Fields(text), " "); text == "" || i >= len(t.columns) {
			continue
		}
		t.field(&p, i, text)
	}
	if p.Name == "" {
		t.problems.Add(t.at(0), "missing", fmt.Sprintf("row %d has no name of a part", t.rows))
		return true
	}
	p.Key = t.key(p.Name)
	t.parts = append(t.parts, p)
	return true
}

// key makes a name for a definition of what a part is called: small letters and
// dashes, and a number where two would be alike.
func (t *table) key(name string) string {
	key := strings.Trim(notInKey.ReplaceAllString(strings.ToLower(name), "-"), "-")
	if r := []rune(key); len(r) > 30 {
		key = strings.Trim(string(r[:30]), "-")
	}
	if key == "" || key == "others" {
		key = "part"
	}
	base := key
	for n := 2; t.keys[key]; n++ {
		key = fmt.Sprintf("%s-%d", base, n)
	}
	t.keys[key] = true
	return key
}

var notInKey = phrase.Of(`[^\p{L}\p{N}]+`)
