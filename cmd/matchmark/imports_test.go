package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// TestImportsStandInGroups holds every file to one order of its imports: the standard
// library, libraries, our own packages, each a group of its own.
func TestImportsStandInGroups(t *testing.T) {
	files := 0
	root := filepath.Join("..", "..")
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if entry.IsDir() && path != root && strings.HasPrefix(entry.Name(), ".") {
			return filepath.SkipDir
		}
		if entry.IsDir() || filepath.Ext(path) != ".go" {
			return nil
		}
		files++
		groupsOfImports(t, path)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if files < 500 {
		t.Errorf("%d files of Go found, more are in the tree", files)
	}
}

// groupsOfImports reports an import of the file that does not stand in its group.
func groupsOfImports(t *testing.T, path string) {
	t.Helper()
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, path, nil, parser.ImportsOnly)
	if err != nil {
		t.Error(err)
		return
	}
	last, kind := 0, -1
	for _, spec := range file.Imports {
		name, err := strconv.Unquote(spec.Path.Value)
		if err != nil {
			t.Error(err)
			return
		}
		line, of := set.Position(spec.Pos()).Line, kindOfImport(name)
		apart := line > last+1
		switch {
		case of < kind:
			t.Errorf("%s:%d: %s belongs further up: standard library, libraries, our own", path, line, name)
		case of != kind && kind >= 0 && !apart:
			t.Errorf("%s:%d: a blank line is missing before %s", path, line, name)
		case of == kind && apart:
			t.Errorf("%s:%d: %s is parted from its group", path, line, name)
		}
		last, kind = line, of
	}
}

// kindOfImport is 0 for the standard library, 1 for a library, 2 for our own packages.
func kindOfImport(name string) int {
	first, _, _ := strings.Cut(name, "/")
	switch {
	case first == "matchmark":
		return 2
	case strings.Contains(first, "."):
		return 1
	}
	return 0
}
