package pdf_test

import (
	"bytes"
	"fmt"

	"matchmark/layout"
	"matchmark/layout/pdf"
)

func Example() {
	faces := pdf.NewFaces()
	s := layout.NewSetter(faces, layout.Pen{})
	step := layout.Piece{Block: s.Words(layout.Body, "Take the lock nut off.")}
	p := layout.Paginate(layout.A4, []layout.Sheet{{Name: "traveler", Title: "Traveler", Pieces: []layout.Piece{step}}})

	var file bytes.Buffer
	err := pdf.Write(&file, &layout.Doc{Title: "Bearing change", Lang: "en", Date: "2026-03-02", Pages: p.Frames, Outline: p.Outline})
	fmt.Println(len(p.Frames), "page,", err, string(file.Bytes()[:8]))

	fmt.Println(pdf.Write(&file, &layout.Doc{}))
	// Output:
	// 1 page, <nil> %PDF-1.7
	// the document has no pages
}
