package pdf

import (
	"bytes"
	"compress/zlib"
	"io"
	"regexp"
	"strconv"
	"testing"
)

// A tagNode is an element of the structure as it stands in the file.
type tagNode struct {
	number, parent int
	kind, alt      string
	page           int   // number of the page's object, 0 for an element of elements
	kids           []int // elements
	ids            []int // marked content of the page
	span           int   // columns of a cell
}

var (
	kindEntry   = regexp.MustCompile(`/S /(\w+)`)
	parentEntry = regexp.MustCompile(`/P (\d+) 0 R`)
	altEntry    = regexp.MustCompile(`/Alt <FEFF([0-9A-F]*)>`)
	pageEntry   = regexp.MustCompile(`/Pg (\d+) 0 R`)
	kidsEntry   = regexp.MustCompile(`/K \[([ 0-9R]*)\]`)
	spanEntry   = regexp.MustCompile(`/ColSpan (\d+)`)
	kidEntry    = regexp.MustCompile(`(\d+)( 0 R)?`)
	marked      = regexp.MustCompile(`^/(\w+) <</MCID (\d+)>> BDC$`)
)

// treeOf reads the structure of a file in reading order, its content as page and number,
// and the parent tree.
func treeOf(t *testing.T, file []byte) (nodes []tagNode, read [][2]int, parents map[int][]int) {
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
		e := tagNode{number: n, parent: find(parentEntry, b), page: find(pageEntry, b), span: max(find(spanEntry, b), 1)}
		if m := kindEntry.FindSubmatch(b); m != nil {
			e.kind = string(m[1])
		}
		if m := altEntry.FindSubmatch(b); m != nil {
			e.alt = fromUTF16(m[1])
		}
		var kids [][][]byte
		if m := kidsEntry.FindSubmatch(b); m != nil {
			kids = kidEntry.FindAllSubmatch(m[1], -1)
		}
		at := len(nodes)
		nodes = append(nodes, e)
		for _, k := range kids {
			kid, _ := strconv.Atoi(string(k[1]))
			if len(k[2]) == 0 {
				nodes[at].ids = append(nodes[at].ids, kid)
				read = append(read, [2]int{e.page, kid})
			} else {
				nodes[at].kids = append(nodes[at].kids, kid)
				walk(kid)
			}
		}
		if (len(nodes[at].ids) > 0) != (e.page > 0) {
			t.Errorf("element %d has content %v of page object %d", n, nodes[at].ids, e.page)
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
	return nodes, read, parents
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
// one element of the kind that it says, and is found from there and back. Where cells are
