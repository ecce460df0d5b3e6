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

// Bands are how lines are set in two columns: the width of a column, the room between the
// two, what stands at the foot of a band, the room above one, and whether a line may go in
// either column, below those before it, so that both are as low as they can be.
type bands struct {
	width, between layout.Mm
	foot           layout.Block
	gap            layout.Mm
	either         bool
}

// footGap is the room between a band and what stands at its foot.
const footGap layout.Mm = 1

// leastColumn is how much room a page has at the least where the columns of a sheet begin,
// however low their first line is.
const leastColumn layout.Mm = 24

// columnPages sets lines below other pieces of a sheet, in two columns as high as each page
// has room, to be read down the first and then down the second; on the last page the columns
// are as low as they can be. The last piece above, a title, stays with the first.
func (c *composer) columnPages(above []layout.Piece, lines []columnLine, two bands) []layout.Piece {
	if len(lines) == 0 {
		return above
	}
	own := c.own
	own.Name, own.Pieces, own.Follows = "above", above, len(c.before) > 0
	room, page := layout.RoomLeft(c.paper, append(c.before[:len(c.before):len(c.before)], own))
	if page == 0 { // nothing stands above them
		own.Pieces = []layout.Piece{{}}
		_, page = layout.RoomLeft(c.paper, []layout.Sheet{own})
		room = page
	}
	if room -= two.gap; room < two.least(lines) && len(above) > 0 {
		title := above[len(above)-1]
		if title.AtTop != nil {
			title.Block = *title.AtTop
		}
		room = page - title.Block.H - two.gap
	}
	out := above
	for len(lines) > 0 {
		to, left, right := two.onPage(lines, room)
		out = append(out, layout.Piece{Block: layout.Above(footGap, two.beside(left, right), two.foot), Gap: two.gap})
		lines, room = lines[to:], page
	}
	return out
}

// row sets lines in the two columns, those from cut on in the second.
func (b bands) row(lines []columnLine, cut int) layout.Block {
	return b.beside(lines[:cut], lines[cut:])
}

// beside sets the lines of the two columns.
func (b bands) beside(left, right []columnLine) layout.Block {
	first := columnOf(left)
	return layout.Beside(b.between, first.Fill(b.width, first.H, 0, 0), columnOf(right))
}

// least is how much room a page has at the least where these lines begin: the first of
// them goes in, with what a head stays with. Less, and they begin on the next page.
func (b bands) least(lines []columnLine) layout.Mm {
	n := 1
	for n < len(lines) && lines[n-1].head {
		n++
	}
	_, _, high := b.split(lines[:n])
	if !b.foot.Empty() {
		high += footGap + b.foot.H
	}
	return max(leastColumn, high)
}

// onPage is how many lines go on a page with so much room, and what is in the two columns:
// one line at the least, and no head of others below it as the last.
func (b bands) onPage(lines []columnLine, room layout.Mm) (to int, left, right []columnLine) {
	if !b.foot.Empty() {
		room -= footGap + b.foot.H
	}
	to, left = 1, lines[:1]
	for i := 2; i <= len(lines); i++ {
		l, r, high := b.split(lines[:i])
		if high > room {
			break
		}
		if !lines[i-1].head {
			to, left, right = i, l, r
		}
	}
	return to, left, right
}

// split puts lines in the two columns. It gives the height of the higher one.
func (b bands) split(lines []columnLine) (left, right []columnLine, high layout.Mm) {
	if !b.either {
		cut, high := balanced(lines)
		return lines[:cut], lines[cut:], high
	}
	left, right = inEither(lines)
	return left, right, max(columnHeight(left), columnHeight(right))
}

// mostTried is of how many lines all ways to put them in two columns are tried.
const mostTried = 12

// inEither puts each line in one of two columns, below those before it: of all ways that by
// which the higher column is lowest, of very many lines each in the lower column.
func inEither(lines []columnLine) (left, right []columnLine) {
	if len(lines) > mostTried {
		for _, l := range lines {
			if columnHeight(right) < columnHeight(left) {
				right = append(right, l)
			} else {
				left = append(left, l)
			}
		}
		return left, right
	}
	least, best := columnHeight(lines)+1, 0
	for way := range 1 << max(len(lines)-1, 0) { // bit by bit, which lines are in the second column; never the first
		var high [2]layout.Mm
		for i, l := range lines {
			column := way << 1 >> i & 1
			if high[column] > 0 {
				high[column] += l.gap
			}
			high[column] += l.block.H
		}
		if h := max(high[0], high[1]); h < least-0.01 {
			least, best = h, way
		}
	}
	for i, l := range lines {
		if best<<1>>i&1 == 0 {
			left = append(left, l)
		} else {
			right = append(right, l)
		}
	}
	return left, right
}

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

// leastRows cuts rows into bands of two columns, none higher than most: of all ways that
// which takes the least height. It gives for each band its first row, the first of its second
// column, and that of the next band.
func leastRows(lines []columnLine, most layout.Mm) [][3]int {
	n := len(lines)
	least := make([]layout.Mm, n+1) // of all rows from one that begins a band
	ends, cuts := make([]int, n), make([]int, n)
	for i := n - 1; i >= 0; i-- {
		for to := i + 1; to <= n; to++ {
			cut, high := balanced(lines[i:to])
			if to > i+1 && high > most {
				break
			}
			if cost := high + least[to] + bandCost; ends[i] == 0 || cost < least[i] {
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

// bandCost is what a band more counts for, in height: fewer and higher ones are easier to read.
const bandCost layout.Mm = 0.5

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
	for _, cut := range leastRows(lines, mostRows) {
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
const mostRows layout.Mm = 28
