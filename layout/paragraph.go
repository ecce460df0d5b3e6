package layout

import "slices"

// A Paragraph is runs cut into words once, to be measured in many widths before they are set
// in one. It is for the setter that made it.
type Paragraph struct {
	s       *Setter
	runs    []Run
	o       ParaOpts
	texts   []string // the cleaned runs
	frags   []fragment
	misfits int // of single signs
}

// Paragraph cuts runs, which the caller must not write to any more.
func (s *Setter) Paragraph(runs []Run, o ParaOpts) *Paragraph {
	b, out := s.cutAll(runs, o)
	s.frags = b.frags[:0]
	return &Paragraph{s, runs, o, slices.Clone(b.texts), slices.Clone(b.frags), len(out.Misfits())}
}

// Size is the height that Set gives in a width, and the number of misfits.
func (p *Paragraph) Size(width Mm) (h Mm, misfits int) {
	out := p.fill(width, false)
	return out.H, p.misfits + len(out.Misfits())
}

// fill sets all lines, without the misfits of single signs.
func (p *Paragraph) fill(width Mm, draw bool) (out Block) {
	b := breaker{s: p.s, runs: p.runs, texts: p.texts, frags: p.frags, whole: true}
	b.fill(&out, width, p.o, draw)
	return out
}

// Set is Para of the runs in a width.
func (p *Paragraph) Set(width Mm) Block {
	if len(p.runs) == 1 || p.misfits > 0 {
		return p.s.Para(width, p.runs, p.o)
	}
	out := p.fill(width, false)
	if out.H > 0 {
		out.ink = laterInk(func() []Item { return p.fill(width, true).ink.own.all() })
	}
	return out
}
