package block

import (
	"matchmark/layout"
)

// FlowRow sets blocks from left to right and begins a new row where the width
// ends.
func FlowRow(all []layout.Block, width layout.Mm) layout.Block {
	return layout.Above(layout.GapY, FlowRows(all, width)...)
}

// FlowRows are the rows of FlowRow.
func FlowRows(all []layout.Block, width layout.Mm) []layout.Block {
	var rows []layout.Block
	var row []layout.Block
	used := layout.Mm(0)
	for _, b := range all {
		if len(row) > 0 && used+layout.GapX+b.W > width {
			rows = append(rows, layout.Bottom(layout.GapX, row...))
			row, used = nil, 0
		}
		if len(row) > 0 {
			used += layout.GapX
		}
		row = append(row, b)
		used += b.W
	}
	return append(rows, layout.Bottom(layout.GapX, row...))
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
	for _, it := range b.Items {
		_, _, right, _ := it.Bounds()
		w = max(w, right)
	}
	return w
}
