package def_test

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"gopkg.in/yaml.v3"

	"matchmark/packs/def"
)

// The schemas are judged by a library that knows JSON Schema 2020-12 and nothing of
// this project.

// compiled is one of the schemas, ready to validate.
func compiled(t *testing.T, write func(io.Writer) error) *jsonschema.Schema {
	t.Helper()
	var b bytes.Buffer
	if err := write(&b); err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(&b)
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.DefaultDraft(jsonschema.Draft2020)
	c.AssertFormat()
	if err := c.AddResource("matchmark.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("matchmark.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// value is what a YAML 1.2 reader with the core schema makes of a node, as an editor
// has it: a day is a text.
func value(n *yaml.Node) any {
	switch n.Kind {
	case yaml.DocumentNode:
		return value(n.Content[0])
	case yaml.AliasNode:
		return value(n.Alias)
	case yaml.MappingNode:
		m := map[string]any{}
		for i := 0; i+1 < len(n.Content); i += 2 {
			m[n.Content[i].Value] = value(n.Content[i+1])
		}
		return m
	case yaml.SequenceNode:
		list := []any{}
		for _, item := range n.Content {
			list = append(list, value(item))
		}
		return list
	}
	switch n.ShortTag() {
	case "!!null":
		return nil
	case "!!int", "!!float":
		if f, err := strconv.ParseFloat(n.Value, 64); err == nil {
			return f
		}
	case "!!bool":
		switch strings.ToLower(n.Value) {
		case "true":
			return true
		case "false":
			return false
		}
	}
	return n.Value
}

// read gives a file as such a value; false when it is no YAML.
func read(t *testing.T, path string) (any, bool) {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var n yaml.Node
	if err := yaml.Unmarshal(data, &n); err != nil || n.Kind == 0 {
		return nil, false
	}
	return value(&n), true
}

func globbed(t *testing.T, patterns ...string) []string {
	t.Helper()
	var out []string
	for _, p := range patterns {
		files, err := filepath.Glob(p)
		if err != nil || len(files) == 0 {
			t.Fatalf("%s: %v", p, err)
		}
		out = append(out, files...)
	}
	return out
}

// TestSchemasTakeWhatCheckTakes: every definition, job file and site file that check has
// nothing to say of is right by its schema.
func TestSchemasTakeWhatCheckTakes(t *testing.T) {
	whole, job, site := compiled(t, def.Schema), compiled(t, def.JobSchema), compiled(t, def.SiteSchema)
	taken := map[*jsonschema.Schema]int{}
	for _, path := range globbed(t, "../starters/*.yaml", "../../testdata/good/*.yaml") {
		s := whole
		switch {
		case strings.HasSuffix(path, ".job.yaml"):
			s = job
		case strings.HasSuffix(path, ".site.yaml"):
			s = site
		}
		v, ok := read(t, path)
		if !ok {
			t.Fatalf("%s is no YAML", path)
		}
		if err := s.Validate(v); err != nil {
			t.Errorf("%s: %v", path, err)
		}
		taken[s]++
	}
	if taken[whole] < 30 || taken[job] == 0 || taken[site] == 0 {
		t.Errorf("%d definitions, %d job files and %d site files were looked at", taken[whole], taken[job], taken[site])
	}
}

// bySchema are the codes of problems that a schema finds by itself.
var bySchema = []string{"unknown-key", "missing-key", "wrong-form", "not-allowed", "yes-or-no", "number-form", "date-form", "empty-list", "empty-map"}

// TestSchemaRefusesWrongKeys: a definition in which check finds a wrong key, a missing
// one or a value of the wrong form is wrong by the schema as well.
func TestSchemaRefusesWrongKeys(t *testing.T) {
	whole := compiled(t, def.Schema)
	said := regexp.MustCompile(`(?m)^([\w.-]+\.yaml):\d+:\d+: (.*) \[([a-z-]+)\]$`)
	refused := map[string]int{}
	for _, out := range globbed(t, "../../testdata/bad/*.out") {
		path := strings.TrimSuffix(out, ".out") + ".yaml"
		text, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(string(text), "[alias-ring]") {
			continue // has no end as a value
		}
		v, ok := read(t, path)
		if !ok {
			continue // no YAML: an editor says so without a schema
		}
		err = whole.Validate(v)
		var invalid *jsonschema.ValidationError
		if err != nil && !errors.As(err, &invalid) {
			t.Fatal(err)
		}
		for _, m := range said.FindAllStringSubmatch(string(text), -1) {
			code := m[3]
			if m[1] != filepath.Base(path) || !slices.Contains(bySchema, code) {
				continue
			}
			if err == nil {
				t.Errorf("%s: check finds %s (%s), the schema nothing", path, code, m[2])
			}
			refused[code]++
		}
	}
	for _, code := range bySchema {
		if refused[code] == 0 {
			t.Errorf("no file shows that the schema finds %s", code)
		}
	}
}

// TestSchemaRefusesAMisspelledKeyAnywhere: one letter too many in any key of a starter
// is found, save where the author chooses the names.
func TestSchemaRefusesAMisspelledKeyAnywhere(t *testing.T) {
	whole := compiled(t, def.Schema)
	words := def.Words()
	for _, path := range globbed(t, "../starters/exhaust-fan.yaml", "../../testdata/good/heat-coupling.yaml") {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tried := 0
		keyed := regexp.MustCompile(`(?m)^(\s*(?:- )?)([a-z-]+):`)
		for _, m := range keyed.FindAllSubmatchIndex(data, -1) {
			key := string(data[m[4]:m[5]])
			if !slices.Contains(words, key) || ownName(data, m[0]) {
				continue
			}
			tried++
			text := string(data[:m[5]]) + "q" + string(data[m[5]:])
			var n yaml.Node
			if err := yaml.Unmarshal([]byte(text), &n); err != nil {
				t.Fatal(err)
			}
			if whole.Validate(value(&n)) == nil {
				t.Errorf("%s: the schema takes %sq", path, key)
			}
		}
		if tried < 40 {
			t.Errorf("%s: only %d keys were tried", path, tried)
		}
	}
}

// ownName reports whether the key that begins at an offset may be a name that the author
// chose: those stand two blanks in, as the parts under parts:.
func ownName(data []byte, at int) bool {
	line, _, _ := strings.Cut(string(data[at:]), "\n")
	return strings.HasPrefix(line, "  ") && !strings.HasPrefix(line, "   ") && !strings.HasPrefix(line, "  - ")
}
