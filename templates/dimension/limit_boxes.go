package dimension

import (
	"slices"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// limitBoxes are pieces of one line of a limit that have boxes: in their row as they are, or
// folded into a width.
type limitBoxes struct {
	row  []layout.Block
	fold bool
}

// boxesIn are the boxes of a limit in a width.
func (p *limitParts) boxesIn(width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, b := range p.boxes {
		if b.fold {
			out = append(out, block.FlowMiddle(b.row, width))
		} else {
			out = append(out, b.row...)
		}
	}
	return out
}

// limitLine are the pieces of one line of a limit with boxes: words as text, blanks as boxes of the
// size that the reading has. The value found has its box beside the line already.
func limitLine(c *block.Composer, d *job.Dim, parts []reading.Part, st layout.Style) []layout.Block {
	ends := typedEnds(c, d, parts)
	var row []layout.Block
	var text []reading.Part
	flush := func() {
		if s := PartWords(c.W, text); s != "" {
			row = append(row, textLine(c, d, st, s))
		}
		text = nil
	}
	for _, p := range parts {
		if p.Blank == reading.NoBlank {
			text = append(text, p)
			continue
		}
		if p.Blank == reading.BlankFound && len(parts) > 1 && p.Mark == "" {
			continue
		}
		flush()
		caption := ""
		if p.Mark != "" {
			caption = string(p.Mark)
		}
		side := Side{caption: caption, Copied: p.Mark != ""}
		if len(ends) > 0 && p.Blank == reading.BlankResult {
			side.typed, ends = ends[0], ends[1:]
		}
		row = append(row, Box(c, d, side, caption, false))
	}
	flush()
	return row
}

// hasOwnBlank reports whether a line is written in by hand elsewhere than in the box for
// the value found, which stands beside the limit already.
func hasOwnBlank(parts []reading.Part) bool {
	return slices.ContainsFunc(parts, func(p reading.Part) bool { return p.Blank != reading.NoBlank && p.Blank != reading.BlankFound })
}

// hasBlank reports whether a piece of a limit is written in by hand.
func hasBlank(line []reading.Part) bool {
	return slices.ContainsFunc(line, func(p reading.Part) bool { return p.Blank != reading.NoBlank })
}
