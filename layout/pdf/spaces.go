package pdf

import (
	"math"
	"unicode/utf8"

	"matchmark/layout"
)

// Lines of a paragraph and runs of a line are texts of their own, and whoever reads the
// structure joins those of one element as they are: words must be parted by spaces that
// stand in the file (ISO 32000-1, 14.8.2.5). The space between two texts is not placed,
// so the first ends with one; nothing is seen of it.

// endsWord reports whether a space belongs between a text and the next one.
func endsWord(items []layout.Item, k int) bool {
	t, ok := items[k].Shape.(layout.Text)
	if !ok || t.S == "" {
		return false
	}
	switch last, _ := utf8.DecodeLastRuneInString(t.S); last {
	case ' ', '\u00a0', '-', '/', '–', '—': // words are parted behind these, and syllables
		return false
	}
	for _, next := range items[k+1:] {
		if textOf(next.Shape) == "" {
			continue
		}
		sin, cos := math.Sincos(items[k].Turn * math.Pi / 180)
		dx := next.X - items[k].X - t.Width*layout.Mm(cos)
		dy := next.Y - items[k].Y + t.Width*layout.Mm(sin)
		return math.Hypot(float64(dx), float64(dy)) > wordGap*float64(t.Size.Mm())
	}
	return false
}

// wordGap is the share of the type size from which the room between two texts is a space;
// the space of the usual type is 0.28 of it.
const wordGap = 0.1
