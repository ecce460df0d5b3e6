package pdf

import (
	"math"
	"strings"
	"testing"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"matchmark/layout"
)

// The signs a face has are those of the font's own character map, for every
// character of the basic plane, and its advances those of the font's own table.
func TestFacesAgreeWithFonts(t *testing.T) {
	t.Parallel()
	f := NewFaces()
	for face := range layout.NumFaces {
		ttf, err := sfnt.Parse(files[face])
		if err != nil {
			t.Fatal(err)
		}
		var buf sfnt.Buffer
		em := fixed.I(int(ttf.UnitsPerEm()))
		signs := 0
		for r := rune(' '); r < 0xffff; r++ {
			g, err := ttf.GlyphIndex(&buf, r)
			has := err == nil && g != 0
			if has != f.Has(face, r) {
				t.Fatalf("%s: has %U: %v, the font says %v", face, r, !has, has)
			}
			if !has {
				continue
			}
			signs++
			a, err := ttf.GlyphAdvance(&buf, g, em, font.HintingNone)
			if err != nil {
				t.Fatal(err)
			}
			// At 1000 pt the width in points is that in thousandths of the size.
			want := float64(a) / float64(em) * 1000
			if got := float64(f.Width(face, 1000, string(r)).Pt()); math.Abs(got-want) > 0.501 {
				t.Errorf("%s: %U is %.2f wide, the font says %.2f", face, r, got, want)
			}
		}
		if signs < 600 {
			t.Errorf("%s: only %d signs", face, signs)
		}
	}
}

// The file states widths as the library rounds them; a line must be as long as it
// was measured.
func TestWidthsAgreeWithFile(t *testing.T) {
	t.Parallel()
	f := NewFaces()
	for face := range layout.NumFaces {
		lib := fpdf.New("P", "pt", "A4", "")
		lib.AddUTF8FontFromBytes("x", "", append([]byte(nil), files[face]...))
		lib.SetFont("x", "", 10)
		for _, s := range []string{"Measure how far the lock nut stands", "130.015 – 130.040 mm", "Ø ± ° µ ≤ ≥ × → Δ", "Größe, l'éclisse, гайка"} {
			got, want := float64(f.Width(face, 10, s).Pt()), lib.GetStringWidth(s)
			if math.Abs(got-want) > 1e-6 {
				t.Errorf("%s: %q is %.4f pt, the library says %.4f", face, s, got, want)
			}
		}
	}
}

// Capitals stand as high as the OS/2 table of each font says (the style table of
// layout relies on it); figures are of one width, so that columns line up.
func TestFontMetrics(t *testing.T) {
	t.Parallel()
	f := NewFaces()
	for face := range layout.NumFaces {
		ttf, err := sfnt.Parse(files[face])
		if err != nil {
			t.Fatal(err)
		}
		var buf sfnt.Buffer
		m, err := ttf.Metrics(&buf, fixed.I(20*1000), font.HintingNone)
		if err != nil {
			t.Fatal(err)
		}
		st := layout.Style{Face: face, Size: 20}
		want := float64(m.CapHeight) / 64 / 1000 // points at 20 pt
		if got := float64(st.CapHeight().Pt()); math.Abs(got-want) > 0.001 {
			t.Errorf("%s: capitals %.4f pt high, the font says %.4f", face, got, want)
		}
		for _, d := range "123456789" {
			if f.Width(face, 10, string(d)) != f.Width(face, 10, "0") {
				t.Errorf("%s: the figure %c is not as wide as 0", face, d)
			}
		}
	}
	// A mark asked for at 20 mm stands 20 mm high.
	if h := layout.MarkTag(layout.Bold, 20).CapHeight(); math.Abs(float64(h-20)) > 1e-9 {
		t.Errorf("a mark of 20 mm is %v mm high", h)
	}
}

// What layout counts on: plain text in every face, a stand-in for what is
// lacking; and that the drawn signs are really lacking, so that drawing them is
// no waste.
func TestCoverageOfTradeText(t *testing.T) {
	t.Parallel()
	f := NewFaces()
	const needed = "\u00a0\uFFFDØ±°µ≤≥×·–—−→½¼¾²³√Ω∞≈≠ΔÄÖÜäöüßéèêçñåøæ"
	for face := range layout.NumFaces {
		for r := ' '; r <= '~'; r++ {
			if !f.Has(face, r) {
				t.Errorf("%s lacks %q", face, r)
			}
		}
		for _, r := range needed {
			if !f.Has(face, r) {
				t.Errorf("%s lacks %q %U", face, r, r)
			}
		}
		for _, r := range "⌀☐✓⚠" {
			if f.Has(face, r) {
				t.Errorf("%s has %q after all", face, r)
			}
		}
	}
	if f.Width(layout.NumFaces+3, 10, "x") != f.Width(layout.Regular, 10, "x") {
		t.Error("a face that does not exist is not measured as regular")
	}
	if !strings.ContainsRune(needed, 'Ø') || f.Has(layout.Regular, '\u0301') {
		t.Error("the fonts have combining marks after all")
	}
}

func BenchmarkFaces(b *testing.B) {
	for b.Loop() {
		f := NewFaces()
		for face := range layout.NumFaces {
			f.Has(face, 'a')
		}
	}
}
