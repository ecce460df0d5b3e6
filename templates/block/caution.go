package block

import (
	"cmp"
	"strings"

	"matchmark/layout"
	"matchmark/layout/sign"
	"matchmark/packs/job"
	"matchmark/templates/words"
)

// Caution is the hazard note before a step, short: signal word, signs in one row,
// the hazard, how to keep clear of it, and where it stands in full with the rule
// it leans on; where the words that say so take a line of their own, by its page alone.
func (c *Composer) Caution(n *job.Caution) layout.Block {
	n = c.Note(n)
	text := cmp.Or(n.Short, n.Avoid)
	page := c.Page("caution " + n.Key)
	full, short := c.W.Cautions.InFull.With(page), c.W.Front.PageNo.With(page)
	note := c.shortCaution(n, shortNote, text, full)
	for _, other := range []layout.Block{c.shortCaution(n, lowNote, text, full), c.shortCaution(n, shortNote, text, short), c.shortCaution(n, lowNote, text, short)} {
		if other.H < note.H-0.5 {
			note = other
		}
	}
	return note
}

// CautionAgain is a note that has stood in the section before: signal word, signs, the
// hazard and the first sentence of how to keep clear of it, or all where that takes no
// more height.
func (c *Composer) CautionAgain(n *job.Caution) layout.Block {
	n = c.Note(n)
	text := cmp.Or(n.Short, n.Avoid)
	first := text
	if head, _, more := strings.Cut(text, ". "); more {
		first = head + "."
	}
	full := c.W.Front.PageNo.With(c.Page("caution " + n.Key)) // that the whole text stands there has been said
	all, again := c.shortCaution(n, lowNote, text, full), c.shortCaution(n, lowNote, first, full)
	if all.H < again.H+0.5 {
		return all
	}
	return again
}

// CautionsInRow are the notes of a step as they stand again on a page that it goes on to,
// each told in full before it: signal words, signs and hazards in one row where they fit, a
// long hazard in several lines.
func (c *Composer) CautionsInRow(notes []*job.Caution) layout.Block {
	const gap layout.Mm = 1.2
	width := c.Span - 3
	var row []layout.Block
	last := ""
	for _, n := range notes {
		n = c.Note(n)
		one := append([]layout.Block{c.signalPlate(n, lowNote)}, c.Signs(n, rowNote)...)
		one = one[:min(len(one), 1+shortSigns)]
		runs := []layout.Run{layout.T(layout.Strong, n.Hazard)}
		if anchor := "caution " + n.Key; last == "" || !c.SamePage(anchor, last) {
			runs = append(runs, layout.T(layout.Sub, "  "+c.W.Cautions.InFull.With(c.Page(anchor))))
			last = anchor
		}
		plate := layout.Middle(gap, one...)
		if other := c.inSecond(n.Hazard, func(s *Second) string { return s.NoteHazard(n) }); other != "" {
			runs = append(runs, layout.T(layout.Sub, "  "+other))
		}
		text, room := c.Line(0, runs, layout.ParaOpts{Ref: noteRef(n)}), width-plate.W-gap
		if text.W > room {
			text = c.Para(room, runs, layout.ParaOpts{Ref: noteRef(n)})
		}
		row = append(row, layout.Middle(gap, plate, text))
	}
	var rows []layout.Block
	for _, r := range Rows(row, width) {
		rows = append(rows, layout.Middle(layout.GapX, r...))
	}
	all := layout.Above(0.6, rows...)
	all.W = width
	return all.Pad(0.5, 1.5, 0.5, 1.5).Border(layout.Rect{Weight: layout.Outline})
}

// shortCaution is a note before a step with its signs in a height; full says where the whole
// text stands.
func (c *Composer) shortCaution(n *job.Caution, high layout.Mm, text, full string) layout.Block {
	runs := []layout.Run{
		layout.T(layout.Strong, n.Hazard+" "), layout.T(layout.Body, text),
		layout.T(layout.Sub, "  "+full),
	}
	runs = append(runs, c.Under(n.Hazard+" "+cmp.Or(n.Short, n.Avoid), func(s *Second) string { return s.NoteText(n) })...)
	signs := c.Signs(n, high)
	signs = signs[:min(len(signs), shortSigns)]
	row := layout.Middle(1.2, signs...)
	return c.note(n, row, c.Para(c.noteWidth(n, row), runs, layout.ParaOpts{Ref: noteRef(n)}))
}

