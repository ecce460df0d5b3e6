package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/templates/block"
)

// A share is one way to set the first runs of a step: some stand beside the boxes in its head,
// the rest, as lines, below them over the whole width.
type share struct {
	beside, below []run
	lines         [][]layout.Piece
}

// shares are all ways to do so, that with nothing beside the boxes first. The first rows of a
// table may stand there, and the rest below.
func shares(c *block.Composer, first []run) []share {
	full := make([][]layout.Piece, len(first))
	for i := range first {
		full[i] = linesBelow(c, first[i:i+1])
	}
	var out []share
	for n := range len(first) + 1 {
		out = append(out, share{first[:n], first[n:], full[n:]})
		if n == len(first) {
			continue
		}
		for _, part := range first[n].parted {
			two := part()
			out = append(out, share{slices.Concat(first[:n], two[:1]), slices.Concat(two[1:], first[n+1:]),
				slices.Concat([][]layout.Piece{linesBelow(c, two[1:])}, full[n+1:])})
		}
	}
	return out
}
