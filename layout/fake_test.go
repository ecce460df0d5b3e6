package layout

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// fake measures every sign half as wide as the type is high, so that widths can be
// worked out by head. It has the letters of Latin, Greek and Cyrillic and lacks
// the signs that are drawn.
type fake struct{}

func (fake) Width(_ Face, size Pt, s string) Mm {
	return Mm(utf8.RuneCountInString(s)) * size.Mm() / 2
}

func (fake) Has(_ Face, r rune) bool {
	return r >= ' ' && r <= '~' || r == '\u00a0' || strings.ContainsRune("°±×·–—→≤≥\uFFFD", r) ||
		r <= 0xffff && unicode.In(r, unicode.Latin, unicode.Greek, unicode.Cyrillic)
}

// ten is a style whose signs are 1 mm wide under fake: 2 mm type, 5 mm lead.
var ten = Style{Face: Regular, Size: Mm(2).Pt(), Lead: 5}

func newFake() *Setter { return NewSetter(fake{}, Pen{}) }

// linesOf gives the text of a block line by line: items on one baseline joined
// with the gaps between them as single spaces.
func linesOf(b Block) []string {
	var out []string
	last, end := Mm(-1), Mm(0)
	for _, it := range b.Items() {
		var s string
		var w Mm
		switch sh := it.Shape.(type) {
		case Text:
			s, w = sh.S, sh.Width
		case Path:
			s, w = sh.Alt, sh.AltWidth
		default:
			continue
		}
		if s == "" {
			continue
		}
		switch {
		case it.Y != last:
			out = append(out, s)
		case it.X > end+slack:
			out[len(out)-1] += " " + s
		default:
			out[len(out)-1] += s
		}
		last, end = it.Y, it.X+w
	}
	return out
}
