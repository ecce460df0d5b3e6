package def

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"matchmark/packs/phrase"
)

// A keySet is which keys a map may have, and what stands behind them.
type keySet struct {
	find func(name string) *entry // nil: the author chooses the keys
	any  form                     // what stands behind those that the author chooses
}

// has reports whether a map may have the key.
func (k keySet) has(name string) bool { return k.find == nil || k.find(name) != nil }

// named reports whether the key is one of the table.
func (k keySet) named(name string) bool { return k.find != nil && k.find(name) != nil }

// behind is the form of what stands behind a key.
func (k keySet) behind(name string) form {
	if k.find == nil {
		return k.any
	}
	if e := k.find(name); e != nil {
		return e.form
	}
	return textForm
}

// listed reports whether a list may stand where the form is asked for.
func (f form) listed() bool {
	return slices.Contains([]form{listForm, countsForm, marksForm, afterForm, positionsForm, namesForm}, f)
}

// decimalComma is a comma between two digits.
var decimalComma = phrase.Of(`(\d),(\d)`)

// cutByComma looks at entry i of a map in braces. When it and those after it
// have neither a known name nor a value they are the end of a text, or of a list without
// its brackets, that a comma cut; this is reported, and how many there are is returned.
func (r *reader) cutByComma(m *yaml.Node, i int, known keySet) int {
	if m.Style&yaml.FlowStyle == 0 || i == 0 {
		return 0
	}
	name, before := m.Content[i-2].Value, m.Content[i-1]
	behind := known.behind(name)
	rest := r.cutOff(m, i, known, behind)
	switch {
	case len(rest) == 0 || isNull(before):
		return 0
	case behind.listed():
		return r.cutList(name, before, rest)
	case before.Kind != yaml.ScalarNode || isQuoted(before):
		return 0
	}
	whole := r.wholeText(before, rest)
	help := []string{"put it in quotes: " + name + `: "` + strings.ReplaceAll(whole, `"`, "") + `"`}
	switch {
	case decimalComma.MatchString(whole):
		help = []string{"decimals take a point: " + name + ": " + decimalComma.ReplaceAllString(whole, "$1.$2")}
	case behind == intoForm:
		help = []string{"write one place for all parts, as " + name + ": " + before.Value, "or one for each part: " + name + ": {…: " + before.Value + ", …: " + rest[0].Value + "}"}
	}
	r.cutTold(name, quote(before.Value), rest, help)
	return len(rest)
}

// cutOff are the entries from i on that have neither a known name nor a value: of what may
// be a list, maps in braces of their own too.
func (r *reader) cutOff(m *yaml.Node, i int, known keySet, behind form) []*yaml.Node {
	var rest []*yaml.Node
	for k := i; k+1 < len(m.Content); k += 2 {
		key, value := m.Content[k], m.Content[k+1]
		text := key.Kind == yaml.ScalarNode && !known.named(key.Value)
		piece := key.Kind == yaml.MappingNode && behind.listed()
		if r.holes[key] || !isNull(value) || value.Value != "" || !text && !piece {
			break
		}
		rest = append(rest, key)
	}
	return rest
}

// cutList reports a list without its brackets, and gives how many of its items stand
// behind the comma.
func (r *reader) cutList(name string, before *yaml.Node, rest []*yaml.Node) int {
	items, only := []*yaml.Node{before}, quote(before.Value)
	switch before.Kind {
	case yaml.SequenceNode:
		items, only = before.Content, "what stands in [ ]"
	case yaml.MappingNode:
		only = "what stands in { }"
	case yaml.AliasNode:
		only = "what *" + before.Value + " stands for"
	}
	var words []string
	for _, n := range append(slices.Clone(items), rest...) {
		words = append(words, asWritten(n))
	}
	r.cutTold(name, only, rest, []string{"write it in brackets: " + name + ": [" + strings.Join(words, ", ") + "]"})
	return len(rest)
}

// cutTold reports what a comma cut off.
func (r *reader) cutTold(name, only string, rest []*yaml.Node, help []string) {
	r.add(r.place(rest[0]), "cut-by-comma", quote(asWritten(rest[0]))+" is not a key here: a comma inside { } ends the entry, so "+name+" reads only "+only, help...)
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

// wholeText is a text with what a comma cut off it, as it stands in its line.
func (r *reader) wholeText(before *yaml.Node, rest []*yaml.Node) string {
	whole := before.Value + ", " + rest[0].Value
	if from, to := r.place(before), r.place(rest[len(rest)-1]); from.Line == to.Line && from.Col < to.Col {
		line := r.line(from.Line)
		whole = string(line[from.Col-1 : min(to.Col+to.Width-1, len(line))])
	}
	if inside, ok := insideQuotes(whole); ok {
		return inside
	}
	return whole
}
