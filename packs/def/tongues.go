package def

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/source"
)

// Texts in several languages: where a text may stand a definition may have a map from
// languages to texts instead, {en: Take the nut off, es: Quite la tuerca}. The reader
// goes on with the text in the language of the paper, and the rest of the program sees
// no more than that.

// Tongues are the languages that a text can be written in, by ISO 639-1.
var Tongues = []string{"de", "en", "es", "fr", "pl"}

// A Tongue says in which language a file is read; empty is English.
type Tongue string

// code is the language, English if none is said.
func (t Tongue) code() string {
	if t == "" {
		return "en"
	}
	return string(t)
}

// tongues puts the text in the reader's language in the place of each map of languages.
// A language that is used somewhere in the file and lacks in a map is told: as an error
// where it is the one that is read.
func (r *reader) tongues(doc *yaml.Node) {
	var maps []*yaml.Node
	replaced := map[*yaml.Node]*yaml.Node{}
	var walk func(n *yaml.Node)
	walk = func(n *yaml.Node) {
		for i, c := range n.Content {
			if r.holes[c] {
				continue
			}
			if isValue(n, i) && isTongues(c) {
				if replaced[c] == nil {
					maps = append(maps, c)
					replaced[c] = r.inTongue(c)
				}
				n.Content[i] = replaced[c]
				continue
			}
			walk(c)
		}
	}
	walk(doc)
	r.lacking(maps)
	if len(replaced) == 0 {
		return
	}
	var aliases func(n *yaml.Node)
	aliases = func(n *yaml.Node) {
		if text := replaced[n.Alias]; n.Alias != nil && text != nil {
			n.Alias = text
		}
		for _, c := range n.Content {
			aliases(c)
		}
	}
	aliases(doc)
}

// KnowEnglish takes up the English of the texts of an included file.
func (d *Definition) KnowEnglish(texts map[string]string) {
	if d.English == nil {
		d.English = map[string]string{}
	}
	for text, english := range texts {
		d.English[text] = english
	}
}

// isValue reports whether entry i of a node is no key of a map.
func isValue(n *yaml.Node, i int) bool { return n.Kind != yaml.MappingNode || i%2 == 1 }

// isTongues reports whether a node is a map from languages to texts.
func isTongues(n *yaml.Node) bool {
	if n.Kind != yaml.MappingNode || len(n.Content) == 0 {
		return false
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if !slices.Contains(Tongues, n.Content[i].Value) || n.Content[i+1].Kind != yaml.ScalarNode || isNull(n.Content[i+1]) {
			return false
		}
	}
	return true
}

// inTongue is the text of a map in the reader's language; where it lacks, the first one.
func (r *reader) inTongue(m *yaml.Node) *yaml.Node {
	own, english := m.Content[1], ""
	for i := 0; i+1 < len(m.Content); i += 2 {
		if m.Content[i].Value == r.tongue.code() {
			own = m.Content[i+1]
		}
		if m.Content[i].Value == "en" {
			english = oneLine(m.Content[i+1].Value)
		}
	}
	if english != "" && r.tongue.code() != "en" {
		if r.english == nil {
			r.english = map[string]string{}
		}
		r.english[oneLine(own.Value)] = english
	}
	return own
}

// lacking tells of the languages that some of the maps have and others have not.
func (r *reader) lacking(maps []*yaml.Node) {
	used := map[string]bool{}
	for _, m := range maps {
		for i := 0; i+1 < len(m.Content); i += 2 {
			used[m.Content[i].Value] = true
		}
	}
	for _, m := range maps {
		has := map[string]bool{}
		for i := 0; i+1 < len(m.Content); i += 2 {
			if at := m.Content[i]; has[at.Value] {
				r.add(r.place(at), "doubled-key", "the text in "+quote(at.Value)+" is written twice", "leave one of the two")
			}
			has[m.Content[i].Value] = true
		}
		if own := r.tongue.code(); !has[own] {
			r.add(r.place(m), "no-text-in-language", "this text is not written in the language of the paper, "+own,
				"write it: {"+own+": …, …}, or print with --language "+m.Content[0].Value)
			continue
		}
		var missing []string
		for _, t := range Tongues {
			if used[t] && !has[t] {
				missing = append(missing, t)
			}
		}
		if len(missing) > 0 {
			r.report(source.Problem{Pos: r.place(m), Severity: source.Warning, Code: "no-text-in-language",
				Message: "this text lacks in a language that others here have: " + strings.Join(missing, ", "), Help: []string{"write it in all languages of the file"}})
		}
	}
}
