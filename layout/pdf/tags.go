package pdf

import (
	"fmt"
	"strings"

	"matchmark/layout"
)

// The structure of the document (ISO 32000-1, 14.7 and 14.8), for readers that speak a
// page, set it anew on a small screen or copy from it:
//
//	Document
//	  Sect    a sheet, with its title
//	    H1    the title; H2 and H3 what the outline has below it
//	    P     text that comes from one place of the definition
//	    Figure  a drawing, with what it is in words
//
// Elements follow each other as they are painted, which is as they are read. Boxes, lines
// and what stands at head and foot of every page are artifacts; of the first head of a
// sheet its title is not. Rows and cells are not told as such: a Frame knows no tables.

// An element is one of the structure with its marked content.
type element struct {
	kind   string
	title  string // of a sheet
	alt    string // of a figure
	parent int    // index of its sheet; -1 is the document itself
	page   int
	ids    []int // of the marked content on its page
}

// A group is what is marked as one element on a page: text of one ref, a line of the
// outline, or a figure. The zero group is none.
type group struct {
	kind    string
	sheet   string
	ref     layout.Ref
	heading int // of the page, from 1
	figure  *layout.Figure
	block   int // of text that comes from no place of the definition: which block of it
}

// tags marks the content while it is painted and writes the tree of it.
type tags struct {
	doc      *layout.Doc
	elements []element
	sheets   map[string]int // the element of each sheet
	pages    [][]int        // of each page, the element of each piece of content

	// Of the page being painted.
	number   int
	headings []layout.Entry
	part     int
	y        layout.Mm // of the text before
	block    int
	last     group // the last that was begun
	open     bool
	artifact bool
}

func newTags(d *layout.Doc) *tags {
	return &tags{doc: d, sheets: map[string]int{}, pages: make([][]int, len(d.Pages))}
}

// page begins a page, counted from 0.
func (t *tags) page(i int) {
	t.number, t.part, t.y, t.block, t.last, t.open, t.artifact, t.headings = i, 0, 0, 0, group{}, false, false, nil
	for _, e := range t.doc.Outline {
		if e.Page == i {
			t.headings = append(t.headings, e)
		}
	}
}

// before writes what must stand before an item of the page; items come in their order.
func (t *tags) before(b []byte, item int) []byte {
	g := t.groupOf(item)
	switch {
	case g == group{} && t.artifact, g != group{} && t.open && g == t.last:
		return b
	case g == group{}:
		b = t.close(b)
		t.artifact = true
		return append(b, "/Artifact BMC\n"...)
	}
	b = t.close(b)
	if g != t.last {
		e := element{kind: g.kind, parent: t.sheetOf(g.sheet), page: t.number}
		if g.figure != nil {
			e.alt = g.figure.Alt
		}
		t.elements = append(t.elements, e)
	}
	t.last, t.open = g, true
	n := len(t.elements) - 1
	id := len(t.pages[t.number])
	t.elements[n].ids = append(t.elements[n].ids, id)
	t.pages[t.number] = append(t.pages[t.number], n)
	return fmt.Appendf(b, "/%s <</MCID %d>> BDC\n", g.kind, id)
}

// close ends what is open.
func (t *tags) close(b []byte) []byte {
	if t.open || t.artifact {
		b = append(b, "EMC\n"...)
	}
	t.open, t.artifact = false, false
	return b
}

// groupOf tells what an item belongs to, the zero group for an artifact.
func (t *tags) groupOf(i int) group {
	f := t.doc.Pages[t.number]
	for t.part < len(f.Parts) && i >= f.Parts[t.part].To {
		t.part++
	}
	it := f.Items[i]
	said := textOf(it.Shape)
	switch {
	case len(f.Parts) == 0: // a page without head and foot
		if it.Figure != nil {
			return group{kind: "Figure", figure: it.Figure}
		} else if said != "" {
			return group{kind: "P", ref: it.Ref}
		}
		return group{}
	case t.part == len(f.Parts) || i < f.Parts[t.part].From: // head and foot
		for n, e := range t.headings {
			if e.Level == 0 && e.Sheet == f.Parts[0].Sheet && said == e.Title {
				return group{kind: "H1", sheet: e.Sheet, heading: n + 1}
			}
		}
		return group{}
	}
	sheet := f.Parts[t.part].Sheet
	switch {
	case it.Figure != nil:
		return group{kind: "Figure", sheet: sheet, figure: it.Figure}
	case said == "":
		return group{}
	}
	for n, e := range t.headings {
		if e.Sheet == sheet && begins(e, it, said) {
			return group{kind: fmt.Sprintf("H%d", min(e.Level+1, 6)), sheet: sheet, heading: n + 1}
		}
	}
	g := group{kind: "P", sheet: sheet, ref: it.Ref}
	if it.Ref == nil {
		if it.Y < t.y || it.Y > t.y+newBlock {
			t.block++
		}
		g.block = t.block
	}
	t.y = it.Y
	return g
}

