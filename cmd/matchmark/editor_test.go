package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"matchmark/packs/def"
)

// begun is a definition in the middle of being typed; | is where the cursor stands, and
// the next line of the table of completions takes it away.
const begun = `# yaml-language-server: $schema=matchmark.schema.json
pack: 1
equipment: {tag: FN-11, name: Kiln exhaust fan}
`

// completions are ten places in a definition, and a word that the editor must offer
// there.
var completions = []struct{ name, text, offered string }{
	{"a key of the definition", "dimen|", "dimensions"},
	{"a key of the machine", "job:\n  |", "revision"},
	{"a key of a dimension", "dimensions:\n  D1:\n    what: Gap\n    vi|", "viewed-from"},
	{"a key of a part", "parts:\n  cap:\n    name: Cap\n    be|", "behind"},
	{"a key of a step", "steps:\n  - step: a\n    do: Look.\n    mea|", "measure"},
	{"a key of a step in a section", "steps:\n  - section: A\n    steps:\n      - step: a\n        do: Look.\n        re|", "remove"},
	{"a kind of container", "containers:\n  C1:\n    name: Bolts\n    kind: |", "tray"},
	{"a signal word", "cautions:\n  hot:\n    signal: |", "warning"},
	{"a key of a joint", "joints:\n  J1:\n    what: Bolts\n    to|", "torque"},
	{"a kind of hold", "holds:\n  W1:\n    kind: |", "witness"},
	{"yes or no", "options:\n  probes:\n    what: Probes\n    fitted: |", "true"},
	{"the order of a layout", "joints:\n  J1:\n    what: Bolts\n    layout:\n      cir|", "circle"},
}

// TestEditor: an editor with a YAML language server completes keys and values, explains
// them, and draws a red line under a wrong one, by the schema that new writes.
func TestEditor(t *testing.T) {
	folder := t.TempDir()
	var b bytes.Buffer
	if err := def.Schema(&b); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(folder, "matchmark.schema.json"), b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
	s := startServer(t, folder)
	uri := func(name string) string { return "file://" + filepath.ToSlash(filepath.Join(folder, name)) }
	for i, c := range completions {
		text, at := cursor(begun + c.text)
		file := uri(fmt.Sprintf("complete%d.yaml", i))
		s.open(file, text)
		answer, err := json.Marshal(s.ask("textDocument/completion", map[string]any{"textDocument": map[string]any{"uri": file}, "position": at}))
		if err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(string(answer), `"label":"`+c.offered+`"`) {
			t.Errorf("%s: %s is not among %.400s", c.name, c.offered, answer)
		}
	}

	text, at := cursor(begun + "dimensions:\n  D1:\n    what: Gap\n    no|minal: 25.00 mm\n")
	s.open(uri("hover.yaml"), text)
	hover, err := json.Marshal(s.ask("textDocument/hover", map[string]any{"textDocument": map[string]any{"uri": uri("hover.yaml")}, "position": at}))
	if err != nil {
		t.Fatal(err)
	}
	var explained bytes.Buffer
	def.Explain(&explained, "nominal")
	sentence := strings.TrimSpace(strings.Split(explained.String(), "\n")[1])
	if !strings.Contains(string(hover), strings.TrimSuffix(sentence, ".")) {
		t.Errorf("the editor explains nominal with %s, and explain says %q", hover, sentence)
	}

	s.open(uri("wrong.yaml"), begun+"parts: {cap: {nmae: Cap}}\nsteps: [{step: a, do: Look.}]\n")
	if red, err := json.Marshal(s.redLines(uri("wrong.yaml"))); err != nil || !strings.Contains(string(red), "nmae") || !strings.Contains(string(red), `"line":3`) {
		t.Errorf("the red lines are %s, %v", red, err)
	}
	good, err := os.ReadFile(filepath.Join(startersDir, "exhaust-fan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	s.open(uri("right.yaml"), "# yaml-language-server: $schema=matchmark.schema.json\n"+string(good))
	if red := s.redLines(uri("right.yaml")); len(red) > 0 {
		t.Errorf("the editor marks the starter: %v", red)
	}
}

// cursor takes the | out of a text and gives its place as editors count it.
func cursor(text string) (string, map[string]any) {
	before, after, _ := strings.Cut(text, "|")
	line := strings.Count(before, "\n")
	return before + after, map[string]any{"line": line, "character": len(before) - 1 - strings.LastIndex(before, "\n")}
}
