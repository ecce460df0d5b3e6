package layout

import (
	"slices"
	"strings"
)

// textLine is a finished line: the fragments [from, to), with a hyphen after the
// last one or not, and its width.
type textLine struct {
	from, to int
	hyphen   bool
	w        Mm
}

// breaker fills lines one after the other, each as full as it goes.
type breaker struct {
	s     *Setter
	runs  []Run
	texts []string // the cleaned runs
	frags []fragment
	kept  bool // the point between two facts stays with the one before it
	whole bool // the fragments are set once more, and are copied before one is parted
}

// chunkEnd is the index after the chain of glued fragments that starts at i.
func (b *breaker) chunkEnd(i int) int {
	for b.frags[i].end == glued && i+1 < len(b.frags) {
		i++
	}
	return i + 1
}

// width is the sum of fragment widths in [from, to) with the spaces between.
func (b *breaker) width(from, to int) (w Mm) {
	for i := from; i < to; i++ {
		w += b.frags[i].w
		if i+1 < to {
			w += b.gapAfter(i)
		}
	}
	return w
}

// gapAfter is the space after a fragment that is not the last on its line.
func (b *breaker) gapAfter(i int) Mm {
	if b.frags[i].end == atSpace {
		return b.frags[i].space
	}
	return 0
}

// hyphenW is the width of a hyphen in the style of fragment i.
func (b *breaker) hyphenW(i int) Mm {
	st := b.runs[b.frags[i].run].Style
	return b.s.m.Width(st.Face, st.Size, "-")
}

// next makes the line that starts with fragment i, no wider than avail unless
// there is no other way; then over is what it reaches beyond.
func (b *breaker) next(i int, avail Mm) (l textLine, over Mm) {
	best := textLine{from: i, to: i}
	w := Mm(0)
	for end := i; end < len(b.frags); {
		stop := b.chunkEnd(end)
		chunk := b.width(end, stop)
		if end > i {
			w += b.gapAfter(end - 1)
		}
		if !(w + chunk).Fits(avail) {
			if !chunk.Fits(avail) {
				if cut, ok := b.part(end, stop, avail-w, best.to == i); ok {
					to := cut + 1
					return textLine{from: i, to: to, hyphen: true, w: w + b.width(end, to) + b.hyphenW(cut)}, 0
				}
			}
			if best.to == i {
				if cut, ok := b.loosen(end, stop, avail-w); ok {
					return textLine{from: i, to: cut + 1, w: b.width(i, cut+1)}, 0
				}
				return textLine{from: i, to: stop, w: w + chunk}, w + chunk - avail
			}
			return b.roomForHyphen(best, avail)
		}
		w += chunk
		last := &b.frags[stop-1]
		full, hyphen := w, last.end == atSoft && stop < len(b.frags)
		if hyphen {
			full += b.hyphenW(stop - 1)
		}
		if best.to == i || full.Fits(avail) && !(b.kept && stop < len(b.frags) && b.frags[stop].point) {
			best = textLine{from: i, to: stop, hyphen: hyphen, w: full}
		}
		if last.end == atFeed {
			return textLine{from: i, to: stop, w: w}, 0
		}
		end = stop
	}
	return b.roomForHyphen(best, avail)
}

// roomForHyphen is the line as it is, or if its hyphen does not go into the room,
// the line parted earlier; over is what it reaches beyond when nothing will do.
func (b *breaker) roomForHyphen(l textLine, avail Mm) (textLine, Mm) {
	if l.w <= avail+slack {
		return l, 0
	}
	if cut, ok := b.part(l.from, l.to, avail, true); ok {
		to := cut + 1
		return textLine{from: l.from, to: to, hyphen: true, w: b.width(l.from, to) + b.hyphenW(cut)}, 0
	}
	return l, l.w - avail
}

