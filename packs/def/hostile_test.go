package def

import (
	"math/rand"
	"strings"
	"testing"
	"unicode/utf8"

	"matchmark/packs/source"
)

// checkInside sees that every problem lies inside its file and is worded.
func checkInside(t *testing.T, data []byte, ps source.Problems) {
	t.Helper()
	lines := source.Lines(data)
	inside := func(at source.Pos, what string) {
		switch {
		case at.File != "x.yaml":
			t.Errorf("%s is placed in the file %q", what, at.File)
		case at.Line == 0 && at.Col == 0: // the file as a whole
		case at.Line < 1 || at.Line > len(lines):
			t.Errorf("%s is placed on line %d of %d", what, at.Line, len(lines))
		default:
			n := utf8.RuneCountInString(lines[at.Line-1])
			if at.Col < 1 || at.Col > n+1 || at.Width < 1 || at.Col+at.Width > n+2 {
				t.Errorf("%s is placed at columns %d+%d of line %d, which has %d", what, at.Col, at.Width, at.Line, n)
			}
		}
	}
	for _, p := range ps {
		inside(p.Pos, p.Message)
		for _, also := range p.See {
			inside(also.Pos, also.What)
		}
		for _, help := range append([]string{p.Message}, p.Help...) {
			if utf8.RuneCountInString(help) > maxWords+1 {
				t.Errorf("%d letters are said at once: %.100s", utf8.RuneCountInString(help), help)
			}
		}
		if p.Message == "" || p.Code == "" || strings.ContainsAny(p.Message, "\n\r") || len(p.Help) > 3 {
			t.Errorf("problem %q [%s] with %d lines of help is not worded as one", p.Message, p.Code, len(p.Help))
		}
	}
}

// The sizes are those that the design refuses: 4 MB, 100 levels, 10,000 alias
// nodes. The malformed bytes are from RFC 3629, section 4 (read from memory).
func TestAnyFileGetsProblemsInsideIt(t *testing.T) {
	many := strings.Repeat
	bomb := "pack: 1\nparts:\n  a: &a {name: x}\n" +
		"  b: &b {" + many("k: *a, ", 9) + "z: *a}\n  c: &c {k: *b, l: *b}\nsteps: [" + many("*c, ", 5000) + "*c]\n"
	deep := "pack: 1\nparts: " + many("{a: ", 150) + many("}", 150) + "\nequipment: {tag: T}\nsteps: [{stp: s}]\n"
	for _, c := range []struct{ name, text, code string }{
		{"empty", "", "empty-file"},
		{"blanks", " \n\t\n", ""},
		{"comments", "# pack\n", "empty-file"},
		{"byte order mark alone", "\ufeff", "empty-file"},
		{"tilde", "~", "empty-file"},
		{"a word", "pack", "wrong-form"},
		{"a list", "- pack: 1\n", "wrong-form"},
		{"zero bytes", "pack: 1\x00\n", "not-text"},
		{"UTF-16", "\xff\xfep\x00a\x00", "not-utf-8"},
		{"an older encoding", "pack: 1\nparts: {a: {name: \xd8 20}}\n", "not-utf-8"},
		{"overlong", "pack: \xc0\x80\n", "not-utf-8"},
		{"half of a pair of surrogates", "pack: \xed\xa0\x80\n", "not-utf-8"},
		{"cut off", "pack: \xf0\x9f\x98", "not-utf-8"},
		{"old line ends", "pack: 1\rnmae: x\r", "unknown-key"},
		{"next line and line separators", "pack: 1\u0085nmae: x\u2028y: z\u2029", "control-character"},
		{"byte order mark inside", "pack: \ufeff1\n", "invisible"},
		{"no characters", "pack: \ufffe\U0001ffff\n", "invisible"},
		{"above 4 MB", many("# x\n", 1<<20+1), "too-large"},
		{"four megabytes of commas", "[" + many("a,", 2<<20-2) + "]", "too-large"},
		{"four megabytes of brackets", many("[", 4<<20), "too-large"},
		{"four megabytes of lines", many("- #\n", 1<<20), "too-large"},
		{"one line of four megabytes", "pack: " + many("a", 4<<20-10), "long-text"},
		{"one line of many blanks", "pack:" + many(" ", 4<<20-10), "no-value"},
		{"one line of very many texts", "a: " + many("> b: ", 1<<16), "bad-start"},
		{"one line of very many brackets", "a: " + many("[a, b: c d: e] ", 1<<14), "no-comma"},
		{"two megabytes of an older encoding", many("\xd8 ", 1<<20), "not-utf-8"},
		{"many dashes", many("- ", 5000), "too-deep"},
		{"ten thousand brackets and more", many("[", 20000), "too-deep"},
		{"deep but closed", deep, "too-deep"},
		{"aliases of aliases", bomb, "too-many-aliases"},
		{"a ring of aliases", "pack: 1\nparts: &a {b: {name: *a}}\n", "alias-ring"},
		{"ten thousand unknown keys", many("qqq: {zzz: 1}\n", 3), "doubled-key"},
		{"two documents", "pack: 1\n---\npack: 1\n", "second-document"},
		{"keys that are no words", "{a: b}: c\n[x]: d\n", "key-form"},
		{"binary", "\x89PNG\r\n\x1a\n\x00\x00", "not-text"},
	} {
		t.Run(c.name, func(t *testing.T) {
			data := []byte(c.text)
			d, ps := Read("x.yaml", data)
			if d == nil || len(ps) == 0 {
				t.Fatalf("definition %v, problems %v", d, ps)
			}
			checkInside(t, data, ps)
			found := c.code == ""
			for _, p := range ps {
				found = found || p.Code == c.code
			}
			if !found || len(ps) > maxProblems+1 {
				t.Errorf("none of %d problems is %s: %v", len(ps), c.code, ps)
			}
			if _, ps := ReadJob("x.yaml", data); len(ps) == 0 {
				t.Error("as a job file it has no problem")
			}
		})
	}
}

