package pdf

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
)

// painted in their order the tree is read as it is painted.
func checkTags(t *testing.T, d *layout.Doc, ordered bool) []tagNode {
	t.Helper()
	var out bytes.Buffer
	if err := Write(&out, d); err != nil {
		t.Fatal(err)
	}
	nodes, read, parents := treeOf(t, out.Bytes())
	owner := map[[2]int]tagNode{}
	by := map[int]tagNode{}
	for _, n := range nodes {
		by[n.number] = n
		if n.number != nodes[0].number && !slices.Contains(by[n.parent].kids, n.number) {
			t.Errorf("element %d says it is under %d, which does not have it", n.number, n.parent)
		}
		for _, id := range n.ids {
			if _, twice := owner[[2]int{n.page, id}]; twice {
				t.Errorf("content %d of page %d stands in the tree twice", id, n.page)
			}
			owner[[2]int{n.page, id}] = n
		}
	}
	for i, r := range read {
		if ordered && i > 0 && read[i-1][0] == r[0] && read[i-1][1] > r[1] {
			t.Errorf("content %d of page object %d is read after %d, which is painted later", r[1], r[0], read[i-1][1])
		}
	}
	checkTables(t, nodes, by)
	for i := range d.Pages {
		inside, count := "", 0
		for _, line := range strings.Split(contentOf(t, out.Bytes(), i), "\n") {
			switch m := marked.FindStringSubmatch(line); {
			case m != nil || line == "/Artifact BMC":
				if inside != "" {
					t.Fatalf("page %d: %q within %q", i+1, line, inside)
				}
				inside = line
				if m == nil {
					continue
				}
				n := owner[[2]int{pageObject(i), count}]
				if m[2] != strconv.Itoa(count) || n.kind != m[1] {
					t.Errorf("page %d: %q is number %d and belongs to a %q", i+1, line, count, n.kind)
				}
				if count >= len(parents[i]) || parents[i][count] != n.number {
					t.Errorf("page %d: content %d leads back to another element than %d", i+1, count, n.number)
				}
				count++
			case line == "EMC":
				if inside == "" {
					t.Fatalf("page %d: an end without a beginning", i+1)
				}
				inside = ""
			case inside == "" && line != "":
				t.Errorf("page %d: %q is not marked", i+1, line)
			}
		}
		if inside != "" || count != len(parents[i]) {
			t.Errorf("page %d: %q is not ended, %d pieces of content, %d in the tree", i+1, inside, count, len(parents[i]))
		}
	}
	return nodes
}

// checkTables: a table is of rows, a row of cells, each row of a table of as many.
func checkTables(t *testing.T, nodes []tagNode, by map[int]tagNode) {
	t.Helper()
	within := map[string]string{"TR": "Table", "TH": "TR", "TD": "TR"}
	for _, n := range nodes {
		if in := within[n.kind]; in != "" && by[n.parent].kind != in {
			t.Errorf("a %s stands in a %s", n.kind, by[n.parent].kind)
		}
		for _, kid := range n.kids {
			if of := within[by[kid].kind]; of != n.kind && (of != "" || n.kind == "Table" || n.kind == "TR") {
				t.Errorf("a %s has a %s", n.kind, by[kid].kind)
			}
			if n.kind == "Table" && columns(by[kid], by) != columns(by[n.kids[0]], by) {
				t.Errorf("a row of %d cells in a table whose first has %d", columns(by[kid], by), columns(by[n.kids[0]], by))
			}
		}
	}
}

// columns are the columns that the cells of a row span.
func columns(row tagNode, by map[int]tagNode) (n int) {
	for _, kid := range row.kids {
		n += by[kid].span
	}
	return n
}

