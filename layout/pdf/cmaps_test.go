package pdf

import (
	"bytes"
	"encoding/binary"
	"reflect"
	"slices"
	"testing"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// A font may list its signs twice (OpenType, cmap, formats 4 and 12), and the lists may differ. The
// library cuts by the first; a sign that the second alone has moves no other sign.
func TestAFontWithTwoLists(t *testing.T) {
	t.Parallel()
	ttf := withSecondList(t, goregular.TTF, '\u02ec', 3)
	signs := "ABab\u02ec"
	whole, err := sfnt.Parse(goregular.TTF)
	if err != nil {
		t.Fatal(err)
	}
	cut := fpdf.UTF8CutFont(bytes.Clone(ttf), signs)
	codes, err := glyphsOf(cut, signs)
	if err != nil {
		t.Fatal(err)
	}
	small, err := sfnt.Parse(cut)
	if err != nil {
		t.Fatal(err)
	}
	em := fixed.I(int(whole.UnitsPerEm()))
	var buf, smallBuf sfnt.Buffer
	for _, r := range "ABab" {
		at, _ := whole.GlyphIndex(&buf, r)
		want, err1 := whole.LoadGlyph(&buf, at, em, nil)
		got, err2 := small.LoadGlyph(&smallBuf, sfnt.GlyphIndex(binary.BigEndian.Uint16(codes[2*r:])), em, nil)
		if err1 != nil || err2 != nil || !reflect.DeepEqual(want, got) {
			t.Errorf("%q leads to another sign: %v %v", r, err1, err2)
		}
	}
}

// withSecondList is a font with one more list of signs, of format 12, that has all of ASCII and
// one sign more, which leads to a glyph.
func withSecondList(t *testing.T, ttf []byte, more rune, glyph uint32) []byte {
	tables, err := tablesOf(ttf)
	if err != nil {
		t.Fatal(err)
	}
	whole, err := sfnt.Parse(ttf)
	if err != nil {
		t.Fatal(err)
	}
	u16, u32 := binary.BigEndian.AppendUint16, binary.BigEndian.AppendUint32
	var buf sfnt.Buffer
	var groups []byte
	n := uint32(0)
	group := func(r rune, g uint32) { groups, n = u32(u32(u32(groups, uint32(r)), uint32(r)), g), n+1 }
	for r := ' '; r <= '~'; r++ {
		g, err := whole.GlyphIndex(&buf, r)
		if err != nil {
			t.Fatal(err)
		}
		group(r, uint32(g))
	}
	group(more, glyph)
	first := formatFour(t, tables["cmap"])
	list := u32(u32(u32(u16(u16(nil, 12), 0), 16+12*n), 0), n)
	list = append(list, groups...)
	cmap := u16(u16(nil, 0), 2)
	cmap = u32(u16(u16(cmap, 3), 1), 20)
	cmap = u32(u16(u16(cmap, 3), 10), 20+uint32(len(first)))
	cmap = append(append(cmap, first...), list...)
	out := bytes.Clone(ttf)
	for i := range int(binary.BigEndian.Uint16(out[4:])) {
		if at := 12 + 16*i; string(out[at:at+4]) == "cmap" {
			binary.BigEndian.PutUint32(out[at+8:], uint32(len(out)))
			binary.BigEndian.PutUint32(out[at+12:], uint32(len(cmap)))
		}
	}
	return append(out, slices.Concat(cmap, make([]byte, 3-(len(cmap)+3)%4))...)
}

// formatFour is the list of format 4 in a table of lists.
func formatFour(t *testing.T, cmap []byte) []byte {
	for i := range int(binary.BigEndian.Uint16(cmap[2:])) {
		list := cmap[binary.BigEndian.Uint32(cmap[4+8*i+4:]):]
		if binary.BigEndian.Uint16(list) == 4 {
			return list[:binary.BigEndian.Uint16(list[2:])]
		}
	}
	t.Fatal("the font has no list of format 4")
	return nil
}
