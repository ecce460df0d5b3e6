package pdf

import (
	"fmt"
	"strconv"
)

// write adds the objects of the structure, the first numbered next, and gives the entries
// of the catalogue that lead to them.
func (t *tags) write(next int, add func([]byte)) string {
	root, tree, document := next, next+1, next+2
	number := func(e int) int { return document + 1 + e }
	add(fmt.Appendf(nil, "<</Type /StructTreeRoot /K %d 0 R /ParentTree %d 0 R /ParentTreeNextKey %d>>", document, tree, len(t.pages)))
	b := []byte("<</Nums [")
	for i, elements := range t.pages {
		b = fmt.Appendf(b, "%d [", i)
		for _, e := range elements {
			b = append(strconv.AppendInt(b, int64(number(e)), 10), " 0 R "...)
		}
		b = append(b, "] "...)
	}
	add(append(b, "]>>"...))
	kids := func(of []int) []byte {
		b := []byte(" /K [")
		for _, k := range of {
			if k >= 0 {
				b = append(strconv.AppendInt(b, int64(k), 10), ' ')
			} else {
				b = append(strconv.AppendInt(b, int64(number(^k)), 10), " 0 R "...)
			}
		}
		return append(b, ']')
	}
	add(fmt.Appendf(nil, "<</S /Document /P %d 0 R%s>>", root, kids(t.kids)))
	for _, e := range t.elements {
		b := fmt.Appendf(nil, "<</S /%s /P %d 0 R", e.kind, number(e.parent))
		if e.title != "" {
			b = appendUTF16(append(b, " /T "...), e.title)
		}
		if e.alt != "" {
			b = appendUTF16(append(b, " /Alt "...), e.alt)
		}
		b = append(b, attributes(e)...)
		if e.filled {
			b = fmt.Appendf(b, " /Pg %d 0 R", pageObject(e.page))
		}
		if len(e.kids) > 0 {
			b = append(b, kids(e.kids)...)
		}
		add(append(b, ">>"...))
	}
	return fmt.Sprintf(" /MarkInfo <</Marked true>> /StructTreeRoot %d 0 R", root)
}

// attributes are those of a cell: a head is one of its column.
func attributes(e element) string {
	scope, span := "", ""
	if e.kind == "TH" {
		scope = " /Scope /Column"
	}
	if e.span > 1 {
		span = fmt.Sprintf(" /ColSpan %d", e.span)
	}
	if scope+span == "" {
		return ""
	}
	return " /A <</O /Table" + scope + span + ">>"
}
