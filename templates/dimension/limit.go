package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// limitLines is the limit of a dimension with what hangs on it: the words of the
// limit, the limit for an old part, what to do when it is out, where it comes
// from, and in putting back what one flat of the adjuster does.
//
// What it says about the limit goes on in the line of the limit if all of it fits.
func limitLines(c *block.Composer, d *job.Dim, back bool, width layout.Mm) []layout.Block {
	limit, notes := limitAndNotes(c, d, back, width)
	if n := len(limit); n > 0 && len(notes) > 0 && limit[n-1].H <= layout.Limit.Lead+0.01 && notes[0].H <= layout.Sub.Lead+0.01 {
		row := layout.Middle(4, fitToItems(limit[n-1]), fitToItems(notes[0]))
		if row.W <= width {
			row.W = width
			limit[n-1], notes = row, notes[1:]
		}
	}
	return append(append(limit, notes...), cameBack(c, d, back, width)...)
}

// textLine is a line of text that stands for a dimension.
func textLine(c *block.Composer, d *job.Dim, st layout.Style, text string) layout.Block {
	return c.Line(0, []layout.Run{layout.T(st, text)}, layout.ParaOpts{Ref: d.At})
}

// fitToItems is a block as wide as what stands in it.
func fitToItems(b layout.Block) layout.Block {
	b.W = block.InkRight(b)
	return b
}

// limitAndNotes are the lines of the limit and the small ones that follow.
func limitAndNotes(c *block.Composer, d *job.Dim, back bool, width layout.Mm) (limit, notes []layout.Block) {
	work := d.FoundWork
	if back {
		work = d.LeftWork
	}
	switch {
	case d.Left == nil && d.WatchedOnly() && !back:
		return limitWords(c, d, d.Found, d.FoundBy, width), LimitNotes(c, d, width, back)
	case d.Left == nil:
		word := c.W.Common.RecordOnly
		if back {
			word = c.W.Dimension.OnlyRecorded
		}
		return []layout.Block{textLine(c, d, layout.Limit, word)}, SourcesDiffer(c, d, width)
	case !back && d.FoundIsRecorded():
		text := c.W.Dimension.LeftOnFound.With(leftWords(c, d), c.Page("left "+d.Mark))
		out := layout.Beside(4, textLine(c, d, layout.Limit, c.W.Common.RecordOnly), c.Para(width-40, []layout.Run{layout.T(layout.Sub, text)}, layout.ParaOpts{Ref: d.At}).Pad(0.5, 0, 0, 0))
		return append([]layout.Block{out}, oldLimits(c, d, width)...), LimitNotes(c, d, width, false)
	}
	if !back && work.Late != nil {
		return []layout.Block{textLine(c, d, layout.Limit, c.W.Common.RecordOnly), workedLaterLine(c, d, work.Late, width)}, LimitNotes(c, d, width, false)
	}
	return append(limitWords(c, d, d.Left, d.LeftBy, width), oldLimits(c, d, width)...), LimitNotes(c, d, width, back)
}

// leftWords is the limit for closing as text, one for each position where they differ.
func leftWords(c *block.Composer, d *job.Dim) string {
	if len(d.LeftBy) > 0 {
		return ByPosition(c, d, d.LeftBy)
	}
	words := zoned(c, d, d.Left)
	for _, line := range d.Left.Words().Small {
		if !hasBlank(line) {
			words += ", " + PartWords(c.W, line)
		}
	}
	return words
}

// oldLimits are the lines of the limits of an old part, and of one that is mended.
func oldLimits(c *block.Composer, d *job.Dim, width layout.Mm) []layout.Block {
	var out []layout.Block
	for _, old := range []struct {
		limit *reading.Limit
		name  string
	}{{d.Reuse, c.W.Common.OldPart}, {d.Repair, c.W.Common.Mended}} {
		if old.limit == nil {
			continue
		}
		words := old.limit.Words()
		for _, line := range words.Main {
			out = append(out, limitLine(c, d, append([]reading.Part{{Text: old.name}}, line...), width, layout.Limit))
		}
		for _, line := range words.Small {
			if d.Positions.Boxes() > 1 && hasBlank(line) {
				continue // one pair of boxes does not serve several readings
			}
			out = append(out, limitLine(c, d, line, width, layout.Sub))
		}
	}
	return out
}

