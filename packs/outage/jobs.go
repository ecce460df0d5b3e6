package outage

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"matchmark/packs/source"
)

// A Row is one job of a table of jobs: the definition that it is printed from, if the
// table names one, and a job file made of its fields.
type Row struct {
	Name       string // under which problems speak of it: jobs.csv row 3
	Definition string
	Text       string // the job file
}

// fields are the columns of a table of jobs, and where each stands in a job file.
var fields = []struct{ column, in, key string }{
	{"number", "job", "number"}, {"title", "job", "title"}, {"revision", "job", "revision"}, {"issued", "job", "issued"}, {"scope", "job", "scope"}, {"planner", "job", "planner"},
	{"starts", "job", "starts"}, {"hours-a-day", "job", "hours-a-day"},
	{"tag", "equipment", "tag"}, {"name", "equipment", "name"}, {"serial", "equipment", "serial"}, {"maker", "equipment", "maker"}, {"type", "equipment", "type"}, {"location", "equipment", "location"},
}

// ReadJobs reads a table of jobs: its first row names the columns, those of a job file
// by their keys, definition, and every other column an option of the definition.
func ReadJobs(name string, data []byte) ([]Row, source.Problems) {
	var ps source.Problems
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))))
	first, _, _ := bytes.Cut(data, []byte("\n"))
	if bytes.Count(first, []byte(";")) > bytes.Count(first, []byte(",")) {
		r.Comma = ';'
	}
	r.FieldsPerRecord, r.LazyQuotes = -1, true
	head, err := r.Read()
	if err != nil {
		ps.Add(source.Pos{File: name}, "empty-file", "nothing is written in this table of jobs", "the first row names the columns: number, revision, issued, tag, serial")
		return nil, ps
	}
	for i := range head {
		head[i] = strings.ToLower(strings.TrimSpace(head[i]))
	}
	if !slices.Contains(head, "number") {
		ps.Add(source.Pos{File: name, Line: 1, Col: 1, Width: 1}, "missing", "no column is called number; the heads are "+strings.Join(head, ", "), "columns: number, title, revision, issued, tag, name, serial, location, definition, and options")
		return nil, ps
	}
	var out []Row
	for n := 2; ; n++ {
		row, err := r.Read()
		if errors.Is(err, io.EOF) {
			return out, ps
		}
		if err != nil {
			ps.Add(source.Pos{File: name, Line: n}, "wrong-form", fmt.Sprintf("row %d cannot be read as a row of this table", n), "look for quotes that are not closed")
			return out, ps
		}
		if strings.TrimSpace(strings.Join(row, "")) != "" {
			out = append(out, jobRow(fmt.Sprintf("%s row %d", name, n), head, row))
		}
	}
}

// jobRow makes a job file of a row.
func jobRow(name string, head, row []string) Row {
	out := Row{Name: name}
	maps := map[string][]string{}
	for i, column := range head {
		if i >= len(row) || strings.TrimSpace(row[i]) == "" || column == "" {
			continue
		}
		value := strings.TrimSpace(row[i])
		quoted := "'" + strings.ReplaceAll(value, "'", "''") + "'"
		k := slices.IndexFunc(fields, func(f struct{ column, in, key string }) bool { return f.column == column })
		switch {
		case column == "definition":
			out.Definition = value
		case k >= 0:
			maps[fields[k].in] = append(maps[fields[k].in], "  "+fields[k].key+": "+quoted)
		default:
			maps["options"] = append(maps["options"], "  "+column+": "+quoted)
		}
	}
	var b strings.Builder
	for _, m := range []string{"job", "equipment", "options"} {
		if maps[m] != nil {
			fmt.Fprintf(&b, "%s:\n%s\n", m, strings.Join(maps[m], "\n"))
		}
	}
	out.Text = b.String()
	return out
}
