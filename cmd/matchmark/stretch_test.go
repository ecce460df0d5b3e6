package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs/source"
	"matchmark/templates"
)

// stretches are texts longer than a planner would hope for, put into every field
// in turn.
var stretches = []struct{ name, text string }{
	{"a long place", "Lower intermediate bearing housing"},
	{"sixty characters in words", "The lower intermediate bearing housing of the second fan bay"},
	{"sixty characters in one word", "WO-2026-0000005512-KILN-EXHAUST-FAN-BEARING-CHANGE-BOTH-ENDS"},
	{"twelve figures", "123456789.012 to 123456789.987 mm"},
	{"thirty lines", strings.Repeat("Keep clear of the puller, of the chain above it and of the man who turns its spindle with the long bar. ", 30)},
}

// everyStretch reports whether each text goes into each field on both papers, which
// takes a quarter of an hour. Otherwise each field gets one of them, the papers in turn.
func everyStretch() bool { return os.Getenv("PAPER_LAW") == "full" }

// A field is one value of a definition: its path, with * for names, and where it
// stands in the text.
type field struct {
	path      string
	line, col int // from 1, the column in bytes
	width     int // in bytes
}

// TestStretchedFields puts each long text into each kind of field of the starter,
// on both papers: either the paper holds it with nothing outside its page and
// nothing on top of anything else, or check names a line of the file.
func TestStretchedFields(t *testing.T) {
	longTest(t)
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, "exhaust-fan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	fields := fieldsOf(t, string(data))
	if len(fields) < 60 {
		t.Errorf("only %d kinds of fields are found in the starter", len(fields))
	}
	held, named := 0, 0
	for i, f := range fields {
		for k, s := range stretches {
			on := papers
			if !everyStretch() {
				if (i+k)%len(stretches) != 0 {
					continue
				}
				on = papers[i%2:][:1]
			}
			if stretched(t, f, s.name, replaced(string(data), f, s.text), on) {
				held++
			} else {
				named++
			}
		}
	}
	t.Logf("%d kinds of fields: %d long texts held by the paper, %d named by check", len(fields), held, named)
	if held < 20 || named < 20 {
		t.Errorf("%d held and %d named: the test has lost its subject", held, named)
	}
}

// TestStretchedPlaces gives the places themselves long keys, wherever they are
// named.
func TestStretchedPlaces(t *testing.T) {
	longTest(t)
	t.Parallel()
	data, err := os.ReadFile(filepath.Join(startersDir, "exhaust-fan.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"Lower-intermediate", "Lower intermediate bearing housing", strings.Repeat("W", 40)} {
		text := strings.ReplaceAll(string(data), "NDE: ", strconv.Quote(key)+": ")
		stretched(t, field{path: "places.end"}, key, text, papers)
	}
}

// stretched composes a definition on some papers. It reports whether the paper
// holds it; if not, check has to have named lines of the file.
func stretched(t *testing.T, f field, name, text string, on []layout.Paper) bool {
	t.Helper()
	what := f.path + ", " + name
	jb, problems := loadText(text)
	lines := strings.Count(text, "\n") + 1
	if problems.Errors() > 0 {
		checkNamed(t, what, problems, lines)
		return false
	}
	held := true
	for _, paper := range on {
		pack, misfits := templates.Compose(jb, templates.Options{Paper: paper}, pdf.NewFaces(), problems)
		if len(misfits) > 0 {
			checkNamed(t, what, misfits, lines)
			held = false
			continue
		}
		for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
			for i, frame := range doc.Pages {
				checkFrame(t, what+" on "+paper.Name, i+1, frame, false)
				checkOverlaps(t, what+" on "+paper.Name, i+1, frame)
			}
		}
	}
	return held
}

// checkNamed sees that every problem has a line of the file.
func checkNamed(t *testing.T, what string, problems source.Problems, lines int) {
	t.Helper()
	for _, p := range problems {
		if p.Code == "more-problems" {
			continue // it counts those that are not listed
		}
		if p.Pos.Line < 1 || p.Pos.Line > lines {
			t.Errorf("%s: a problem without a line of the file: %s %s", what, p.Pos, p.Message)
		}
	}
}

// replaced is the definition with another text in one field.
func replaced(text string, f field, with string) string {
	lines := strings.Split(text, "\n")
	l := lines[f.line-1]
	lines[f.line-1] = l[:f.col-1] + strconv.Quote(with) + l[f.col-1+f.width:]
	return strings.Join(lines, "\n")
}

