package templates

import (
	"matchmark/layout"
)

// A columnLine is a block in a column, with the room above it; a head stays with the next.
type columnLine struct {
	block layout.Block
	gap   layout.Mm
	head  bool
}

// Bands are how lines are set in two columns.
type bands struct {
	width, between layout.Mm // of a column, and between the two
	most           layout.Mm // how high a column is at the most, for a band is not parted between pages
	foot           layout.Block
	gap            layout.Mm // above a band
}

// bandParted is what it counts for, in height, that a band ends within a section.
const bandParted layout.Mm = 3

// set sets lines in two columns, to be read down the first and then down the second, in
// bands from edge to edge: of all ways to cut the lines into bands, and each into its columns,
// that which takes the least height.
func (b bands) set(lines []columnLine) []layout.Piece {
	n := len(lines)
	below := b.gap + b.foot.H + footGap
	least := make([]layout.Mm, n+1) // of all lines from one that begins a band
	ends, cuts := make([]int, n), make([]int, n)
	for i := n - 1; i >= 0; i-- {
		for to := i + 1; to <= n; to++ {
			cut, high := balanced(lines[i:to])
			if to > i+1 && high > b.most {
				break
			}
			cost := high + below + least[to]
			if lines[to-1].head || to < n && !lines[to].head {
				cost += bandParted
			}
			if ends[i] == 0 || cost < least[i] && !lines[to-1].head {
				least[i], ends[i], cuts[i] = cost, to, i+cut
			}
		}
	}
	var out []layout.Piece
	for i := 0; i < n; i = ends[i] {
		left := columnOf(lines[i:cuts[i]])
		row := layout.Beside(b.between, left.Fill(b.width, left.H, 0, 0), columnOf(lines[cuts[i]:ends[i]]))
		out = append(out, layout.Piece{Block: layout.Above(footGap, row, b.foot), Gap: b.gap})
	}
	return out
}

// footGap is the room between a band and what stands at its foot.
const footGap layout.Mm = 1

// balanced cuts lines in two columns so that the higher one is as low as it can be. It gives
// the first line of the second column and the height.
func balanced(lines []columnLine) (cut int, high layout.Mm) {
	cut, high = len(lines), columnHeight(lines)
	all, left := high, layout.Mm(0)
	for i := 1; i < len(lines); i++ {
		left += lines[i-1].block.H
		if i > 1 {
			left += lines[i-1].gap
		}
		if lines[i-1].head {
			continue
		}
		if h := max(left, all-left-lines[i].gap); h < high {
			cut, high = i, h
		}
	}
	return cut, high
}

// columnHeight is how high lines are in one column; above the first there is no room.
func columnHeight(lines []columnLine) (h layout.Mm) {
	for i, l := range lines {
		if i > 0 {
			h += l.gap
		}
		h += l.block.H
	}
	return h
}

// columnOf sets lines in one column.
func columnOf(lines []columnLine) layout.Block {
	var out []layout.Block
	for i, l := range lines {
		if i > 0 {
			l.block = l.block.Pad(l.gap, 0, 0, 0)
		}
		out = append(out, l.block)
	}
	return layout.Above(0, out...)
}
