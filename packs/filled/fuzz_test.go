package filled_test

import (
	"os"
	"path/filepath"
	"testing"
	"unicode/utf8"

	"matchmark/packs/filled"
	"matchmark/packs/source"
)

// FuzzRead: no file makes the reader panic, every problem lies inside the file, no value
// is read that is not in it, and what was read can be worked out.
func FuzzRead(f *testing.F) {
	files, err := filepath.Glob(filepath.Join(testdata, "*.csv"))
	if err != nil || len(files) < 4 {
		f.Fatal(len(files), err)
	}
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data, false)
		f.Add(data, true)
	}
	jb := stormPump(f)
	f.Fuzz(func(t *testing.T, data []byte, comma bool) {
		jb.Site.Comma = comma
		file := filled.Read("readings.csv", data, jb)
		lines := source.Lines(data)
		for _, p := range file.Told {
			at := p.Pos
			if at.Line == 0 {
				continue
			}
			if at.Line > len(lines) || at.Col < 1 || at.Col > utf8.RuneCountInString(lines[at.Line-1])+1 {
				t.Fatalf("%s lies outside the file: %s", p.Code, at)
			}
		}
		for _, e := range file.Entries {
			if e.Quantity == nil && e.Answer == "" && e.NotTaken == "" {
				t.Fatalf("%s says nothing: %q", e.Blank.Key(), e.Text)
			}
			if e.Quantity != nil && e.Quantity.Unit != e.Blank.Box.Unit {
				t.Fatalf("%s is in %s, its box in %s", e.Blank.Key(), e.Quantity.Unit.Text(), e.Blank.Box.Unit.Text())
			}
		}
		values, _ := filled.Merge([]*filled.File{file})
		filled.Work(jb, values)
	})
}