// TestTags: sheet, heading, text of two places, a drawing; head and foot are left out but
// for the title.
func TestTags(t *testing.T) {
	t.Parallel()
	set := layout.NewSetter(NewFaces(), layout.Pen{})
	line := func(st layout.Style, text string, ref layout.Ref) layout.Block {
		return set.Line(0, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: ref})
	}
	drawing := layout.Overlay(set.Sketch(80, 60, "", nil), line(layout.Sub, "shaft", 3)).Drawing("D1 Stand-off")
	pages := layout.Paginate(layout.A4, []layout.Sheet{{
		Name: "traveler", Title: "Traveler",
		Head: func(page, total int) layout.Block {
			return layout.Above(1, line(layout.Plate, "Traveler", nil).Heading(1), line(layout.Sub, fmt.Sprint("page ", page), nil))
		},
		Pieces: []layout.Piece{
			{Block: line(layout.Section, "1 Make safe, all of it", nil).Heading(2), Title: "1 Make safe", Level: 1},
			{Block: layout.Above(2, line(layout.Body, "Lock it out.", 1), set.Box(layout.RoleInitials, "initials", 1), line(layout.Body, "Try it.", 1))},
			{Block: line(layout.Body, "Take it off.", 2)},
			{Block: drawing},
		},
	}})
	d := &layout.Doc{Title: "x", Lang: "en", Pages: pages.Frames, Outline: pages.Outline}
	var got []string
	for _, n := range checkTags(t, d, true) {
		got = append(got, n.kind+n.alt)
	}
	want := []string{"Document", "Sect", "H1", "H2", "P", "P", "FigureD1 Stand-off"}
	if !slices.Equal(got, want) {
		t.Errorf("the structure is %v, want %v", got, want)
	}
}

// anyElements are none, drawings, headings, and the cells of a table and of one in its
// second row.
func anyElements(r *rand.Rand) []*layout.Element {
	out := []*layout.Element{nil, nil, nil, {Sort: layout.FigureSort, Alt: "one"}, {Sort: layout.FigureSort},
		{Sort: layout.HeadingSort, Level: 1}, {Sort: layout.HeadingSort, Level: 4}}
	var in *layout.Element
	for range 2 {
		table := &layout.TableOf{Columns: 3}
		for row := range 3 {
			spans := [][]int{{1, 1, 1}, {1, 2}}[row%2]
			out = append(out, &layout.Element{Sort: layout.RowStart, Table: table, Row: row, Spans: spans, Head: row == 0, In: in})
			for column := range spans {
				out = append(out, &layout.Element{Sort: layout.CellSort, Table: table, Row: row, Column: column, Spans: spans, Head: row == 0, In: in})
			}
		}
		in = out[len(out)-1-r.IntN(3)]
		out = append(out, &layout.Element{Sort: layout.FigureSort, Alt: "two", In: in})
	}
	return out
}

// TestTagsOfAnyPages: items in any order, with and without sheets, refs, drawings, headings
// and cells, turned and empty ones.
func TestTagsOfAnyPages(t *testing.T) {
	t.Parallel()
	for seed := range uint64(60) {
		r := rand.New(rand.NewPCG(seed, 1))
		d := &layout.Doc{Title: "x"}
		parts := anyElements(r)
		for p := range 1 + r.IntN(3) {
			f := layout.Frame{W: 210, H: 297, Number: p + 1}
			for range r.IntN(30) {
				shapes := []layout.Shape{layout.Text{S: "a"}, layout.Text{}, layout.Text{S: "b", Size: 12}, layout.Rect{W: 3, H: 3, Weight: 1}, layout.Line{DX: 2, Weight: 1},
					layout.Path{Ops: layout.Circle(layout.Point{}, 2), Weight: 1, Alt: []string{"", "⌀"}[r.IntN(2)], AltSize: 8}}
				f.Items = append(f.Items, layout.Item{X: layout.Mm(r.IntN(200)), Y: layout.Mm(r.IntN(290)), Turn: float64(90 * r.IntN(2)),
					Ref: []layout.Ref{nil, 1, 2}[r.IntN(3)], Shape: shapes[r.IntN(len(shapes))], Of: parts[r.IntN(len(parts))]})
			}
			if n := len(f.Items); n > 4 && r.IntN(3) > 0 {
				f.Parts = []layout.Part{{Sheet: "s", From: 1, Fresh: 1 + r.IntN(2), To: n / 2}, {Sheet: "t", From: n / 2, Fresh: n / 2, To: n - 1}}
				d.Outline = append(d.Outline, layout.Entry{Title: "b", Sheet: "s", Page: p}, layout.Entry{Title: "b", Sheet: "t", Level: 1, Page: p, Y: 90})
			}
			d.Pages = append(d.Pages, f)
		}
		checkTags(t, d, false)
		if t.Failed() {
			t.Fatalf("seed %d", seed)
		}
	}
}

// TestTagsOfSample is the sample that the other tests paint.
func TestTagsOfSample(t *testing.T) {
	t.Parallel()
	checkTags(t, sample(layout.A4), true)
	checkTags(t, attachedSample(), true)
}
