package filled_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"matchmark/packs/filled"
	"matchmark/packs/source"
)

// FuzzRead: no file makes the reader panic, every problem lies inside the file, no value
// is read that is not in it, and what was read can be worked out.
func FuzzRead(f *testing.F) {
	const head = "mark,position,side,value,looked again\ntyped by,,,A. Penn,\ntyped on,,,2026-03-14,\n"
	for _, rows := range []string{
		"D7/DE,,found,25.00 mm,\n", "D7/DE,,found,\"25,00 mm\",\n", "D1,no. 1,found,minus 0.05 mm,B. Hale\n",
		"D2,,left,'=1+1,\nD2,,left,yes,\n", "D4/DE,(mean),found,1/2 in,\n", "X51,,found,crack,\n", "D9,\"a \"\" quote\",left,not taken because of oil,\n",
	} {
		f.Add([]byte(head+rows), false)
		f.Add([]byte(strings.ReplaceAll(head+rows, ",", ";")), true)
	}
	f.Add([]byte("\ufeffmark;position;side;value\r\nD7/NDE;;found;\"x"), true)
	f.Add([]byte("mark,position,side\n\xff\xfe"), false)
	jb := starter(f, "exhaust-fan.yaml")
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
