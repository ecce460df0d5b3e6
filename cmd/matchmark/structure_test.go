package main

import (
	"bytes"
	"regexp"
	"strconv"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/templates"
)

// A structNode is an element of the structure of a printed file (ISO 32000-1, 14.7), as
// it stands there: nothing of it is compressed.
type structNode struct {
	kind     string
	parent   int
	kids     []int
	spans    int // columns of a cell
	contents int
}

var (
	structObject = regexp.MustCompile(`(?m)^(\d+) 0 obj\n<</S /(\w+) /P (\d+) 0 R(.*)>>$`)
	structKids   = regexp.MustCompile(`/K \[([^\]]*)\]`)
	structKid    = regexp.MustCompile(`(\d+)( 0 R)?`)
	structSpan   = regexp.MustCompile(`/ColSpan (\d+)`)
)

func structureOf(file []byte) map[int]*structNode {
	number := func(b []byte) int { n, _ := strconv.Atoi(string(b)); return n }
	out := map[int]*structNode{}
	for _, m := range structObject.FindAllSubmatch(file, -1) {
		n := &structNode{kind: string(m[2]), parent: number(m[3]), spans: 1}
		if s := structSpan.FindSubmatch(m[4]); s != nil {
			n.spans = number(s[1])
		}
		if k := structKids.FindSubmatch(m[4]); k != nil {
			for _, kid := range structKid.FindAllSubmatch(k[1], -1) {
				if len(kid[2]) == 0 {
					n.contents++
				} else {
					n.kids = append(n.kids, number(kid[1]))
				}
			}
		}
		out[number(m[1])] = n
	}
	return out
}

// TestStructure: in the pack of every starter a table is of rows, a row of cells, and each
// row of a table takes as many columns as its heads, which are all heads; a table stands
// in a sheet or in a cell.
func TestStructure(t *testing.T) {
	for _, starter := range starters(t) {
		_, pack := composed(t, starter, templates.Options{Paper: layout.A4})
		var file bytes.Buffer
		if err := pdf.Write(&file, pack.Pages); err != nil {
			t.Fatal(err)
		}
		nodes := structureOf(file.Bytes())
		headed, count := 0, map[string]int{}
		for _, n := range nodes {
			count[n.kind]++
			if n.kind != "Table" {
				continue
			}
			if in := nodes[n.parent].kind; in != "Sect" && in != "TD" {
				t.Errorf("%s: a table stands in a %s", starter, in)
			}
			if checkRows(t, starter, nodes, n) {
				headed++
			}
		}
		if headed < 10 || count["TD"] < 300 || count["H1"] != count["Sect"] {
			t.Errorf("%s: %d tables with heads, %v", starter, headed, count)
		}
	}
}

// checkRows reports whether a table begins with heads.
func checkRows(t *testing.T, starter string, nodes map[int]*structNode, table *structNode) (headed bool) {
	t.Helper()
	wide := 0
	for i, row := range table.kids {
		if nodes[row].kind != "TR" {
			t.Errorf("%s: a %s stands in a table", starter, nodes[row].kind)
		}
		n, heads := 0, 0
		for _, c := range nodes[row].kids {
			cell := nodes[c]
			n += cell.spans
			switch cell.kind {
			case "TH":
				heads++
			case "TD":
			default:
				t.Errorf("%s: a %s stands in a row", starter, cell.kind)
			}
		}
		if i == 0 {
			wide, headed = n, heads > 0
		}
		if n != wide || heads > 0 && heads != len(nodes[row].kids) {
			t.Errorf("%s: a row of %d columns, %d heads, in a table of %d columns", starter, n, heads, wide)
		}
	}
	return headed
}

// TestHeadings: each line of the outline leads to a heading of its level, or one above
// where the level between is not there.
func TestHeadings(t *testing.T) {
	for _, starter := range starters(t) {
		_, pack := composed(t, starter, templates.Options{Paper: layout.A4})
		for _, e := range pack.Pages.Outline {
			found := false
			for _, it := range pack.Pages.Pages[e.Page].Items {
				found = found || it.Of != nil && it.Of.Sort == layout.HeadingSort && it.Of.Level == e.Level+1
			}
			if !found {
				t.Errorf("%s: page %d has no heading of level %d for %q", starter, e.Page+1, e.Level+1, e.Title)
			}
		}
	}
}
