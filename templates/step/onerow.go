package step

import (
	"matchmark/layout"
	"matchmark/templates/block"
)

// lowRow is up to how high lines of a step share a row, leastShare the least width that lines
// are set in to share it, and shareSaves how much height that must save.
const lowRow, leastShare, shareSaves layout.Mm = 12.5, 48, 2

// inOneRow sets lines that leave enough of their row free, and the lines that follow them,
// beside each other: boxes to tick, the free cell at the end of a table. Lines that take a
// row each over the whole width are set narrower where two go in one. Lines
// that are held together for the sake of a reading above them may share a row as well.
func inOneRow(c *block.Composer, ps []layout.Piece, lines map[int]run, held map[int]bool) []layout.Piece {
	var out []layout.Piece
	var alone run // the lines of the last piece, if it has its row alone
	for i, p := range ps {
		r, are := lines[i]
		if n := len(out) - 1; are && i > 0 && (!out[n].KeepNext || held[i-1]) && out[n].Block.H <= lowRow && p.Block.H <= lowRow {
			if _, are := lines[i-1]; are {
				if one := oneRow(c, out[n].Block, p, alone, r); !one.Empty() {
					out[n].Block, out[n].KeepNext, alone = one, p.KeepNext, run{}
					continue
				}
			}
		}
		out, alone = append(out, p), r
	}
	return out
}

// oneRow is a row of lines and of a piece of others below them, empty where there is none:
// as they are, else one of them or both set narrower.
func oneRow(c *block.Composer, above layout.Block, p layout.Piece, of, r run) layout.Block {
	left := block.InkRight(above) + 2*layout.GapX
	if moved := left - block.NumberWidth; moved > 0 && block.InkRight(p.Block)+moved <= c.Span {
		return besideEachOther(c, above, p.Block.Pad(0, 0, 0, moved))
	}
	least := layout.Block{H: min(above.H+p.Gap+p.Block.H-shareSaves, lowRow)}
	take := func(left, right layout.Block) {
		if one := besideEachOther(c, left, right); one.H < least.H && len(one.Misfits()) == 0 {
			least = one
		}
	}
	if !r.narrows() {
		return layout.Block{}
	}
	if width := c.Span - left; width >= leastShare {
		take(above, r.set(width, left))
	}
	if of.narrows() {
		both := c.Span - block.NumberWidth - 2*layout.GapX
		for _, share := range []layout.Mm{1. / 3, 0.5, 2. / 3} {
			width := both * share
			take(of.set(width, block.NumberWidth), r.set(both-width, c.Span-both+width))
		}
	}
	if least.W == 0 {
		return layout.Block{}
	}
	return least
}

// besideEachOther are two blocks over the whole width in one row, their middles on a level.
func besideEachOther(c *block.Composer, a, b layout.Block) layout.Block {
	high := max(a.H, b.H)
	one := layout.Overlay(a.Pad((high-a.H)/2, 0, 0, 0), b.Pad((high-b.H)/2, 0, 0, 0))
	one.W, one.H = c.Span, high
	return one
}

// narrows reports whether a run is lines that are set in any width.
func (r run) narrows() bool { return r.lines != nil && !r.ruled }

// set is a run in a width, so far to the right.
func (r run) set(width, left layout.Mm) layout.Block {
	return layout.Above(lineGap, r.lines(width)...).At(left, 0)
}
