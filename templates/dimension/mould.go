package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// A dimension at like places has the same words in all of them but for the figures of marks and
// pages, and all figures are of one width. So what was the lowest way at the first place is it at
// the others as well, and need not be searched for again.

// A mouldKey tells dimensions that are set in the same way.
type mouldKey struct {
	base, reason string
	sides        int
	back, half   bool
	span         layout.Mm
	box          reading.Box
	shape        string
}

// A mould is the way in which a content was found to be lowest, and its size. What is set in it
// must be of that size; else there is something that tells the places apart, and all ways are
// tried.
type mould struct {
	picture int
	choice
	w, h layout.Mm
}

// mouldKey is that of a content that may be set as another one; ok is false for what has more
// than its words and boxes.
func (k content) mouldKey() (key mouldKey, ok bool) {
	e, d := k.entries[0], k.d()
	if k.Kept == nil || k.Filled != nil || k.Last != nil || len(k.entries) > 1 || len(d.Says) > 0 {
		return key, false
	}
	return mouldKey{d.Base, k.reason.caption, len(e.sides), k.back, k.half, k.Span, d.Box, k.shape()}, true
}

// shape is all text of a content, of one or several like places, with its figures alike.
func (k content) shape() string {
	return once(k.tried.shapes, true, func() string {
		var text strings.Builder
		text.Grow(512) // for most
		runs, notes := k.headRuns(true, layout.Run{Text: k.mark()})
		for _, r := range slices.Concat(runs, notes) {
			text.WriteString(r.Text)
		}
		for _, e := range k.entries {
			for _, s := range e.sides {
				text.WriteString(s.caption)
			}
			for _, n := range append(PositionNames(e.d.Positions), e.d.Mark, e.d.Note) {
				text.WriteString(n)
			}
		}
		return layout.Figureless(text.String())
	})
}

// cast sets a content as its mould says; nothing where it does not come out as that did.
func (k content) cast(m mould, full layout.Mm) layout.Block {
	s := newSearch(k.pictures()[m.picture], full)
	s.like = &m
	k.arrange(s, m.choice)
	if s.least.empty {
		return layout.Block{}
	}
	return s.least.make()
}

// A setMouldKey tells the readings of steps that are set in the same way.
type setMouldKey struct {
	setKey
	reason string
	shape  string
}

// A setMould is how the readings of a step were found to be lowest: where the box for the reason
// stands, in which shares of the width some stand beside each other, and what that comes to.
type setMould struct {
	at      place
	shares  map[int]int
	blocks  int
	height  layout.Mm
	misfits int
}

// mouldOf is the key of a step all of whose readings may be set as those of another one.
func mouldOf(c *block.Composer, s setOf, all []member, why reason) (key setMouldKey, ok bool) {
	key = setMouldKey{setKey{n: len(s.ds), kind: s.kind, elsewhere: s.elsewhere, span: c.Span}, why.caption, ""}
	for _, m := range all {
		m.reason = why
		done := m.share()
		one, ok := m.mouldKey()
		done()
		if !ok || m.line != nil {
			return key, false
		}
		key.shape += one.base + "\n" + one.shape + "\n"
	}
	return key, true
}

// cast sets readings as their mould says; nothing where they do not come out as those did.
func (m setMould) cast(c *block.Composer, s setOf, all []member, why reason) []layout.Block {
	if m.at != inBlocks {
		why = reason{}
	}
	out, _, part := paired(slices.Concat(framesOf(all, s.kind, why)...), c.Span, m.shares)
	if len(out) != m.blocks || heightOf(out) != m.height || misfitsOf(out) != m.misfits {
		return nil
	}
	part()
	return out
}
