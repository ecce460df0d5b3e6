package pdf

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"sync"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"matchmark/layout"
)

// A site's own type: a TrueType file for plain text and one for what is bold. The PDF
// library takes a damaged font in silence, so that a file is looked through before it is
// used. Where its numbers lie is told by the OpenType specification, ISO/IEC 14496-22:
// the table directory, and in OS/2 fsType, which says what its maker allows.

// FontsOf gives the faces of a site: regular for plain text, bold for medium and bold;
// nil leaves the usual face, and two of them give those of NewFaces. Values, marks and codes
// stay in the usual face of one width. Fonts that CheckFont refuses give an error.
func FontsOf(regular, bold []byte) (*Faces, error) {
	if regular == nil && bold == nil {
		return NewFaces(), nil
	}
	key := [2][sha256.Size]byte{sha256.Sum256(regular), sha256.Sum256(bold)}
	known, ok := ofSites.Load(key)
	if ok {
		return known.(*Faces), nil
	}
	f := &Faces{}
	for _, own := range []struct {
		data  []byte
		faces []layout.Face
	}{{regular, []layout.Face{layout.Regular}}, {bold, []layout.Face{layout.Medium, layout.Bold}}} {
		if own.data == nil {
			continue
		}
		if err := CheckFont(own.data); err != nil {
			return nil, err
		}
		for _, face := range own.faces {
			f.own[face] = own.data
		}
	}
	ofSites.Store(key, f)
	return f, nil
}

// ofSites keeps the faces of sites: many jobs of one site read their fonts once.
var ofSites sync.Map

// mostSigns is how many signs a font may have: more than any of letters that this paper
// sets.
const mostSigns = 30_000

// neededTables are what a font must have to be measured, cut and embedded.
var neededTables = []string{"cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post", "OS/2"}

// CheckFont tells why a font file cannot be used: it is no TrueType file, damaged, may not
// be embedded, or lacks plain letters and figures.
func CheckFont(ttf []byte) error {
	tables, err := tablesOf(ttf)
	if err != nil {
		return err
	}
	os2 := tables["OS/2"]
	if len(os2) < 10 {
		return fmt.Errorf("is damaged: its table OS/2 is cut short")
	}
	switch fsType := binary.BigEndian.Uint16(os2[8:]); {
	case fsType&0xf == 2:
		return fmt.Errorf("may not be embedded: its maker allows it on licence only (fsType %d); ask for a font that may be embedded", fsType)
	case fsType&0x100 != 0:
		return fmt.Errorf("may not be embedded in part, and only the signs in use are (fsType %d)", fsType)
	case fsType&0x200 != 0:
		return fmt.Errorf("may be embedded as pixels only (fsType %d)", fsType)
	}
	f, err := sfnt.Parse(ttf)
	if err != nil {
		return fmt.Errorf("is damaged: %v", err)
	}
	if n := f.NumGlyphs(); n > mostSigns {
		return fmt.Errorf("has %d signs; the most is %d: take one for the letters of your language", n, mostSigns)
	}
	var buf sfnt.Buffer
	for i := range f.NumGlyphs() {
		if _, err := f.LoadGlyph(&buf, sfnt.GlyphIndex(i), fixed.I(int(f.UnitsPerEm())), nil); err != nil {
			return fmt.Errorf("is damaged: sign %d cannot be read: %v", i, err)
		}
	}
	for r := '!'; r <= '~'; r++ {
		if g, err := f.GlyphIndex(&buf, r); err != nil || g == 0 {
			return fmt.Errorf("has no sign for %q; a text font has all letters, figures and stops of plain English", r)
		}
	}
	return tryFont(ttf)
}

// tablesOf reads the table directory.
func tablesOf(ttf []byte) (map[string][]byte, error) {
	kinds := map[string]string{
		"OTTO": "is an OpenType font with PostScript outlines: store it as TrueType (TTF)",
		"ttcf": "is a collection of fonts: store the one that is meant as TTF",
		"wOFF": "is a font for web pages: take its TTF", "wOF2": "is a font for web pages: take its TTF",
	}
	if len(ttf) < 12 {
		return nil, fmt.Errorf("is no TrueType font")
	}
	if why := kinds[string(ttf[:4])]; why != "" {
		return nil, fmt.Errorf("%s", why)
	}
	if kind := string(ttf[:4]); kind != "\x00\x01\x00\x00" && kind != "true" {
		return nil, fmt.Errorf("is no TrueType font")
	}
	tables := map[string][]byte{}
	for i := range int(binary.BigEndian.Uint16(ttf[4:])) {
		at := 12 + 16*i
		if at+16 > len(ttf) {
			return nil, fmt.Errorf("is damaged: it ends within its list of tables")
		}
		from, size := uint64(binary.BigEndian.Uint32(ttf[at+8:])), uint64(binary.BigEndian.Uint32(ttf[at+12:]))
		if from+size > uint64(len(ttf)) {
			return nil, fmt.Errorf("is damaged: it ends before its table %q does", ttf[at:at+4])
		}
		tables[string(ttf[at:at+4])] = ttf[from : from+size]
	}
	for _, name := range neededTables {
		if tables[name] == nil {
			return nil, fmt.Errorf("lacks its table %q and cannot be embedded", name)
		}
	}
	if tables["fvar"] != nil {
		return nil, fmt.Errorf("is a variable font: store one weight of it as TTF")
	}
	return tables, nil
}

// tryFont embeds a font once; the PDF library panics on some that are damaged.
func tryFont(ttf []byte) (err error) {
	defer func() {
		if recover() != nil {
			err = fmt.Errorf("is damaged: it cannot be embedded")
		}
	}()
	f := &Faces{}
	f.own[layout.Regular] = ttf
	_, err = f.embedded(layout.Regular, " 09Aa", newPacker())
	return err
}
