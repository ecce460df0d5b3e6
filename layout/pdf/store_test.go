package pdf

import (
	"bytes"
	"testing"

	"matchmark/layout"
)

// fontFiles are the embedded fonts of a file, as they are stored.
func fontFiles(file []byte) (fonts [][]byte) {
	for _, part := range bytes.Split(file, []byte("\n/Length1 "))[1:] {
		data, _, _ := bytes.Cut(part, []byte("\nendstream"))
		fonts = append(fonts, data)
	}
	return fonts
}

// Documents that are written together have the same fonts, cut to what all of them set, and
// a document that is written alone has its own.
func TestDocumentsShareFonts(t *testing.T) {
	t.Parallel()
	page := func(s string) *layout.Doc {
		text := layout.Item{X: 20, Y: 20, Shape: layout.Text{S: s, Face: layout.Regular, Size: 10}}
		return &layout.Doc{Pages: []layout.Frame{{W: 210, H: 297, Items: []layout.Item{text}}}}
	}
	abc, xyz := page("abc"), page("xyz")
	both, err := WriteAll(abc, xyz)
	if err != nil {
		t.Fatal(err)
	}
	alone, err := WriteAll(abc)
	if err != nil {
		t.Fatal(err)
	}
	first, second, own := fontFiles(both[0]), fontFiles(both[1]), fontFiles(alone[0])
	if len(first) != 1 || len(second) != 1 || !bytes.Equal(first[0], second[0]) {
		t.Errorf("%d and %d fonts, want the same one in both", len(first), len(second))
	}
	if len(own) != 1 || len(own[0]) >= len(first[0]) {
		t.Errorf("a font with three letters has %d bytes, one with six %d", len(own[0]), len(first[0]))
	}
}

// A piece keeps its data to the byte when its references move on.
func TestReferencesMoveOn(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ object, want string }{
		{"<</DescendantFonts [6 0 R]\n/ToUnicode 7 0 R>>", "<</DescendantFonts [96 0 R]\n/ToUnicode 97 0 R>>"},
		{"<</W [ 13 13 278 ]>>", "<</W [ 13 13 278 ]>>"},
		{"<</SMask 8 0 R\n/Length 9>>\nstream\nx 1 0 R y\nendstream", "<</SMask 98 0 R\n/Length 9>>\nstream\nx 1 0 R y\nendstream"},
	} {
		if got := string(appendMoved(nil, []byte(c.object), 90)); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
