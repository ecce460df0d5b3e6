package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

// TestRenamedInPartIsPutBack: where the second of three files cannot take its place, the first is
// the old one again, one that was not there is gone, and the third is as it was.
func TestRenamedInPartIsPutBack(t *testing.T) {
	t.Parallel()
	for _, was := range []string{"old", ""} {
		dir := t.TempDir()
		var files []output
		var temps, old []string
		for _, name := range []string{"first", "second", "third"} {
			path := filepath.Join(dir, name)
			if was != "" && name != "second" {
				if err := os.WriteFile(path, []byte(was), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			temp, err := writeTemp(dir, []byte("new"))
			if err != nil {
				t.Fatal(err)
			}
			aside, err := setAside(path)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, output{path: path, data: bytes.NewBufferString("new")})
			temps, old = append(temps, temp), append(old, aside)
		}
		// After the old files were set aside somebody makes a folder of that name.
		if err := os.MkdirAll(filepath.Join(dir, "second", "full"), 0o700); err != nil {
			t.Fatal(err)
		}
		if renameAll(files, temps, old) == nil {
			t.Error("a folder was replaced by a file")
		}
		for _, name := range []string{"first", "third"} {
			if data, err := os.ReadFile(filepath.Join(dir, name)); string(data) != was || os.IsNotExist(err) != (was == "") {
				t.Errorf("%s was %q and is %q, %v", name, was, data, err)
			}
		}
	}
}
