package layout

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// A number that is not known while a text is set, as that of a page, can be put in when
// all is placed, as long as it is known how many figures it has: all figures of a face are
// of one width. Until then runes of a private plane stand for its figures, each of which
// says of which number it is and which of its figures. So a text may be parted or put
// into another one, and what was set stays as it is when numbers change.

// firstLater is the first of those runes, mostLater how many numbers there may be of so
// many figures each. All lie in plane 15 of the Unicode Standard, whose bytes in UTF-8
// begin with laterByte.
const (
	firstLater   = 0xF0000
	laterFigures = 3
	mostLater    = 0xFFFC / laterFigures
	laterByte    = 0xF3
)

// Later are the figures of the number with an index from 0, for the setter to set; not ok
// where there are too many numbers or figures.
func Later(index, figures int) (text string, ok bool) {
	if index >= mostLater || figures > laterFigures {
		return "", false
	}
	var out []byte
	for i := range figures {
		out = utf8.AppendRune(out, rune(firstLater+index*laterFigures+i))
	}
	return string(out), true
}

// HasLater reports whether a text has a rune that stands for a figure, or might be taken
// for one.
func HasLater(text string) bool { return strings.IndexByte(text, laterByte) >= 0 }

func isLater(r rune) bool { return r >= firstLater && r < firstLater+mostLater*laterFigures }

// isDigit tells a figure, or what stands for one.
func isDigit(r rune) bool { return unicode.IsDigit(r) || isLater(r) }

// Figureless is a text with a 0 for each of its figures: where all figures of a face are of one
// width, it is parted as the text is and as wide.
func Figureless(text string) string {
	return strings.Map(func(r rune) rune {
		if isDigit(r) {
			return '0'
		}
		return r
	}, text)
}

// PutLater gives a text with its numbers put in.
func PutLater(text string, number func(index int) string) string {
	if !HasLater(text) {
		return text
	}
	return strings.Map(func(r rune) rune {
		if !isLater(r) {
			return r
		}
		at := int(r - firstLater)
		figures := number(at / laterFigures)
		if i := at % laterFigures; i < len(figures) {
			return rune(figures[i])
		}
		return replacement // never: the text was set for as many figures
	}, text)
}

// PutLater puts the numbers into all texts of the pages.
func (p *Pages) PutLater(number func(index int) string) {
	put := func(text string) string { return PutLater(text, number) }
	elements := map[*Element]*Element{} // with their numbers: the items of one go on sharing it
	for _, f := range p.Frames {
		for i := range f.Items {
			switch s := f.Items[i].Shape.(type) {
			case Text:
				if HasLater(s.S) {
					s.S = put(s.S)
					f.Items[i].Shape = s
				}
			case Path:
				if HasLater(s.Alt) {
					s.Alt = put(s.Alt)
					f.Items[i].Shape = s
				}
			}
			if e := f.Items[i].Of; e != nil && HasLater(e.Alt) {
				if elements[e] == nil {
					now := *e
					now.Alt = put(e.Alt)
					elements[e] = &now
				}
				f.Items[i].Of = elements[e]
			}
		}
	}
	for i := range p.Outline {
		p.Outline[i].Title = put(p.Outline[i].Title)
	}
	for i := range p.Misfits {
		p.Misfits[i].Text, p.Misfits[i].Detail = put(p.Misfits[i].Text), put(p.Misfits[i].Detail)
	}
}

// SetsLater tells the setter that texts have numbers to be put in later: that no text has
// such a rune of its own is for the caller to know. It reports whether it can, which is so
// where all figures of a face are of one width.
func (s *Setter) SetsLater() bool {
	const size = 100
	for f := range Face(NumFaces) {
		for r := '1'; r <= '9'; r++ {
			if s.m.Width(f, size, string(r)) != s.m.Width(f, size, "0") {
				return false
			}
		}
	}
	s.later = true
	return true
}

// width is the advance of a text; a figure to be put in later is as wide as any.
func (s *Setter) width(st Style, text string) Mm {
	if s.later && HasLater(text) {
		text = PutLater(text, func(int) string { return "888" })
	}
	return s.m.Width(st.Face, st.Size, text)
}
