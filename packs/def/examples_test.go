package def

import (
	"bytes"
	"strings"

	"matchmark/packs/source"
)

// A whole definition made of the examples of the table: each key once, with its
// own example, and the keys of inner maps in full.
//
// It is written one key a line, so that a test can take a line away or misspell
// its key.
type exampleFile struct {
	lines []string
	keys  []exampleKey
}

type exampleKey struct {
	shape shape
	entry *entry
	line  int // index of the line with the key
	end   int // index behind the last line of its value
	col   int // of the key, from 1
}

// add writes the keys of a shape, set in by so many blanks.
func (f *exampleFile) add(s shape, in int, skip ...string) {
keys:
	for _, e := range s.entries() {
		for _, name := range skip {
			if e.name == name {
				continue keys
			}
		}
		k := exampleKey{shape: s, entry: e, line: len(f.lines), col: in + 1}
		pad := strings.Repeat(" ", in)
		switch e.form {
		case mapForm, textOrMapForm:
			f.lines = append(f.lines, pad+e.name+":")
			f.add(e.inner[0], in+2)
		case mapsForm:
			f.lines = append(f.lines, pad+e.name+":")
			own := "thing"
			if m := e.inner[0].mark(); m != "" {
				own = m + "1"
			}
			f.lines = append(f.lines, pad+"  "+own+":")
			f.add(e.inner[0], in+4)
			if rest := e.inner[0].others(); rest != nil {
				f.lines = append(f.lines, pad+"    own:")
				f.add(rest, in+6)
			}
		case itemsForm:
			f.lines = append(f.lines, pad+e.name+":", pad+"  -")
			f.add(e.inner[0], in+4)
		case sectionsForm:
			f.lines = append(f.lines, pad+e.name+":")
			for _, inner := range e.inner {
				f.lines = append(f.lines, pad+"  -")
				f.add(inner, in+4)
			}
		default:
			f.lines = append(f.lines, pad+e.name+": "+e.example)
		}
		k.end = len(f.lines)
		f.keys = append(f.keys, k)
	}
}

func (f *exampleFile) text() []byte { return []byte(strings.Join(f.lines, "\n") + "\n") }

// without is the text with a key and its value taken away.
func (f *exampleFile) without(k exampleKey) []byte {
	lines := append(append([]string{}, f.lines[:k.line]...), f.lines[k.end:]...)
	return []byte(strings.Join(lines, "\n") + "\n")
}

// misspelled is the text with a key spelled so that it has no name.
func (f *exampleFile) misspelled(k exampleKey) []byte {
	lines := append([]string{}, f.lines...)
	lines[k.line] = strings.Replace(lines[k.line], k.entry.name, "q"+k.entry.name, 1)
	return []byte(strings.Join(lines, "\n") + "\n")
}

func exampleOf(s shape) *exampleFile {
	f := &exampleFile{}
	f.add(s, 0)
	return f
}

// show writes problems as a planner sees them, for the report of a failure.
func show(ps source.Problems, name string, data []byte) string {
	var b bytes.Buffer
	if err := ps.Write(&b, source.Files{name: data}); err != nil {
		return err.Error()
	}
	return b.String()
}
