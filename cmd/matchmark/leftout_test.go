package main

import (
	"cmp"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"gopkg.in/yaml.v3"

	"matchmark/packs/def"
)

// A leftOut is a definition with one key, or one entry of a list, left out.
type leftOut struct {
	path, where string
	text        func() string
}

// A spoil is what is done to a key.
type spoil int

const (
	gone    spoil = iota // the key or entry is left out
	emptied              // the key stands there with nothing behind it
	blanked              // its text is empty
	worded               // where a figure stands there is a word
)

var spoilWords = [...]string{gone: "without", emptied: "with nothing behind", blanked: "with empty quotes behind", worded: "with a word behind"}

// does reports whether what stands behind a key can be spoilt so.
func (how spoil) does(n *yaml.Node) bool {
	switch how {
	case blanked:
		return n.Kind == yaml.ScalarNode
	case worded:
		return n.Kind == yaml.ScalarNode && strings.ContainsAny(n.Value, "0123456789")
	}
	return true
}

// instead is what stands in place of a value.
func (how spoil) instead() *yaml.Node {
	switch how {
	case blanked:
		return &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Style: yaml.DoubleQuotedStyle}
	case worded:
		return &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: "enough"}
	}
	return &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!null"}
}

// shortEnough is how long a definition is at most, in bytes, of which many keys are left
// out in turn: about six kilobytes are set on paper in a twentieth of a second, a starter
// in half of one.
const shortEnough = 7000

// eachKeyLeftOut gives definitions without one of the named keys of the file (of all, if
// none is named) or of what stands below them: every kind of key once, in one of the short
// files that have it, the files in turn; a kind that is in none of these in the shortest
// that has it. There must be as many kinds as least says. With ACID_FULL=1 it is every key
// of every file.
func eachKeyLeftOut(t *testing.T, least int, files []string, keys ...string) []leftOut {
	t.Helper()
	return eachKey(t, gone, least, files, keys...)
}

// eachKey is eachKeyLeftOut with what is done to the key.
func eachKey(t *testing.T, how spoil, least int, files []string, keys ...string) []leftOut {
	t.Helper()
	inKind := map[string][][]leftOut{} // by kind, those of each file, the shortest file first
	var all []leftOut
	texts := map[string][]byte{}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		texts[f] = data
	}
	slices.SortFunc(files, func(a, b string) int { return cmp.Compare(len(texts[a]), len(texts[b])) })
	for _, f := range files {
		of := map[string][]leftOut{}
		for _, x := range leavesOut(t, how, texts[f], keys...) {
			x.where = filepath.Base(f) + " " + spoilWords[how] + " " + x.path
			all = append(all, x)
			of[kindOfKey(x.path)] = append(of[kindOfKey(x.path)], x)
		}
		for kind, list := range of {
			if len(texts[f]) <= shortEnough || len(inKind[kind]) == 0 {
				inKind[kind] = append(inKind[kind], list)
			}
		}
	}
	if os.Getenv("ACID_FULL") == "1" {
		return all
	}
	var out []leftOut
	for i, kind := range slices.Sorted(maps.Keys(inKind)) {
		ofFile := inKind[kind][i%len(inKind[kind])]
		out = append(out, ofFile[i%len(ofFile)])
	}
	if len(out) < least {
		t.Fatalf("%d kinds of keys of %d in all, at least %d are expected", len(out), len(all), least)
	}
	return out
}

// namedByAuthor are the keys below which the author gives the names, listEntry the number of an entry.
var (
	namedByAuthor = regexp.MustCompile(`(^|/)(lifts|gear|cranes|heats|joints|alignments|ends|legs|top-legs|grips|lifting-points)/[^/]+`)
	listEntry     = regexp.MustCompile(`/[0-9]+(/|$)`)
)

// keyWords are all keys of the language.
var keyWords = sync.OnceValue(func() map[string]bool {
	out := map[string]bool{}
	for _, w := range def.Words() {
		out[w] = true
	}
	return out
})

// kindOfKey is the path of a key without the names that the author gives and the numbers
// of the entries of lists.
func kindOfKey(path string) string {
	path = listEntry.ReplaceAllString(path, "[]$1")
	path = namedByAuthor.ReplaceAllString(path, "$1$2/*")
	parts := strings.Split(path, "/")
	for i, part := range parts {
		if !keyWords()[strings.TrimSuffix(part, "[]")] {
			parts[i] = "*"
		}
	}
	return strings.Join(parts, "/")
}

// leavesOut gives a definition without, or with nothing behind, each of the named keys of
// the file and of all that stands below them.
func leavesOut(t *testing.T, how spoil, data []byte, of ...string) []leftOut {
	t.Helper()
	var root yaml.Node
	if err := yaml.Unmarshal(data, &root); err != nil {
		t.Fatal(err)
	}
	var out []leftOut
	spoiled := func(n *yaml.Node, from, to int) string {
		all := n.Content
		defer func() { n.Content = all }()
		if how == gone {
			n.Content = slices.Concat(all[:from], all[to:])
		} else {
			n.Content = slices.Concat(all[:to-1], []*yaml.Node{how.instead()}, all[to:])
		}
		text, err := yaml.Marshal(&root)
		if err != nil {
			t.Fatal(err)
		}
		return string(text)
	}
	emit := func(path string, n *yaml.Node, from, to int) {
		if !how.does(n.Content[to-1]) {
			return
		}
		out = append(out, leftOut{path: path, text: func() string { return spoiled(n, from, to) }})
	}
	var walk func(path string, n *yaml.Node)
	walk = func(path string, n *yaml.Node) {
		switch n.Kind {
		case yaml.MappingNode:
			for i := 0; i < len(n.Content); i += 2 {
				p := path + "/" + n.Content[i].Value
				emit(p, n, i, i+2)
				walk(p, n.Content[i+1])
			}
		case yaml.SequenceNode:
			for i, x := range n.Content {
				p := fmt.Sprintf("%s/%d", path, i)
				emit(p, n, i, i+1)
				walk(p, x)
			}
		}
	}
	doc := root.Content[0]
	for i := 0; i < len(doc.Content); i += 2 {
		if key := doc.Content[i].Value; len(of) == 0 || slices.Contains(of, key) {
			walk(key, doc.Content[i+1])
		}
	}
	return out
}
