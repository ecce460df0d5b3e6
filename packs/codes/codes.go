// Package codes tells of every code of a problem what stands behind it and what to do:
// its cause and its cure. It knows the codes by their names only; the messages
// themselves, with the author's own words in them, are made where the problem is found.
package codes

import (
	"fmt"
	"io"
	"slices"
	"strings"
)

// An Entry is what is told of one code: Cause and Cure are a sentence each.
type Entry struct {
	Code, Cause, Cure string
}

// A Subject is a group of codes under one heading.
type Subject struct {
	Title   string
	Entries []Entry
}

// Subjects lists all codes by subject, within each by name.
func Subjects() []Subject {
	list := []Subject{
		{"The file", fileCodes}, {"Limits and quantities", limitCodes}, {"Names, places, options", nameCodes}, {"Tags and labels", storeCodes},
		{"The order of work", slices.Concat(workCodes, orderCodes)}, {"Parts, containers, tags", partCodes}, {"Readings and instruments", readingCodes},
		{"Joints", jointCodes}, {"Lifts", liftCodes}, {"Heats", heatCodes},
		{"Readings that come back", filledCodes},
	}
	for i := range list {
		list[i].Entries = slices.Clone(list[i].Entries)
		slices.SortFunc(list[i].Entries, func(a, b Entry) int { return strings.Compare(a.Code, b.Code) })
	}
	return list
}

// Find gives the entry of a code; false when there is none.
func Find(code string) (Entry, bool) {
	for _, s := range Subjects() {
		for _, e := range s.Entries {
			if e.Code == code {
				return e, true
			}
		}
	}
	return Entry{}, false
}

// Names lists all codes, sorted.
func Names() []string {
	var out []string
	for _, s := range Subjects() {
		for _, e := range s.Entries {
			out = append(out, e.Code)
		}
	}
	slices.Sort(out)
	return out
}

// Reference writes all codes as a page of Markdown. shown gives the file that shows a
// code, "" for none. The error is that of w.
func Reference(w io.Writer, shown func(code string) string) error {
	var b strings.Builder
	for _, s := range Subjects() {
		fmt.Fprintf(&b, "- [%s](#%s)\n", s.Title, anchor(s.Title))
	}
	for _, s := range Subjects() {
		fmt.Fprintf(&b, "\n### %s\n\n| code | what stands behind it | what to do |\n|---|---|---|\n", s.Title)
		for _, e := range s.Entries {
			code := "`" + e.Code + "`"
			if file := shown(e.Code); file != "" {
				code = "[" + code + "](" + file + ")"
			}
			fmt.Fprintf(&b, "| %s | %s | %s |\n", code, cell(e.Cause), cell(e.Cure))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// cell writes a text so that it does not end its cell of a table.
func cell(s string) string { return strings.ReplaceAll(s, "|", `\|`) }

// anchor is what a heading is linked by.
func anchor(title string) string {
	return strings.ReplaceAll(strings.ToLower(strings.ReplaceAll(title, ",", "")), " ", "-")
}
