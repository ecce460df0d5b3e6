package layout

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestLoose: a word that somebody typed goes into any width that its widest sign goes
// into, and not a letter of it is lost. The name of a photograph was 72 mm wider than its
// column, and nothing was printed.
func TestLoose(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.StringMatching(`[a-z0-9/._-]{0,40}[0-9._/-][a-z0-9/._-]{0,40}( [0-9][a-z0-9/._-]{0,40})?`).Draw(rt, "text")
		n := rapid.IntRange(1, 9).Draw(rt, "n")
		loose := Loose(text, n)
		if got := strings.ReplaceAll(loose, "\u200b", ""); got != text {
			rt.Errorf("%q is made %q", text, got)
		}
		s := newFake()
		room := s.Words(ten, strings.Repeat("m", n+1)).W
		if b := s.Para(room, []Run{T(ten, loose)}, ParaOpts{}); len(b.Misfits()) > 0 {
			rt.Errorf("%q does not go into %.1f mm: %v", loose, room, b.Misfits())
		}
	})
	for _, whole := range []string{"clean", "C8/DE", "see photo 17", "Schraubensicherungsblech"} {
		if got := Loose(whole, 8); got != whole {
			t.Errorf("%q is made %q", whole, got)
		}
	}
}
