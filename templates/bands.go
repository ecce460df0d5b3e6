package templates

import (
	"matchmark/layout"
	"matchmark/templates/block"
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
// bands from edge to edge.
func (b bands) set(lines []columnLine) []layout.Piece {
	var out []layout.Piece
	for _, cut := range b.cut(lines) {
		left := columnOf(lines[cut[0]:cut[1]])
		row := layout.Beside(b.between, left.Fill(b.width, left.H, 0, 0), columnOf(lines[cut[1]:cut[2]]))
		out = append(out, layout.Piece{Block: layout.Above(footGap, row, b.foot), Gap: b.gap})
	}
	return out
}

// cut gives for each band its first line, the first of its second column, and that of the
// next band: of all ways to cut the lines into bands, and each into its columns, that which
// takes the least height.
func (b bands) cut(lines []columnLine) [][3]int {
	n := len(lines)
	below := b.gap + b.foot.H
	if !b.foot.Empty() {
		below += footGap
	}
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
	var out [][3]int
	for i := 0; i < n; i = ends[i] {
		out = append(out, [3]int{i, cuts[i], ends[i]})
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

// twoTables sets the rows of a table of half the width in two columns, each row as high as it
// needs. The last rows of the two end on a level.
func (c *composer) twoTables(g block.Grid, rows []layout.Row) []layout.Piece {
	var lines []columnLine
	for _, p := range g.Bare().Pieces(rows) {
		lines = append(lines, columnLine{block: p.Block})
	}
	t := g.Table
	t.Of = &layout.TableOf{Columns: len(t.Columns)}
	one := t.Pieces(nil)[0].Block
	head := layout.Beside(0, one, one)
	out := []layout.Piece{{Block: head, KeepNext: true}}
	for i := range t.Columns {
		t.Columns[i].Head = layout.Block{}
	}
	for _, cut := range (bands{width: t.Width(), most: mostRows}).cut(lines) {
		high := max(columnHeight(lines[cut[0]:cut[1]]), columnHeight(lines[cut[1]:cut[2]]))
		column := func(from, to int) layout.Block {
			var all []layout.Block
			left := high
			for i := from; i < to; i++ {
				last := t
				if i == to-1 {
					last.MinH = left
				}
				b := last.Pieces(rows[i : i+1])[0].Block
				all, left = append(all, b), left-b.H
			}
			return layout.Above(0, all...)
		}
		row := layout.Beside(0, column(cut[0], cut[1]), column(cut[1], cut[2]))
		out = append(out, layout.Piece{Block: row, Under: []*layout.Block{&head}})
	}
	return out
}

// mostRows is how high the rows of a table in two columns are that a page does not part.
const mostRows layout.Mm = 40
