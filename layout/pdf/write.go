package pdf

import (
	"fmt"
	"io"

	"matchmark/layout"
)

// Write paints the document. Nothing is written to w when it returns an error of
// its own; an error of w is returned as it is.
func Write(w io.Writer, d *layout.Doc) error {
	files, err := WriteAll(d)
	if err != nil {
		return err
	}
	_, err = w.Write(files[0])
	return err
}

// WriteAll paints documents that belong together, and gives their files. A font of one is cut
// for it alone, so its bytes are the same whatever stands behind it; a document behind it that
// sets no other signs of a face shares the font, and the pictures if it sets no others.
func WriteAll(docs ...*layout.Doc) ([][]byte, error) {
	each := make([]needs, len(docs))
	for i, d := range docs {
		err := checkDoc(d)
		if err == nil {
			each[i], err = collect(d)
		}
		if err != nil {
			return nil, err
		}
	}
	var stores []*store
	files := make([][]byte, len(docs))
	pk := newPacker()
	for i, d := range docs {
		s, err := storeOf(each[i], facesOf(d), stores, pk)
		if err == nil {
			stores = append(stores, s)
			files[i], err = write(d, each[i], s, pk)
		}
		if err != nil {
			return nil, err
		}
	}
	return files, nil
}

// write paints one document.
func write(d *layout.Doc, n needs, s *store, pk *packer) ([]byte, error) {
	tags := newTags(d)
	contents, err := paint(d, n, tags, pk)
	if err != nil {
		return nil, err
	}
	return finish(d, n, s, contents, tags, pk)
}

// facesOf are the faces that the text of a document was measured in.
func facesOf(d *layout.Doc) *Faces {
	if f, ok := d.Faces.(*Faces); ok {
		return f
	}
	return NewFaces()
}

// paint gives the compressed content of each page.
func paint(d *layout.Doc, n needs, tags *tags, pk *packer) ([][]byte, error) {
	p := page{digests: n.digests, faces: facesOf(d)}
	out := make([][]byte, len(d.Pages))
	for i, fr := range d.Pages {
		p.begin(fr.H)
		tags.page(i)
		for k, it := range fr.Items {
			p.buf = tags.before(p.buf, k)
			p.spaced = endsWord(fr.Items, k)
			p.item(it)
		}
		p.buf = tags.close(p.buf)
		if p.err != nil {
			return nil, fmt.Errorf("page %d: %w", i+1, p.err)
		}
		out[i] = pk.pack(p.buf)
	}
	return out, nil
}
