package pdf

import (
	"strings"
	"testing"

	"matchmark/layout"
)

// TestSpaces: what is read of a paragraph are its words; lines and runs were joined
// without a space, so that a reader said "itscasing". A word that is parted, and a sign
// set close behind a mark, stay whole.
func TestSpaces(t *testing.T) {
	t.Parallel()
	set := layout.NewSetter(NewFaces(), layout.Pen{})
	for _, text := range []string{
		"The rotor stays in its casing, and both roller bearings come out of it.",
		"See the drive-end housing and the non-drive-end one, which is alike in all that counts.",
	} {
		for width := layout.Mm(14); width < 60; width += 3 {
			runs := []layout.Run{layout.T(layout.Strong, "C2"), layout.T(layout.Body, ": "+text)}
			b := set.Para(width, runs, layout.ParaOpts{})
			var said strings.Builder
			for k, it := range b.Items() {
				said.WriteString(textOf(it.Shape))
				if endsWord(b.Items(), k) {
					said.WriteByte(' ')
				}
			}
			got := strings.ReplaceAll(said.String(), "-", "")
			if want := strings.ReplaceAll("C2: "+text, "-", ""); got != want {
				t.Errorf("%v mm: %q, want %q", width, got, want)
			}
		}
	}
}
