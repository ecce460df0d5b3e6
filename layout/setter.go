package layout

// Measurer tells the widths of text and which signs a face has. The painter
// implements it; a test may use a fake with fixed widths.
type Measurer interface {
	// Width is the advance of s set in one line.
	Width(f Face, size Pt, s string) Mm
	// Has tells whether the face has a sign for the rune; none has one beyond U+FFFF, which
	// the painter could not carry.
	Has(f Face, r rune) bool
}

// Pen says what the boxes will be written with.
type Pen struct {
	// Gloves makes the write-in boxes taller, for gloves and for work outdoors.
	Gloves bool
	// Comma prints a decimal comma in the boxes, and for each DecimalMark, instead of a
	// point.
	Comma bool
}

// Setter makes blocks. It is for one goroutine at a time; keep it for a whole
// document, since it remembers the QR symbols it has made.
type Setter struct {
	m     Measurer
	pen   Pen
	codes map[string]*code
	// frags is the breaker's work space, reused between paragraphs.
	frags []fragment
	texts []string
	// cutting is that of the cutter.
	cutting []fragment
	kept    memory[setKey, Block]
	cuts    memory[cutKey, cutRun]
	widths  memory[cutKey, Mm]
	// Boxes of a dimension are the same in all ways to set it.
	values memory[Number, Block]
	boxes  memory[boxKey, Block]
	later  bool // texts have figures that are put in later
	// The drawings in value boxes, each made once.
	divided map[cells]Item
	decimal []Op
}

// NewSetter makes a setter that measures with m and sizes boxes for the pen.
func NewSetter(m Measurer, pen Pen) *Setter {
	return &Setter{m: m, pen: pen, codes: map[string]*code{}, divided: map[cells]Item{}}
}

// Pen is what the boxes are sized for.
func (s *Setter) Pen() Pen { return s.pen }

// Width is the advance of a text in a style, as Line sets it.
func (s *Setter) Width(st Style, text string) Mm {
	key := cutKey{text, bits(st.Size), bits(st.Lead), howOf(st, Plain, Left, true)}
	return s.widths.keep(key, func() Mm {
		// Most texts that are only measured are words, and are never set by themselves.
		runs := [1]Run{{Text: text, Style: st}}
		c := cutter{s: s, frags: s.frags[:0]}
		c.join(0, runs[0], s.cutNow(runs[0]))
		b := breaker{s: s, runs: runs[:], frags: c.frags}
		s.frags = b.frags[:0]
		return b.oneLine().w
	})
}
