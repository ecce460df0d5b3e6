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

// limitLines is the limit of a dimension with what hangs on it, on a sheet of its own:
// the words of the limit, the limit for an old part, what to do when it is out, where
// it comes from, and in putting back what one flat of the adjuster does.
func limitLines(c *block.Composer, d *job.Dim, back bool, width layout.Mm) []layout.Block {
	p := limitOf(c, d, back, false)
	p.notes = append(p.notes, p.leftOn(c, d)...)
	var runs []layout.Run
	if runs = p.runs(); len(runs) > 0 {
		runs = append(runs[1:], layout.T(layout.Sub, "   "))
	}
	notes := joined(p.notes, noteRuns(c, d, back))
	var out []layout.Block
	if runs = append(runs, notes...); len(runs) > 0 {
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: d.At}))
	}
	return append(append(out, p.boxesIn(width)...), append(SourcesDiffer(c, d, width), cameBack(c, d, back, width)...)...)
}

// runs are the lines of a limit one behind the other, parted by dots: "mean 0.07 – 0.12 mm spread
// at most 0.03 mm old part" left open what was the limit of what.
func (p *limitParts) runs() (runs []layout.Run) {
	parted := layout.T(layout.Body, "   ")
	for _, l := range p.lines {
		runs = append(runs, parted, layout.T(l.style, l.text))
		parted = layout.T(layout.Body, " · ")
	}
	return runs
}

