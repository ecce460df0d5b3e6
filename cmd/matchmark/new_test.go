package main

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"matchmark/packs"
	"matchmark/packs/bom"
	shipped "matchmark/packs/starters"
)

// TestNewPassesCheck: what new writes passes check, whatever the machine is called, and
// is silent unless a name is too long for its place.
func TestNewPassesCheck(t *testing.T) {
	t.Parallel()
	for i, name := range []string{"Sump pump", "Pump #2: north", "no", "7731", "'Old Tom'", `Fan "B"`, "Lüfter 3", "yes & no", "{x}"} {
		if got := said(t, shipped.New(name)); got != "" {
			t.Errorf("new %q:\n%s", name, got)
		}
		// Each name in one starter, in turn: where it stands all are alike.
		for _, starter := range shipped.Names()[i%len(shipped.Names()):][:1] {
			text, ok := shipped.Like(name, starter)
			if !ok {
				t.Fatalf("no starter %s", starter)
			}
			if _, problems := loadText(text); len(problems) > 0 {
				t.Errorf("new %q like %s: %v", name, starter, problems)
			}
		}
	}
}

// said is what check prints of a definition.
func said(t interface{ Helper() }, text string) string {
	t.Helper()
	files := fstest.MapFS{"x.yaml": {Data: []byte(text)}}
	jb, problems := proof(files, packs.Inputs{Definition: "x.yaml"})
	var out bytes.Buffer
	report(&out, problems, jb.Files)
	return out.String()
}

// TestTablesPassCheck: a table of any parts makes a definition without an error.
func TestTablesPassCheck(t *testing.T) {
	t.Parallel()
	words := []string{"Casing", "bolt", "Nut M16", "Gasket: graphite", "Ring #2", "Welle", "O-ring", "cover, upper", "screw", "'left'", "yes", "12", "impeller", "Seal"}
	rapid.Check(t, func(t *rapid.T) {
		var table strings.Builder
		table.WriteString("name;qty;mass;thread;renew;note\n")
		for range rapid.IntRange(1, 12).Draw(t, "rows") {
			name := strings.Join(rapid.SliceOfN(rapid.SampledFrom(words), 1, 3).Draw(t, "name"), " ")
			fmt.Fprintf(&table, "%s;%s;%s;%s;%s;%s\n", name,
				rapid.SampledFrom([]string{"", "1", "4", "24"}).Draw(t, "qty"), rapid.SampledFrom([]string{"", "0,35 kg", "24.9 kg", "25.1 kg", "1.2 t", "60 lb"}).Draw(t, "mass"),
				rapid.SampledFrom([]string{"", "M16", "3/4-10 UNC"}).Draw(t, "thread"), rapid.SampledFrom([]string{"", "x", "no"}).Draw(t, "renew"),
				rapid.SampledFrom([]string{"", "dry: never oiled", "# of the old pump"}).Draw(t, "note"))
		}
		parts, ps := bom.Read("parts.csv", []byte(table.String()))
		if len(ps) > 0 {
			t.Fatalf("%v of\n%s", ps, table.String())
		}
		var b bytes.Buffer
		if err := bom.Definition(&b, "Pump", parts); err != nil {
			t.Fatal(err)
		}
		if _, problems := loadText(b.String()); problems.Errors() > 0 {
			t.Fatalf("%v of\n%s", problems, b.String())
		}
	})
}
