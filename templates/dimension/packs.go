package dimension

import (
	"slices"

	"matchmark/layout"
)

// packs has the packs of shims at like places in one table: the names of the leaves once,
// then of each place a row a side, and below it what its leaves are made of, its ends and
// its verdict. Nothing where the leaves do not go beside each other.
func (k content) packs(w way, width layout.Mm) sized {
	c, d := k.Composer, k.d()
	if len(k.entries) < 2 || d.Leaves() == 0 {
		return sized{empty: true}
	}
	names := leafHeads(c, d)
	widths := make([]layout.Mm, len(names))
	mark, captions := layout.Mm(0), []string{}
	for _, e := range k.entries {
		if e.d.Leaves() != d.Leaves() {
			return sized{empty: true}
		}
		mark = max(mark, c.Width(layout.SubBold, e.d.Mark))
		for _, s := range packSides(e) {
			captions = append(captions, leafName(c, e.d, s))
			for i, b := range leafBoxes(c, e.d, s) {
				widths[i] = max(widths[i], b.W)
			}
		}
	}
	for i := range d.Leaves() {
		widths[i] = max(widths[i], leastMaterial)
	}
	labelW := max(mark, foldedWidth(c, layout.Caption, captions, 2)) // below its mark it is no higher than the boxes
	head := layout.Bottom(layout.GapX, heads(c, d, names, widths)...)
	room := width - labelW - labelGap
	if head.W > room {
		return sized{empty: true}
	}
	rows := []sized{}
	for i, e := range k.entries {
		sums, leaves := k.packRows(e, w, widths, labelW, room)
		if i == 0 { // the names stand right above the leaves
			leaves[0] = above(headGap, done(head.At(labelW+labelGap, 0)), leaves[0])
		}
		rows = append(append(rows, sums...), leaves...)
	}
	return above(layout.GapY, above(layout.GapY, rows...), k.lastRow(nil, width))
}

// packRows are the sums and the rows of one place in the table of packs.
func (k content) packRows(e entry, w way, widths []layout.Mm, labelW, room layout.Mm) (summed, out []sized) {
	c := k.Composer
	k.before = true
	sums, ends := limitLadders(c, e.d, *workOf(e.sides), k.before, labelW+labelGap+room)
	for _, b := range sums {
		summed = append(summed, done(b))
	}
	sides := packSides(e)
	leaves := materials(c, e.d, widths[:len(widths)-1], len(sides) > 1, room) // each below its leaf, as a cell of it
	rest := k.packRest(e, w, k.before, ends, room)
	if _, ends := limitLadders(c, e.d, *workOf(e.sides), false, labelW+labelGap+room); len(ends) > 0 {
		// Their names above them where that saves a row.
		named, full := k.packRest(e, w, false, ends, room), labelW+labelGap+room
		if flowRow(full, named).h < flowRow(full, rest).h-rowSaves {
			rest = named
		}
	}
	if one := layout.Beside(layout.GapX, append([]layout.Block{leaves}, rest...)...); len(rest) == 1 && one.W <= room {
		leaves, rest = one, nil
	}
	for i, s := range sides {
		label := rowLabel(c, e.d, layout.Caption, leafName(c, e.d, s), labelW)
		if i == 0 {
			label = layout.Above(0, textLine(c, e.d, layout.SubBold, e.d.Mark), label)
		}
		label.W = labelW
		row := layout.Middle(labelGap, label, cells(leafBoxes(c, e.d, s), widths))
		if i == len(sides)-1 {
			row = layout.Above(0, row, leaves.At(labelW+labelGap, 0))
		}
		out = append(out, done(row))
	}
	return summed, append(out, flowRow(labelW+labelGap+room, rest), k.warm(e, room))
}

// packRest are the boxes for the ends of the limit of a pack, their names above them or before,
// and its verdict.
func (k content) packRest(e entry, w way, before bool, ends []layout.Block, room layout.Mm) []layout.Block {
	rest := append(k.limitOf(e.d, before).boxesIn(room), ends...)
	return slices.Concat(rest, extraItems(k.Composer, e.d, e.sides), k.verdict(e, w))
}

// packSides are the sides of a pack: the difference is that of the sums.
func packSides(e entry) []Side {
	return slices.DeleteFunc(slices.Clone(e.sides), func(s Side) bool { return s.signed })
}
