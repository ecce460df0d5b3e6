package step

import (
	"slices"

	"matchmark/layout"
	"matchmark/templates/block"
)

// A share is one way to set the first runs of a step: some stand beside the boxes in its head,
// the rest, as lines, below them over the whole width; high is how high those are when what goes
// beside each other does.
type share struct {
	beside, below []run
	lines         [][]layout.Piece
	high          layout.Mm
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
		below, lines := flowed(c, first[n:], full[n:])
		out = append(out, share{beside: first[:n], below: below, lines: lines})
		if n == len(first) {
			continue
		}
		for _, part := range first[n].parted {
			two := part()
			below, lines := flowed(c, first[n+1:], full[n+1:])
			out = append(out, share{beside: slices.Concat(first[:n], two[:1]), below: slices.Concat(two[1:], below),
				lines: slices.Concat([][]layout.Piece{linesBelow(c, two[1:])}, lines)})
		}
	}
	for i, x := range out {
		out[i].high = settledHeight(c, x.below, x.lines)
	}
	return out
}

// flowed are runs of lines as they stand below each other, with the pieces of each: boxes to tick
// of several verbs flow together, in the order of the verbs, where that takes less height.
func flowed(c *block.Composer, rs []run, lines [][]layout.Piece) ([]run, [][]layout.Piece) {
	var out []run
	var set [][]layout.Piece
	for i := 0; i < len(rs); {
		n := i
		for n < len(rs) && rs[n].guards {
			n++
		}
		if n-i >= 2 {
			one := joinedRun(rs[i:n])
			if below := linesBelow(c, []run{one}); Height(below) < settledHeight(c, rs[i:n], lines[i:n])-0.5 {
				out, set, i = append(out, one), append(set, below), n
				continue
			}
		}
		n = max(n, i+1)
		out, set, i = append(out, rs[i:n]...), append(set, lines[i:n]...), n
	}
	return out, set
}

// joinedRun are the lines of several runs in one, as far down as the last of them.
func joinedRun(rs []run) run {
	one := inWidths(func(width layout.Mm) (out []layout.Block) {
		for _, r := range rs {
			out = append(out, r.lines(width)...)
		}
		return out
	})
	one.guards, one.at = true, rs[len(rs)-1].at
	return one
}

// settledHeight is the height of the lines of runs when those that go beside each other do.
func settledHeight(c *block.Composer, rs []run, lines [][]layout.Piece) layout.Mm {
	var all []layout.Piece
	of := map[int]run{}
	for i, ps := range lines {
		for _, p := range ps {
			of[len(all)] = rs[i]
			all = append(all, p)
		}
	}
	return Height(inOneRow(c, all, of, nil))
}

// flowedRuns are the runs below the row of a step, boxes to tick of several verbs in one where
// they flow together.
func flowedRuns(c *block.Composer, rs []run) []run {
	lines := make([][]layout.Piece, len(rs))
	for i, r := range rs {
		if r.guards {
			lines[i] = linesBelow(c, rs[i:i+1])
		}
	}
	out, _ := flowed(c, rs, lines)
	return out
}
