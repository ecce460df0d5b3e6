package source

import (
	"bytes"
	"errors"
	"strings"
	"testing"
)

// write gives problems as they are written for a person.
func write(t *testing.T, ps Problems, files Files) string {
	t.Helper()
	var b bytes.Buffer
	if err := ps.Write(&b, files); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestAProblemIsWrittenWithItsLineOtherPlacesAndHelp(t *testing.T) {
	files := Files{"fan.yaml": []byte("pack: 1\nparts:\n\tnut: {nmae: Lock nut}\n")}
	ps := Problems{
		{
			Pos: Pos{"fan.yaml", 3, 8, 4}, Severity: Error, Code: "unknown-key", Message: `"nmae" is not a key of part`,
			Help: []string{"did you mean name?", "keys: name, note", "third", "fourth"},
			See:  []Also{{Pos{"job.yaml", 1, 2, 3}, "first used here"}},
		},
		{Pos: Pos{"fan.yaml", 1, 1, 0}, Severity: Warning, Code: "old", Message: "old number"},
		{Pos: Pos{File: "fan.yaml"}, Severity: Error, Code: "too-large", Message: "too large"},
		{Pos: Pos{"other.yaml", 9, 9, 9}, Severity: Error, Message: "not shown"},
		{Severity: Error, Message: "no place"},
		{Pos: Pos{"fan.yaml", 99, 1, 1}, Severity: Error, Message: "beyond the end"},
	}
	want := `fan.yaml:3:8: "nmae" is not a key of part [unknown-key]
  	nut: {nmae: Lock nut}
  	      ^~~~
  see job.yaml:1:2: first used here
  did you mean name?
  keys: name, note
  third
fan.yaml:1:1: warning: old number [old]
  pack: 1
  ^
fan.yaml: too large [too-large]
other.yaml:9:9: not shown
no place
fan.yaml:99:1: beyond the end
`
	if got := write(t, ps, files); got != want {
		t.Errorf("got:\n%s\nwant:\n%s", got, want)
	}
}

// Which runes are wide and which take no column of their own: Unicode Standard
// Annex 11, section 5 and its examples of wide, fullwidth, halfwidth and
// combining characters (read from memory).
func TestTheMarkStandsUnderThePlaceAsATerminalShowsIt(t *testing.T) {
	for _, c := range []struct {
		name, line string
		col, width int
		shown      string
		mark       string
	}{
		{"plain", "left: 4 mm", 7, 4, "left: 4 mm", "      ^~~~"},
		{"no width is one mark", "left: 4 mm", 7, 0, "left: 4 mm", "      ^"},
		{"behind the end", "left:", 6, 1, "left:", "     ^"},
		{"far behind the end", "left:", 60, 5, "left:", "     ^"},
		{"before the start", "left:", 0, 4, "left:", "^~~~"},
		{"wide letters before", "漢字: x", 5, 1, "漢字: x", "      ^"},
		{"wide letters marked", "x: 漢字", 4, 2, "x: 漢字", "   ^~~~"},
		{"fullwidth and halfwidth", "Ａｱ: x", 5, 1, "Ａｱ: x", "     ^"},
		{"combining letters", "e\u0301a\u0308: x", 7, 1, "e\u0301a\u0308: x", "    ^"},
		{"a picture", "🔧: x", 4, 1, "🔧: x", "    ^"},
		{"tabs kept", "\ta\tb: c", 4, 1, "\ta\tb: c", "\t \t^"},
		{"a tab marked", "a\tb", 2, 1, "a\tb", " ^"},
		{"control characters", "a\x1b[31mb: c", 8, 1, `a\x1b[31mb: c`, "          ^"},
		{"a control character marked", "a\x01b", 2, 1, `a\x01b`, " ^~~~"},
		{"marks that turn the direction", "a\u202eb: c", 5, 1, `a\u202eb: c`, "         ^"},
		{"bytes that are no letters", "a\xffb: c", 6, 1, `a\xffb: c`, "        ^"},
		{"a real replacement character", "a\uFFFDb", 3, 1, "a\uFFFDb", "  ^"},
	} {
		t.Run(c.name, func(t *testing.T) {
			shown, mark := excerpt(c.line, c.col, c.width)
			if shown != c.shown || mark != c.mark {
				t.Errorf("got\n%q\n%q\nwant\n%q\n%q", shown, mark, c.shown, c.mark)
			}
		})
	}
}

func TestALongLineIsCutToAWindowRoundThePlace(t *testing.T) {
	long := strings.Repeat("abcdefghi ", 1000)
	for _, col := range []int{1, 30, 41, 42, 43, 500, 5000, 9950, 10000, 10001} {
		shown, mark := excerpt(long, col, 3)
		place := strings.IndexByte(mark, '^')
		if n := len([]rune(shown)); n > windowColumns+2 {
			t.Errorf("column %d: %d columns are shown", col, n)
		}
		if col <= len(long) {
			if got := string([]rune(shown)[place]); got != long[col-1:col] {
				t.Errorf("column %d: the mark stands under %q, want %q", col, got, long[col-1:col])
			}
		}
		if (col > windowBefore+1) != strings.HasPrefix(shown, "…") {
			t.Errorf("column %d: the window begins %q", col, shown[:10])
		}
	}
	if shown, mark := excerpt(strings.Repeat("漢", 200), 100, 90); !strings.HasPrefix(shown, "…") || len([]rune(mark)) > windowColumns+2 {
		t.Errorf("a wide line: %q over %q", shown, mark)
	}
}

func TestWhatCouldSteerATerminalIsEscapedEverywhere(t *testing.T) {
	ps := Problems{{
		Pos: Pos{"a\nb.yaml", 1, 1, 1}, Severity: Error, Message: "x\x1b[2J\ty", Help: []string{"z\r\u2066"},
		See: []Also{{Pos{File: "c\x07"}, "w\u2028"}},
	}}
	got := write(t, ps, Files{"a\nb.yaml": []byte("pa\x00ck\x9b")})
	want := `a\x0ab.yaml:1:1: x\x1b[2J\ty` + "\n  pa\\x00ck\\x9b\n  ^\n  see c\\x07: w\\u2028\n  z\\x0d\\u2066\n"
	if got != want {
		t.Errorf("got\n%q\nwant\n%q", got, want)
	}
}

func TestProblemsAreAnError(t *testing.T) {
	at := Pos{"a.yaml", 2, 3, 1}
	var ps Problems
	ps.Warn(at, "w", "first")
	if got := ps.Error(); got != "a.yaml:2:3: warning: first [w]" {
		t.Errorf("a warning alone is %q", got)
	}
	ps.Add(at, "e", "second")
	if got := ps.Error(); got != "a.yaml:2:3: second [e], and 1 more problem" {
		t.Errorf("with an error it is %q", got)
	}
	ps.Add(at, "e", "third")
	var err error = ps
	var back Problems
	if !errors.As(err, &back) || !strings.HasSuffix(err.Error(), "and 2 more problems") || ps.Errors() != 2 {
		t.Errorf("three of them are %q with %d errors", err, ps.Errors())
	}
}

func TestSortPutsProblemsByPlaceAndDropsTheSameAgain(t *testing.T) {
	var ps Problems
	ps.Add(Pos{"b", 1, 1, 1}, "x", "five")
	ps.Add(Pos{"a", 2, 1, 1}, "x", "three")
	ps.Add(Pos{"a", 2, 9, 1}, "x", "four")
	ps.Warn(Pos{"a", 1, 9, 1}, "x", "two")
	ps.Add(Pos{"a", 1, 9, 1}, "z", "one")
	ps.Add(Pos{"a", 2, 1, 1}, "x", "three")
	ps.Sort()
	got := ""
	for _, p := range ps {
		got += p.Message + " "
	}
	if got != "one two three four five " {
		t.Errorf("sorted as %s", got)
	}
}
