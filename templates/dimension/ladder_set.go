package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// A ladderKey tells a ladder of a dimension, a ladderSet is what is the same of it in all widths:
// its lines below each other, and beside each other.
type ladderKey struct {
	d   *job.Dim
	l   *job.Ladder
	end ladderEnd
}

type ladderSet struct {
	lines  []rungLine
	across [][]layout.Block
}

// A rungLine is one line of a ladder with its boxes, and what it takes.
type rungLine struct {
	reading.Rung
	boxes []layout.Block
	label string
}

func rungLines(c *block.Composer, d *job.Dim, l *job.Ladder, end ladderEnd) []rungLine {
	var out []rungLine
	for i, r := range c.Filled.Rungs(l, end.at) {
		boxes, label := rungPieces(c, d, l, r, i == len(l.Rungs)-1, end, false)
		out = append(out, rungLine{r, boxes, label})
	}
	return out
}
