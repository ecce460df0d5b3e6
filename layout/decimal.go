package layout

import (
	"strings"
	"unicode/utf8"
)

// DecimalMark in a text is set as the decimal sign of the paper, a point or a comma as
// the pen says. It is U+2396, decimal separator key symbol.
const DecimalMark = '⎖'

// Decimals gives a text with the decimal sign of the paper in the place of each
// DecimalMark. With a comma, the comma that parts two figures of a list in that text
// becomes a semicolon: 0,05; 0,10.
func (s *Setter) Decimals(text string) string {
	if !strings.ContainsRune(text, DecimalMark) {
		return text
	}
	if !s.pen.Comma {
		return strings.ReplaceAll(text, string(DecimalMark), ".")
	}
	var out strings.Builder
	out.Grow(len(text))
	for i, r := range text {
		switch {
		case r == DecimalMark:
			out.WriteByte(',')
		case r == ',' && partsFigures(text, i):
			out.WriteByte(';')
		default:
			out.WriteRune(r)
		}
	}
	return out.String()
}

// partsFigures tells whether the comma at byte i stands between two figures with a space
// behind it.
func partsFigures(text string, i int) bool {
	before, _ := utf8.DecodeLastRuneInString(text[:i])
	rest := strings.TrimLeft(text[i+1:], "+−± \u00a0")
	after, _ := utf8.DecodeRuneInString(rest)
	return isFigure(before) && len(rest) < len(text)-i-1 && isFigure(after)
}

func isFigure(r rune) bool { return r >= '0' && r <= '9' || isLater(r) }
