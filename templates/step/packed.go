package step

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// Boxes to tick are set in rows of up to mostPacked, each as many twelfths of the width as its
// words want, no fewer than leastPacked.
const mostPacked, leastPacked, twelfths = 3, 3, 12

// packed sets the lines of a run, in their order, in the rows that take the least height
// together.
func packed(r run, width layout.Mm) []layout.Block {
	p := packing{width: width}
	for n := leastPacked; n <= twelfths; n++ {
		p.lines[n] = r.lines(p.share(n))
	}
	count := len(p.lines[twelfths])
	best := make([]layout.Mm, count+1) // the height of the lines from each on
	rows := make([][]int, count)       // the shares of the row that begins with each
	for i := count - 1; i >= 0; i-- {
		for n := 1; n <= mostPacked && i+n <= count; n++ {
			shares, high := p.row(i, n, twelfths)
			if all := high + lineGap + best[i+n]; len(shares) > 0 && (rows[i] == nil || all < best[i]-0.01) {
				best[i], rows[i] = all, shares
			}
		}
	}
	var out []layout.Block
	for i := 0; i < count; i += len(rows[i]) {
		var row []layout.Block
		for k, n := range rows[i] {
			line := p.lines[n][i+k]
			row = append(row, line.Fill(p.share(n), line.H, 0, 0))
		}
		out = append(out, layout.Beside(layout.GapX, row...))
	}
	return out
}

// A packing is the lines of a run in each width that they may have, by its twelfths.
type packing struct {
	width layout.Mm
	lines [twelfths + 1][]layout.Block
}

// share is the width of so many twelfths of a row, without the gap to what follows.
func (p packing) share(n int) layout.Mm {
	return (p.width+layout.GapX)*layout.Mm(n)/twelfths - layout.GapX
}

// goesIn reports whether a line fits into its share of a row.
func (p packing) goesIn(i, n int) bool {
	line := p.lines[n][i]
	return len(line.Misfits()) == 0 && line.W.Fits(p.share(n))
}

// row shares some twelfths among n lines from one on so that the row is lowest, and tells how
// high it is then; nothing where they do not go in.
func (p packing) row(from, n, of int) (shares []int, high layout.Mm) {
	if n == 1 {
		return []int{of}, p.lines[of][from].H
	}
	for first := leastPacked; first <= of-(n-1)*leastPacked; first++ {
		line := p.lines[first][from]
		if !p.goesIn(from, first) {
			continue
		}
		rest, h := p.row(from+1, n-1, of-first)
		if n == 2 && !p.goesIn(from+1, of-first) {
			continue
		}
		if h = max(h, line.H); len(rest) > 0 && (shares == nil || h < high-0.01 || h < high+0.01 && first == of/n) {
			shares, high = append([]int{first}, rest...), h
		}
	}
	return shares, high
}

// rowsOf are the rows in which lines of a run take the least height over a width.
func rowsOf(r run, width layout.Mm) []layout.Block {
	rows := r.lines(width)
	if len(rows) == 1 {
		return rows // in less width it is no lower
	}
	full := layout.Above(lineGap, rows...)
	ways := [][]layout.Block{inPairs(r, width), inRows(r, width), asWide(rows, width)}
	if r.guards {
		ways = append(ways, packed(r, width))
	}
	for _, several := range ways {
		if one := layout.Above(lineGap, several...); one.H < full.H-0.5 && len(one.Misfits()) <= len(full.Misfits()) {
			full, rows = one, several
		}
	}
	if r.guards {
		return rows
	}
	return []layout.Block{full}
}

// besideAndBelow sets lines in rows, those with boxes apart as boxes must be.
func besideAndBelow(lines []layout.Block, width layout.Mm) []layout.Block {
	var rows []layout.Block
	for _, row := range block.Rows(lines, width) {
		rows = append(rows, layout.Beside(layout.GapX, row...))
	}
	return rows
}