// joined sets texts before runs, parted by dots.
func joined(texts []string, runs []layout.Run) []layout.Run {
	if len(texts) == 0 {
		return runs
	}
	text := strings.Join(texts, " · ")
	if len(runs) > 0 && runs[0].Deco == layout.Plain {
		text += " · "
	}
	return append([]layout.Run{layout.T(layout.Sub, text)}, runs...)
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

// A limitText is a line of a limit in words.
type limitText struct {
	text  string
	style layout.Style
}

// limitParts is a limit as it is printed: lines of words, lines with boxes of their own,
// and what is told in small type.
type limitParts struct {
	lines []limitText
	boxes []limitBoxes
	notes []string
	// before says that the names of boxes stand before them.
	before bool
	// later words the limit of what is left, of a reading that is only recorded, with the
	// pages where it is; nil for another one.
	later func(pages string) string
}

// limitOf is the limit of a dimension of a content, worded once for all widths.
func (k content) limitOf(d *job.Dim, before bool) *limitParts {
	return once(k.tried.worded, limitKey{d, before}, func() *limitParts {
		p := limitOf(k.Composer, d, k.back, before)
		return &p
	})
}

// limitOf is the limit of a dimension, with the limit for an old part; the names of its
// boxes stand above them, or before.
func limitOf(c *block.Composer, d *job.Dim, back, before bool) limitParts {
	work := d.FoundWork
	if back {
		work = d.LeftWork
	}
	p := limitParts{before: before}
	word := func(text string) { p.lines = append(p.lines, limitText{text, layout.Limit}) }
	switch {
	case d.Left == nil && d.WatchedOnly() && !back:
		p.add(c, d, d.Found, d.FoundBy, "")
	case d.Left == nil && back:
		word(c.W.Dimension.OnlyRecorded)
	case d.Left == nil:
		word(c.W.Common.RecordOnly)
	case !back && d.FoundIsRecorded():
		word(c.W.Common.RecordOnly)
		p.later = func(pages string) string { return leftOnFound(c, d, pages) }
		p.old(c, d)
	case !back && work.Late != nil:
		word(c.W.Common.RecordOnly)
		p.later = func(pages string) string {
			return c.W.Dimension.WorkedLater.With(PlainWords(c.W, d.Left), work.Late.Dims[0].Mark, pages)
		}
	default:
		p.add(c, d, d.Left, d.LeftBy, "")
		p.old(c, d)
	}
	return p
}

// old puts in the limits of an old part, and of one that is mended.
func (p *limitParts) old(c *block.Composer, d *job.Dim) {
	for _, x := range []struct {
		limit *reading.Limit
		name  string
	}{{d.Reuse, c.W.Common.OldPart}, {d.Repair, c.W.Common.Mended}} {
		if p.add(c, d, x.limit, nil, x.name); x.limit != nil && d.EndAsNew(x.limit) {
			p.lines = append(p.lines, limitText{c.W.Common.EndAsNew, layout.Sub})
		}
	}
}

// WornWords is the limit for an old or a mended part as text, with what it leaves to that for
// new ones.
func WornWords(c *block.Composer, d *job.Dim, l *reading.Limit) string {
	words := zoned(c, d, l)
	if d.EndAsNew(l) {
		words += ", " + c.W.Common.EndAsNew
	}
	return words
}

// OldWords sets the name of an old or mended part once before the words of its limit.
func OldWords(w *words.Catalogue, name string, l *reading.Limit, said string) string {
	if len(l.Tests) > 1 {
		return name + w.Common.Colon + said
	}
	return name + " " + said
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

// add puts in one limit in words, with its size by letter and grade if it was written
// so, or one for each position.
func (p *limitParts) add(c *block.Composer, d *job.Dim, l *reading.Limit, by []*reading.Limit, name string) {
	if l == nil {
		return
	}
	if len(by) > 0 {
		p.lines = append(p.lines, limitText{ByPosition(c, d, by), layout.Limit})
		return
	}
	words := l.Words()
	if name != "" && !slices.ContainsFunc(words.Main, hasOwnBlank) {
		p.lines = append(p.lines, limitText{OldWords(c.W, name, l, PlainWords(c.W, l)), layout.Limit})
		words.Main = nil
	}
	for i, line := range words.Main {
		switch zone := zone(d, l); {
		case name != "" && i == 0:
			line = append([]reading.Part{{Text: name}}, line...)
		case zone != "" && i == 0:
			line = append([]reading.Part{{Text: zone + "  "}}, line...)
		}
		p.line(c, d, line, layout.Limit)
	}
	for _, line := range words.Small {
		if d.Positions.Boxes() > 1 && hasBlank(line) {
			continue // one pair of boxes does not serve several readings
		}
		if slices.ContainsFunc(line, func(p reading.Part) bool { return p.Blank == reading.BlankFound }) {
			p.boxes = append(p.boxes, limitBoxes{row: foundEnds(c, d, l, line, p.before)})
			continue
		}
		p.line(c, d, line, layout.Sub)
	}
}

// line puts in one line of a limit: words as text, blanks as boxes.
func (p *limitParts) line(c *block.Composer, d *job.Dim, parts []reading.Part, st layout.Style) {
	if hasOwnBlank(parts) {
		p.boxes = append(p.boxes, limitBoxes{row: limitLine(c, d, parts, st), fold: true})
		return
	}
	p.lines = append(p.lines, limitText{PartWords(c.W, parts), st})
}

// ByPosition words the limits of each position, those that are alike together.
func ByPosition(c *block.Composer, d *job.Dim, by []*reading.Limit) string {
	var out []string
	for _, x := range d.ByLimit(by) {
		out = append(out, strings.Join(x.Names, ", ")+c.W.Common.Colon+zoned(c, d, x.Limit))
	}
	return strings.Join(out, " · ")
}

// LimitNotes are the small lines below a limit.
func LimitNotes(c *block.Composer, d *job.Dim, width layout.Mm, back bool) []layout.Block {
	runs := noteRuns(c, d, back)
	if len(runs) == 0 {
		return SourcesDiffer(c, d, width)
	}
	return append([]layout.Block{c.Para(width, runs, layout.ParaOpts{Ref: d.At})}, SourcesDiffer(c, d, width)...)
}

// noteRuns say how an adjuster is used, what to do when a reading is out, and where its
// limit comes from; nothing for a reading that is only recorded.
func noteRuns(c *block.Composer, d *job.Dim, back bool) []layout.Run {
	if d.Left == nil && (back || !d.WatchedOnly()) {
		return nil
	}
	w := c.W
	notes := adjustNotes(c, d, back)
	type act struct {
		sentence words.Sentence
		does     string
	}
	acts := []act{{w.Common.IfOver, d.Over}, {w.Common.IfUnder, d.Under}, {w.Common.IfOut, d.Out}}
	if !back && d.FoundOut != "" {
		acts = []act{{w.Common.IfOut, d.FoundOut}}
	}
	for _, a := range acts {
		if a.does != "" {
			notes = append(notes, a.sentence.With(block.Together(a.does)))
		}
	}
	if d.Source != "" {
		notes = append(notes, w.Common.Source.With(d.Source))
	}
	var runs []layout.Run
	if len(notes) > 0 {
		runs = append(runs, layout.T(layout.Sub, strings.Join(notes, " · ")))
	}
	if d.NotSourced() {
		if len(runs) > 0 {
			runs = append(runs, layout.T(layout.Sub, " "))
		}
		runs = append(runs, layout.Run{Text: w.Common.NotSourced, Style: layout.SubBold, Deco: layout.Boxed})
	}
	return runs
}

// PartWords is the text of printed pieces without their blanks.
func PartWords(w *words.Catalogue, parts []reading.Part) string {
	var out []string
	for _, p := range parts {
		switch {
		case p.Blank != reading.NoBlank:
		case p.Word != reading.Literal:
			args := make([]string, len(p.Args))
			for i, a := range p.Args {
				args[i] = PartWords(w, a)
			}
			out = append(out, w.Limit[p.Word].With(args...))
		default:
			out = append(out, w.Unit(p.Text))
		}
	}
	return held(strings.Join(out, " "))
}

// PlainWords is the main line of a limit as text.
func PlainWords(w *words.Catalogue, l *reading.Limit) string {
	var out []string
	for _, line := range l.Words().Main {
		out = append(out, PartWords(w, line))
	}
	return strings.Join(out, ", ")
}