// limitWords is one limit in words, with its size by letter and grade if it was
// written so, or one for each position.
func limitWords(c *block.Composer, d *job.Dim, l *reading.Limit, by []*reading.Limit, width layout.Mm) []layout.Block {
	if len(by) > 0 {
		return []layout.Block{c.Para(width, []layout.Run{layout.T(layout.Limit, ByPosition(c, d, by))}, layout.ParaOpts{Ref: d.At})}
	}
	var out []layout.Block
	p := l.Words()
	for i, line := range p.Main {
		if zone := d.Zone(l); zone != "" && i == 0 {
			line = append([]reading.Part{{Text: zone + "  "}}, line...)
		}
		out = append(out, limitLine(c, d, line, width, layout.Limit))
	}
	for _, line := range p.Small {
		if d.Positions.Boxes() > 1 && hasBlank(line) {
			continue // one pair of boxes does not serve several readings
		}
		small := limitLine(c, d, line, width, layout.Sub)
		if len(out) == 1 && len(p.Main) == 1 && small.W < width {
			// Boxes in the small line go beside the limit, where there is room.
			main := textLine(c, d, layout.Limit, PartWords(c.W, p.Main[0]))
			if row := layout.Middle(4, main, small); row.W <= width {
				out[0] = row
				continue
			}
		}
		out = append(out, small)
	}
	return out
}

// hasBlank reports whether a piece of a limit is written in by hand.
func hasBlank(line []reading.Part) bool {
	return slices.ContainsFunc(line, func(p reading.Part) bool { return p.Blank != reading.NoBlank })
}

// ByPosition words the limits of each position, those that are alike together.
func ByPosition(c *block.Composer, d *job.Dim, by []*reading.Limit) string {
	var out []string
	for _, x := range d.ByLimit(by) {
		out = append(out, strings.Join(x.Names, ", ")+": "+zoned(c, d, x.Limit))
	}
	return strings.Join(out, " · ")
}

// SourcesDiffer tell what the sources say that differ, the one used first in sight.
func SourcesDiffer(c *block.Composer, d *job.Dim, width layout.Mm) []layout.Block {
	if len(d.Says) == 0 {
		return nil
	}
	w := c.W
	runs := []layout.Run{{Text: w.Dimension.SourcesDiffer, Style: layout.SubBold, Deco: layout.Boxed}}
	for _, s := range d.Says {
		text := "  " + s.Source + ": " + s.Text
		if s.Note != "" {
			text += " (" + s.Note + ")"
		}
		runs = append(runs, layout.T(layout.Sub, text))
		if !s.Used {
			continue
		}
		used := w.Dimension.Used
		if s.Hold != nil {
			used += ", " + w.Dimension.ChosenAt.With(s.Hold.Mark)
		}
		runs = append(runs, layout.T(layout.Sub, " "), layout.Run{Text: used, Style: layout.SubBold, Deco: layout.Inverse})
	}
	return []layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}
}

// LimitNotes are the small lines below a limit.
func LimitNotes(c *block.Composer, d *job.Dim, width layout.Mm, back bool) []layout.Block {
	w := c.W
	var notes []string
	notes = append(notes, adjustNotes(c, d, back)...)
	for _, n := range []struct {
		sentence words.Sentence
		value    string
	}{{w.Common.IfOver, d.Over}, {w.Common.IfUnder, d.Under}, {w.Common.IfOut, d.Out}} {
		if n.value != "" {
			notes = append(notes, n.sentence.With(n.value))
		}
	}
	runs := []layout.Run{}
	if d.Source != "" {
		notes = append(notes, w.Common.Source.With(d.Source))
	}
	if len(notes) > 0 {
		runs = append(runs, layout.T(layout.Sub, strings.Join(notes, " · ")))
	}
	if d.NotSourced() {
		runs = append(runs, layout.T(layout.Sub, " "), layout.Run{Text: w.Common.NotSourced, Style: layout.SubBold, Deco: layout.Boxed})
	}
	if len(runs) == 0 {
		return SourcesDiffer(c, d, width)
	}
	return append([]layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}, SourcesDiffer(c, d, width)...)
}

// limitLine sets one line of a limit: words as text, blanks as boxes of the size
// that the reading has. The value found has its box beside the line already.
func limitLine(c *block.Composer, d *job.Dim, parts []reading.Part, width layout.Mm, st layout.Style) layout.Block {
	if !slices.ContainsFunc(parts, func(p reading.Part) bool { return p.Blank != reading.NoBlank && p.Blank != reading.BlankFound }) {
		return c.Para(width, []layout.Run{layout.T(st, PartWords(c.W, parts))}, layout.ParaOpts{Ref: d.At})
	}
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
	return block.FlowMiddle(row, width)
}

// PartWords is the text of printed pieces without their blanks.
func PartWords(w *words.Catalogue, parts []reading.Part) string {
	var out []string
	for _, p := range parts {
		switch {
		case p.Blank != reading.NoBlank:
		case p.Word != reading.Literal:
			out = append(out, w.Limit[p.Word])
		default:
			out = append(out, p.Text)
		}
	}
	return strings.Join(out, " ")
}

// PlainWords is the main line of a limit as text.
func PlainWords(w *words.Catalogue, l *reading.Limit) string {
	var out []string
	for _, line := range l.Words().Main {
		out = append(out, PartWords(w, line))
	}
	return strings.Join(out, ", ")
}
