package dimension

import (
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// Blocks are the readings that a step takes, those of one dimension at like places in one
// block. The box for why readings were not taken stands in the last block where that takes
// no height; else, unless the step has that box elsewhere, where it takes the least: in the
// last block, or in a row that says once which were not taken. row says that it stands there.
func Blocks(c *block.Composer, ds []*job.Dim, kind Kind, at layout.Ref, elsewhere bool) (out []layout.Block, row bool) {
	written := Written(ds, kind)
	plain, within := blocks(c, ds, kind, reasonOf(c, written, at))
	if free(plain, within) {
		return within, false
	}
	if len(written) == 0 || elsewhere {
		return plain, false
	}
	last := notTaken(c, written, at, c.Span-block.NumberWidth).Pad(2, 0, 0, 0).At(block.NumberWidth, 0)
	if len(within) > 0 && heightOf(within) < heightOf(plain)+last.H-rowSaves {
		return within, false
	}
	return append(plain, last), true
}

// Written are the readings that have boxes at the step.
func Written(ds []*job.Dim, kind Kind) []*job.Dim {
	var out []*job.Dim
	for _, d := range ds {
		if !onlyLine(d, kind) {
			out = append(out, d)
		}
	}
	return out
}

func heightOf(bs []layout.Block) (h layout.Mm) {
	for _, b := range bs {
		h += b.H + 1
	}
	return h
}

// A setKey tells which blocks are set: a step takes readings in one order only.
type setKey struct {
	first, last *job.Dim
	n           int
	kind        Kind
	reason      reason
	span        layout.Mm
}

// blocks are the blocks of readings, and the same with the box for the reason in the last of
// them, if there is one. They are asked for several times while a step is set, and set once.
func blocks(c *block.Composer, ds []*job.Dim, kind Kind, why reason) (plain, within []layout.Block) {
	if len(ds) == 0 {
		return nil, nil
	}
	const ofWithin = 1 // Once keeps one list of pieces: this gap tells those with the box apart
	key := setKey{ds[0], ds[len(ds)-1], len(ds), kind, why, c.Span}
	for _, p := range c.Once(key, func() []layout.Piece {
		var pieces []layout.Piece
		plain, within := setBlocks(c, ds, kind, why)
		for _, b := range plain {
			pieces = append(pieces, layout.Piece{Block: b})
		}
		for _, b := range within {
			pieces = append(pieces, layout.Piece{Block: b, Gap: ofWithin})
		}
		return pieces
	}) {
		if p.Gap == ofWithin {
			within = append(within, p.Block)
		} else {
			plain = append(plain, p.Block)
		}
	}
	return plain, within
}

// setBlocks sets the blocks of readings without the box for the reason and, if there is
// one, with it.
func setBlocks(c *block.Composer, ds []*job.Dim, kind Kind, why reason) (plain, within []layout.Block) {
	var frames, with []frameOf
	last := 0 // the last that has boxes
	for i, d := range ds {
		if !onlyLine(d, kind) {
			last = i
		}
	}
	for i := 0; i < len(ds); {
		d := ds[i]
		if onlyLine(d, kind) {
			line := lineOf(c, d, kind)
			frame := frameOf{whole: []layout.Block{line}, height: line.H + 1}
			frames, with = append(frames, frame), append(with, frame)
			i++
			continue
		}
		k := content{Composer: c, back: kind != Found}
		n := i
		for n < len(ds) && (n == i || alike(c, d, ds[n], kind)) {
			k.entries = append(k.entries, entry{ds[n], sidesOf(c, ds[n], kind)})
			n++
		}
		if kind == Found {
			k.note = lastChanceNote(c, d)
		}
		own := k.frames(kind)
		frames = append(frames, own...)
		if n > last && why != (reason{}) {
			k.reason = why
			own = k.frames(kind)
		}
		with = append(with, own...)
		i = n
	}
	plain, shares, part := paired(frames, c.Span, nil)
	if why != (reason{}) {
		var parted func()
		within, _, parted = paired(with, c.Span, shares)
		parted()
	}
	if !free(plain, within) {
		part() // else it is not printed
	}
	return plain, within
}

// frames are the frames of like places.
func (k content) frames(kind Kind) []frameOf {
	var out []frameOf
	for _, part := range k.parts() {
		out = append(out, part.frameOf(kind))
	}
	return out
}

// alike reports whether a dimension at another place is told by the head of the first,
// so that both stand in one block.
func alike(c *block.Composer, first, d *job.Dim, kind Kind) bool {
	if d.Base != first.Base || onlyLine(d, kind) || d.Positions.Kind == job.Clock || d.Positions.Kind == job.Log {
		return false
	}
	if d.Box.Form == reading.Grid || byHand(d, sidesOf(c, d, kind)) != byHand(first, sidesOf(c, first, kind)) {
		return false
	}
	unpaged := c.Blind() // the head of all tells the pages of all
	head := func(d *job.Dim) string {
		e := entry{d, sidesOf(c, d, kind)}
		k := content{Composer: unpaged, entries: []entry{e, e}, back: kind != Found}
		if kind == Found {
			k.note = lastChanceNote(c, d)
		}
		var text strings.Builder
		for _, it := range k.head(way{limitInHead: true}, c.Span).make().Items() {
			if t, ok := it.Shape.(layout.Text); ok {
				text.WriteString(t.S + " ")
			}
		}
		return text.String()
	}
	return head(d) == head(first)
}

// parts are the frames of like places: one, or two where one were too tall for a page.
func (k content) parts() []content {
	n := len(k.entries)
	if n < 2 {
		return []content{k}
	}
	whole := k.inner()
	if whole.H <= tallest {
		k.whole = &whole
		return []content{k}
	}
	first, second := k, k
	first.reason = reason{}
	first.entries, second.entries = k.entries[:(n+1)/2], k.entries[(n+1)/2:]
	return append(first.parts(), second.parts()...)
}

// contents is what stands in the frame of a dimension, or in its frames where it is worked
// out by hand in more lines than go well on a page, with the names of its page.
func (k content) contents(kind Kind) []layout.Block {
	var out []layout.Block
	if len(k.entries) == 1 && byHand(k.d(), k.entries[0].sides) {
		out = k.handContents()
	} else if k.whole != nil {
		out = []layout.Block{*k.whole}
	} else {
		out = []layout.Block{k.inner()}
	}
	if out[0].Empty() {
		return nil // nothing goes into the width
	}
	what := sideOf(kind)
	for i := range out {
		out[i] = padded(k.Composer, out[i])
	}
	for _, e := range k.entries {
		out[0] = anchors(k.Composer, out[0], e.d, what)
	}
	return out
}

// sideOf begins the names of pages at one of the uses of a dimension.
func sideOf(kind Kind) string {
	if kind == Found {
		return "found "
	}
	return "left "
}

// frameOf is a dimension in its frames, over the whole width or in less.
func (k content) frameOf(kind Kind) frameOf {
	var f frameOf
	for _, b := range k.contents(kind) {
		f.whole = append(f.whole, bordered(b, b.H))
		f.height += b.H + 1
	}
	if len(f.whole) > 1 || len(k.Job.Dims) > Many {
		return f
	}
	f.part = func() []layout.Parting { return k.partings(kind) }
	set := map[layout.Mm]layout.Block{}
	f.in = func(span layout.Mm) layout.Block {
		if b, known := set[span]; known {
			return b
		}
		less := *k.Composer
		less.Span = span
		narrow := k
		narrow.Composer, narrow.half, narrow.whole = &less, true, nil
		set[span] = layout.Block{}
		if all := narrow.contents(kind); len(all) == 1 {
			set[span] = all[0]
		}
		return set[span]
	}
	return f
}
