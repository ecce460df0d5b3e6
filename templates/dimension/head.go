package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// head is what is measured under which mark, in which state and with what, and what
// follows from its limit.
func (k content) head(w way, width layout.Mm) sized {
	return once(k.tried.heads, headKey{w.limitInHead, width}, func() sized { return k.setHead(w, width) })
}

func (k content) setHead(w way, width layout.Mm) sized {
	c, d := k.Composer, k.d()
	mark := markRun(c, k.mark(), width)
	text := once(k.tried.texts, textKey{w.limitInHead, mark.Style}, func() headText { return k.headText(w.limitInHead, mark) })
	out := []sized{text.in(width)}
	for _, more := range [][]layout.Block{SourcesDiffer(c, d, width), cameBack(c, d, k.back, width), remarks(c, d, width)} {
		for _, b := range more {
			out = append(out, done(b))
		}
	}
	return above(headLines, out...)
}

// mark is that of the dimension, or of all like places.
func (k content) mark() string {
	if len(k.entries) > 1 {
		return k.d().Base
	}
	return k.d().Mark
}

// A headText is the text of a head, in which nothing hangs on its width but how large the
// mark is that it begins with: the heading, its notes, and both in one.
type headText struct{ heading, notes, both *layout.Paragraph }

func (k content) headText(withLimit bool, mark layout.Run) headText {
	c, opts := k.Composer, layout.ParaOpts{Ref: k.d().At}
	runs, notes := k.headRuns(withLimit, mark)
	text := headText{heading: c.Paragraph(runs, opts)}
	if len(notes) > 0 {
		text.notes = c.Paragraph(notes, opts)
		text.both = c.Paragraph(slices.Concat(runs, []layout.Run{layout.T(layout.Sub, "   ")}, notes), opts)
	}
	return text
}

// headRuns are the words of the heading and of its notes.
func (k content) headRuns(withLimit bool, mark layout.Run) (runs, notes []layout.Run) {
	words := once(k.tried.words, true, k.headWords)
	runs = append([]layout.Run{mark, layout.T(layout.Strong, "  ")}, words.what...)
	if withLimit {
		runs = append(runs, words.limit...)
	}
	return runs, words.notes
}

// headWords are the words of a head behind its mark.
type headWords struct{ what, limit, notes []layout.Run }

func (k content) headWords() headWords {
	c, d := k.Composer, k.d()
	words := headWords{what: whatRuns(c, d)}
	limit := k.limitOf(d, false)
	words.limit = limit.runs()
	small := append(append(StateLine(c, d), limit.notes...), limit.leftOn(c, k.dims()...)...)
	if d.Shims != nil {
		small = append(small, stockText(c, d))
	}
	notes := joined(small, noteRuns(c, d, k.back))
	if f := workOf(k.entries[0].sides); f != nil && f.Formula != nil && d.Shims == nil {
		if len(notes) > 0 {
			notes = append(notes, layout.T(layout.Sub, " · "))
		}
		notes = append(notes, layout.Run{Text: sumText(c, k.mark(), f.Formula), Style: layout.SubBold})
	}
	if k.note != "" {
		notes = append(notes, layout.T(layout.Sub, "  "), layout.Run{Text: k.note, Style: layout.SubBold, Deco: layout.Inverse})
	}
	words.notes = slices.Clip(notes)
	return words
}

// in is the heading with its notes in small type below it, or behind it in its last line
// where that takes a line less.
func (t headText) in(width layout.Mm) sized {
	heading := paragraph(t.heading, width)
	if t.notes == nil {
		return heading
	}
	below, behind := above(headLines, heading, paragraph(t.notes, width)), paragraph(t.both, width)
	if behind.h < below.h-lineSaves {
		return behind
	}
	return below
}

// headLines is the room between the paragraphs of a head; lineSaves is how much height notes
// must save to stand in the line of their heading.
const headLines, lineSaves layout.Mm = 0.4, 2

// limit are the pieces of the limit that stand before the boxes.
func (k content) limit(w way, width layout.Mm) []layout.Block {
	if w.limitInHead && len(k.entries) == 1 {
		return listOnce(k.tried.ends, headKey{w.before, width}, func() []layout.Block { return k.limitOf(k.d(), w.before).boxesIn(width) })
	}
	if w.limitInHead {
		return nil
	}
	return listOnce(k.tried.limits, headKey{w.before, width}, func() []layout.Block { return k.setLimit(w.before, width) })
}

