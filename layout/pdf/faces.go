package pdf

import (
	"fmt"
	"math"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/gomedium"
	"golang.org/x/image/font/gofont/gomono"
	"golang.org/x/image/font/gofont/gomonobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"matchmark/layout"
)

// Faces measures text in the five faces. It is safe for use by many goroutines.
type Faces struct {
	tables [layout.NumFaces]table
	own    [layout.NumFaces][]byte // a site's own fonts, nil for the usual ones
}

// file is the font file of a face.
func (f *Faces) file(face layout.Face) []byte {
	if own := f.own[face]; own != nil {
		return own
	}
	return files[face]
}

// table is what measuring needs of one font: advances in thousandths of the type
// size, rounded as the file's width list states them, so that a line is as long
// as it was measured. It is read when the face is first used.
type table struct {
	once sync.Once
	adv  map[rune]uint16
	low  [0x180]uint16 // Latin letters, where nearly all text lies
	void uint16        // advance of the box for a missing sign
}

// absent marks a rune for which the font has no sign.
const absent = math.MaxUint16

// ranges are the runs of characters in which the Go fonts have signs.
var ranges = [][2]rune{
	{0x0180, 0x0530}, {0x1e00, 0x2000}, {0x2000, 0x2700}, {0xf800, 0xf900}, {0xfb00, 0xfb10}, {0xfff0, 0xfffe},
}

// font files of the faces, as the module golang.org/x/image holds them.
var files = [layout.NumFaces][]byte{
	layout.Regular: goregular.TTF, layout.Medium: gomedium.TTF, layout.Bold: gobold.TTF,
	layout.Mono: gomono.TTF, layout.MonoBold: gomonobold.TTF,
}

// NewFaces gives the faces of the printed pack.
func NewFaces() *Faces { return &shared }

// shared are the faces of the process: each font is read once.
var shared Faces

// Width is the advance of s set in one line; it implements layout.Measurer.
func (f *Faces) Width(face layout.Face, size layout.Pt, s string) layout.Mm {
	t := f.table(face)
	sum := 0
	for _, r := range s {
		a := t.advance(r)
		if a == absent {
			a = t.void
		}
		sum += int(a)
	}
	return layout.Mm(sum) * size.Mm() / 1000
}

// Has tells whether the face has a sign for the rune; it implements
// layout.Measurer.
func (f *Faces) Has(face layout.Face, r rune) bool {
	return f.table(face).advance(r) != absent
}

// table gives the face's table; a face that does not exist is measured as
// Regular, which is what the painter sets it in.
func (f *Faces) table(face layout.Face) *table {
	if face >= layout.NumFaces {
		face = layout.Regular
	}
	t := &f.tables[face]
	t.once.Do(func() { t.read(f.file(face), f.own[face] != nil) })
	return t
}

func (t *table) advance(r rune) uint16 {
	if r >= 0 && int(r) < len(t.low) {
		return t.low[r]
	}
	if a, ok := t.adv[r]; ok {
		return a
	}
	return absent
}

// read fills the table from a font; all says that it may have signs in any place of the
// basic plane. The fonts are part of the program, or CheckFont has read them, so that a
// font that cannot be read is a fault of the program.
func (t *table) read(ttf []byte, all bool) {
	f, err := sfnt.Parse(ttf)
	if err != nil {
		panic(fmt.Sprintf("read font: %v", err))
	}
	t.adv = make(map[rune]uint16, 512)
	var buf sfnt.Buffer
	em := fixed.I(int(f.UnitsPerEm())) // advances come in font units
	advance := func(g sfnt.GlyphIndex) uint16 {
		a, err := f.GlyphAdvance(&buf, g, em, font.HintingNone)
		if err != nil {
			panic(fmt.Sprintf("read font: %v", err))
		}
		return uint16(math.Round(float64(a) / float64(em) * 1000))
	}
	at := func(r rune) uint16 {
		g, err := f.GlyphIndex(&buf, r)
		if err != nil || g == 0 {
			return absent
		}
		return advance(g)
	}
	t.void = advance(0)
	for r := range t.low {
		t.low[r] = at(rune(r))
		if r < ' ' {
			t.low[r] = absent
		}
	}
	places := ranges
	if all {
		places = [][2]rune{{rune(len(t.low)), 0xd800}, {0xe000, 0xfffe}}
	}
	for _, g := range places {
		for r := g[0]; r < g[1]; r++ {
			if a := at(r); a != absent {
				t.adv[r] = a
			}
		}
	}
}
