package layout

import (
	"maps"
	"slices"
)

// Settle composes again until the page numbers that were printed are those that
// came out. compose is given the pages of all anchors and the number of pages as
// the last pass found them, nil and 0 at first. Where a page is not known yet it
// should set a number of the usual width. When the pages never come to rest,
// settled is false and the printed numbers may be wrong.
func Settle(compose func(known map[string]int, total int) *Pages) (p *Pages, settled bool) {
	var known map[string]int
	var last [][]Part // alone: the pages themselves would be held while the next are made
	for range maxPasses {
		p = compose(known, len(last))
		parts := make([][]Part, len(p.Frames))
		for i, f := range p.Frames {
			parts[i] = f.Parts
		}
		if sameSheets(parts, last) && maps.Equal(p.Anchors, known) {
			return p, true
		}
		known, last = p.Anchors, parts
	}
	return p, false
}

// sameSheets reports whether two passes made as many pages that carry the same sheets.
func sameSheets(a, b [][]Part) bool {
	return slices.EqualFunc(a, b, func(a, b []Part) bool {
		return slices.EqualFunc(a, b, func(a, b Part) bool { return a.Sheet == b.Sheet })
	})
}
