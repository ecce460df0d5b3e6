package def

import (
	"slices"

	"gopkg.in/yaml.v3"
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
		return r.cutList(name, before, rest, behind)
	case before.Kind != yaml.ScalarNode || isQuoted(before):
		return 0
	}
	r.cutTold(name, quote(before.Value), rest, r.cutHelp(name, before, rest, known))
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
func (r *reader) cutList(name string, before *yaml.Node, rest []*yaml.Node, behind form) int {
	items, only := []*yaml.Node{before}, quote(before.Value)
	switch before.Kind {
	case yaml.ScalarNode:
		if r.unread(before) {
			only = "what is wrong above"
		}
	case yaml.SequenceNode:
		items, only = before.Content, "what stands in [ ]"
	case yaml.MappingNode:
		only = "what stands in { }"
	case yaml.AliasNode:
		only = "what *" + before.Value + " stands for"
	}
	r.cutTold(name, only, rest, r.listHelp(name, append(slices.Clone(items), rest...), behind))
	return len(rest)
}

// cutTold reports what a comma cut off.
func (r *reader) cutTold(name, only string, rest []*yaml.Node, help []string) {
	r.add(r.place(rest[0]), "cut-by-comma", quote(asWritten(rest[0]))+" is not a key here: a comma inside { } ends the entry, so "+name+" reads only "+only, help...)
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