// Note is a hazard note in the language of the paper. Those that the program brings
// along, and what an author keeps of one, have the site's fire watch and heavy mass put in.
func (c *Composer) Note(n *job.Caution) *job.Caution {
	key := noteKey{n, c.W}
	if note, known := c.Chosen(key); known {
		return note.(*job.Caution)
	}
	note := c.putIn(n)
	c.Choose(key, note)
	return note
}

type noteKey struct {
	note *job.Caution
	w    *words.Catalogue
}

func (c *Composer) putIn(n *job.Caution) *job.Caution {
	site := c.Job.Site
	fill := strings.NewReplacer("{watch}", site.FireWatch.Print(), "{heavy}", site.Heavy.Print())
	out := *n
	for _, text := range []*string{&out.Hazard, &out.Result, &out.Short, &out.Avoid, &out.Rule} {
		*text = fill.Replace(c.W.Said(*text))
	}
	return &out
}

// Heights of the signs of a note before a step, in one line before a step, where the panel of
// every note on a sheet of work is as high, and in a row of several; of the panel and of the
// signs in full; and how many signs stand before a step: those of the hazard come first.
const (
	shortNote  layout.Mm = 8.45
	lowNote    layout.Mm = 6
	rowNote    layout.Mm = 5.5
	FullPlate  layout.Mm = 7
	FullSigns  layout.Mm = 9
	shortSigns int       = 3
)

// NoteInFull is the hazard note on the sheet of cautions over a width: the signal word with
// the signs, and below them what happens, the rule, and the steps before which it stands; who
// has the last word stands above all notes.
func (c *Composer) NoteInFull(n *job.Caution, width layout.Mm, runs []layout.Run, before string) layout.Block {
	n = c.Note(n)
	head := FlowMiddle(append([]layout.Block{c.signalPlate(n, FullPlate)}, c.Signs(n, FullSigns)...), width-3)
	var small []string
	if len(n.Signs) > 0 {
		small = append(small, "ISO 7010 "+strings.Join(n.Signs, ", "))
	}
	if n.Rule != "" {
		small = append(small, n.Rule)
	}
	if before != "" {
		small = append(small, before)
	}
	runs = append(runs, layout.T(layout.Sub, "  "+strings.Join(small, " · ")))
	b := layout.Above(0.6, head, c.Para(width-3, runs, layout.ParaOpts{Ref: noteRef(n)})).Pad(0.8, 1.5, 0.5, 1.5)
	b.W = width
	return b.Border(layout.Rect{Weight: layout.Outline})
}

// note frames the panel of the signal word, the signs and the text.
func (c *Composer) note(n *job.Caution, signs, text layout.Block) layout.Block {
	return c.framed(c.signalPlate(n, lowNote), signs, text)
}

// framed sets blocks beside each other in the frame of a note.
func (c *Composer) framed(blocks ...layout.Block) layout.Block {
	row := layout.Middle(noteGap, blocks...)
	row.W = c.Span - 3
	return row.Pad(0.25, 1.5, 0.25, 1.5).Border(layout.Rect{Weight: layout.Outline})
}

// noteGap is the room between the panel, the signs and the text of a note.
const noteGap layout.Mm = 2.5

// noteWidth is the width that panel and signs leave for the text.
func (c *Composer) noteWidth(n *job.Caution, signs layout.Block) layout.Mm {
	width := c.Span - c.signalPlate(n, lowNote).W - signs.W - 2*noteGap - 3
	if signs.Empty() {
		width += noteGap
	}
	return width
}

// Signs are the drawn ISO 7010 signs. One that has no drawing is printed by its
// number alone, on the sheet of cautions.
func (c *Composer) Signs(n *job.Caution, high layout.Mm) []layout.Block {
	var out []layout.Block
	for _, code := range n.Signs {
		if b, ok := sign.Sign(code, high, noteRef(n)); ok {
			out = append(out, b)
		}
	}
	return out
}

// noteRef is where a note stands in the file; a built-in one stands nowhere, and
// takes the place of the step that it is printed before.
func noteRef(n *job.Caution) layout.Ref {
	if n.At.IsZero() {
		return nil
	}
	return n.At
}
