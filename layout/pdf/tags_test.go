package pdf

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"matchmark/layout"
)

// A tagNode is an element of the structure as it stands in the file.
type tagNode struct {
	number, parent int
	kind, alt      string
	page           int   // number of the page's object, 0 for an element of elements
	kids           []int // elements, or marked content of the page
}

var (
	kindEntry   = regexp.MustCompile(`/S /(\w+)`)
	parentEntry = regexp.MustCompile(`/P (\d+) 0 R`)
	altEntry    = regexp.MustCompile(`/Alt <FEFF([0-9A-F]*)>`)
	pageEntry   = regexp.MustCompile(`/Pg (\d+) 0 R`)
	idsEntry    = regexp.MustCompile(`/K \[([ 0-9R]*)\]`)
	marked      = regexp.MustCompile(`^/(\w+) <</MCID (\d+)>> BDC$`)
)

// treeOf reads the structure of a file in reading order, and the parent tree.
func treeOf(t *testing.T, file []byte) (nodes []tagNode, parents map[int][]int) {
	t.Helper()
	object, err := objectsOf(file)
	if err != nil {
		t.Fatal(err)
	}
	find := func(re *regexp.Regexp, b []byte) int {
		m := re.FindSubmatch(b)
		if m == nil {
			return 0
		}
		n, _ := strconv.Atoi(string(m[1]))
		return n
	}
	at := func(n int) []byte { return object([]byte(strconv.Itoa(n))) }
	catalog := at(find(rootEntry, file[len(file)-1024:]))
	if !bytes.Contains(catalog, []byte("/MarkInfo <</Marked true>>")) {
		t.Error("the catalogue does not say that the file is marked")
	}
	root := at(find(regexp.MustCompile(`/StructTreeRoot (\d+) 0 R`), catalog))
	var walk func(n int)
	walk = func(n int) {
		b := at(n)
		e := tagNode{number: n, parent: find(parentEntry, b), page: find(pageEntry, b)}
		if m := kindEntry.FindSubmatch(b); m != nil {
			e.kind = string(m[1])
		}
		if m := altEntry.FindSubmatch(b); m != nil {
			e.alt = fromUTF16(m[1])
		}
		for _, w := range strings.Fields(strings.ReplaceAll(string(idsEntry.FindSubmatch(b)[1]), "0 R", "")) {
			kid, _ := strconv.Atoi(w)
			e.kids = append(e.kids, kid)
		}
		nodes = append(nodes, e)
		if e.page == 0 {
			for _, kid := range e.kids {
				walk(kid)
			}
		}
	}
	walk(find(regexp.MustCompile(`/K (\d+) 0 R`), root))
	parents = map[int][]int{}
	tree := at(find(regexp.MustCompile(`/ParentTree (\d+) 0 R`), root))
	for _, m := range regexp.MustCompile(`(\d+) \[([ 0-9R]*)\]`).FindAllSubmatch(tree, -1) {
		page, _ := strconv.Atoi(string(m[1]))
		parents[page] = nil
		for _, w := range reference.FindAllSubmatch(m[2], -1) {
			n, _ := strconv.Atoi(string(w[1]))
			parents[page] = append(parents[page], n)
		}
	}
	return nodes, parents
}