// newBlock is from line to line the distance above which another block of text begins.
const newBlock layout.Mm = 6

// headingRoom is how far below the place of its line of the outline a heading is looked
// for.
const headingRoom layout.Mm = 15

// begins reports whether a text is the heading that a line of the outline leads to, or
// the first line of it.
func begins(e layout.Entry, it layout.Item, said string) bool {
	if it.Turn == 0 && (it.Y < e.Y || it.Y > e.Y+headingRoom) {
		return false
	}
	said = strings.Join(strings.Fields(strings.TrimPrefix(said, "▶")), " ")
	title := strings.Join(strings.Fields(e.Title), " ")
	if t, ok := it.Shape.(layout.Text); ok && t.Size >= headingSize && firstWord(said) == firstWord(title) {
		return true // the outline may have it shorter
	}
	return said != "" && said == title
}

// headingSize is the least size of type that a heading of a section is set in.
const headingSize = 11

func firstWord(s string) string {
	word, _, _ := strings.Cut(s, " ")
	return word
}

// textOf is what a reader hears of a shape.
func textOf(s layout.Shape) string {
	switch s := s.(type) {
	case layout.Text:
		return s.S
	case layout.Path:
		return s.Alt
	}
	return ""
}

// sheetOf is the element of a sheet, made when it is first needed; -1 where there is none.
func (t *tags) sheetOf(name string) int {
	if name == "" {
		return -1
	}
	n, known := t.sheets[name]
	if !known {
		n = len(t.elements)
		e := element{kind: "Sect", title: name, parent: -1}
		for _, l := range t.doc.Outline {
			if l.Level == 0 && l.Sheet == name {
				e.title = l.Title
			}
		}
		t.elements = append(t.elements, e)
		t.sheets[name] = n
	}
	return n
}

// add adds the objects of the structure, the first numbered next, and gives the entries
// of the catalogue that lead to them.
func (t *tags) add(next int, add func([]byte)) string {
	root, tree, document := next, next+1, next+2
	number := func(e int) int { return document + 1 + e }
	add(fmt.Appendf(nil, "<</Type /StructTreeRoot /K %d 0 R /ParentTree %d 0 R /ParentTreeNextKey %d>>", document, tree, len(t.pages)))
	b := []byte("<</Nums [")
	for i, elements := range t.pages {
		b = fmt.Appendf(b, "%d [", i)
		for _, e := range elements {
			b = fmt.Appendf(b, "%d 0 R ", number(e))
		}
		b = append(b, "] "...)
	}
	add(append(b, "]>>"...))
	kids := make([][]byte, len(t.elements)+1) // of each, the document first
	for i, e := range t.elements {
		kids[e.parent+1] = fmt.Appendf(kids[e.parent+1], "%d 0 R ", number(i))
	}
	add(fmt.Appendf(nil, "<</S /Document /P %d 0 R /K [%s]>>", root, kids[0]))
	for i, e := range t.elements {
		b := fmt.Appendf(nil, "<</S /%s /P %d 0 R", e.kind, number(e.parent))
		if e.title != "" {
			b = appendUTF16(append(b, " /T "...), e.title)
		}
		if e.alt != "" {
			b = appendUTF16(append(b, " /Alt "...), e.alt)
		}
		if len(e.ids) > 0 {
			b = fmt.Appendf(b, " /Pg %d 0 R /K %d", pageObject(e.page), e.ids)
		} else {
			b = fmt.Appendf(b, " /K [%s]", kids[i+1])
		}
		add(append(b, ">>"...))
	}
	return fmt.Sprintf(" /MarkInfo <</Marked true>> /StructTreeRoot %d 0 R", root)
}
