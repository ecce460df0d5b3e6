package def_test

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"matchmark/packs/def"
)

var update = flag.Bool("update", false, "write KEYS.md anew")

// TestKeysFile keeps KEYS.md, the list of keys for people, like the table of keys.
// "go generate ./packs/def" writes it.
func TestKeysFile(t *testing.T) {
	var b bytes.Buffer
	b.WriteString("# The keys of a definition\n\nMade by `go generate ./packs/def` from the table of keys; do not edit it.\n\n")
	if err := def.Reference(&b); err != nil {
		t.Fatal(err)
	}
	was, err := os.ReadFile("KEYS.md")
	if err == nil && bytes.Equal(was, b.Bytes()) {
		return
	}
	if !*update {
		t.Fatal("KEYS.md does not list the keys that there are: go generate ./packs/def")
	}
	if err := os.WriteFile("KEYS.md", b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
}
