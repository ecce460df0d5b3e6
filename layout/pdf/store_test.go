package pdf

import (
	"bytes"
	"testing"

	"matchmark/layout"
)

// fontFiles are the embedded fonts of a file, as they are stored.
func fontFiles(file []byte) (fonts [][]byte) {
	for _, part := range bytes.Split(file, []byte(" /Length1 "))[1:] {
		data, _, _ := bytes.Cut(part, []byte("\nendstream"))
		fonts = append(fonts, data)
	}
	return fonts
}

// What a document has is the same whatever is written behind it; one behind it that sets nothing
// else has its fonts, and one that sets other signs has its own.
func TestDocumentsShareFonts(t *testing.T) {
	t.Parallel()
	page := func(s string) *layout.Doc {
		text := layout.Item{X: 20, Y: 20, Shape: layout.Text{S: s, Face: layout.Regular, Size: 10}}
		return &layout.Doc{Pages: []layout.Frame{{W: 210, H: 297, Items: []layout.Item{text}}}}
	}
	written := func(docs ...*layout.Doc) [][]byte {
		files, err := WriteAll(docs...)
		if err != nil {
			t.Fatal(err)
		}
		return files
	}
	abc, xyz, b := page("abc"), page("xyz"), page("b")
	all, alone := written(abc, xyz, b), written(abc)
	if !bytes.Equal(all[0], alone[0]) {
		t.Error("the first document differs when others are written behind it")
	}
	if !bytes.Equal(all[1], written(xyz)[0]) {
		t.Error("a document with other signs differs from the one that is written alone")
	}
	first, third, own := fontFiles(all[0]), fontFiles(all[2]), fontFiles(written(b)[0])
	if len(first) != 1 || len(third) != 1 || !bytes.Equal(first[0], third[0]) {
		t.Errorf("%d and %d fonts, want the same one in both", len(first), len(third))
	}
	if len(own) != 1 || len(own[0]) >= len(first[0]) {
		t.Errorf("a font with one letter has %d bytes, one with three %d", len(own[0]), len(first[0]))
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
