package dimension

import (
	"strconv"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// leafBoxes are the boxes of the leaves of one side and that of their sum.
func leafBoxes(c *block.Composer, d *job.Dim, s Side) []layout.Block {
	row := make([]layout.Block, 0, d.Leaves()+1)
	for i := range d.Leaves() {
		leaf := s.on(i)
		leaf.kind = job.LeafBlank
		row = append(row, Box(c, d, leaf, "", false))
	}
	return append(row, Box(c, d, s, "", false))
}

// leafHeads are the names of the leaves and of their sum.
func leafHeads(c *block.Composer, d *job.Dim) []string {
	var out []string
	for i := range d.Leaves() {
		out = append(out, c.W.Shims.Leaf.With(strconv.Itoa(i+1)))
	}
	return append(out, withUnit(c, d, c.W.Shims.SumOfLeaves))
}

// leafName is the name of the row of leaves of a side.
func leafName(c *block.Composer, d *job.Dim, s Side) string {
	if s.Copied {
		return c.W.Common.CopyFound.With(c.Page("found " + d.Mark))
	}
	return s.caption
}

// A leafTable has the leaves of a pack beside each other with their sum at the end, one row a
// side, in columns behind the names of the rows.
type leafTable struct {
	rows   layout.Block
	widths []layout.Mm
	labelW layout.Mm
}

func leafTableOf(c *block.Composer, d *job.Dim, sides []Side) leafTable {
	var boxes [][]layout.Block
	var names []string
	leaves := leafHeads(c, d)
	widths := make([]layout.Mm, len(leaves))
	for _, s := range sides {
		row := leafBoxes(c, d, s)
		for i, b := range row {
			widths[i] = max(widths[i], b.W, leastMaterial)
		}
		boxes = append(boxes, row)
		names = append(names, leafName(c, d, s))
	}
	head := layout.Bottom(layout.GapX, heads(c, d, leaves, widths)...)
	labelW := foldedWidth(c, layout.Caption, names, labelLines(layout.Caption))
	out := []layout.Block{}
	for i, row := range boxes {
		out = append(out, layout.Middle(labelGap, rowLabel(c, d, layout.Caption, names[i], labelW), cells(row, widths)))
	}
	return leafTable{layout.Above(headGap, head.At(labelW+labelGap, 0), layout.Above(layout.GapY, out...)), widths, labelW}
}

// below are the boxes below the table, each for what its leaf is made of or marked with.
func (t leafTable) below(c *block.Composer, d *job.Dim, sides []Side, width layout.Mm) layout.Block {
	indent := t.labelW + labelGap
	return materials(c, d, t.widths[:len(t.widths)-1], len(sides) > 1, width-indent).At(indent, 0)
}

// materials are the boxes for what each leaf is made of or marked with, in their widths, and
// in putting back whether the old pack stays.
func materials(c *block.Composer, d *job.Dim, widths []layout.Mm, back bool, width layout.Mm) layout.Block {
	var row []layout.Block
	for _, w := range widths {
		row = append(row, c.WideBox(layout.RoleWords, w, 1, c.W.Shims.Material, d.At))
	}
	if back {
		room := width - block.RowWidth(row) - layout.GapX
		row = append(row, oldPackStays(c, d, max(min(room, widestOldPack), leastOldPack)).Pad(besideMark, 0, 0, 0))
	}
	return layout.Beside(layout.GapX, row...)
}

// besideMark is how far below the top of those boxes the box to tick stands.
const besideMark layout.Mm = 1.5

// leafRows are the pieces of a pack whose leaves do not all go beside each other, a list a side,
// below each leaf of the last one the box for what it is made of or marked with; and what stands
// below all.
func leafRows(c *block.Composer, d *job.Dim, sides []Side) (rows [][]layout.Block, below []layout.Block) {
	named := func(name string, b layout.Block) layout.Block {
		return layout.Above(headGap, textLine(c, d, layout.Caption, name), b)
	}
	one := max(Box(c, d, Side{}, "", false).W, leastMaterial)
	for n, s := range sides {
		row := leafBoxes(c, d, s)
		for i, name := range leafHeads(c, d) {
			if i == 0 {
				name = spoken(leafName(c, d, s), name)
			}
			row[i] = named(name, row[i])
			if n == len(sides)-1 && i < d.Leaves() {
				row[i] = layout.Above(layout.GapY, row[i], c.WideBox(layout.RoleWords, one, 1, c.W.Shims.Material, d.At))
			}
		}
		rows = append(rows, row)
	}
	if len(sides) > 1 {
		below = append(below, oldPackStays(c, d, 0))
	}
	return rows, below
}
