package layout

import (
	"sync"

	qrcode "github.com/skip2/go-qrcode"
)

// QuietModules is the white margin about a symbol, in modules (ISO/IEC 18004).
const QuietModules = 4

// Modules is a QR symbol, Size by Size with its quiet zone. Its squares are
// worked out when they are first asked for: that is the dearest part of a page,
// and a page that is only measured, or composed again with other numbers, never
// needs them. Setter.QR makes one; the zero Modules is an empty square.
type Modules struct {
	Size Mm
	code *code
}

// code is a symbol that may be shared by many items and goroutines.
type code struct {
	text  string
	count int // modules along a side, quiet zone included
	once  sync.Once
	q     *qrcode.QRCode
	bits  [][]bool
}

// Content is the text that the symbol holds.
func (m Modules) Content() string {
	if m.code == nil {
		return ""
	}
	return m.code.text
}

// Count is the number of modules along a side, quiet zone included.
func (m Modules) Count() int {
	if m.code == nil {
		return 0
	}
	return m.code.count
}

// Bits tells for each module, by row and column from the top left, whether it is
// dark. The caller must not change it.
func (m Modules) Bits() [][]bool {
	if m.code == nil {
		return nil
	}
	m.code.once.Do(func() { m.code.bits = m.code.q.Bitmap() })
	return m.code.bits
}

func (m Modules) extent() box { return box{0, 0, m.Size, m.Size} }

// QR makes a symbol of the text that fills a square of the given side, the quiet
// zone counted in. The level is Q, or H where that takes no larger symbol. Text
// of capitals, figures and " $%*+-./:" makes the smallest symbols. When a module
// would be smaller than least, the block carries a misfit that tells how much
// larger the side must be.
func (s *Setter) QR(text string, side, least Mm, ref Ref) Block {
	c, out := s.code(text, false, ref)
	if c == nil {
		out.W, out.H = side, side
		return out
	}
	out = Drawn(side, side, Item{Role: RoleCode, Ref: ref, Shape: Modules{Size: side, code: c}})
	if need := least * Mm(c.count); !need.Fits(side) {
		out.AddMisfits(Misfit{Ref: ref, Kind: CodeTooLong, Text: text, Over: need - side,
			Detail: "makes the QR code's squares too small to be read"})
	}
	return out
}

// QRModules makes a symbol of the text with modules of the given size. Its side follows
// from the length of the text.
func (s *Setter) QRModules(text string, module Mm, ref Ref) Block {
	return s.modules(text, module, false, ref)
}

// QRHigh is QRModules at level H whatever its size: a tenth of the symbol may be lost.
func (s *Setter) QRHigh(text string, module Mm, ref Ref) Block {
	return s.modules(text, module, true, ref)
}

func (s *Setter) modules(text string, module Mm, high bool, ref Ref) Block {
	c, out := s.code(text, high, ref)
	if c == nil {
		return out
	}
	side := module * Mm(c.count)
	return Drawn(side, side, Item{Role: RoleCode, Ref: ref, Shape: Modules{Size: side, code: c}})
}

// code makes the symbol of a text, or a block with what is wrong of it.
func (s *Setter) code(text string, high bool, ref Ref) (*code, Block) {
	key := text
	if high {
		key = "H\n" + text
	}
	if c := s.codes[key]; c != nil {
		return c, Block{}
	}
	c, err := newCode(text, high)
	if err != nil {
		var out Block
		out.AddMisfits(Misfit{Ref: ref, Kind: CodeTooLong, Text: text, Detail: "is longer than any QR code can hold"})
		return nil, out
	}
	s.codes[key] = c
	return c, Block{}
}

// newCode chooses version and level. The library never raises the level by itself
// when the version has room; asking for both is cheap, because it builds the
// symbol only when its bits are asked for.
func newCode(text string, high bool) (*code, error) {
	q, err := qrcode.New(text, qrcode.High) // the library's name for level Q
	if err != nil {
		return nil, err
	}
	if h, err := qrcode.New(text, qrcode.Highest); err == nil && (high || h.VersionNumber == q.VersionNumber) {
		q = h
	}
	// A symbol of version v has 17+4v modules (ISO/IEC 18004).
	return &code{text: text, count: 17 + 4*q.VersionNumber + 2*QuietModules, q: q}, nil
}
