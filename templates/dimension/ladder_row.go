package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/packs/units"
	"matchmark/templates/block"
)

// rungsInRows sets a ladder from left to right in as few rows as it takes, above the boxes of
// each line what it takes; nothing where a line is wider than the room.
func rungsInRows(c *block.Composer, d *job.Dim, across []layout.Block, end ladderEnd, width layout.Mm) layout.Block {
	const gap = 2
	pieces := slices.Clone(across)
	tail := unitAndLimit(c, d, end.limit, width)
	last := len(pieces) - 1
	pieces[last] = layout.Bottom(gap, pieces[last], tail.Pad(0, 0, 2, 0))
	if end.position != "" {
		pieces[0] = layout.Bottom(gap, c.Words(layout.Strong, end.position).Pad(0, 0, 2.2, 0), pieces[0])
	}
	rows := [][]layout.Block{nil}
	used := layout.Mm(0)
	for _, p := range pieces {
		if p.W > width {
			return layout.Block{}
		}
		n := len(rows) - 1
		if len(rows[n]) > 0 && used+p.W > width {
			rows, n, used = append(rows, nil), n+1, 0
		}
		rows[n] = append(rows[n], p)
		used += p.W + gap
	}
	var out []layout.Block
	for _, r := range rows {
		out = append(out, layout.Bottom(gap, r...))
	}
	return layout.Above(layout.GapY, out...)
}

// acrossLabels are how wide what a line takes may run above its boxes at the least: wider ones
// have fewer lines where the row has room for them.
var acrossLabels = []layout.Mm{30, 45, 60}

// rungsAcross are the lines of a ladder, each with its sign before its boxes and what it
// takes above them, in each of those widths.
func rungsAcross(c *block.Composer, d *job.Dim, l *job.Ladder, end ladderEnd) [][]layout.Block {
	var out [][]layout.Block
	for _, least := range acrossLabels {
		out = append(out, rungsLabelled(c, d, l, end, least))
	}
	return out
}

func rungsLabelled(c *block.Composer, d *job.Dim, l *job.Ladder, end ladderEnd, leastLabel layout.Mm) []layout.Block {
	var out []layout.Block
	for i, r := range c.Filled.Rungs(l, end.at) {
		boxes, label := rungPieces(c, d, l, r, i == len(l.Rungs)-1, end, true)
		line := layout.Bottom(2, boxes...)
		if label != "" {
			w := max(line.W, leastLabel)
			text := c.Para(w, []layout.Run{layout.T(layout.Caption, label)}, layout.ParaOpts{Ref: d.At})
			w = max(line.W, block.InkRight(text))
			line = layout.Above(0.3, text, line)
			line.W = w
		}
		if sign := signText[r.Sign]; sign != "" {
			line = layout.Bottom(1.5, c.Line(0, []layout.Run{layout.T(layout.Limit, sign)}, layout.ParaOpts{Ref: d.At, Role: roleSum}).Pad(0, 0, 2, 0), line)
		}
		out = append(out, line)
	}
	return out
}

// roundedTo says behind a box to which figure its number is rounded, in two lines.
func roundedTo(c *block.Composer, d *job.Dim, box reading.Box) layout.Block {
	figure := "1"
	if box.After > 0 {
		figure = units.ForPaper("0." + strings.Repeat("0", box.After-1) + "1")
	}
	text := c.W.Ladder.RoundedTo.With(figure)
	width := foldedWidth(c, layout.SubBold, []string{text}, 2)
	return c.Para(width, []layout.Run{layout.T(layout.SubBold, text)}, layout.ParaOpts{Ref: d.At, Role: roleSum}).Pad(0, 0, 0.6, 0)
}
