package pdf

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"matchmark/layout"
)

// TestSignsOfCutFont: a code leads in the cut font to the very outline and advance that its
// character has in the whole one, which golang.org/x/image/font/sfnt reads, and the widths
// that are told are those. A character that the font lacks leads to the box for it.
func TestSignsOfCutFont(t *testing.T) {
	t.Parallel()
	rng := rand.New(rand.NewPCG(3, 4))
	for face := range layout.NumFaces {
		signs := map[rune]struct{}{' ': {}, 'i': {}, 'Å': {}, 'ñ': {}, 'ż': {}, '½': {}, 'Ω': {}, 'Ж': {}, '≤': {}, '\u4e00': {}}
		for range 40 {
			signs[rune('!'+rng.IntN(90))] = struct{}{}
		}
		all := sorted(signs)
		ttf := NewFaces().file(face)
		whole, err := sfnt.Parse(ttf)
		if err != nil {
			t.Fatal(err)
		}
		small := fpdf.UTF8CutFont(bytes.Clone(ttf), all)
		cut, err := sfnt.Parse(small)
		if err != nil {
			t.Fatal(err)
		}
		codes, err := glyphsOf(small, all)
		if err != nil {
			t.Fatal(err)
		}
		told := widthsOf(t, NewFaces().table(face).widths(all))
		em := fixed.I(int(whole.UnitsPerEm()))
		var buf, cutBuf sfnt.Buffer
		for r := range signs {
			want, _ := whole.GlyphIndex(&buf, r)
			got := sfnt.GlyphIndex(binary.BigEndian.Uint16(codes[2*r:]))
			a, err1 := whole.LoadGlyph(&buf, want, em, nil)
			b, err2 := cut.LoadGlyph(&cutBuf, got, em, nil)
			if err1 != nil || err2 != nil || !reflect.DeepEqual(a, b) && len(a)+len(b) > 0 {
				t.Errorf("%s %q: sign %d of the cut font is not %d of the whole one: %v %v", face, r, got, want, err1, err2)
			}
			w, err1 := whole.GlyphAdvance(&buf, want, em, font.HintingNone)
			c, err2 := cut.GlyphAdvance(&cutBuf, got, em, font.HintingNone)
			if err1 != nil || err2 != nil || w != c {
				t.Errorf("%s %q: advance %v, in the whole font %v", face, r, c, w)
			}
			if per := int(float64(w)/float64(em)*1000 + 0.5); told[r] != per {
				t.Errorf("%s %q: told to be %d wide, is %d", face, r, told[r], per)
			}
		}
	}
}

// widthsOf reads a list of widths (ISO 32000-1, 9.7.4.3).
func widthsOf(t *testing.T, list []byte) map[rune]int {
	out := map[rune]int{}
	for _, run := range bytes.Split(bytes.TrimSuffix(list, []byte("]")), []byte("] ")) {
		first, rest, _ := bytes.Cut(run, []byte(" ["))
		var r rune
		if _, err := fmt.Sscan(string(first), &r); err != nil {
			t.Fatalf("%s: %v", run, err)
		}
		for i, w := range bytes.Fields(rest) {
			var v int
			if _, err := fmt.Sscan(string(w), &v); err != nil {
				t.Fatalf("%s: %v", run, err)
			}
			out[r+rune(i)] = v
		}
	}
	return out
}
