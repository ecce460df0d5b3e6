package layout

import "fmt"

// Kind says in which way something does not fit.
type Kind uint8

// The kinds of misfit.
const (
	// TooWide: Text needs Over more millimetres across than there are.
	TooWide Kind = iota
	// TooHigh: a block needs Over more millimetres down than a page or a place has.
	TooHigh
	// NoGlyph: the typeface has no sign for Rune.
	NoGlyph
	// RightToLeft: Text is in a script written from right to left.
	RightToLeft
	// CodeTooLong: Text does not go into a QR code of the size asked for.
	CodeTooLong
	// BadImage: a picture cannot be read or is of a kind that cannot be printed.
	BadImage
	// NoDigits: a value box has no digit before the point.
	NoDigits
	// Undrawn: a drawing lacks what it is drawn from; Detail says what.
	Undrawn
)

// String is the kind in a word, for tests and for Misfit.Error.
func (k Kind) String() string {
	return [...]string{"too wide", "too high", "no glyph", "right to left",
		"code too long", "bad image", "no digits", "undrawn", "?"}[min(k, Undrawn+1)]
}

// Misfit tells of something that could not be set as asked. It is still placed,
// at its own size, so nothing is lost; the page must not be printed without
// saying so.
type Misfit struct {
	Ref  Ref
	Kind Kind
	// Text is what does not fit, as written.
	Text string
	// Over is by how much, for TooWide and TooHigh.
	Over Mm
	// Rune is the sign that is lacking, for NoGlyph.
	Rune rune
	// Detail says more in plain words where there is more to say.
	Detail string
}

// Error says the misfit in one line; a Misfit may be used as an error.
func (m Misfit) Error() string {
	switch m.Kind {
	case TooWide, TooHigh:
		return fmt.Sprintf("%q is %s by %.1f mm", m.Text, m.Kind, float64(m.Over))
	case NoGlyph:
		return fmt.Sprintf("%q holds %U, for which the typeface has no sign", m.Text, m.Rune)
	}
	return fmt.Sprintf("%q: %s %s", m.Text, m.Kind, m.Detail)
}
