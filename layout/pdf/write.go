package pdf

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"

	"matchmark/layout"
)

// Write paints the document. Nothing is written to w when it returns an error of
// its own; an error of w is returned as it is.
func Write(w io.Writer, d *layout.Doc) error {
	if err := checkDoc(d); err != nil {
		return err
	}
	n, err := collect(d)
	if err != nil {
		return err
	}
	s, err := build(d, n)
	if err != nil {
		return err
	}
	tags := newTags(d)
	contents, err := paint(d, &s, tags)
	if err != nil {
		return err
	}
	out, err := finish(&s, d, contents, tags)
	if err != nil {
		return err
	}
	_, err = w.Write(out)
	return err
}

// facesOf are the faces that the text of a document was measured in.
func facesOf(d *layout.Doc) *Faces {
	if f, ok := d.Faces.(*Faces); ok {
		return f
	}
	return NewFaces()
}

// paint gives the compressed content of each page. One compressor serves all
// pages; a new one costs more than a page's work.
func paint(d *layout.Doc, s *skeleton, tags *tags) ([][]byte, error) {
	p := page{names: s, faces: facesOf(d)}
	var packed bytes.Buffer
	z, err := zlib.NewWriterLevel(&packed, zlib.BestSpeed)
	if err != nil {
		return nil, err
	}
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
		packed.Reset()
		z.Reset(&packed)
		if _, err := z.Write(p.buf); err != nil {
			return nil, err
		}
		if err := z.Close(); err != nil {
			return nil, err
		}
		out[i] = bytes.Clone(packed.Bytes())
	}
	return out, nil
}
