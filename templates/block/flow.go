package block

import (
	"matchmark/layout"
)

// FlowRow sets blocks from left to right and begins a new row where the width
// ends.
func FlowRow(all []layout.Block, width layout.Mm) layout.Block {
	in := Rows(all, width)
	rows := make([]layout.Block, len(in))
	for i, r := range in {
		rows[i] = layout.Bottom(layout.GapX, r...)
	}
	return layout.Above(layout.GapY, rows...)
}

// Rows are the rows of FlowRow, parts of all: they are not written to.
func Rows(all []layout.Block, width layout.Mm) [][]layout.Block {
	var rows [][]layout.Block
	from := 0
	for i := 1; i <= len(all); i++ {
		if i == len(all) || !(RowWidth(all[from:i]) + layout.GapX + all[i].W).Fits(width) {
			rows = append(rows, all[from:i:i])
			from = i
		}
	}
	return rows
}

// RowWidth is the width of blocks beside each other, with the gaps between boxes.
func RowWidth(row []layout.Block) layout.Mm {
	w := layout.Mm(max(len(row)-1, 0)) * layout.GapX
	for _, b := range row {
		w += b.W
	}
	return w
}

// FlowMiddle sets blocks beside each other, their middles on a level, and begins
// a new row where the width ends.
func FlowMiddle(all []layout.Block, width layout.Mm) layout.Block {
	const gap = 2
	var rows, row []layout.Block
	used := layout.Mm(0)
	for _, b := range all {
		if len(row) > 0 && used+gap+b.W > width {
			rows = append(rows, layout.Middle(gap, row...))
			row, used = nil, 0
		}
		row = append(row, b)
		used += gap + b.W
	}
	return layout.Above(layout.GapY, append(rows, layout.Middle(gap, row...))...)
}

// InkRight is how far to the right anything in a block reaches.
func InkRight(b layout.Block) layout.Mm {
	w := layout.Mm(0)
	b.Each(func(it layout.Item) {
		_, _, right, _ := it.Bounds()
		w = max(w, right)
	})
	return w
}
