package pdf

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"matchmark/layout"
)

// kindsOf are the kinds of a structure in reading order, each indented by how deep it is.
func kindsOf(nodes []tagNode) []string {
	depth := map[int]int{}
	var out []string
	for _, n := range nodes {
		depth[n.number] = depth[n.parent] + 1
		out = append(out, strings.Repeat(" ", depth[n.number]-1)+n.kind)
	}
	return out
}

// TestTagsOfTables: rows and cells, those left to write in too; a drawing and a table in a
// cell; a table that goes on over a page is one, its head said once; the same block placed
// twice is two.
func TestTagsOfTables(t *testing.T) {
	t.Parallel()
	set := layout.NewSetter(NewFaces(), layout.Pen{})
	word := func(s string) layout.Block { return set.Words(layout.Body, s) }
	inner := layout.Table{Columns: []layout.Column{{Width: 20}}}.Block([]layout.Row{{Cells: []layout.Block{word("in")}}})
	tab := layout.Table{Grid: true, Columns: []layout.Column{{Width: 40, Head: word("mark")}, {Width: 60, Head: word("what")}}}
	twice := tab.Block([]layout.Row{{Cells: []layout.Block{word("C1"), layout.Beside(2, word("bolts"), word("x").Drawing("a bolt"), inner)}}, {}})
	rows := numberedRows(set, 100)
	sheets := []layout.Sheet{
		{Name: "a", Title: "A", Pieces: []layout.Piece{{Block: layout.Above(0, twice, twice)}}},
		{Name: "b", Title: "B", Pieces: tab.Pieces(rows)},
	}
	pages := layout.Paginate(layout.A4, sheets)
	if len(pages.Frames) != 3 {
		t.Fatalf("%d pages, want a table over two", len(pages.Frames))
	}
	nodes := checkTags(t, &layout.Doc{Title: "x", Pages: pages.Frames, Outline: pages.Outline}, true)
	head := []string{"  Table", "   TR", "    TH", "    TH"}
	blank := []string{"   TR", "    TD", "    TD"}
	one := slices.Concat(head, []string{"   TR", "    TD", "    TD", "     Figure", "     Table", "      TR", "       TD"}, blank)
	want := slices.Concat([]string{"Document", " Sect"}, one, one, []string{" Sect"}, head)
	for range rows {
		want = append(want, blank...)
	}
	if got := kindsOf(nodes); !slices.Equal(got, want) {
		t.Errorf("the structure is\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// TestTagsOfChosenPages: of a table whose first page is left out, the head that stands
// again is its head.
func TestTagsOfChosenPages(t *testing.T) {
	t.Parallel()
	set := layout.NewSetter(NewFaces(), layout.Pen{})
	tab := layout.Table{Columns: []layout.Column{{Width: 40, Head: set.Words(layout.Body, "mark")}}}
	pages := layout.Paginate(layout.A4, []layout.Sheet{{Name: "a", Title: "A", Pieces: tab.Pieces(numberedRows(set, 300))}})
	last := len(pages.Frames)
	d := &layout.Doc{Title: "x", Pages: pages.Frames, Outline: pages.Outline}
	nodes := checkTags(t, d.Only(func(f layout.Frame) bool { return f.Number == last }), true)
	if got := kindsOf(nodes); !slices.Equal(got[:5], []string{"Document", " Sect", "  Table", "   TR", "    TH"}) || slices.Contains(got[5:], "    TH") {
		t.Errorf("the structure is %v", got)
	}
}

// numberedRows are rows of a number and what is left to write in.
func numberedRows(set *layout.Setter, n int) []layout.Row {
	rows := make([]layout.Row, n)
	for i := range rows {
		rows[i].Cells = []layout.Block{set.Words(layout.Body, fmt.Sprint(i))}
	}
	return rows
}
