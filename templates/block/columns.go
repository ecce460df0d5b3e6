package block

import (
	"matchmark/layout"
)

// Bands sets lines in two columns, to be read down the first and then down the second: in
// bands no higher than most, as far as the lines go, so that a page may end between them.
// set gives the lines for a width.
func (c *Composer) Bands(gap, most layout.Mm, set func(width layout.Mm) []layout.Block) []layout.Block {
	width := (c.Span - layout.GapX) / 2
	lines := set(width)
	n := max(int(layout.Above(gap, lines...).H/2/most+1), 1)
	var out []layout.Block
	for ; n > 0 && len(lines) > 0; n-- {
		part := layout.Above(gap, lines...).H / layout.Mm(n)
		to := 1
		for to < len(lines) && (n == 1 || layout.Above(gap, lines[:to+1]...).H <= part) {
			to++
		}
		out = append(out, columns(gap, width, lines[:to]))
		lines = lines[to:]
	}
	return out
}

// columns sets lines in two columns, cut where the higher of the two is lowest.
func columns(gap, width layout.Mm, lines []layout.Block) layout.Block {
	var best layout.Block
	for cut := len(lines); cut > 0; cut-- {
		left, right := layout.Above(gap, lines[:cut]...), layout.Above(gap, lines[cut:]...)
		if b := layout.Beside(layout.GapX, left.Fill(width, left.H, 0, 0), right); best.Empty() || b.H < best.H {
			best = b
		}
	}
	return best
}
