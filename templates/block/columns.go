package block

import (
	"matchmark/layout"
)

// TwoColumns sets short lines in two columns of equal height, as near as they come, to be
// read down the first and then down the second; set gives the lines for a width.
func (c *Composer) TwoColumns(gap layout.Mm, set func(width layout.Mm) []layout.Block) layout.Block {
	width := (c.Span - layout.GapX) / 2
	lines := set(width)
	total := layout.Above(gap, lines...).H
	cut := 0
	for cut < len(lines) && layout.Above(gap, lines[:cut]...).H < total/2 {
		cut++
	}
	if cut == len(lines) {
		return layout.Above(gap, set(c.Span)...)
	}
	left := layout.Above(gap, lines[:cut]...)
	return layout.Beside(layout.GapX, left.Fill(width, left.H, 0, 0), layout.Above(gap, lines[cut:]...))
}
