package layout

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Text is made fit for paper before it is cut: what no face has is stood in for, and told.

// clean makes the text of a run ready for cutting. Afterwards it holds only
// signs that the face has or that are drawn, spaces, no-break spaces, line feeds
// and the marks U+00AD and U+200B. What cannot be set is replaced and comes back
// as misfits.
func (s *Setter) clean(r Run) (string, []Misfit) {
	if isPlain(r.Text) {
		return r.Text, nil
	}
	var misfits []Misfit
	var b strings.Builder
	b.Grow(len(r.Text))
	told := map[rune]bool{}
	for i, c := range r.Text {
		out, kind, ok := s.cleanRune(r.Style.Face, c)
		if c == utf8.RuneError && !strings.HasPrefix(r.Text[i:], string(replacement)) {
			ok, kind, out = false, NoGlyph, replacement // broken UTF-8
		}
		key := c // each sign is told once, a script once for all its letters
		if kind == RightToLeft {
			key = -1
		}
		if !ok && !told[key] {
			told[key] = true
			m := Misfit{Kind: kind, Text: r.Text, Rune: c}
			if unicode.In(c, unicode.Mn, unicode.Me) {
				m.Detail = "an accent apart from its letter"
			}
			misfits = append(misfits, m)
		}
		if out >= 0 {
			b.WriteRune(out)
		}
	}
	return b.String(), misfits
}

// isPlain tells text that needs no cleaning: printable ASCII, which every face
// has, and line feeds.
func isPlain(t string) bool {
	for i := 0; i < len(t); i++ {
		if c := t[i]; c != '\n' && (c < ' ' || c > '~') {
			return false
		}
	}
	return true
}

// cleanRune gives what stands for the rune on the page, -1 for nothing, and the
// kind of misfit when it cannot be set.
func (s *Setter) cleanRune(f Face, c rune) (out rune, kind Kind, ok bool) {
	switch c {
	case '\n', '\u00ad', '\u200b':
		return c, 0, true
	case '\r', '\u2060', '\ufeff':
		// A word joiner forbids a break where none is made anyway.
		return -1, 0, true
	case '\u00a0', '\u202f', '\u2007', '\u2009':
		// The narrow ones stand between a number and its unit. They are set as
		// the no-break space, which every face has.
		return '\u00a0', 0, true
	case '\u2010', '\u2011':
		if !s.m.Has(f, c) {
			// Told apart from the hyphen again when cutting.
			return c, 0, true
		}
	}
	if s.later && isLater(c) {
		return c, 0, true
	}
	if isLetterOrSign(c) {
		if !s.m.Has(f, c) && signs[c] == nil {
			return s.stand(f), NoGlyph, false
		}
		return c, 0, true
	}
	if unicode.IsSpace(c) {
		return ' ', 0, true
	}
	if unicode.In(c, unicode.Hebrew, unicode.Arabic, unicode.Syriac, unicode.Thaana, unicode.Nko) {
		return s.stand(f), RightToLeft, false
	}
	if unicode.IsControl(c) || unicode.In(c, unicode.Mn, unicode.Me, unicode.Cf) {
		return s.stand(f), NoGlyph, false
	}
	if !s.m.Has(f, c) && signs[c] == nil {
		return s.stand(f), NoGlyph, false
	}
	return c, 0, true
}

// isLetterOrSign tells most of what is printed without a look into the tables of the
// standard: ASCII, Latin letters, dashes and quotes, arrows and mathematical signs, none
// of which is a space, a control or an accent that stands alone.
func isLetterOrSign(c rune) bool {
	return c > ' ' && c <= '~' || c > 0xa0 && c < 0x300 && c != 0xad || c >= 0x2012 && c < 0x2028 || c >= 0x2190 && c < 0x2800
}

// stand is the sign set in place of one that the face lacks.
func (s *Setter) stand(f Face) rune {
	if s.m.Has(f, replacement) {
		return replacement
	}
	return '?'
}
