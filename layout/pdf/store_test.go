package pdf

import (
	"bytes"
	"strings"
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

// What a document has is the same whatever is written behind it; one behind it that sets no
// other signs of a face has its font, and one that sets others has its own.
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

// Of a document that has the signs of one face from the document before it, and others of
// another, the first font is shared and the second its own.
func TestDocumentsShareEachFont(t *testing.T) {
	t.Parallel()
	page := func(regular, bold string) *layout.Doc {
		return one(layout.Item{X: 20, Y: 20, Shape: layout.Text{S: regular, Face: layout.Regular, Size: 10}},
			layout.Item{X: 20, Y: 30, Shape: layout.Text{S: bold, Face: layout.Bold, Size: 10}})
	}
	before, behind := page("abc", "abc"), page("b", "x")
	files, err := WriteAll(before, behind)
	if err != nil {
		t.Fatal(err)
	}
	first, second, own := fontFiles(files[0]), fontFiles(files[1]), fontFiles(painted(t, behind))
	if len(first) != 2 || len(second) != 2 || len(own) != 2 {
		t.Fatalf("%d, %d and %d fonts, want two in each", len(first), len(second), len(own))
	}
	if !bytes.Equal(second[0], first[0]) || !bytes.Equal(second[1], own[1]) {
		t.Error("of the document behind, the regular font is not that of the first, or the bold not its own")
	}
	if out := outside(t, files[1], "pdftotext", "FILE", "-"); !strings.Contains(out, "b") || !strings.Contains(out, "x") {
		t.Errorf("the document behind reads %q, want b and x", out)
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
