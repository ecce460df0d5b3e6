package pdf

import (
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/sfnt"

	"matchmark/layout"
)

// A font goes into the file cut down to the signs in use. The library cuts it; what stands
// around it (ISO 32000-1, 9.6 to 9.10) is written here: the library's own way to embed a font
// learns the widths of 65,536 signs and names the font by their digest, which takes longer
// than the pages of most jobs.
//
// Codes in the content of a page are characters of the basic plane, two bytes each. The
// first object of a font is its name, then its signs and widths, what text its codes stand
// for, how it looks, which sign each code has, and its file.

// embedded is the objects of a font that holds the signs given, in the order of their codes.
func (f *Faces) embedded(face layout.Face, signs string, pk *packer) (piece, error) {
	ttf := f.file(face)
	// The library writes to the bytes of monospaced fonts while it reads their widths.
	cut := fpdf.UTF8CutFont(bytes.Clone(ttf), signs)
	if cut == nil {
		return piece{}, fmt.Errorf("has no list of its signs by their characters (cmap, format 4)")
	}
	glyphs, err := glyphsOf(cut, signs)
	if err != nil {
		return piece{}, fmt.Errorf("cannot be cut: %w", err)
	}
	kind := "Go-"
	if f.own[face] != nil {
		kind = "Site-"
	}
	name := subsetTag(signs) + "+" + kind + strings.ReplaceAll(face.String(), "-", "")
	look, err := look(ttf, name)
	if err != nil {
		return piece{}, err
	}
	t := f.table(face)
	return piece{first: 1, objects: [][]byte{
		fmt.Appendf(nil, "<</Type /Font /Subtype /Type0 /BaseFont /%s /Encoding /Identity-H /DescendantFonts [2 0 R] /ToUnicode 3 0 R>>", name),
		fmt.Appendf(nil, "<</Type /Font /Subtype /CIDFontType2 /BaseFont /%s /CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> /FontDescriptor 4 0 R /DW %d /W [%s] /CIDToGIDMap 5 0 R>>",
			name, t.void, t.widths(signs)),
		streamOf("/Filter /FlateDecode", pk.pack(charactersOf(signs))),
		fmt.Appendf(look, " /FontFile2 6 0 R>>"),
		streamOf("/Filter /FlateDecode", pk.pack(glyphs)),
		streamOf(fmt.Sprintf("/Filter /FlateDecode /Length1 %d", len(cut)), pk.pack(cut)),
	}}, nil
}

// subsetTag makes the six capitals that begin the name of a cut font, from the
// signs that it holds (ISO 32000-1, 9.6.4).
func subsetTag(signs string) string {
	sum := sha256.Sum256([]byte(signs))
	tag := make([]byte, 6)
	for i := range tag {
		tag[i] = 'A' + sum[i]%26
	}
	return string(tag)
}

// glyphsOf tells for each code up to the last in use which sign of the cut font it has, in two
// bytes: the one that the cut font itself has for the character. The whole font may have more
// than one list of its signs, and the library cuts by the one that it reads.
func glyphsOf(cut []byte, signs string) ([]byte, error) {
	f, err := sfnt.Parse(cut)
	if err != nil {
		return nil, err
	}
	var buf sfnt.Buffer
	var out []byte
	for _, r := range signs {
		g, err := f.GlyphIndex(&buf, r)
		if err != nil {
			return nil, err
		}
		out = append(out, make([]byte, 2*int(r)+2-len(out))...)
		binary.BigEndian.PutUint16(out[2*r:], uint16(g))
	}
	return out, nil
}

// widths lists the advances of the signs, those of neighbours together.
func (t *table) widths(signs string) []byte {
	var b []byte
	before := rune(-2)
	for _, r := range signs {
		switch {
		case r == before+1:
			b = append(b, ' ')
		case b != nil:
			b = fmt.Appendf(b, "] %d [", r)
		default:
			b = fmt.Appendf(b, "%d [", r)
		}
		a := t.advance(r)
		if a == absent {
			a = t.void
		}
		b = fmt.Appendf(b, "%d", a)
		before = r
	}
	return append(b, ']')
}

// charactersOf tells that each code is the character that it stands for, by ranges that
// agree in their first byte.
func charactersOf(signs string) []byte {
	var rows []rune
	for _, r := range signs {
		if n := len(rows); n == 0 || rows[n-1] != r>>8 {
			rows = append(rows, r>>8)
		}
	}
	b := []byte("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n" +
		"/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n" +
		"1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n")
	for some := range slices.Chunk(rows, 100) { // the most of one list
		b = fmt.Appendf(b, "%d beginbfrange\n", len(some))
		for _, row := range some {
			b = fmt.Appendf(b, "<%02X00> <%02XFF> <%02X00>\n", row, row, row)
		}
		b = append(b, "endbfrange\n"...)
	}
	return append(b, "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend"...)
}

// look begins the object that tells how a font looks, for a reader that has to put another
// in its place. The weight of stems is not told by a font file; it is reckoned from the weight class.
func look(ttf []byte, name string) ([]byte, error) {
	tables, err := tablesOf(ttf)
	if err != nil {
		return nil, err
	}
	at := func(name string, at int) int {
		if t := tables[name]; at+2 <= len(t) {
			return int(int16(binary.BigEndian.Uint16(t[at:])))
		}
		return 0
	}
	em := at("head", 18)
	if em <= 0 {
		return nil, fmt.Errorf("has no size of its em")
	}
	scaled := func(v int) int { return v * 1000 / em }
	const symbolic, fixed, italic, bold = 1 << 2, 1 << 0, 1 << 6, 1 << 18 // ISO 32000-1, table 123
	flags, height, weight := symbolic, at("hhea", 4), at("OS/2", 4)
	if at("OS/2", 0) > 1 && at("OS/2", 88) != 0 {
		height = at("OS/2", 88)
	}
	if at("post", 4) != 0 {
		flags |= italic
	}
	if weight >= 600 {
		flags |= bold
	}
	if at("post", 12) != 0 || at("post", 14) != 0 {
		flags |= fixed
	}
	return fmt.Appendf(nil, "<</Type /FontDescriptor /FontName /%s /Flags %d /FontBBox [%d %d %d %d] /ItalicAngle %d /Ascent %d /Descent %d /CapHeight %d /StemV %d",
		name, flags, scaled(at("head", 36)), scaled(at("head", 38)), scaled(at("head", 40)), scaled(at("head", 42)),
		at("post", 4), scaled(at("hhea", 4)), scaled(at("hhea", 6)), scaled(height), 50+int(math.Pow(float64(weight)/65, 2))), nil
}
