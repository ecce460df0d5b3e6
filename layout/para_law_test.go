package layout

import (
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"pgregory.net/rapid"
)

// genText makes text of the letters and signs that matter for breaking.
func genText() *rapid.Generator[string] {
	sign := rapid.SampledFrom(append(strings.Split("abcdefgäéL 12.  --//–\u00ad\u200b\u2011⌀✓\n", ""),
		" 7\u00a07 ", " 12\u202f34", "1\u00a02\u00a03", "outlet", "and/or", "left-hand"))
	return rapid.Custom(func(t *rapid.T) string { return strings.Join(rapid.SliceOfN(sign, 0, 50).Draw(t, "text"), "") })
}

// inked drops what a break may add or remove, so that text before and after
// breaking can be compared.
func inked(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) || strings.ContainsRune("-\u00ad\u200b\u2011\u2060", r) {
			return -1
		}
		return r
	}, s)
}

func TestParaLaws(t *testing.T) {
	t.Parallel()
	s := newFake()
	rapid.Check(t, func(t *rapid.T) {
		var runs []Run
		all := ""
		for range rapid.IntRange(1, 3).Draw(t, "runs") {
			r := Run{Text: genText().Draw(t, "run"), Style: ten, Deco: rapid.SampledFrom([]Deco{Plain, Plain, Boxed}).Draw(t, "deco")}
			runs = append(runs, r)
			all += r.Text
		}
		width := Mm(rapid.IntRange(3, 40).Draw(t, "width"))
		b := s.Para(width, runs, ParaOpts{})
		got := ""
		for _, it := range b.Items() {
			var right Mm
			switch sh := it.Shape.(type) {
			case Text:
				got += sh.S
				right = it.X + sh.Width
				if d := s.m.Width(ten.Face, ten.Size, sh.S) - sh.Width; d > slack || d < -slack {
					t.Fatalf("%q is said to be %v wide, off by %v", sh.S, sh.Width, d)
				}
			case Path:
				got += sh.Alt
				right = it.X + sh.AltWidth
			case Rect:
				right = it.X + sh.W
			}
			if !right.Fits(width) && len(b.Misfits()) == 0 {
				t.Fatalf("%+v reaches to %v of %v and nothing is said", it, right, width)
			}
			if it.Y > b.H+slack || it.Y < 0 {
				t.Fatalf("%+v lies outside the height %v", it, b.H)
			}
		}
		if inked(got) != inked(all) {
			t.Fatalf("set %q of %q", got, all)
		}
		// Text that no-break spaces hold together stands in one line.
		for _, r := range runs {
			for _, word := range strings.FieldsFunc(r.Text, func(r rune) bool { return !unicode.IsDigit(r) && r != '\u00a0' && r != '\u202f' }) {
				word = strings.Trim(strings.ReplaceAll(word, "\u202f", "\u00a0"), "\u00a0")
				if !strings.Contains(strings.Join(linesOf(b), "\n"), word) {
					t.Fatalf("%q is broken in %q", word, linesOf(b))
				}
			}
		}
	})
}

// FuzzPara sees that any text can be set: nothing panics, and what comes out is
// well-formed text of the basic plane that the painter can carry.
func FuzzPara(f *testing.F) {
	for _, s := range []string{"", "nut", "a\xffb", "tool 🔧", "שלום", "⌀ 130\u202fmm", "a\u00ad\u00ad-/–/-b", "\n\n\r\x00\uFFFD", "and/or left-handed"} {
		f.Add(s, 10, 0)
	}
	f.Fuzz(func(t *testing.T, s string, width, deco int) {
		set := newFake()
		run := Run{Text: s, Style: ten, Deco: Deco(max(deco, 0) % 3)}
		b := set.Para(Mm(width), []Run{run, T(ten, s)}, ParaOpts{})
		for _, it := range append(b.Items(), set.Line(Mm(width), []Run{run}, ParaOpts{}).Items()...) {
			if x, ok := it.Shape.(Text); ok {
				for _, r := range x.S {
					if r > 0xffff || !(fake{}).Has(Regular, r) {
						t.Errorf("%q of %q holds %U", x.S, s, r)
					}
				}
				if !utf8.ValidString(x.S) {
					t.Errorf("%q is not well-formed", x.S)
				}
			}
		}
	})
}
