package layout

import (
	"reflect"
	"testing"
	"unicode"
)

// TestKeptSettingsAreEqual: a text that is set a second time is equal to the first and
// carries its own ref, also where it does not fit; writing to one does not reach the
// other.
func TestKeptSettingsAreEqual(t *testing.T) {
	for _, deco := range []Deco{Plain, Boxed, Inverse} {
		for _, width := range []Mm{0, 12, 80} {
			for _, text := range []string{"Take the cover off", "≤ 0.30 mm ⌀ ☐", "Schraubensicherungsbleche", "", "a\u05d0b"} {
				runs := []Run{{Text: text, Style: Body, Deco: deco}}
				fresh := newFake().Line(width, runs, ParaOpts{Ref: "second", Role: "r"})
				s := newFake()
				first := s.Line(width, runs, ParaOpts{Ref: "first", Role: "r"})
				items := first.Items()
				for i := range items {
					items[i].X += 99
				}
				if got := s.Line(width, runs, ParaOpts{Ref: "second", Role: "r"}); !equal(got, fresh) {
					t.Errorf("%q in %v: got %+v, want %+v", text, width, got, fresh)
				}
				if width == 0 {
					continue
				}
				fresh = newFake().Para(width, runs, ParaOpts{Align: Centered, Ref: 2})
				s.Para(width, runs, ParaOpts{Align: Centered, Ref: 1})
				if got := s.Para(width, runs, ParaOpts{Align: Centered, Ref: 2}); !equal(got, fresh) {
					t.Errorf("%q in %v, centered: got %+v, want %+v", text, width, got, fresh)
				}
			}
		}
	}
}

// equal reports whether two blocks are of one size, and print and tell the same.
func equal(a, b Block) bool {
	return a.W == b.W && a.H == b.H && a.Base == b.Base && reflect.DeepEqual(a.Items(), b.Items()) && reflect.DeepEqual(a.Misfits(), b.Misfits())
}

// TestLettersAndSigns: what is taken for a letter or a sign without a look is none of
// what cleaning replaces (Unicode, as the standard library has it).
func TestLettersAndSigns(t *testing.T) {
	for c := rune(0); c <= unicode.MaxRune; c++ {
		if isLetterOrSign(c) && (unicode.IsSpace(c) || unicode.IsControl(c) ||
			unicode.In(c, unicode.Mn, unicode.Me, unicode.Cf, unicode.Hebrew, unicode.Arabic, unicode.Syriac, unicode.Thaana, unicode.Nko)) {
			t.Errorf("%U is no letter or sign", c)
		}
	}
}
