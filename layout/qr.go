package layout

import (
	qrcode "github.com/skip2/go-qrcode"
)

// codeKey finds a symbol in the cache. The size is in the key because the shape
// carries it.
type codeKey struct {
	text string
	side Mm
}

// QuietModules is the white margin about a symbol, in modules (ISO/IEC 18004).
const QuietModules = 4

// QR makes a symbol of the text that fills a square of the given side, the quiet
// zone counted in. The level is Q, or H where that takes no larger symbol. Text
// of capitals, figures and " $%*+-./:" makes the smallest symbols. When a module
// would be smaller than least, the block carries a misfit that tells how much
// larger the side must be.
func (s *Setter) QR(text string, side, least Mm, ref Ref) Block {
	key := codeKey{text, side}
	m := s.codes[key]
	if m == nil {
		bits, err := symbol(text)
		if err != nil {
			out := Space(side, side)
			out.Misfits = []Misfit{{Ref: ref, Kind: CodeTooLong, Text: text,
				Detail: "is longer than any QR code can hold"}}
			return out
		}
		m = &Modules{Size: side, Bits: bits, Content: text}
		s.codes[key] = m
	}
	out := Drawn(side, side, Item{Role: RoleCode, Ref: ref, Shape: *m})
	if need := least * Mm(len(m.Bits)); !need.fits(side) {
		out.Misfits = []Misfit{{Ref: ref, Kind: CodeTooLong, Text: text, Over: need - side,
			Detail: "makes the QR code's squares too small to be read"}}
	}
	return out
}

// symbol encodes the text. The library never raises the level by itself when the
// version has room; asking for both levels is cheap, because the symbol is built
// only when its bits are asked for.
func symbol(text string) ([][]bool, error) {
	q, err := qrcode.New(text, qrcode.High) // the library's name for level Q
	if err != nil {
		return nil, err
	}
	if h, err := qrcode.New(text, qrcode.Highest); err == nil && h.VersionNumber == q.VersionNumber {
		q = h
	}
	return q.Bitmap(), nil // with its quiet zone of 4 modules
}
