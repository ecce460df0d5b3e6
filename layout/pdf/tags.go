package pdf

import (
	"fmt"
	"strconv"

	"matchmark/layout"
)

// The structure of the document (ISO 32000-1, 14.7 and 14.8), for readers that speak a
// page, set it anew on a small screen or copy from it:
//
//	Document
//	  Sect    a sheet, with its title
//	    H1    the title; H2 and below, what its block says is a heading
//	    P     text that comes from one place of the definition
//	    Table, TR, TH and TD, with text, drawings and tables in them
//	    Figure  a drawing, with what it is in words
//
// What an item is part of its block has said (layout.Element). Elements follow each other
// as they are painted, which is as they are read. Boxes, lines and what stands at head and
// foot of every page are artifacts, and so is what stands again at the top of a page; of
// the first head of a sheet its title is not.

// An element is one of the structure with its marked content.
type element struct {
	kind   string
	title  string // of a sheet
	alt    string // of a figure
	parent int    // index of the element that it is in; -1 is the document itself
	page   int
	kids   []int // in reading order: marked content of its page by number, elements as ^index
	span   int   // the columns of a cell, 0 for one
	filled bool  // there is marked content among its kids
}

// A group is what is marked as one element on a page: text of one ref, a heading, a
// figure, a cell. The zero group is none.
type group struct {
	kind  string
	sheet string
	ref   layout.Ref
	of    *layout.Element
	block int // of text that comes from no place of the definition: which block of it
}

// tags marks the content while it is painted and writes the tree of it.
type tags struct {
	doc      *layout.Doc
	elements []element
	kids     []int          // of the document
	sheets   map[string]int // the element of each sheet
	level    map[string]int // of the last heading of each sheet
	tables   tables
	pages    [][]int // of each page, the element of each piece of content

	// Of the page being painted.
	number   int
	begins   map[string]bool // the sheets that begin on it
	part     int
	y        layout.Mm // of the text before
	block    int
	last     group // the last that was begun
	now      int   // its element
	open     bool
	artifact bool
}

func newTags(d *layout.Doc) *tags {
	return &tags{doc: d, sheets: map[string]int{}, level: map[string]int{}, tables: newTables(), pages: make([][]int, len(d.Pages))}
}

// page begins a page, counted from 0.
func (t *tags) page(i int) {
	t.number, t.part, t.y, t.block, t.last, t.open, t.artifact = i, 0, 0, 0, group{}, false, false
	t.begins = map[string]bool{}
	for _, e := range t.doc.Outline {
		if e.Page == i && e.Level == 0 {
			t.begins[e.Sheet] = true
		}
	}
}

// add adds an element of the page to another one, -1 for the document.
func (t *tags) add(e element) int {
	e.page = t.number
	n := len(t.elements)
	t.elements = append(t.elements, e)
	if e.parent < 0 {
		t.kids = append(t.kids, ^n)
	} else {
		t.elements[e.parent].kids = append(t.elements[e.parent].kids, ^n)
	}
	return n
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
		t.now = t.begin(g)
	}
	t.last, t.open = g, true
	id := len(t.pages[t.number])
	e := &t.elements[t.now]
	e.kids, e.filled = append(e.kids, id), true
	t.pages[t.number] = append(t.pages[t.number], t.now)
	b = append(append(append(b, '/'), g.kind...), " <</MCID "...)
	return append(strconv.AppendInt(b, int64(id), 10), ">> BDC\n"...)
}

// begin makes the element of a group, or finds it: that of a cell stands since its row
// began.
func (t *tags) begin(g group) int {
	parent := t.sheetOf(g.sheet)
	e := element{kind: g.kind}
	if g.of != nil {
		parent = t.inside(parent, g.of.In)
		if g.of.Sort == layout.CellSort {
			return t.cell(parent, g.of)
		}
		e.alt = g.of.Alt
	}
	e.parent = parent
	return t.add(e)
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
	if len(f.Parts) == 0 { // a page without head and foot
		return t.spoken(it, said, "")
	}
	if t.part == len(f.Parts) || i < f.Parts[t.part].From { // head and foot
		sheet := f.Parts[0].Sheet
		if said != "" && it.Of != nil && it.Of.Sort == layout.HeadingSort && t.begins[sheet] {
			return group{kind: t.headingKind(sheet, it.Of), sheet: sheet, of: it.Of}
		}
		return group{}
	}
	p := f.Parts[t.part]
	if i < p.Fresh && t.number > 0 && (it.Of == nil || t.tables.seen(it.Of)) || t.titled(p.Sheet, it.Of) {
		return group{}
	}
	g := t.spoken(it, said, p.Sheet)
	if g.kind != "P" {
		return g
	}
	if it.Ref == nil {
		if it.Y < t.y || it.Y > t.y+newBlock {
			t.block++
		}
		g.block = t.block
	}
	t.y = it.Y
	return g
}

// spoken is the group of an item that is no artifact, unless it says nothing.
func (t *tags) spoken(it layout.Item, said, sheet string) group {
	g := group{kind: "P", sheet: sheet, of: it.Of}
	if it.Of != nil {
		switch it.Of.Sort {
		case layout.FigureSort:
			g.kind = "Figure"
			return g
		case layout.RowStart:
			t.row(t.inside(t.sheetOf(sheet), it.Of.In), it.Of)
			return group{}
		case layout.HeadingSort:
			g.kind = t.headingKind(sheet, it.Of)
		case layout.CellSort:
			g.kind = cellKind(it.Of)
		}
	} else {
		g.ref = it.Ref
	}
	if said == "" {
		return group{}
	}
	return g
}

// newBlock is from line to line the distance above which another block of text begins.
const newBlock layout.Mm = 6

// titled reports whether a title was said at the head of the page already, as that of a
// sheet that could have begun below another one.
func (t *tags) titled(sheet string, e *layout.Element) bool {
	return e != nil && e.Sort == layout.HeadingSort && e.Level == 1 && t.level[sheet] > 0 && t.last.of != e
}

// headingKind is H1 to H6, no more than one below the heading before it.
func (t *tags) headingKind(sheet string, e *layout.Element) string {
	if t.last.of == e {
		return t.last.kind
	}
	n := min(e.Level, t.level[sheet]+1, 6)
	t.level[sheet] = n
	return fmt.Sprintf("H%d", n)
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
		e := element{kind: "Sect", title: name, parent: -1}
		for _, l := range t.doc.Outline {
			if l.Level == 0 && l.Sheet == name {
				e.title = l.Title
			}
		}
		n = t.add(e)
		t.sheets[name] = n
	}
	return n
}