// part cuts one fragment of the chunk [from, to) in two, so that what comes
// before the cut fits the room with a hyphen. It gives the index of the fragment
// before the cut. The start of a syllable is taken before any other place, and
// unless the chunk must be cut here nothing else will do.
func (b *breaker) part(from, to int, room Mm, must bool) (cut int, ok bool) {
	at, syllable := 0, false
	before := Mm(0)
	for i := from; i < to && before.Fits(room); i++ {
		f := b.frags[i]
		if f.sign == nil && !f.whole {
			place, good := b.placeIn(f.text, b.runs[f.run].Style, room-before, must && !syllable)
			if place > 0 {
				cut, at, syllable, ok = i, place, good, true
			}
		}
		before += f.w
	}
	if ok {
		b.split(cut, at)
	}
	return cut, ok
}

// loosen ends the line within the chunk [from, to), at the last of its no-break spaces before
// which it fits the room: what no line of this width holds together is torn there rather than
// reach beyond its place. A figure is never torn at the spaces of its thousands. It gives the
// index of the fragment before the end.
func (b *breaker) loosen(from, to int, room Mm) (cut int, ok bool) {
	at, before := 0, Mm(0)
	for i := from; i < to; i++ {
		f := b.frags[i]
		if f.sign == nil && b.runs[f.run].Deco == Plain {
			st := b.runs[f.run].Style
			for pos := range f.text {
				if spaceToTear(f.text, pos) && (before + b.s.width(st, f.text[:pos])).Fits(room) {
					cut, at, ok = i, pos, true
				}
			}
		}
		before += f.w
	}
	if ok {
		st := b.runs[b.frags[cut].run].Style
		space := b.s.width(st, NoBreak)
		b.split(cut, at)
		first, rest := &b.frags[cut], &b.frags[cut+1]
		first.end, first.space = atSpace, space
		rest.text, rest.lo, rest.w = rest.text[len(NoBreak):], rest.lo+int32(len(NoBreak)), rest.w-space
	}
	return cut, ok
}

// NoBreak is the space at which a line ends only where its place is too narrow for more.
const NoBreak = "\u00a0"

// spaceToTear reports whether a no-break space stands at a byte position of a text, between
// two words that are not the figures of one number.
func spaceToTear(text string, pos int) bool {
	if pos == 0 || !strings.HasPrefix(text[pos:], NoBreak) || pos+len(NoBreak) == len(text) {
		return false
	}
	digit := func(x byte) bool { return '0' <= x && x <= '9' }
	return !digit(text[pos-1]) || !digit(text[pos+len(NoBreak)])
}

// placeIn finds the last place to part the word so that its beginning and a hyphen
// fit the room: where a syllable starts, or if need be anywhere it may. It gives a
// byte position, 0 for none.
func (b *breaker) placeIn(word string, st Style, room Mm, anywhere bool) (at int, syllable bool) {
	// Of a very long word only what may come before the cut is looked at, and the
	// letters that must come after it.
	var rs []rune
	var cuts []int // byte positions before which the beginning fits
	w := b.s.m.Width(st.Face, st.Size, "-")
	for pos, r := range word {
		if len(rs) >= len(cuts)+hyphenEnd {
			break
		}
		if len(cuts) == len(rs) && w.Fits(room) {
			cuts = append(cuts, pos)
		}
		rs = append(rs, r)
		w += b.s.width(st, string(r))
	}
	for i, pos := range cuts {
		if ok, good := hyphenAt(rs, i); ok && (good || anywhere && !syllable) {
			at, syllable = pos, good
		}
	}
	return at, syllable
}

// split makes two fragments of fragment i, parted at byte position at.
func (b *breaker) split(i, at int) {
	f := b.frags[i]
	if b.whole {
		b.frags, b.whole = slices.Clone(b.frags), false
	}
	st := b.runs[f.run].Style
	first, rest := f, f
	first.text, first.hi, first.end, first.space = f.text[:at], f.lo+int32(at), atSoft, 0
	rest.text, rest.lo = f.text[at:], f.lo+int32(at)
	first.w = b.s.width(st, first.text)
	rest.w = f.w - first.w
	b.frags[i] = first
	b.frags = slices.Insert(b.frags, i+1, rest)
}
