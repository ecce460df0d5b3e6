package layout

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode/decoder"
)

// decode reads a symbol with the ZXing port, a decoder that shares nothing with
// the encoder. It gives the text and the level.
func decode(t *testing.T, m Modules) (text, level string) {
	t.Helper()
	n := len(m.Bits()) - 2*QuietModules
	bits, err := gozxing.NewBitMatrix(n, n)
	if err != nil {
		t.Fatal(err)
	}
	for y := range n {
		for x := range n {
			if m.Bits()[y+QuietModules][x+QuietModules] {
				bits.Set(x, y)
			}
		}
	}
	r, err := decoder.NewDecoder().Decode(bits, nil)
	if err != nil {
		t.Fatalf("%q: %v", m.Content(), err)
	}
	return r.GetText(), r.GetECLevel()
}

// codeOf gives the symbol of a block.
func codeOf(t testing.TB, b Block) Modules {
	t.Helper()
	if len(b.Items()) != 1 || b.Items()[0].Role != RoleCode {
		t.Fatalf("items %+v, want one QR code", b.Items())
	}
	return b.Items()[0].Shape.(Modules)
}

func TestQRReadsBack(t *testing.T) {
	t.Parallel()
	s := newFake()
	texts := []string{"WO-5512/B/C2/DE/3OF18", "WO-5512/B/P9OF26", "A", "C4/NDE/springs", "Gehäuse 7"}
	const alnum = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
	rnd := rand.New(rand.NewPCG(1, 2))
	for range 40 {
		var b strings.Builder
		for range 1 + rnd.IntN(60) {
			b.WriteByte(alnum[rnd.IntN(len(alnum))])
		}
		texts = append(texts, b.String())
	}
	for _, text := range texts {
		b := s.QR(text, 40, 0.5, "r")
		got, level := decode(t, codeOf(t, b))
		if got != text {
			t.Errorf("read %q, want %q", got, text)
		}
		if level != "Q" && level != "H" {
			t.Errorf("%q has level %s, want Q or H", text, level)
		}
	}
}

// Capacities of alphanumeric text by version and level are those of ISO/IEC
// 18004, table of data capacity (from memory): level H holds 10, 20 and 35 signs
// in versions 1 to 3, level Q holds 16, 29 and 47.
func TestQRLevelIsRaised(t *testing.T) {
	t.Parallel()
	s := newFake()
	for _, c := range []struct {
		chars, version int
		level          string
	}{
		{10, 1, "H"}, {11, 1, "Q"}, {16, 1, "Q"},
		{17, 2, "H"}, {20, 2, "H"}, {21, 2, "Q"}, {29, 2, "Q"},
		{30, 3, "H"}, {35, 3, "H"}, {36, 3, "Q"}, {47, 3, "Q"},
	} {
		m := codeOf(t, s.QR(strings.Repeat("W", c.chars), 40, 0.5, nil))
		if n := len(m.Bits()) - 2*QuietModules; n != 17+4*c.version {
			t.Errorf("%d signs: %d modules, want version %d with %d", c.chars, n, c.version, 17+4*c.version)
		}
		if _, level := decode(t, m); level != c.level {
			t.Errorf("%d signs: level %s, want %s", c.chars, level, c.level)
		}
	}
}

// The quiet zone of 4 modules is ISO/IEC 18004's.
func TestQRQuietZone(t *testing.T) {
	t.Parallel()
	m := codeOf(t, newFake().QR("WO-5512/B/C2", 20, 0.5, nil))
	n := len(m.Bits())
	for y := range n {
		for x := range n {
			if m.Bits()[y][x] && (min(x, y) < 4 || max(x, y) >= n-4) {
				t.Fatalf("module %d, %d in the quiet zone is dark", x, y)
			}
		}
	}
	if m.Size != 20 || m.Count() != n {
		t.Errorf("side %v, %d modules of %d; want 20 mm and all modules, quiet zone counted in", m.Size, m.Count(), n)
	}
}

func TestQRMisfits(t *testing.T) {
	t.Parallel()
	s := newFake()
	// Version 2 with its quiet zone has 25+8 modules: 16.5 mm at 0.5 mm each.
	if b := s.QR(strings.Repeat("W", 20), 16.5, 0.5, "r"); len(b.Misfits()) > 0 {
		t.Errorf("exactly large enough: %v", b.Misfits())
	}
	b := s.QR(strings.Repeat("W", 20), 15, 0.5, "r")
	if len(b.Misfits()) != 1 || b.Misfits()[0].Kind != CodeTooLong || b.Misfits()[0].Ref != "r" || b.Misfits()[0].Over != 1.5 {
		t.Errorf("too small: misfits %+v, want one by 1.5 mm", b.Misfits())
	}
	// No version holds 1,664 bytes at level Q (ISO/IEC 18004, from memory: 1,663).
	if b := s.QR(strings.Repeat("w", 1664), 100, 0.1, "r"); len(b.Misfits()) != 1 || b.Misfits()[0].Kind != CodeTooLong || len(b.Items()) != 0 {
		t.Errorf("longer than any code: %d items, misfits %v", len(b.Items()), b.Misfits())
	}
}

func BenchmarkQR(b *testing.B) {
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		codeOf(b, newFake().QR(fmt.Sprintf("WO-5512/B/C%d/DE/3OF18", i%1000), 22, 0.5, nil)).Bits()
	}
}
