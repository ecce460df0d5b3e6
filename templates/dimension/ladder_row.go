package dimension

import (
	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
)

// rungsInRow sets a whole ladder in one row, above the boxes of each line what it takes;
// nothing where that is wider than the room.
func rungsInRow(c *block.Composer, d *job.Dim, l *job.Ladder, end ladderEnd, width layout.Mm) layout.Block {
	const leastLabel = 30
	var row []layout.Block
	for i, r := range l.Rungs {
		boxes, label := rungPieces(c, d, l, r, i == len(l.Rungs)-1, end, true)
		line := layout.Bottom(2, boxes...)
		if label != "" {
			w := max(line.W, leastLabel)
			line = layout.Above(0.3, c.Para(w, []layout.Run{layout.T(layout.Caption, label)}, layout.ParaOpts{Ref: d.At}), line)
			line.W = w
		}
		if sign := signText[r.Sign]; sign != "" {
			line = layout.Bottom(1.5, c.Line(0, []layout.Run{layout.T(layout.Limit, sign)}, layout.ParaOpts{Ref: d.At, Role: roleSum}).Pad(0, 0, 2, 0), line)
		}
		row = append(row, line)
	}
	tail := unitAndLimit(c, d, end.limit, width)
	row = append(row, tail.Pad(0, 0, 2, 0))
	if end.position != "" {
		row = append([]layout.Block{c.Words(layout.Strong, end.position).Pad(0, 0, 2.2, 0)}, row...)
	}
	if one := layout.Bottom(2, row...); one.W <= width {
		return one
	}
	return layout.Block{}
}
