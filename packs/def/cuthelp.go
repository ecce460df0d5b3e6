package def

import (
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
)

// decimalComma is a comma between two digits.
var decimalComma = phrase.Of(`(\d),(\d)`)

// cutHelp is what to write in place of a value that a comma cut: quotes where a text may stand,
// one value where a number, a mark or one of some words does.
func (r *reader) cutHelp(name string, before *yaml.Node, rest []*yaml.Node, known keySet) []string {
	whole, behind := r.wholeText(before, rest), known.behind(name)
	var e *entry
	if known.find != nil {
		e = known.find(name)
	}
	if _, err := strconv.Atoi(before.Value); err == nil && known.find == nil && known.any == textForm {
		words := []string{name + ": " + before.Value}
		for _, n := range rest {
			other := asWritten(n)
			if other == name {
				return []string{"name it once, with its number: {" + words[0] + "}"}
			}
			words = append(words, other+": …")
		}
		return []string{"write a number behind each: {" + strings.Join(words, ", ") + "}"}
	}
	switch {
	case decimalComma.MatchString(whole) && behind != numberForm && behind != varyingCountForm:
		return []string{"decimals take a point: " + name + ": " + decimalComma.ReplaceAllString(whole, "$1.$2")}
	case behind == intoForm:
		return []string{"write one place for all parts, as " + name + ": " + before.Value, "or one for each part: " + name + ": {…: " + before.Value + ", …: " + rest[0].Value + "}"}
	case !slices.Contains([]form{textForm, varyingForm, faceForm, textOrMapForm}, behind), e != nil && (e.takesAmount() || e.letters != "" || e.allowed != nil):
		return []string{"one value stands here: " + name + ": " + asWritten(before)}
	}
	return []string{"put it in quotes: " + name + `: "` + strings.ReplaceAll(whole, `"`, "") + `"`}
}

// listHelp is a list with its brackets: a map may stand in it only where it says how many pieces
// or what stands across, and what could not be read is left open.
func (r *reader) listHelp(name string, items []*yaml.Node, behind form) []string {
	if slices.ContainsFunc(items, func(n *yaml.Node) bool { return n.Kind == yaml.MappingNode }) && behind != countsForm && behind != marksForm {
		if behind == afterForm {
			return []string{"write all inside { }, with the reason behind each: " + name + ": {…: …, …: …}"}
		}
		items = namesIn(items)
	}
	var words []string
	for _, n := range items {
		word := asWritten(n)
		if word == "" || r.unread(n) {
			word = "…"
		}
		if !slices.Contains(words, word) {
			words = append(words, word)
		}
	}
	return []string{"write it in brackets: " + name + ": [" + strings.Join(words, ", ") + "]"}
}

// unread reports whether a node stands in for what could not be read, which is told already.
func (r *reader) unread(n *yaml.Node) bool {
	return r.holes[n] || r.repaired[[2]int{n.Line, n.Column}]
}

// namesIn lists the names of a list, those before a colon in braces too.
func namesIn(items []*yaml.Node) []*yaml.Node {
	var out []*yaml.Node
	for _, n := range items {
		if n.Kind != yaml.MappingNode {
			out = append(out, n)
			continue
		}
		for i := 0; i < len(n.Content); i += 2 {
			out = append(out, n.Content[i])
		}
	}
	return out
}

// asWritten is an item of a list as it would stand in brackets.
func asWritten(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.AliasNode:
		return "*" + n.Value
	case n.Kind == yaml.MappingNode || n.Kind == yaml.SequenceNode:
		var words []string
		for i := 0; i < len(n.Content); i++ {
			words = append(words, asWritten(n.Content[i]))
			if n.Kind == yaml.MappingNode && i+1 < len(n.Content) {
				i++
				words[len(words)-1] += ": " + asWritten(n.Content[i])
			}
		}
		if n.Kind == yaml.MappingNode {
			return "{" + strings.Join(words, ", ") + "}"
		}
		return "[" + strings.Join(words, ", ") + "]"
	case isQuoted(n):
		return `"` + strings.ReplaceAll(oneLine(n.Value), `"`, "") + `"`
	}
	return oneLine(n.Value)
}
