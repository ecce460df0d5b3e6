package layout

import (
	"math/rand/v2"
	"strings"
	"testing"
)

// TestSymbolsOfLibrary: a symbol is the one of the library, module for module, whatever signs its text
// is made of, at both levels, in versions 1 to 6 and beyond. Each is read back by another
// program in qr_test.go and on the printed page.
func TestSymbolsOfLibrary(t *testing.T) {
	t.Parallel()
	rng := rand.New(rand.NewPCG(5, 6))
	alphabets := []string{"0123456789", "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 $%*+-./:", "WO-5512 B/47 3", "abcdeé#;ABC123", "A1"}
	versions := map[int]int{}
	for range 1500 {
		var b strings.Builder
		for range 1 + rng.IntN(5) {
			letters := []rune(alphabets[rng.IntN(len(alphabets))])
			for range 1 + rng.IntN(24) {
				b.WriteRune(letters[rng.IntN(len(letters))])
			}
		}
		text, high := b.String(), rng.IntN(2) == 0
		got, err := newCode(text, high)
		if err != nil {
			t.Fatal(err)
		}
		want, err := largeCode(text, high)
		if err != nil {
			t.Fatal(err)
		}
		if got.count != want.count {
			t.Fatalf("%q, high %v: %d modules, the library makes %d", text, high, got.count, want.count)
		}
		versions[(got.count-2*QuietModules-17)/4]++
		ours, theirs := got.make(), want.make()
		for y := range theirs {
			for x := range theirs[y] {
				if ours[y][x] != theirs[y][x] {
					t.Fatalf("%q, high %v, %d modules: column %d of row %d is not as the library has it", text, high, got.count, x, y)
				}
			}
		}
	}
	for v := 1; v <= 7; v++ {
		if versions[v] < 10 {
			t.Errorf("version %d was made %d times", v, versions[v])
		}
	}
}

// TestCheckBytes: the check bytes of the example in ISO/IEC 18004:2006, annex I: 01234567 in version
// 1 at level M.
func TestCheckBytes(t *testing.T) {
	t.Parallel()
	data := []byte{0x10, 0x20, 0x0c, 0x56, 0x61, 0x80, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11}
	want := []byte{0xa5, 0x24, 0xd4, 0xc1, 0xed, 0x36, 0xc7, 0x87, 0x2c, 0x55}
	if got := qrChecks(data, qrDivisor(10)); string(got) != string(want) {
		t.Errorf("check bytes % x, the standard has % x", got, want)
	}
}

// BenchmarkSymbol is one symbol of a tag.
func BenchmarkSymbol(b *testing.B) {
	for name, of := range map[string]func(string, bool) (*code, error){"own": newCode, "library": largeCode} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				c, _ := of("WO-5512 B C4/DE 12/47", true)
				c.make()
			}
		})
	}
}
