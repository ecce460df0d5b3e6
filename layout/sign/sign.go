package sign

import (
	"slices"

	"matchmark/layout"
)

// Codes lists the numbers of the signs that can be drawn, sorted.
func Codes() []string {
	out := make([]string, 0, len(pictograms))
	for c := range pictograms {
		out = append(out, c)
	}
	slices.Sort(out)
	return out
}

// Sign draws the sign of an ISO 7010 number in a square of the given side. ok is
// false when there is no drawing of it; then its number must be printed alone.
func Sign(code string, side layout.Mm, ref layout.Ref) (b layout.Block, ok bool) {
	parts, ok := pictograms[code]
	if !ok {
		return layout.Block{}, false
	}
	items := drawing{code, side}.items(func() []part {
		below, above := frame(code[0])
		return slices.Concat(below, parts, above)
	})
	for i := range items {
		items[i].Ref = ref
	}
	items[0].Role = "sign:" + code
	return layout.Drawn(side, side, items...), true
}

// frame gives the parts beneath and above the pictogram for the kind of sign. The
// bar of a prohibition has a white edge, so that it is told from what it crosses
// without colour.
func frame(kind byte) (below, above []part) {
	switch kind {
	case 'W':
		return []part{{path: triangle, weight: 7}}, nil
	case 'M':
		return []part{{path: "O 50 50 49"}}, nil
	}
	const bar = "M 19.6 19.6 L 80.4 80.4"
	return []part{{path: "O 50 50 44", weight: 9}},
		[]part{{path: bar, weight: 13, white: true}, {path: "O 50 50 44", weight: 9}, {path: bar, weight: 8}}
}

// triangle is the frame of a warning, equal-sided, its stroke within the field.
const triangle = "M 50 9 L 95 87 L 5 87 Z"

// Alert draws the safety alert symbol, a full triangle with an exclamation mark,
// of the given height. On a black panel it is white.
func Alert(h layout.Mm, onBlack bool, ref layout.Ref) layout.Block {
	const wide, high = 90.0, 78.0 // of the triangle in the field
	size := h * 100 / (high + 4)
	name := "alert"
	if onBlack {
		name = "alert on black"
	}
	items := drawing{name, size}.items(func() []part {
		return []part{
			{path: triangle, white: onBlack},
			{path: triangle, weight: 4, white: onBlack},
			{path: "M 45.5 36 L 54.5 36 L 52.5 63 L 47.5 63 Z", white: !onBlack},
			{path: "O 50 72.5 4.8", white: !onBlack},
		}
	})
	for i := range items {
		items[i].X, items[i].Y, items[i].Ref = -3*size/100, -7*size/100, ref
	}
	return layout.Drawn(size*(wide+4)/100, h, items...)
}

// Panel makes a signal-word panel of the height, at least so wide: the word in white on
// black, with the alert triangle before it when the word warns of injury. A low panel has the
// word in the size of running text.
func Panel(s *layout.Setter, word string, alert bool, h, least layout.Mm, ref layout.Ref) layout.Block {
	style, pad := panelType(h)
	text := s.Line(0, []layout.Run{{Text: word, Style: style, Ref: ref}}, layout.ParaOpts{})
	if alert {
		text = layout.Middle(pad*2/3, Alert(style.CapHeight()*1.6, true, ref), text)
	}
	b := text.Pad(0, pad, 0, pad)
	b = b.Fill(max(least, b.W), max(h, b.H), 0.5, 0.5)
	return b.Border(layout.Rect{Fill: layout.Black, Radius: 0.8})
}

// panelType is the type of the word on a panel of a height, and the room beside it.
func panelType(h layout.Mm) (layout.Style, layout.Mm) {
	if h < 7 {
		return layout.Strong.In(layout.White), 1.5
	}
	return layout.Plate, 3
}

// PanelWidth is how wide the panel of a word is at the least.
func PanelWidth(s *layout.Setter, word string, alert bool, h layout.Mm) layout.Mm {
	style, pad := panelType(h)
	w := s.Width(style, word) + 2*pad
	if alert {
		w += pad*2/3 + Alert(style.CapHeight()*1.6, true, nil).W
	}
	return w
}
