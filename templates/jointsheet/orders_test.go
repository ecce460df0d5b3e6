package jointsheet

import (
	"os"
	"strings"
	"testing"

	"matchmark/layout"
	"matchmark/layout/pdf"
	"matchmark/packs"
	"matchmark/templates/block"
	"matchmark/templates/words"
)

// Beside each of two drawings of a step stood how they are read, in a column so narrow that the
// words were higher than the drawings; a scale stood in a line of its own below each.
func TestOrdersBesideEachOtherSayOnceHowTheyAreRead(t *testing.T) {
	t.Parallel()
	jb, _ := packs.Load(os.DirFS("../../packs/starters"), packs.Inputs{Definition: "bevel-gearbox.yaml"})
	c := block.New(pdf.NewFaces(), layout.Pen{}, jb, words.English, 180)
	tested := 0
	for _, st := range jb.Steps() {
		_, pics, scales := drawings(c, st, 160)
		if len(pics) == 0 {
			continue
		}
		rows, _ := Orders(c, st, 160, nil, nil)
		all := layout.Above(1, rows...)
		text := textOf(all)
		if n := strings.Count(text, words.English.Tightening.OrderNumber); n != 1 {
			t.Errorf("%s: how its %d drawings are read stands %d times", st.Name(), len(pics), n)
		}
		for _, s := range scales {
			if !strings.Contains(text, plain(s)) {
				t.Errorf("%s: %q stands nowhere in %q", st.Name(), s, text)
			}
		}
		if len(pics) < 2 {
			continue
		}
		tested++
		tallest := layout.Mm(0)
		for _, p := range pics {
			tallest = max(tallest, p.H)
		}
		if most := tallest + 9; all.H > most {
			t.Errorf("%s: %.1f mm for drawings of %.1f mm, want no more than %.1f mm", st.Name(), all.H, tallest, most)
		}
	}
	if tested == 0 {
		t.Error("no step draws two joints")
	}
}

// textOf is the text of a block, in one line.
func textOf(b layout.Block) string {
	var out []string
	for _, it := range b.Items() {
		if text, ok := it.Shape.(layout.Text); ok {
			out = append(out, text.S)
		}
	}
	return plain(strings.Join(out, " "))
}

// plain is a text with spaces that part and a decimal point.
func plain(s string) string {
	return strings.NewReplacer("\u00a0", " ", layout.NoBreak, " ", "\u2396", ".").Replace(s)
}