func (k content) setLimit(before bool, width layout.Mm) []layout.Block {
	c, d := k.Composer, k.d()
	limit := k.limitOf(d, before)
	var text []layout.Block
	for _, l := range limit.lines {
		room := min(width, max(limitW, longestWord(c, l.style, l.text)))
		text = append(text, c.Para(room, []layout.Run{layout.T(l.style, l.text)}, layout.ParaOpts{Ref: d.At}))
	}
	var out []layout.Block
	if len(text) > 0 {
		limit := fitToItems(layout.Above(0.2, text...))
		out = append(out, limit.Pad(0, 0, min(max(boxHeight-limit.H, 0), 2), 0))
	}
	if len(k.entries) > 1 {
		return out // each place has boxes of its own
	}
	return append(out, limit.boxesIn(width)...)
}

// limitW is the width that a limit takes before its boxes, if none of its words is wider.
const limitW layout.Mm = 46

// markLead is the height of the line that begins with the mark of a dimension: that of its frame.
const markLead layout.Mm = 5

// markRun is the mark of a dimension in its frame, smaller where it is long.
func markRun(c *block.Composer, mark string, width layout.Mm) layout.Run {
	r := layout.Run{Text: mark, Style: layout.StepNo, Deco: layout.Boxed}
	r.Style.Lead = markLead
	if c.Width(r.Style, mark) > width/2 {
		r.Style = layout.SubBold
	}
	return r
}

// whatRuns say what is measured, and between which faces.
func whatRuns(c *block.Composer, d *job.Dim) []layout.Run {
	runs := []layout.Run{layout.T(layout.Strong, d.What)}
	if c.Other != nil && c.Other.DimText(d) != d.What {
		runs = append(runs, layout.T(layout.Sub, "  "+c.Other.DimText(d)))
	}
	if f := faces(c.W, d); f != "" {
		runs = append(runs, layout.T(layout.Sub, " — "+f))
	}
	return runs
}

// remarks are an adjuster that is left alone, and the author's note.
func remarks(c *block.Composer, d *job.Dim, width layout.Mm) []layout.Block {
	var out []layout.Block
	if p := d.Adjuster; p != nil && p.LeaveAlone != "" {
		runs := []layout.Run{{Text: c.W.Dimension.LeaveAlone, Style: layout.SubBold, Deco: layout.Inverse}, layout.T(layout.Body, " "+p.Name+c.W.Common.Colon+p.LeaveAlone)}
		out = append(out, c.Para(width, runs, layout.ParaOpts{Ref: d.At}))
	}
	if d.Note != "" {
		out = append(out, c.Para(width, []layout.Run{layout.T(layout.Body, d.Note)}, layout.ParaOpts{Ref: d.At}))
	}
	return out
}

// Head is what is measured, between which faces, and in which state.
func Head(c *block.Composer, d *job.Dim, note string, width layout.Mm) []layout.Block {
	small := []layout.Run{layout.T(layout.Sub, strings.Join(StateLine(c, d), " · "))}
	if note != "" {
		small = append(small, layout.T(layout.Sub, "  "), layout.Run{Text: note, Style: layout.SubBold, Deco: layout.Inverse})
	}
	out := []layout.Block{c.Para(width, whatRuns(c, d), layout.ParaOpts{Ref: d.At}), c.Para(width, small, layout.ParaOpts{Ref: d.At})}
	return append(out, remarks(c, d, width)...)
}

// faces words the two faces of a dimension, or the one it is of.
func faces(w *words.Catalogue, d *job.Dim) string {
	one := func(f job.Face) string {
		if f.Name == "" {
			return f.Part.Name
		}
		return w.Dimension.FaceOf.With(f.Name, f.Part.Name)
	}
	switch {
	case d.From.Part != nil && d.To.Part == d.From.Part && d.From.Name != "" && d.To.Name != "":
		return w.Dimension.Between.With(d.From.Name, one(d.To))
	case d.From.Part != nil && d.To.Part != nil:
		return w.Dimension.Between.With(one(d.From), one(d.To))
	case d.Of.Part != nil:
		return one(d.Of)
	case d.Stamped.Part != nil:
		return w.Dimension.StampedOn.With(one(d.Stamped))
	}
	return ""
}