// fieldsOf lists one field of each kind: the first value on each path, where the
// names of things count as one.
func fieldsOf(t *testing.T, text string) []field {
	t.Helper()
	var doc yaml.Node
	if err := yaml.Unmarshal([]byte(text), &doc); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(text, "\n")
	var out []field
	seen := map[string]bool{}
	var walk func(n *yaml.Node, path []string)
	walk = func(n *yaml.Node, path []string) {
		switch n.Kind {
		case yaml.MappingNode:
			for i := 0; i < len(n.Content); i += 2 {
				key := n.Content[i].Value
				// The second key of a path is a name, as in parts.shaft.name.
				if len(path) == 1 && path[0] != "equipment" && path[0] != "job" {
					key = "*"
				}
				walk(n.Content[i+1], append(path[:len(path):len(path)], key))
			}
		case yaml.SequenceNode:
			for _, c := range n.Content {
				walk(c, append(path[:len(path):len(path)], "*"))
			}
		case yaml.ScalarNode:
			p := strings.Join(path, ".")
			if !seen[p] {
				seen[p] = true
				out = append(out, field{path: p, line: n.Line, col: n.Column, width: written(lines[n.Line-1][n.Column-1:], n)})
			}
		}
	}
	walk(doc.Content[0], nil)
	return out
}

// written is how many bytes a value takes in its line.
func written(rest string, n *yaml.Node) int {
	if n.Style&(yaml.DoubleQuotedStyle|yaml.SingleQuotedStyle) != 0 {
		return strings.IndexByte(rest[1:], rest[0]) + 2
	}
	return len(n.Value)
}

// checkOverlaps sees that no text stands on another, and none on the edge of a
// write-in box.
func checkOverlaps(t reporter, what string, page int, f layout.Frame) {
	t.Helper()
	type placed struct {
		it layout.Item
		area
	}
	var texts, boxes []placed
	for _, it := range f.Items {
		if _, ok := it.Shape.(layout.Text); ok {
			texts = append(texts, placed{it, inked(it)})
		}
		if _, ok := leastBox[it.Role]; ok {
			l, top, r, bottom := it.Bounds()
			boxes = append(boxes, placed{it, area{l, top, r, bottom}})
		}
	}
	for i, a := range texts {
		for _, b := range texts[i+1:] {
			if over(a.area, b.area) {
				t.Errorf("%s %s page %d: %s stands on %s", what, f.Sheet, page, saidAt(a.it), saidAt(b.it))
			}
		}
		for _, b := range boxes {
			if over(a.area, b.area) && !within(a.area, b.area) {
				t.Errorf("%s %s page %d: %s stands on the edge of a box for %s", what, f.Sheet, page, saidAt(a.it), b.it.Role)
			}
		}
	}
}

func saidAt(it layout.Item) string {
	return fmt.Sprintf("%q at %.1f,%.1f", it.Shape.(layout.Text).S, it.X, it.Y)
}

// inked is where the letters of a text have ink: from a little below the line to
// the height of capitals, which are about 0.73 em high in the Go fonts and hang
// down 0.21 em. The turn is a quarter or none.
func inked(it layout.Item) area {
	s := it.Shape.(layout.Text)
	em := s.Size.Mm()
	up, down := em*0.73, em*0.21
	if strings.ToUpper(s.S) == s.S && !strings.ContainsAny(s.S, ",;()/") {
		down = 0
	}
	switch it.Turn {
	case 90:
		return area{it.X - up, it.Y - s.Width, it.X + down, it.Y}
	case 270, -90:
		return area{it.X - down, it.Y, it.X + up, it.Y + s.Width}
	}
	return area{it.X, it.Y - up, it.X + s.Width, it.Y + down}
}

// slack is how far two things may reach into each other before it is seen.
const slack layout.Mm = 0.1

func over(a, b area) bool {
	return a[0] < b[2]-slack && b[0] < a[2]-slack && a[1] < b[3]-slack && b[1] < a[3]-slack
}

func within(a, b area) bool {
	return a[0] > b[0]-slack && a[1] > b[1]-slack && a[2] < b[2]+slack && a[3] < b[3]+slack
}

// TestNothingOnTopOfAnything: on the pages of the starters no text stands on
// another or on the edge of a box.
func TestNothingOnTopOfAnything(t *testing.T) {
	t.Parallel()
	for _, starter := range starters(t) {
		for _, paper := range papers {
			_, pack := composed(t, starter, templates.Options{Paper: paper})
			for _, doc := range []*layout.Doc{pack.Pages, pack.Tags} {
				for i, f := range doc.Pages {
					checkOverlaps(t, starter+" on "+paper.Name, i+1, f)
				}
			}
		}
	}
}