func TestManyProblemsAreCounted(t *testing.T) {
	var b strings.Builder
	for i := range 3000 {
		b.WriteString("k" + strings.Repeat("x", i%7) + string(rune('a'+i%26)) + strings.Repeat("y", i%11) + ": 1\n")
	}
	data := []byte(b.String())
	_, ps := Read("x.yaml", data)
	last := ps[len(ps)-1]
	if len(ps) != maxProblems+1 || last.Code != "more-problems" || !strings.Contains(last.Message, " more problems are not listed") {
		t.Errorf("%d problems, the last %q", len(ps), last.Message)
	}
	checkInside(t, data, ps)
}

// A good file with a letter changed, put in or taken out at any place gives
// problems inside it or none, never a panic.
func TestDamagedFilesGetProblemsInsideThem(t *testing.T) {
	base := exampleOf(definitionKind).text()
	signs := []string{"\t", " ", "\n", ":", ": ", ",", "{", "}", "[", "]", "'", `"`, "#", " #", "-", "- ", "&", "*", "!", "|", ">", "%", "@", "`", "?", "\\", "<<", "---\n", "é", "漢", "\x00", "\xff", "\ufeff", "\u2028"}
	rnd := rand.New(rand.NewSource(1))
	for range 800 {
		data := append([]byte{}, base[:rnd.Intn(len(base))+1]...)
		for range 1 + rnd.Intn(3) {
			i := rnd.Intn(len(data))
			j := min(len(data), i+rnd.Intn(4))
			sign := signs[rnd.Intn(len(signs))]
			data = append(data[:i:i], append([]byte(sign), data[j:]...)...)
		}
		_, ps := Read("x.yaml", data)
		checkInside(t, data, ps)
		if t.Failed() {
			t.Fatalf("file:\n%s", data)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add(exampleOf(definitionKind).text())
	f.Add(exampleOf(jobFileKind).text())
	for _, s := range []string{
		"a: >= 4\nb: @x\nc: 'it's'\n", "a: {b: c d: e}\nf: g: h\n", "a: &a [*a, *b]\n<<: *a\n", "a:\n\tb: c\n\t\td: e\n",
		"a: \"b\nc: \"d\"\n", "a: [1, 2\nb: {c: d\n", "\ufeffa: 1\r---\r\n%b\n", "a: {b: 0,05, c: }\n", "? a\n: b\n", "- - - a\n",
		"a: !x y\nb: !<z\nc: !!str d\n", "a: |\n  x\n y\nb: >-\n  z #\n",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1<<16 {
			return // size is the subject of another test
		}
		_, ps := Read("x.yaml", data)
		checkInside(t, data, ps)
		_, ps = ReadJob("x.yaml", data)
		checkInside(t, data, ps)
		_, ps = ReadSite("x.yaml", data)
		checkInside(t, data, ps)
	})
}

func BenchmarkRead(b *testing.B) {
	// About the size of a large job: 120 steps, 60 dimensions, 40 containers.
	var text strings.Builder
	text.WriteString("pack: 1\nequipment: {tag: T-1, name: Fan}\nparts:\n")
	for i := range 80 {
		text.WriteString("  part-" + string(rune('a'+i%26)) + strings.Repeat("z", i/26) + ": {name: Bearing lock nut, each: end, thread: M90x2, count: 4}\n")
	}
	text.WriteString("dimensions:\n")
	for i := range 50 {
		text.WriteString("  D" + string("0123456789"[i/10]) + string("0123456789"[i%10]) + ":\n    what: Lock nut stand-off\n    from: {lock-nut: outer face}\n    to: {shaft: end face}\n    with: shaft pushed toward the motor\n    left: as found +/- 0.10 mm\n    source: maker's sheet 4\n")
	}
	text.WriteString("steps:\n")
	for range 120 {
		text.WriteString("  - step: nut\n    after: {marks: the chalk line must be there first}\n    do: Measure how far the lock nut stands from the shaft end, then take it off.\n    measure: [D7]\n    remove: [lock-nut, tab-washer]\n    into: C2\n    back: Run the nut up to its found stand-off.\n")
	}
	data := []byte(text.String())
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		Read("x.yaml", data)
	}
}
