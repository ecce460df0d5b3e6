package pdf

import (
	"bytes"
	"fmt"
	"io"
	"time"

	"github.com/go-pdf/fpdf"

	"matchmark/layout"
)

// Write paints the document. Nothing is written to w when it returns an error of
// its own; an error of w is returned as it is.
func Write(w io.Writer, d *layout.Doc) error {
	if err := checkDoc(d); err != nil {
		return err
	}
	signs, err := collect(d)
	if err != nil {
		return err
	}
	f := newFile(d)
	names, err := embed(f, signs)
	if err != nil {
		return err
	}
	pics := pictures{f: f}
	p := page{names: &names, faces: NewFaces()}
	for i, fr := range d.Pages {
		if err := paint(f, &p, &pics, fr); err != nil {
			return fmt.Errorf("page %d: %w", i+1, err)
		}
	}
	var raw bytes.Buffer
	if err := f.Output(&raw); err != nil {
		return fmt.Errorf("write pages: %w", err)
	}
	out, err := finish(raw.Bytes(), d)
	if err != nil {
		return err
	}
	_, err = w.Write(out)
	return err
}

// newFile starts the library's file. Its unit is the point, its margins and page
// breaks are off: all places are ours.
func newFile(d *layout.Doc) *fpdf.Fpdf {
	f := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "pt", Size: sizeOf(d.Pages[0])})
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	// finish compresses the pages.
	f.SetCompression(false)
	// Fonts are kept in a map and would be written in any order.
	f.SetCatalogSort(true)
	// The dates are cut off again, but unset ones would ask for the time of day.
	f.SetCreationDate(time.Unix(0, 0).UTC())
	f.SetModificationDate(time.Unix(0, 0).UTC())
	return f
}

func sizeOf(fr layout.Frame) fpdf.SizeType {
	return fpdf.SizeType{Wd: float64(fr.W) * ptPerMm, Ht: float64(fr.H) * ptPerMm}
}

// paint adds one page.
func paint(f *fpdf.Fpdf, p *page, pics *pictures, fr layout.Frame) error {
	f.AddPageFormat("P", sizeOf(fr))
	p.begin(fr.H)
	for _, it := range fr.Items {
		if pic, ok := it.Shape.(layout.Image); ok {
			if err := pics.place(p, it, pic); err != nil {
				return err
			}
			continue
		}
		p.item(it)
	}
	if p.err != nil {
		return p.err
	}
	f.RawWriteBuf(bytes.NewReader(p.buf))
	return f.Error()
}