// contentOf is the content of a page as it is painted.
func contentOf(t *testing.T, file []byte, page int) string {
	t.Helper()
	object, err := objectsOf(file)
	if err != nil {
		t.Fatal(err)
	}
	b := object([]byte(strconv.Itoa(pageObject(page) + 1)))
	at := lenEntry.FindSubmatchIndex(b)
	z, err := zlib.NewReader(bytes.NewReader(b[at[1]:]))
	if err != nil {
		t.Fatal(err)
	}
	text, err := io.ReadAll(z)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// checkTags holds a file against what ISO 32000-1, 14.6 to 14.8 asks of it: all that is
// painted is marked, once and not one within another; every piece of content belongs to
// one element of the kind that it says, and is found from there and back.
func checkTags(t *testing.T, d *layout.Doc) []tagNode {
	t.Helper()
	var out bytes.Buffer
	if err := Write(&out, d); err != nil {
		t.Fatal(err)
	}
	nodes, parents := treeOf(t, out.Bytes())
	owner := map[[2]int]tagNode{}
	by := map[int]tagNode{}
	lastPage, lastID := map[int]int{}, map[int]int{}
	for _, n := range nodes {
		by[n.number] = n
		if n.number != nodes[0].number && !slices.Contains(by[n.parent].kids, n.number) {
			t.Errorf("element %d says it is under %d, which does not have it", n.number, n.parent)
		}
		if n.page == 0 {
			continue
		}
		for _, id := range n.kids {
			if _, twice := owner[[2]int{n.page, id}]; twice {
				t.Errorf("content %d of page %d stands in the tree twice", id, n.page)
			}
			owner[[2]int{n.page, id}] = n
			if lastPage[n.parent] == n.page && lastID[n.parent] > id {
				t.Errorf("content %d of page %d is read before %d, which is painted later", id, n.page, lastID[n.parent])
			}
			lastPage[n.parent], lastID[n.parent] = n.page, id
		}
	}
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
			return layout.Above(1, line(layout.Plate, "Traveler", nil), line(layout.Sub, fmt.Sprint("page ", page), nil))
		},
		Pieces: []layout.Piece{
			{Block: line(layout.Section, "1 Make safe, all of it", nil), Title: "1 Make safe", Level: 1},
			{Block: layout.Above(2, line(layout.Body, "Lock it out.", 1), set.Box(layout.RoleInitials, "initials", 1), line(layout.Body, "Try it.", 1))},
			{Block: line(layout.Body, "Take it off.", 2)},
			{Block: drawing},
		},
	}})
	d := &layout.Doc{Title: "x", Lang: "en", Pages: pages.Frames, Outline: pages.Outline}
	var got []string
	for _, n := range checkTags(t, d) {
		got = append(got, n.kind+n.alt)
	}
	want := []string{"Document", "Sect", "H1", "H2", "P", "P", "FigureD1 Stand-off"}
	if !slices.Equal(got, want) {
		t.Errorf("the structure is %v, want %v", got, want)
	}
}

// TestTagsOfAnyPages: items in any order, with and without sheets, refs and figures, turned
// and empty ones.
func TestTagsOfAnyPages(t *testing.T) {
	t.Parallel()
	for seed := range uint64(60) {
		r := rand.New(rand.NewPCG(seed, 1))
		d := &layout.Doc{Title: "x"}
		figures := []*layout.Figure{nil, nil, nil, {Alt: "one"}, {Alt: ""}}
		for p := range 1 + r.IntN(3) {
			f := layout.Frame{W: 210, H: 297, Number: p + 1}
			for range r.IntN(30) {
				shapes := []layout.Shape{layout.Text{S: "a"}, layout.Text{}, layout.Text{S: "b", Size: 12}, layout.Rect{W: 3, H: 3, Weight: 1}, layout.Line{DX: 2, Weight: 1},
					layout.Path{Ops: layout.Circle(layout.Point{}, 2), Weight: 1, Alt: []string{"", "⌀"}[r.IntN(2)], AltSize: 8}}
				f.Items = append(f.Items, layout.Item{X: layout.Mm(r.IntN(200)), Y: layout.Mm(r.IntN(290)), Turn: float64(90 * r.IntN(2)),
					Ref: []layout.Ref{nil, 1, 2}[r.IntN(3)], Shape: shapes[r.IntN(len(shapes))], Figure: figures[r.IntN(len(figures))]})
			}
			if n := len(f.Items); n > 4 && r.IntN(3) > 0 {
				f.Parts = []layout.Part{{Sheet: "s", From: 1, To: n / 2}, {Sheet: "t", From: n / 2, To: n - 1}}
				d.Outline = append(d.Outline, layout.Entry{Title: "b", Sheet: "s", Page: p}, layout.Entry{Title: "b", Sheet: "t", Level: 1, Page: p, Y: 90})
			}
			d.Pages = append(d.Pages, f)
		}
		checkTags(t, d)
		if t.Failed() {
			t.Fatalf("seed %d", seed)
		}
	}
}

// TestTagsOfSample is the sample that the other tests paint.
func TestTagsOfSample(t *testing.T) {
	t.Parallel()
	checkTags(t, sample(layout.A4))
	checkTags(t, attachedSample())
}
