package packs_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"gopkg.in/yaml.v3"

	"matchmark/packs"
	"matchmark/packs/source"
)

// freeText are the keys behind which an author writes in a language of the own.
var freeText = map[string]bool{
	"name": true, "what": true, "do": true, "back": true, "note": true, "missed": true, "with": true, "over": true, "under": true, "out": true,
	"found-out": true, "source": true, "hazard": true, "result": true, "avoid": true, "short": true, "point": true, "energy": true, "state": true,
	"proved": true, "keep": true, "location": true, "title": true, "scope": true, "pushed": true, "load": true, "plane": true, "why-coarse": true,
	"seen": true, "back-seen": true, "back-missed": true, "still-out": true, "because": true, "puller": true, "shield": true, "if-stuck": true,
	"kept-cool": true, "support": true, "under-load": true,
}

// latinWord is a word of small letters, after a first one of either size.
var latinWord = regexp.MustCompile(`\pL\p{Ll}+`)

// foreign writes a text in a language that nobody has: each word from behind. Marks, numbers
// and units of one letter stay.
func foreign(text string) string {
	return latinWord.ReplaceAllStringFunc(text, func(w string) string {
		r := []rune(strings.ToLower(w))
		for i, j := 0, len(r)-1; i < j; i, j = i+1, j-1 {
			r[i], r[j] = r[j], r[i]
		}
		if w[0] >= 'A' && w[0] <= 'Z' {
			return strings.ToUpper(string(r[0])) + string(r[1:])
		}
		return string(r)
	})
}

// abroad puts all free texts of a definition into that language.
func abroad(n *yaml.Node) {
	switch n.Kind {
	case yaml.DocumentNode, yaml.SequenceNode:
		for _, c := range n.Content {
			abroad(c)
		}
	case yaml.MappingNode:
		for i := 0; i+1 < len(n.Content); i += 2 {
			k, v := n.Content[i], n.Content[i+1]
			switch {
			case k.Value == "point" && v.Kind == yaml.SequenceNode: // three lengths
			case v.Kind == yaml.MappingNode && len(v.Content) > 0 && (v.Content[0].Value == "signal" || v.Content[0].Value == "what"): // a thing of that name
				abroad(v)
			case k.Value == "after" && v.Kind == yaml.MappingNode, freeText[k.Value]:
				texts(v)
			default:
				abroad(v)
			}
		}
	}
}

// texts puts the scalars behind a key into that language; the keys stay.
func texts(n *yaml.Node) {
	switch n.Kind {
	case yaml.ScalarNode:
		if n.Value != "cold" && n.Value != "hot" && !strings.HasPrefix(n.Value, "none, because") {
			n.Value = foreign(n.Value)
		}
	case yaml.SequenceNode:
		for _, c := range n.Content {
			texts(c)
		}
	case yaml.MappingNode:
		for i := 0; i+1 < len(n.Content); i += 2 {
			if n.Content[i+1].Kind == yaml.ScalarNode {
				texts(n.Content[i+1])
			} else {
				abroad(n)
				return
			}
		}
	}
}

// A definition that check is silent about is not told anything when its texts are in another
// language than English: a law that reads words does not tell of words that it does not find.
func TestLawsAreSilentAbroad(t *testing.T) {
	t.Parallel()
	files, _ := filepath.Glob("../testdata/good/*.yaml")
	starters, _ := filepath.Glob("starters/*.yaml")
	codes := map[string]int{}
	for _, f := range append(files, starters...) {
		if strings.Contains(f, ".site.") || strings.Contains(f, ".job.") {
			continue
		}
		for _, p := range loadAbroad(t, f) {
			codes[p.Code]++
			t.Errorf("%s:%d: %s [%s] %s", filepath.Base(f), p.Pos.Line, p.Message, p.Code, strings.Join(p.Help, " / "))
		}
	}
	t.Log(codes)
}

// otherFiles are definitions that are more than one file, or in two languages already.
var otherFiles = regexp.MustCompile(`(?m)\binclude: |\{use: |[{ ]en: `)

// loadAbroad loads a definition with its texts in that language, on German paper.
func loadAbroad(t *testing.T, file string) source.Problems {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var root yaml.Node
	if err := yaml.Unmarshal(data, &root); err != nil {
		t.Fatal(err)
	}
	if otherFiles.Match(data) {
		return nil
	}
	abroad(&root)
	text, err := yaml.Marshal(&root)
	if err != nil {
		t.Fatal(err)
	}
	_, problems := packs.Load(fstest.MapFS{"x.yaml": {Data: text}}, packs.Inputs{Definition: "x.yaml", Language: "de"})
	return problems
}
