package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
)

// placeCols are the heads of the columns of a table of like places.
func (k content) placeCols(how placesWay) []string {
	c, first := k.Composer, k.entries[0]
	sides := []string{unitOf(c, first.d)}
	if how.across {
		sides = nil
		for _, s := range first.sides {
			if s.Copied {
				s.caption = c.W.Dimension.Copied // from which page stands behind each mark
			}
			sides = append(sides, withUnit(c, first.d, s.caption))
		}
	}
	var out []string
	for _, s := range sides {
		for _, n := range placeNames(first.d) {
			if how.across {
				out = append(out, spoken(s, n))
			} else {
				out = append(out, spoken(n, s))
			}
		}
	}
	if how.groups {
		for _, g := range groupsOf(first) {
			for _, s := range sides {
				out = append(out, spoken(c.W.Common.Group[g], s))
			}
		}
	}
	return out
}

// placeNames are the names of the readings at one place, an empty one of a single reading.
func placeNames(d *job.Dim) []string {
	if d.Positions.Kind == job.Single {
		return []string{""}
	}
	return PositionNames(d.Positions)
}

// spoken are texts with commas between them.
func spoken(texts ...string) string {
	return strings.Join(slices.DeleteFunc(texts, func(s string) bool { return s == "" }), ", ")
}

// groupsOf are what is worked out from all readings of any side of an entry.
func groupsOf(e entry) []reading.Group {
	var out []reading.Group
	for _, g := range []reading.Group{reading.Mean, reading.Spread, reading.Sum} {
		if slices.ContainsFunc(e.sides, func(s Side) bool { return hasGroup(e.d, g, s) }) {
			out = append(out, g)
		}
	}
	return out
}

// placeRows are the rows of one place.
func (k content) placeRows(e *entry, w way, how placesWay) []placeRow {
	c := k.Composer
	mark := c.Line(0, []layout.Run{layout.T(layout.SubBold, e.d.Mark)}, layout.ParaOpts{Ref: e.d.At})
	small := func(text string) layout.Block {
		return c.Para(foldedWidth(c, layout.Caption, []string{text}, 2), []layout.Run{layout.T(layout.Caption, text)}, layout.ParaOpts{Ref: e.d.At})
	}
	var rows []placeRow
	if how.across {
		one := placeRow{label: mark, boxes: k.placeBoxes(*e, e.sides, how)}
		if slices.ContainsFunc(e.sides, func(s Side) bool { return s.Copied }) {
			one.label = layout.Above(0, mark, small(c.W.Dimension.FoundOn.With(c.Page("found "+e.d.Mark))))
		}
		rows = append(rows, one)
	} else {
		for i, s := range e.sides {
			one := placeRow{label: small(s.caption), boxes: k.placeBoxes(*e, e.sides[i:i+1], how)}
			if i == 0 {
				one.label = layout.Above(0, mark, one.label)
			}
			rows = append(rows, one)
		}
	}
	last := &rows[len(rows)-1]
	last.entry = e
	last.tail = append(last.tail, k.limitOf(e.d, false).boxesIn(k.Span)...)
	if workOf(e.sides) == &e.d.LeftWork {
		last.tail = append(last.tail, adjustItems(c, e.d, false)...)
	}
	if !how.groups {
		last.tail = append(last.tail, groupBoxes(c, e.d, e.sides, true)...)
	}
	last.tail = append(last.tail, moreItems(c, e.d, e.sides)...)
	last.tail = append(last.tail, k.verdict(*e, w)...)
	return rows
}

// placeBoxes are the boxes of some sides of a place, in one row.
func (k content) placeBoxes(e entry, sides []Side, how placesWay) []layout.Block {
	var out []layout.Block
	for _, s := range sides {
		for i := range placeNames(e.d) {
			out = append(out, Box(k.Composer, e.d, s.on(i), "", false))
		}
	}
	if how.groups {
		for _, g := range groupsOf(e) {
			for _, s := range sides {
				var b layout.Block
				if hasGroup(e.d, g, s) {
					b = groupBox(k.Composer, e.d, g, s, "", true)
				}
				out = append(out, b)
			}
		}
	}
	return out
}
