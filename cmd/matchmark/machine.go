package main

import (
	"encoding/json"
	"io"
	"slices"

	"matchmark/packs/codes"
	"matchmark/packs/source"
)

// Problems for programs: lines of JSON, and SARIF 2.1.0 (OASIS standard, from memory),
// which forges and editors read. Columns count from 1 in both, in letters.

// A checked is one definition with what check found.
type checked struct {
	problems source.Problems
	files    source.Files
}

// A place is the range of a problem in a file. The end is the column behind the last
// letter.
type place struct {
	File      string `json:"file"`
	Line      int    `json:"line,omitempty"`
	Column    int    `json:"column,omitempty"`
	EndColumn int    `json:"endColumn,omitempty"`
}

func placeOf(p source.Pos) place {
	at := place{File: p.File, Line: p.Line, Column: p.Col}
	if p.Col > 0 {
		at.EndColumn = p.Col + max(p.Width, 1)
	}
	return at
}

// severityWord is how both forms call what stops the print, and what does not.
func severityWord(s source.Severity) string {
	if s == source.Error {
		return "error"
	}
	return "warning"
}

// writeJSON writes one object a line: code, severity, place, message, help, the other
// places that the problem speaks of, and whether it may follow from one before it.
func writeJSON(w io.Writer, told []checked) error {
	type see struct {
		place
		What string `json:"what"`
	}
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	for _, c := range told {
		for _, p := range c.problems {
			o := struct {
				Code     string   `json:"code"`
				Severity string   `json:"severity"`
				At       place    `json:"at"`
				Message  string   `json:"message"`
				Help     []string `json:"help"`
				See      []see    `json:"see,omitempty"`
				Follows  bool     `json:"follows,omitempty"`
			}{p.Code, severityWord(p.Severity), placeOf(p.Pos), p.Message, slices.Concat([]string{}, p.Help), nil, p.Follows > 0}
			for _, also := range p.See {
				o.See = append(o.See, see{placeOf(also.Pos), also.What})
			}
			if err := enc.Encode(o); err != nil {
				return err
			}
		}
	}
	return nil
}

// writeSARIF writes one run with a rule for each code that was found.
func writeSARIF(w io.Writer, told []checked) error {
	type object = map[string]any
	rules, results := []any{}, []any{}
	index := map[string]int{}
	for _, c := range told {
		for _, p := range c.problems {
			if _, ok := index[p.Code]; !ok {
				index[p.Code] = len(rules)
				rule := object{"id": p.Code}
				if e, ok := codes.Find(p.Code); ok {
					rule["shortDescription"] = object{"text": e.Cause}
					rule["help"] = object{"text": e.Cure}
				}
				rules = append(rules, rule)
			}
			text := p.Message
			for _, help := range p.Help {
				text += "\n" + help
			}
			result := object{
				"ruleId": p.Code, "ruleIndex": index[p.Code], "level": severityWord(p.Severity),
				"message": object{"text": text}, "locations": []any{sarifPlace(p.Pos)},
			}
			var related []any
			for _, also := range p.See {
				at := sarifPlace(also.Pos)
				at["message"] = object{"text": also.What}
				related = append(related, at)
			}
			if related != nil {
				result["relatedLocations"] = related
			}
			results = append(results, result)
		}
	}
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	return enc.Encode(object{
		"$schema": "https://json.schemastore.org/sarif-2.1.0.json", "version": "2.1.0",
		"runs": []any{object{
			"tool":       object{"driver": object{"name": "matchmark", "version": buildVersion(), "rules": rules}},
			"columnKind": "unicodeCodePoints",
			"results":    results,
		}},
	})
}

// sarifPlace is a location; of a file as a whole it has no region.
func sarifPlace(p source.Pos) map[string]any {
	type object = map[string]any
	at := object{"artifactLocation": object{"uri": p.File}}
	if p.Line > 0 {
		region := object{"startLine": p.Line}
		if p.Col > 0 {
			region["startColumn"], region["endColumn"] = p.Col, p.Col+max(p.Width, 1)
		}
		at["region"] = region
	}
	return object{"physicalLocation": at}
}
