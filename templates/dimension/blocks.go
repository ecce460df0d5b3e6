package dimension

import (
	"slices"
	"strings"

	"matchmark/layout"
	"matchmark/packs/job"
	"matchmark/packs/reading"
	"matchmark/templates/block"
)

// Blocks are the readings that a step takes, those of one dimension at like places in one
// block. The box for why readings were not taken stands in the last block where that takes
// no height; else elsewhere, if the step has a place for it; or where it takes the least: in the
// last block, or in a row that says once which were not taken. row says that it stands there.
func Blocks(c *block.Composer, ds []*job.Dim, kind Kind, at layout.Ref, elsewhere bool) (out []layout.Block, row bool) {
	out, place := blocks(c, setOf{ds, kind, at, elsewhere})
	if place != inRow {
		return out, false
	}
	return append(out, reasonRow(c, Written(ds, kind), at)), true
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

// A setOf tells which blocks are set.
type setOf struct {
	ds        []*job.Dim
	kind      Kind
	at        layout.Ref
	elsewhere bool // the step has another place for the box for the reason
}

// A setKey is all that blocks hang on: a step takes readings in one order only.
type setKey struct {
	first, last *job.Dim
	n           int
	kind        Kind
	at          layout.Ref
	elsewhere   bool
	span        layout.Mm
}

// blocks are the blocks of readings as they are printed, and where the box for the reason
// stands. They are asked for several times while a step is set, and set once.
func blocks(c *block.Composer, s setOf) ([]layout.Block, place) {
	if len(s.ds) == 0 {
		return nil, noPlace
	}
	key := setKey{s.ds[0], s.ds[len(s.ds)-1], len(s.ds), s.kind, s.at, s.elsewhere, c.Span}
	pieces := c.Once(key, func() (out []layout.Piece) {
		set, where := setBlocks(c, s)
		for _, b := range set {
			out = append(out, layout.Piece{Block: b})
		}
		return append(out, layout.Piece{Level: int(where)}) // Once keeps nothing but pieces
	})
	n := len(pieces) - 1
	out := make([]layout.Block, n)
	for i, p := range pieces[:n] {
		out[i] = p.Block
	}
	return out, place(pieces[n].Level)
}

// setBlocks sets the blocks of readings without the box for the reason and, if there is
// one, with it, and takes those that are printed.
func setBlocks(c *block.Composer, s setOf) ([]layout.Block, place) {
	written := Written(s.ds, s.kind)
	why := reasonOf(c, written, s.at)
	all := membersOf(c, s)
	key, moulded := mouldOf(c, s, all, why)
	if m, known := c.Chosen(key); moulded && known {
		if out := m.(setMould).cast(c, s, all, why); out != nil {
			return out, m.(setMould).at
		}
	}
	out, at, shares := lowest(c, s, all, why, written)
	if moulded {
		c.Choose(key, setMould{at, shares, len(out), heightOf(out), misfitsOf(out)})
	}
	return out, at
}

// lowest are the blocks that take the least height, where the box for the reason stands, and in
// which shares of the width some stand beside each other.
func lowest(c *block.Composer, s setOf, all []member, why reason, written []*job.Dim) ([]layout.Block, place, map[int]int) {
	frames := framesOf(all, s.kind, reason{})
	plain, shares, part := paired(slices.Concat(frames...), c.Span, nil)
	if why != (reason{}) {
		last := lastWritten(all)
		frames[last] = framesOf(all[last:last+1], s.kind, why)[0]
		within, _, partWithin := paired(slices.Concat(frames...), c.Span, shares)
		lower := len(within) > 0 && heightOf(within) < heightOf(plain)+reasonRow(c, written, s.at).H-rowSaves
		if free(plain, within) || lower && !s.elsewhere {
			partWithin()
			return within, inBlocks, shares
		}
	}
	part()
	switch {
	case len(written) == 0:
		return plain, noPlace, shares
	case s.elsewhere:
		return plain, elsewhere, shares
	}
	return plain, inRow, shares
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
	if kind == Found && !goneTogether(first, d) {
		return false
	}
	unpaged := c.Blind() // the head of all tells the pages of all, and what takes them away
	head := func(d *job.Dim) string {
		e := entry{d, sidesOf(c, d, kind)}
		k := content{Composer: unpaged, entries: []entry{e, e}, back: kind != Found}
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

// tallestBack is how high the frame of like places may be in putting back, where no reading is
// held together with what takes it away, so that a page may end between two of its places.
const tallestBack layout.Mm = 206

// parts are the frames of like places: one, or two where one were too tall for a page.
func (k content) parts() []content {
	n := len(k.entries)
	if n < 2 {
		return []content{k}
	}
	whole := k.inner()
	if whole.H <= tallest || k.back && whole.H <= tallestBack {
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
		out[0] = Anchored(out[0], e.d, what)
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
