package pdf

import (
	"fmt"

	"matchmark/layout"
)

// entry is one line of the outline with its place in the tree, by index; -1 is
// none, and as parent the root.
type entry struct {
	parent, prev, next, first, last int
	// open counts the lines that show below this one when it is unfolded.
	open int
}

// tree links the outline. A level that is skipped is taken as one step.
func tree(es []layout.Entry) (t []entry, first, last, open int) {
	t = make([]entry, len(es))
	first, last = -1, -1
	var path []int // the chain of entries above the present one
	for i, e := range es {
		for len(path) > 0 && es[path[len(path)-1]].Level >= e.Level {
			path = path[:len(path)-1]
		}
		t[i] = entry{parent: -1, prev: -1, next: -1, first: -1, last: -1}
		head, tail := &first, &last
		if len(path) > 0 {
			t[i].parent = path[len(path)-1]
			head, tail = &t[t[i].parent].first, &t[t[i].parent].last
		}
		if *head < 0 {
			*head = i
		} else {
			t[i].prev = *tail
			t[*tail].next = i
		}
		*tail = i
		path = append(path, i)
	}
	// A line shows when all above it are unfolded; children come after their
	// parents, so going backward every count is ready when it is needed.
	for i := len(t) - 1; i >= 0; i-- {
		shows := 1
		if !es[i].Closed {
			shows += t[i].open
		}
		if t[i].parent >= 0 {
			t[t[i].parent].open += shows
		} else {
			open += shows
		}
	}
	return t, first, last, open
}

// addOutline adds the objects of the outline, the first numbered next, and gives
// the number of its root, 0 when there is none.
func addOutline(d *layout.Doc, next int, add func([]byte)) (root int) {
	if len(d.Outline) == 0 {
		return 0
	}
	t, first, last, open := tree(d.Outline)
	root = next
	number := func(i int) int { return root + 1 + i }
	add(fmt.Appendf(nil, "<</Type /Outlines /First %d 0 R /Last %d 0 R /Count %d>>", number(first), number(last), open))
	for i, e := range d.Outline {
		b := appendUTF16([]byte("<</Title "), e.Title)
		b = fmt.Appendf(b, " /Parent %d 0 R", number(t[i].parent))
		for _, l := range []struct {
			key string
			to  int
		}{{"Prev", t[i].prev}, {"Next", t[i].next}, {"First", t[i].first}, {"Last", t[i].last}} {
			if l.to >= 0 {
				b = fmt.Appendf(b, " /%s %d 0 R", l.key, number(l.to))
			}
		}
		if n := t[i].open; n > 0 {
			if e.Closed {
				n = -n // folded: the sign says so
			}
			b = fmt.Appendf(b, " /Count %d", n)
		}
		b = fmt.Appendf(b, " /Dest [%d 0 R /XYZ 0 ", pageObject(e.Page))
		b = appendNum(b, float64(d.Pages[e.Page].H-e.Y)*ptPerMm, 2)
		add(append(b, "null]>>"...))
	}
	return root
}
