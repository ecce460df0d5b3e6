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
	return &Paragraph{s, runs, o, slices.Clone(b.texts), slices.Clone(b.frags), len(out.Misfits)}
}

// Size is the height that Set gives in a width, and the number of misfits.
func (p *Paragraph) Size(width Mm) (h Mm, misfits int) {
	b := breaker{s: p.s, runs: p.runs, texts: p.texts, frags: append(p.s.frags[:0], p.frags...)}
	var out Block
	b.fill(&out, width, p.o, false)
	p.s.frags = b.frags[:0]
	return out.H, p.misfits + len(out.Misfits)
}

// Set is Para of the runs in a width.
func (p *Paragraph) Set(width Mm) Block { return p.s.Para(width, p.runs, p.o) }
