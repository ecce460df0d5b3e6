package pdf

import (
	"bytes"
	"encoding/binary"
	"math/rand/v2"
	"strings"
	"testing"

	"golang.org/x/image/font/gofont/gobolditalic"
	"golang.org/x/image/font/gofont/gosmallcaps"

	"matchmark/layout"
)

// table finds where a table of a font begins in the file.
func tableAt(ttf []byte, name string) int {
	for i := range int(binary.BigEndian.Uint16(ttf[4:])) {
		if at := 12 + 16*i; string(ttf[at:at+4]) == name {
			return int(binary.BigEndian.Uint32(ttf[at+8:]))
		}
	}
	return -1
}

// changed is a font with one number of two bytes put in place of another.
func changed(ttf []byte, at int, v uint16) []byte {
	out := bytes.Clone(ttf)
	binary.BigEndian.PutUint16(out[at:], v)
	return out
}

// TestFontsThatAreRefused: each with the reason. The library itself takes a truncated font
// without a word and embeds what its maker forbids.
func TestFontsThatAreRefused(t *testing.T) {
	good := gosmallcaps.TTF
	if err := CheckFont(good); err != nil {
		t.Fatal(err)
	}
	os2 := tableAt(good, "OS/2") + 8
	for word, ttf := range map[string][]byte{
		"no TrueType font": []byte("regular: no font at all"), "is no TrueType": {},
		"PostScript": append([]byte("OTTO"), good[4:]...), "collection": append([]byte("ttcf"), good[4:]...), "web pages": append([]byte("wOF2"), good[4:]...),
		"on licence only": changed(good, os2, 2), "in part": changed(good, os2, 0x100), "as pixels": changed(good, os2, 0x200),
		"is damaged": good[:len(good)/2], "variable": bytes.Replace(good, []byte("cvt "), []byte("fvar"), 1), "lacks its table": bytes.Replace(good, []byte("glyf"), []byte("gluf"), 1),
	} {
		if err := CheckFont(ttf); err == nil || !strings.Contains(err.Error(), word) {
			t.Errorf("%s: %v", word, err)
		}
	}
	for _, allowed := range []uint16{0, 4, 8} { // installable, preview and print, editable
		if err := CheckFont(changed(good, os2, allowed)); err != nil {
			t.Errorf("fsType %d: %v", allowed, err)
		}
	}
	for n := range 60 {
		if err := CheckFont(good[:len(good)*n/60]); err == nil {
			t.Errorf("%d of %d bytes are taken", len(good)*n/60, len(good))
		}
	}
	r := rand.New(rand.NewPCG(1, 2))
	for range 60 { // never a panic
		bad := bytes.Clone(good)
		for range 20 {
			bad[r.IntN(len(bad))] = byte(r.Uint32())
		}
		_ = CheckFont(bad)
	}
}

// TestOwnFonts: text is measured with the site's font and painted with it, cut to the
// signs in use; values stay in the usual face; the same bytes each time.
func TestOwnFonts(t *testing.T) {
	f, err := FontsOf(gosmallcaps.TTF, gobolditalic.TTF)
	if err != nil {
		t.Fatal(err)
	}
	if again, _ := FontsOf(gosmallcaps.TTF, gobolditalic.TTF); again != f {
		t.Error("a font is read anew for each job")
	}
	usual := NewFaces()
	if f.Width(layout.Regular, 10, "abc") == usual.Width(layout.Regular, 10, "abc") || f.Width(layout.Mono, 10, "abc") != usual.Width(layout.Mono, 10, "abc") {
		t.Error("measured with other fonts")
	}
	page := layout.Frame{W: 210, H: 297}
	for i, face := range []layout.Face{layout.Regular, layout.Bold, layout.Mono} {
		page.Items = append(page.Items, layout.Item{X: 20, Y: layout.Mm(20 + 10*i), Shape: layout.Text{S: "Lock nut", Face: face, Size: 10}})
	}
	doc := &layout.Doc{Title: "Own", Lang: "en", Pages: []layout.Frame{page}, Faces: f}
	var one, two bytes.Buffer
	if err := Write(&one, doc); err != nil {
		t.Fatal(err)
	}
	if err := Write(&two, doc); err != nil || !bytes.Equal(one.Bytes(), two.Bytes()) {
		t.Errorf("not the same bytes: %v", err)
	}
	for _, name := range []string{"+Site-regular", "+Site-bold", "+Go-mono"} {
		if !bytes.Contains(one.Bytes(), []byte(name)) {
			t.Errorf("%s is not embedded", name)
		}
	}
	if n := one.Len(); n > 60_000 {
		t.Errorf("%d bytes: the fonts are not cut", n)
	}
}
