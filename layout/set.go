package layout

import "strings"

// Finished lines become the texts, plates and frames of a block.

// emit adds a line to the foot of the block, its items only where it is drawn.
func (b *breaker) emit(out *Block, l textLine, width, hang Mm, o ParaOpts, draw bool) {
	if l.from == l.to {
		return
	}
	var base, below Mm
	for i := l.from; i < l.to; i++ {
		if i > l.from && b.frags[i].run == b.frags[i-1].run {
			continue
		}
		st := &b.runs[b.frags[i].run].Style
		base, below = max(base, st.base()), max(below, st.Lead-st.base())
	}
	x := hang
	if free := width - hang - l.w; free > 0 {
		switch o.Align {
		case Centered:
			x += free / 2
		case RightEnd:
			x += free
		}
	}
	if draw && out.ink.own == nil {
		out.ink.own = &own{items: make([]Item, 0, len(b.runs))} // for most paragraphs
	}
	y := out.H + base
	if out.Base == 0 {
		out.Base = y
	}
	for i := l.from; i < l.to && draw; {
		i, x = b.emitRun(out, l, i, x, y, o)
	}
	out.H += base + below
}

// emitRun adds the fragments of one run from i on that stand on the line, and
// gives the index after them and the place where the next run starts.
func (b *breaker) emitRun(out *Block, l textLine, i int, x, y Mm, o ParaOpts) (int, Mm) {
	run := b.frags[i].run
	r := b.runs[run]
	it := Item{Y: y, Ref: refOr(r.Ref, o.Ref), Role: r.Role}
	if it.Role == "" {
		it.Role = o.Role
	}
	plate, drawn := -1, out.ink.own
	if r.Deco != Plain {
		plate = len(drawn.items)
		drawn.items = append(drawn.items, Item{})
	}
	ink := r.Style.Ink
	if r.Deco == Inverse {
		ink = White
	}
	start := x
	for i < l.to && b.frags[i].run == run {
		f := &b.frags[i]
		if f.sign != nil {
			it.X, it.Shape = x+f.left, f.sign.path(r.Style, ink, f.text)
			drawn.items = append(drawn.items, it)
			x += f.w + b.spaceOn(l, i)
			i++
			continue
		}
		text, stop, w := b.join(l, i)
		if text != "" {
			adv := w - f.left
			if r.Deco != Plain && (stop == len(b.frags) || b.frags[stop].run != run) {
				adv -= decoPad(r.Style)
			}
			it.X, it.Shape = x+f.left, Text{S: text, Face: r.Style.Face, Size: r.Style.Size, Ink: ink, Width: adv}
			drawn.items = append(drawn.items, it)
		}
		x += w + b.spaceOn(l, stop-1)
		i = stop
	}
	if plate >= 0 {
		end := x - b.spaceOn(l, i-1)
		drawn.items[plate] = decoPlate(r, start, end, y, it.Ref)
	}
	return i, x
}

// spaceOn is the space after fragment i as it stands on the line.
func (b *breaker) spaceOn(l textLine, i int) Mm {
	if i+1 < l.to {
		return b.gapAfter(i)
	}
	return 0
}

// join gathers the fragments of one run from i on into one text, as far as no
// drawn sign comes between and the line goes. It gives the width of it all.
func (b *breaker) join(l textLine, i int) (text string, stop int, w Mm) {
	first := &b.frags[i]
	for stop = i; ; {
		w += b.frags[stop].w
		stop++
		if stop >= l.to || b.frags[stop].run != first.run || b.frags[stop].sign != nil {
			break
		}
		w += b.gapAfter(stop - 1)
	}
	text = b.textOf(i, stop)
	if l.hyphen && stop == l.to {
		text += "-"
		w += b.hyphenW(stop - 1)
	}
	return text, stop, w
}

// textOf is the text of the fragments [from, to) of one run. Most often it stands
// in the run just so; then it is a longer slice of the run and nothing is copied.
func (b *breaker) textOf(from, to int) string {
	first, last := &b.frags[from], &b.frags[to-1]
	size := 0
	for i := from; i < to; i++ {
		size += len(b.frags[i].text)
		if i+1 < to && b.frags[i].end == atSpace {
			size++
		}
	}
	if size == 0 {
		return ""
	}
	if b.asWritten(from, to) {
		return b.texts[first.run][first.lo:last.hi]
	}
	var out strings.Builder
	out.Grow(size + 1)
	for i := from; i < to; i++ {
		out.WriteString(b.frags[i].text)
		if i+1 < to && b.frags[i].end == atSpace {
			out.WriteByte(' ')
		}
	}
	return out.String()
}

// asWritten tells whether the fragments follow each other in their run with
// nothing or one space between, and none of them is replaced by another sign.
func (b *breaker) asWritten(from, to int) bool {
	for i := from; i < to; i++ {
		f := &b.frags[i]
		if int(f.hi-f.lo) != len(f.text) {
			return false
		}
		if i+1 == to {
			break
		}
		next := b.frags[i+1].lo
		if f.end == atSpace {
			if next != f.hi+1 || b.texts[f.run][f.hi] != ' ' {
				return false
			}
		} else if next != f.hi {
			return false
		}
	}
	return true
}
