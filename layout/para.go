package layout

import "strings"

// Run is text in one style within a paragraph. A line feed in it starts a new
// line, every other white space is one space. No-break spaces hold words
// together; a soft hyphen, a zero width space, and a hyphen, slash or dash
// between words are places where a line may end.
type Run struct {
	Text  string
	Style Style
	Deco  Deco
	Ref   Ref
	Role  string
}

// Deco is what is drawn about a run. A decorated run is never broken.
type Deco uint8

// The decorations.
const (
	Plain   Deco = iota
	Inverse      // white on a black plate
	Boxed        // in a thin frame with round corners
)

// Align is how lines lie in their width.
type Align uint8

// The alignments.
const (
	Left Align = iota
	Centered
	RightEnd
)

// ParaOpts says how a paragraph is set.
type ParaOpts struct {
	Align Align
	// Hang moves all lines but the first to the right.
	Hang Mm
	// NotchW by NotchH is a corner at the upper right that the lines leave free: those that
	// begin above its lower edge are shorter by its width.
	NotchW, NotchH Mm
	// Ref and Role go on runs that have none of their own.
	Ref  Ref
	Role string
}

// T is a run of plain text, for short calls.
func T(st Style, text string) Run { return Run{Text: text, Style: st} }

// Para sets runs into lines no wider than width. A word that is longer than the
// line is hyphenated if it is all letters; otherwise it stands on a line of its
// own, reaches over, and is a misfit. The block is as wide as width.
func (s *Setter) Para(width Mm, runs []Run, o ParaOpts) Block {
	if len(runs) == 1 {
		return s.once(false, width, runs, o, func(runs []Run, o ParaOpts) Block { return s.para(width, runs, o, true) })
	}
	out := s.para(width, runs, o, false)
	if out.H > 0 {
		out.ink = laterInk(func() []Item { return s.para(width, runs, o, true).ink.own.all() })
	}
	return out
}

// para sets runs; their items are left out where only the size is asked for.
func (s *Setter) para(width Mm, runs []Run, o ParaOpts, draw bool) Block {
	b, out := s.cutAll(runs, o)
	b.fill(&out, width, o, draw)
	s.frags = b.frags[:0]
	return out
}

// fill sets all lines into the block, none of them beginning with the point between two facts
// where that takes no line more.
func (b *breaker) fill(out *Block, width Mm, o ParaOpts, draw bool) {
	if !b.hasPoint() {
		b.lines(out, width, o, draw)
		return
	}
	whole := b.frags
	b.whole = true
	with, without := *out, *out
	if !b.lines(&with, width, o, draw) {
		*out = with
		return
	}
	parted := b.frags
	b.frags, b.whole, b.kept = whole, true, true
	b.lines(&without, width, o, draw)
	if b.kept = false; !without.H.Fits(with.H) || len(without.Misfits()) > len(with.Misfits()) {
		without, b.frags = with, parted
	}
	*out = without
}

// otherSize reports whether a fragment is the point between two facts after what is larger or
// smaller: at the head of a line it is left out, for the size parts the two.
func (b *breaker) otherSize(i int) bool {
	return b.frags[i].point && b.runs[b.frags[i].run].Style.Size != b.runs[b.frags[i-1].run].Style.Size
}

// hasPoint reports whether the point between two facts is among the fragments.
func (b *breaker) hasPoint() bool {
	for i := range b.frags {
		if b.frags[i].point {
			return true
		}
	}
	return false
}

// lines sets all lines into the block, and reports whether one of them begins with the point
// between two facts.
func (b *breaker) lines(out *Block, width Mm, o ParaOpts, draw bool) (led bool) {
	first := true
	var wide []Misfit
	for i := 0; i < len(b.frags); first = false {
		if !first && b.otherSize(i) && i+1 < len(b.frags) {
			i++
		}
		var hang Mm
		if !first {
			hang = o.Hang
		}
		room := width
		if out.H < o.NotchH-slack {
			room -= o.NotchW
		}
		l, over := b.next(i, room-hang)
		if over > slack {
			wide = append(wide, b.tooWide(l, over, o))
		}
		b.emit(out, l, room, hang, o, draw)
		led = led || !first && b.frags[l.from].point
		i = l.to
	}
	out.AddMisfits(wide...)
	out.W = width
	return led
}

// Line sets runs in one line; what does not go into the width is a misfit. A
// width of 0 takes what the text needs. The block is as wide as width.
func (s *Setter) Line(width Mm, runs []Run, o ParaOpts) Block {
	return s.once(true, width, runs, o, func(runs []Run, o ParaOpts) Block { return s.line(width, runs, o) })
}

func (s *Setter) line(width Mm, runs []Run, o ParaOpts) Block {
	b, out := s.cutAll(runs, o)
	l := b.oneLine()
	out.W = width
	if width == 0 {
		out.W = l.w
	} else if !l.w.Fits(width) {
		out.AddMisfits(b.tooWide(l, l.w-width, o))
	}
	b.emit(&out, l, out.W, 0, o, true)
	s.frags = b.frags[:0]
	return out
}

// oneLine is all that was cut in one line, a space in the place of each new line.
func (b *breaker) oneLine() textLine {
	for i := range b.frags[:max(len(b.frags)-1, 0)] {
		f := &b.frags[i]
		switch {
		case f.text == "" && f.end == atFeed: // an empty line
			f.end = glued
		case f.end == atFeed:
			st := b.runs[f.run].Style
			f.end, f.space = atSpace, b.s.m.Width(st.Face, st.Size, " ")
		}
	}
	return textLine{to: len(b.frags), w: b.width(0, len(b.frags))}
}

// Words sets one text in one style in one line as wide as it is.
func (s *Setter) Words(st Style, text string) Block {
	return s.Line(0, []Run{{Text: text, Style: st}}, ParaOpts{})
}

// cutAll cuts all runs into fragments and starts the block with the misfits of
// single signs.
func (s *Setter) cutAll(runs []Run, o ParaOpts) (*breaker, Block) {
	var out Block
	var lacking []Misfit
	c := cutter{s: s, frags: s.frags[:0]}
	texts := s.texts[:0]
	for i, r := range runs {
		k := s.cutOf(r)
		for _, m := range k.misfits {
			m.Ref = refOr(r.Ref, o.Ref)
			lacking = append(lacking, m)
		}
		c.join(i, r, k)
		texts = append(texts, k.text)
	}
	if n := len(c.frags); n > 0 {
		c.frags[n-1].end = atFeed
	}
	s.texts = texts
	out.AddMisfits(lacking...)
	return &breaker{s: s, runs: runs, texts: texts, frags: c.frags}, out
}

func refOr(a, b Ref) Ref {
	if a != nil {
		return a
	}
	return b
}

// tooWide is the misfit of a line that reaches over its width.
func (b *breaker) tooWide(l textLine, over Mm, o ParaOpts) Misfit {
	var text strings.Builder
	for i := l.from; i < l.to; i++ {
		text.WriteString(b.frags[i].text)
		if b.frags[i].end == atSpace && i+1 < l.to {
			text.WriteByte(' ')
		}
	}
	ref := o.Ref
	if l.from < l.to {
		ref = refOr(b.runs[b.frags[l.from].run].Ref, o.Ref)
	}
	return Misfit{Ref: ref, Kind: TooWide, Text: text.String(), Over: over}
}
