package layout

// Face is one of the five cuts of the type family that the painter embeds.
type Face uint8

// The faces. Figures have one width within each face, and I, l, 1 and 0, O are
// told apart in all of them.
const (
	Regular Face = iota
	Medium
	Bold
	Mono
	MonoBold
	// NumFaces is the number of faces, for tables indexed by Face.
	NumFaces
)

// String names the face as Dump prints it.
func (f Face) String() string {
	return [...]string{"regular", "medium", "bold", "mono", "mono-bold", "?"}[min(f, NumFaces)]
}

// Ink is a tone of grey. Nothing on the paper is meant by tone alone. The zero
// Ink draws text and strokes in black and leaves a shape unfilled.
type Ink uint8

// The tones. A photocopier keeps Soft; it may lose Faint, so Faint is only for
// aids such as digit dividers and grid lines.
const (
	Usual Ink = iota
	Black
	Soft  // 70 % black, text of second rank
	Faint // 45 % black, dividers and grid lines
	Pale  // 15 % black, a word across the whole page behind the text
	White
)

// Level is the lightness for the painter, 0 black to 1 white.
func (i Ink) Level() float64 {
	return [...]float64{0, 0, 0.30, 0.55, 0.85, 1}[min(i, White)]
}

// Style is how a run of text looks. Lead is the distance from one baseline to
// the next within a paragraph.
type Style struct {
	Face Face
	Size Pt
	Lead Mm
	Ink  Ink
}

// The styles of the printed pack; nothing is set smaller than Caption. Sizes
// follow the usual rules for forms that are read at arm's length in poor light:
// running text 10 pt, limits 11 pt bold, step numbers 12 pt. The lead is 120 % of the size,
// the usual rule for running text; common practice, no source.
var (
	Body     = Style{Face: Regular, Size: 10, Lead: 4.24}
	Strong   = Style{Face: Bold, Size: 10, Lead: 4.24}
	Limit    = Style{Face: Bold, Size: 11, Lead: 4.66}
	StepNo   = Style{Face: Bold, Size: 12, Lead: 5.09}
	Sub      = Style{Face: Regular, Size: 8.5, Lead: 3.6}
	SubBold  = Style{Face: Bold, Size: 8.5, Lead: 3.6}
	Caption  = Style{Face: Regular, Size: 7, Lead: 3.1}
	Head     = Style{Face: Bold, Size: 12.5, Lead: 5.3}
	Plate    = Style{Face: Bold, Size: 14, Lead: 5.93, Ink: White}
	Section  = Style{Face: Bold, Size: 13, Lead: 5.51}
	CodeText = Style{Face: Mono, Size: 8.5, Lead: 3.9}
	Typed    = Style{Face: MonoBold, Size: 12, Lead: 5.4} // a value in a box that is filled when it is printed
)

// Line weights of the printed pack.
const (
	Outline Mm = 0.30 // write-in boxes
	Inner   Mm = 0.18 // dividers inside a box or table
	Rule    Mm = 0.25 // between rows
	Heavy   Mm = 0.60 // what must be seen first
)

// capShare is the height of a capital over the type size in the Go fonts: 1480
// of 2048 units in all five faces (OS/2 table; kept by a test in layout/pdf).
const capShare = 1480.0 / 2048

// MarkTag is the style whose capitals stand the given height: for marks that
// are chosen by how far away they must be read.
func MarkTag(face Face, capHeight Mm) Style {
	size := Pt(float64(capHeight.Pt()) / capShare)
	return Style{Face: face, Size: size, Lead: Mm(float64(capHeight) * 1.35)}
}

// CapHeight is the height of the style's capitals and figures.
func (s Style) CapHeight() Mm { return Mm(float64(s.Size.Mm()) * capShare) }

// In gives the style in another tone.
func (s Style) In(ink Ink) Style { s.Ink = ink; return s }

// With gives the style in another face.
func (s Style) With(f Face) Style { s.Face = f; return s }

// base is the distance from the top of a line to its baseline: the capitals
// stand in the middle of the lead, so text lines up with a box beside it.
func (s Style) base() Mm { return (s.Lead + s.CapHeight()) / 2 }
